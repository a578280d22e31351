// This file is about so much money to spend: “I have 1500 to spend at 23 a foot”, “£650: after the posts and the bags, how many pickets?”.
import { isList, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import { requestFor, tell } from './request-parts.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { billSaid } from './bill-lines.ts'
import { moneyToSpend } from './money-to-spend.ts'
import { isTax, soldByIn } from './prices-said.ts'
import { messageOf, stem, type Token, tokens } from './stems.ts'

/** The request of a message that says what there is to spend, or goes on with one. */
export function budgetIn(heard: Heard, message: readonly Token[]): Request | undefined {
  if (heard.job.named === 'budget-length' || heard.job.named === 'budget-pieces') {
    const onward = budgetOnward(heard, message)
    if (onward) return onward
  }
  const budget = moneyToSpend(heard, { asks: asksBuys.test(heard.said) })
  if (!budget) return undefined
  return lengthFor(heard, budget) ?? piecesFor(heard, budget)
}

/** “How many pickets can I get”, “what can I get for that”. */
const asksBuys =
  /\bhow many\b[^.?!]*\b(?:can|could|will|would|do|does|may)\b[^.?!]*\b(?:get|buy|afford|have|stretch|cover|pay for)\b/i

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
  // “How many can I get?” names nothing.
  const thing = /^(?:can|could|will|would|do|does|may|of|is|are)$/i.test(asked) ? '' : stem(asked)
  const isOfThing = (it: Tagged): boolean =>
    thing !== '' &&
    tokens(`${clauseBefore(heard, it)} ${wordsBehind(heard, it).split(/[,;]/)[0] ?? ''}`).some(
      (word) => word.stem === thing,
    )
  const money = prices.filter((it) => it.quantity?.kind === 'money' || /\.\d\d$/.test(it.said))
  const own = money.filter(isOfThing)
  const each = money.filter((it) => ofEach.test(wordsBehind(heard, it)))
  const price = own.length > 0 ? own.at(-1) : money.length === 1 ? money[0] : each.length === 1 ? each[0] : undefined
  if (!price) return undefined
  const spent = rest.filter((it) => it !== price && mayBeMoney(it) && !it.per && isSpent(heard, it))
  const others = rest.filter((it) => it !== price && !spent.includes(it))
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
      ...spent.map((it) => tell('spentAmounts', it.tag)),
      ...(said?.tax ? [tell('taxRate', said.tax.tag)] : []),
    ],
  )
}

const ofEach = /^\s*(?:each|apiece|ea|a (?:piece|pop|go|time|shot)|per\b|an?\b|every\b)/
const spends =
  /\b(?:ate(?: up)?|eaten(?: up)?|spent|spend|took|taken|takes?|cost|costs|came to|comes? to|went(?: on)?|goes|gone|paid|used(?: up)?|swallowed|blew|blown|put|was|were|is|are|already|so far)(?: me| us| about| another| up| already)*\s*[$£€]?$/
const isGone =
  /^\s*(?:dollars |bucks |quid |euros |pounds )?(?:(?:is|are|was|were|has|have|all) )*(?:already )?(?:gone|went|spent|goes|used|paid|for (?:the )?(?:posts|rails|concrete|gravel|lumber|timber|wood|bags|screws|paint|gate|hinges)|on (?:the )?(?:posts|rails|concrete|gravel|lumber|timber|wood|bags|screws|paint|gate|hinges))\b/
/** “Posts and concrete ate 312.40”, “$90 went on gravel”: an amount for all of a thing, and no price of one. */
const isSpent = (heard: Heard, it: Tagged): boolean =>
  (it.quantity?.kind === 'money' || /\.\d\d$/.test(it.said)) &&
  !ofEach.test(wordsBehind(heard, it)) &&
  (isGone.test(wordsBehind(heard, it)) || spends.test(wordsBefore(heard, it)))

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
  if (only.bare?.d === 1n && !only.section && asksShort.test(heard.said)) return shortOf(heard, only)
  const isRate = only.quantity?.kind === 'percent' && message.some(isTax)
  return isRate ? requestFor('budget-pieces', ['affordablePieces'], [tell('taxRate', only.tag)]) : undefined
}

const asksShort =
  /\b(?:how (?:far|much)(?: more)?(?: money| cash)?\b[^.?!]*\b(?:short|over|lack\w*|need|extra|find|missing)|short (?:am i|are we)|(?:am i|are we|will i be|would i be) short|how short|enough)\b/i
/** “I need 130 though, how much am I short?”: that many at the price that was told, with all that is spent beside them. */
function shortOf({ job }: Heard, many: Tagged): Request | undefined {
  const of = (word: string) => job.decisions.find((it) => it.word === word && it.at === yard)
  const row = (word: string): number => {
    const value = of(word)?.value
    return isList(value) ? value.length : 0
  }
  if (!of('budget') || !of('pieceBought') || row('itemCounts') !== row('unitPrices')) return undefined
  const names = of('itemCounts')?.called ?? []
  return requestFor(
    'money-left',
    ['budgetShort'],
    [
      ...Array.from({ length: row('spentAmounts') }, (_, i) => tell('spentAmounts', `job.spentAmounts.${i}`)),
      ...Array.from({ length: row('itemCounts') }, (_, i) => ({
        ...tell('spentCounts', `told.itemCounts.${i}`),
        thing: names[i] ?? '',
      })),
      { ...tell('spentCounts', many.tag), thing: 'pieces' },
      ...Array.from({ length: row('unitPrices') }, (_, i) => tell('spentPrices', `told.unitPrices.${i}`)),
      tell('spentPrices', 'told.pieceBought'),
      ...(of('taxRate') ? [tell('spentTax', 'told.taxRate')] : []),
    ],
  )
}
