// Concrete around posts that stand on stone, for one kind of post or several together.
//
//   ground ────┬─────┬──────    top of the concrete (some stop it below the ground)
//              │▒┃ ┃▒│          concrete: the hole, less the post
//              │▒┃ ┃▒│  ◄── post stands on the stone, so it takes up room all the way down
//              │:::::│          stone
//              └─────┘
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { subtract } from '../../quantities/amount.ts'
import { refuseUnfitPost } from '../../holes.ts'
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
  embedment,
  holeDepth,
  holeDiameter,
  posts,
  postWidth,
  stoneDepth,
} from '../../words/posts.ts'

const inBags = ['bags', 'bagsPerHole', 'bagsByHole', 'bagsIfWider', 'bagsLoad']

export const concreteForPosts = calculation({
  name: 'concrete-for-posts',
  title: 'Concrete for posts standing on stone',
  answers:
    'How much concrete the holes take, how many bags bought together or hole by hole, what they weigh, and what oversize holes cost.',
  needs: {
    posts,
    holeDiameter,
    holeDepth,
    stoneDepth,
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
  lines: {
    embedment: ['holeDepth - stoneDepth', 'the stone does not count: the post is in the ground only from its foot up'],
    concreteHeight: ['embedment - concreteBelowGrade', 'from the stone up to where you stop the concrete'],
    concretePerHole: [
      '(pi * holeDiameter ^ 2 / 4 - postWidth ^ 2) * concreteHeight',
      'the round hole, less the square post standing in it',
    ],
    concrete: ['sum(posts * concretePerHole) * (1 + spare)', 'all the holes together'],
    bags: ['ceil(concrete / bagYield)', 'bought together, so rounded up once for the whole job'],
    bagsPerHole: ['ceil(concretePerHole / bagYield)', 'if a bag opened at one hole is not carried to the next'],
    bagsByHole: ['sum(posts * bagsPerHole)', 'rounded up at every hole'],
    bagsLoad: ['bags * bagWeight', 'what has to be carried'],
    widerPerHole: [
      '(pi * (holeDiameter + oversize) ^ 2 / 4 - postWidth ^ 2) * concreteHeight',
      'the same hole, come out wider',
    ],
    concreteIfWider: ['sum(posts * widerPerHole) * (1 + spare)', 'all the holes, come out wider'],
    bagsIfWider: ['ceil(concreteIfWider / bagYield)', 'bought together, for wider holes'],
  },
  work({ holeDepth }, { line, rows, has, eachPlace, refuse, remark }) {
    eachPlace(['postWidth', 'holeDiameter'], (width, diameter) => refuseUnfitPost(width, diameter, refuse))
    eachPlace(['holeDepth', 'stoneDepth', 'concreteBelowGrade'], (depth, stone, top) => {
      if (less(depth, stone) || equal(depth, stone))
        refuse(
          'stoneDepth',
          `${show(stone)} of stone fills a ${show(depth)} hole, so no post is left in the ground. Check both measurements.`,
        )
      const left: Quantity = { ...depth, amount: subtract(depth.amount, stone.amount) }
      if (less(left, top) || equal(left, top))
        refuse(
          'concreteBelowGrade',
          `Over the stone there is ${show(left)} of hole, and the concrete stops ${show(top)} below the ground, so there is none. Check both measurements.`,
        )
    })
    const planted = line('embedment')
    line('concreteHeight')
    line('concretePerHole')
    if (rows('stoneDepth').some((stone) => less(zero('length', 'in'), stone)))
      remark(`The stone does not count as depth: each post is ${show(planted)} in the ground, not ${show(holeDepth)}.`)
    if (has('bagYield')) line('bagsPerHole')
    if (!has('posts')) return
    line('concrete')
    if (has('bagYield')) {
      line('bags')
      line('bagsByHole')
      if (has('bagWeight')) line('bagsLoad')
    }
    line('widerPerHole')
    line('concreteIfWider')
    if (has('bagYield')) line('bagsIfWider')
  },
  sources: [
    {
      fact: 'concrete in a hole = (π/4 × width² − post²) × height',
      from: 'Derived here from the sketch; needs no table.',
    },
    {
      fact: 'the post’s own size, not its name, is taken out',
      from: 'PS 20, American Softwood Lumber Standard: a 4x4 is dressed to 3 1/2 in.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'wet-cement', 'dust', 'lifting', 'open-hole'],
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
  ],
})
