// A post from its parts: what shows of the fence, what stands up above it, and what is in the ground.
//
//     ┌─┐   postOverFence
//   ══╪═╪══ top of the fence
//     │ │   postAbove
//   ──┤ ├── ground
//     └─┘   embedment
import { calculation } from '../../calculation.ts'
import { subtract } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { embedment, postAbove, postLength } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const postOverFence = word<'length'>('postOverFence', {
  kind: 'length',
  label: 'post above the top of the pickets',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the top of the pickets to the top of the post.',
  ask: 'How far does the post stand up above the pickets?',
  called: { names: ['above the pickets', 'over the pickets', 'above the fence', 'past the pickets'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '24 in' },
})

const postBought = word<'length'>('postBought', {
  kind: 'length',
  label: 'post as it is sold',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'The length that you have or can buy.',
  ask: 'How long is the post that you have?',
  called: { names: ['post as sold', 'post i have'] },
  possible: { above: '0 in' },
  plausible: { from: '2 ft', to: '20 ft' },
})

const postIsLongEnough = word<'verdict'>('postIsLongEnough', {
  kind: 'verdict',
  label: 'the post that you have',
  measure: 'Its length against what shows, what stands above the fence and what goes in the ground.',
  ask: 'Is the post long enough?',
  called: { asks: ['can i get away with'] },
  says: { yes: 'long enough', no: 'too short', unknown: 'cannot say whether it is long enough' },
})

export const postInParts = calculation({
  name: 'post-in-parts',
  title: 'A post from its parts',
  answers: 'How long a post must be for what shows, what stands above the pickets, and what is in the ground.',
  needs: { postAbove, postOverFence, embedment, postBought },
  may: ['postOverFence', 'postBought'],
  gives: { postLength, postIsLongEnough },
  headlines: ['postLength'],
  together: { postIsLongEnough: ['postIsLongEnough', 'postLength'] },
  locals: { needed: 'length' },
  lines: {
    postPlain: ['postAbove + embedment', 'above and below together'],
    postOver: ['postAbove + postOverFence + embedment', 'the fence, what stands above it, and what is in the ground'],
    short: ['needed - postBought', 'what it lacks'],
    leftOver: ['postBought - needed', 'what may be cut off, or goes deeper'],
  },
  work(_, { line, has, rows, put, tell, remark, cite, system }) {
    const needed = put(
      'needed',
      line(has('postOverFence') ? 'postOver' : 'postPlain', system === 'metric' ? 'mm' : 'ft'),
    )
    tell('postLength', needed)
    remark('Buy the next length that is sold, and cut the tops to a string when the posts stand.')
    if (!has('postBought')) return
    const bought = rows('postBought')[0] as Quantity
    const isEnough = !less(bought, needed)
    tell('postIsLongEnough', isEnough)
    const diff = { ...line(isEnough ? 'leftOver' : 'short'), unit: (rows('embedment')[0] as Quantity).unit }
    if (isEnough) {
      remark(`Decided by: ${show(bought)} against ${show(needed)}, ${cite(diff, 'left over')} to spare.`)
      return
    }
    const planted = { ...diff, amount: subtract((rows('embedment')[0] as Quantity).amount, diff.amount) }
    remark(
      `Decided by: ${show(bought)} against ${show(needed)}, ${cite(diff, 'too short by')} short. At the same height it would have ${cite(planted, 'left for the ground')} in the ground.`,
    )
  },
  sources: [{ fact: 'a post is as long as its parts together', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code', 'structure', 'open-hole'],
  examples: [
    // 42 + 4 + 24 = 70 in
    {
      ask: 'Fence 42 in high, posts 4 in above the pickets and 24 in in the ground: how long must the posts be?',
      given: { postAbove: '42 in', postOverFence: '4 in', embedment: '24 in' },
      expect: { postLength: '5 ft 10 in' },
    },
    // 1200 + 600
    {
      ask: 'Fence 1200 mm high and 600 mm in the ground: how long must the posts be?',
      given: { postAbove: '1200 mm', embedment: '600 mm' },
      expect: { postLength: '1,800 mm' },
    },
    // 48 + 3 + 30 = 81 in, and 72 are there
    {
      ask: 'Fence 48 in high, posts 3 in above the pickets and 30 in in the ground, posts bought 6 ft long: how long must the posts be?',
      given: { postAbove: '48 in', postOverFence: '3 in', embedment: '30 in', postBought: '6 ft' },
      expect: { postLength: '6 ft 9 in', postIsLongEnough: 'too short' },
    },
  ],
})
