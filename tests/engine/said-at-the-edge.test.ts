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
    [
      'yard-closure',
      { sides: ['3 ft', '4 ft'], yardDiagonal: '5 ft' },
      'A yard has three sides or more, and I have 2 sides.',
    ],
    // Three angles of four are enough, two are not.
    [
      'yard-closure',
      { sides: ['60 ft', '40 ft', '60 ft', '40 ft'], corners: ['90 deg', '90 deg'] },
      '4 sides have as many corners, and I have 2 angles.',
    ],
    [
      'yard-closure',
      { sides: ['60 ft', '40 ft', '60 ft', '40 ft'], corners: ['90 deg', '90 deg', '90 deg'] },
      'The sides close: the last one ends where the first began.',
    ],
    // (4 − 2) × 180 = 360; 3 × 90 + 91 = 361.
    [
      'yard-closure',
      { sides: ['60 ft', '40 ft', '60 ft', '40 ft'], corners: ['90 deg', '90 deg', '90 deg', '91 deg'] },
      'add up to 360°, and yours add up to 361°',
    ],
    // 40 − 20 = 20 and 30 − 10 = 20 are left open: √(20² + 20²) = 28.28 ft = 339.4 in, one in 3.536 of 100 ft.
    [
      'yard-closure',
      { sides: ['40 ft', '30 ft', '20 ft', '10 ft'], corners: ['90 deg', '90 deg', '90 deg'] },
      'the last side ends 339.4 in from where the first began: one in 3.536 of the 100 ft measured',
    ],
    ['gap-for-pickets', { opening: '20000 ft', picketWidth: '3 1/2 in', pickets: '20001' }, 'cannot be 20,001 pickets'],
    // Two thirds are kept by 5 of 6 in, (5/6)² = 69.44 %, and not by 2 of 3 in, (2/3)² = 44.44 %. Round, (2.5/3.5)³ = 36.44 % is the least there is.
    ['rot-left', { postWidth: '6 in', rotDepth: '1 in', rotWhere: 'one' }, 'bending: 69.44 % against 66.67 %.'],
    ['rot-left', { postWidth: '3 in', rotDepth: '1 in', rotWhere: 'one' }, 'bending: 44.44 % against 66.67 %.'],
    [
      'rot-left',
      { postWidth: '3 1/2 in', rotDepth: '1/2 in', rotWhere: 'one', postSection: 'round' },
      'at least 36.44 % against 66.67 %, so more may be left: probe all round.',
    ],
    ['air-for-moisture', { airTemperature: '29 F', wantedMoisture: '10 %' }, '29 °F and 52.8 % lie outside it.'],
    ['air-for-moisture', { airTemperature: '70 F', wantedMoisture: '0.5 %' }, '70 °F and 1.9 % lie outside it.'],
    ['air-for-moisture', { airTemperature: '70 F', wantedMoisture: '26 %' }, '70 °F and 97.4 % lie outside it.'],
    [
      'air-for-moisture',
      { airTemperature: '70 F', wantedMoisture: '40 %' },
      'No air makes wood settle at 40 % at 70 °F',
    ],
    [
      'paint-window',
      { hourTemperatures: ['60 F'], hourHumidities: ['50 %'], firstHour: '9' },
      'I have 1 temperature. Give one for each hour, two or more',
    ],
    [
      'paint-window',
      { hourTemperatures: ['60 F', '60 F', '60 F'], hourHumidities: ['50 %', '50 %'], firstHour: '9' },
      'I have 3 temperatures and 2 humidities.',
    ],
    // 23 ft less 3 1/2 in and a gate: two bays, with one joint between them and room for one gate there.
    [
      'run-set-out',
      { runLength: '20 ft', postWidth: '3 1/2 in', widestBay: '8 ft', gateOpenings: ['42 in'] },
      'so it stands where two bays meet',
    ],
    [
      'run-set-out',
      { runLength: '20 ft', postWidth: '3 1/2 in', widestBay: '9 ft', gateOpenings: ['42 in', '42 in'] },
      'have too few joints for 2 gates between bays',
    ],
    [
      'run-set-out',
      { runLength: '10 ft', postWidth: '3 1/2 in', widestBay: '8 ft', gateOpenings: ['42 in'] },
      '1 bay has too few joints for 1 gate between bays',
    ],
  ])('%s, %j', (name, given, said) => {
    expect(runNamed(name, given, { system: systemOf(given), confirmed: Object.keys(given) }).said).toContain(said)
  })

  it('what lies just within the table of the handbook is not doubted', () => {
    for (const airTemperature of ['30 F', '31 F'])
      expect(runNamed('air-for-moisture', { airTemperature, wantedMoisture: '10 %' }).said).not.toContain(
        'lie outside it',
      )
    expect(
      runNamed(
        'air-for-moisture',
        { airTemperature: '270 F', wantedMoisture: '3 %' },
        { confirmed: ['airTemperature'] },
      ).said,
    ).not.toContain('lie outside it')
  })

  it('one picket fewer than too many is worked', () => {
    // 20,000 × 3 1/2 in = 70,000; 240,000 − 70,000 = 170,000 in; shared by 20,001 gaps, a little less than 8 1/2 in.
    const given = { opening: '20000 ft', picketWidth: '3 1/2 in', pickets: '20000' }
    expect(runNamed('gap-for-pickets', given, { confirmed: Object.keys(given) }).outcome.ok).toBe(true)
  })

  it('a tenth of the stick is the deepest bow, and the opening the farthest swing', () => {
    // (60 + 4) / 16 = 4; 60 / (4 / 5) = 75 in; 8 × 7 1/2² / (3 × 75) = 2 in.
    const given = { opening: '60 in', picketWidth: '4 in', pickets: '15', stickPitch: '5 in' }
    const ran = (more: Inputs) =>
      runNamed('stick-errors', { ...given, ...more }, { confirmed: [...Object.keys(given), ...Object.keys(more)] })
    expect(ran({ stickBow: '7 1/2 in' }).shown.bowShort).toBe('2 in')
    expect(ran({ stickBow: '7 9/16 in' }).said).toContain('A bow of 7 9/16 in in a stick of 75 in is no shallow one.')
    expect(ran({ stickSwing: '59 in' }).outcome.ok).toBe(true)
    expect(ran({ stickSwing: '60 in' }).said).toContain('the stick does not reach across')
    expect(ran({ stickPitch: '4 in' }).said).toContain('such a stick is not laid aslant at all')
    expect(ran({ pickets: '16' }).said).toContain('16 pickets of 4 in do not fit a 60 in opening')
  })

  it('20,000 pickets are the most that one opening may have room for', () => {
    // 20,000 × 3 1/2 = 70,000.
    const said = (opening: string) =>
      runNamed(
        'picket-spacing',
        { opening, picketWidth: '3 1/2 in', widestGap: '36 in' },
        { confirmed: ['opening', 'widestGap'] },
      ).said
    expect(said('70000 in')).not.toContain('would be more than')
    expect(said('70003 1/2 in')).toContain('would be more than 20,000 pickets')
  })

  it('what a load weighs needs no payload, and all else of it does', () => {
    const load = { loadCounts: ['12', '9'], loadWeights: ['25 kg', '11 kg'] }
    const wanting = (...wanted: string[]) => runNamed('mixed-load', load, { wanted, system: 'metric' })
    // 12 × 25 + 9 × 11 = 399.
    expect(wanting('mixedWeight').shown).toEqual({ mixedWeight: '399 kg' })
    for (const wanted of [
      ['loadFits'],
      ['mixedTrips'],
      ['overPayload'],
      ['mixedWeight', 'loadFits'],
      ['mixedWeight', 'mixedTrips'],
    ])
      expect(wanting(...wanted).said, wanted.join()).toContain('missing payload')
  })

  it.each<[Inputs, Record<string, string>]>([
    // 12 × 5.98 = 71.76; 71.76 + 20 + 0.50; 71.76 + 100; 71.76 + 100 + 20
    [{ amountsBeside: ['$20', '$0.50'] }, { billTotal: '$92.26' }],
    [{ amountCarried: '$100' }, { billTotal: '$171.76' }],
    [{ amountsBeside: '$20', amountCarried: '$100' }, { billTotal: '$191.76' }],
    // 91.76 × 0.9 = 82.584; 91.76 × 0.1 = 9.176; 91.76 / 11 = 8.3418
    [
      { amountsBeside: '$20', discount: '10 %' },
      { billBefore: '$91.76', billTotal: '$82.58' },
    ],
    [
      { amountsBeside: '$20', taxRate: '10 %', taxIncluded: 'added' },
      { billTax: '$9.18', billTotal: '$100.94' },
    ],
    [
      { amountsBeside: '$20', taxRate: '10 %', taxIncluded: 'included' },
      { billTax: '$8.34', billNet: '$83.42' },
    ],
  ])('a bill of $71.76 with %j', (more, shown) => {
    expect(runNamed('bill', { unitPrices: '$5.98', itemCounts: '12', ...more }).shown).toMatchObject(shown)
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
