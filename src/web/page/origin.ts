// This file is about where a figure comes from, in words: who said it, what it was worked from, why it was taken as usual.
import type { Answer, Figure } from '../../answer.ts'
import { placeInWords, theBy } from './places.ts'

/** What an origin is looked up in: the answer the figure stands in, and those before it on the page. */
export interface Within {
  readonly answer: Pick<Answer, 'turn' | 'calls' | 'advice' | 'readAs' | 'words'>
  readonly before: readonly Within['answer'][]
}

/** One plain sentence or two. Never empty. */
export function originOf(figure: Figure, within: Within): string {
  const { ref, role } = figure
  const { answer } = within
  if (/^before\./.test(ref)) return 'As it was before this entry.'
  if (role === 'said' || role === 'known') return saidWhere(figure, within)
  const call = answer.calls.find((it) => ref.startsWith(`${it.id}.`))
  if (role === 'assumed') {
    const reason = reasonOf(figure, answer)
    return reason ? `Taken as usual, since ${reason.because} (${reason.from}).` : 'Taken as usual. Nobody has said it.'
  }
  if (role === 'published') {
    const note = answer.advice.find((it) => ref.startsWith(`${it.id}.`))
    const from = note?.from ?? call?.sources.map((it) => it.from).join(' ')
    return from ? `Published: ${from}` : 'Published.'
  }
  const [owner, step] = stepOf(figure, within)
  if (step) return `Worked in entry ${owner.turn + 1}: ${step.substituted} = ${step.result}. ${capital(step.because)}.`
  return call ? `Worked in entry ${answer.turn + 1} by “${call.title}”.` : 'Worked from the job sheet.'
}

/** Why an input was taken as usual, where it was. */
export const reasonOf = ({ ref }: Figure, { words }: Within['answer']): { because: string; from: string } | undefined =>
  words?.usual.find((it) => it.ref === ref || ref.startsWith(`${it.ref}@`))

function saidWhere({ word, at }: Figure, { answer, before }: Within): string {
  const all = [answer, ...before.toReversed()]
  const isOf = (it: Figure): boolean => it.word === word && it.at === at
  for (const same of [isOf, (it: Figure) => it.word === word])
    for (const { turn, readAs } of all) {
      const read = readAs.find((it) => same(it.figure))
      if (!read) continue
      const place = placeInWords(read.figure.at)
      return `You said “${read.said}”${place ? ` for ${theBy(place)}` : ''} in entry ${turn + 1}.`
    }
  return 'You said so.'
}

type Step = Answer['calls'][number]['steps'][number]

/** The line of working that gave a result; of a result that stands on the job sheet, in the last entry that worked it. */
function stepOf({ ref, word, text }: Figure, { answer, before }: Within): [Within['answer'], Step | undefined] {
  const given = ({ formula }: Step): boolean => formula.startsWith(`${word} = `)
  const inOwn = answer.calls.find((it) => ref.startsWith(`${it.id}.`))?.steps.filter(given)
  const own = inOwn?.find((it) => it.result === text) ?? inOwn?.at(-1)
  if (own) return [answer, own]
  for (const it of [answer, ...before.toReversed()]) {
    const step = it.calls.flatMap((call) => call.steps).find((one) => given(one) && one.result === text)
    if (step) return [it, step]
  }
  return [answer, undefined]
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
