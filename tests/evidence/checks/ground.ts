// This file is about the evidence for calculations on the ground: posts, holes, concrete, stone, spoil.
import type { Check } from '../check.ts'

const ours = 'Reference book, holes and concrete'
const printed =
  'Yields printed on bags of dry concrete mix: 40 lb 0.30, 50 lb 0.375, 60 lb 0.45, 80 lb 0.60, 90 lb 0.675 ft³'

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
    kind: 'second derivation',
    source: 'second derivation: cut into three equal parts, two of them above',
    given: { postLength: '8 ft', stoneDepth: '0 in' },
    gives: 'aboveByRule',
    unit: 'in',
    expected: () => 32 + 32,
    tolerance: 0,
  },
  {
    calculation: 'post-depth-check',
    what: 'a 30 in hole with 8 in of stone under a 48 in fence falls short',
    kind: 'second derivation',
    source: 'second derivation: the whole post is 22 + 48 in, and 22 is less than a third of 70',
    given: { holeDepth: '30 in', stoneDepth: '8 in', postAbove: '48 in' },
    gives: 'deepEnoughByRule',
    unit: 'verdict',
    expected: 0,
    tolerance: 0,
  },
  {
    calculation: 'post-as-bought',
    what: 'a 7 ft post with 4 ft above ground has 3 ft in it',
    kind: 'second derivation',
    source: 'second derivation: three times what is in the ground against the whole post',
    given: { postLength: '7 ft', postAbove: '4 ft' },
    gives: 'deepEnoughByRule',
    unit: 'verdict',
    expected: 1,
    tolerance: 0,
  },
]
