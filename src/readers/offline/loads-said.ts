// This file is about what soil weighs and what carries it off, told by the heap: “the trailer takes a yard and a half”, “1.5 t a cube in the ground”.
import { type Calculation, calculationNamed, type Word, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import { empty, from } from './plain-phrases.ts'
import type { Token } from './stems.ts'

const spoil = calculationNamed('spoil-of-holes') as Calculation

const vessel =
  /^(trailer|ute|truck|pickup|tray|skip|bin|bed|box|dumpster|tipper|lorry|van|wagon|cart|loader|tractor|truckload|trailerload)$/
const barrow = /^(barrow|wheelbarrow|bucket)$/
const holds = /^(take|hold|carry|fit|move|tip|do|haul|is|be)$/

/** The room of a trailer, skip or bin, and what the soil weighs. */
export function loadsIn(message: readonly Token[], needs: Readonly<Record<string, Word>>): Bound[] {
  if (!needs.loadSize) return []
  const bind = (reading: Tagged, word: string): Bound => ({ reading, word, at: yard, score: weight.byPlace })
  return message.flatMap(({ reading }, at): Bound[] => {
    if (reading?.quantity?.kind === 'density')
      return [bind(reading, /\bloose|heaped\b/i.test(reading.said) ? 'looseDensity' : 'soilDensity')]
    if (reading?.quantity?.kind !== 'volume') return []
    const before = message.slice(Math.max(0, at - 5), at)
    const of = before.findLast((it) => vessel.test(it.stem) || barrow.test(it.stem))
    // “How many trailer loads at 0.75 m³?”
    const isLoadOf = before.at(-2)?.stem === 'load' && /^(at|of)$/.test(before.at(-1)?.text ?? '')
    const isHeld = isLoadOf || before.some((it) => holds.test(it.stem)) || vessel.test(message[at + 1]?.stem ?? '')
    const isVessel = (of && vessel.test(of.stem)) || vessel.test(message[at + 1]?.stem ?? '')
    return isVessel && isHeld ? [bind(reading, 'loadSize')] : []
  })
}

const asksWeight = /\b(weigh\w*|weight|heavy|how many (tons?|tonnes?|kilos?|kg|pounds|lbs?))\b/i
const asksLoads = /\b(loads?|trips?|runs?|goes|times|full)\b/i
/** “Dirt’s 1.5 t a cube in the ground, what’s the total weight”, “and the skip holds 2 cubes”, behind a sum of the soil: what it weighs, and how many loads it is. */
export function soilIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job, readings } = heard
  if (!job.wanted.some(({ word }) => spoil.gives[word]) || readings.length === 0) return undefined
  const isAsked = job.asked.some((it) => it.word === 'loadSize')
  const [only] = readings
  const answer = isAsked && readings.length === 1 && only?.quantity?.kind === 'volume' ? only : undefined
  const bound = answer
    ? [{ reading: answer, word: 'loadSize', at: yard, score: weight.byPlace }]
    : loadsIn(message, spoil.needs)
  if (bound.length !== readings.length) return undefined
  const told: Told[] = bound.map(({ word, reading }) => ({ word, at: yard, from: from(reading.tag) }))
  const wants = [
    ...(asksWeight.test(said) ? ['spoilWeight'] : []),
    ...(told.some((it) => it.word === 'loadSize') ? ['vesselLoads'] : []),
  ]
  const had = job.wanted.map((it) => it.word)
  return {
    ...empty,
    told,
    wants: (wants.length > 0 ? wants : had).map((word) => ({ word, at: yard })),
    calculation: spoil.name,
  }
}

/** Loads of the vessel that was told, where those of a barrow are not asked for by name: its own, and never those of a usual barrow. */
export function withLoadsOfVessel(request: Request, { said, job }: Heard): Request {
  if (request.calculation !== null && request.calculation !== spoil.name) return request
  const isOfLoads = (word: string): boolean => word === 'barrows' || (word === 'soilOut' && asksLoads.test(said))
  if (/\b(wheel)?barrows?\b/i.test(said) || !request.wants.some((it) => isOfLoads(it.word))) return request
  const knows = request.told.some((it) => it.word === 'loadSize') || job.decisions.some((it) => it.word === 'loadSize')
  const isNamed = named.test(said) && asksLoads.test(said)
  if (!knows && !isNamed) return request
  return { ...request, wants: request.wants.map((it) => (isOfLoads(it.word) ? { ...it, word: 'vesselLoads' } : it)) }
}
const named = /\b(trailers?|utes?|trucks?|pickups?|skips?|dumpsters?|tippers?|lorry|lorries|vans?|wagons?)\b/i
