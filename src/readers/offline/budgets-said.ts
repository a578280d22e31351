// This file is about so much money to spend: “I have 1500 to spend at 23 a foot”, “£650: after the posts and the bags, how many pickets?”.
import { yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import { requestFor, tell } from './request-parts.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { billSaid } from './bill-lines.ts'
import { isTax, soldByIn } from './prices-said.ts'
import { messageOf, stem, type Token, tokens } from './stems.ts'

const speaksOfBudget =
  /\b(budget\w*|to spend|in (?:my pocket|hand|the bank)|to work with|to play with|put (by|aside|away)|saved( up)?|set aside|afford|stretch to|run to|is all (i|we)|for (the|my) money)\b/i
const behindBudget =
  /^\s*(?:bucks|quid|dollars|pounds|euros?)?\s*(to spend|in (?:my pocket|hand|the bank)|to work with|to play with|budget|saved|put (by|aside)|set aside|is (all|my|our)|in the kitty|total to spend|max|tops)\b/
const beforeBudget =
  /\b(budget( is| of|:)?|budget['’]s|spend(ing)?|budget (?:was|were|became|went (?:up|down) to)|put (by|aside)|saved( up)?|set aside|afford|(i|we)( ?['’]?ve| have)?( only| just)?( got| have)|have|got)\s*(only |just |about |around |up to |roughly )?[$£€]?$/

/** The request of a message that says what there is to spend, or goes on with one. */
export function budgetIn(heard: Heard, message: readonly Token[]): Request | undefined {
  if (heard.job.named === 'budget-length' || heard.job.named === 'budget-pieces') {
    const onward = budgetOnward(heard, message)
    if (onward) return onward
  }
  const budget = budgetSaid(heard)
  if (!budget) return undefined
  return lengthFor(heard, budget) ?? piecesFor(heard, budget)
}

/** The money that there is to spend, where the message says that it is that. */
export function budgetSaid(heard: Heard): Tagged | undefined {
  if (!speaksOfBudget.test(heard.said)) return undefined
  const money = heard.readings.filter((it) => mayBeMoney(it) && !it.per)
  return (
    money.find((it) => behindBudget.test(wordsBehind(heard, it))) ??
    money.find((it) => beforeBudget.test(wordsBefore(heard, it)))
  )
}

const isLength = ({ quantity, section }: Tagged): boolean => quantity?.kind === 'length' && !section
const asksLength =
  /\b(how (long|much fence|many (feet|foot|ft|met(re|er)s))|what length|how far|how short|short am i|enough)\b/i

/** “1500 to spend, works out at 23 a foot, how long a fence?” */
function lengthFor(heard: Heard, budget: Tagged): Request | undefined {
  const prices = heard.readings.filter((it) => it.per && /^(ft|m|yd)$/.test(it.per))
  const [price] = prices
  const lengths = heard.readings.filter(isLength)
  if (!price || prices.length > 1 || lengths.length > 1 || heard.readings.length > 2 + lengths.length) return undefined
  if (!asksLength.test(heard.said) && lengths.length === 0) return undefined
  const [length] = lengths
  return requestFor(
    'budget-length',
    [length ? 'budgetShort' : 'affordableLength'],
    [tell('budget', budget.tag), ...priced(price, heard), ...(length ? [tell('pricedLength', length.tag)] : [])],
  )
}

const priced = (price: Tagged, { said }: Heard): Told[] => [
  tell('measurePrice', price.tag),
  ...soldByIn([{ reading: price, word: 'measurePrice', at: yard, score: 1 }], said),
]

/** “How many pickets can I buy?”: what the question counts has one price, and everything else has its number. */
function piecesFor(heard: Heard, budget: Tagged): Request | undefined {
  const [, asked = ''] = /\bhow many\s+(?:more\s+)?(\p{L}+)/iu.exec(heard.said) ?? []
  if (asked === '') return undefined
  const rest = heard.readings.filter((it) => it !== budget)
  const prices = rest.filter((it) => mayBeMoney(it) && !it.per)
  const thing = stem(asked)
  const isOfThing = (it: Tagged): boolean =>
    tokens(`${clauseBefore(heard, it)} ${wordsBehind(heard, it).split(/[,;]/)[0] ?? ''}`).some(
      (word) => word.stem === thing,
    )
  const money = prices.filter((it) => it.quantity?.kind === 'money' || /\.\d\d$/.test(it.said))
  const own = money.filter(isOfThing)
  const price = own.length > 0 ? own.at(-1) : money.length === 1 ? money[0] : undefined
  if (!price) return undefined
  const others = rest.filter((it) => it !== price)
  const left = { ...heard, readings: others }
  const said = others.length === 0 ? undefined : billSaid(left, messageOf(left))
  if (others.length > 0 && !said) return undefined
  if (
    said &&
    (said.lines.some((it) => !it.count || !it.price) || said.others.length > 0 || said.discount || said.delivery)
  )
    return undefined
  return requestFor(
    'budget-pieces',
    ['affordablePieces'],
    [
      tell('budget', budget.tag),
      tell('pieceBought', price.tag),
      ...(said?.lines ?? []).flatMap((it) => [
        { ...tell('itemCounts', (it.count as Tagged).tag), thing: it.thing },
        tell('unitPrices', (it.price as Tagged).tag),
      ]),
      ...(said?.tax ? [tell('taxRate', said.tax.tag)] : []),
    ],
  )
}

/** What stands before it in its clause, past no other amount. */
const clauseBefore = (heard: Heard, it: Tagged): string => {
  const earlier =
    heard.readings.filter((other) => other.end <= it.start && other.quantity?.kind === 'money').at(-1)?.end ?? 0
  return wordsBefore(heard, it).slice(-Math.max(0, it.start - earlier))
}

/** “It needs to be 84 ft, how short am I?”, “those are before VAT at 20 %”, “what if it is 26 a foot”. */
function budgetOnward(heard: Heard, message: readonly Token[]): Request | undefined {
  const [only, more] = heard.readings
  if (!only || more) return undefined
  if (heard.job.named === 'budget-length') {
    if (isLength(only) && !only.change)
      return requestFor('budget-length', ['budgetShort'], [tell('pricedLength', only.tag)])
    if (only.per && /^(ft|m|yd)$/.test(only.per))
      return requestFor('budget-length', ['affordableLength'], priced(only, heard))
    return undefined
  }
  const isRate = only.quantity?.kind === 'percent' && message.some(isTax)
  return isRate ? requestFor('budget-pieces', ['affordablePieces'], [tell('taxRate', only.tag)]) : undefined
}
