// Money: exact, to the cent, in one currency; and what flips which answer.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

describe('lumber by the board foot', () => {
  it('a price for a thousand that was taken for one is refused', () => {
    const { outcome } = runNamed('board-foot-price', {
      boardFootPrice: '$1450',
      nominalThickness: '2x4',
      nominalWidth: '2x4',
      lumberLength: '8 ft',
    })
    expect(outcome.ok).toBe(false)
  })

  // 3/4 in counts as 1: 1 × 6 × 8 / 12 = 4; × 0.90 × 10
  it('thinner than an inch counts as an inch', () => {
    const { shown, said } = runNamed('board-foot-price', {
      boardFootPrice: '$0.90',
      nominalThickness: '3/4 in',
      nominalWidth: '6 in',
      lumberLength: '8 ft',
      sticks: '10',
    })
    expect(shown.woodPrice).toBe('$36.00')
    expect(said).toContain('counted as an inch')
  })
})

describe('tax on amounts', () => {
  // 500 × 0.9 = 450; × 0.2 = 90
  it('a discount comes off before the tax', () => {
    const { shown } = runNamed('tax-on-amounts', {
      taxedAmounts: ['£300', '£200'],
      discount: '10 %',
      taxRate: '20 %',
      taxIncluded: 'added',
    })
    expect(shown).toMatchObject({ billNet: '£450.00', billTax: '£90.00', billTotal: '£540.00' })
  })
})

describe('a bill', () => {
  // 3 × 0.35 = 1.05; 10 % off leaves 0.945, half a cent up 0.95
  it('half a cent goes up', () => {
    const { shown } = runNamed('bill', { itemCounts: '3', unitPrices: '$0.35', discount: '10 %' })
    expect(shown.billTotal).toBe('$0.95')
  })

  // 0.33 × 7.5 % = 0.02475 → 0.02 on each of three lines: 1.05; at the foot 0.99 × 7.5 % = 0.07425 → 0.07: 1.06
  it('three lines of 33 cents with 7.5 % come to $1.06 at the foot, and $1.05 line by line', () => {
    const { shown, said } = runNamed('bill', {
      itemCounts: ['1', '1', '1'],
      unitPrices: ['$0.33', '$0.33', '$0.33'],
      taxRate: '7.5 %',
      taxIncluded: 'added',
    })
    expect(shown).toMatchObject({ billTotal: '$1.06', billTotalByLine: '$1.05' })
    expect(said).toContain('$0.01 less')
  })

  it('where both come to the same, only one is told', () => {
    const { shown, said } = runNamed('bill', { itemCounts: ['2', '3'], unitPrices: ['$1.50', '$2.25'] })
    expect(shown.billTotal).toBe('$9.75')
    expect(shown.billTotalByLine).toBeUndefined()
    expect(said).toContain('it comes to the same')
  })

  it('asks whether the tax is in the prices, and the answer changes the total', () => {
    const given = { itemCounts: '1', unitPrices: '£120', taxRate: '20 %' }
    const asks = runNamed('bill', given)
    expect(asks.outcome.ok).toBe(false)
    expect(asks.said).toContain('taxIncluded')
    expect(runNamed('bill', { ...given, taxIncluded: 'added' }).shown).toMatchObject({
      billTotal: '£144.00',
      billTax: '£24.00',
      billNet: '£120.00',
    })
    expect(runNamed('bill', { ...given, taxIncluded: 'included' }).shown).toMatchObject({
      billTotal: '£120.00',
      billTax: '£20.00',
      billNet: '£100.00',
    })
  })

  it('net and tax are the total, to the cent, whatever the prices', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 50_000 })), {
          minLength: 1,
          maxLength: 6,
        }),
        fc.integer({ min: 0, max: 3000 }),
        fc.constantFrom('added', 'included'),
        (lines, rate, how) => {
          const { outcome } = runNamed('bill', {
            itemCounts: lines.map(([count]) => String(count)),
            unitPrices: lines.map(([, cents]) => `$${(cents / 100).toFixed(2)}`),
            taxRate: `${(rate / 100).toFixed(2)} %`,
            taxIncluded: how,
          })
          if (!outcome.ok) throw new Error('a bill must be worked')
          const cents = (name: string): number => {
            const value = outcome.values.get(name)
            if (!isQuantity(value)) throw new Error(`no ${name}`)
            return numberIn(value, 'USD') * 100
          }
          for (const name of ['billNet', 'billTax', 'billTotal'])
            expect(Math.abs(cents(name) - Math.round(cents(name)))).toBeLessThan(1e-6)
          expect(Math.round(cents('billNet')) + Math.round(cents('billTax'))).toBe(Math.round(cents('billTotal')))
        },
      ),
      { numRuns: 300, seed: 11 },
    )
  })

  it('a list of prices without as many numbers is refused', () => {
    const { outcome, said } = runNamed('bill', { itemCounts: ['2', '3'], unitPrices: '$1.50' })
    expect(outcome.ok).toBe(false)
    expect(said).toContain('1 price and 2 numbers')
  })
})

