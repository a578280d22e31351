import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { dimensionalChange } from '../../../../engine/tables/dimensional-change.ts'
import { species } from '../../../../engine/words/wet-wood.ts'
import { runNamed } from '../../run-named.ts'

describe('the gap when the wood has settled', () => {
  const board = { picketWidth: '5 1/2 in', species: 'western-redcedar', grain: 'flat' }

  it('is what was wanted, where the gap was set that gap-now gives', () => {
    const air = { ...board, moistureNow: '19 %', equilibriumMoisture: '12 %' }
    const { shown } = runNamed('gap-now', { ...air, gapDry: '1/4 in' })
    const { outcome } = runNamed('gap-later', { ...air, gapNow: shown.gapNow as string })
    const gap = outcome.ok ? outcome.values.get('gapDry') : undefined
    expect(isQuantity(gap) ? numberIn(gap, 'in') : undefined).toBeCloseTo(0.25, 4)
  })

  // 5 1/2 × 0.00234 × (14 − 8) = 0.07722 of swelling: more than 1/16 = 0.0625, less than 1/8.
  it('is none where the boards swell by more, and that is said', () => {
    const damp = { ...board, moistureNow: '8 %', equilibriumMoisture: '14 %' }
    const tight = runNamed('gap-later', { ...damp, gapNow: '1/16 in' })
    expect(tight.shown.gapDry).toBe('0 in')
    expect(tight.said).toContain('They swell by more than the gap of 1/16 in')
    const open = runNamed('gap-later', { ...damp, gapNow: '1/8 in' })
    expect(open.shown.gapDry).toBe('0.04778 in')
    expect(open.said).not.toContain('They swell')
  })
})

describe('the gap to set with wet wood', () => {
  const board = { picketWidth: '5 1/2 in', species: 'western-redcedar', grain: 'flat' }

  // Wood Handbook: no shrinkage above fibre saturation, about 30 %. 5 1/2 × (12 − 30) / (3000 / 5 − 30 + 30) = −99 / 600 = −0.165; from 45 it is no more.
  it('wood at 45 % shrinks no more on its way to 12 % than wood at 30 %', () => {
    const wet = { ...board, equilibriumMoisture: '12 %', gapDry: '1/4 in' }
    expect(runNamed('gap-now', { ...wet, moistureNow: '30 %' }).shown.widthChange).toBe('−0.165 in')
    const { shown, said, outcome } = runNamed('gap-now', { ...wet, moistureNow: '45 %' })
    expect(shown).toMatchObject({ widthChange: '−0.165 in', gapNow: '0.085 in' })
    expect(said).toContain('I counted no moisture over that')
    expect(said).toContain('so I used its wider formula')
    if (outcome.ok) expect(outcome.steps[0]?.substituted).toBe('min (45 %; 30 %)')
  })

  // 5 1/2 × 0.00234 × (8 − 14) = −0.07722, the straight line; by the wider formula 5 1/2 × (−6) / (600 − 30 + 14) = −0.05651
  it('within 6 to 14 % it goes by the coefficient, and says what the wider formula gives', () => {
    const { shown, said } = runNamed('gap-now', { ...board, moistureNow: '14 %', equilibriumMoisture: '8 %' })
    expect(shown.widthChange).toBe('−0.07722 in')
    expect(said).toContain('where the handbook’s straight line holds, so I used that')
    expect(said).toContain('it would give −0.05651 in')
  })

  it('a point over 14 % it goes by the wider formula, and says what the straight line would give', () => {
    const { shown, said } = runNamed('gap-now', { ...board, moistureNow: '15 %', equilibriumMoisture: '8 %' })
    expect(shown.widthChange).toBe('−0.06581 in')
    expect(said).toContain('it would give −0.09009 in')
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
    for (const label of labels) expect(species.ask).toContain(label.replace(/ \(.*\)$/, ''))
    const [offered = ''] = species.ask.split('?')
    expect(offered.split(/, | or /)).toHaveLength(labels.length)
  })
})
