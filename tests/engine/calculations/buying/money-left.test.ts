// What is left of the money, saving up for it, packs against single ones, and a rent whose first hours have their own price.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('what is left of the money', () => {
  // (500 + 100) × 1.05 = 630; 700 − 630
  it('amounts with tax come off it', () => {
    const { shown } = runNamed('money-left', { budget: '$700', spentAmounts: ['$500', '$100'], spentTax: '5 %' })
    expect(shown).toMatchObject({ spentTogether: '$630.00', budgetLeft: '$70.00' })
  })

  // 10 × 12 + 80 = 200, 20 over 180; with 10 % tax 220: 40 / (2 × 1.1) = 18.2
  it('over it, so many fewer of one thing bring it back, tax and all', () => {
    const given = { budget: '$180', spentAmounts: '$80', spentCounts: '10', spentPrices: '$12', pieceDropped: '$2' }
    expect(runNamed('money-left', given).shown).toMatchObject({ budgetShort: '$20.00', piecesToDrop: '10 pieces' })
    const taxed = runNamed('money-left', { ...given, spentTax: '10 %' })
    expect(taxed.shown).toMatchObject({ budgetShort: '$40.00', piecesToDrop: '19 pieces' })
  })

  it('within it none is left out, and even is even', () => {
    const within = runNamed('money-left', { budget: '$200', spentAmounts: '$80', pieceDropped: '$2' })
    expect(within.shown.piecesToDrop).toBeUndefined()
    expect(within.said).toContain('none has to be left out')
    expect(runNamed('money-left', { budget: '$80', spentAmounts: '$80' }).said).toContain('even')
  })

  it('a number lacks its price', () => {
    const { outcome } = runNamed('money-left', { budget: '$80', spentCounts: ['3', '4'], spentPrices: '$2' })
    expect(outcome.ok).toBe(false)
  })
})

describe('saving up', () => {
  // 400 − 160 = 240; / 50 = 4.8 → 5
  it('what is there already counts', () => {
    const given = { savingGoal: '$400', savedAlready: '$160', savedEach: '$50', savedEvery: 'week' }
    expect(runNamed('saving-time', given).shown).toMatchObject({ savingTime: '5 weeks', stillToSave: '$240.00' })
  })

  // 5 times two weeks
  it('every second week takes twice as long', () => {
    const given = { savingGoal: '$250', savedEach: '$50', savedEvery: 'fortnight' }
    expect(runNamed('saving-time', given).shown.savingTime).toBe('10 weeks')
  })

  it('what is there already, or nothing put by, is refused', () => {
    const given = { savingGoal: '$400', savedEach: '$50', savedEvery: 'week' }
    expect(runNamed('saving-time', { ...given, savedAlready: '$400' }).outcome.ok).toBe(false)
    expect(runNamed('saving-time', { ...given, savedEach: '$0' }).outcome.ok).toBe(false)
  })
})

describe('packs against single ones', () => {
  // 14 in packs of 5: 3 × 18 = 54, 1 over; 14 × 3.50 = 49
  it('single ones may cost less', () => {
    const given = { piecesWanted: '14', piecesAPack: '5', packPrice: '$18', singlePrice: '$3.50' }
    const { shown, said } = runNamed('packs', given)
    expect(shown).toMatchObject({ packsCost: '$54.00', singlesCost: '$49.00', piecesOver: '1 piece' })
    expect(said).toContain('Single ones cost less')
    expect(runNamed('packs', { ...given, singlePrice: '$4' }).said).toContain('Packs cost less')
    // 54 / 12
    expect(runNamed('packs', { ...given, piecesWanted: '12', singlePrice: '$4.50' }).said).toContain('the same')
  })
})

describe('a rent with a price for the first hours', () => {
  const given = { firstHours: '4 h', firstHoursPrice: '$70', hourRate: '$20' }
  // 70 + 1.5 × 20 = 100, or 70 + 2 × 20 = 110; a day at 90
  it('the rest is by the hour, and a day may cost less', () => {
    const { shown } = runNamed('rent-by-hour', { ...given, hoursWanted: '5.5 h', rentADay: '$90' })
    expect(shown).toMatchObject({ rentByHours: '$100.00', rentByBegunHours: '$110.00' })
    expect(shown).toMatchObject({ cheaperRent: 'by the day', rentsApart: '$10.00' })
  })

  it('a shorter time costs the first price', () => {
    const { shown } = runNamed('rent-by-hour', { ...given, hoursWanted: '3 h' })
    expect(shown.rentByHours).toBe('$70.00')
    expect(shown.rentByBegunHours).toBeUndefined()
  })

  // 12 × 20 = 240 min = 4 h, and 30 min: 4.5 h, 5 begun × 22
  it('so long a hole, and the way back on the clock', () => {
    const { shown } = runNamed('rent-by-hour', {
      hourRate: '$22',
      holesWanted: '12',
      timeAHole: '20 min',
      timeBeside: '30 min',
    })
    expect(shown).toMatchObject({ hoursCharged: '5 hours', rentByHours: '$110.00' })
  })

  it('the first hours without their price ask for it', () => {
    const { outcome } = runNamed('rent-by-hour', { firstHours: '4 h', hourRate: '$20', hoursWanted: '5 h' })
    expect(outcome.ok).toBe(false)
  })
})
