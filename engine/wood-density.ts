// This file is about what wood of a kind weighs by the volume, by its moisture: one text of it for every sum that weighs sticks.
import type { Tools } from './calculation.ts'
import { type Quantity, quantity } from './quantities/quantity.ts'
import { published } from './tables/published.ts'
import { specificGravity } from './tables/specific-gravity.ts'

export const densityLocals = {
  green: 'number',
  at12: 'number',
  water: 'density',
  twelve: 'percent',
  saturation: 'percent',
} as const

/** Need the words `species`, `moistureNow` and `woodDensity`. */
export const densityLines = {
  within: ['max(min(moistureNow, saturation), twelve)', 'above fibre saturation the wood keeps its size'],
  gravity: [
    'green + (at12 - green) * (saturation - within) / (saturation - twelve)',
    'between the two figures of the table, by the moisture',
  ],
  woodDensity: ['water * gravity * (1 + moistureNow)', 'the dry wood and its water'],
} as const

/** Works the density of a kind of wood by its moisture. */
export function workDensity(kind: string, { line, put }: Pick<Tools<never>, 'line' | 'put'>): Quantity {
  const of = specificGravity.values[kind as keyof typeof specificGravity.values]
  if (!of) throw new Error(`no specific gravity for ${kind}`)
  put('green', quantity(of.green, 'ratio'))
  put('at12', quantity(of.at12, 'ratio'))
  put('water', published(specificGravity.water.density))
  put('twelve', quantity(12, 'percent'))
  put('saturation', quantity(30, 'percent'))
  line('within')
  line('gravity')
  return line('woodDensity')
}

export const densitySources = [
  { fact: specificGravity.title, from: specificGravity.from },
  { fact: specificGravity.water.fact, from: specificGravity.water.from },
] as const

export const densityRemark = `An average: ${specificGravity.spread}. Treated wood fresh from the yard may hold 80 % moisture or more, and weighs half as much again as dry.`
