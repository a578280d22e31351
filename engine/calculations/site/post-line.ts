// The line of post centres inside the lot line, so that nothing reaches over.
//
//   lot line ║◄ setback ►│picket│rail│◄ half post ►●── post centres
//            ║◄ setback ►│◄── cap overhang, and ──►          a cap that stands out further than the pickets keeps the setback instead
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
  picketFaceOut,
  picketSide,
  postLineOffset,
  setback,
} from '../../words/boundary.ts'
import { capOverhang } from '../../words/caps.ts'
import { picketThickness } from '../../words/pickets.ts'
import { holeDiameter, postWidth } from '../../words/posts.ts'
import { railThickness } from '../../words/rails.ts'

export const postLine = calculation({
  name: 'post-line',
  title: 'The post line inside the lot line',
  answers:
    'How far inside the lot line the post centres stand so that fence and holes stay behind it, and how much land is left outside.',
  needs: {
    setback,
    picketSide,
    postWidth,
    railThickness,
    picketThickness,
    picketFaceOut,
    capOverhang,
    holeDiameter,
    lineRun,
  },
  may: ['picketFaceOut', 'capOverhang', 'holeDiameter', 'lineRun'],
  onlyFor: { lineRun: ['landGivenUp'], holeDiameter: ['holeInside'] },
  gives: { postLineOffset, holeInside, landGivenUp, nothingOver },
  headlines: ['postLineOffset', 'nothingOver'],
  together: {
    postLineOffset: ['postLineOffset', 'holeInside', 'landGivenUp', 'nothingOver'],
    landGivenUp: ['landGivenUp', 'postLineOffset'],
    nothingOver: ['nothingOver', 'postLineOffset', 'holeInside'],
  },
  locals: { reach: 'length', faceReach: 'length' },
  lines: {
    reachOutside: [
      'postWidth / 2 + railThickness + picketThickness',
      'from the middle of a post out to the face of the pickets',
    ],
    reachBetween: ['postWidth / 2 + picketThickness', 'rails between the posts add nothing; the pickets do'],
    reachTold: ['postWidth / 2 + picketFaceOut', 'half the post, and what stands in front of it'],
    reachInside: ['postWidth / 2', 'only the post itself stands toward the line'],
    reachCap: ['postWidth / 2 + capOverhang', 'a cap stands out on every side of its post'],
    postLineOffset: ['setback + reach', 'the setback is kept by whatever stands furthest out'],
    holeInside: ['postLineOffset - holeDiameter / 2', 'the hole reaches half its width toward the line'],
    landGivenUp: ['(postLineOffset - faceReach) * lineRun', 'between the lot line and the face of the fence'],
  },
  work({ picketSide, setback, capOverhang }, { line, has, put, rows, tell, remark, cite }) {
    const face = put(
      'faceReach',
      line(
        has('picketFaceOut')
          ? 'reachTold'
          : picketSide === 'inside'
            ? 'reachInside'
            : picketSide === 'between'
              ? 'reachBetween'
              : 'reachOutside',
      ),
    )
    const cap = has('capOverhang') ? line('reachCap') : face
    const isCapFurthest = less(face, cap)
    put('reach', isCapFurthest ? cap : face)
    const offset = line('postLineOffset')
    const faceInside: Quantity = { ...offset, amount: subtract(offset.amount, face.amount) }
    if (isCapFurthest)
      remark(
        `The caps stand out furthest, ${show(capOverhang)} past the posts, so it is they that keep the setback; the face of the fence comes to stand ${cite(faceInside, 'face of the fence, inside the line')} inside.`,
      )
    if (has('lineRun')) line('landGivenUp')
    if (has('holeDiameter')) {
      const left = line('holeInside')
      const inside = compare(left.amount, exact(0)) !== -1
      tell('nothingOver', inside)
      const nearest = `${isCapFurthest ? 'the edge of the caps' : 'the face of the fence'} is ${show(setback)} inside`
      if (inside)
        remark(
          less(setback, left)
            ? `Decided by: ${nearest}; the edge of the hole is ${show(left)} inside.`
            : `Decided by: the hole, whose edge is ${show(left)} inside the line; ${nearest}.`,
        )
      if (inside && less(left, setback)) {
        const into = cite(
          { ...setback, amount: subtract(setback.amount, left.amount) },
          'hole reaches into the setback',
        )
        remark(
          `In the ground the hole reaches ${into} into the setback. Some rules count only what stands above the ground, some the footings too: ask yours. If it counts them, set the posts ${into} further in.`,
        )
      }
      if (!inside) {
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
        'This takes the lot line as it is marked. Only a surveyor (licensed, where your country licenses them) can say where it runs; a grass edge, an old fence or a tape from the house cannot.',
      )
    if (has('holeDiameter'))
      remark(
        `A hole is ${show(rows('holeDiameter')[0] as Quantity)} across by what you said; rough holes come out wider.`,
      )
  },
  sources: [
    {
      fact: 'offset = setback + half the post + what hangs on it, or its cap’s overhang where that is more',
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
    // caps: 1 3/4 + 1 = 2 3/4, more than half the post alone, 1 3/4; 2 + 2 3/4 = 4 3/4; 4 3/4 − 4 = 3/4
    {
      ask: 'Setback 2 in, pickets on the inside, 8 in holes and caps overhanging 1 in: how far inside the line do the posts go?',
      given: {
        setback: '2 in',
        picketSide: 'inside',
        postWidth: '3 1/2 in',
        holeDiameter: '8 in',
        capOverhang: '1 in',
      },
      expect: {
        postLineOffset: '4 3/4 in',
        holeInside: '3/4 in',
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
