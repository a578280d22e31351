// This file is about what one of a thing costs, for the take-off of a whole fence: “posts are $18 each, pickets £3.20 a piece, delivery $60”.
// In a fence that is being planned a price belongs to the thing beside it, and stays with the job; it asks for no bill.
import { calculationNamed, isRun, runOf, yard } from '../../../engine/index.ts'
import type { Heard } from '../reader.ts'
import type { Bound } from './bound.ts'
import { stem, type Token } from './stems.ts'

const takeOff = calculationNamed('take-off')
const priced = Object.values(takeOff?.needs ?? {}).filter((word) => word.kind === 'money' && word.called.things)
const byThing = new Map(
  priced.flatMap((word) => (word.called.things ?? []).map((it) => [stem(it), word.name] as const)),
)

const isStop = (token: Token | undefined): boolean => token === undefined || /^[.;?!\n]$/.test(token.text)
const isBreak = (token: Token | undefined): boolean =>
  isStop(token) || token?.text === ',' || /^(and|plus|but)$/.test(token?.stem ?? '')
const isMoney = (token: Token | undefined): boolean => token?.reading?.quantity?.kind === 'money'

/** Whether prices belong to things here: a fence is being planned by its runs, or its take-off is asked for. */
export const pricesThings = ({ job }: Heard, asksTakeOff: boolean): boolean =>
  asksTakeOff || job.decisions.some((it) => isRun(runOf(it.at))) || job.wanted.some((it) => takeOff?.gives[it.word])

/** Each price with the thing that stands before it, “pickets are $3.20”, or right after, “$3.20 a picket”. */
export function thingsPriced(message: readonly Token[]): Bound[] {
  const bound: Bound[] = []
  const taken = new Set<string>()
  message.forEach((token, spot) => {
    if (!isMoney(token) || !token.reading) return
    const word = thingAfter(message, spot) ?? thingBefore(message, spot)
    if (!word || taken.has(word)) return
    taken.add(word)
    bound.push({ reading: token.reading, word, at: yard, score: 1 })
  })
  return bound
}

/** “$3.20 a picket”, “$6.75 per 60 lb bag”, “$9 for each hinge”. */
function thingAfter(message: readonly Token[], spot: number): string | undefined {
  let at = spot + 1
  if (!/^(a|an|per|each|for|the)$/.test(message[at]?.stem ?? '')) return undefined
  while (!isBreak(message[at]) && at - spot <= 6) {
    const word = byThing.get(message[at]?.stem ?? '')
    if (word) return word
    at++
  }
  return undefined
}

/** “Posts are $18”, “hinges £11 each”: the nearest thing before it in its clause, past no other price. */
function thingBefore(message: readonly Token[], spot: number): string | undefined {
  for (let at = spot - 1; at >= 0 && spot - at <= 10; at--) {
    if (isBreak(message[at]) || isMoney(message[at])) return undefined
    const word = byThing.get(message[at]?.stem ?? '')
    if (word) return word
  }
  return undefined
}
