// Holes filled to the top, and no post taken off: as a concrete truck is ordered by many, a little too much.
//
//   ────┬─────┬────
//       │▒▒▒▒▒│      the whole hole over the stone, post and all
//       │:::::│      stone
//       └─────┘
import { calculation } from '../../calculation.ts'
import { sectionLines, workSection } from '../../holes.ts'
import { equal, less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bagYield, spare } from '../../words/concrete.ts'
import { orderStep } from '../../words/mixing.ts'
import { holeDepth, holeDiameter, holeShape, posts, stoneDepth } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const concreteFilled = word<'volume'>('concreteFilled', {
  kind: 'volume',
  label: 'concrete, no post taken off',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The holes over the stone, as if no post stood in them.',
  ask: 'How much concrete fills the holes, no post taken off?',
  called: { names: ['concrete without taking off the posts'] },
})

const bagsFilled = word<'count'>('bagsFilled', {
  kind: 'count',
  noun: 'bag',
  label: 'bags, no post taken off',
  whole: true,
  measure: 'Bought together, rounded up once.',
  ask: 'How many bags fill the holes, no post taken off?',
  called: { names: ['bags without taking off the posts'] },
})

const orderFilled = word<'volume'>('orderFilled', {
  kind: 'volume',
  label: 'ready-mix to order',
  units: { imperial: 'yd3', metric: 'm3' },
  measure: 'Rounded up to the steps that the plant sells.',
  ask: 'How much ready-mix is to be ordered?',
  called: { names: ['ready-mix to order for full holes'] },
})

export const holesFilled = calculation({
  name: 'holes-filled',
  title: 'Concrete to fill holes, no post taken off',
  answers: 'How much concrete, or how many bags, fill the holes to the top where the room of the posts is forgotten.',
  needs: { posts, holeDiameter, holeShape, holeDepth, stoneDepth, spare, bagYield, orderStep },
  onlyFor: { bagYield: ['bagsFilled'], orderStep: ['orderFilled'] },
  usually: {
    stoneDepth: {
      value: '0 in',
      metric: '0 mm',
      because: 'you did not mention any stone in the bottom; without it the holes take the most concrete',
      from: 'Decided here, so that you are not left short.',
    },
  },
  gives: { concreteFilled, bagsFilled, orderFilled },
  headlines: ['concreteFilled'],
  together: { orderFilled: ['orderFilled', 'concreteFilled'] },
  locals: { holeSection: 'area' },
  lines: {
    ...sectionLines,
    concreteFilled: [
      'sum(posts * (holeSection * (holeDepth - stoneDepth))) * (1 + spare)',
      'the holes over the stone, all of them',
    ],
    stepsFilled: ['ceil(concreteFilled / orderStep)', 'the plant sells whole steps'],
    orderFilled: ['stepsFilled * orderStep', 'the same from the truck'],
    bagsFilled: ['ceil(concreteFilled / bagYield)', 'bought together, so rounded up once for the whole job'],
  },
  work({ holeShape }, { line, rows, put, has, eachPlace, refuse, remark }) {
    eachPlace(['holeDepth', 'stoneDepth'], (depth, stone) => {
      if (less(depth, stone) || equal(depth, stone))
        refuse('stoneDepth', `${show(stone)} of stone fills a ${show(depth)} hole. Check both measurements.`)
    })
    workSection(holeShape, { line, rows, put, remark })
    line('concreteFilled')
    if (has('bagYield')) line('bagsFilled')
    if (has('orderStep')) {
      line('stepsFilled')
      line('orderFilled')
    }
    remark('No post is taken off, as you said, so some of it will be left over. Name the posts, and I take them off.')
  },
  sources: [
    {
      fact: 'a hole holds its section × its depth; the section is π/4 × width² for a round hole, width² for a square one',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'wet-cement', 'dust', 'lifting', 'open-hole'],
  examples: [
    // π/4 × 0.25² × 0.6 × 16 = 0.4712 m³; × 1.1 = 518.4 L
    {
      ask: 'Concrete for 16 holes 250 mm wide and 600 mm deep, forget the posts, with 10 % spare?',
      given: { posts: '16', holeDiameter: '250 mm', holeDepth: '600 mm', spare: '10 %' },
      expect: { concreteFilled: '518.4 L' },
    },
    // square: 1 × (2.5 − 0.5) × 9 = 18 ft³; / 0.6 = 30
    {
      ask: 'Not counting the posts, how many bags of 0.6 ft3 fill 9 holes 12 in square and 30 in deep over 6 in of gravel?',
      given: {
        posts: '9',
        holeDiameter: '12 in',
        holeShape: 'square',
        holeDepth: '30 in',
        stoneDepth: '6 in',
        bagYield: '0.6 ft3',
      },
      expect: { concreteFilled: '18 ft³', bagsFilled: '30 bags' },
    },
  ],
})
