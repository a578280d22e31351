// This file is about money that somebody has, and what is spent of it: “700 put by; the lumber was 480 and the gravel 95, what is left?”, “how far over are we?”.
import { isList, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { billSaid } from './bill-lines.ts'
import { lastFigures } from './last-answer.ts'
import { isTax } from './prices-said.ts'
import { listGoesOn } from './money-left-said.ts'
import { moneyToSpend } from './money-to-spend.ts'
import { requestFor, tell } from './request-parts.ts'
import { messageOf, stem, type Token, tokens } from './stems.ts'

const asksLeft =
  /\b(left( over)?|leftover|remain\w*|how (far|much) (am i |are we )?(over|under|short)|how far (over|under|short)|over(spent)? (am i|are we)|(am i|are we|is (it|that)|does (it|that)( all)?|will (it|that)|would (it|that)) (still |all |go |come )?(over|under|within|inside|short|fit|enough|in budget|on budget|ok)|(over|under|within|inside) (the |our |my )?(budget|limit)|have (i|we) (got )?enough|do (i|we) have enough|enough (money|cash)|short (am i|are we)|to spare)\b/i
const asksOther =
  /\b(weigh\w*|lb|kg|kilos?|pounds? (over|of)|payload|truck|trailer|trips?|how (many|long|much) (?!(is |was |do |does |would |will |are |am |money |cash |have |i |we |over |under |short |left |remain|to ))|gap|a foot|per foot|a met(er|re))\b/i
/** The request of a message about what is left of the money, or one that goes on with it. */
export function moneyHadIn(heard: Heard, message: readonly Token[]): Request | undefined {
  if (heard.said.length > 400) return undefined
  const asks = asksLeft.test(heard.said)
  if (heard.job.named === 'money-left') return onward(heard, message) ?? listGoesOn(heard, message)
  const dropped = dropsOf(heard)
  if (!(asks || dropped) || asksOther.test(dropped ? '' : heard.said)) return undefined
  // A list of things alone is read by what is left of a budget, which goes on with more of them.
  if (listed.test(heard.said) && !dropped && !isOfOver.test(heard.said)) return undefined
  const budget = moneyToSpend(heard, { asks })
  if (!budget) return undefined
  const spent = spentIn(heard, message, [budget])
  if (!spent) return undefined
  const last = spent.length === 0 ? lastFigures(heard, 'money')[0] : undefined
  if (dropped && !spent.some((it) => it.word === 'spentPrices')) return undefined
  const price = dropped ? priceOf(dropped, spent) : undefined
  if (dropped && !price) return undefined
  return requestFor(
    'money-left',
    [dropped ? 'piecesToDrop' : isOfOver.test(heard.said) ? 'budgetShort' : 'budgetLeft'],
    [
      tell('budget', budget.tag),
      ...spent,
      ...(last ? [tell('spentAmounts', last.tag)] : []),
      ...(price ? [tell('pieceDropped', price)] : []),
    ],
  )
}
const isOfOver = /\b(over|short)\b(?! (for|to))/i

const listed = /\b(at|each|apiece|a piece|ea|per)\b|@|\bx\b/i
/** What was spent: amounts, each for all of a thing, or numbers of things with their prices; and the tax on it. Nothing where something is neither. */
function spentIn(heard: Heard, message: readonly Token[], but: readonly Tagged[]): Told[] | undefined {
  const rates = heard.readings.filter((it) => it.quantity?.kind === 'percent')
  const [rate, more] = rates
  if (more || (rate && !message.some(isTax))) return undefined
  const rest = heard.readings.filter((it) => !but.includes(it) && it !== rate && !isSaidOfThem(it, heard))
  const tax = rate ? [tell('spentTax', rate.tag)] : []
  const left = { ...heard, readings: rest }
  const said = rest.length > 0 && listed.test(heard.said) ? billSaid(left, messageOf(left)) : undefined
  if (said) {
    const isWhole = said.lines.length > 0 && said.lines.every((it) => it.count && it.price)
    const isPlain = !said.discount && !said.delivery && !said.spare && said.others.every(isSize)
    if (!isWhole || !isPlain) return undefined
    return [
      ...said.lines.flatMap((it) => [
        { ...tell('spentCounts', (it.count as Tagged).tag), thing: it.thing },
        tell('spentPrices', (it.price as Tagged).tag),
      ]),
      ...tax,
    ]
  }
  const isAmount = (it: Tagged): boolean =>
    mayBeMoney(it) && !it.per && (it.quantity?.kind === 'money' || /\.\d\d$/.test(it.said) || !isCount(it, heard))
  return rest.every(isAmount) ? [...rest.map((it) => tell('spentAmounts', it.tag)), ...tax] : undefined
}

const isSize = ({ section, quantity }: Tagged): boolean =>
  section !== undefined || /^(length|mass|volume|area)$/.test(quantity?.kind ?? '')
/** “On both of those”, “those three”. */
const isSaidOfThem = (it: Tagged, heard: Heard): boolean =>
  it.bare !== null && it.bare.compare(5) < 0 && /\b(those|these|the|all|them)\s*$/.test(wordsBefore(heard, it))
/** “12 posts”: a thing is counted. */
const isCount = (it: Tagged, heard: Heard): boolean => {
  const [, next = ''] = /^\s*(\p{L}+)/u.exec(wordsBehind(heard, it)) ?? []
  return (
    next !== '' &&
    !/^(for|and|plus|then|on|in|so|what|how|altogether|total|all|before|with|after|is|was|so|each|already|gone|spent|now|to|of|dollars|bucks|quid)$/.test(
      next,
    )
  )
}

const drops =
  /\bhow many (?:of the |fewer |less )?(\p{L}+)\b[^?]*\b(?:drop|cut|lose|leave out|leave off|do without|skip|take off|knock off|get rid of|come off)\b/iu
const fewer = /\bhow many fewer (\p{L}+)/iu
/** “How many pickets do we have to drop”: what is to be fewer. */
const dropsOf = ({ said }: Heard): string | undefined => {
  const [, thing] = drops.exec(said) ?? fewer.exec(said) ?? []
  return thing && stem(thing)
}

const priceOf = (thing: string, spent: readonly Told[]): string | undefined => {
  const at = spent.findIndex((it) => it.thing != null && tokens(it.thing).some((word) => word.stem === thing))
  return spent.slice(at).find((it) => it.word === 'spentPrices' && at >= 0)?.from.tag ?? undefined
}

/** “6 % tax on both, what is left then”, “and 7 posts at 14.20 each”, “how many pickets do we drop”. */
function onward(heard: Heard, message: readonly Token[]): Request | undefined {
  const { job, readings } = heard
  const of = (word: string) => job.decisions.find((it) => it.word === word && it.at === yard)
  const dropped = dropsOf(heard)
  if (dropped) {
    const names = of('spentCounts')?.called ?? []
    const at = names.findIndex((it) => tokens(it).some((word) => word.stem === dropped))
    const prices = of('spentPrices')?.value
    const same = of('budget')
    if (at < 0 || !isList(prices) || !same || readings.length > 1) return undefined
    const [mark] = readings
    return requestFor(
      'money-left',
      ['piecesToDrop'],
      [tell('pieceDropped', `told.spentPrices.${at}`), ...(mark && mayBeMoney(mark) ? [tell('budget', mark.tag)] : [])],
    )
  }
  if (readings.length === 0) return undefined
  const budget = moneyToSpend(heard, { isOn: true })
  const spent = spentIn(heard, message, budget ? [budget] : [])
  if (!spent || (spent.length === 0 && !budget)) return undefined
  // Things with their prices go on a list of such.
  const onList = spent.some((it) => it.word === 'spentPrices') ? listGoesOn(heard, message) : undefined
  if (onList) return onList
  const isTaxAlone = spent.every((it) => it.word === 'spentTax')
  const isAsked = job.asked.length > 0
  if (
    !isTaxAlone &&
    !isAsked &&
    !asksLeft.test(heard.said) &&
    !/\b(and|plus|also|then|another|it was|was)\b/i.test(heard.said)
  )
    return undefined
  const kept = ['spentAmounts', 'spentPrices', 'spentCounts'].flatMap((word) => {
    const value = of(word)?.value
    const isAdded = spent.some((it) => it.word === word)
    return isAdded && isList(value) && !isAsked ? value.map((_, i) => tell(word, `job.${word}.${i}`)) : []
  })
  return requestFor('money-left', job.wanted.length > 0 ? job.wanted.map((it) => it.word) : ['budgetLeft'], [
    ...(budget ? [tell('budget', budget.tag)] : []),
    ...kept,
    ...spent,
  ])
}
