// What a calculation says or refuses just where one case passes into another: worked by hand, on both sides where there are two.
import { describe, expect, it } from 'vitest'
import { type Inputs, runNamed, systemOf } from './run-named.ts'

describe('at the edge', () => {
  it.each<[string, Inputs, string]>([
    // 2 × 1 3/4 in is all of 3 1/2 in.
    [
      'clipped-corners',
      { picketWidth: '3 1/2 in', clipAcross: '1 3/4 in' },
      'The two cuts meet in the middle: that is a point.',
    ],
    // (30² − 1²) / 4 / 10 = 22.475 ft, more than the side itself.
    [
      'rectangle-diagonals',
      { pushedSide: '10 ft', diagonals: ['30 ft', '1 ft'] },
      'Diagonals of 30 ft and 1 ft do not belong to a side of 10 ft',
    ],
    [
      'rectangle-diagonals',
      { pushedSide: '10 ft', diagonals: ['10 ft', '10 ft'] },
      'A side of 10 ft cannot have diagonals of 10 ft and 10 ft',
    ],
    ['rectangle-diagonals', { pushedSide: '10 ft', diagonals: ['12 ft', '12 ft'] }, 'The diagonals are alike.'],
    ['rectangle-diagonals', { pushedSide: '10 ft', diagonals: ['12 ft'] }, 'I have 1 diagonal. Give both.'],
    ['rectangle-diagonals', { diagonals: ['12 ft', '12 ft', '13 ft'] }, 'I have 3 diagonals. Give both.'],
    // 48 hours are two whole days, 50 are not.
    ['days-later', { fromDay: '2025-06-15', laterBy: '48 h' }, 'at the same hour of that day, not sooner'],
    ['days-later', { fromDay: '2025-06-15', laterBy: '50 h' }, 'A part of a day is counted as a day begun'],
    ['days-later', { fromDay: '2025-01-31', laterBy: '1 month' }, 'A month on is the same day of the next month'],
    // Monday 5 to Friday 16 October 2026; the holidays lie after and before.
    [
      'working-days-between',
      { fromDay: '2026-10-05', toDay: '2026-10-16', holidays: ['2026-10-19'] },
      'Monday 19 October 2026 lies outside, and changes nothing.',
    ],
    [
      'working-days-between',
      { fromDay: '2026-10-05', toDay: '2026-10-16', holidays: ['2026-10-19', '2026-10-02'] },
      'Monday 19 October 2026 and Friday 2 October 2026 lie outside, and change nothing.',
    ],
    ['working-days-between', { fromDay: '2026-10-16', toDay: '2026-10-05' }, 'comes before'],
    [
      'fastener-metal',
      { woodTreated: 'untreated', species: 'western-redcedar', metalInHand: 'copper' },
      'copper leaves streaks in it',
    ],
    [
      'fastener-metal',
      { woodTreated: 'treated', species: 'southern-pine', metalInHand: 'copper' },
      'I have no source for copper or brass in this wood',
    ],
    [
      'fastener-metal',
      { woodTreated: 'treated', species: 'southern-pine', metalInHand: 'aluminium' },
      'aluminium against copper-treated wood is eaten away',
    ],
    [
      'fastener-metal',
      { woodTreated: 'untreated', species: 'southern-pine', metalInHand: 'aluminium' },
      'I have no source for aluminium in untreated wood',
    ],
    [
      'fastener-metal',
      { woodTreated: 'treated', species: 'southern-pine', metalInHand: 'stainless' },
      'The metal in hand decides: stainless suits',
    ],
    [
      'fastener-metal',
      { woodTreated: 'treated', species: 'southern-pine', metalInHand: 'hotDip' },
      'hot-dip zinc is what it takes',
    ],
    [
      'fastener-metal',
      { woodTreated: 'untreated', species: 'western-redcedar', metalInHand: 'plain' },
      'plain steel rusts outdoors, and it streaks this wood black',
    ],
    [
      'bays-round-corners',
      { fenceSides: ['40 ft', '60 ft'], widestBay: '8 ft', gates: '0', gateOpening: '42 in' },
      'You speak of a gate and say that there is none.',
    ],
    [
      'bays-round-corners',
      { fenceSides: ['40 ft', '60 ft'], widestBay: '8 ft', gates: '0', gateSides: ['1'] },
      'You speak of a gate and say that there is none.',
    ],
    [
      'bays-round-corners',
      {
        fenceSides: ['40 ft', '60 ft'],
        widestBay: '8 ft',
        gates: '2',
        gateOpening: '42 in',
        gateSides: ['1', '2', '2'],
      },
      'You have 2 gates and named 3 sides.',
    ],
    [
      'bays-round-corners',
      { fenceSides: ['40 ft', '60 ft'], widestBay: '8 ft' },
      'You did not mention a gate, so I took none.',
    ],
    // Two pickets of 3 1/2 in are 7 in; one in 5 in leaves two gaps of 3/4 in.
    [
      'picket-spacing',
      { opening: '5 in', picketWidth: '3 1/2 in', widestGap: '1/2 in' },
      'No number of 3 1/2 in pickets keeps every gap within 1/2 in in a 5 in opening. 1 picket leaves gaps of 3/4 in, which is too wide. 2 pickets do not fit: they are 7 in of wood, 2 in more than the opening. Allow a wider gap, or use narrower pickets',
    ],
  ])('%s, %j', (name, given, said) => {
    expect(runNamed(name, given, { system: systemOf(given), confirmed: Object.keys(given) }).said).toContain(said)
  })

  it('two numbers are multiplied and divided, three are not, and nothing by nought', () => {
    const said = (numbers: readonly string[], wanted: string) =>
      runNamed('numbers-together', { numbers }, { wanted: [wanted] })
    expect(said(['2', '3'], 'numberProduct').shown).toEqual({ numberProduct: '6' })
    expect(said(['2', '3', '4'], 'numberProduct').said).toContain(
      'I multiply and divide two at a time, and I have 3 numbers.',
    )
    expect(said(['2', '0'], 'numberQuotient').said).toContain('Nothing can be divided by 0.')
  })
})
