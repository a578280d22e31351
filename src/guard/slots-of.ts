// This file is about the slots of an answer: which of its figures a model may set among its words, and which stand there again.
import type { Answer, Figure } from '../answer.ts'
import { guardProse } from './prose.ts'
import type { Ref } from './refs.ts'

/** Slots for the results and for what the person said. */
export const slotsOf = (card: Answer): Figure[] => [
  ...card.figures.filter((it) => it.role === 'result' && it.word !== 'cited' && !/^(before|after)\./.test(it.ref)),
  ...card.readAs.map((it) => it.figure),
]

export function refsOf(card: Answer): Record<string, Ref> {
  return Object.fromEntries(
    slotsOf(card).map((it) => [
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

/** The lines of sentences shown before that would not be shown with these figures. Each figure's text is taken for its slot again. */
export function wouldNotPass(prose: string, card: Answer, said: string): string[] {
  const refs = refsOf(card)
  return prose
    .split('\n')
    .filter((line) => line.trim() !== '' && !/^\|[-|]+\|$/.test(line))
    .filter((line) => {
      const text = line.replace(/^\s*(?:-|\d{1,3}\.) /, '')
      return !withSlots(text, refs).some((it) => guardProse(it, refs, said).pass)
    })
}

const mostWays = 64

/** A line with the texts of figures as slots, in every way where figures look alike. */
function withSlots(line: string, refs: Readonly<Record<string, Ref>>): string[] {
  const byText = new Map<string, string[]>()
  for (const [key, { text }] of Object.entries(refs)) if (text) byText.set(text, [...(byText.get(text) ?? []), key])
  const texts = [...byText.keys()].sort((a, b) => b.length - a.length)
  let ways = ['']
  let at = 0
  while (at < line.length) {
    const isStart = at === 0 || !/[\p{L}\p{N}]/u.test(line[at - 1] as string)
    const found = isStart
      ? texts.find((it) => line.startsWith(it, at) && !/^[\p{L}\p{N}]/u.test(line.slice(at + it.length)))
      : undefined
    const next = found ? (byText.get(found) as string[]).map((key) => `{{${key}}}`) : [line[at] as string]
    ways = ways.flatMap((way) => next.map((it) => way + it)).slice(0, mostWays)
    at += found?.length ?? 1
  }
  return ways
}
