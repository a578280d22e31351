// This file is about the evidence for the calculations in border/.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, mow strip, edging and stone'
const modular =
  'Brick and mortar consumption, https://www.engineeringtoolbox.com/amp/brick-mortar-consumption-d_1549.html'

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
]
