// This file is about the evidence for concrete: bags, water, site mix, what goes into a hole, and how long it takes.
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

export const concreteChecks: readonly Check[] = [
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
    calculation: 'concrete-for-posts',
    what: 'a square hole with a post hung in it, by counting little cubes',
    kind: 'second derivation',
    source: 'second derivation: 12 × 12 × 30 in cut into half-inch cubes, those of the post and of the stone left out',
    given: {
      posts: '1',
      holeDiameter: '12 in',
      holeShape: 'square',
      holeDepth: '30 in',
      stoneDepth: '4 in',
      concreteUnder: '6 in',
      postWidth: '4 in',
      concreteBelowGrade: '2 in',
    },
    gives: 'concretePerHole',
    unit: 'in3',
    expected: () => {
      let cubes = 0
      for (let down = 0; down < 60; down++)
        for (let i = 0; i < 24; i++)
          for (let j = 0; j < 24; j++) {
            const deep = (down + 0.5) / 2
            const inPost = deep < 20 && Math.abs(i + 0.5 - 12) < 4 && Math.abs(j + 0.5 - 12) < 4
            if (deep > 2 && deep < 26 && !inPost) cubes++
          }
      return cubes / 8
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'concrete-for-posts',
    what: 'a round hole with a post hung 100 mm off the bottom',
    kind: 'library',
    source: mathjsWorks,
    given: {
      posts: '1',
      holeDiameter: '300 mm',
      holeDepth: '600 mm',
      stoneDepth: '0 mm',
      concreteUnder: '100 mm',
      postWidth: '90 mm',
    },
    system: 'metric',
    gives: 'concretePerHole',
    unit: 'L',
    expected: () => byMathjs('pi * (150 mm)^2 * 600 mm - (90 mm)^2 * 500 mm', 'litre'),
    tolerance: 1e-9,
  },
  {
    calculation: 'belled-hole',
    what: 'a square bell sliced into ten thousand plates',
    kind: 'second derivation',
    source: 'second derivation: level square plates from the bottom to the neck, each with its own width',
    given: {
      posts: '1',
      holeDiameter: '8 in',
      holeShape: 'square',
      holeDepth: '36 in',
      bellWidth: '14 in',
      bellHeight: '12 in',
    },
    gives: 'bellConcrete',
    unit: 'in3',
    expected: () => {
      let sum = 0
      for (let i = 0; i < 10_000; i++) sum += (14 - 6 * ((i + 0.5) / 10_000)) ** 2 * (12 / 10_000)
      return sum
    },
    tolerance: 1e-4,
  },
  {
    calculation: 'crowned-top',
    what: 'a crown over a square hole sliced into plates',
    kind: 'second derivation',
    source: 'second derivation: level square plates from the rim to the post, the post’s area taken from each',
    given: { holeDiameter: '12 in', holeShape: 'square', crownRise: '1 in', postWidth: '3 1/2 in' },
    gives: 'crownConcrete',
    unit: 'in3',
    expected: () => {
      let sum = 0
      for (let i = 0; i < 10_000; i++) sum += ((12 - 8.5 * ((i + 0.5) / 10_000)) ** 2 - 12.25) / 10_000
      return sum
    },
    tolerance: 1e-4,
  },
  ...(
    [
      ['cementVolume', 'm3', 0.22, 0.005],
      ['sandForMix', 'm3', 0.44, 0.005],
      ['stoneForMix', 'm3', 0.88, 0.005],
      ['cementBags', 'bag', 7, 0],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'site-mix',
      what: `a cubic metre at 1 : 2 : 4 with bags of 50 kg: ${gives}`,
      kind: 'published',
      source:
        'Worked example, https://engineeringdiscoveries.com/2019/08/03/what-is-the-ratio-of-dry-concrete-to-wet-concrete/: 0.22 m³ of cement (“say 7 bags”), 0.44 of sand, 0.88 of stone',
      given: { concrete: '1 m3', mixParts: '1 : 2 : 4', cementBagWeight: '50 kg', cementDensity: '1440 kg/m3' },
      system: 'metric',
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  ...(
    [
      ['sandForMix', 0.0163],
      ['stoneForMix', 0.0326],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'site-mix',
      what: `a cubic foot at 1 : 2 : 4: ${gives}`,
      kind: 'published',
      source:
        'Atlas Portland Cement Company, Concrete Construction for the Home and the Farm, Table III, https://bitlit.ru/page/en/atlas-portland-cement-company/concrete-construction-for-the-home-and-the-farm/17: 0.0163 and 0.0326 yd³ in a cubic foot of concrete',
      given: { concrete: '1 ft3', mixParts: '1 : 2 : 4' },
      gives,
      unit: 'yd3',
      expected,
      tolerance: 0.00005,
    }),
  ),
  {
    calculation: 'site-mix',
    what: 'cement in a cubic foot at 1 : 2 : 4, in the barrels of that table',
    kind: 'published',
    source:
      'the same Table III: 0.058 barrels of cement; a barrel of four 94 lb bags then measured 3.8 ft³ (the size is from memory; Gillette and Hill, Concrete Construction, Table XII, give tables for it)',
    given: { concrete: '1 ft3', mixParts: '1 : 2 : 4' },
    gives: 'cementVolume',
    unit: 'ft3',
    expected: 0.058 * 3.8,
    tolerance: 0.0005 * 3.8,
  },
  {
    calculation: 'site-mix',
    what: 'buckets tipped in until the heap makes the concrete',
    kind: 'second derivation',
    source: 'second derivation: batches of one, two and three buckets added up, each making its share of wet concrete',
    given: { concrete: '13.5 ft3', mixParts: '1 : 2 : 3', bucketSize: '5 gal', bucketFill: '100 %', dryExtra: '50 %' },
    gives: 'mixBatches',
    unit: 'batch',
    expected: () => {
      let [wet, batches] = [0, 0]
      while (wet < 13.5 * 1728) {
        wet += ((1 + 2 + 3) * 5 * 231) / 1.5
        batches++
      }
      return batches
    },
    tolerance: 0,
  },
  {
    calculation: 'bags-for-volume',
    what: 'quarter yards ordered until the holes are full',
    kind: 'second derivation',
    source: 'second derivation: a quarter yard of 6.75 ft³ added until there is enough',
    given: { concrete: '10.13 ft3', orderStep: '1/4 yd3' },
    gives: 'readyMix',
    unit: 'yd3',
    expected: () => {
      let quarters = 0
      while (quarters * 6.75 < 10.13) quarters++
      return quarters / 4
    },
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
      given: { concrete: '1 yd3', bagYield },
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
    given: { concrete: '13.81 ft3', bagYield: '0.45 ft3' },
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
      given: { concrete: '1 m3', bagYield },
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
      given: { concrete: '13.81 ft3', freshDensity },
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
    what: 'the most water for 14 bags that name 6 to 7 US pints each',
    kind: 'library',
    source: mathjsWorks,
    given: { bagsToMix: '14', waterEach: '0.75 gal', waterEachMost: '0.875 gal' },
    gives: 'waterAllMost',
    unit: 'gal',
    expected: () => byMathjs('14 * 7 pint', 'gallon'),
    tolerance: 1e-6,
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
  {
    calculation: 'mix-water',
    what: 'six pints for each of ten bags, printed as 2.8 L each',
    kind: 'published',
    source:
      'https://www.reference.com/world-view/many-cubic-feet-80-pound-bag-concrete-d47f0e31b26a3479: about 6 pints, 3 quarts or 2.8 L to an 80 lb bag',
    given: { bagsToMix: '10', waterEach: '0.75 gal' },
    gives: 'waterAll',
    unit: 'L',
    expected: 28,
    // Half of the last figure printed, for ten bags.
    tolerance: 0.5,
  },
  ...(
    [
      ['waterWeight', '1 m³ of water at its densest is 2,204.62 lb', '400', '2.5 L', 'lb', 2204.62, 0.005],
      // Ours is cold water; at 62 °F the book’s weighs 0.15 % less.
      ['waterWeight', 'a US gallon at 62 °F is 8.333 lb', '24', '3/4 gal', 'lb', 18 * 8.333, 0.25],
      ['waterAll', 'a US gallon is 231 in³', '24', '3/4 gal', 'in3', 18 * 231, 1e-6],
    ] as const
  ).map(
    ([gives, fact, bagsToMix, waterEach, unit, expected, tolerance]): Check => ({
      calculation: 'mix-water',
      what: `${bagsToMix} bags of ${waterEach} each: ${fact}`,
      kind: 'handbook',
      source:
        'Scientific American Reference Book, Water, https://chestofbooks.com/crafts/scientific-american/Scientific-American-Reference-Book/Water.html',
      given: { bagsToMix, waterEach },
      system: waterEach.endsWith('L') ? 'metric' : 'imperial',
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  // The measure dipped for one bag: ounces of which 128 fill a gallon, or decilitres of which ten fill a litre.
  ...(
    [
      ['waterAll', 23, '3/4 gal', '7/8 gal', 96, 128, 'gal'],
      ['waterAllMost', 23, '3/4 gal', '7/8 gal', 112, 128, 'gal'],
      ['waterAll', 17, '2.7 L', '3.3 L', 27, 10, 'L'],
      ['waterAllMost', 17, '2.7 L', '3.3 L', 33, 10, 'L'],
    ] as const
  ).map(
    ([gives, bags, waterEach, waterEachMost, dips, full, unit]): Check => ({
      calculation: 'mix-water',
      what: `${gives} for ${bags} bags of ${waterEach} to ${waterEachMost} each`,
      kind: 'second derivation',
      source:
        'second derivation: bag after bag dipped by the small measure, a pail emptied whenever it is full, pails and what is left in the last counted',
      given: { bagsToMix: String(bags), waterEach, waterEachMost },
      system: unit === 'L' ? 'metric' : 'imperial',
      gives,
      unit,
      expected: () => {
        let [pails, inPail] = [0, 0]
        for (let bag = 0; bag < bags; bag++)
          for (let dip = 0; dip < dips; dip++)
            if (++inPail === full) {
              pails++
              inPail = 0
            }
        return pails + inPail / full
      },
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'concrete-wait',
    what: '28 days at 15 °C with a datum of −11 °C are 728 °C·days, and so are the days we give at 2 °C',
    kind: 'published',
    source:
      'Examination question on quality control of concrete, https://civinnovate.com/2026/06/22/quality-control-of-concrete-explanation-9/: 28 × (15 + 11) = 728',
    given: { gateWait: '28 days', bagTemperature: '15 C', cureTemperature: '2 C', datumTemperature: '-11 C' },
    system: 'metric',
    gives: 'gateUp',
    unit: '°C·day',
    got: ({ shown }) => Number((shown.gateUp ?? '').replace(/[^0-9.]/g, '')) * (2 + 11),
    expected: 728,
    tolerance: 0,
  },
  {
    calculation: 'concrete-wait',
    what: '4 days at 20 °C, in days of 10 °C that swing by 8 °C',
    kind: 'second derivation',
    source:
      'second derivation: hour by hour, the temperature of that hour above the datum added up, by day and by night, until the sum is the bag’s',
    given: { gateWait: '4 days', bagTemperature: '20 C', cureTemperature: '10 C', datumTemperature: '0 C' },
    system: 'metric',
    gives: 'gateUp',
    unit: 'day',
    expected: () => {
      let [sum, hours] = [0, 0]
      while (sum < 4 * 24 * 20 - 1e-6) sum += 10 + 8 * Math.sin(((hours++ + 0.5) / 24) * 2 * Math.PI)
      return hours / 24
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'concrete-wait',
    what: '4 hours at 73 °F, at 50 °F',
    kind: 'second derivation',
    source:
      'second derivation: minute by minute, the temperature above the datum added up until the sum is the bag’s; rounded up to the hour',
    given: { braceWait: '4 h', bagTemperature: '73 F', cureTemperature: '50 F' },
    gives: 'braceOff',
    unit: 'h',
    expected: () => {
      let [sum, minutes] = [0, 0]
      while (sum < 4 * 60 * (73 - 32)) {
        sum += 50 - 32
        minutes++
      }
      return Math.ceil(minutes / 60)
    },
    tolerance: 0,
  },
]
