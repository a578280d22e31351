// This file is about money that is said without its sign, and measures that only a talk of money or loads makes plain:
// “works out at 23 a foot”, “42 a yd and 65 delivery”, “8.25 tax”, “is that a yard?”.
import type Fraction from 'fraction.js'
import { inQuotes } from './money.ts'
import { amountIn, quantity } from './quantity.ts'
import type { Reading } from './reading.ts'

/** The readings, with prices by the measure, rates of tax and yards of loose stuff as what they are. */
export const inMoney = (readings: readonly Reading[], text: string): Reading[] =>
  yardsOfLoads(withMarks(byMeasure(ratesOfTax(inQuotes(readings, text), text), text), text), text)

const money =
  /\b(costs?|cheap\w*|price[ds]?|pric(ey|ing)|spend\w*|budget|charg\w+|quot\w+|pay\w*|dear\w*|deliver\w*|delivery|installed|all in|how much)\b|[$£€]|\b(bucks|quid|dollars?|euros?)\b/i
const measures: readonly (readonly [RegExp, string])[] = [
  [/^(?:square|sq\.?) ?(?:foot|feet|ft)\b|^sqft\b/i, 'ft2'],
  [/^(?:square|sq\.?) ?(?:met(?:re|er)|m)\b|^sqm\b/i, 'm2'],
  [/^(?:cubic|cu\.?) ?(?:foot|feet|ft)\b/i, 'ft3'],
  [/^(?:cubic|cu\.?) ?(?:yards?|yd|yrd)\b/i, 'yd3'],
  [/^(?:cubic|cu\.?) ?(?:met(?:re|er)|m)\b|^cube\b|^m[3³]/i, 'm3'],
  [/^(?:(?:running|lineal|linear|lin\.?) )?(?:foot|ft)\b/i, 'ft'],
  [/^(?:(?:running|lineal|linear|lin\.?) )?(?:met(?:re|er)|m)\b/i, 'm'],
  [/^(?:yards?|yd|yrd)\b/i, 'yd'],
]

/** “23 a foot”, “42 a yd”, “290 a cube”, “35 per metre”: a number alone for one measure is its price, where money is spoken of. */
function byMeasure(readings: readonly Reading[], text: string): Reading[] {
  const isOfMoney = money.test(text)
  const taken = new Set<Reading>()
  const all = readings.map((it) => {
    // “12 boards at 4.50 a foot” is known for a price already.
    const price = it.quantity?.unit === 'money' && !it.per ? it.quantity : undefined
    const isPlain = isOfMoney && it.bare !== null && !it.clock && !it.proportion && !it.change && !it.people
    if (!(price || isPlain) || !/^\d+(\.\d\d?)?$/.test(it.said)) return it
    const behind = text.slice(it.end, it.end + 40)
    const [joint = ''] = /^\s*(?:(?:an?|per|each|every|by the)\s+|\/\s*)/i.exec(behind) ?? []
    const rest = behind.slice(joint.length)
    const unit = joint && measures.find(([called]) => called.test(rest))
    if (!unit) return it
    const [called = ''] = unit[0].exec(rest) ?? []
    const end = it.end + joint.length + called.length
    for (const other of readings) if (other.start >= it.end && other.end <= end) taken.add(other)
    return {
      ...it,
      end,
      said: text.slice(it.start, end),
      quantity: price ?? quantity(it.bare as Fraction, 'money'),
      bare: null,
      per: unit[1],
    }
  })
  return all.filter((_, i) => !taken.has(readings[i] as Reading))
}

const tax = '(?:sales tax|tax|vat|gst|hst|pst)'
const behindRate = new RegExp(`^\\s*(?:percent\\s+)?${tax}\\b(?!\\s+(?:of|is|at|in|incl\\w*)\\b)`, 'i')
const beforeRate = new RegExp(`\\b${tax}(?:\\s+(?:rate|here))?(?:\\s+(?:is|of|at|rate|are|was))*\\s*[:=]?\\s*$`, 'i')
const mostTax = 30

