// How far a post leans, from one plumb reading: as an angle, as a share of its height, and out at the top.
//
//      │╲          out ÷ height = tan of the lean
//      │ ╲  out    the top stands out by as much more as the post is taller than the level is long
//      │──╲
//      │   ╲
import { calculation } from '../../calculation.ts'
import { plumbDrawing } from '../../drawings/plumb.ts'
import { over, times } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { sagLines } from '../../sag.ts'
import { leanAngle, outOfPlumb, plumbOver } from '../../words/gate-swing.ts'
import { leanSlope, topOffset } from '../../words/lean.ts'
import { postAbove } from '../../words/posts.ts'

export const postLean = calculation({
  name: 'post-lean',
  title: 'How far a post leans',
  answers:
    'The lean of a post from a plumb reading: in degrees, in each foot or metre, and how far its top stands out.',
  needs: { outOfPlumb, plumbOver, postAbove },
  onlyFor: { postAbove: ['topOffset'] },
  gives: { leanAngle, leanSlope, topOffset },
  headlines: ['leanAngle', 'topOffset'],
  called: ['post leans', 'posts lean', 'leaning post', 'leans over', 'lean of'],
  together: { leanAngle: ['leanAngle', 'leanSlope'], topOffset: ['topOffset', 'leanAngle', 'leanSlope'] },
  lines: {
    leanAngle: sagLines.leanAngle,
    leanSlope: ['outOfPlumb / plumbOver', 'the same as a share of the height'],
    topOffset: ['postAbove * outOfPlumb / plumbOver', 'it goes on leaning alike up to the top'],
  },
  work({ outOfPlumb, plumbOver, postAbove }, { line, has, refuse, remark, cite, system }) {
    if (!less(outOfPlumb, plumbOver))
      refuse(
        'outOfPlumb',
        `${show(outOfPlumb)} out over ${show(plumbOver)} is no leaning post, it lies down. Check both.`,
      )
    line('leanAngle')
    line('leanSlope')
    const each = system === 'metric' ? quantity(1, 'm') : quantity(1, 'ft')
    const inEach: Quantity = {
      kind: 'length',
      amount: over(times(outOfPlumb.amount, each.amount), plumbOver.amount),
      unit: system === 'metric' ? 'mm' : 'in',
    }
    remark(
      `That is ${cite(inEach, 'lean in each foot or metre')} in each ${system === 'metric' ? 'metre' : 'foot'} of height.`,
    )
    if (has('postAbove')) {
      const top = line('topOffset')
      if (less(postAbove, plumbOver))
        remark(
          `The reading went higher than the post is tall, ${show(postAbove)}. Check both; the top is reckoned from them.`,
        )
      remark(`Its top stands ${show(top)} out over its foot at the ground.`)
    }
    remark(
      'Read two faces that meet: a post leans two ways. Then find out why before you pull it straight: rot at the ground, a loose footing, soft soil, frost, a gate that pulls. Write the day beside the reading, and take it again in some months.',
    )
  },
  sources: [
    { fact: 'out of plumb ÷ height = tangent of the lean', from: 'Derived here from the sketch; needs no table.' },
    { fact: 'find the cause before it is pulled straight', from: 'common practice, no source' },
  ],
  cautions: ['structure', 'lifting'],
  drawing: plumbDrawing,
  examples: [
    // atan(3/4 ÷ 48) = 0.89517°; 0.75/48 = 1/64 = 1.5625 %; 3/16 in each foot; 72/64 = 1 1/8 in
    {
      ask: 'A post is out of plumb 3/4 in over 48 in and the fence is 6 ft high: how far is the top out?',
      given: { outOfPlumb: '3/4 in', plumbOver: '48 in', postAbove: '6 ft' },
      expect: { topOffset: '1 1/8 in', leanAngle: '0.8952°', leanSlope: '1.5625 %' },
    },
    // atan(18/1200) = 0.85937°; 1.5 %; 15 mm in each metre
    {
      ask: 'The post leans 18 mm over 1200 mm: what angle does it lean?',
      given: { outOfPlumb: '18 mm', plumbOver: '1200 mm' },
      expect: { leanAngle: '0.8594°', leanSlope: '1.5 %' },
    },
  ],
})
