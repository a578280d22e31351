// A post as bought: what it leaves for the ground at a given height, against the one-third rule.
//
//   postLength ┃ ┃ postAbove
//              ┃ ┃─────── ground
//              └─┘ embedment: what is left
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { subtract } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { deepEnoughByRule, embedment, postAbove, postLength, thirdOfWhole } from '../../words/posts.ts'

export const postAsBought = calculation({
  name: 'post-as-bought',
  title: 'A post as bought, against the one-third rule',
  answers:
    'How much of a post of given length is left for the ground at a given height, and whether that meets the one-third rule.',
  needs: { postLength, postAbove },
  gives: { embedment, thirdOfWhole, deepEnoughByRule },
  headlines: ['deepEnoughByRule', 'embedment'],
  together: { deepEnoughByRule: ['deepEnoughByRule', 'embedment', 'thirdOfWhole'] },
  lines: {
    embedment: ['postLength - postAbove', 'what does not show is in the ground'],
    thirdOfWhole: ['postAbove / 2', 'the rule: a third of the whole post, which is half of what shows'],
  },
  work({ postLength, postAbove }, { line, tell, refuse, remark, cite }) {
    if (!less(postAbove, postLength))
      refuse(
        'postLength',
        `A ${show(postLength)} post cannot stand ${show(postAbove)} above the ground and be in it. Check both measurements.`,
      )
    const planted = line('embedment')
    const rule = line('thirdOfWhole')
    const meets = !less(planted, rule)
    tell('deepEnoughByRule', meets)
    const short: Quantity = { ...rule, amount: subtract(rule.amount, planted.amount) }
    remark(
      meets
        ? `Decided by: ${show(planted)} left for the ground against ${show(rule)} by the one-third rule.`
        : `Decided by: only ${show(planted)} left for the ground against ${show(rule)} by the one-third rule. The post is ${cite(short, 'too short by')} too short for this height.`,
    )
    remark(
      'This is the trade’s rule, not a code, and says nothing about frost or wind. Your building office may ask for more.',
    )
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
      // 2700 − 1800 = 900 against 1800/2 = 900
      ask: 'Fence 1.8 m high, posts 2.7 m long: is that enough in the ground?',
      given: { postLength: '2.7 m', postAbove: '1.8 m' },
      expect: { embedment: '900 mm', thirdOfWhole: '900 mm', deepEnoughByRule: 'meets the one-third rule' },
    },
    {
      // 8 ft − 6 ft = 24 in against 36 in
      ask: 'Are 8 ft posts long enough for a 6 ft fence?',
      given: { postLength: '8 ft', postAbove: '6 ft' },
      expect: { embedment: '24 in', thirdOfWhole: '36 in', deepEnoughByRule: 'falls short of the one-third rule' },
    },
  ],
})
