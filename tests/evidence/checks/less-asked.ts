// This file is about evidence for lines that the usual questions leave out: one picket fewer, a gate at its place, one side coated, the way back.
import type { Check } from '../check.ts'
import { step } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'
import { picketBay } from './wind.ts'

type Given = Check['given']
type Expected = number | (() => number)
type Row = readonly [calculation: string, what: string, given: Given, gives: string, unit: string, expected: Expected]

const tolerance = 1e-6

/** A result, or where it is none, the line of the working that has the name. */
const held =
  (kind: Check['kind'], source: string, isStep = false, metric = false) =>
  ([calculation, what, given, gives, unit, expected]: Row): Check => ({
    calculation,
    what,
    kind,
    source,
    given,
    ...(metric ? { system: 'metric' as const } : {}),
    gives,
    unit,
    ...(isStep ? { got: step(gives, unit) } : {}),
    expected,
    tolerance,
  })

const laid = 'second derivation: post after post set along the run, and counted'
const fewestBays = (length: number, widest: number): number => {
  for (let n = 1; ; n++) if (length / n <= widest) return n
}
// 40 ft between the outsides of the end posts, a 42 in gate whose post stands 15 ft along, posts of 3 1/2 in, no bay over 8 ft.
const gateAtItsPlace = {
  runLength: '40 ft',
  widestBay: '8 ft',
  runEnds: 'outside',
  gates: '1',
  gateOpening: '42 in',
  gateStart: '15 ft',
}
const [near, far] = [180 - 1.75, 480 - 3.5 - (180 - 1.75) - 45.5]

/** The gap that one picket fewer or more would leave, by wood and gaps laid end to end. */
const shared = (opening: number, width: number, count: number): number => {
  let wood = 0
  for (let i = 0; i < count; i++) wood += width
  return (opening - wood) / (count + 1)
}
const bay93 = { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }

// A bay of pickets, rails, a post, a gate and caps, each member unfolded face by face, in inches.
const coated: Given = {
  picketsHung: '15',
  gatePickets: '6',
  picketWidth: '3 1/2 in',
  picketThickness: '3/4 in',
  picketLength: '42 in',
  railLengthAll: '16 ft',
  rails: '2',
  posts: '2',
  postWidth: '3 1/2 in',
  postAbove: '48 in',
  gateFrame: '12 ft',
  capSize: '5 1/2 in',
  capThickness: '3/4 in',
}
const faces = (...each: readonly (readonly [number, number])[]): number =>
  each.reduce((sum, [wide, high]) => sum + wide * high, 0)
const rail = [3.5, 1.5] as const
const round = {
  pickets: 9 * faces([3.5, 42], [3.5, 42], [0.75, 42], [0.75, 42], [3.5, 0.75], [3.5, 0.75]),
  gates:
    6 * faces([3.5, 42], [3.5, 42], [0.75, 42], [0.75, 42], [3.5, 0.75], [3.5, 0.75]) +
    faces([rail[0], 144], [rail[0], 144], [rail[1], 144], [rail[1], 144]),
  rails: faces([rail[0], 192], [rail[0], 192], [rail[1], 192], [rail[1], 192]),
  posts: 2 * faces([3.5, 48], [3.5, 48], [3.5, 48], [3.5, 48], [3.5, 3.5]),
  caps: 2 * faces([5.5, 5.5], [5.5, 5.5], [5.5, 0.75], [5.5, 0.75], [5.5, 0.75], [5.5, 0.75]),
}
const front = {
  pickets: 9 * faces([3.5, 42], [0.75, 42], [0.75, 42]),
  gates: 6 * faces([3.5, 42], [0.75, 42], [0.75, 42]) + faces([3.5, 144]),
  rails: faces([3.5, 192]),
  posts: 2 * faces([3.5, 48]),
  caps: 2 * faces([5.5, 0.75]),
}
const sum = (all: Readonly<Record<string, number>>): number => Object.values(all).reduce((a, b) => a + b, 0)
const areaRows = (sides: 'both' | 'one', of: typeof round): Row[] =>
  (
    [
      ['picketsArea', of.pickets],
      ['railsArea', of.rails],
      ['postsArea', of.posts],
      ['gatesArea', of.gates],
      ['capsArea', of.caps],
      ['finishArea', sum(of)],
    ] as const
  ).map(([gives, expected]) => [
    'finish-area',
    `${gives} of a bay with a gate and caps, ${sides} sides coated`,
    { ...coated, sidesCoated: sides },
    gives,
    'in2',
    expected,
  ])

