// How high the rails are set, from the picket's length.
//
//   ▲ ─┬─ over the top rail
//   ┃━━┷━━━  top rail
//   ┃        rails evenly between
//   ┃━━━━━━  bottom rail
//   ┃  ─┬─ below the bottom rail
//   ┗━━─┴─   foot, above the ground
import { calculation } from '../../calculation.ts'
import { railHeightsDrawing } from '../../drawings/rail-heights.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bottomRailAt, footGap, overTop, railsApart, topRailAt, underBottom } from '../../words/framing.ts'
import { picketLength } from '../../words/pickets.ts'
import { railDepth, rails } from '../../words/rails.ts'

export const railHeights = calculation({
  name: 'rail-heights',
  title: 'How high the rails are set',
  answers:
    'The heights of the rails above the ground, from the length of the pickets and how far they reach past the rails.',
  needs: { picketLength, footGap, overTop, underBottom, rails, railDepth },
  gives: { topRailAt, bottomRailAt, railsApart },
  headlines: ['topRailAt', 'bottomRailAt'],
  together: {
    topRailAt: ['topRailAt', 'bottomRailAt', 'railsApart'],
    bottomRailAt: ['bottomRailAt', 'topRailAt', 'railsApart'],
    railsApart: ['railsApart', 'topRailAt', 'bottomRailAt'],
  },
  lines: {
    topRailAt: ['footGap + picketLength - overTop', 'down from the picket’s top'],
    bottomRailAt: ['footGap + underBottom + railDepth', 'up from the picket’s foot, to the top edge'],
    railsApart: ['(topRailAt - bottomRailAt) / (rails - 1)', 'the others share what lies between'],
  },
  work({ picketLength, rails, railDepth }, { line, refuse, remark }) {
    if (compare(rails.amount, exact(2)) === -1)
      refuse('rails', `With ${show(rails)} there is nothing to share out: a picket wants two or it turns.`)
    const top = line('topRailAt')
    const bottom = line('bottomRailAt')
    if (!less(bottom, top))
      refuse(
        'picketLength',
        `A ${show(picketLength)} picket leaves no room between the rails: the top one would be at ${show(top)}, the bottom one at ${show(bottom)}. Check the lengths past the rails.`,
      )
    const apart: Quantity = line('railsApart')
    if (!less(railDepth, apart))
      refuse('rails', `${show(rails)} of ${show(railDepth)} would touch each other, ${show(apart)} apart. Take fewer.`)
    remark(
      'The heights are to the top edge of each rail. Mark them on the posts from a level string, not from rough ground. Around a pool, rails close together are steps: that is a law of its own.',
    )
  },
  sources: [
    {
      fact: 'heights add up from foot gap, overhangs and picket length',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: railHeightsDrawing,
  examples: [
    // 2 + 42 − 6 = 38; 2 + 6 + 3 1/2 = 11 1/2; 26 1/2
    {
      ask: 'How high do I set the rails for 42 in long pickets, 2 in off the ground, 6 in above the top rail and 6 in below the bottom rail?',
      given: { picketLength: '42 in', footGap: '2 in', overTop: '6 in', underBottom: '6 in' },
      expect: { topRailAt: '38 in', bottomRailAt: '11 1/2 in', railsApart: '26 1/2 in' },
    },
    // 50 + 1100 − 150 = 1000; 50 + 150 + 90 = 290; 710/2 = 355
    {
      ask: 'Rail heights for 1100 mm long pickets with 3 rails, 50 mm clear of the ground, 150 mm over the top rail and 150 mm under the bottom rail?',
      given: {
        picketLength: '1100 mm',
        rails: '3',
        footGap: '50 mm',
        overTop: '150 mm',
        underBottom: '150 mm',
        railDepth: '90 mm',
      },
      expect: { topRailAt: '1,000 mm', bottomRailAt: '290 mm', railsApart: '355 mm' },
    },
  ],
})