describe('two currencies in one sum', () => {
  it.each([
    ['bill', { itemCounts: ['1', '1'], unitPrices: ['$5', '£5'] }, '$5.00 and £5.00'],
    ['compare-quotes', { quotes: ['A$900', 'NZ$950'], quoteLengths: '10 m' }, 'A$900.00 and NZ$950.00'],
    ['rent-buy-dig', { rentADay: '€60', machinePrice: '$400' }, '€60.00 and $400.00'],
    ['money-together', { amounts: ['$12.50', '£40'] }, '$12.50 and £40.00'],
    // A plain dollar is not taken for a Canadian one.
    ['bill', { itemCounts: ['1', '1'], unitPrices: ['$5', 'C$5'] }, '$5.00 and C$5.00'],
  ])('%s refuses them and changes none: %j', (name, given, both) => {
    const { outcome, said } = runNamed(name, given)
    expect(outcome.ok).toBe(false)
    expect(said).toContain(`${both} are two currencies`)
  })

  it('one currency stays that one, whichever it is', () => {
    for (const sign of ['$', 'C$', '£', 'A$', 'NZ$', '€'])
      expect(runNamed('bill', { itemCounts: '3', unitPrices: `${sign}1.10` }).shown.billTotal).toBe(`${sign}3.30`)
  })
})

describe('by the measure and by the length', () => {
  it('a price by the yard holds for a cubic yard of gravel, and not for a weight', () => {
    expect(
      runNamed('price-by-measure', { pricedVolume: '3 yd³', measurePrice: '$40', pricedBy: 'yd' }).shown.measuredCost,
    ).toBe('$120.00')
    const refused = runNamed('price-by-measure', { pricedMass: '80 lb', measurePrice: '$40', pricedBy: 'yd' })
    expect(refused.outcome.ok).toBe(false)
    expect(refused.said).toContain('one is a weight, the other a length')
  })

  it('the cost by the foot is the same, told in feet or in metres', () => {
    const feet = runNamed('cost-of-length', { fenceCost: '$4,310', runLength: '118 ft' }).shown
    const metres = runNamed(
      'cost-of-length',
      { fenceCost: '$4,310', runLength: '35.9664 m' },
      { system: 'metric' },
    ).shown
    expect(feet).toEqual(metres)
  })

  // 5000/100 = 50, 5000/100: alike; a dollar less decides
  it('quotes that come to the same are called alike, and one dollar decides', () => {
    const given = { quotes: ['$5,000', '$2,500'], quoteLengths: ['100 ft', '50 ft'] }
    expect(runNamed('compare-quotes', given).shown.cheapestQuote).toBe('alike')
    expect(runNamed('compare-quotes', { ...given, quotes: ['$5,000', '$2,499'] }).shown.cheapestQuote).toBe('second')
    expect(runNamed('compare-quotes', { ...given, quotes: ['$4,999', '$2,500'] }).shown.cheapestQuote).toBe('first')
  })
})

describe('rent, buy or dig', () => {
  const given = {
    rentADay: '$85',
    machinePrice: '$300',
    holeTime: '50 minutes',
    machineHoleTime: '10 minutes',
    posts: '18',
    dayHours: '6 h',
  }
  // by hand 15 h; with the machine 3 h: 15 w against 85 + 3 w against 300 + 3 w: they meet at w = 85/12 = 7.083
  it.each([
    ['$7', 'by hand'],
    ['$7.10', 'rented'],
  ])('with an hour worth %s it is cheapest %s', (hourWorth, way) => {
    expect(runNamed('rent-buy-dig', { ...given, hourWorth }).shown.cheapestDigging).toBe(way)
  })

  // 120 holes at 36 a day: 4 days of rent, 340, against 300
  it('many holes make buying the cheapest', () => {
    expect(runNamed('rent-buy-dig', { ...given, posts: '120', hourWorth: '$20' }).shown).toMatchObject({
      cheapestDigging: 'bought',
      rentedDays: '4 rented days',
    })
  })

  it('says so when no rented day can hold the holes that would pay for it', () => {
    const { shown, said } = runNamed('rent-buy-dig', {
      rentADay: '$85',
      holeTime: '90 minutes',
      machineHoleTime: '60 minutes',
      hourWorth: '$12',
      dayHours: '5 h',
      posts: '5',
    })
    expect(shown.rentHoles).toBe('15 holes')
    expect(said).toContain('Only 5 holes fit a day of 5 hours')
  })

  it('a machine that is no quicker is refused', () => {
    const { outcome, said } = runNamed('rent-buy-dig', { ...given, machineHoleTime: '50 minutes' })
    expect(outcome.ok).toBe(false)
    expect(said).toContain('spares you nothing')
  })
})

