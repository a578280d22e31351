// How deep a post goes, and how long it must be: by the one-third rule, the frost, the building office and a push of wind, whichever is deepest.
//
//        ┃ ┃   postAbove
//   ─────┃ ┃─────  ground
//        ┃ ┃   embedment: half of what shows, which is a third of the whole
//        └─┘
//       :::::  stone, and concrete under a post that hangs in it: dug for, never counted
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  concreteUnder,
  depthByRule,
  embedment,
  frostDepth,
  holeDepth,
  officeDepth,
  postAbove,
  postLength,
  stoneDepth,
  thirdOfAbove,
} from '../../words/posts.ts'
import { codeDepth } from '../../words/soil-bearing.ts'

const windWay = 'code’s formula for the wind'
/** What else may ask for a depth, and how it is called where it governs. */
const others = [
  { word: 'frostDepth', way: 'frost depth', step: 'belowFrost' },
  { word: 'officeDepth', way: 'building office’s depth', step: 'asTheOfficeAsks' },
  { word: 'codeDepth', way: windWay, step: 'againstWind' },
] as const

export const postDepth = calculation({
  name: 'post-depth',
  title: 'Post depth and post length, by the one-third rule',
  answers:
    'How deep a post goes for its height above ground, how deep to dig with stone under it, and how long the post must be.',
  needs: { postAbove, stoneDepth, concreteUnder, frostDepth, officeDepth, codeDepth },
  may: ['concreteUnder', 'frostDepth', 'officeDepth', 'codeDepth'],
  usually: {
    stoneDepth: {
      value: '6 in',
      metric: '150 mm',
      because: '4 to 6 in of stone under a post is common',
      from: 'trade rule, no source',
    },
  },
  gives: { depthByRule, thirdOfAbove, embedment, holeDepth, postLength },
  headlines: ['embedment', 'holeDepth', 'postLength'],
  together: {
    embedment: ['embedment', 'holeDepth', 'postLength'],
    holeDepth: ['holeDepth', 'embedment'],
    postLength: ['postLength', 'embedment'],
  },
  locals: { soFar: 'length' },
  lines: {
    depthByRule: ['postAbove / 2', 'a third of the whole post in the ground is half of what shows'],
    thirdOfAbove: ['postAbove / 3', 'the other way people read the rule: a third of what shows, which is shallower'],
    embedment: ['depthByRule', 'the deeper reading of the rule'],
    belowFrost: ['max(soFar, frostDepth)', 'the foot of the post goes below frost, if that is deeper'],
    asTheOfficeAsks: ['max(soFar, officeDepth)', 'and as deep as the building office asks, if that is deeper'],
    againstWind: [
      'max(soFar, codeDepth)',
      'and as deep as the code’s formula asks against the wind, if that is deeper',
    ],
    holeDepth: ['embedment + stoneDepth', 'dig for the stone as well; it does not count as depth'],
    hungDepth: [
      'embedment + stoneDepth + concreteUnder',
      'dig for the stone and for the concrete under the foot as well; neither counts as depth',
    ],
    postLength: ['postAbove + embedment', 'above and below together'],
  },
  work(given, { line, has, put, tell, remark, table }) {
    const { stoneDepth } = given
    const rule = line('depthByRule')
    const other = line('thirdOfAbove')
    const ways = [
      { way: 'one-third rule', depth: rule },
      ...others.flatMap(({ word, way }) => (has(word) ? [{ way, depth: given[word] }] : [])),
    ]
    const governs = ways.reduce((a, b) => (less(a.depth, b.depth) ? b : a))
    if (ways.length > 1) {
      // In the unit of the rule, whichever of the ways is the deepest.
      let soFar = put('soFar', rule)
      for (const { word, step } of others) if (has(word)) soFar = put('soFar', line(step, rule.unit))
      tell('embedment', soFar)
      remark(
        `The ${governs.way} governs: ${show(governs.depth)}. ${ways
          .filter((it) => it !== governs)
          .map((it) => `The ${it.way} gives ${show(it.depth)}.`)
          .join(' ')}`,
      )
      table({
        title: 'Each way to the depth',
        columns: ['way', 'post in the ground', 'governs'].map((label) => ({ label, unit: '' })),
        rows: ways.map((it) => [it.way, show(it.depth), it === governs ? 'yes' : '']),
      })
    } else {
      line('embedment')
      remark(
        'This is the trade’s rule, not a code. Your building office may set a frost depth or a post depth; give it to me and I will use the deeper.',
      )
    }
    if (governs.way === windWay)
      remark('Wind that wants more than the rule is a matter for an engineer: the formula is a check, not a design.')
    if (has('concreteUnder')) tell('holeDepth', line('hungDepth'))
    else line('holeDepth')
    line('postLength')
    remark(
      `People read “a third” in two ways. A third of the whole post in the ground is half of what shows, ${show(rule)}; a third of what shows is only ${show(other)}. I took the first.`,
    )
    remark(`The ${show(stoneDepth)} of stone is dug for, and does not count as depth.`)
  },
  sources: [
    {
      fact: 'a third of the whole post in the ground, which is half of the height above it',
      from: 'trade rule, no source',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'structure', 'open-hole'],
  drawing: holeDrawing,
  examples: [
    {
      // 48/2 = 24; 48/3 = 16; 24 + 6 = 30; 48 + 24 = 72
      ask: 'How deep do I set posts for a 4 ft fence with 6 in of stone?',
      given: { postAbove: '4 ft', stoneDepth: '6 in' },
      expect: {
        depthByRule: '24 in',
        thirdOfAbove: '16 in',
        embedment: '24 in',
        holeDepth: '30 in',
        postLength: '6 ft',
      },
    },
    {
      // 1200/2 = 600 < 900 frost; 900 + 150 = 1050; 1200 + 900 = 2100
      ask: 'Fence 1200 mm high, frost depth 900 mm, 150 mm of gravel: how deep and how long a post?',
      given: { postAbove: '1200 mm', frostDepth: '900 mm', stoneDepth: '150 mm' },
      expect: { depthByRule: '600 mm', embedment: '900 mm', holeDepth: '1,050 mm', postLength: '2,100 mm' },
    },
  ],
})
