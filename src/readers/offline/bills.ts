// This file is about bills: what so many of each at its price come to, then fewer of them, another price, tax, a discount, the delivery.
import { askable, calculationNamed, isList, vocabulary, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { type BillLine, type BillSaid, billSaid } from './bill-lines.ts'
import { isNamedIn, type LastFigure, lastCount, sumOf, workedBy } from './last-answer.ts'
import { empty, from } from './plain-phrases.ts'
import { pricesThings } from './things-priced.ts'
import { type Token, tokens } from './stems.ts'

const bill = askable.find((calc) => calc.needs.unitPrices && calc.needs.itemCounts)
const taxOn = askable.find((calc) => calc.needs.taxedAmounts)
const [counts, prices] = ['itemCounts', 'unitPrices']

const asksTotal =
  /\b(total|cost|damage|come[s]? (out )?to|came to|how much|bill|pay|paying|owe|altogether|all (in|up|told)|price|run me|set me back|spend|tally|add (it|them|that|those) up|in all|ring up|grand|what(['’]?s| is| do i| am i) (that|it|they|those|looking)|whats that)\b/i
// Another question is asked of numbers and prices: which is cheaper, how many trips, a quote, a hire, a plan of cuts.
const asksOther =
  /\b(cheap\w*|better|dearer|which|vs|versus|compare|quot\w+|bids?|rent\w*|hir(e|ing)|trips?|haul|weigh\w*|heavy|load|cut|cuts|(?<!\ba )pieces?|blade|kerf|saw|(per|a|by the|each) (board |square |sq |lineal |linear |running )?(foot|feet|ft|met(er|re)|m|yard|yd|bd|bf|kilo|kg|lb|pound|lit(er|re))\b|minimum|how many|how long|cover\w*|coats?|break[- ]?even|(deliver\w*|lorry|truck) or|or (deliver\w*|lorry))\b/i

/** The request of a message that tells a bill, or goes on with one; nothing where it is another matter. */
export function billIn(heard: Heard, message: readonly Token[]): Request | undefined {
  if (!bill || heard.said.length > 600) return undefined
  const onAmount = taxOnNumber(heard, message)
  if (onAmount) return onAmount
  if (isMark.test(heard.said)) return undefined
  const said = billSaid(heard, message)
  const told = heard.job.wanted.some((it) => bill?.gives[it.word]) ? billTold(heard) : undefined
  if (told) return said || heard.readings.length === 0 ? goingOn(heard, message, said, told) : undefined
  return said && (newBill(heard, message, said) ?? ofCounted(heard, message, said))
}

const request = (told: readonly Told[]): Request => ({
  ...empty,
  told: [...told],
  wants: [{ word: bill?.headlines[0] as string, at: yard }],
  calculation: bill?.name ?? null,
})

function newBill(heard: Heard, message: readonly Token[], said: BillSaid): Request | undefined {
  const { lines, isPriced, others } = said
  const isWhole = lines.length > 0 && lines.every((it) => it.count && it.price)
  if (!isWhole || asksOther.test(heard.said) || pricesThings(heard, false)) return undefined
  const isAsked = asksTotal.test(heard.said)
  if (!(isPriced && (isAsked || !heard.said.includes('?'))) && !(isAsked && lines.length > 1)) return undefined
  if (others.some((it) => !isSize(it))) return undefined
  return request([...lines.flatMap(toldOf), ...besides(heard, message, said)])
}

/** A length, a weight or a stick names what is bought: “1.8 m pales”, “80 lb bags”. */
const isSize = ({ section, quantity }: Tagged): boolean =>
  section !== undefined || /^(length|mass|volume|area)$/.test(quantity?.kind ?? '')

const toldOf = ({ thing, count, price }: BillLine): Told[] =>
  [
    ...(count ? [{ word: counts, at: yard, from: from(count.tag), thing }] : []),
    ...(price ? [{ word: prices, at: yard, from: from(price.tag) }] : []),
  ] as Told[]

/** Tax, discount and delivery. */
function besides(heard: Heard, message: readonly Token[], { tax, discount, delivery }: Partial<BillSaid>): Told[] {
  const one = (word: string, reading: Tagged | undefined): Told[] =>
    reading ? [{ word, at: yard, from: from(reading.tag) }] : []
  return [
    ...one('discount', discount),
    ...one('deliveryPrice', delivery),
    ...one('taxRate', tax),
    ...howTaxed(heard, message),
  ]
}

/** Whether the tax is in the prices, by the words that say so. A sales tax comes on top where nothing says otherwise; a VAT or GST may do either. */
export function howTaxed({ said }: Heard, message: readonly Token[]): Told[] {
  const tax = message.find((it) => /^(tax|vat|gst|hst|pst)$/.test(it.stem))
  if (!tax || isLeftOut(said)) return []
  const isIn =
    /\b(includ\w*|inclusive|incl?|already|in (it|them|that|there|the prices?)|out of|(tax|vat|gst|hst|pst) (is )?in)\b/i.test(
      said,
    )
  const isOut =
    /\b(not (yet )?(includ\w*|in)|ex|excl\w*|before|plus|add\w*|put|on|on top|with|then|and|needs?|extra)\b|\+/i.test(
      said,
    )
  const option =
    isIn && !/\bnot\b/i.test(said) ? 'included' : isOut || /^(tax|hst|pst)$/.test(tax.stem) ? 'added' : undefined
  return option ? [{ word: 'taxIncluded', at: yard, from: { tag: null, quote: tax.text, option, usual: null } }] : []
}

/** “What would they cost before tax?”: none is reckoned, where no rate is told. */
const isLeftOut = (said: string): boolean =>
  /\b(?:before|without|excluding|leaving out|not counting|ignoring|forget|ex) (?:any |the |sales )?(?:tax|vat|gst|hst)\b/i.test(
    said,
  ) && !/\d\s*(?:%|percent|per cent)|\bpercent\b/i.test(said)

interface BillTold {
  readonly names: readonly string[]
}
/** The bill of the talk so far, where it is whole. */
function billTold({ job }: Heard): BillTold | undefined {
  const of = (word: string) => job.decisions.find((it) => it.word === word && it.at === yard)
  const [many, each] = [of(counts), of(prices)]
  if (many?.of && isList(each?.value) && each.value.length === 1) return { names: [''] }
  if (!isList(many?.value) || !isList(each?.value) || many.value.length !== each.value.length) return undefined
  const size = many.value.length
  return { names: Array.from({ length: size }, (_, i) => many.called?.[i] ?? '') }
}

const stemsOf = (name: string): string[] => tokens(name).map((it) => it.stem)

/** Which line of the bill is meant: the one whose name holds the last word of it, or most of its words. */
function lineOf(thing: string, names: readonly string[]): number {
  const words = stemsOf(thing)
  const shared = names.map((it) => stemsOf(it).filter((word) => words.includes(word)).length)
  const most = Math.max(0, ...shared)
  return most > 0 && shared.filter((it) => it === most).length === 1 ? shared.indexOf(most) : -1
}

/** What a later message does to the bill: another number or price of a thing, a thing more or less, tax, discount, delivery. */
function goingOn(
  heard: Heard,
  message: readonly Token[],
  said: BillSaid | undefined,
  { names }: BillTold,
): Request | undefined {
  if (asksOther.test(heard.said)) return undefined
  const link = heard.job.decisions.find((it) => it.word === counts && it.at === yard)?.of
  const kept = (word: string, i: number): Told => ({
    word,
    at: yard,
    from: from(link && word === counts ? workedBy(link.calculation, link.word) : `job.${word}.${i}`),
  })
  const rows = names.map((_, i) => ({ count: kept(counts, i), price: kept(prices, i) }))
  if (!said || heard.readings.length === 0) {
    const out = withoutThing(heard, message, names)
    if (out >= 0) return request(rows.filter((_, i) => i !== out).flatMap((it) => [it.count, it.price]))
    const taxed = howTaxed(heard, message)
    return taxed.length > 0 && message.length < 8 ? request(taxed) : undefined
  }
  if (said.others.some((it) => !isSize(it))) return undefined
  // A number alone answers what was asked.
  if (heard.job.asked.length > 0 && said.lines.some((it) => it.thing === '' && !(it.count && it.price)))
    return undefined
  const more: Told[] = []
  for (const line of said.lines) {
    const at = lineOf(line.thing, names)
    const [count, price] = [
      toldOf(line).find((it) => it.word === counts),
      toldOf(line).find((it) => it.word === prices),
    ]
    // “If I do 3 rails?”, of so many to each: what is counted is worked from that.
    if (link && line.count && !line.price && !buys.test(heard.said)) {
      const word =
        link.calculation === 'so-many-each' ? (ofGroups.test(line.thing) ? 'groups' : 'piecesEach') : undefined
      if (!word || said.lines.length > 1) return undefined
      return request([{ word, at: yard, from: from(line.count.tag) }, ...besides(heard, message, said)])
    }
    const row = rows[at >= 0 ? at : names.length === 1 && !(count && price) ? 0 : -1]
    if (row) {
      if (count) row.count = at >= 0 ? { ...count, thing: names[at] } : count
      if (price) row.price = price
    } else if (count && price) more.push(count, price)
    else return undefined
  }
  // Prices are told again where another comes beside them, so that all are in one currency.
  const all = said.lines.length > 0 || said.delivery ? [...rows.flatMap((it) => [it.count, it.price]), ...more] : []
  const told = [...all, ...besides(heard, message, said)]
  return told.length > 0 ? request(told) : undefined
}

// “Is it under 400?” tells no price.
const isMark =
  /\b(?:is|are|will|would|do|does) (?:that|it|this|those|they|these)\b[^.]*\b(?:under|over|above|below|more than|less than|within)\b/i
const buys = /\b(buy|get|take|order|call it|make it|round|need)\b/i
const ofGroups = /\b(sections?|panels?|bays?|spans?|runs?)\b/i
const leavesOut = /^(without|drop|forget|skip|leave|lose|scrap|scratch|remove|no|minus|except)$/
/** “Without the posts”, “forget the screws”: the line that falls away. */
function withoutThing({ said }: Heard, message: readonly Token[], names: readonly string[]): number {
  const at = message.findIndex((it) => leavesOut.test(it.stem))
  if (at < 0 || names.length < 2) return -1
  return lineOf(said.slice(message[at + 1]?.start ?? said.length), names)
}

/** “At 2.79 each what do the pickets cost”, “£0.85 each”: what was counted before, at that price. */
function ofCounted(heard: Heard, message: readonly Token[], said: BillSaid): Request | undefined {
  const [line, more] = said.lines
  if (!line?.price || line.count || more || said.others.some((it) => !isSize(it)) || isAwaited(heard)) return undefined
  if (asksOther.test(heard.said) || heard.job.decisions.length === 0 || pricesThings(heard, false)) return undefined
  const isMoney = line.price.quantity?.kind === 'money'
  const isAlone = line.thing === '' && said.isPriced
  const of = lastCount(heard, message, isAlone)
  if (!of) return undefined
  // “Bundle is 37.80” is a price where bundles were counted; “the gap is 2.25” is none.
  const isCalled = isNamedIn(message, of.value) && !ofSizes.test(heard.said)
  if (!isMoney && !said.isPriced && !asksTotal.test(heard.said) && !isCalled) return undefined
  const spare = spareSaid(heard, said, of)
  const told: Told[] = [
    ...spare.told,
    { word: counts, at: yard, from: from(spare.tag ?? of.tag), thing: '' },
    { word: prices, at: yard, from: from(line.price.tag) },
  ]
  return request([...told, ...besides(heard, message, said)])
}

/** A price answers nothing where a size is asked beside what was worked: “what do they come to at 4.68 each?” goes on. */
const isAwaited = ({ job, said }: Heard): boolean =>
  job.asked.length > 0 &&
  (!asksTotal.test(said) ||
    job.asked.some((it) => !/^(?:length|choice|volume)$/.test(vocabulary.get(it.word)?.kind ?? '')))

const ofSizes = /\b(wide|width|long|length|tall|thick|deep|gap|apart|inch(es)?|spacing|diameter)\b/i

/** “With ten per cent over for splits”: spares of the sum that counted them. */
function spareSaid({ job }: Heard, { spare }: BillSaid, { tag }: LastFigure): { told: Told[]; tag?: string } {
  const [, of = '', counted = ''] = /^worked\.([^.]+)\.([^.]+)$/.exec(tag) ?? []
  const name = sumOf({ calculation: of, word: counted }, job)
  const calc = calculationNamed(name)
  const word = Object.keys(calc?.needs ?? {}).find((it) => it.endsWith('Spare'))
  const toBuy = job.results.find((it) => it.calculation === name && it.word.endsWith('ToBuy'))?.word
  if (!spare || !word || !toBuy) return { told: [] }
  return { told: [{ word, at: yard, from: from(spare.tag) }], tag: workedBy(name, toBuy) }
}

/** “Add 13 percent HST to 1845”, “add 20 % VAT to that”: an amount that was said without its currency, or was worked before. */
function taxOnNumber(heard: Heard, message: readonly Token[]): Request | undefined {
  const rates = heard.readings.filter((it) => it.quantity?.kind === 'percent')
  const rest = heard.readings.filter((it) => it.quantity?.kind !== 'percent')
  const [rate, amount] = [rates[0], rest[0]]
  if (!taxOn || !rate || rates.length > 1 || heard.job.asked.length > 0) return undefined
  if (!message.some((it) => /^(tax|vat|gst|hst|pst)$/.test(it.stem)) || asksOther.test(heard.said)) return undefined
  if (rest.length !== 1 || !amount?.bare || amount.bare.compare(10) < 0 || isOfThings(message, amount)) return undefined
  const told: Told[] = [
    { word: 'taxedAmounts', at: yard, from: from(amount.tag) },
    { word: 'taxRate', at: yard, from: from(rate.tag) },
    ...howTaxed(heard, message),
  ]
  return {
    ...empty,
    told,
    wants: [{ word: taxOn.headlines[0] as string, at: yard }],
    calculation: taxOn.name,
  }
}
/** “20 bags”: things are counted. */
const isOfThings = (message: readonly Token[], { tag }: Tagged): boolean => {
  const next = message[message.findIndex((it) => it.tag === tag) + 1]
  return (
    next !== undefined &&
    next.tag === undefined &&
    /^\p{L}/u.test(next.text) &&
    !/^(plus|with|and|add|at|before|incl?|includ\w*|ex|what|how|in|is|total|on|of|for|the|so|then|gst|vat|tax)$/.test(
      next.stem,
    )
  )
}
