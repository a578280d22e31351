// This file is about a sum with something about its answer in the same message: the price of each, what there is already, an amount it is held against.
// That is set aside, the rest is read as if it stood alone, and what was set aside is told of its answer.
import { calculationNamed, vocabulary, type Wanted, yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import { tell } from './request-parts.ts'
import type { Heard, Tagged } from '../reader.ts'
import { wordsBefore, wordsBehind } from './around.ts'
import { workedBy } from './last-answer.ts'
import { howTaxed } from './bills.ts'
import type { Token } from './stems.ts'
import { pricesThings } from './things-priced.ts'

type Read = (heard: Heard) => Request

/** The request of both together; nothing where there is nothing of the kind, or the rest is no sum by itself. */
export function saidWithin(heard: Heard, message: readonly Token[], read: Read): Request | undefined {
  if (heard.readings.length < 2 || pricesThings(heard, false)) return undefined
  return pricedWithin(heard, message, read) ?? hadWithin(heard, read) ?? againstWithin(heard, read)
}

const things =
  'bags?|pickets?|palings?|slats?|posts?|rails?|boards?|tins?|cans?|pots?|boxes|box|packs?|bundles?|pieces?|caps?|brackets?'
const thing = new RegExp(`\\b(${things})\\b`, 'gi')
const asksCost =
  /(?:,?\s*(?:and|so)\s+)?\b(?:what(?:['’]?s| is| do| does| will| would| shall| am i)?|whats|how much|total|cost|price|damage|spend)\b[^.?!;\n]*?(?:\b(?:costs?|come to|comes to|total|spend|pay|set me back|run me|damage|bill|price|spending)\b[^.?!;\n]*|$)|\b(?:total|cost)\b[^.?!;\n]*/gi

/** “16 pickets a panel, 14 panels, screws $11.98 a box of 75: how many boxes, and what do they cost?” */
function pricedWithin(heard: Heard, message: readonly Token[], read: Read): Request | undefined {
  const { said, readings } = heard
  const isPrice = (it: Tagged): boolean =>
    !it.per &&
    !/^\s*(an|a|per|\/)?\s*(hour|hr|day|week)/.test(wordsBehind(heard, it)) &&
    (it.quantity?.kind === 'money' ||
      (/^\d+\.\d\d$/.test(it.said) &&
        it.bare !== null &&
        /^\s*(each|apiece|ea\b|a piece|a |per )/.test(wordsBehind(heard, it))))
  const prices = readings.filter(isPrice)
  const [price] = prices
  if (
    !price ||
    prices.length > 1 ||
    !/\b(cost|total|spend|pay|come to|comes to|price|how much|damage|set me back)\b/i.test(said)
  )
    return undefined
  if (/\b(cheap\w*|which|versus|vs|budget|quot\w*|deliver\w*|minimum|labou?r)\b/i.test(said)) return undefined
  const rate = readings.find(
    (it) =>
      it.quantity?.kind === 'percent' &&
      /\b(tax|vat|gst|hst|pst)\b/.test(`${wordsBefore(heard, it)} ${wordsBehind(heard, it)}`),
  )
  const clause = priceClause(heard, price)
  const named = nameOfPriced(heard, price)
  // “12 bags at $5.98 each” is a line of a bill.
  const isLine = readings.some(
    (it) =>
      it.bare !== null &&
      wordsBehind(heard, it)
        .trim()
        .startsWith(named ?? ' '),
  )
  if (!named || (isLine && readings.length === 2)) return undefined
  const rest = blanked(said, [clause, ...(rate ? [[rate.start, rate.end] as const] : []), ...asked(said)])
  const isCounted = /\bhow many\b/i.test(rest)
  const inner = alone(heard, isCounted ? rest : `${rest} how many ${named}`, [price, ...(rate ? [rate] : [])], read)
  const of = inner && wantedOf(inner, 'count', named)
  if (!inner || !of) return undefined
  return {
    ...inner,
    told: [
      ...inner.told,
      { ...tell('itemCounts', toBuy(of)), thing: '' },
      tell('unitPrices', price.tag),
      ...(rate ? [tell('taxRate', rate.tag), ...howTaxed(heard, message)] : []),
    ],
    wants: [...inner.wants, { word: 'billTotal', at: yard }],
    calculation: 'bill',
  }
}

/** The price with what joins it: “at $4.85 each”, “cost £34 each”, “$11.98 per box”. */
function priceClause({ said }: Heard, { start, end }: Tagged): readonly [number, number] {
  const before =
    /(?:\b(?:and )?(?:at|are|is|r|cost|costs|for|theyre|they['’]re|they are|they cost|priced at)\s*|@\s*|[$£€]\s*)$/i.exec(
      said.slice(Math.max(0, start - 24), start),
    )
  const behind =
    /^\s*(?:each|apiece|ea\b|a piece|a pop|(?:a|an|per)\s+(?:box|bag|tin|can|pack|picket|post|rail|board|paling|bundle|piece))\b/i.exec(
      said.slice(end, end + 24),
    )
  // “$11.98 per box of 75” says how many are in one as well.
  const isOf = /^\s*of\s+\d/.test(said.slice(end + (behind?.[0].length ?? 0)))
  return [start - (before?.[0].length ?? 0), end + (isOf ? 0 : (behind?.[0].length ?? 0))]
}

/** What the price is of: “$11.98 per box”, else what stands before it in its sentence, else what the question names. */
function nameOfPriced(heard: Heard, price: Tagged): string | undefined {
  const [, behind] =
    new RegExp(`^\\s*(?:a|an|per|each|for each)\\s+(${things})\\b`, 'i').exec(wordsBehind(heard, price)) ?? []
  const sentence =
    heard.said
      .slice(0, price.start)
      .split(/[.;?!\n]\s/)
      .at(-1) ?? ''
  const before = [...sentence.matchAll(thing)].at(-1)?.[0]
  const asking = asked(heard.said)
    .flatMap(([from, to]) => [...heard.said.slice(from, to).matchAll(thing)])
    .at(-1)?.[0]
  return behind ?? asking ?? before
}

const asked = (said: string): (readonly [number, number])[] =>
  [...said.matchAll(asksCost)].map((it) => [it.index, it.index + it[0].length] as const)

/** The message with those stretches blank, so that everything else stands where it stood. */
const blanked = (said: string, spans: readonly (readonly [number, number])[]): string =>
  spans.reduce((text, [from, to]) => text.slice(0, from) + ' '.repeat(to - from) + text.slice(to), said)

/** The rest, read as a message of its own; nothing where it is no sum that can be worked. */
function alone(heard: Heard, said: string, without: readonly Tagged[], read: Read): Request | undefined {
  const readings = heard.readings.filter((it) => !without.includes(it))
  const inner = read({ ...heard, said, readings })
  const isSum = inner.declines.length === 0 && (inner.acts ?? []).length === 0 && (inner.notes ?? []).length === 0
  const quotes = inner.told.every((it) => it.from.quote === null || heard.said.includes(it.from.quote))
  return isSum && inner.wants.length > 0 && quotes ? inner : undefined
}

interface Given {
  readonly want: Wanted
  readonly calculation: string
}
/** The result of that kind that the rest asks for. */
function wantedOf(inner: Request, kind: string, named?: string): Given | undefined {
  const of = inner.wants.filter((it) => it.at === yard && vocabulary.get(it.word)?.kind === kind)
  const isNamed = ({ word }: Wanted): boolean =>
    named !== undefined && (vocabulary.get(word)?.noun ?? '').slice(0, 3) === named.toLowerCase().slice(0, 3)
  const want = of.find(isNamed) ?? of[0]
  if (!want) return undefined
  const isOwn = calculationNamed(inner.calculation ?? '')?.gives[want.word] !== undefined
  return { want, calculation: isOwn ? (inner.calculation as string) : '*' }
}
/** What is bought of it, spares and all, where the sum tells that. */
function toBuy({ want, calculation }: Given): string {
  const noun = vocabulary.get(want.word)?.noun
  const bought = Object.values(calculationNamed(calculation)?.gives ?? {}).find(
    (it) => it.name.endsWith('ToBuy') && it.noun === noun,
  )
  return workedBy(calculation, bought?.name ?? want.word)
}

const had =
  /\b(?:gave|left|lent|got|have|has|had|ve|bought|found|already|there are|theres)\s+(?:us |me |him |her )?(?:about |some |only |already |just )*$/i
const asksEnough = /[^.?!;\n]*\b(?:enough|how many more|still need|many more|short)\b[^.?!;\n]*/gi
/** “His dad gave us 60 pickets …, do we have enough?” */
function hadWithin(heard: Heard, read: Read): Request | undefined {
  const { said, readings } = heard
  const asks = [...said.matchAll(asksEnough)].map((it) => [it.index, it.index + it[0].length] as const)
  if (asks.length === 0) return undefined
  const there = readings.filter(
    (it) =>
      it.bare?.d === 1n &&
      had.test(wordsBefore(heard, it)) &&
      new RegExp(`^\\s*(?:\\p{L}+\\s){0,3}(${things})\\b`, 'iu').test(wordsBehind(heard, it)),
  )
  const [only, more] = there
  if (!only || more) return undefined
  const [, named = ''] = new RegExp(`^\\s*(?:\\p{L}+\\s){0,3}(${things})\\b`, 'iu').exec(wordsBehind(heard, only)) ?? []
  if (asks.some(([from, to]) => readings.some((it) => it.start >= from && it.end <= to && it !== only)))
    return undefined
  const inner = alone(heard, `${blanked(said, asks)} how many ${named}`, [only], read)
  const of = inner && wantedOf(inner, 'count', named)
  if (!inner || !of) return undefined
  return {
    ...inner,
    told: [...inner.told, tell('piecesWanted', workedBy(of.calculation, of.want.word)), tell('piecesHad', only.tag)],
    wants: [...inner.wants, { word: 'enoughPieces', at: yard }],
  }
}

const asksAgainst = /\b(?:is|are|would|will) (?:that|it|this|those|they)\b[^.?!;]*$|\b(?:thats|that['’]s)\b[^.?!;]*$/i
/** “22 holes 12 in across and 3 ft deep: is that a yard of concrete?” */
function againstWithin(heard: Heard, read: Read): Request | undefined {
  const { said, readings } = heard
  const mark = readings.at(-1)
  const kind = mark?.quantity?.kind
  if (!mark || (kind !== 'volume' && kind !== 'mass') || readings.length < 3) return undefined
  const before = asksAgainst.exec(said.slice(0, mark.start))
  if (!before) return undefined
  const [ofIt = ''] = /^\s*of\b/.exec(said.slice(mark.end)) ?? []
  const stuff =
    /\b(concrete|gravel|stone|soil|dirt|mulch|sand|spoil)\b/i.exec(said.slice(mark.end))?.[1] ??
    /\b(concrete|gravel|stone|dirt|mulch)\b/i.exec(said)?.[1]
  const what = stuff ?? (/\bholes?\b/i.test(said) && kind === 'volume' ? 'concrete' : undefined)
  if (!what) return undefined
  const rest = blanked(said, [[before.index, mark.end + ofIt.length]])
  const inner = alone(heard, `${rest} how much ${what} ${kind === 'volume' ? 'by volume' : 'by weight'}`, [mark], read)
  const of = inner && wantedOf(inner, kind)
  if (!inner || !of) return undefined
  return {
    ...inner,
    told: [...inner.told, tell(`${kind}Here`, workedBy(of.calculation, of.want.word)), tell(`${kind}Mark`, mark.tag)],
    wants: [...inner.wants, { word: 'comparison', at: yard }],
  }
}