/** Two of a kind together: their mean, what one has over the other, a share of them; and how often one goes into the other whole, with what is over. */
const togetherRows = (
  calculation: string,
  list: string,
  stem: string,
  pair: readonly [string, string],
  unit: string,
  [a, b]: readonly [number, number],
): Row[] => [
  [calculation, `the mean of ${pair.join(' and ')}`, { [list]: pair }, `${stem}Mean`, unit, (a + b) / 2],
  [calculation, `${pair[0]} less ${pair[1]}`, { [list]: pair }, `${stem}Difference`, unit, a - b],
]

// A wet, incised rail and post of Douglas fir-larch No. 2. NDS 2018, tables 4A, 2.3.2, 4.3.8: bending 900 psi, shear 180 psi, stiffness 1.6 million psi;
// × 1.5 for 4 in nominal; wet × 0.85 (bending), 0.97 (shear), 0.9 (stiffness); incised × 0.8; a gust × 1.6, a week of people × 1.25. Factors from memory.
const design =
  'National Design Specification for Wood Construction 2018, tables 4A, 2.3.2 and 4.3.8, factors from memory'
const fir = { lumberGroup: 'douglas-fir-larch', incised: 'yes' }
const firRail = {
  ...fir,
  opening: '92 1/2 in',
  railDepth: '3 1/2 in',
  railThickness: '1 1/2 in',
  leanWeight: '200 lb',
  sideForce: '300 lbf',
  rails: '2',
}
const firPost = { ...fir, sideForce: '200 lbf', forceHeight: '2 ft', postWidth: '3 1/2 in', sectionLeft: '60 %' }
/** How far an evenly loaded stick on two ends bows in its middle: its curve added up twice, from small pieces. */
const bow = (load: number, span: number, stiffness: number, section: number): number => {
  const pieces = 20_000
  const dx = span / pieces
  let [slope, down] = [0, 0]
  // From the middle, where it lies level, to the end.
  for (let i = 0; i < pieces / 2; i++) {
    const x = span / 2 + (i + 0.5) * dx
    const moment = ((load / span) * x * (span - x)) / 2
    slope += (moment / (stiffness * section)) * dx
    down += (slope - ((moment / (stiffness * section)) * dx) / 2) * dx
  }
  return down
}

const cents = (money: number): number => Math.round(money * 100 + 1e-9) / 100
const discountedBill = {
  itemCounts: ['12', '3'],
  unitPrices: ['$5.98', '$11.40'],
  discount: '10 %',
  taxRate: '7 %',
  taxIncluded: 'added',
}
const lineByLine = [12 * 5.98, 3 * 11.4]
  .map((it) => cents(it * 0.9))
  .reduce((all, it) => all + it + cents(it * 0.07), 0)
const rentOrBuy = {
  rentADay: '$85',
  machinePrice: '$300',
  machineResale: '$120',
  machineHoleTime: '13 min',
  holeTime: '50 min',
  hourWorth: '$20',
  posts: '60',
  dayHours: '7 h',
}

