// This file is about the model as a writer: sentences around slots, each guarded before it is shown.
import type { Answer, Figure } from '../../answer.ts'
import type { Writer } from '../../assistant.ts'
import { passProse, type Ref } from '../../guard/prose.ts'
import { writingPrompt } from '../../prompts.ts'
import type { Endpoint, Message } from './endpoint.ts'

/** The second try names the rules that were broken, never the words. */
const tries = 2

export function createWriter(endpoint: Endpoint): Writer {
  const system = writingPrompt()
  return async (said, entry, show, signal) => {
    const refs = refsOf(entry)
    const messages: Message[] = [
      { role: 'system', content: system },
      { role: 'user', content: `${slotList(entry)}\n\nWhat the person said:\n${said}` },
    ]
    for (let attempt = 0; attempt < tries; attempt++) {
      const spoken = await endpoint.say({ messages }, signal ? { signal } : {})
      if (spoken.error || spoken.refusal || spoken.finish === 'length' || spoken.finish === 'filtered') return ''
      const passed = passProse(spoken.text, refs, said)
      if (passed.shown !== '') {
        show(passed.shown)
        return passed.shown
      }
      const rules = [...new Set(passed.reasons.map((it) => it.rule))].join(', ')
      messages.push(
        { role: 'assistant', content: spoken.text },
        { role: 'user', content: `Every sentence broke a rule (${rules}). Write it again within the rules.` },
      )
    }
    return ''
  }
}

type Entry = Omit<Answer, 'reply' | 'prose'>

/** Slots for the results and for what the person said. */
const slotsOf = (entry: Entry): Figure[] => [
  ...entry.figures.filter((it) => it.role === 'result' && it.word !== 'cited' && !/^(before|after)\./.test(it.ref)),
  ...entry.readAs.map((it) => it.figure),
]

const slotList = (entry: Entry): string =>
  `Slots:\n${slotsOf(entry)
    .map((it) => `{{${it.ref}}} ${it.label}: ${it.text}${it.headline ? ' (this answers the question)' : ''}`)
    .join('\n')}`

function refsOf(entry: Entry): Record<string, Ref> {
  return Object.fromEntries(
    slotsOf(entry).map((it) => [
      it.ref,
      {
        value: it.value,
        unit: it.unit,
        kind: it.role === 'said' ? 'said' : it.kind,
        label: it.label,
        text: it.text,
        state: 'good' as const,
        ...((/^[a-z]+$/.test(it.unit) && it.text.endsWith(it.unit)) || it.text.endsWith(`${it.unit}s`)
          ? { noun: [it.unit, `${it.unit}s`] }
          : {}),
        ...(it.role === 'said' ? { said: it.text } : {}),
      },
    ]),
  )
}
