import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const wanted = ['shrunkBy', 'shrunkWidth']
const board = { picketWidth: '120 mm', shrinkRate: '0.2 %' }

describe('a board that shrinks at a told rate', () => {
  // Wood Handbook, FPL-GTR-190 (2010), chapter 4: no change of size above fibre saturation, about 30 %.
  it('is counted from fibre saturation, however wet it was', () => {
    const outcomes = ['30 %', '45 %'].map((moistureNow) =>
      runNamed('drying-by-rate', { ...board, moistureNow, moistureLimit: '15 %' }, { system: 'metric', wanted }),
    )
    // 120 × 0.002 × (30 − 15) = 3.6
    for (const outcome of outcomes) expect(outcome.shown).toMatchObject({ shrunkBy: '3.6 mm', shrunkWidth: '116.4 mm' })
  })

  it('does not shrink above it', () => {
    const { said } = runNamed('drying-by-rate', { ...board, moistureNow: '45 %', moistureLimit: '35 %' }, { wanted })
    expect(said).toContain('it does not shrink')
  })
})
