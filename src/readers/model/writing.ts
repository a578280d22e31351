// This file is about the model as a writer: sentences around slots, each guarded before it is shown.
import type { Answer } from '../../answer.ts'
import type { Writer } from '../../assistant.ts'
import { passProse } from '../../guard/prose.ts'
import { refsOf, slotsOf } from '../../guard/slots-of.ts'
import { writingPrompt } from '../../prompts.ts'
import { isForeign } from '../language.ts'
import { isEchoOf } from './echo.ts'
import type { Endpoint, Message } from './endpoint.ts'
import { faultOf } from './faults.ts'

/** The prompt, and one try with what was wrong with it: a third would keep the person waiting for little. */
const mostMessages = 4

export function createWriter(endpoint: Endpoint): Writer {
  const system = writingPrompt()
  return async (said, card, show, allowance, signal) => {
    // In another language the program's own sentences stand alone.
    if (isForeign(said)) return ''
    const refs = refsOf(card)
    const isEcho = isEchoOf(card)
    const messages: Message[] = [
      { role: 'system', content: system },
      { role: 'user', content: `${slotList(card)}\n\n${alreadyOn(card)}\n\nWhat the person said:\n${said}` },
    ]
    // The second try names the rules that were broken, never the words.
    for (let why: 'work' | 'repair' = 'work'; messages.length <= mostMessages && allowance.spend(why); why = 'repair') {
      const spoken = await endpoint.say({ messages }, signal ? { signal } : {})
      allowance.count(spoken.tokens ?? 0)
      // What a server failed at is said. That a model would not write, or not within the rules, takes nothing from the answer.
      if (spoken.error && spoken.error !== 'aborted')
        return { unwritten: `${faultOf(spoken, endpoint)} ${onlySentences}` }
      if (spoken.error || spoken.refusal || spoken.finish === 'length' || spoken.finish === 'filtered') return ''
      const passed = passProse(spoken.text, refs, said, isEcho)
      if (passed.shown !== '' && !isForeign(spoken.text)) {
        show(passed.shown)
        return passed.shown
      }
      // What stood of it says nothing new: there is nothing to add, and nothing to ask for again.
      if (passed.spared > 0) return ''
      const rules = [...new Set(passed.reasons.map((it) => it.rule))].join(', ') || 'plain English'
      messages.push(
        { role: 'assistant', content: spoken.text },
        { role: 'user', content: `Every sentence broke a rule (${rules}). Write it again within the rules.` },
      )
    }
    return ''
  }
}

const onlySentences =
  'Only a sentence or two of the model is missing here: the figures do not come from it, and are whole.'

const slotList = (card: Answer): string =>
  `Slots:\n${slotsOf(card)
    .map((it) => `{{${it.ref}}} ${it.label}: ${it.text}${it.headline ? ' (this answers the question)' : ''}`)
    .join('\n')}`

/** What the card says without a model: the first section of the reply, and what its others hold. */
const alreadyOn = ({ reply }: Answer): string => {
  const [answer = '', ...sections] = reply.split(/^### /m)
  const titles = sections.map((it) => it.split('\n', 1)[0])
  return `The person already sees this:\n${answer.trim()}\nBelow it stand: ${titles.join(', ')}.`
}
