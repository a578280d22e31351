// This file is about random fences: up to six runs, gates placed and not, words at runs, walls, and everything that is bought.
import fc from 'fast-check'
import type { System } from '../../../engine/quantities/quantity.ts'
import type { Told } from './fences.ts'

export interface RandomFence {
  readonly told: Told
  readonly system: System
  readonly isClosed: boolean
  readonly gates: number
  /** Corners where a run was told to end at a wall, so that no post is shared there. */
  readonly walls: number
}

interface Run {
  readonly length: number
  readonly gates: number
  readonly gateWidth: number
  readonly isPlaced: boolean
  readonly picketWidth: number | undefined
  readonly rails: number | undefined
  readonly isTight: boolean
  readonly narrowBays: boolean
  readonly isDouble: boolean
  readonly toWall: boolean
}

const maybe = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(of, { nil: undefined, freq: 2 }) as fc.Arbitrary<T | undefined>

// In inches; a run is long enough for its gates, a bay before each and one after.
const run: fc.Arbitrary<Run> = fc.record({
  length: fc.integer({ min: 50 * 8, max: 160 * 8 }),
  gates: fc.integer({ min: 0, max: 2 }),
  gateWidth: fc.integer({ min: 36, max: 72 }),
  isPlaced: fc.boolean(),
  picketWidth: maybe(fc.integer({ min: 20, max: 44 })),
  rails: maybe(fc.integer({ min: 2, max: 4 })),
  isTight: fc.boolean(),
  narrowBays: fc.boolean(),
  isDouble: fc.boolean(),
  toWall: fc.boolean(),
})

const always: Told = {
  widestBay: '8 ft',
  picketWidth: '3 1/2 in',
  widestGap: '2 1/2 in',
  picketLength: '42 in',
  picketThickness: '3/4 in',
  postAbove: '4 ft',
  holeDiameter: '12 in',
  bagWeight: '60 lb',
  species: 'southern-pine',
  moistureNow: '19 %',
  railDepth: '3 1/2 in',
  railThickness: '1 1/2 in',
  postPrice: '$18.49',
  railPrice: '$7.25',
  picketPrice: '$3.19',
  bagPrice: '$6.75',
  bracketPrice: '$1.35',
  hingePrice: '$11.95',
  latchPrice: '$18.60',
  stonePrice: '$41.30',
  deliveryPrice: '$65',
}
const alwaysInMetric: Told = {
  ...always,
  widestBay: '2.4 m',
  picketWidth: '90 mm',
  widestGap: '60 mm',
  picketLength: '1100 mm',
  picketThickness: '19 mm',
  postAbove: '1.2 m',
  holeDiameter: '300 mm',
  bagWeight: '20 kg',
  railDepth: '90 mm',
  railThickness: '45 mm',
  postWidth: '90 mm',
}

const toldBy = (runs: readonly Run[], isClosed: boolean, system: System): RandomFence => {
  // Ten inches are 250 mm here: a plain length for a tape of either kind.
  const length = (inches: number): string => (system === 'metric' ? `${inches * 25} mm` : `${inches} in`)
  const told: Record<string, string> = { ...(system === 'metric' ? alwaysInMetric : always) }
  if (isClosed) told.runEnds = 'loop'
  let walls = 0
  for (const [i, it] of runs.entries()) {
    const place = `run-${i + 1}`
    told[`runLength@${place}`] = length(it.length)
    if (it.picketWidth) told[`picketWidth@${place}`] = length(it.picketWidth / 8)
    if (it.rails) told[`rails@${place}`] = String(it.rails)
    if (it.isTight) told[`picketEnds@${place}`] = 'picket'
    if (it.narrowBays) told[`widestBay@${place}`] = length(72)
    if (it.toWall) {
      told[`farEnd@${place}`] = 'wall'
      if (isClosed || i < runs.length - 1) walls++
    }
    if (it.gates > 0) {
      told[`gates@${place}`] = String(it.gates)
      told[`gateOpening@${place}`] = length(it.gateWidth)
      if (it.isDouble) told[`gateLeaves@${place}/gate-1`] = 'double'
      if (it.isPlaced)
        for (let gate = 1; gate <= it.gates; gate++)
          told[`gateStart@${place}/gate-${gate}`] = length(60 + (gate - 1) * (60 + it.gateWidth + 8))
    }
  }
  return { told, system, isClosed, gates: runs.reduce((sum, it) => sum + it.gates, 0), walls }
}

export const randomFence: fc.Arbitrary<RandomFence> = fc
  .record({
    runs: fc.array(run, { minLength: 1, maxLength: 6 }),
    isLoop: fc.boolean(),
    system: fc.constantFrom<System>('imperial', 'metric'),
  })
  .map(({ runs, isLoop, system }) => toldBy(runs, isLoop && runs.length > 2, system))