describe('timber by the metre or the foot', () => {
  // 3 × 3.6 = 10.8; 2 × 4.8 = 9.6; 20.4 × 5.90
  it('pays every piece by its length', () => {
    const given = { lengthPrices: '€5.90', pricedBy: 'm', soldCounts: ['3', '2'], soldLengths: ['3.60 m', '4.80 m'] }
    expect(runNamed('lengths-bill', given, { system: 'metric' }).shown).toEqual({
      measuredCost: '€120.36',
      lengthBought: '20.4 m',
    })
  })

  it('wants a length for each number, or one for all, and a price by length', () => {
    const given = { lengthPrices: '$2', pricedBy: 'ft', soldCounts: ['3', '2', '1'] }
    expect(runNamed('lengths-bill', { ...given, soldLengths: ['8 ft', '10 ft'] }).said).toContain('3 numbers of pieces')
    expect(runNamed('lengths-bill', { ...given, soldLengths: '8 ft' }).shown).toMatchObject({ measuredCost: '$96.00' })
    expect(runNamed('lengths-bill', { ...given, pricedBy: 'ft2', soldLengths: '8 ft' }).said).toContain(
      'the price is for one square foot',
    )
  })
})

describe('bundles, boxes and packs', () => {
  // 220 = 22 × 10, and 221 begins a bundle
  it('begins a bundle for the last picket', () => {
    const of = (piecesWanted: string) => runNamed('packs', { piecesWanted, piecesAPack: '10' })
    expect(of('220').shown).toMatchObject({ packs: '22 packs', piecesOver: '0 pieces' })
    expect(of('220').said).toContain('none to spare')
    expect(of('221').shown).toMatchObject({ packs: '23 packs', piecesOver: '9 pieces' })
  })

  it('counts a box by its weight, and asks whether to the pound or to the kilogram', () => {
    const box = { piecesAWeight: '75', packWeight: '5 lb' }
    expect(runNamed('packs', { ...box, countedBy: 'lb' }, { wanted: ['piecesInPack'] }).shown).toEqual({
      piecesInPack: '375 pieces',
    })
    // 75 to the pound in a hundredth of a pound: not one of them.
    const speck = { ...box, countedBy: 'lb', packWeight: '0.01 lb' }
    expect(runNamed('packs', speck, { wanted: ['piecesInPack'], confirmed: ['packWeight'] }).said).toContain(
      'does not hold one whole piece',
    )
    expect(runNamed('packs', box, { wanted: ['piecesInPack'] }).said).toContain('missing countedBy')
  })
})

describe('a quote by the foot against a flat one', () => {
  const quote = { measurePrice: '$33', pricedBy: 'ft', quoteExtras: '$450', flatQuote: '$4900' }

  // (4900 − 450)/33 = 134.85 ft
  it('turns at the length where both cost the same', () => {
    const of = (pricedLength: string) => runNamed('quote-by-length', { ...quote, pricedLength }).shown
    expect(of('134 ft')).toMatchObject({ cheaperQuote: 'by the foot or metre', quotesApart: '$28.00' })
    expect(of('135 ft')).toMatchObject({ cheaperQuote: 'the flat quote', quotesApart: '$5.00' })
  })

  // 100 × 33 = 3300
  it('is alike where both come to the same', () => {
    const given = { measurePrice: '$33', pricedBy: 'ft', pricedLength: '100 ft', flatQuote: '$3300' }
    expect(runNamed('quote-by-length', given).shown).toMatchObject({ cheaperQuote: 'both alike', quotesApart: '$0.00' })
  })

  it('asks for the flat one where only the cheaper is wanted', () => {
    const { flatQuote: _, ...alone } = { ...quote, pricedLength: '140 ft' }
    expect(runNamed('quote-by-length', alone, { wanted: ['cheaperQuote'] }).said).toContain('missing flatQuote')
    expect(runNamed('quote-by-length', alone).shown).toEqual({ quotedByMeasure: '$5,070.00' })
  })
})
