// This file is about sticks that are called by their length alone: “tens and twelves”, “12s”, “2400s”.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { tableOf } from './table-of.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

// In feet, as timber is sold.
const spoken = tableOf<number>({ eights: 8, tens: 10, twelves: 12, fourteens: 14, sixteens: 16 })
const beforeSticks =
  /^(and|or|in|of|with|buy|buying|bought|have|has|got|get|getting|sell|sells|use|using|used|are|are|they're|theyre|about|from|take|only|if|to|for|as|in|just|the|,)$/
const afterSticks =
  /^(and|or|instead|only|how|what|would|then|too|also|if|can|do|are|will|now|better|at|is|in|got|get|have|for|cost)$/

/** A length by which sticks are called, where nothing that it counts stands behind it: “tens of posts” are none. */
export function sticksAt(tokens: readonly Scanned[], at: number): Found | null {
  const token = tokens[at] as Scanned
  const isNumber = token.sort === 'digits' && lower(tokens[at + 1]) === 's' && tokens[at + 1]?.glued === true
  if (!isNumber && spoken[lower(token)] === undefined) return null
  const next = isNumber ? at + 2 : at + 1
  const [before, after] = [tokens[at - 1], tokens[next]]
  const stands =
    (before === undefined || beforeSticks.test(lower(before))) &&
    (after === undefined ||
      after.sort === 'sign' ||
      afterSticks.test(lower(after)) ||
      // “12s 10.25”: what one costs.
      (isNumber && /^\d+\.\d\d$/.test(after.text)))
  if (!stands) return null
  const feet = isNumber ? (/^(8|10|12|14|16)$/.test(token.text) ? Number(token.text) : undefined) : spoken[lower(token)]
  if (feet !== undefined) return { next, quantity: quantity(feet, 'ft'), bare: null }
  // Timber by the millimetre comes in steps of 300, and is called so from 1200 on.
  const isMetric = isNumber && /^[1-6]\d00$/.test(token.text) && Number(token.text) % stepOfSticks === 0
  return isMetric ? { next, quantity: quantity(new Fraction(token.text), 'mm'), bare: null } : null
}
const stepOfSticks = 300
