// The line of post centres inside the lot line, so that nothing reaches over.
//
//   lot line ║◄ setback ►│picket│rail│◄ half post ►●── post centres
//            ║                              ◄── hole radius ──►     in the ground the hole reaches furthest of all
import { calculation } from '../../calculation.ts'
import { postLineDrawing } from '../../drawings/post-line.ts'
import { compare, exact, subtract } from '../../quantities/amount.ts'
import { less, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  holeInside,
  landGivenUp,
  lineRun,
  nothingOver,
  picketSide,
  postLineOffset,
  setback,
} from '../../words/boundary.ts'
import { picketThickness } from '../../words/pickets.ts'
import { holeDiameter, postWidth } from '../../words/posts.ts'
import { railThickness } from '../../words/rails.ts'

export const postLine = calculation({
  name: 'post-line',
  title: 'The post line inside the lot line',
  answers:
    'How far inside the lot line the post centres stand so that fence and holes stay behind it, and how much land is left outside.',
  needs: { setback, picketSide, postWidth, railThickness, picketThickness, holeDiameter, lineRun },
  may: ['holeDiameter', 'lineRun'],
  onlyFor: { lineRun: ['landGivenUp'], holeDiameter: ['holeInside'] },
  gives: { postLineOffset, holeInside, landGivenUp, nothingOver },
  headlines: ['postLineOffset', 'nothingOver'],
  together: {
    postLineOffset: ['postLineOffset', 'holeInside', 'landGivenUp', 'nothingOver'],
    landGivenUp: ['landGivenUp', 'postLineOffset'],
    nothingOver: ['nothingOver', 'postLineOffset', 'holeInside'],
  },
  locals: { reach: 'length' },
  lines: {
    reachOutside: [
      'postWidth / 2 + railThickness + picketThickness',
      'from the middle of a post out to the face of the pickets',
    ],
    reachBetween: ['postWidth / 2 + picketThickness', 'rails between the posts add nothing; the pickets do'],
    reachInside: ['postWidth / 2', 'only the post itself stands toward the line'],
    postLineOffset: ['setback + reach', 'the setback is kept by whatever stands furthest out'],
    holeInside: ['postLineOffset - holeDiameter / 2', 'the hole reaches half its width toward the line'],
    landGivenUp: ['setback * lineRun', 'between the lot line and the face of the fence'],
  },
  work({ picketSide, setback }, { line, has, put, rows, tell, remark }) {
    put(
      'reach',
      line(picketSide === 'inside' ? 'reachInside' : picketSide === 'between' ? 'reachBetween' : 'reachOutside'),
    )
    const offset = line('postLineOffset')
    if (has('lineRun')) line('landGivenUp')
    if (has('holeDiameter')) {
      const left = line('holeInside')
      const inside = compare(left.amount, exact(0)) !== -1
      tell('nothingOver', inside)
      if (inside)
        remark(
          `Decided by: the hole, whose edge is ${show(left)} inside the line; the face of the fence is ${show(setback)} inside.`,
        )
      else {
        const over: Quantity = { ...left, amount: subtract(exact(0), left.amount) }
        remark(
          `Decided by: the hole. Its edge reaches ${show(over)} over the line, though the fence above stays ${show(setback)} inside. Set the posts ${show(over)} further in, or dig narrower holes. Concrete over the line is a neighbor’s to remove.`,
        )
      }
    } else {
      tell('nothingOver', null)
      remark('Tell me how wide the holes are: in the ground the hole reaches further out than the post.')
    }
    if (less(zero('length', 'in'), offset))
      remark(
        'This takes the lot line as it is marked. Only a licensed surveyor can say where it runs; a grass edge, an old fence or a tape from the house cannot.',
      )
    if (has('holeDiameter'))
      remark(
        `A hole is ${show(rows('holeDiameter')[0] as Quantity)} across by what you said; rough holes come out wider.`,
      )
  },
  sources: [
    {
      fact: 'offset = setback + half the post + what hangs on it',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: postLineDrawing,
  examples: [
    // 6 + 1 3/4 + 1 1/2 + 3/4 = 10; hole 10/2 = 5 → 5 in inside; 0.5 ft × 80 ft = 40 ft²
    {
      ask: 'Setback 6 in from the lot line, pickets on the outside, 10 in holes, 80 ft along the line. How far inside the line do the posts go?',
      given: { setback: '6 in', picketSide: 'outside', postWidth: '3 1/2 in', holeDiameter: '10 in', lineRun: '80 ft' },
      expect: {
        postLineOffset: '10 in',
        holeInside: '5 in',
        landGivenUp: '40 ft²',
        nothingOver: 'by these measures nothing reaches over',
      },
    },
    // 0 + 45 = 45; 45 − 150 = −105
    {
      ask: 'Zero setback, 0 mm from the boundary, pickets on the inside, 90 mm posts and 300 mm holes: where does the post line go?',
      given: { setback: '0 mm', picketSide: 'inside', postWidth: '90 mm', holeDiameter: '300 mm' },
      expect: { postLineOffset: '45 mm', holeInside: '−105 mm', nothingOver: 'something reaches over the lot line' },
    },
  ],
})
