// This file is about bare numbers that can only be millimetres: “3000 opening”, “bays 2400”. Nobody means 3,000 in of a gate, or 2,400 ft of a bay.
import type Fraction from 'fraction.js'
import { inLayout, inMetres, isBackFrom } from './bare-layout.ts'
import type { Habits } from './found.ts'
import { quantity } from './quantity.ts'
import type { Reading } from './reading.ts'
import { unitNamed } from './units.ts'

// No part of a fence is as many inches long, and hardly one as many millimetres short.
const [least, most] = [300, 12_000]
// What is said behind a size of a part, and what before it. A plural that can be counted is none of them: “300 posts”.
const behind =
  /^\s*(?:mm\s+)?(?:(?:clear|gate|one|for the|for each|between|at the|x)\s+)?(?:opening|openings|gap|centres?|centers?|crs|ctrs|c\/c|oc|o\.c|apart|spacings?|spaced|bay|gate|leaf|fence|panel|post|picket|paling|pale|rail|wide|high|tall|clear|above|out of the|off the|in the ground|into the|below|leg|string|diagonal|diag|falls?|drop|max)\b/i
const before =
  /\b(?:(?:opening|bays?|centres|centers|leaf|leaves|heights?|widths?|spacings?|embedment|leg|diagonal|diag|tape|falls?|drops?|dropped|falling|dropping|rises?)(?:\s+(?:is|are|of|at|by|reads?|says?|about|measures?|be))*|posts?\s+(?:at|every|are|is)|(?:fence|pickets?|palings?|gate|posts?)\s+(?:is|are)(?:\s+(?:only|about))?|\b(?:picket|paling|pale|slat|gate|post|rail|stile))\s*[:=]?\s*$/i
// Nobody has as many bays.
const bays = /^\s*bays\b/i
const mostBays = 900
const isWhole = /^\d{1,2},?\d{3}$|^\d{3}$/
const alongAll = /^\s*(?:long|of fence|fence line|run)\b/i
// A fence of as many feet or metres nobody measures in one go; and a picket of as many inches there is none.
const longestInFeet = 10_000
const thinPart =
  /\b(?:pickets?|palings?|pales?|slats?)(?: are| is|,)?\s+([4-9]\d|1\d\d)\s+wide\b|\b([4-9]\d|1\d\d)\s+wide\s+(?:pickets?|palings?|pales?|slats?)\b/i
// “The yard has 1800, 2100 or 2400”: lengths that are sold, a row of them.
const onSale =
  /\b(?:yard|store|shop|merchants?|they|it|lengths?|stock|timber|only|we|i|you)(?:'s|'ve)?\s+(?:has|have|had|sells?|stocks?|got|gets?|comes? in|come in|in|of|do|does)\s*:?\s*$/i
const inARow = /^\s*(?:,|\/|&|or|and|,\s*(?:or|and))?\s*$/i

/** Bare sizes of the parts of a fence, of 300 and more, where nothing else of the message is in feet and inches: millimetres, and what was misread beside them too. */
export function inMillimetres(all: readonly Reading[], text: string, { system }: Habits): readonly Reading[] {
  const readings = inMetres(all, text)
  const units = readings.map((it) => it.quantity?.kind === 'length' && unitNamed(it.quantity.unit).system)
  const isSmall = (it: Reading): boolean =>
    (smallInches.test(it.said) && inPlace.test(text.slice(it.end, it.end + 12))) || isBig(it) || isBackFrom(it, text)
  // “1800 in 12000”: nobody means as many inches of one number, and the other without a unit.
  const isBig = (it: Reading): boolean =>
    bigInches.test(it.said) &&
    Number.parseInt(it.said, 10) >= least &&
    /^\s*\d{3,5}\b(?!\s*(?:ft|feet|foot|'))/.test(text.slice(it.end, it.end + 12))
  // Where millimetres or metres were said already, the bare ones follow them.
  const isMetric = system === 'metric' || units.includes('metric')
  if (!isMetric && readings.some((it, i) => units[i] === 'imperial' && !isSmall(it))) return readings
  const isThin = !isMetric && thinPart.test(text)
  const isBare = (it: Reading): boolean =>
    it.bare !== null && !it.change && isWhole.test(it.said) && it.bare.valueOf() >= least
  const isAlong = (it: Reading): boolean =>
    isBare(it) &&
    alongAll.test(text.slice(it.end, it.end + 12)) &&
    ((it.bare as Fraction).valueOf() >= longestInFeet || (isThin && (it.bare as Fraction).valueOf() >= least))
  const rows = forSale(readings, text, isBare)
  const layout = inLayout(readings, text)
  const overBig = new Set(
    readings.filter((it, i) => {
      const last = readings[i - 1]
      return isBare(it) && last !== undefined && isBig(last) && /^\s*$/.test(text.slice(last.end, it.start))
    }),
  )
  const isPart = (it: Reading): boolean =>
    isAlong(it) || rows.has(it) || layout.has(it) || overBig.has(it) || isOfPart(it)
  const isOfPart = (it: Reading): boolean =>
    it.bare !== null &&
    isBare(it) &&
    it.bare.valueOf() <= most &&
    !alongAllBut(it, text) &&
    ((!isMetric && behind.test(text.slice(it.end, it.end + 28))) ||
      (it.bare.valueOf() >= mostBays && bays.test(text.slice(it.end, it.end + 8))) ||
      (!isMetric && before.test(text.slice(Math.max(0, it.start - 28), it.start))))
  if (!readings.some((it) => isPart(it) || isBackFrom(it, text))) return readings
  return readings.map((it) =>
    isPart(it)
      ? { ...it, quantity: quantity(it.bare as Fraction, 'mm'), bare: null, note: 'a bare size as large is read as mm' }
      : isSmall(it)
        ? {
            ...it,
            quantity: quantity(Number.parseInt(it.said, 10), 'mm'),
            end: it.start + digits(it.said),
            said: it.said.slice(0, digits(it.said)),
            note: 'the “in” tells where, and the size is read as mm',
          }
        : it,
  )
}
/** “15 in middle”: the inch is a small word. */
const smallInches = /^\d+ in$/i
const inPlace = /^\s+(?:the\s+)?(?:middle|centre|center|between)\b/i
const digits = (said: string): number => /^\d+/.exec(said)?.[0].length ?? 0

const bigInches = /^\d{3,5} in$/i

/** “Paling 1200 long” is one piece; “1200 long” is a fence. */
const alongAllBut = ({ start, end }: Reading, text: string): boolean =>
  alongAll.test(text.slice(end, end + 12)) &&
  !/\b(?:picket|paling|pale|slat|post|rail|stile|board|leaf)s?\s*$/i.test(text.slice(Math.max(0, start - 12), start))

/** Two numbers and more side by side behind who sells them. */
function forSale(readings: readonly Reading[], text: string, isBare: (it: Reading) => boolean): ReadonlySet<Reading> {
  for (const [i, first] of readings.entries()) {
    if (!isBare(first) || !onSale.test(text.slice(Math.max(0, first.start - 28), first.start))) continue
    const row = [first]
    for (let next = i + 1; next < readings.length; next++) {
      const [last, it] = [row.at(-1), readings[next]] as [Reading, Reading]
      if (!isBare(it) || !inARow.test(text.slice(last.end, it.start))) break
      row.push(it)
    }
    const end = row.at(-1)?.end ?? 0
    if (row.length > 1 && !/^\s+(?!and|or|which|what|long|lengths?|how|so)\p{L}/iu.test(text.slice(end, end + 12)))
      return new Set(row)
  }
  return new Set()
}