export const lessAskedChecks: readonly Check[] = [
  ...(
    [
      [
        'rail-strength',
        'what a wet incised rail may bear of people',
        firRail,
        'personAllowed',
        'psi',
        900 * 1.25 * 1.5 * 0.85 * 0.8,
      ],
      ['rail-strength', 'what it may bear of a gust', firRail, 'windAllowed', 'psi', 900 * 1.6 * 1.5 * 0.85 * 0.8],
      ['rail-strength', 'its stiffness when wet', firRail, 'wetStiffness', 'psi', 0.9 * 1_600_000],
      [
        'post-strength',
        'what a wet incised post may bear in bending',
        firPost,
        'bendingAllowed',
        'psi',
        900 * 1.6 * 1.5 * 0.85 * 0.8,
      ],
      ['post-strength', 'what it may bear in shear', firPost, 'shearAllowed', 'psi', 180 * 1.6 * 0.97 * 0.8],
    ] as const satisfies readonly Row[]
  ).map(held('handbook', design, true)),
  {
    calculation: 'rail-strength',
    what: 'how far the gust bows that rail',
    kind: 'second derivation',
    source: 'second derivation: the curve of the rail added up twice from small pieces',
    given: firRail,
    gives: 'windBow',
    unit: 'in',
    expected: () => bow(150, 92.5, 0.9 * 1_600_000, (3.5 * 1.5 ** 3) / 12),
    tolerance: 1e-5,
  },
  ...(
    [
      [
        'post-strength',
        'stress in what the rot has left',
        firPost,
        'rottedStress',
        'psi',
        () => byMathjs('200 lbf * 2 ft / ((3.5 inch)^3 / 6 * 0.6)', 'psi'),
      ],
    ] as const satisfies readonly Row[]
  ).map(held('library', mathjsWorks, true)),
  ...(
    [
      ['bill', 'a bill with a discount, rounded on every line', discountedBill, 'billTotalByLine', 'USD', lineByLine],
      [
        'tax-on-amounts',
        'two amounts less a discount, with the tax',
        { taxedAmounts: ['$612.40', '$3.15'], discount: '10 %', taxRate: '7 %', taxIncluded: 'added' },
        'billTotal',
        'USD',
        cents(615.55 * 0.9) + cents(cents(615.55 * 0.9) * 0.07),
      ],
      [
        'price-by-measure',
        '86 ft² at $1.85 a square foot',
        { pricedArea: '86 ft²', measurePrice: '$1.85', pricedBy: 'ft2' },
        'measuredCost',
        'USD',
        159.1,
      ],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', 'second derivation: added up line by line, in cents')),
  ...(
    [
      ['rent-buy-dig', 'the rent and the hours with it', rentOrBuy, 'rented', 'USD', 2 * 85 + ((60 * 13) / 60) * 20],
      [
        'rent-buy-dig',
        'its price and the hours with it',
        rentOrBuy,
        'bought',
        'USD',
        300 - 120 + ((60 * 13) / 60) * 20,
      ],
      // 32 holes of 13 minutes fit 7 hours: 6 h 56 min.
      ['rent-buy-dig', 'whole holes in a rented day', rentOrBuy, 'holesInADay', 'ratio', 32],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', 'second derivation: hole by hole, in minutes', true)),
  ...(
    [
      [
        'run-set-out',
        'posts with a gate in the middle',
        {
          runLength: '40 ft',
          widestBay: '8 ft',
          nearEnd: 'wall',
          farEnd: 'post',
          gateOpenings: ['42 in'],
          gatePlace: 'middle',
        },
        'posts',
        'post',
        () => 2 * fewestBays((480 - 1.75 - 45.5) / 2, 96) + 2,
      ],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', laid)),
  ...(
    [
      [
        'post-depth',
        'the hole where the office and the code’s formula ask for more, with stone and concrete under the foot',
        { postAbove: '4 ft', stoneDepth: '6 in', concreteUnder: '4 in', officeDepth: '30 in', codeDepth: '33 in' },
        'holeDepth',
        'in',
        33 + 6 + 4,
      ],
      [
        'post-depth',
        'the post where the office asks for the most',
        { postAbove: '4 ft', stoneDepth: '6 in', officeDepth: '34 in', codeDepth: '20 in' },
        'postLength',
        'in',
        48 + 34,
      ],
      [
        'stepped-run',
        'the step of the widest of unequal bays',
        { fall: '40 in', levelDistance: '48 ft', widestBay: '8 ft', bayRow: ['100 in', '96 in', '90 in'] },
        'stepEach',
        'in',
        (40 / 576) * 100,
      ],
      [
        'days-of-tasks',
        'days of setting 17 hours of posts by two',
        { settingTime: '17 h', helpers: '1', dayHours: '5 h' },
        'setWork',
        'day',
        2,
      ],
      [
        'days-of-tasks',
        'days of 29 hours of gates by two',
        { gateBuilding: '29 h', helpers: '1', dayHours: '5 h' },
        'gateWork',
        'day',
        3,
      ],
      [
        'picket-screws',
        'screws for 121 crossings with 7 % to spare',
        { picketsHung: '60', picketCrossings: '121', rails: '2', screwsEachJoint: '2', screwSpare: '7 %' },
        'screwsToBuy',
        'screw',
        259,
      ],
      [
        'rail-brackets',
        'brackets of 27 rails in all',
        { railsInAll: '27', rails: '2', bays: '13' },
        'brackets',
        'bracket',
        54,
      ],
      [
        'wind-open-fence',
        'where the wind pushes, pickets 6 in off the ground',
        { ...picketBay, footGap: '6 in' },
        'forceHeight',
        'in',
        6 + (48 - 6) / 2,
      ],
      [
        'wind-from-pressure',
        'where the wind pushes, boards 6 in off the ground',
        { givenPressure: '18.5 psf', postAbove: '8 ft', bayCentres: '10 ft', footGap: '6 in' },
        'forceHeight',
        'in',
        6 + (96 - 6) / 2,
      ],
      [
        'wind-from-pressure',
        'its force on those boards',
        { givenPressure: '18.5 psf', postAbove: '8 ft', bayCentres: '10 ft', footGap: '6 in' },
        'sideForce',
        'lbf',
        18.5 * 10 * 7.5,
      ],
      [
        'compare-quotes',
        'the cheapest by the metre',
        { quotes: ['$4,200', '$3,900'], quoteLengths: ['120 m', '105 m'] },
        'cheapestPerMetre',
        'USD',
        35,
      ],
      [
        'concrete-for-posts',
        'bags opened at each hole, with 20 % to spare',
        {
          posts: '4',
          holeDiameter: '10 in',
          holeDepth: '30 in',
          stoneDepth: '6 in',
          postWidth: '3 1/2 in',
          bagYield: '0.45 ft3',
          spare: '20 %',
        },
        'bagsPerHole',
        'bag',
        () => Math.ceil((((Math.PI / 4) * 100 - 12.25) * 24 * 1.2) / 1728 / 0.45),
      ],
      [
        'belled-hole',
        'concrete of four belled holes with 30 % to spare',
        {
          posts: '4',
          holeDiameter: '8 in',
          holeDepth: '36 in',
          bellWidth: '14 in',
          bellHeight: '12 in',
          postWidth: '3 1/2 in',
          bagYield: '0.6 ft3',
          spare: '30 %',
        },
        'concrete',
        'in3',
        () => {
          // The bell in thin slices.
          const slices = 100_000
          let bell = 0
          for (let i = 0; i < slices; i++) bell += (Math.PI / 4) * (8 + (6 * (i + 0.5)) / slices) ** 2 * (12 / slices)
          return 4 * 1.3 * (bell + (Math.PI / 4) * 64 * 24 - 12.25 * 36)
        },
      ],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', 'second derivation: worked with bare numbers, part by part')),
  ...(
    [
      [
        'bays-in-run',
        'bays beside a gate at its place',
        gateAtItsPlace,
        'bays',
        'bay',
        () => fewestBays(near, 96) + fewestBays(far, 96),
      ],
      [
        'bays-in-run',
        'posts beside a gate at its place',
        gateAtItsPlace,
        'posts',
        'post',
        () => fewestBays(near, 96) + fewestBays(far, 96) + 2,
      ],
      [
        'bays-in-run',
        'the wider bay beside that gate',
        gateAtItsPlace,
        'bayCentres',
        'in',
        () => Math.max(near / fewestBays(near, 96), far / fewestBays(far, 96)),
      ],
      [
        'bays-in-run',
        'posts of a loop of 100 ft with a 42 in gate',
        { runLength: '100 ft', widestBay: '8 ft', runEnds: 'loop', gates: '1', gateOpening: '42 in' },
        'posts',
        'post',
        () => fewestBays(1200 - 45.5, 96) + 1,
      ],
      [
        'bays-round-corners',
        'posts of a closed yard of four sides with a gate in the first',
        {
          fenceSides: ['40 ft', '60 ft', '40 ft', '60 ft'],
          widestBay: '8 ft',
          runEnds: 'loop',
          gates: '1',
          gateOpening: '90 in',
          gateSides: '1',
        },
        'posts',
        'post',
        () => fewestBays(480 - 93.5, 96) + fewestBays(720, 96) * 2 + fewestBays(480, 96) + 1,
      ],
      [
        'bay-patterns',
        'what is left beside whole bays of 8 ft and a gate in 100 ft',
        { runLength: '100 ft', fixedBay: '8 ft', gates: '1', gateOpening: '42 in' },
        'oddBay',
        'in',
        () => {
          let left = 1200 - 42 - 3.5
          while (left >= 96) left -= 96
          return left
        },
      ],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', laid)),
  ...(
    [
      ['bays-in-run', 'each bay before that gate', gateAtItsPlace, 'bayBefore', 'in', near / 2],
      ['bays-in-run', 'each bay after that gate', gateAtItsPlace, 'bayAfter', 'in', far / 3],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', laid, true)),
  ...(
    [
      [
        'picket-spacing',
        'the gap with one picket fewer, 15 in 93 in',
        bay93,
        'gapOneFewer',
        'in',
        () => shared(93, 3.5, 15),
      ],
      [
        'picket-spacing',
        'the gap with one picket more, 17 in 93 in',
        bay93,
        'gapOneMore',
        'in',
        () => shared(93, 3.5, 17),
      ],
      [
        'picket-spacing',
        'pickets whose gap comes nearest to 1 3/4 in',
        { opening: '70 5/8 in', picketWidth: '3 1/2 in', wantedGap: '1 3/4 in' },
        'pickets',
        'picket',
        () => {
          const off = (n: number): number => Math.abs(shared(70.625, 3.5, n) - 1.75)
          return Array.from({ length: 20 }, (_, i) => i + 1).reduce((best, n) => (off(n) < off(best) ? n : best))
        },
      ],
      [
        'picket-spacing',
        'pickets that keep both a widest gap of 3 in and a 4 in ball',
        { ...bay93, widestGap: '3 in', sphere: '4 in' },
        'pickets',
        'picket',
        () => {
          for (let n = 1; ; n++) if (shared(93, 3.5, n) <= 3) return n
        },
      ],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', 'second derivation: pickets laid one by one and the rest shared')),
  ...[...areaRows('both', round), ...areaRows('one', front)].map(
    held('second derivation', 'second derivation: every member unfolded and its faces added up'),
  ),
  ...(
    [
      // Where each of 15 pickets crosses 2 rails, both faces; under each of 2 caps its seat and the top of the post.
      ['finish-area', 'what no brush reaches', coated, 'hiddenArea', 'in2', 15 * 2 * 2 * 3.5 * 3.5 + 2 * 2 * 3.5 * 3.5],
    ] as const satisfies readonly Row[]
  ).map(held('second derivation', 'second derivation: every member unfolded and its faces added up')),
  ...(
    [
      [
        'convert-temperature',
        '37 °C in the working',
        { temperatureGiven: '37 °C', temperatureUnit: 'F' },
        'fahrenheit',
        'ratio',
        () => byMathjs('37 degC', 'degF'),
      ],
      [
        'convert-temperature',
        '−40 °F in the working',
        { temperatureGiven: '-40 °F', temperatureUnit: 'C' },
        'celsius',
        'ratio',
        () => byMathjs('-40 degF', 'degC'),
      ],
      [
        'convert-temperature-difference',
        '7 °C of difference in the working',
        { differenceGiven: '7 dC', differenceUnit: 'dF' },
        'inFahrenheit',
        'ratio',
        () => byMathjs('7 K', 'degR'),
      ],
      [
        'convert-temperature-difference',
        '5 °F of difference in the working',
        { differenceGiven: '5 dF', differenceUnit: 'dC' },
        'inCelsius',
        'ratio',
        () => byMathjs('5 degR', 'K'),
      ],
    ] as const satisfies readonly Row[]
  ).map(held('library', mathjsWorks, true)),
  ...[
    ...togetherRows('masses-together', 'masses', 'mass', ['80 lb', '47 lb'], 'lb', [80, 47]),
    ...togetherRows('volumes-together', 'volumes', 'volume', ['6 ft³', '2 1/2 ft³'], 'ft3', [6, 2.5]),
    ...togetherRows('areas-together', 'areas', 'area', ['120 ft²', '86 ft²'], 'ft2', [120, 86]),
    ...togetherRows('durations-together', 'durations', 'duration', ['3 h', '1 h'], 'h', [3, 1]),
    ...togetherRows('money-together', 'amounts', 'money', ['$47.90', '$12.36'], 'USD', [47.9, 12.36]),
  ].map(held('second derivation', 'second derivation: worked with bare numbers')),
  ...(
    [
      [
        'masses-together',
        '96 lb shared by 12',
        { masses: '96 lb', howManyTimes: '12' },
        'massShare',
        'lb',
        () => byMathjs('96 lb / 12', 'lb'),
      ],
      [
        'volumes-together',
        '6.6 ft³ shared by 11',
        { volumes: '6.6 ft³', howManyTimes: '11' },
        'volumeShare',
        'ft3',
        () => byMathjs('6.6 ft^3 / 11', 'ft^3'),
      ],
      [
        'areas-together',
        '206 ft² shared by 4',
        { areas: '206 ft²', howManyTimes: '4' },
        'areaShare',
        'ft2',
        () => byMathjs('206 ft^2 / 4', 'ft^2'),
      ],
      [
        'durations-together',
        '5 h shared by 2',
        { durations: '5 h', howManyTimes: '2' },
        'durationShare',
        'h',
        () => byMathjs('5 hours / 2', 'hours'),
      ],
    ] as const satisfies readonly Row[]
  ).map(held('library', mathjsWorks)),
  {
    calculation: 'air-for-moisture',
    what: 'the humidity found for 12 % at 50 °F, put back, gives the moisture again',
    kind: 'second derivation',
    source: 'second derivation: what was put in must come out',
    given: { airTemperature: '50 F', wantedMoisture: '12 %' },
    gives: 'settles',
    unit: 'ratio',
    got: step('settles', 'ratio'),
    expected: 0.12,
    tolerance: 1e-9,
  },
]
