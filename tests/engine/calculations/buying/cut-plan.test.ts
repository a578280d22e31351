// What the cut plan says of itself: what is proved, what is not, how to mark; and what it refuses.
import { describe, expect, it } from 'vitest'
import { cutSolver } from '../../../../src/solver/highs.ts'
import { type Inputs, runNamed } from '../../run-named.ts'

const solver = await cutSolver()
const rails: Inputs = {
  pieceLengths: ['45 in', '30 in', '22 in'],
  pieceCounts: ['12', '8', '20'],
  stockLengths: ['8 ft', '10 ft'],
  stockPrices: ['$6.80', '$9.20'],
}

const rowsOf = (title: string, { outcome }: ReturnType<typeof runNamed>): readonly (readonly (string | number)[])[] =>
  (outcome.ok ? outcome.tables.find((it) => it.title === title)?.rows : undefined) ?? []

describe('the cut plan', () => {
  // 11 × 6.80 + 2 × 9.20 = 93.20; 108 ft; 12 × 45 + 8 × 30 + 20 × 22 = 1220 in of 1296
  it('buys eleven boards of 8 ft and two of 10 ft for $93.20, and says that it is proved', () => {
    const ran = runNamed('cut-plan', rails, { solver })
    expect(ran.shown).toMatchObject({ boardsToCut: '13 boards', cutCost: '$93.20', timberBought: '108 ft' })
    expect(rowsOf('What to buy', ran)).toEqual([
      ['8 ft', 11, '$6.80', '$74.80'],
      ['10 ft', 2, '$9.20', '$18.40'],
    ])
    expect(ran.said).toContain('No plan costs less than this one, $93.20: that is proved.')
    expect(rowsOf('What proves it', ran)).toContainEqual(['worth of a 45 in piece, in USD', '17/5'])
  })

  // 14 × 6.80 = 95.20. All wood at the cheapest foot: 1225 in with its cuts / 96 1/8 × 6.80 = 86.66, and 86.80 = 6 × 6.80 + 5 × 9.20 is the next sum.
  it('without a solver gives a dearer plan, with what no plan is below, and claims nothing', () => {
    const { shown, said } = runNamed('cut-plan', rails)
    expect(shown.cutCost).toBe('$95.20')
    expect(said).toContain('No plan can be cheaper than $86.80; this one is $95.20, 9.7 % more.')
    expect(said).toContain('made by plain rules')
    expect(said).not.toContain('that is proved')
  })

  // 1 + 45 = 46; 46 + 1/8 + 45 = 91 1/8; 96 − 91 1/8 − 1/8 = 4 3/4
  it('marks from the end as bought, trim and cuts within the marks', () => {
    const two: Inputs = { pieceLengths: '45 in', pieceCounts: '2', stockLengths: '8 ft', endTrim: '1 in' }
    const ran = runNamed('cut-plan', two, { solver })
    expect(rowsOf('Stick by stick', ran)).toEqual([[1, '8 ft', '2 × 45 in', '46 in, 91 1/8 in', '4 3/4 in']])
    expect(ran.said).toContain('once 1 in is squared off it')
  })

  // 47 15/16 + 1/8 + 47 15/16 = 96: the second piece ends where the board does.
  it('marks no cut where the last piece ends flush', () => {
    const ran = runNamed(
      'cut-plan',
      { pieceLengths: '47 15/16 in', pieceCounts: '2', stockLengths: '8 ft' },
      { solver },
    )
    expect(rowsOf('Stick by stick', ran)).toEqual([[1, '8 ft', '2 × 47 15/16 in', '47 15/16 in', 'none']])
  })

  // 96 − 58 − 1/8 = 37 7/8 in: one of 30 in, or three of 12 in with their cuts, 36 1/4.
  it('says how many of the smaller pieces come out of the offcuts', () => {
    const one: Inputs = { pieceLengths: '58 in', pieceCounts: '1', stockLengths: '8 ft' }
    const said = (smallLengths: string, smallCounts: string): string =>
      runNamed('cut-plan', { ...one, smallLengths, smallCounts }).said
    expect(said('30 in', '1')).toContain('All the smaller pieces come out of the offcuts.')
    expect(said('30 in', '2')).toContain('Of 2 smaller pieces, 1 smaller piece comes out of the offcuts, by plain')
    expect(said('12 in', '4')).toContain('Of 4 smaller pieces, 3 smaller pieces come out of the offcuts, by plain')
    expect(said('40 in', '4')).toContain('Of 4 smaller pieces, none comes out of the offcuts, by plain')
  })

  it('buys the least timber where there are no prices, and says so', () => {
    const { stockPrices: _, ...unpriced } = rails
    const { shown, said } = runNamed('cut-plan', unpriced, { solver })
    expect(shown.cutCost).toBeUndefined()
    expect(said).toContain('No prices are given, so I buy the least timber')
    expect(runNamed('cut-plan', unpriced, { wanted: ['cutCost'] }).said).toContain('missing stockPrices')
  })

  // 96 − 80 − 1/8 = 15 7/8: two caps of 5 1/2 in from each
  it('offers the offcuts to smaller pieces', () => {
    const caps: Inputs = { pieceLengths: '80 in', pieceCounts: '2', stockLengths: '8 ft', smallLengths: '5 1/2 in' }
    const all = runNamed('cut-plan', { ...caps, smallCounts: '4' }, { solver })
    expect(all.shown.smallsFromOffcuts).toBe('4 smaller pieces')
    expect(rowsOf('Smaller pieces from the offcuts', all)).toEqual([[2, '15 7/8 in', '2 × 5 1/2 in']])
    expect(runNamed('cut-plan', { ...caps, smallCounts: '5' }, { solver }).said).toContain(
      'Of 5 smaller pieces, 4 smaller pieces come out of the offcuts',
    )
    expect(runNamed('cut-plan', caps, { solver }).said).toContain('missing smallCounts')
  })

  it('reckons prices with parts of a cent as they are', () => {
    // 3 boards at 6.805
    const odd: Inputs = { pieceLengths: '60 in', pieceCounts: '3', stockLengths: '8 ft', stockPrices: '$6.805' }
    expect(runNamed('cut-plan', odd, { solver }).shown.cutCost).toBe('$20.415')
  })

  it('draws at most twelve ways of cutting and says how many more there are', () => {
    const lengths = Array.from({ length: 14 }, (_, i) => `${60 + i} in`)
    const many: Inputs = { pieceLengths: lengths, pieceCounts: lengths.map(() => '1'), stockLengths: '8 ft' }
    const { outcome } = runNamed('cut-plan', many)
    expect(outcome.ok && outcome.drawing).toContain('2 more ways of cutting')
  })
})

describe('refused', () => {
  it.each<[string, Inputs, string]>([
    ['a price missing', { ...rails, stockPrices: '$6.80' }, 'I have 1 price for 2 lengths of board'],
    ['a number missing', { ...rails, pieceCounts: ['12', '8'] }, 'I have 3 lengths of pieces and 2 numbers'],
    [
      'a piece too long',
      { ...rails, pieceLengths: ['45 in', '30 in', '11 ft'] },
      'A piece of 132 in is longer than any board',
    ],
    ['too many', { ...rails, pieceCounts: ['1200', '800', '20'] }, 'I plan at most 2,000 pieces'],
  ])('%s', (_, given, why) => {
    const { outcome, said } = runNamed('cut-plan', given, { solver, confirmed: ['pieceCounts'] })
    expect(outcome.ok).toBe(false)
    expect(said).toContain(why)
  })
})
