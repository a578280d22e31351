// This file is about the evidence for calculations on the ground: posts, holes, concrete, stone, spoil.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, holes and concrete'
const printed =
  'Yields printed on bags of dry concrete mix, https://civilhow.com/how-many-cubic-feet-in-a-bag-of-concrete/: 40 lb 0.30, 50 lb 0.375, 60 lb 0.45, 80 lb 0.60, 90 lb 0.675 ft³'

/** A round hole with a square post, cut into thin level slices and each slice into a fine grid: what is neither post nor soil. */
function concreteByGrid(diameter: number, post: number, height: number): number {
  const cells = 700
  let full = 0
  for (let i = 0; i < cells; i++)
    for (let j = 0; j < cells; j++) {
      const x = ((i + 0.5) / cells - 0.5) * diameter
      const y = ((j + 0.5) / cells - 0.5) * diameter
      if (x * x + y * y <= (diameter / 2) ** 2 && (Math.abs(x) > post / 2 || Math.abs(y) > post / 2)) full++
    }
  return (full * (diameter / cells) ** 2 * height) / 1728
}

export const groundChecks: readonly Check[] = [
  ...(
    [
      ['40 lb', 0.3],
      ['50 lb', 0.375],
      ['60 lb', 0.45],
      ['80 lb', 0.6],
      ['90 lb', 0.675],
    ] as const
  ).map(
    ([bagWeight, expected]): Check => ({
      calculation: 'bag-yield',
      what: `a ${bagWeight} bag makes ${expected} ft³`,
      kind: 'published',
      source: printed,
      reference: 'conc-01-pub',
      given: { bagWeight },
      gives: 'bagYield',
      unit: 'ft3',
      expected,
      tolerance: 0.0005,
    }),
  ),
  {
    calculation: 'concrete-for-posts',
    what: 'a 10 in hole with a 4x4, concrete 20 in high over 4 in of stone',
    kind: 'reference',
    source: ours,
    reference: 'hole-01',
    given: { posts: '1', holeDiameter: '10 in', holeDepth: '24 in', stoneDepth: '4 in', postWidth: '3 1/2 in' },
    gives: 'concretePerHole',
    unit: 'ft3',
    expected: 0.7672,
    tolerance: 0.00005,
  },
  {
    calculation: 'concrete-for-posts',
    what: 'a 12 in hole with a 4x4, concrete 30 in high',
    kind: 'reference',
    source: ours,
    reference: 'hole-02',
    given: {
      posts: '1',
      holeDiameter: '12 in',
      holeDepth: '36 in',
      stoneDepth: '6 in',
      postWidth: '3 1/2 in',
      bagYield: '0.6 ft3',
    },
    gives: 'concretePerHole',
    unit: 'ft3',
    expected: 1.7508,
    tolerance: 0.00005,
  },
  {
    calculation: 'concrete-for-posts',
    what: 'a metric hole',
    kind: 'reference',
    source: ours,
    reference: 'hole-07-si',
    given: { posts: '1', holeDiameter: '300 mm', holeDepth: '600 mm', stoneDepth: '100 mm', postWidth: '90 mm' },
    system: 'metric',
    gives: 'concretePerHole',
    unit: 'L',
    expected: 31.29,
    tolerance: 0.005,
  },
  ...(
    [
      ['bags', 26],
      ['bagsByHole', 36],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'concrete-for-posts',
      what: `18 holes with a tenth more: ${gives}`,
      kind: 'reference',
      source: ours,
      reference: 'hole-08-job',
      given: {
        posts: '18',
        holeDiameter: '10 in',
        holeDepth: '24 in',
        stoneDepth: '4 in',
        postWidth: '3 1/2 in',
        bagYield: '0.6 ft3',
        spare: '10 %',
      },
      gives,
      unit: 'bag',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'concrete-for-posts',
    what: 'the same 12 in hole, by counting the cells of a fine grid',
    kind: 'second derivation',
    source: 'second derivation: the hole’s section cut into 490,000 cells, those outside the post counted',
    given: { posts: '1', holeDiameter: '12 in', holeDepth: '36 in', stoneDepth: '6 in', postWidth: '3 1/2 in' },
    gives: 'concretePerHole',
    unit: 'ft3',
    expected: () => concreteByGrid(12, 3.5, 30),
    tolerance: 0.01,
  },
  {
    calculation: 'gravel-for-holes',
    what: 'stone in place under 18 posts, 12 in wide and 6 in deep',
    kind: 'reference',
    source: ours,
    reference: 'agg-07',
    given: { posts: '18', holeDiameter: '12 in', stoneDepth: '6 in' },
    gives: 'gravelInPlace',
    unit: 'ft3',
    expected: 7.069,
    tolerance: 0.0005,
  },
  {
    calculation: 'gravel-for-holes',
    what: 'the same stone, by slices',
    kind: 'second derivation',
    source: 'second derivation: each disc of stone summed over ten thousand strips across it',
    given: { posts: '18', holeDiameter: '12 in', stoneDepth: '6 in' },
    gives: 'gravelInPlace',
    unit: 'ft3',
    expected: () => {
      let area = 0
      for (let i = 0; i < 10_000; i++) {
        const x = -6 + (i + 0.5) * (12 / 10_000)
        area += 2 * Math.sqrt(36 - x * x) * (12 / 10_000)
      }
      return (18 * area * 6) / 1728
    },
    tolerance: 1e-4,
  },
  {
    calculation: 'post-depth',
    what: 'a 4 ft post by the one-third rule is 2 ft in the ground',
    kind: 'reference',
    source: ours,
    reference: 'hole-05-rule',
    given: { postAbove: '4 ft', stoneDepth: '0 in' },
    gives: 'embedment',
    unit: 'ft',
    expected: 2,
    tolerance: 0,
  },
  {
    calculation: 'post-depth',
    what: 'the length of which a third is in the ground',
    kind: 'second derivation',
    source:
      'second derivation: the post grown by sixteenths until a third of it is what the rest leaves for the ground',
    given: { postAbove: '52 in', stoneDepth: '0 in' },
    gives: 'postLength',
    unit: 'in',
    expected: () => {
      let sixteenths = 52 * 16
      while (sixteenths - 52 * 16 < sixteenths / 3) sixteenths++
      return sixteenths / 16
    },
    tolerance: 0,
  },
  {
    calculation: 'post-split',
    what: 'what an 8 ft post leaves above ground by the rule',
    kind: 'library',
    source: mathjsWorks,
    given: { postLength: '8 ft', stoneDepth: '0 in' },
    gives: 'aboveByRule',
    unit: 'in',
    expected: () => byMathjs('8 ft * 2 / 3', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'post-depth-check',
    what: 'a 30 in hole with 8 in of stone under a 48 in fence falls short',
    kind: 'library',
    source: `${mathjsWorks}: what is in the ground, less a third of the whole post`,
    given: { holeDepth: '30 in', stoneDepth: '8 in', postAbove: '48 in' },
    gives: 'deepEnoughByRule',
    unit: 'verdict',
    expected: () => (byMathjs('(30 - 8) inch - (30 - 8 + 48) inch / 3', 'inch') < 0 ? 0 : 1),
    tolerance: 0,
  },
  {
    calculation: 'post-as-bought',
    what: 'a 7 ft post with 4 ft above ground has 3 ft in it',
    kind: 'library',
    source: `${mathjsWorks}: what is in the ground, less a third of the whole post`,
    given: { postLength: '7 ft', postAbove: '4 ft' },
    gives: 'deepEnoughByRule',
    unit: 'verdict',
    expected: () => (byMathjs('7 ft - 4 ft - 7 ft / 3', 'inch') < 0 ? 0 : 1),
    tolerance: 0,
  },
  ...(
    [
      ['bellConcrete', 0.6763],
      ['concretePerHole', 1.1192],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'belled-hole',
      what: `${gives} of a hole belled from 8 to 14 in`,
      kind: 'reference',
      source: ours,
      reference: 'hole-03-bell',
      given: {
        posts: '1',
        holeDiameter: '8 in',
        holeDepth: '36 in',
        bellWidth: '14 in',
        bellHeight: '12 in',
        postWidth: '3 1/2 in',
        spare: '0 %',
      },
      gives,
      unit: 'ft3',
      expected,
      tolerance: 0.00005,
    }),
  ),
  {
    calculation: 'belled-hole',
    what: 'the bell sliced into ten thousand discs',
    kind: 'second derivation',
    source: 'second derivation: level discs from the bottom to the neck, each with its own width',
    given: { posts: '1', holeDiameter: '8 in', holeDepth: '36 in', bellWidth: '14 in', bellHeight: '12 in' },
    gives: 'bellConcrete',
    unit: 'in3',
    expected: () => {
      let sum = 0
      for (let i = 0; i < 10_000; i++) {
        const width = 14 - 6 * ((i + 0.5) / 10_000)
        sum += (Math.PI / 4) * width * width * (12 / 10_000)
      }
      return sum
    },
    tolerance: 1e-4,
  },
  {
    calculation: 'crowned-top',
    what: 'a crown of 1 in in a 12 in hole',
    kind: 'reference',
    source: ours,
    reference: 'hole-04-crown',
    given: { holeDiameter: '12 in', crownRise: '1 in', postWidth: '3 1/2 in' },
    gives: 'crownConcrete',
    unit: 'in3',
    expected: 41.94,
    tolerance: 0.005,
  },
  {
    calculation: 'crowned-top',
    what: 'the crown sliced into discs',
    kind: 'second derivation',
    source: 'second derivation: level discs from the rim to the post, the post’s area taken from each',
    given: { holeDiameter: '12 in', crownRise: '1 in', postWidth: '3 1/2 in' },
    gives: 'crownConcrete',
    unit: 'in3',
    expected: () => {
      const collar = Math.sqrt((4 * 12.25) / Math.PI)
      let sum = 0
      for (let i = 0; i < 10_000; i++) {
        const width = 12 - (12 - collar) * ((i + 0.5) / 10_000)
        sum += ((Math.PI / 4) * width * width - 12.25) / 10_000
      }
      return sum
    },
    tolerance: 1e-4,
  },
  ...(
    [
      [
        'holeByRule',
        10.5,
        'published',
        'Wood fencing notes, https://richerkb.ca/books/outdoors/page/wood-fencing/revisions/572: 3.5 in makes 10.5 in',
      ],
      ['holeByName', 12, 'reference', `${ours}: three times the post’s name`],
    ] as const
  ).map(
    ([gives, expected, kind, source]): Check => ({
      calculation: 'hole-width-by-rule',
      what: `${gives} for a 4x4`,
      kind,
      source,
      reference: 'hole-06-rule',
      given: { postWidth: '3 1/2 in', postName: '4 in' },
      gives,
      unit: 'in',
      expected,
      tolerance: 0,
    }),
  ),
  ...(
    [
      ['0.3 ft3', 90],
      ['0.375 ft3', 72],
      ['0.45 ft3', 60],
      ['0.6 ft3', 45],
      ['0.675 ft3', 40],
    ] as const
  ).map(
    ([bagYield, expected]): Check => ({
      calculation: 'bags-for-volume',
      what: `bags of ${bagYield} in a cubic yard`,
      kind: 'reference',
      source: ours,
      reference: 'conc-02',
      given: { volumeWanted: '1 yd3', bagYield },
      gives: 'bagsForVolume',
      unit: 'bag',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'bags-for-volume',
    what: 'bags emptied into a form of 13.81 ft³ until it is full',
    kind: 'second derivation',
    source: 'second derivation: bags emptied one after the other until nothing is left to fill',
    given: { volumeWanted: '13.81 ft3', bagYield: '0.45 ft3' },
    gives: 'bagsForVolume',
    unit: 'bag',
    expected: () => {
      let [left, bags] = [13.81, 0]
      while (left > 0) {
        left -= 0.45
        bags++
      }
      return bags
    },
    tolerance: 0,
  },
  ...(
    [
      ['9.36 L', 107],
      ['11.7 L', 86],
      ['14.04 L', 72],
    ] as const
  ).map(
    ([bagYield, expected]): Check => ({
      calculation: 'bags-for-volume',
      what: `bags of ${bagYield} in a cubic metre`,
      kind: 'reference',
      source: ours,
      reference: 'conc-03-si',
      given: { volumeWanted: '1 m3', bagYield },
      gives: 'bagsForVolume',
      unit: 'bag',
      expected,
      tolerance: 0,
    }),
  ),
  ...(
    [
      ['145 lb/ft3', 2002],
      ['150 lb/ft3', 2072],
    ] as const
  ).map(
    ([freshDensity, expected]): Check => ({
      calculation: 'bags-for-volume',
      what: `13.81 ft³ of concrete at ${freshDensity}`,
      kind: 'reference',
      source: ours,
      reference: 'conc-06',
      given: { volumeWanted: '13.81 ft3', freshDensity },
      gives: 'freshWeight',
      unit: 'lb',
      expected,
      tolerance: 0.6,
    }),
  ),
  {
    calculation: 'mix-water',
    what: 'six pints of water weigh 6.26 lb',
    kind: 'reference',
    source: ours,
    reference: 'conc-04',
    given: { bagsToMix: '1', waterEach: '0.75 gal' },
    gives: 'waterWeight',
    unit: 'lb',
    expected: 6.26,
    tolerance: 0.005,
  },
  {
    calculation: 'mix-water',
    what: 'a US gallon of water weighs 8.35 lb',
    kind: 'reference',
    source: ours,
    reference: 'conc-05',
    given: { bagsToMix: '1', waterEach: '1 gal' },
    gives: 'waterWeight',
    unit: 'lb',
    expected: 8.35,
    tolerance: 0.005,
  },
  {
    calculation: 'mix-water',
    what: 'water for 14 bags of 6 US pints each',
    kind: 'library',
    source: `${mathjsWorks}; a litre of water weighs a kilogram (from memory)`,
    given: { bagsToMix: '14', waterEach: '0.75 gal' },
    gives: 'waterWeight',
    unit: 'lb',
    expected: () => byMathjs('14 * 6 pint * 1 kg / 1 litre', 'lb'),
    tolerance: 1e-6,
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
    calculation: 'haul-trips',
    what: '2,400 lb with a payload of 1,500 lb',
    kind: 'reference',
    source: ours,
    reference: 'agg-09',
    given: { loadWeight: '2400 lb', payload: '1500 lb' },
    gives: 'haulTrips',
    unit: 'trip',
    expected: 2,
    tolerance: 0,
  },
  {
    calculation: 'haul-trips',
    what: 'trips driven until nothing is left',
    kind: 'second derivation',
    source: 'second derivation: a payload taken off the heap each trip',
    given: { loadWeight: '6100 kg', payload: '750 kg' },
    gives: 'haulTrips',
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
]
