// This file is about what is counted in the midst of a fence: so many pickets or rails in each bay, and what is bought over.
import { yard } from '../../../engine/index.ts'
import type { Heard } from '../reader.ts'
import type { Bound } from './bound.ts'
import type { Token } from './stems.ts'

const ofEach = /^(each|per|every|a|an|full|to|in)$/
const bay = /^(bay|section|panel|span|opening)$/
/** A whole number without a unit, in a clause that says “in each bay”. */
export function isCountOfBay(message: readonly Token[], at: number, from: number, to: number): boolean {
  const { reading, measured } = message[at] as Token
  if (reading?.bare?.d !== 1n || measured) return false
  const isOfBay = message.some(
    (it, i) => i >= from && i < to && bay.test(it.stem) && ofEach.test(message[i - 1]?.stem ?? ''),
  )
  const next = message[at + 1]?.stem ?? ''
  return isOfBay && (/^(picket|paling|slat|pale|rail|go|fit|of)$/.test(next) || ofEach.test(next))
}

/** “Plus 5 percent”, said of pickets or right after them. */
export function sparesIn(message: readonly Token[], heard: Heard, taken: Set<string>): Bound[] {
  const speaksOf = (pattern: RegExp): boolean => message.some((it) => pattern.test(it.stem))
  const isOfPickets =
    speaksOf(/^(picket|paling|slat|pale)$/) ||
    heard.job.wanted.some((it) => /^picketsHung$|^picketsToBuy$/.test(it.word))
  const at = message.findIndex((it) => it.reading?.quantity?.kind === 'percent' && !taken.has(it.tag as string))
  const reading = message[at]?.reading
  if (
    !reading ||
    !isOfPickets ||
    speaksOf(/^(slope|grade|moisture|humidity|humid|wet|tax|discount|vat|off|paint|stain|screw)$/)
  )
    return []
  taken.add(reading.tag)
  return [{ reading, word: 'picketSpare', at: yard, score: 1 }]
}
