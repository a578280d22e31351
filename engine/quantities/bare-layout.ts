// This file is about whole layouts in bare numbers: “1800 one string, 2400 the other”, “13300 run”, “12.5 m with an opening of 1.1”, “150 in from the boundary”.
import { quantity } from './quantity.ts'
import type { Reading } from './reading.ts'

const ofMoney =
  /[$£€]|\b(?:costs?|price\w*|pay|paid|budget|spend|spent|quid|bucks|dollars|pounds|bill|deposit|weigh\w*|kg|kilos?)\b/i
const ofLayout =
  /\b(?:strings?|legs?|squar\w+|corner|diag\w*|bays?|posts?|run|slop\w+|falls?|drops?|gates?|opening|boundary|fence|line|block|wide|deep|high|tall|rails?|hinge|level|pickets?|palings?)\b/i
const counted =
  /^\s*(?:of (?:them|em|those)\b|\w*\s?(?:pickets|palings|slats|boards|posts|rails|screws|nails|staples|bags|tins|boxes|holes|pieces|bricks|pavers|bolts|hours|days|people)\b)/i
const [least, leastOfLayout] = [300, 900]
// As many feet no picket fence is long; what is said of a whole line may be as many millimetres.
const [leastLine, mostLine] = [3_000, 99_999]
const lineBehind =
  /^\s*(?:long|of fence|fence line|fence|run|wide|across|frontage|on the tape|between|overall|level)\b/i
const lineBefore =
  /\b(?:(?:run|line|block|lot|frontage|fence|boundary|total|length|distance|wall)(?:\s+(?:is|are|of|at|measures?|about))*|over|along|(?:i|we)(?:'ve)? (?:get|got|have|measured?)|tape (?:says?|reads?))\s*[:=]?\s*$/i

/** Which of the bare numbers are millimetres since a whole line is as long, or since two and more as large stand together, of which nothing is counted, where no money is spoken of. */
export function inLayout(readings: readonly Reading[], text: string): ReadonlySet<Reading> {
  const after = (it: Reading): string => text.slice(it.end, it.end + 28)
  const sizeOf = (it: Reading): number => it.bare?.valueOf() ?? 0
  const bare = readings.filter(
    (it) =>
      it.bare !== null &&
      !it.change &&
      /^\d{1,2},?\d{3}$|^\d{3}$/.test(it.said) &&
      sizeOf(it) >= least &&
      sizeOf(it) <= mostLine,
  )
  const lines = bare.filter(
    (it) =>
      sizeOf(it) >= leastLine &&
      !ofMoney.test(text) &&
      !counted.test(after(it)) &&
      (lineBehind.test(after(it)) || lineBefore.test(text.slice(Math.max(0, it.start - 28), it.start))),
  )
  const isLayout =
    bare.length > 1 &&
    bare.some((it) => sizeOf(it) >= leastOfLayout) &&
    ofLayout.test(text) &&
    !ofMoney.test(text) &&
    !bare.some((it) => counted.test(after(it)))
  return new Set(isLayout ? bare : lines)
}

/** “Block 15240, fence 150 in from the boundary”: beside bare millimetres nobody stands as many inches back, and the “in” tells where. */
export const isBackFrom = ({ said, end }: Reading, text: string): boolean =>
  /^\d{3,} in$/i.test(said) &&
  (besideMillimetres.test(text) || thickPost.test(text)) &&
  /^\s+(?:from|off|past|behind|of)\s+(?:the|each|every|both|my|our|his|either|a|all|any)\b/i.test(
    text.slice(end, end + 24),
  )

// No post is as many inches square.
const thickPost =
  /\bposts?(?: are| is|,)? (?:[6-9]\d|1\d\d) (?:square|sq|wide)\b|\b(?:[6-9]\d|1\d\d) (?:square|sq|wide) posts?\b/i
const besideMillimetres = /(?<![\d.,$£€])\d{1,2},?\d{3}(?![\d.,]*\d)(?!\s*(?:in|ft|feet|foot|inches|["'’”]|lb|pounds))/i

/** “Fence 1.5 tall”, “12.5 m with an opening of 1.1”: a point and no unit beside metres, or a height that can be nothing else. */
export function inMetres(readings: readonly Reading[], text: string): readonly Reading[] {
  const units = readings.map((it) => (it.quantity?.kind === 'length' ? it.quantity.unit : ''))
  if (units.some((unit) => unit === 'ft' || unit === 'in' || unit === 'yd') || ofMoney.test(text) || ofBill.test(text))
    return readings
  const isBesideMetres = units.includes('m')
  return readings.map((it) => {
    const size = it.bare?.valueOf() ?? 0
    if (it.bare === null || it.change || !/^\d{1,2}\.\d{1,2}$/.test(it.said)) return it
    const [left, right] = [text.slice(Math.max(0, it.start - 24), it.start), text.slice(it.end, it.end + 18)]
    const isTall = size >= 0.9 && size <= 2.4 && (tall.test(right) || tallBefore.test(left))
    const isBeside = isBesideMetres && (wide.test(right) || wideBefore.test(left))
    return isTall || isBeside
      ? { ...it, quantity: quantity(it.bare, 'm'), bare: null, note: 'a bare size with a point is read as m' }
      : it
  })
}
const ofBill = /\b(?:apiece|comes? to|invoice)\b|\d each\b/i
const tall = /^\s*(?:tall|high|above (?:the )?ground|out of (?:the )?ground)\b/i
const tallBefore = /\b(?:height|high|tall)(?:\s+(?:is|of|at|about))*\s*[:=]?\s*$/i
const wide =
  /^\s*(?:wide|clear|opening|apart|long|across|gate|bays?|high|tall|deep|in the (?:middle|centre|center|ground))\b/i
const wideBefore =
  /\b(?:opening|gate|bays?|by|centres|apart|width|wide|length|long|height|every)(?:\s+(?:is|are|of|at|about))*\s*[:=]?\s*$/i
