// This file is about the evidence for posts, their depth and the stone under them.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, holes and concrete'

const printedThird =
  'A page on the depth of posts for a 3 ft fence, https://engineerfix.com/how-deep-should-a-3-foot-fence-post-be/: 36 in above ground, a post of 54 in, 18 in of it buried'

/** Where the ground meets a post, found by halving: what shows is twice what is below. */
function belowGround(post: number): number {
  let [low, high] = [0, post]
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2
    if (post - middle > 2 * middle) low = middle
    else high = middle
  }
  return low
}

/** A post stood by its levels, ground at nought: whether the mark a third of the way up from its foot is in the ground, and the foot below the frost. */
function deepEnough(foot: number, top: number, frost: number): boolean {
  const mark = foot + (top - foot) / 3
  return mark <= 1e-9 && foot <= -frost + 1e-9
}

/** The shallowest hole, dug deeper by whole steps, in which a post over these layers is deep enough. */
function shallowest(under: readonly number[], above: number, frost: number, step: number): number {
  for (let steps = 1; ; steps++) {
    let foot = -steps * step
    for (const layer of under) foot += layer
    if (foot < 0 && deepEnough(foot, above, frost)) return steps * step
  }
}

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
  ...(
    [
      ['thirdOfWhole', 18],
      ['aboveByRule', 36],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'post-split',
      what: `${gives} of a 54 in post`,
      kind: 'published',
      source: printedThird,
      given: { postLength: '54 in', stoneDepth: '6 in' },
      gives,
      unit: 'in',
      expected,
      tolerance: 0,
    }),
  ),
  ...(
    [
      [97.25, 5.5, 'in'],
      [118.0625, 4, 'in'],
      [2535, 150, 'mm'],
    ] as const
  ).flatMap(([post, stone, unit]): Check[] =>
    (
      [
        ['thirdOfWhole', () => belowGround(post)],
        ['aboveByRule', () => 2 * belowGround(post)],
        ['holeDepth', () => post - 2 * belowGround(post) + stone],
      ] as const
    ).map(
      ([gives, expected]): Check => ({
        calculation: 'post-split',
        what: `${gives} of a post of ${post} ${unit} over ${stone} ${unit} of stone`,
        kind: 'second derivation',
        source:
          'second derivation: the ground line slid along the post by halving until twice as much shows as is below it',
        given: { postLength: `${post} ${unit}`, stoneDepth: `${stone} ${unit}` },
        system: unit === 'mm' ? 'metric' : 'imperial',
        gives,
        unit,
        expected,
        tolerance: 1e-9,
      }),
    ),
  ),
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
  ...(
    [
      ['postLength', 54],
      ['depthByRule', 18],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'post-depth-check',
      what: `${gives} for a 36 in fence in a hole of 22 in with 4 in of stone`,
      kind: 'published',
      source: printedThird,
      given: { holeDepth: '22 in', stoneDepth: '4 in', postAbove: '36 in' },
      gives,
      unit: 'in',
      expected,
      tolerance: 0,
    }),
  ),
  // Hole, stone, concrete under the foot, fence, frost; nought where there is none.
  ...(
    [
      [36, 6, 0, 60, 0, 'in'],
      [35.9375, 6, 0, 60, 0, 'in'],
      [41.5, 4, 3.5, 67.875, 0, 'in'],
      [41.5, 4, 3.5, 68.125, 0, 'in'],
      [42, 4, 4, 60, 36, 'in'],
      [44, 4, 4, 60, 36, 'in'],
      [40, 6, 0, 70, 33, 'in'],
      [900, 105, 0, 1590, 0, 'mm'],
      [900, 106, 0, 1590, 0, 'mm'],
      [1000, 100, 75, 1500, 826, 'mm'],
      [1000, 100, 75, 1500, 825, 'mm'],
    ] as const
  ).flatMap(([hole, stone, concrete, above, frost, unit]): Check[] => {
    const shared = {
      calculation: 'post-depth-check',
      kind: 'second derivation',
      given: {
        holeDepth: `${hole} ${unit}`,
        stoneDepth: `${stone} ${unit}`,
        postAbove: `${above} ${unit}`,
        ...(concrete ? { concreteUnder: `${concrete} ${unit}` } : {}),
        ...(frost ? { frostDepth: `${frost} ${unit}` } : {}),
      },
      system: unit === 'mm' ? 'metric' : 'imperial',
    } as const
    const what = `a hole of ${hole} ${unit} with ${stone} of stone${concrete ? ` and ${concrete} of concrete under the foot` : ''}, ${above} above ground${frost ? `, frost ${frost}` : ''}`
    const step = unit === 'mm' ? 1 : 1 / 16
    return [
      {
        ...shared,
        what: `deep enough: ${what}`,
        source:
          'second derivation: the shallowest hole that does, dug deeper a step at a time until the mark a third up the post is in the ground and the foot below the frost',
        gives: 'deepEnoughByRule',
        unit: 'verdict',
        expected: () => (hole >= shallowest([stone, concrete], above, frost, step) - 1e-9 ? 1 : 0),
        tolerance: 0,
      },
      {
        ...shared,
        what: `post in the ground: ${what}`,
        source: 'second derivation: the hole filled from the bottom a step at a time, and what is left counted',
        gives: 'embedment',
        unit,
        expected: () => {
          let [level, filled, left] = [-hole, 0, 0]
          for (; level < -1e-9; level += step) {
            if (filled < stone + concrete - 1e-9) filled += step
            else left += step
          }
          return left
        },
        tolerance: 1e-6,
      },
    ]
  }),
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
  {
    calculation: 'post-as-bought',
    what: 'an 8 ft post for boards of 6 ft, off the ground and with post over them by 4 in, the most he names: “barely 16 inches into the ground”',
    kind: 'published',
    source:
      'A newspaper’s handyman column, 24 May 2022, https://www.standard-freeholder.com/opinion/columnists/handyman-hints-where-to-put-your-post-holes',
    given: { postLength: '8 ft', postAbove: '80 in' },
    gives: 'embedment',
    unit: 'in',
    expected: 16,
    tolerance: 0,
  },
  {
    calculation: 'post-as-bought',
    what: 'a 54 in post for a 36 in fence has what the rule asks',
    kind: 'published',
    source: printedThird,
    given: { postLength: '54 in', postAbove: '36 in' },
    gives: 'deepEnoughByRule',
    unit: 'verdict',
    expected: 1,
    tolerance: 0,
  },
  ...(
    [
      [84, 56, 0, 'in'],
      [84, 56.0625, 0, 'in'],
      [96, 62.5, 33.5, 'in'],
      [96, 62.5, 33.5625, 'in'],
      [120, 80.25, 30, 'in'],
      [2700, 1800, 0, 'mm'],
      [2700, 1801, 0, 'mm'],
      [2400, 1215, 1185, 'mm'],
      [2400, 1215, 1186, 'mm'],
    ] as const
  ).flatMap(([post, above, frost, unit]): Check[] => {
    const step = unit === 'mm' ? 1 : 1 / 16
    /** The foot of the post, let down from the ground a step at a time until no more than the fence shows. */
    const foot = (): number => {
      let steps = 0
      while (post - steps * step > above + 1e-9) steps++
      return -steps * step
    }
    const shared = {
      calculation: 'post-as-bought',
      kind: 'second derivation',
      given: {
        postLength: `${post} ${unit}`,
        postAbove: `${above} ${unit}`,
        ...(frost ? { frostDepth: `${frost} ${unit}` } : {}),
      },
      system: unit === 'mm' ? 'metric' : 'imperial',
    } as const
    const what = `a post of ${post} ${unit}, ${above} above ground${frost ? `, frost ${frost}` : ''}`
    return [
      {
        ...shared,
        what: `left for the ground: ${what}`,
        source: 'second derivation: the post let down a step at a time until no more than the fence shows',
        gives: 'embedment',
        unit,
        expected: () => 0 - foot(),
        tolerance: 1e-9,
      },
      {
        ...shared,
        what: `deep enough: ${what}`,
        source:
          'second derivation: the post let down so far, the mark a third of the way up from its foot looked at, and the foot against the frost',
        gives: 'deepEnoughByRule',
        unit: 'verdict',
        expected: () => (deepEnough(foot(), foot() + post, frost) ? 1 : 0),
        tolerance: 0,
      },
    ]
  }),
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
