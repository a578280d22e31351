// Which of the lengths that are sold a post is cut from, and what is cut off.
//
//   ├──── post ────┤ offcut │
//   ├──── as it is sold ────┤
import { calculation } from '../../calculation.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { stockLengths } from '../../words/cutting.ts'
import { postLength } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const postToBuy = word<'length'>('postToBuy', {
  kind: 'length',
  label: 'post to buy',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'The shortest length sold that is long enough.',
  ask: 'Which length of post do I buy?',
  called: { names: ['post to buy'], asks: ['which length post'] },
})

const postOffcut = word<'length'>('postOffcut', {
  kind: 'length',
  label: 'cut off a post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is left of the length bought.',
  ask: 'How much is cut off a post?',
  called: { names: ['cut off the post'] },
})

export const postAsSold = calculation({
  name: 'post-as-sold',
  title: 'The length of post to buy',
  answers: 'Which of the lengths sold is the shortest that makes a post, and what is cut off it.',
  needs: { postLength, stockLengths },
  gives: { postToBuy, postOffcut },
  headlines: ['postToBuy', 'postOffcut'],
  together: { postToBuy: ['postToBuy', 'postOffcut'], postOffcut: ['postOffcut', 'postToBuy'] },
  locals: { bought: 'length' },
  lines: { postOffcut: ['bought - postLength', 'what is left over'] },
  work({ postLength }, { rows, put, line, tell, refuse, remark, system }) {
    const enough = rows('stockLengths').filter((it) => !less(it, postLength))
    const [first, ...others] = enough
    if (!first) refuse('stockLengths', `None of these lengths makes a post of ${show(postLength)}. Give longer ones.`)
    const shortest = others.reduce((least: Quantity, it) => (less(it, least) ? it : least), first as Quantity)
    tell('postToBuy', put('bought', { ...shortest, unit: system === 'metric' ? 'mm' : 'ft' }))
    line('postOffcut')
    remark('Cut the tops to a string when the posts stand: holes are never quite alike.')
  },
  sources: [{ fact: 'the shortest that is long enough', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['tools', 'preserved-wood'],
  examples: [
    // 82 in of 6, 7 and 8 ft: 84 − 82 = 2
    {
      ask: 'The post is 82 in long and they come in 6 ft, 7 ft and 8 ft: which length post do I buy, and how much is cut off?',
      given: { postLength: '82 in', stockLengths: ['6 ft', '7 ft', '8 ft'] },
      expect: { postToBuy: '7 ft', postOffcut: '2 in' },
    },
    // 1720 of 1500, 1800, 2400
    {
      ask: 'Post length 1720 mm, the yard has 1500 mm, 1800 mm and 2400 mm. Which length post do I buy?',
      given: { postLength: '1720 mm', stockLengths: ['1500 mm', '1800 mm', '2400 mm'] },
      expect: { postToBuy: '1,800 mm', postOffcut: '80 mm' },
    },
  ],
})
