// A post as bought: what it leaves for the ground at a given height, against the one-third rule and the frost depth.
//
//   postLength ┃ ┃ postAbove
//              ┃ ┃─────── ground
//              └─┘ embedment: what is left
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { subtract } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { deepEnoughByRule, depthByRule, embedment, frostDepth, postAbove, postLength } from '../../words/posts.ts'

export const postAsBought = calculation({
  name: 'post-as-bought',
  title: 'A post as bought, against the one-third rule and the frost depth',
  answers:
    'How much of a post of given length is left for the ground at a given height, and whether that meets the one-third rule and the frost depth you give.',
  needs: { postLength, postAbove, frostDepth },
  may: ['frostDepth'],
  gives: { embedment, depthByRule, deepEnoughByRule },
  headlines: ['deepEnoughByRule', 'embedment'],
  together: { deepEnoughByRule: ['deepEnoughByRule', 'embedment', 'depthByRule'] },
  lines: {
    embedment: ['postLength - postAbove', 'what does not show is in the ground'],
    depthByRule: ['postAbove / 2', 'the rule: a third of the whole post, which is half of what shows'],
    depthAsked: ['max(depthByRule, frostDepth)', 'the deeper of the rule and the frost depth governs'],
  },
  work({ postLength, postAbove, frostDepth }, { line, has, tell, refuse, remark, cite }) {
    if (!less(postAbove, postLength))
      refuse(
        'postLength',
        `A ${show(postLength)} post cannot stand ${show(postAbove)} above the ground and be in it. Check both measurements.`,
      )
    const planted = line('embedment')
    const rule = line('depthByRule')
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
        ? `Decided by: ${show(planted)} left for the ground against ${show(asked)} ${governs}.`
        : `Decided by: only ${show(planted)} left for the ground against ${show(asked)} ${governs}. The post is ${cite(short, 'too short by')} too short for this height.`,
    )
    remark(
      `The one-third rule is the trade’s, not a code, and says nothing about wind. ${has('frostDepth') ? 'Your building office may ask for more.' : 'Your building office may ask for more, and for a frost depth: give it to me and I will hold the deeper against it.'}`,
    )
  },
  sources: [
    {
      fact: 'a third of the whole post in the ground, which is half of the height above it',
      from: 'trade rule, no source',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'structure', 'open-hole', 'overhead-lines'],
  drawing: holeDrawing,
  examples: [
    {
      // 2700 − 1800 = 900 against 1800/2 = 900
      ask: 'Fence 1.8 m high, posts 2.7 m long: is that enough in the ground?',
      given: { postLength: '2.7 m', postAbove: '1.8 m' },
      expect: { embedment: '900 mm', depthByRule: '900 mm', deepEnoughByRule: 'deep enough by the rules checked here' },
    },
    {
      // 6 ft − 42 in = 30 in; the rule asks 42/2 = 21, the frost depth 36
      ask: 'Are 6 ft posts long enough for a 42 in fence with a frost depth of 36 in?',
      given: { postLength: '6 ft', postAbove: '42 in', frostDepth: '36 in' },
      expect: { embedment: '30 in', depthByRule: '21 in', deepEnoughByRule: 'not deep enough' },
    },
    {
      // 8 ft − 6 ft = 24 in against 36 in
      ask: 'Are 8 ft posts long enough for a 6 ft fence?',
      given: { postLength: '8 ft', postAbove: '6 ft' },
      expect: { embedment: '24 in', depthByRule: '36 in', deepEnoughByRule: 'not deep enough' },
    },
  ],
})
