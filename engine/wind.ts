// This file is about the wind that meets a fence: what its speed is worth as a pressure, and what that comes to on one post.
//
//   ──►│        pressure of the wind brought to a stop: half of the density of air × speed²,
//   ──►│        less near the ground and behind houses, a little less since it hardly comes from the worst side
//   ──►│
import type { Tools } from './calculation.ts'
import { power, times } from './quantities/amount.ts'
import { amountIn, less, type Quantity, quantity, type System } from './quantities/quantity.ts'
import {
  directionFactor,
  exposureFactors,
  gustFactor,
  leastPressure,
  speedPressure,
  workingLevel,
} from './tables/wind-factors.ts'
import { published } from './tables/published.ts'
import { show } from './quantities/show.ts'

/** Names that `workWind` and `workPressure` put. */
export const windLocals = {
  pressureAtOne: 'pressure',
  oneSpeed: 'speed',
  exposureFactor: 'number',
  leastPressure: 'pressure',
} as const

export const windLines = {
  speedPressure: [
    'pressureAtOne * exposureFactor * 0.85 * (windSpeed / oneSpeed) ^ 2',
    'what the wind’s speed is worth as a pressure up to 15 ft; 0.85 since it hardly comes from the worst side',
  ],
  gustyPressure: ['speedPressure * 0.85 * shapeFactor', 'gusts, and the shape that they meet'],
  windPressure: ['max(gustyPressure, leastPressure)', 'and never less than the standard’s least'],
} as const

export const postLines = {
  sideForce: ['0.6 * strengthForce', 'working level, which the allowed values of wood and soil are made for'],
  tippingMoment: ['sideForce * forceHeight', 'the force at the end of its arm, down to the ground'],
} as const

type Working = Pick<Tools<never>, 'line' | 'put' | 'refuse' | 'remark' | 'cite' | 'system'>

/** Works the speed pressure. In metric the same constant stands for a metre a second. */
export function workWind(exposure: string, postAbove: Quantity, { line, put, refuse, cite, system }: Working): void {
  const most = published(exposureFactors.upTo)
  if (less(most, postAbove))
    refuse(
      'postAbove',
      `The factors hold up to ${cite(most, 'height that the factors hold to', 'published')}; a fence of ${show(postAbove)} is one for an engineer. Check the height.`,
    )
  const one = quantity(1, system === 'metric' ? 'm/s' : 'mph')
  const perMile = quantity('0.00256', 'lb/ft2')
  put('oneSpeed', one)
  put('pressureAtOne', inUnitOf(system, times(perMile.amount, power(amountIn(one, 'mph'), 2))))
  put('exposureFactor', quantity(exposureFactors.values[exposure] ?? noFactor(exposure), 'ratio'))
  line('speedPressure', pressureUnit(system))
}

/** What pressures of wind and soil are read in. */
export const pressureUnit = (system: System): string => (system === 'metric' ? 'kPa' : 'lb/ft2')

const inUnitOf = (system: System, amount: Quantity['amount']): Quantity => ({
  kind: 'pressure',
  amount,
  unit: pressureUnit(system),
})

const noFactor = (exposure: string): never => {
  throw new Error(`no exposure factor for ${exposure}`)
}

/** Works the pressure on the wood, once the shape factor is there. */
export function workPressure({ line, put, remark, cite, system }: Working): Quantity {
  const least = inUnitOf(system, published(leastPressure.value).amount)
  put('leastPressure', least)
  const worked = line('gustyPressure', pressureUnit(system))
  const pressure = line('windPressure')
  if (less(worked, least))
    remark(`The standard’s least pressure governs: ${cite(least, 'least wind pressure', 'published')}.`)
  return pressure
}

/** What is said of every force of the wind. */
export function sayLevels(strength: Quantity, working: Quantity, { remark, cite }: Working): void {
  remark(
    `Two levels, not to be mixed: ${cite(strength, 'wind on one bay, strength level')} is strength level; ${cite(working, 'force on one post, working level')}, 0.6 of it, is working level, and goes into the checks of depth and of wood.`,
  )
  remark(
    'The speed is yours: I look up no wind map. It must be the basic wind speed of ASCE 7-10 or later. An older allowable speed with the 0.6 on top comes out too low. Hills, ridges and gaps between buildings that funnel the wind are not in it.',
  )
  remark('This is a check in the form of ASCE 7, not a design: your building office decides, and an engineer designs.')
}

export const windSources = [
  { fact: speedPressure.title, from: speedPressure.from },
  { fact: exposureFactors.title, from: exposureFactors.from },
  { fact: directionFactor.title, from: directionFactor.from },
  { fact: gustFactor.title, from: gustFactor.from },
  { fact: leastPressure.title, from: leastPressure.from },
  { fact: workingLevel.title, from: workingLevel.from },
]
