// This file is about what a stick of graded lumber may be stressed with, once every factor is in: size, wet wood, slits, time under load.
import type { Tools } from './calculation.ts'
import { less, type Quantity, quantity, type System } from './quantities/quantity.ts'
import { published } from './tables/published.ts'
import { lumberFactors, type LumberValue, lumberValues } from './tables/lumber-values.ts'
import { lumberGroup } from './words/wood-strength.ts'

export const lumberLocals = {
  designBending: 'pressure',
  designShear: 'pressure',
  dryStiffness: 'pressure',
  sizeFactor: 'number',
  wetFactor: 'number',
  slitFactor: 'number',
} as const

export const lumberSources = [
  {
    fact: `${lumberValues.title}; holds for ${lumberValues.holds}`,
    from: 'the wood named in the answer, as given below',
  },
  ...Object.entries(lumberValues.values).map(([group, it]) => ({
    fact: `${lumberGroup.options?.[group]?.label}: bending ${it.bending} psi, shear ${it.shear} psi, stiffness ${it.stiffness} psi`,
    from: it.from,
  })),
  ...[lumberFactors.size, lumberFactors.wet, lumberFactors.time, lumberFactors.incised].map(({ fact, from }) => ({
    fact,
    from,
  })),
]

/** A design value in the person's units. */
export const designValue = (psi: string, system: System): Quantity => ({
  ...quantity(psi, 'psi'),
  unit: system === 'metric' ? 'MPa' : 'psi',
})

/** Puts the design values and factors of the wood for sticks of these sizes; nothing where its values do not hold for one of them. */
export function putLumber(
  group: string,
  slits: string,
  sizes: readonly Quantity[],
  { put, system }: Pick<Tools<never>, 'put' | 'system'>,
): LumberValue | undefined {
  if (sizes.some((it) => less(published(lumberValues.widest), it))) return undefined
  const value = lumberValues.values[group]
  if (!value) throw new Error(`no design values for ${group}`)
  const sized = Number(value.bending) * Number(value.size)
  const isHigh = less(published(lumberFactors.wet.upTo), quantity(sized, 'psi'))
  put('designBending', designValue(value.bending, system))
  put('designShear', designValue(value.shear, system))
  put('dryStiffness', designValue(value.stiffness, system))
  put('sizeFactor', quantity(value.size, 'ratio'))
  put('wetFactor', quantity(isHigh ? lumberFactors.wet.bending : '1', 'ratio'))
  put('slitFactor', quantity(slits === 'yes' ? lumberFactors.incised.factor : '1', 'ratio'))
  return value
}
