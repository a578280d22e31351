import { describe, expect, it } from 'vitest'
import { dimensionalChange } from '../../../../engine/tables/dimensional-change.ts'
import { species } from '../../../../engine/words/wet-wood.ts'
import { runNamed } from '../../run-named.ts'

describe('the gap to set with wet wood', () => {
  const board = { picketWidth: '5 1/2 in', species: 'western-redcedar', grain: 'flat' }

  // Wood Handbook: no shrinkage above fibre saturation, about 30 %. 5 1/2 × 0.00234 × (12 − 30) = −0.23166; from 45 it is no more.
  it('wood at 45 % shrinks no more on its way to 12 % than wood at 30 %', () => {
    const wet = { ...board, equilibriumMoisture: '12 %', gapDry: '1/4 in' }
    expect(runNamed('gap-now', { ...wet, moistureNow: '30 %' }).shown.widthChange).toBe('−0.2317 in')
    const { shown, said, outcome } = runNamed('gap-now', { ...wet, moistureNow: '45 %' })
    expect(shown).toMatchObject({ widthChange: '−0.2317 in', gapNow: '0.01834 in' })
    expect(said).toContain('I counted no moisture over 30 %')
    expect(said).toContain('from 30 % to 12 % take it as near')
    if (outcome.ok) expect(outcome.steps[0]?.substituted).toBe('min (45 %; 30 %)')
  })

  it('from 60 to 30 % nothing moves', () => {
    const { shown } = runNamed(
      'gap-now',
      { ...board, moistureNow: '60 %', equilibriumMoisture: '30 %', gapDry: '1/4 in' },
      { confirmed: ['equilibriumMoisture'] },
    )
    expect(shown).toMatchObject({ widthChange: '0 in', gapNow: '1/4 in' })
  })

  it('asks for the woods it has coefficients for, and no other', () => {
    const labels = Object.keys(dimensionalChange.values).map((name) => species.options?.[name]?.label as string)
    expect(Object.keys(species.options ?? {})).toEqual(Object.keys(dimensionalChange.values))
    for (const label of labels) expect(species.ask).toContain(label.replace(' (coast)', ''))
    expect(species.ask.split(/, | or /)).toHaveLength(labels.length)
  })
})
