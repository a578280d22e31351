// This file is about what is left of so much money: “budget 700, 150 pickets at 2.40, what is left?”, then “less 12 posts at 11”, “can I still get 8 bags at 6?”.
import { isList, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { type BillLine, billSaid } from './bill-lines.ts'
import { moneyToSpend } from './money-to-spend.ts'
import { isTax } from './prices-said.ts'
import { requestFor, tell } from './request-parts.ts'
import { messageOf, stem, type Token } from './stems.ts'

const asksLeft =
  /\b(?:left|leftover|left over|remain\w*|change|enough|over budget|under budget|within (?:it|that|budget)|short|still (?:get|buy|afford)|cover it|do it)\b/i
const asksOther = /\b(?:how many|how long|how far|which|cheaper|quote|trips?)\b/i

/** The request of a message that buys things out of so much money. */
export function moneyLeftIn(heard: Heard): Request | undefined {
  const { said, readings } = heard
  if (asksOther.test(said) || heard.job.asked.length > 0 || readings.some((it) => it.per)) return undefined
  const budget = moneyToSpend(heard, { asks: asksLeft.test(said) })
  if (!budget) return undefined
  const bought = linesOf({ ...heard, readings: readings.filter((it) => it !== budget) })
  if (!bought || bought.lines.length === 0 || (!asksLeft.test(said) && said.includes('?'))) return undefined
  return requestFor(
    'money-left',
    ['budgetLeft'],
    [tell('budget', budget.tag), ...bought.lines.flatMap(toldOf), ...taxOf(bought.tax)],
  )
}

type Whole = Required<Pick<BillLine, 'thing' | 'count' | 'price'>>
interface Bought {
  readonly lines: readonly Whole[]
  readonly tax: Tagged | undefined
}

/** The things that are bought, each with its number and its price; nothing where one of them lacks either. */
function linesOf(heard: Heard): Bought | undefined {
  const said = billSaid(heard, messageOf(heard))
  if (!said || said.others.some((it) => !isSize(it)) || said.discount || said.delivery || said.spare) return undefined
  const lines = said.lines.flatMap(({ thing, count, price }) => (count && price ? [{ thing, count, price }] : []))
  return lines.length === said.lines.length ? { lines, tax: said.tax } : undefined
}
const isSize = ({ section, quantity }: Tagged): boolean =>
  section !== undefined || /^(length|mass|volume)$/.test(quantity?.kind ?? '')

const toldOf = ({ thing, count, price }: Whole): Told[] => [
  { ...tell('spentCounts', count.tag), thing },
  tell('spentPrices', price.tag),
]
const taxOf = (tax: Tagged | undefined): Told[] => (tax ? [tell('spentTax', tax.tag)] : [])

const putsRight = /\b(?:no|not|actually|instead|rather|sorry|make (?:it|that)|i mean|was|were)\b/i
/** More that is bought, another number of one thing, tax on all of it, or another sum to spend: of a list of things that is told already. */
export function listGoesOn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, readings, job } = heard
  if (asksOther.test(said) || readings.length === 0 || job.asked.length > 0) return undefined
  const [only, more] = readings
  if (only && !more && only.quantity?.kind === 'percent')
    return message.some(isTax) ? requestFor('money-left', ['budgetLeft'], taxOf(only)) : undefined
  const many = job.decisions.find((it) => it.word === 'spentCounts' && it.at === yard)
  const names = many?.called ?? []
  if (job.decisions.some((it) => it.word === 'spentAmounts' && it.at === yard)) return undefined
  if (!isList(many?.value) || names.length !== many.value.length) return undefined
  const kept = (i: number): Told[] => [
    { ...tell('spentCounts', `job.spentCounts.${i}`), thing: names[i] as string },
    tell('spentPrices', `job.spentPrices.${i}`),
  ]
  const budget = moneyToSpend(heard)
  if (budget && !more) return requestFor('money-left', ['budgetLeft'], [tell('budget', budget.tag)])
  const rest = { ...heard, readings: readings.filter((it) => it !== budget) }
  const bought = linesOf(rest)
  const told = [...(budget ? [tell('budget', budget.tag)] : []), ...taxOf(bought?.tax)]
  const isSame = (one: string, other: string): boolean => stem(lastOf(one)) === stem(lastOf(other))
  if (bought && bought.lines.length > 0) {
    // “No, 7 posts at 14.20” stands in the place of the posts; “and 4 corner posts at 22” comes to them.
    const isRight = putsRight.test(said)
    const stay = names.flatMap((name, i) =>
      isRight && bought.lines.some((it) => isSame(it.thing, name)) ? [] : kept(i),
    )
    return requestFor('money-left', ['budgetLeft'], [...told, ...stay, ...bought.lines.flatMap(toldOf)])
  }
  // “Make it 180 pickets”: another number of a thing that is on the list already.
  const lines = billSaid(rest, messageOf(rest))?.lines ?? []
  const [line, another] = lines
  const at = names.findIndex((it) => line && isSame(it, line.thing))
  if (!line || another || at < 0 || rest.readings.length > 1) return undefined
  const told2 = names.flatMap((thing, i): Told[] =>
    i !== at
      ? kept(i)
      : [
          { ...tell('spentCounts', line.count?.tag ?? `job.spentCounts.${i}`), thing },
          tell('spentPrices', line.price?.tag ?? `job.spentPrices.${i}`),
        ],
  )
  return requestFor('money-left', ['budgetLeft'], [...told, ...told2])
}
const lastOf = (name: string): string => name.trim().split(/\s+/).at(-1)?.toLowerCase() ?? ''
