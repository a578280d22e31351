// A hole as dug: how much post is really in the ground, against the one-third rule. Stone is not counted.
//
//   holeDepth  ┌ embedment ┐ against postAbove / 2
//              └ stone     ┘ not counted
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { equal, less, type Quantity } from '../../quantities/quantity.ts'
import { subtract } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import {
  deepEnoughByRule,
  embedment,
  frostDepth,
  holeDepth,
  postAbove,
  postLength,
  stoneDepth,
  thirdOfWhole,
} from '../../words/posts.ts'

export const postDepthCheck = calculation({
  name: 'post-depth-check',
  title: 'A hole as dug, against the one-third rule',
  answers: 'How much of the post a hole really takes once the stone is in, and whether that meets the one-third rule.',
  needs: { holeDepth, postAbove, stoneDepth, frostDepth },
  may: ['frostDepth'],
  onlyFor: { postAbove: ['thirdOfWhole', 'postLength', 'deepEnoughByRule'] },
  usually: {
    stoneDepth: {
      value: '0 in',
      metric: '0 mm',
      because: 'you did not mention any stone in the bottom',
      from: 'Decided here: tell me if there is stone, for it takes depth away.',
    },
  },
  gives: { embedment, thirdOfWhole, postLength, deepEnoughByRule },
  headlines: ['deepEnoughByRule', 'embedment'],
  together: { deepEnoughByRule: ['deepEnoughByRule', 'embedment', 'thirdOfWhole'] },
  lines: {
    embedment: ['holeDepth - stoneDepth', 'stone in the bottom takes depth away'],
    thirdOfWhole: ['postAbove / 2', 'the rule: a third of the whole post, which is half of what shows'],
    postLength: ['postAbove + embedment', 'the post this takes'],
  },
  work({ holeDepth, stoneDepth, frostDepth }, { line, has, tell, refuse, remark, cite }) {
    if (less(holeDepth, stoneDepth) || equal(holeDepth, stoneDepth))
      refuse(
        'stoneDepth',
        `${show(stoneDepth)} of stone fills a ${show(holeDepth)} hole, so no post is left in the ground. Check both measurements.`,
      )
    const planted = line('embedment')
    if (!has('postAbove')) {
      remark('The stone does not count as depth.')
      return
    }
    const rule = line('thirdOfWhole')
    line('postLength')
    const meets = !less(planted, rule)
    tell('deepEnoughByRule', meets)
    const short: Quantity = { ...rule, amount: subtract(rule.amount, planted.amount) }
    remark(
      meets
        ? `Decided by: ${show(planted)} of post in the ground against ${show(rule)} by the one-third rule.`
        : `Decided by: only ${show(planted)} of post in the ground against ${show(rule)} by the one-third rule. Dig ${cite(short, 'still to dig')} deeper${stoneDepth.amount.valueOf() === 0 ? '' : ', or use that much less stone'}.`,
    )
    if (has('frostDepth') && less(planted, frostDepth))
      remark(`The foot of the post is above the frost depth you gave: ${show(planted)} against ${show(frostDepth)}.`)
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
      expect: { embedment: '24 in', thirdOfWhole: '36 in', deepEnoughByRule: 'falls short of the one-third rule' },
    },
    // 750 − 150 = 600 against 1200/2 = 600
    {
      ask: 'Hole 750 mm deep, 150 mm of gravel, fence 1200 mm: deep enough?',
      given: { holeDepth: '750 mm', stoneDepth: '150 mm', postAbove: '1200 mm' },
      expect: { embedment: '600 mm', thirdOfWhole: '600 mm', deepEnoughByRule: 'meets the one-third rule' },
    },
  ],
})
