// This file is about how far a board moves across its grain as its moisture changes: one way to reckon it, for every calculation that needs it.
//
//   within 6 to 14 %   change = width × coefficient × points                            (a straight line, read off a table)
//   up to 30 %         change = width × points / (3000 / shrinkage − 30 + moisture now) (from green to oven-dry, in one curve)
//   over 30 %          wood loses water and keeps its size
import type { Tools } from './calculation.ts'
import { about, compare, exact } from './quantities/amount.ts'
import { less, type Quantity, quantity } from './quantities/quantity.ts'
import { show } from './quantities/show.ts'
import { dimensionalChange } from './tables/dimensional-change.ts'
import { published } from './tables/published.ts'

export const movementLocals = {
  across: 'length',
  coefficient: 'number',
  shrinkage: 'number',
  hundred: 'number',
  saturation: 'percent',
  countsNow: 'percent',
  countsLater: 'percent',
  byCoefficient: 'length',
  byShrinkage: 'length',
} as const

export const movementLines = {
  countsNow: ['min(moistureNow, saturation)', 'above fibre saturation wood loses water and keeps its size'],
  countsLater: ['min(equilibriumMoisture, saturation)', 'and the same later'],
  points: ['hundred * (countsLater - countsNow)', 'points of moisture it gains; less than nothing when it dries'],
  byCoefficient: ['across * coefficient * points', 'the handbook’s straight line'],
  byShrinkage: [
    'across * points / (3000 / shrinkage - 30 + hundred * countsNow)',
    'the handbook’s wider formula, from the shrinkage of green wood until it is oven-dry',
  ],
} as const

export const movementSources = [
  {
    fact: `${dimensionalChange.title}`,
    from: dimensionalChange.from,
  },
  dimensionalChange.wider,
  dimensionalChange.shrinkage,
  { fact: dimensionalChange.saturation.fact, from: dimensionalChange.saturation.from },
].map(({ fact, from }) => ({ fact, from }))

type Used = Pick<Tools<Record<never, never>>, 'line' | 'put' | 'remark' | 'cite'>

export interface Moved {
  readonly change: Quantity
  readonly byCoefficient: Quantity
  readonly byShrinkage: Quantity
}

/** Works both formulas, says which of them holds between these two moistures and what the other would give, and hands both over. */
export function movedAcross(
  { across, species, grain }: { across: Quantity; species: string; grain: string },
  [now, later]: readonly [Quantity, Quantity],
  { line, put, remark, cite }: Used,
): Moved {
  const of = dimensionalChange.values[species]
  if (!of) throw new Error(`no coefficient for ${species}`)
  const [coefficient, shrinkage] = grain === 'edge' ? [of.edge, of.dryEdge] : [of.flat, of.dryFlat]
  put('across', across)
  const each = put('coefficient', quantity(coefficient, 'ratio'))
  // A figure of a table is not exact, and what is worked with it is shown rounded.
  put('shrinkage', { kind: 'number', amount: about(Number(shrinkage)), unit: 'ratio' })
  put('hundred', quantity(100, 'ratio'))
  const saturation = put('saturation', quantity(dimensionalChange.saturation.percent, 'percent'))
  line('countsNow')
  line('countsLater')
  line('points')
  const [byCoefficient, byShrinkage] = [line('byCoefficient'), line('byShrinkage')]
  const [least, most] = [published(dimensionalChange.least), published(dimensionalChange.most)]
  const within = [now, later].every((it) => !less(it, least) && !less(most, it))
  const moves = compare(byCoefficient.amount, exact(0)) !== 0
  const change = within || !moves ? byCoefficient : byShrinkage
  const [from, to] = [cite(least, 'from', 'published'), cite(most, 'to', 'published')]
  if (!moves) remark('Between those two moistures the wood keeps its size.')
  else {
    const [own, other] = [show(change), within ? byShrinkage : byCoefficient]
    const also =
      own === show(other) ? 'and it gives the same' : `and it would give ${cite(other, 'by the other formula')}`
    remark(
      within
        ? `Both moistures lie within ${from} to ${to}, where the handbook’s straight line holds, so I used that: ${cite(each, 'coefficient', 'published')} of the width for each point of moisture. The wider formula covers it too, ${also}.`
        : `Not both moistures lie within ${from} to ${to}, where the handbook’s straight line holds, so I used its wider formula. The straight line would be beyond its range here, ${also}.`,
    )
  }
  if (less(saturation, now) || less(saturation, later))
    remark(
      `Above about ${cite(saturation, 'fibre saturation', 'published')} the wood loses water and keeps its size, so I counted no moisture over that.`,
    )
  return { change, byCoefficient, byShrinkage }
}
