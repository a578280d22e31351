// A hole as dug: how much post is really in the ground, against the one-third rule and the frost depth. Stone is not counted.
//
//   holeDepth  ┌ embedment ┐ against postAbove / 2, or the frost depth where that is deeper
//              └ stone     ┘ not counted, nor concrete under a post that hangs in it
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { equal, less, type Quantity } from '../../quantities/quantity.ts'
import { compare, exact, subtract } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import {
  concreteUnder,
  deepEnoughByRule,
  depthByRule,
  embedment,
  frostDepth,
  holeDepth,
  postAbove,
  postLength,
  stoneDepth,
} from '../../words/posts.ts'

export const postDepthCheck = calculation({
  name: 'post-depth-check',
  title: 'A hole as dug, against the one-third rule and the frost depth',
  answers:
    'How much of the post a hole really takes once the stone is in, and whether that meets the one-third rule and the frost depth you give.',
  needs: { holeDepth, postAbove, stoneDepth, concreteUnder, frostDepth },
  may: ['concreteUnder', 'frostDepth'],
  onlyFor: { postAbove: ['depthByRule', 'postLength', 'deepEnoughByRule'] },
  usually: {
    stoneDepth: {
      value: '0 in',
      metric: '0 mm',
      because: 'you did not mention any stone in the bottom',
      from: 'Decided here: tell me if there is stone, for it takes depth away.',
    },
  },
  gives: { embedment, depthByRule, postLength, deepEnoughByRule },
  headlines: ['deepEnoughByRule', 'embedment'],
  together: { deepEnoughByRule: ['deepEnoughByRule', 'embedment', 'depthByRule'] },
  lines: {
    embedment: ['holeDepth - stoneDepth', 'stone in the bottom takes depth away'],
    overConcrete: [
      'holeDepth - stoneDepth - concreteUnder',
      'stone in the bottom and concrete under the foot take depth away',
    ],
    depthByRule: ['postAbove / 2', 'the rule: a third of the whole post, which is half of what shows'],
    depthAsked: ['max(depthByRule, frostDepth)', 'the deeper of the rule and the frost depth governs'],
    postLength: ['postAbove + embedment', 'the post this takes'],
  },
  work({ holeDepth, stoneDepth, concreteUnder, frostDepth }, { line, rows, has, tell, refuse, remark, cite }) {
    if (less(holeDepth, stoneDepth) || equal(holeDepth, stoneDepth))
      refuse(
        'stoneDepth',
        `${show(stoneDepth)} of stone fills a ${show(holeDepth)} hole, so no post is left in the ground. Check both measurements.`,
      )
    if (has('concreteUnder')) {
      const over = line('overConcrete')
      if (compare(over.amount, exact(0)) !== 1)
        refuse(
          'concreteUnder',
          `${show(stoneDepth)} of stone and ${show(concreteUnder)} of concrete under the post fill a ${show(holeDepth)} hole, so no post is left in the ground. Check the measurements.`,
        )
      tell('embedment', over)
    } else line('embedment')
    const planted = rows('embedment')[0] as Quantity
    if (!has('postAbove')) {
      remark('What lies under the post does not count as depth.')
      if (has('frostDepth') && less(planted, frostDepth)) {
        tell('deepEnoughByRule', false)
        remark(`Decided by: only ${show(planted)} of post in the ground against ${show(frostDepth)}, the frost depth.`)
      }
      return
    }
    const rule = line('depthByRule')
    line('postLength')
    const asked = has('frostDepth') ? line('depthAsked') : rule
    const governs = !has('frostDepth')
      ? 'by the one-third rule'
      : less(rule, frostDepth)
        ? `by the frost depth, which is deeper than the ${show(rule)} of the one-third rule`
        : `by the one-third rule, which is as deep as the frost depth of ${show(frostDepth)}, or deeper`
    const meets = !less(planted, asked)
    tell('deepEnoughByRule', meets)
    const short: Quantity = { ...rule, amount: subtract(asked.amount, planted.amount) }
    remark(
      meets
        ? `Decided by: ${show(planted)} of post in the ground against ${show(asked)} ${governs}.`
        : `Decided by: only ${show(planted)} of post in the ground against ${show(asked)} ${governs}. Dig ${cite(short, 'still to dig')} deeper${less(stoneDepth, short) ? '' : ', or use that much less stone'}.`,
    )
    remark('This is the trade’s rule, not a code, and says nothing about wind. Your building office may ask for more.')
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
    // 36 − 12 = 24 against 72/2 = 36
    {
      ask: 'Is a 36 in hole with a foot of stone deep enough for a 6 ft fence?',
      given: { holeDepth: '36 in', stoneDepth: '12 in', postAbove: '6 ft' },
      expect: { embedment: '24 in', depthByRule: '36 in', deepEnoughByRule: 'not deep enough' },
    },
    // 750 − 150 = 600 against 1200/2 = 600
    {
      ask: 'Hole 750 mm deep, 150 mm of gravel, fence 1200 mm: deep enough?',
      given: { holeDepth: '750 mm', stoneDepth: '150 mm', postAbove: '1200 mm' },
      expect: { embedment: '600 mm', depthByRule: '600 mm', deepEnoughByRule: 'deep enough by the rules checked here' },
    },
  ],
})
