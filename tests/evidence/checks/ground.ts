// This file is about the evidence for posts, their depth and the stone under them.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, holes and concrete'

export const groundChecks: readonly Check[] = [
  {
    calculation: 'gravel-for-holes',
    what: 'stone in place in twelve square holes',
    kind: 'library',
    source: mathjsWorks,
    given: { posts: '12', holeDiameter: '12 in', holeShape: 'square', stoneDepth: '6 in' },
    gives: 'gravelInPlace',
    unit: 'ft3',
    expected: () => byMathjs('12 * 1 ft * 1 ft * 0.5 ft', 'cuft'),
    tolerance: 1e-9,
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
]
