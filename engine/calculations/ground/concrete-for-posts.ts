// Concrete around posts, for one kind of post or several together.
//
//   ground ────┬─────┬──────    top of the concrete (some stop it below the ground)
//              │▒┃ ┃▒│          concrete: the hole, round or square, less the post
//              │▒┃ ┃▒│  ◄── the post takes up room down to its foot
//              │▒▒▒▒▒│          concrete under a post that is hung in it; none where it stands on the stone
//              │:::::│          stone
//              └─────┘
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { subtract } from '../../quantities/amount.ts'
import { refuseUnfitPost, sectionLines, workSection } from '../../holes.ts'
import { equal, less, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  bags,
  bagsByHole,
  bagsIfWider,
  bagsLoad,
  bagsPerHole,
  bagWeight,
  bagYield,
  concrete,
  concreteIfWider,
  concretePerHole,
  oversize,
  spare,
} from '../../words/concrete.ts'
import {
  concreteBelowGrade,
  concreteUnder,
  embedment,
  holeDepth,
  holeDiameter,
  holeShape,
  posts,
  postWidth,
  stoneDepth,
} from '../../words/posts.ts'

const inBags = ['bags', 'bagsPerHole', 'bagsByHole', 'bagsIfWider', 'bagsLoad']

export const concreteForPosts = calculation({
  name: 'concrete-for-posts',
  title: 'Concrete for posts in their holes',
  answers:
    'How much concrete the holes take, how many bags bought together or hole by hole, what they weigh, and what oversize holes cost.',
  needs: {
    posts,
    holeDiameter,
    holeShape,
    holeDepth,
    stoneDepth,
    concreteUnder,
    postWidth,
    concreteBelowGrade,
    spare,
    oversize,
    bagYield,
    bagWeight,
  },
  may: ['bagWeight'],
  onlyFor: {
    bagYield: inBags,
    posts: ['concrete', 'bags', 'bagsByHole', 'bagsIfWider', 'bagsLoad', 'concreteIfWider'],
  },
  usually: {
    stoneDepth: {
      value: '0 in',
      metric: '0 mm',
      because: 'you did not mention any stone in the bottom; without it the holes take the most concrete',
      from: 'Decided here, so that you are not left short.',
    },
    concreteUnder: {
      value: '0 in',
      metric: '0 mm',
      because: 'you did not say that the post hangs in the concrete, so it stands on the stone or on the bottom',
      from: 'Decided here.',
    },
  },
  gives: {
    concretePerHole,
    concrete,
    bags,
    bagsPerHole,
    bagsByHole,
    bagsLoad,
    concreteIfWider,
    bagsIfWider,
    embedment,
  },
  headlines: ['bags', 'bagsByHole', 'concrete'],
  joins: true,
  locals: { holeSection: 'area' },
  lines: {
    ...sectionLines,
    embedment: [
      'holeDepth - stoneDepth - concreteUnder',
      'what lies under the post does not count: it is in the ground only from its foot up',
    ],
    concreteHeight: ['embedment - concreteBelowGrade', 'from the foot of the post up to where you stop the concrete'],
    concretePerHole: [
      '(holeSection - postWidth ^ 2) * concreteHeight + holeSection * concreteUnder',
      'the hole less the square post, and under its foot the whole hole',
    ],
    concrete: ['sum(posts * concretePerHole) * (1 + spare)', 'all the holes together'],
    bags: ['ceil(concrete / bagYield)', 'bought together, so rounded up once for the whole job'],
    bagsPerHole: [
      'ceil(concretePerHole * (1 + spare) / bagYield)',
      'if a bag opened at one hole is not carried to the next',
    ],
    bagsByHole: ['sum(posts * bagsPerHole)', 'rounded up at every hole'],
    bagsLoad: ['bags * bagWeight', 'what has to be carried'],
    widerSection: [
      'holeSection * (holeDiameter + oversize) ^ 2 / holeDiameter ^ 2',
      'the same shape come out wider: its width counts twice',
    ],
    widerPerHole: [
      '(widerSection - postWidth ^ 2) * concreteHeight + widerSection * concreteUnder',
      'the same hole, come out wider',
    ],
    concreteIfWider: ['sum(posts * widerPerHole) * (1 + spare)', 'all the holes, come out wider'],
    bagsIfWider: ['ceil(concreteIfWider / bagYield)', 'bought together, for wider holes'],
  },
  work({ holeDepth, holeShape }, { line, put, rows, has, eachPlace, refuse, remark }) {
    eachPlace(['postWidth', 'holeDiameter'], (width, diameter) => refuseUnfitPost(width, diameter, holeShape, refuse))
    eachPlace(['holeDepth', 'stoneDepth', 'concreteUnder', 'concreteBelowGrade'], (depth, stone, under, top) => {
      if (less(depth, stone) || equal(depth, stone))
        refuse(
          'stoneDepth',
          `${show(stone)} of stone fills a ${show(depth)} hole, so no post is left in the ground. Check both measurements.`,
        )
      const overStone: Quantity = { ...depth, amount: subtract(depth.amount, stone.amount) }
      if (less(overStone, under) || equal(overStone, under))
        refuse(
          'concreteUnder',
          `${show(under)} of concrete under the post fills the ${show(overStone)} of hole over the stone, so no post is left in the ground. Check both measurements.`,
        )
      const left: Quantity = { ...depth, amount: subtract(overStone.amount, under.amount) }
      if (less(left, top) || equal(left, top))
        refuse(
          'concreteBelowGrade',
          `Over the foot of the post there is ${show(left)} of hole, and the concrete stops ${show(top)} below the ground, so there is none round the post. Check both measurements.`,
        )
    })
    workSection(holeShape, { line, rows, put, remark })
    const planted = line('embedment')
    line('concreteHeight')
    line('concretePerHole')
    const some = (name: string): boolean => rows(name).some((it) => less(zero('length', 'in'), it))
    const lost = [
      ...(some('stoneDepth') ? ['stone'] : []),
      ...(some('concreteUnder') ? ['concrete under the post'] : []),
    ]
    if (lost.length > 0)
      remark(
        `The ${lost.join(' and the ')} does not count as depth${rows('embedment').length > 1 ? '.' : `: each post is ${show(planted)} in the ground, not ${show(holeDepth)}.`}`,
      )
    if (some('concreteUnder'))
      remark(
        'Concrete under a wooden foot holds water against the end of the grain, where rot begins; a post on stone drains. Hold the post up and plumb until the concrete has set.',
      )
    if (has('bagYield')) line('bagsPerHole')
    if (!has('posts')) return
    line('concrete')
    if (has('bagYield')) {
      line('bags')
      line('bagsByHole')
      if (has('bagWeight')) line('bagsLoad')
    }
    line('widerSection')
    line('widerPerHole')
    line('concreteIfWider')
    if (has('bagYield')) line('bagsIfWider')
  },
  sources: [
    {
      fact: 'concrete in a hole = (section − post²) × height round the post + section × depth under it; the section is π/4 × width² for a round hole, width² for a square one',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'stone under a post drains, concrete under it holds water', from: 'common practice, no source' },
    {
      fact: 'the post’s own size, not its name, is taken out',
      from: 'PS 20, American Softwood Lumber Standard: a 4x4 is dressed to 3 1/2 in.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'wet-cement', 'dust', 'lifting', 'open-hole', 'overhead-lines'],
  drawing: holeDrawing,
  examples: [
    {
      // (78.5398 − 12.25) × 24 = 1590.96 in³ = 0.9207 ft³; × 11 = 10.128; / 0.45 = 22.5 → 23; ⌈2.046⌉ × 11 = 33; 11 in: 12.648/0.45 = 28.1 → 29
      ask: 'How many 60 lb bags (0.45 ft3 each) for 11 corner and gate posts, 10 in holes 30 in deep, on 6 in of gravel?',
      given: {
        posts: '11',
        holeDiameter: '10 in',
        holeDepth: '30 in',
        stoneDepth: '6 in',
        postWidth: '3 1/2 in',
        bagYield: '0.45 ft3',
        bagWeight: '60 lb',
      },
      expect: {
        concrete: '10.13 ft³',
        bags: '23 bags',
        bagsPerHole: '3 bags',
        bagsByHole: '33 bags',
        bagsIfWider: '29 bags',
        bagsLoad: '1,380 lb',
        embedment: '24 in',
      },
    },
    {
      // (π/4 × 300² − 90²) × 500 = 31.29 L; 4 × 31.29 = 125.2; / 9.36 → 14; ⌈3.34⌉ = 4 each → 16
      ask: 'Four posts 90 mm square in 300 mm holes 600 mm deep with 100 mm of gravel: how many 20 kg bags?',
      given: {
        posts: '4',
        holeDiameter: '300 mm',
        holeDepth: '600 mm',
        stoneDepth: '100 mm',
        postWidth: '90 mm',
        bagYield: '9.36 L',
        bagWeight: '20 kg',
      },
      expect: {
        concretePerHole: '31.29 L',
        concrete: '125.2 L',
        bags: '14 bags',
        bagsByHole: '16 bags',
        bagsLoad: '280 kg',
      },
    },
    {
      // square: 144 − 12.25 = 131.75 in² × (30 − 6) = 3162 in³ = 1.8299 ft³; × 6 = 10.979; / 0.6 = 18.3 → 19; ⌈3.05⌉ × 6 = 24
      ask: 'How many 80 lb bags for 6 posts in holes 12 in square and 30 in deep with 6 in of gravel?',
      given: {
        posts: '6',
        holeDiameter: '12 in',
        holeShape: 'square',
        holeDepth: '30 in',
        stoneDepth: '6 in',
        postWidth: '3 1/2 in',
        bagYield: '0.6 ft3',
        bagWeight: '80 lb',
      },
      expect: {
        concretePerHole: '1.83 ft³',
        concrete: '10.98 ft³',
        bags: '19 bags',
        bagsByHole: '24 bags',
        bagsLoad: '1,520 lb',
      },
    },
    {
      // hung: π/4 × 300² = 70,686 mm²; (70,686 − 8100) × 500 + 70,686 × 100 = 31.293 + 7.069 = 38.36 L; × 4 = 153.4; / 9.36 = 16.4 → 17
      ask: 'Four posts 90 mm square in 300 mm holes 600 mm deep, hung with 100 mm of concrete under the foot, no gravel: how much concrete?',
      given: {
        posts: '4',
        holeDiameter: '300 mm',
        holeDepth: '600 mm',
        stoneDepth: '0 mm',
        concreteUnder: '100 mm',
        postWidth: '90 mm',
        bagYield: '9.36 L',
      },
      expect: { concretePerHole: '38.36 L', concrete: '153.4 L', embedment: '500 mm' },
    },
  ],
})
