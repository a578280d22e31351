// A budget, a load, a rent, what there is already: what flips which answer, and what is refused.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('a budget', () => {
  // 40 × 25 = 1000, and 200 is left of 1200
  it('a length that the money pays for leaves some over', () => {
    const { shown } = runNamed('budget-length', {
      budget: '$1200',
      measurePrice: '$25',
      pricedBy: 'ft',
      pricedLength: '40 ft',
    })
    expect(shown).toMatchObject({ budgetLeft: '$200.00', affordableLength: '48 ft' })
    expect(shown.budgetShort).toBeUndefined()
  })

  it('what is priced by the gallon makes no length', () => {
    const { outcome } = runNamed('budget-length', { budget: '$1200', measurePrice: '$25', pricedBy: 'gal' })
    expect(outcome.ok).toBe(false)
  })

  // 10 × 30 = 300 of 250
  it('what must be bought first may cost more than there is', () => {
    const { outcome } = runNamed('budget-pieces', {
      budget: '$250',
      itemCounts: '10',
      unitPrices: '$30',
      pieceBought: '$3',
    })
    expect(outcome.ok).toBe(false)
  })
})

describe('a load', () => {
  // 0.4 × 1.1 = 0.44 → 0.5 by tenths, and a least load of 1: × 150
  it('the least load is charged where less is ordered', () => {
    const { shown, said } = runNamed('bulk-order', {
      bulkVolume: '0.4 m3',
      bulkWaste: '10 %',
      bulkStep: '0.1 m3',
      leastLoad: '1 m3',
      measurePrice: '€150',
      pricedBy: 'm3',
    })
    expect(shown).toMatchObject({ orderedVolume: '1 m³', bulkCost: '€150.00' })
    expect(said).toContain('at the least')
  })

  // 0.44 → 0.5 m³ exactly on a step stays: 5 × 0.1
  it('just a step is one step', () => {
    const { shown } = runNamed('bulk-order', { bulkVolume: '0.5 m3', bulkStep: '0.1 m3' })
    expect(shown.orderedVolume).toBe('0.5 m³')
  })
})

describe('a rent', () => {
  // 4 h × 25 = 100, and a day is 100
  it('hour and day may cost the same', () => {
    const { shown } = runNamed('rent-by-hour', { hourRate: '$25', hoursWanted: '4 h', rentADay: '$100' })
    expect(shown.cheaperRent).toBe('both alike')
  })

  // 2.2 h begin a third
  it('an hour begun is paid', () => {
    const { shown } = runNamed('rent-by-hour', { hourRate: '$25', holesWanted: '11', holesAnHour: '5' })
    expect(shown).toMatchObject({ hoursCharged: '3 hours', rentByHours: '$75.00' })
  })
})

describe('an amount against another', () => {
  it('just as much is neither more nor less', () => {
    expect(runNamed('amount-against', { massHere: '2000 lb', massMark: '1 ton' }).shown.comparison).toBe('just that')
  })

  it('a volume is not held against a weight', () => {
    expect(runNamed('amount-against', { volumeHere: '1 yd3', massMark: '1 ton' }).outcome.ok).toBe(false)
  })

  it('as many as are needed are enough', () => {
    const { shown } = runNamed('enough-pieces', { piecesWanted: '20', piecesHad: '20' })
    expect(shown).toMatchObject({ enoughPieces: 'true', piecesBeyond: '0 pieces' })
  })
})

describe('amounts that no tax comes on', () => {
  // 900 × 1.1 = 990; + 40; the 25 that is paid is left out
  it('they are added after the tax, and what is paid is not', () => {
    const { shown } = runNamed('tax-on-amounts', {
      taxedAmounts: ['$800', '$100'],
      untaxedAmounts: '$40',
      settledAmounts: '$25',
      taxRate: '10 %',
      taxIncluded: 'added',
    })
    expect(shown).toMatchObject({ billTotal: '$1,030.00', billTax: '$90.00' })
  })
})
