// A load of several kinds, so much a day, coats by the clock: what tips which answer, and what is refused. Worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('a load of several kinds', () => {
  // 3 × 60 + 3 × 50 = 330 kg, 727.5 lb; 330 / 110 = 3 by weight, but 60 + 60 does not go: 60 + 50 three times, 3 trips
  it('goes in as few trips as whole pieces allow', () => {
    const { shown } = runNamed('mixed-load', {
      loadCounts: ['3', '3'],
      loadWeights: ['60 kg', '50 kg'],
      payload: '110 kg',
    })
    expect(shown).toMatchObject({ mixedWeight: '727.5 lb', mixedTrips: '3 trips' })
  })

  // 4 × 60 = 240; 240 / 100 = 2.4 → 3 by weight, but only one goes at a time: 4
  it('takes more trips than its weight alone would', () => {
    const { shown } = runNamed('mixed-load', { loadCounts: '4', loadWeights: '60 kg', payload: '100 kg' })
    expect(shown).toMatchObject({ mixedTrips: '4 trips' })
  })

  it('is refused where one piece is too heavy, or nothing is left for it', () => {
    expect(runNamed('mixed-load', { loadCounts: '4', loadWeights: '60 kg', payload: '50 kg' }).outcome.ok).toBe(false)
    const { outcome } = runNamed('mixed-load', {
      loadCounts: '4',
      loadWeights: '6 kg',
      payload: '150 kg',
      weightAboard: ['80 kg', '70 kg'],
    })
    expect(outcome.ok).toBe(false)
  })
})

describe('coats by the clock', () => {
  // 3 × 1.5 + 2 × 4 = 12.5; 8:00 + 12:30
  it('end at half past eight', () => {
    const { shown, said } = runNamed('coats-by-clock', {
      coats: '3',
      coatTime: '1.5 h',
      coatWait: '4 h',
      startsAt: '8',
    })
    expect(shown).toMatchObject({ coatsSpan: '12.5 hours' })
    expect(said).toContain('8:30 pm')
  })

  // 9 − 8 = 1 h, and a coat takes 1.5
  it('none is on before nothing may go on any more', () => {
    const { shown } = runNamed('coats-by-clock', { coatTime: '1.5 h', coatWait: '4 h', startsAt: '8', stopsAt: '9' })
    expect(shown).toMatchObject({ coatsDone: '0 coats' })
  })

  it('an hour before the first is refused', () => {
    const { outcome } = runNamed('coats-by-clock', { coatTime: '1 h', coatWait: '4 h', startsAt: '8', stopsAt: '7' })
    expect(outcome.ok).toBe(false)
  })
})

describe('packs', () => {
  // 22 − 2 = 20; / 4 = 5; × 13.50
  it('those that need none are left out', () => {
    const { shown } = runNamed('packs', {
      piecesWanted: '22',
      piecesNotNeeded: '2',
      piecesAPack: '4',
      packPrice: '$13.50',
    })
    expect(shown).toMatchObject({ packs: '5 packs', packsCost: '$67.50' })
  })
})
