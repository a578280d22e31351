// This file is about how likely a size is: whether a quantity is one that a word can well have.
import { fitted, isQuantity, parseValue, type System, systemOf, toNumber, type Word } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import { weight } from './cue-score.ts'
import { changedTo } from './fits.ts'

/** Whether the size is one the word can well have; where it can be read in more than one way, the likeliest of them. */
export function likelihood(word: Word, reading: Tagged, heard: Heard): number {
  const system = systemOf(heard.job)
  const known = likely[system].get(reading) ?? new Map<Word, number>()
  likely[system].set(reading, known)
  const before = known.get(word)
  if (before !== undefined) return before
  const changed = reading.change && changedTo(word, reading, heard)
  if (changed) {
    const most = likelihoodOf(word, { ...reading, quantity: changed, bare: null }, system)
    known.set(word, most)
    return most
  }
  const ways = reading.rivals.map((quantity) => likelihoodOf(word, { ...reading, quantity }, system))
  const most = Math.max(likelihoodOf(word, reading, system), ...ways)
  known.set(word, most)
  return most
}

/** What each quantity was found to be likely: it is asked for every sense that its message may have. */
const likely: Readonly<Record<System, WeakMap<Tagged, Map<Word, number>>>> = {
  imperial: new WeakMap(),
  metric: new WeakMap(),
}

function likelihoodOf(word: Word, reading: Tagged, system: System): number {
  const value = reading.section ? reading.section.width : fitted(word, reading.quantity, reading.bare, system)
  const range = rangeOf(word, system)
  if (!value || !range) return 0
  const size = toNumber(value.amount)
  if (size < range.low || size > range.high) return weight.unlikely
  return weight.likely / Math.max(1, Math.log10(range.high / Math.max(range.low, range.high / 1000)))
}

interface Range {
  readonly low: number
  readonly high: number
}
const ranges = { imperial: new Map<string, Range | null>(), metric: new Map<string, Range | null>() }

/** The plausible sizes of a word in its base unit, read once. */
function rangeOf(word: Word, system: System): Range | null {
  const known = ranges[system].get(word.name)
  if (known !== undefined) return known
  const [from, to] = [word.plausible?.from, word.plausible?.to].map((text) =>
    text === undefined ? undefined : parseValue(word, text, system),
  )
  const range = isQuantity(from) && isQuantity(to) ? { low: toNumber(from.amount), high: toNumber(to.amount) } : null
  ranges[system].set(word.name, range)
  return range
}
