// This file is about a reading in a few words, to be held against what was worked out by hand.
import type { Reading } from '../../../engine/quantities/reading.ts'
import { show } from '../../../engine/quantities/show.ts'

/** “at-most 5 ft”, “6 ft .. 8 ft”, “$5.00 per ft”, “2 in more”, “19 1/2 by the clock”; what else it may be stands behind an “or”. */
export function inShort(it: Reading): string {
  if (it.section) return it.section.name
  const [low, high] = it.quantity
    ? [show(it.quantity), it.high && show(it.high)]
    : [it.bare?.toFraction(true), it.bareHigh?.toFraction(true)]
  return [
    it.firmness !== 'exactly' && it.firmness !== 'range' && it.firmness,
    low,
    high && `.. ${high}`,
    ...it.rivals.map((rival) => `or ${show(rival)}`),
    it.per && `per ${it.per}`,
    it.clock && 'by the clock',
    it.people && 'people',
    it.proportion && 'part',
    it.change && (it.change.moves ? `moved ${it.change.way}` : it.change.way),
  ]
    .filter(Boolean)
    .join(' ')
}
