// This file is about the evidence for the calculations in border/.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, mow strip, edging and stone'
const modular =
  'Brick and mortar consumption, https://www.engineeringtoolbox.com/amp/brick-mortar-consumption-d_1549.html'

/** A strip cut into cubes of one size that fit it every way: how many there are, counted one by one. */
function cubesIn(run: number, width: number, depth: number, cube: number): number {
  let cubes = 0
  for (let x = cube / 2; x < run; x += cube)
    for (let y = cube / 2; y < width; y += cube) for (let z = cube / 2; z < depth; z += cube) cubes++
  return cubes
}

export const borderChecks: readonly Check[] = [
  {
    calculation: 'brick-edge',
    what: 'modular brick, 7 5/8 by 2 1/4 in with 3/8 in joints: bricks in a square foot of wall',
    kind: 'published',
    source: modular,
    reference: 'mow-02-pub',
    given: { edgeRun: '1000 ft', brickAlong: '7 5/8 in', brickJoint: '3/8 in', breakage: '0 %' },
    gives: 'bricks',
    unit: 'brick/ft2',
    // Bricks in a foot of one row, times the rows in a foot of height (2 1/4 + 3/8 in each). The page prints 6.9.
    got: ({ shown }) => (Number((shown.bricks ?? '').replace(/[^0-9]/g, '')) / 1000) * (12 / 2.625),
    expected: 6.9,
    tolerance: 0.06,
  },
  {
    calculation: 'brick-edge',
    what: 'nominal modules of 8 by 2 2/3 in: 6.75 in a square foot',
    kind: 'published',
    source: 'Bricks of the nominal module, https://constructionmentor.net/brick/: 675 in a hundred square feet of wall',
    reference: 'mow-01-pub',
    given: { edgeRun: '1000 ft', brickAlong: '8 in', brickJoint: '0 in', breakage: '0 %' },
    gives: 'bricks',
    unit: 'brick/ft2',
    got: ({ shown }) => (Number((shown.bricks ?? '').replace(/[^0-9]/g, '')) / 1000) * (12 / (8 / 3)),
    expected: 6.75,
    tolerance: 1e-9,
  },
  {
    calculation: 'brick-edge',
    what: 'UK bricks of 215 by 65 mm with 10 mm joints: bricks in a square metre',
    kind: 'reference',
    source: ours,
    reference: 'mow-08-si',
    given: { edgeRun: '900 m', brickAlong: '215 mm', brickJoint: '10 mm', breakage: '0 %' },
    gives: 'bricks',
    unit: 'brick/m2',
    got: ({ shown }) => (Number((shown.bricks ?? '').replace(/[^0-9]/g, '')) / 900) * (1000 / 75),
    expected: 59.26,
    tolerance: 0.02,
  },
  {
    calculation: 'cast-edge',
    what: 'bags for a strip 50 ft by 8 by 4 in',
    kind: 'reference',
    source: ours,
    reference: 'mow-06',
    given: { edgeRun: '50 ft', edgeWidth: '8 in', edgeDepth: '4 in', spare: '5 %', bagYield: '0.6 ft3' },
    gives: 'stripBags',
    unit: 'bag',
    expected: 20,
    tolerance: 0,
  },
  {
    calculation: 'cast-edge',
    what: 'the same strip',
    kind: 'library',
    source: mathjsWorks,
    given: { edgeRun: '50 ft', edgeWidth: '8 in', edgeDepth: '4 in', spare: '0 %' },
    gives: 'stripConcrete',
    unit: 'ft3',
    expected: () => byMathjs('50 ft * 8 inch * 4 inch', 'ft^3'),
    tolerance: 1e-9,
  },
  ...(
    [
      ['0 %', 6.173],
      ['5 %', 6.481],
    ] as const
  ).map(
    ([spare, expected]): Check => ({
      calculation: 'cast-edge',
      what: `a printed example of a curb, 100 ft by 5 ft by 1/3 ft, with ${spare} more`,
      kind: 'published',
      source:
        'Reckoning concrete for curbs, http://www.gardenguides.com/136027-calculate-concrete-yards-curbs-gutters.html: 6.173 yd³, and 6.481 with 5 % extra',
      given: { edgeRun: '100 ft', edgeWidth: '5 ft', edgeDepth: '4 in', spare },
      gives: 'stripConcrete',
      unit: 'yd3',
      expected,
      tolerance: 0.0005,
    }),
  ),
  // 40 1/2 ft × 16 in × 6 in is a cubic yard. The yields are those printed on the bags.
  ...(
    [
      ['80 lb', '0.6 ft3', 45, 'https://civilstep.com/all-about-80lb-bags-of-concrete-make-a-yard-2/'],
      ['50 lb', '0.375 ft3', 72, 'https://allcivilhelp.com/how-many-concrete-bags-are-in-a-cubic-yard/'],
      ['40 lb', '0.3 ft3', 90, 'https://allcivilhelp.com/how-many-concrete-bags-are-in-a-cubic-yard/'],
    ] as const
  ).map(
    ([bag, bagYield, expected, address]): Check => ({
      calculation: 'cast-edge',
      what: `bags of ${bag} for a strip of just a cubic yard`,
      kind: 'published',
      source: `Bags of concrete mix in a cubic yard, ${address}: ${expected} of ${bag}`,
      given: { edgeRun: '40 ft 6 in', edgeWidth: '16 in', edgeDepth: '6 in', spare: '0 %', bagYield },
      gives: 'stripBags',
      unit: 'bag',
      expected,
      tolerance: 0,
    }),
  ),
  ...(
    [
      [444, 7.5, 3.5, 0.5, 'in', 'in3', 1],
      [12_300, 225, 105, 15, 'mm', 'L', 1e6],
    ] as const
  ).map(
    ([run, width, depth, cube, unit, volume, each]): Check => ({
      calculation: 'cast-edge',
      what: `a strip of ${run} by ${width} by ${depth} ${unit}`,
      kind: 'second derivation',
      source: `second derivation: the form filled with cubes of ${cube} ${unit}, counted one by one`,
      given: {
        edgeRun: `${run} ${unit}`,
        edgeWidth: `${width} ${unit}`,
        edgeDepth: `${depth} ${unit}`,
        spare: '0 %',
      },
      system: unit === 'mm' ? 'metric' : 'imperial',
      gives: 'stripConcrete',
      unit: volume,
      expected: () => (cubesIn(run, width, depth, cube) * cube ** 3) / each,
      tolerance: 1e-9,
    }),
  ),
  // Run, width, depth, yield of a bag: inches and cubic inches, or millimetres and cubic millimetres. A tenth more is a tenth more run.
  ...(
    [
      ['444 in', '9 in', '5 in', '0.45 ft3', [444, 9, 5, 777.6]],
      ['715 in', '6 1/4 in', '3 1/2 in', '0.6 ft3', [715, 6.25, 3.5, 1036.8]],
      ['14.5 m', '220 mm', '110 mm', '9.4 L', [14_500, 220, 110, 9.4e6]],
    ] as const
  ).map(
    ([edgeRun, edgeWidth, edgeDepth, bagYield, [run, width, depth, makes]]): Check => ({
      calculation: 'cast-edge',
      what: `bags of ${bagYield} for ${edgeRun} of strip ${edgeWidth} by ${edgeDepth}, a tenth more`,
      kind: 'second derivation',
      source:
        'second derivation: bag after bag emptied into the form, each moving the end of the strip on, until it is a tenth past the run',
      given: { edgeRun, edgeWidth, edgeDepth, spare: '10 %', bagYield },
      system: edgeRun.endsWith('m') ? 'metric' : 'imperial',
      gives: 'stripBags',
      unit: 'bag',
      expected: () => {
        let [end, bags] = [0, 0]
        while (end < run + run / 10) {
          end += makes / width / depth
          bags++
        }
        return bags
      },
      tolerance: 0,
    }),
  ),
  {
    calculation: 'edge-fabric',
    what: 'rolls for a run of 50 ft in rolls of 25 ft with one lap of 6 in each',
    kind: 'reference',
    source: ours,
    reference: 'mow-07',
    given: { edgeRun: '50 ft', rollLength: '25 ft', fabricLap: '6 in' },
    gives: 'fabricRolls',
    unit: 'roll',
    expected: 3,
    tolerance: 0,
  },
  {
    calculation: 'edge-fabric',
    what: 'rolls laid out one by one',
    kind: 'second derivation',
    source: 'second derivation: a roll laid a lap back from the end of the last, until the run is covered',
    given: { edgeRun: '180 ft', rollLength: '50 ft', fabricLap: '6 in' },
    gives: 'fabricRolls',
    unit: 'roll',
    expected: () => {
      let [end, rolls] = [50, 1]
      while (end < 180) {
        end += 49.5
        rolls++
      }
      return rolls
    },
    tolerance: 0,
  },
  {
    calculation: 'stone-strip',
    what: 'a ton at 2 in and 100 lb/ft³ covers 120 ft²',
    kind: 'reference',
    source: ours,
    reference: 'mow-04',
    given: { edgeDepth: '2 in', gravelDensity: '100 lb/ft3' },
    gives: 'tonCovers',
    unit: 'ft2',
    expected: 120,
    tolerance: 1e-9,
  },
  ...(
    [
      ['88.9 lb/ft3', 135],
      ['97.6 lb/ft3', 123],
    ] as const
  ).map(
    ([gravelDensity, expected]): Check => ({
      calculation: 'stone-strip',
      what: `printed coverage of ${expected} ft² a ton at 2 in, back from its density`,
      kind: 'reference',
      source: ours,
      reference: 'mow-05',
      given: { edgeDepth: '2 in', gravelDensity },
      gives: 'tonCovers',
      unit: 'ft2',
      expected,
      tolerance: 0.1,
    }),
  ),
  {
    calculation: 'stone-strip',
    what: 'a strip of stone',
    kind: 'library',
    source: mathjsWorks,
    given: { edgeRun: '60 ft', edgeWidth: '18 in', edgeDepth: '3 in', gravelDensity: '100 lb/ft3' },
    gives: 'stripStoneWeight',
    unit: 'lb',
    expected: () => byMathjs('60 ft * 18 inch * 3 inch * 100 lb / ft^3', 'lb'),
    tolerance: 1e-6,
  },
  {
    calculation: 'stone-strip',
    what: '162 ft² at 2 in, as a strip of 108 ft by 18 in, take one cubic yard',
    kind: 'published',
    source: 'https://e-wood.be/13596/: a cubic yard covers 162 ft² at 2 in',
    given: { edgeRun: '108 ft', edgeWidth: '18 in', edgeDepth: '2 in' },
    gives: 'stripStone',
    unit: 'yd3',
    expected: 1,
    tolerance: 1e-9,
  },
  {
    calculation: 'stone-strip',
    what: 'a cubic yard of crushed stone at 1,602 kg/m³, as a strip of 108 ft by 18 in by 2 in, weighs 2,700 lb',
    kind: 'published',
    source:
      'https://www.lustaufreben.de/mobile/9532/how-many-m3-in-a-ton-of-6-crusher-run-crushed-rock.html: 1602 kg/m³, 2700 lb/yd³, 1.35 tons',
    given: { edgeRun: '108 ft', edgeWidth: '18 in', edgeDepth: '2 in', gravelDensity: '1602 kg/m3' },
    gives: 'stripStoneWeight',
    unit: 'lb',
    expected: 2700,
    // 1602 is rounded from 1601.85.
    tolerance: 0.5,
  },
  ...(
    [
      [444, 15.5, 2.5, 0.5, 'in', 'in3', 92 / 1728, '92 lb/ft3', 'lb'],
      [9600, 375, 75, 15, 'mm', 'L', 1530 / 1e9, '1530 kg/m3', 'kg'],
    ] as const
  ).flatMap(([run, width, depth, cube, unit, volume, heavy, gravelDensity, mass]): Check[] => {
    const shared = {
      calculation: 'stone-strip',
      kind: 'second derivation',
      given: {
        edgeRun: `${run} ${unit}`,
        edgeWidth: `${width} ${unit}`,
        edgeDepth: `${depth} ${unit}`,
        gravelDensity,
      },
      system: unit === 'mm' ? 'metric' : 'imperial',
    } as const
    const what = `a strip of ${run} by ${width} by ${depth} ${unit}`
    const count = () => cubesIn(run, width, depth, cube)
    return [
      {
        ...shared,
        what: `the stone of ${what}`,
        source: `second derivation: the strip filled with cubes of ${cube} ${unit}, counted one by one`,
        gives: 'stripStone',
        unit: volume,
        expected: () => (count() * cube ** 3) / (unit === 'mm' ? 1e6 : 1),
        tolerance: 1e-6,
      },
      {
        ...shared,
        what: `the weight of ${what}, at ${gravelDensity}`,
        source: `second derivation: the strip filled with cubes of ${cube} ${unit}, each of them weighed`,
        gives: 'stripStoneWeight',
        unit: mass,
        expected: () => count() * cube ** 3 * heavy,
        tolerance: 1e-6,
      },
    ]
  }),
  ...(
    [
      [2000, '1 ton', 92 / 1728, '92 lb/ft3', 2.5, 'in', 'in2'],
      [850, '850 kg', 1530 / 1e9, '1530 kg/m3', 45, 'mm', 'mm2'],
    ] as const
  ).map(
    ([load, tonSize, heavy, gravelDensity, depth, unit, area]): Check => ({
      calculation: 'stone-strip',
      what: `what ${tonSize} of stone at ${gravelDensity} covers, ${depth} ${unit} deep`,
      kind: 'second derivation',
      source:
        'second derivation: square after square laid to that depth and weighed off the load, until it is used up; right to one square',
      given: { edgeDepth: `${depth} ${unit}`, gravelDensity, tonSize },
      system: unit === 'mm' ? 'metric' : 'imperial',
      gives: 'tonCovers',
      unit: area,
      expected: () => {
        const side = unit === 'mm' ? 10 : 1
        let [left, squares] = [load as number, 0]
        while (left > 0) {
          left -= side * side * depth * heavy
          squares++
        }
        return squares * side * side
      },
      tolerance: unit === 'mm' ? 100 : 1,
    }),
  ),
  {
    calculation: 'strip-bed',
    what: 'barrows filled one after the other',
    kind: 'second derivation',
    source: 'second derivation: loose soil taken off the heap a barrow at a time',
    given: { edgeRun: '50 ft', edgeWidth: '9 in', spoilDepth: '6 in', soilSwell: '25 %', barrowSize: '3 ft3' },
    gives: 'barrows',
    unit: 'load',
    expected: () => {
      let [heap, loads] = [50 * 0.75 * 0.5 * 1.25, 0]
      while (heap > 0) {
        heap -= 3
        loads++
      }
      return loads
    },
    tolerance: 0,
  },
  {
    calculation: 'strip-bed',
    what: 'loose base for a strip',
    kind: 'library',
    source: mathjsWorks,
    given: { edgeRun: '50 ft', edgeWidth: '9 in', baseDepth: '4 in', settling: '15 %' },
    gives: 'baseToBuy',
    unit: 'ft3',
    expected: () => byMathjs('50 ft * 9 inch * 4 inch * 1.15', 'ft^3'),
    tolerance: 1e-9,
  },
  {
    calculation: 'strip-bed',
    what: 'weight of the sand for a strip',
    kind: 'library',
    source: mathjsWorks,
    given: { edgeRun: '12 m', edgeWidth: '250 mm', sandDepth: '30 mm', settling: '15 %', sandDensity: '1600 kg/m3' },
    system: 'metric',
    gives: 'sandWeight',
    unit: 'kg',
    expected: () => byMathjs('12 m * 250 mm * 30 mm * 1.15 * 1600 kg / m^3', 'kg'),
    tolerance: 1e-6,
  },
  {
    calculation: 'brick-edge',
    what: 'pavers of 8 by 4 in laid tight, end to end: pavers in a square foot',
    kind: 'published',
    source:
      'https://www.hunker.com/13401159/how-to-calculate-number-of-bricks-per-square-foot: 4.5 pavers of 4 by 8 in to a square foot',
    given: { edgeRun: '1000 ft', brickLies: 'end-to-end', brickLength: '8 in', brickJoint: '0 in', breakage: '0 %' },
    gives: 'bricks',
    unit: 'brick/ft2',
    // Pavers in a foot of one row, times the three rows of 4 in that make a foot.
    got: ({ shown }) => (Number((shown.bricks ?? '').replace(/[^0-9]/g, '')) / 1000) * (12 / 4),
    expected: 4.5,
    tolerance: 1e-9,
  },
  ...(
    [
      ['end-to-end', 7.625],
      ['across', 3.625],
      ['on-edge', 2.25],
      ['edge-to-end', 7.625],
      ['on-end', 3.625],
    ] as const
  ).map(
    ([brickLies, side]): Check => ({
      calculation: 'brick-edge',
      what: `a 37 ft edge of modular bricks, ${brickLies}`,
      kind: 'second derivation',
      source: 'second derivation: bricks set one after the other, each a joint from the last, until the end is reached',
      given: {
        edgeRun: '37 ft',
        brickLies,
        brickLength: '7 5/8 in',
        brickWidth: '3 5/8 in',
        brickHeight: '2 1/4 in',
        brickJoint: '3/8 in',
      },
      gives: 'bricks',
      unit: 'brick',
      expected: () => {
        let [end, laid] = [side, 1]
        while (end < 37 * 12) {
          end += 0.375 + side
          laid++
        }
        return laid
      },
      tolerance: 0,
    }),
  ),
  {
    calculation: 'brick-mortar',
    what: '11 m of bed, 225 mm wide, 20 mm deep',
    kind: 'library',
    source: mathjsWorks,
    given: { edgeRun: '11 m', edgeWidth: '225 mm', mortarDepth: '20 mm' },
    gives: 'mortarBed',
    unit: 'L',
    expected: () => byMathjs('11 m * 225 mm * 20 mm', 'L'),
    tolerance: 1e-6,
  },
]
