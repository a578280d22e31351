// This file is about bare numbers that can only be millimetres: “3000 opening”, “bays 2400”. Nobody means 3,000 in of a gate, or 2,400 ft of a bay.
import type Fraction from 'fraction.js'
import type { Habits } from './found.ts'
import { quantity } from './quantity.ts'
import type { Reading } from './reading.ts'
import { unitNamed } from './units.ts'

// No part of a fence is as many inches long, and hardly one as many millimetres short.
const [least, most] = [300, 12_000]
// What is said behind a size of a part, and what before it. A plural that can be counted is none of them: “300 posts”.
const behind =
  /^\s*(?:mm\s+)?(?:(?:clear|gate|one|for the|for each|between|at the|x)\s+)?(?:opening|openings|gap|centres?|centers?|crs|ctrs|c\/c|oc|o\.c|apart|spacings?|spaced|bay|gate|leaf|fence|panel|post|picket|paling|pale|rail|wide|high|tall|clear|above|out of the|off the|in the ground|into the|below|leg|diagonal|diag)\b/i
const before =
  /\b(?:(?:opening|bays?|centres|centers|leaf|leaves|heights?|widths?|spacings?|embedment|leg|diagonal|diag|tape)(?:\s+(?:is|are|of|at|reads?|says?|about|measures?|be))*|posts?\s+(?:at|every|are|is)|(?:fence|pickets?|palings?|gate|posts?)\s+(?:is|are)(?:\s+(?:only|about))?)\s*[:=]?\s*$/i
// Nobody has as many bays.
const bays = /^\s*bays\b/i
const mostBays = 900
const isWhole = /^\d{1,2},?\d{3}$|^\d{3}$/
const alongAll = /^\s*(?:long|of fence|fence line|run)\b/i

/** Bare sizes of the parts of a fence, of 300 and more, where nothing else of the message is in feet and inches: millimetres, and what was misread beside them too. */
export function inMillimetres(readings: readonly Reading[], text: string, { system }: Habits): readonly Reading[] {
  const units = readings.map((it) => it.quantity?.kind === 'length' && unitNamed(it.quantity.unit).system)
  const isSmall = (it: Reading): boolean => smallInches.test(it.said) && inPlace.test(text.slice(it.end, it.end + 12))
  // Where millimetres or metres were said already, the bare ones follow them.
  const isMetric = system === 'metric' || units.includes('metric')
  if (!isMetric && readings.some((it, i) => units[i] === 'imperial' && !isSmall(it))) return readings
  const isPart = (it: Reading): boolean =>
    it.bare !== null &&
    !it.change &&
    isWhole.test(it.said) &&
    it.bare.valueOf() >= least &&
    it.bare.valueOf() <= most &&
    !alongAll.test(text.slice(it.end, it.end + 12)) &&
    ((!isMetric && behind.test(text.slice(it.end, it.end + 28))) ||
      (it.bare.valueOf() >= mostBays && bays.test(text.slice(it.end, it.end + 8))) ||
      (!isMetric && before.test(text.slice(Math.max(0, it.start - 28), it.start))))
  if (!readings.some(isPart)) return readings
  return readings.map((it) =>
    isPart(it)
      ? { ...it, quantity: quantity(it.bare as Fraction, 'mm'), bare: null, note: 'a bare size as large is read as mm' }
      : isSmall(it)
        ? {
            ...it,
            quantity: quantity(Number.parseInt(it.said, 10), 'mm'),
            end: it.start + digits(it.said),
            said: it.said.slice(0, digits(it.said)),
          }
        : it,
  )
}
/** “15 in middle”: the inch is a small word. */
const smallInches = /^\d+ in$/i
const inPlace = /^\s+(?:the\s+)?(?:middle|centre|center|between)\b/i
const digits = (said: string): number => /^\d+/.exec(said)?.[0].length ?? 0
