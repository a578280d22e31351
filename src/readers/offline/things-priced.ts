// This file is about what one of a thing costs, for the take-off of a whole fence: “posts are $18 each, pickets £3.20 a piece, delivery $60”.
// In a fence that is being planned a price belongs to the thing beside it, and stays with the job; it asks for no bill.
import { calculationNamed, isRun, runOf, sections, yard } from '../../../engine/index.ts'
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
  const bound: Bound[] = timberSold(message)
  const sold = new Set(bound.map((it) => it.reading.tag))
  const taken = new Set<string>()
  message.forEach((token, spot) => {
    if (!isMoney(token) || !token.reading || sold.has(token.reading.tag)) return
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

const ofSection = new Map(
  sections.flatMap((it) => (it.stock.called.things ?? []).map((thing) => [stem(thing), it] as const)),
)
const sells = /^(come|comes|sold|sell|sells|available|stock|stocks|offer|offers|has|have|lengths|length)$/

/** “Rails come in 8 ft at $6.80, 12 ft at $9.90 and 16 ft at $14”: which lengths of a section are sold, and at what price. */
function timberSold(message: readonly Token[]): Bound[] {
  const bound: Bound[] = []
  let from = 0
  while (from < message.length) {
    const stop = message.findIndex((token, at) => at >= from && isStop(token))
    const to = stop < 0 ? message.length : stop
    const whole = message.slice(from, to)
    // “Fence 4 ft tall, rails come in 8 ft and 12 ft”: what stands before the thing that is sold is another matter.
    const thing = whole
      .slice(
        0,
        Math.max(
          0,
          whole.findIndex((token) => sells.test(token.stem)),
        ),
      )
      .findLastIndex((token) => ofSection.has(token.stem))
    const sentence = whole.slice(whole.slice(0, Math.max(0, thing)).findLastIndex((it) => it.text === ',') + 1)
    const section = ofSection.get(sentence.find((token) => ofSection.has(token.stem))?.stem ?? '')
    const isSold = sentence.some((token) => sells.test(token.stem)) || sentence.filter(isMoney).length > 1
    const lengths = sentence.filter((token) => token.reading?.quantity?.kind === 'length' && !token.reading.section)
    if (
      section &&
      isSold &&
      lengths.length > 0 &&
      !sentence.some((token) => /^(above|apart|wide|deep|tall|high|gap)$/.test(token.stem))
    )
      for (const token of sentence) {
        if (lengths.includes(token))
          bound.push({ reading: token.reading as Bound['reading'], word: section.stock.name, at: yard, score: 1 })
        if (isMoney(token))
          bound.push({ reading: token.reading as Bound['reading'], word: section.prices.name, at: yard, score: 1 })
      }
    from = to + 1
  }
  const prices = bound.filter((it) => sections.some(({ prices: of }) => of.name === it.word)).length
  // A price for some lengths and none for others: which is whose is not for us to say.
  return prices === 0 || prices * 2 === bound.length ? bound : []
}

const cut: Readonly<Record<string, string>> = { rails: 'railSticks', posts: 'postBoards', pickets: 'picketSticks' }

/** “Cut plan for the rails”, “how do I cut the posts”: the sections of timber whose cut plan is asked for; all that are sold in lengths where none is named. */
export function cutPlansAsked(message: readonly Token[], { job }: Heard): string[] {
  const spoken = message.map((it) => it.stem)
  const isPlan = spoken.some(
    (it, at) => (it === 'cut' || it === 'cutting') && /^(plan|list|sheet|diagram|up)$/.test(spoken[at + 1] ?? ''),
  )
  const isHow = spoken.includes('how') && spoken.some((it) => it === 'cut') && spoken.some((it) => ofSection.has(it))
  if (!isPlan && !isHow) return []
  const named = sections.filter(({ stock }) => stock.called.things?.some((it) => spoken.includes(stem(it))))
  const told = sections.filter(({ stock }) => job.decisions.some((it) => it.word === stock.name))
  return (named.length > 0 ? named : told).map((it) => cut[it.section] as string)
}
