// This file is about how steep something is said to be: “a fall of 1 in 48”, “1/4 in per foot”, “10 mm per metre”. It is kept in percent.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import { numberAt } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { unitAt, type UnitRead } from './unit-words.ts'
import { unitNamed } from './units.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''
const steep =
  /^(slopes?|sloped|sloping|falls?|falling|grades?|gradient|inclines?|pitch|pitched|drops?|rises?|ramp|crossfall|rak(?:e|es|ed|ing)|rack(?:s|ed|ing)?|hill|bank)$/

/** “1 in 48” where a slope or a fall is spoken of, or nothing else is said; null where it may be an inch, or one post in five. “1:48” only right beside a word for a slope: it may be an hour, or a mix. */
export function oneInSoMany(tokens: readonly Scanned[], at: number): Found | null {
  const joint = lower(tokens[at + 1])
  if (!/^(1|one)$/.test(lower(tokens[at])) || !/^(in|:)$/.test(joint)) return null
  const along = numberAt(tokens, at + 2, false)
  if (!along || along.feet || along.value.compare(1) <= 0 || unitAt(tokens, along.next, false)) return null
  if (joint === ':')
    return isBesideSlope(tokens, at, along.next) ? inPercent(new Fraction(1).div(along.value), along.next) : null
  const isAlone = at === 0 && along.next === tokens.length
  const isSteep =
    [...tokens.slice(Math.max(0, at - 4), at), ...tokens.slice(along.next, along.next + 2)].some((it) =>
      steep.test(lower(it)),
    ) || goesUp(tokens, at)
  return isAlone || isSteep ? inPercent(new Fraction(1).div(along.value), along.next) : null
}

/** “The ground goes up 1 in 20”, “the drive climbs 1 in 12”. */
const goesUp = (tokens: readonly Scanned[], at: number): boolean => {
  const before = tokens.slice(Math.max(0, at - 6), at).map(lower)
  return (
    before.some((it) => ground.test(it)) && before.slice(-2).some((it) => /^(up|down|climbs?|lifts?|away)$/.test(it))
  )
}
const ground = /^(ground|path|drive|driveway|lawn|land|lane|yard|garden|paving|it)$/

const aSlope = /^(slopes?|sloped|sloping|falls?|grades?|gradient|inclines?|ramp|crossfall)$/
const between = /^(of|is|at|about|around|a|the|to|=|:)$/

/** “A slope of 1:12”, “the ground falls 1:20”, “1:15 grade”; but “mixed 1:3” and “at 1:30” are beside none. A third term tells the parts of a mix. */
function isBesideSlope(tokens: readonly Scanned[], at: number, next: number): boolean {
  if (lower(tokens[next]) === ':' || lower(tokens[at - 1]) === ':') return false
  let before = at - 1
  while (before >= at - 3 && between.test(lower(tokens[before]))) before--
  return aSlope.test(lower(tokens[before])) || aSlope.test(lower(tokens[next]))
}

/** A small length for each longer one of the same system: “1/4 in per ft”, “5 cm/m”, “a quarter inch to the foot”, “30 mm on each metre”. */
export function forEach(tokens: readonly Scanned[], rise: Fraction, unit: UnitRead): Found | null {
  const longer = unit.unit === 'in' ? 'ft' : unit.unit === 'mm' || unit.unit === 'cm' ? 'm' : undefined
  const joint = lower(tokens[unit.next])
  const from =
    joint === '/' || joint === 'per'
      ? unit.next + 1
      : (joint === 'to' && lower(tokens[unit.next + 1]) === 'the') ||
          (/^(on|in|for|over|with)$/.test(joint) && /^(each|every)$/.test(lower(tokens[unit.next + 1])))
        ? unit.next + 2
        : undefined
  if (longer === undefined || from === undefined) return null
  const along = unitAt(tokens, from, false)
  return along?.unit === longer
    ? inPercent(rise.mul(unitNamed(unit.unit).size).div(unitNamed(longer).size), along.next)
    : null
}

const inPercent = (ratio: Fraction, next: number): Found => ({
  next,
  quantity: quantity(ratio.mul(100), 'percent'),
  bare: null,
  note: 'read as a slope',
})