/** “8.25 tax”, “vat at 20”, “hst is thirteen”: a rate, though nobody said percent. */
const ratesOfTax = (readings: readonly Reading[], text: string): Reading[] =>
  readings.map((it) => {
    if (it.bare === null || it.section || it.clock || it.proportion || it.bare.compare(mostTax) > 0) return it
    if (it.bare.compare(1) < 0) return it
    const [before, behind] = [text.slice(Math.max(0, it.start - 24), it.start), text.slice(it.end, it.end + 24)]
    const ends =
      /^\s*(?:$|[.,;?!)\n]|(?:on|for|and|plus|then|too|also|here|please|added|in|included|extra|what|whats|how|so|total)\b)/i
    return behindRate.test(behind) || (beforeRate.test(before) && ends.test(behind))
      ? { ...it, quantity: quantity(it.bare, 'percent'), bare: null }
      : it
  })

const asksAgainst =
  /\b(?:(?:is|are|would|will|does|was) (?:that|it|this|those|they|these|all that|that all)|(?:that|it)['’]?s|thats|(?:more|less) than|over|under|at least)\b[^.?!;,]{0,24}?\b(an?|one) (cubic yards?|cu yd|yards?|yd|cube|cubic met(?:re|er)|tons?|tonne)\b(?! (?:of (?:fence|lumber|wood)|wide|long|high|tall|deep|apart|from|away|off|stick))/gi
const marks = (called: string): string =>
  /^tonne/i.test(called) ? 'tonne' : /^ton/i.test(called) ? 'ton' : /^(cube|cubic m)/i.test(called) ? 'm3' : 'yd3'
/** “Is that a yard?”, “is it over a ton?”: one of them, which an amount is held against. */
function withMarks(readings: readonly Reading[], text: string): Reading[] {
  const more = [...text.matchAll(asksAgainst)].flatMap((found): Reading[] => {
    const [whole, one, called] = found as unknown as [string, string, string]
    const end = found.index + whole.length
    const start = end - called.length - 1 - one.length
    if (readings.some((it) => it.end > start && it.start < end)) return []
    if (/half $/i.test(text.slice(0, start))) return []
    const said = text.slice(start, end)
    return [{ start, end, said, quantity: quantity(1, marks(called)), bare: null, firmness: 'exactly', rivals: [] }]
  })
  return more.length === 0 ? [...readings] : [...readings, ...more].sort((a, b) => a.start - b.start)
}

const loads =
  /\b(bulk|truck\w*|loads?|ready.?mix|lorry|concrete|gravel|mulch|topsoil|soil|stone|sand|dirt|minimum|cubic)\b/i
const delivered = /\b(deliver\w*|half yards?)\b/i
const ofFence = /\b(fenc\w*|rails?|pickets?|boards?|long|wide|rope|wire)\b/i
const pointsAtAmount =
  /\b(?:is|are|would|will) (?:that|it|this|those|all that)\b[^.?!]{0,20}\b(?:half an? |quarter of an? |\d[\d./ ]*|two |three )(?:yards?|yds?)\b(?! of fence)/i
/** “175 a yd with a 2 yd minimum”, “is that more than half a yard?”: of stuff that is bought by the load a yard is a cubic one. */
function yardsOfLoads(readings: readonly Reading[], text: string): Reading[] {
  const isLoad =
    (readings.some((it) => it.per === 'yd' || it.per === 'yd3') &&
      (loads.test(text) || (delivered.test(text) && !ofFence.test(text)))) ||
    pointsAtAmount.test(text)
  if (!isLoad) return [...readings]
  return readings.map((it) =>
    it.quantity?.kind === 'length' && it.quantity.unit === 'yd' && !it.section
      ? {
          ...it,
          quantity: quantity(amountIn(it.quantity, 'yd'), 'yd3'),
          note: 'a yard of loose material is a cubic yard',
        }
      : it,
  )
}
