import { type Check, step } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, holes and concrete'
const worksheet =
  'NIOSH lifting analysis worksheet, tables 1 to 4 in inches, https://www.scribd.com/document/53505426/Lifting-Analysis-Worksheet'
export const diggingChecks: readonly Check[] = [
  {
    calculation: 'spoil-of-holes',
    what: 'the soil of ten square holes as it lay',
    kind: 'library',
    source: mathjsWorks,
    given: { posts: '10', holeDiameter: '300 mm', holeShape: 'square', holeDepth: '600 mm' },
    system: 'metric',
    gives: 'spoilInGround',
    unit: 'L',
    expected: () => byMathjs('10 * 300 mm * 300 mm * 600 mm', 'litre'),
    tolerance: 1e-9,
  },
  ...(
    [
      ['spoilInGround', 'ft3', 42.41, 0.005],
      ['soilOut', 'ft3', 53.01, 0.005],
      ['soilOut', 'yd3', 1.963, 0.0005],
      ['spoilWeight', 'lb', 4241, 0.5],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'spoil-of-holes',
      what: `${gives} of 18 holes in ${unit}`,
      kind: 'reference',
      source: ours,
      reference: 'agg-06',
      given: { posts: '18', holeDiameter: '12 in', holeDepth: '36 in', soilSwell: '25 %', soilDensity: '100 lb/ft3' },
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  {
    calculation: 'spoil-of-holes',
    what: 'the printed ratio of 1,300 yd³ loose to 1,000 in the ground at 30 % swell, in ten holes',
    kind: 'published',
    source:
      'Earthwork example, https://issuhub.com/view/index?id=4050&pageIndex=80: 1,000 bank cubic yards at 30 % swell are 1,300 loose',
    given: { posts: '10', holeDiameter: '2 ft', holeDepth: '3 ft', soilSwell: '30 %' },
    confirmed: ['holeDiameter'],
    gives: 'soilOut',
    unit: 'ratio',
    got: ({ outcome }) => {
      const pick = (name: string): number =>
        Number((outcome.ok ? (outcome.values.get(name) as { amount: { value: number } }) : undefined)?.amount.value)
      return (pick('soilOut') / pick('spoilInGround')) * 1000
    },
    expected: 1300,
    tolerance: 0.5,
  },
  {
    calculation: 'lifting-check',
    what: 'the lift at best returns the load constant',
    kind: 'published',
    source:
      'Revised NIOSH lifting equation (NIOSH 94-110), http://what-when-how.com/Tutorial/topic-53604/Fundamentals-and-Assessment-Tools-for-Occupational-Ergonomics-892.html',
    reference: 'safe-01',
    given: { liftReach: '10 in', liftFrom: '30 in', liftTo: '40 in', liftGrip: 'good' },
    gives: 'liftLimit',
    unit: 'lb',
    expected: 51,
    tolerance: 0.001,
  },
  ...(
    [
      ['liftLimit', 'lb', 22.03, 0.005],
      ['liftIndex', 'ratio', 3.63, 0.005],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'lifting-check',
      what: `${gives} of an 80 lb bag from the floor to 30 in, hands 15 in out`,
      kind: 'reference',
      source: 'Reference book, lifting',
      reference: 'safe-02',
      given: { liftWeight: '80 lb', liftReach: '15 in', liftFrom: '0 in', liftTo: '30 in', liftGrip: 'fair' },
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  // Printed for 25, 75 and 4.5 cm; ours works in inches, so 40 cm gives 0.635, 0.775 and 0.934.
  ...(
    [
      ['reachPart', 0.63],
      ['heightPart', 0.78],
      ['travelPart', 0.93],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'lifting-check',
      what: `${gives} with the hands 40 cm out, lifted 40 cm from the floor`,
      kind: 'published',
      source: 'Table at https://bhhcsafetycenter.com/calculating-recommended-weight-limit-rwl-fact-sheets/?print=print',
      reference: 'safe-03-pub',
      given: { liftReach: '40 cm', liftFrom: '0 cm', liftTo: '40 cm' },
      system: 'metric',
      gives,
      unit: 'ratio',
      got: step(gives, 'ratio'),
      expected,
      tolerance: 0.006,
    }),
  ),
  ...[1, 0.91, 0.83, 0.77, 0.71, 0.67, 0.63, 0.59, 0.56, 0.53, 0.5, 0.48, 0.46, 0.44, 0.42, 0.4].map(
    (expected, i): Check => ({
      calculation: 'lifting-check',
      what: `the printed horizontal multiplier at ${10 + i} in`,
      kind: 'published',
      source: worksheet,
      given: { liftReach: `${10 + i} in`, liftFrom: '30 in', liftTo: '40 in' },
      gives: 'reachPart',
      unit: 'ratio',
      got: step('reachPart', 'ratio'),
      expected,
      // The table prints 0.46 and 0.44 for 10/22 and 10/23.
      tolerance: 0.0056,
    }),
  ),
  ...[0.78, 0.81, 0.85, 0.89, 0.93, 0.96, 1, 0.96, 0.93, 0.89, 0.85, 0.81, 0.78, 0.74, 0.7].map(
    (expected, i): Check => ({
      calculation: 'lifting-check',
      what: `the printed vertical multiplier at ${5 * i} in`,
      kind: 'published',
      source: worksheet,
      given: { liftReach: '10 in', liftFrom: `${5 * i} in`, liftTo: '40 in' },
      gives: 'heightPart',
      unit: 'ratio',
      got: step('heightPart', 'ratio'),
      expected,
      tolerance: 0.005 + 1e-9,
    }),
  ),
  ...(
    [
      [10, 1],
      [15, 0.94],
      [20, 0.91],
      [25, 0.89],
      [30, 0.88],
      [35, 0.87],
      [40, 0.87],
      [45, 0.86],
      [50, 0.86],
      [55, 0.85],
      [60, 0.85],
      [70, 0.85],
    ] as const
  ).map(
    ([inches, expected]): Check => ({
      calculation: 'lifting-check',
      what: `the printed distance multiplier at ${inches} in`,
      kind: 'published',
      source: worksheet,
      given: { liftReach: '10 in', liftFrom: '0 in', liftTo: `${inches} in` },
      gives: 'travelPart',
      unit: 'ratio',
      got: step('travelPart', 'ratio'),
      expected,
      tolerance: 0.005 + 1e-9,
    }),
  ),
  ...[1, 0.95, 0.9, 0.86, 0.81, 0.76, 0.71, 0.66, 0.62, 0.57].map(
    (expected, i): Check => ({
      calculation: 'lifting-check',
      what: `the printed asymmetric multiplier at ${15 * i}°`,
      kind: 'published',
      source: worksheet,
      given: { liftReach: '10 in', liftTo: '40 in', liftTwist: `${15 * i} deg` },
      gives: 'twistPart',
      unit: 'ratio',
      got: step('twistPart', 'ratio'),
      expected,
      tolerance: 0.005 + 1e-9,
    }),
  ),
  {
    calculation: 'haul-trips',
    what: '2,400 lb with a payload of 1,500 lb',
    kind: 'reference',
    source: ours,
    reference: 'agg-09',
    given: { loadWeight: '2400 lb', payload: '1500 lb' },
    gives: 'trips',
    unit: 'trip',
    expected: 2,
    tolerance: 0,
  },
  {
    calculation: 'haul-trips',
    what: 'by weight, room and count at once, driven until nothing is left of any of them',
    kind: 'second derivation',
    source: 'second derivation: a payload, a bed and an armful taken off the three heaps each trip',
    given: {
      loadWeight: '2400 lb',
      payload: '1500 lb',
      loadVolume: '4 yd3',
      bedVolume: '1.2 yd3',
      piecesToHaul: '46',
      piecesEachTrip: '12',
    },
    gives: 'trips',
    unit: 'trip',
    expected: () => {
      let [pounds, tenthYards, pieces, trips] = [2400, 40, 46, 0]
      while (pounds > 0 || tenthYards > 0 || pieces > 0) {
        pounds -= 1500
        tenthYards -= 12
        pieces -= 12
        trips++
      }
      return trips
    },
    tolerance: 0,
  },
  {
    calculation: 'haul-trips',
    what: 'bags put on one by one while the payload bears them, the people weighed in first',
    kind: 'second derivation',
    source:
      'second derivation: bag after bag from the heap into the vehicle, which drives when the next would be too much',
    given: { piecesToHaul: '61', pieceWeight: '55 kg', payload: '620 kg', weightAboard: ['82 kg', '61 kg'] },
    gives: 'trips',
    unit: 'trip',
    expected: () => {
      let trips = 1
      let aboard = 82 + 61
      for (let bag = 0; bag < 61; bag++) {
        if (aboard + 55 > 620) {
          trips++
          aboard = 82 + 61
        }
        aboard += 55
      }
      return trips
    },
    tolerance: 0,
  },
  {
    calculation: 'haul-trips',
    what: '80 lb bags on what is left of 1,480 lb beside a driver of 86.2 kg',
    kind: 'library',
    source: mathjsWorks,
    given: { pieceWeight: '80 lb', piecesToHaul: '34', payload: '1480 lb', weightAboard: '86.2 kg' },
    gives: 'payloadLeft',
    unit: 'lb',
    expected: () => byMathjs('1480 lb - 86.2 kg', 'lb'),
    tolerance: 1e-9,
  },
  // A load that extends more than 4 ft beyond the rear must be flagged. The rule was read as somebody quotes it, not at the law’s own page.
  ...(
    [
      ['15 ft', 0],
      ['15 ft 1 in', 1],
    ] as const
  ).map(
    ([longestPiece, expected]): Check => ({
      calculation: 'load-overhang',
      what: `${longestPiece} on a bed of 11 ft, flagged from more than 4 ft behind`,
      kind: 'handbook',
      source: '49 CFR 393.87(a), 70 FR 48054 (2005), as quoted at tractorbynet.com, post 4711623',
      given: { longestPiece, bedLength: '11 ft' },
      gives: 'overhang',
      unit: 'verdict',
      got: ({ outcome }) =>
        outcome.ok && outcome.tables[0]?.rows.find(([where]) => where === 'US')?.[3] === 'must be marked' ? 1 : 0,
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'load-overhang',
    what: 'a 3.6 m rail on a bed of 2.1 m',
    kind: 'library',
    source: mathjsWorks,
    given: { longestPiece: '3.6 m', bedLength: '2.1 m' },
    gives: 'overhangShare',
    unit: 'percent',
    expected: () => byMathjs('100 * (3.6 m - 2.1 m) / (3.6 m) * 1 m', 'm'),
    tolerance: 1e-9,
  },
  {
    calculation: 'deliver-or-haul',
    what: 'the delivery against trips driven until nothing is left, an hour paid by the minute',
    kind: 'second derivation',
    source:
      'second derivation: a payload taken off the heap each trip, each trip and each of its minutes paid in cents',
    given: {
      deliveryPrice: '$85',
      loadWeight: '3900 lb',
      payload: '1200 lb',
      tripCost: '$11.40',
      tripTime: '50 minutes',
      hourWorth: '$18',
    },
    gives: 'haulSaves',
    unit: 'USD',
    expected: () => {
      let [left, cents] = [3900, 0]
      while (left > 0) {
        left -= 1200
        cents += 1140 + (50 * 1800) / 60
      }
      return Math.abs(cents - 8500) / 100
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'haul-trips',
    what: 'trips driven until nothing is left',
    kind: 'second derivation',
    source: 'second derivation: a payload taken off the heap each trip',
    given: { loadWeight: '6100 kg', payload: '750 kg' },
    gives: 'trips',
    unit: 'trip',
    expected: () => {
      let [left, trips] = [6100, 0]
      while (left > 0) {
        left -= 750
        trips++
      }
      return trips
    },
    tolerance: 0,
  },
  {
    calculation: 'digging-hours',
    what: '23 holes of 35 minutes dug by four',
    kind: 'second derivation',
    source:
      'second derivation: whoever is free first takes the next hole, until none is left; the last to finish decides',
    given: { posts: '23', holeTime: '35 minutes', diggers: '4' },
    gives: 'diggingClock',
    unit: 'h',
    expected: () => {
      const busyUntil = [0, 0, 0, 0]
      for (let hole = 0; hole < 23; hole++) {
        const first = busyUntil.indexOf(Math.min(...busyUntil))
        busyUntil[first] = (busyUntil[first] as number) + 35
      }
      return Math.max(...busyUntil) / 60
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'digging-hours',
    what: '11 holes of 40 minutes',
    kind: 'library',
    source: mathjsWorks,
    given: { posts: '11', holeTime: '40 minutes' },
    gives: 'diggingTime',
    unit: 'h',
    expected: () => byMathjs('11 * 40 minutes', 'hours'),
    tolerance: 1e-9,
  },
  {
    calculation: 'loose-in-bags',
    what: 'bags tipped out one by one until the stone is enough',
    kind: 'second derivation',
    source: 'second derivation: half a cubic foot at a time',
    given: { looseVolume: '8.2 ft3', looseBag: '0.5 ft3' },
    gives: 'looseBags',
    unit: 'bag',
    expected: () => {
      let [tenths, bags] = [0, 0]
      while (tenths < 82) {
        tenths += 5
        bags++
      }
      return bags
    },
    tolerance: 0,
  },
  {
    calculation: 'loose-in-bags',
    what: '50 lb bags of gravel at 1,600 kg/m³ for 100 L',
    kind: 'library',
    source: mathjsWorks,
    given: { looseVolume: '100 L', looseBagWeight: '50 lb', gravelDensity: '1600 kg/m3' },
    gives: 'looseBags',
    unit: 'bag',
    expected: () => Math.ceil(byMathjs('100 L * 1600 kg/m^3 / (50 lb) * 1 m', 'm')),
    tolerance: 0,
  },
]
