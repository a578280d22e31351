// Pointed picket tops.
//
//     ╱╲       point: height = half the width ÷ tan(half the angle)
//    ╱  ╲      cut from square = 90° − half the angle
//   │    │ ◄── shoulder
import { calculation } from '../../calculation.ts'
import { pointedTopDrawing } from '../../drawings/pointed-top.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { picketLength, picketWidth } from '../../words/pickets.ts'
import { pointAngle, pointCut, pointRise, shoulderHeight } from '../../words/picket-tops.ts'

export const pointedTop = calculation({
  name: 'pointed-top',
  title: 'Pointed tops',
  answers: 'How high the point of a picket is, where its shoulders are marked and at which angle it is cut.',
  needs: { picketWidth, pointAngle, picketLength },
  onlyFor: { picketLength: ['shoulderHeight'] },
  gives: { pointRise, pointCut, shoulderHeight },
  headlines: ['pointRise', 'pointCut'],
  together: {
    pointRise: ['pointRise', 'pointCut', 'shoulderHeight'],
    pointCut: ['pointCut', 'pointRise'],
  },
  lines: {
    pointRise: ['picketWidth / 2 / tan(pointAngle / 2)', 'each slope runs over half the width'],
    pointCut: ['90 - pointAngle / 2', 'counted from a square cut'],
    shoulderHeight: ['picketLength - pointRise', 'down from the tip'],
  },
  work(_given, { line, has, rows, refuse, remark }) {
    const rise = line('pointRise')
    line('pointCut')
    if (has('picketLength')) {
      const long = rows('picketLength')[0] as typeof rise
      if (!less(rise, long))
        refuse(
          'picketLength',
          `A point ${show(rise)} high leaves nothing of a ${show(long)} picket. Check the angle and the length.`,
        )
      line('shoulderHeight')
    }
    remark(
      'Clamp a stop to the saw, so that all shoulders are alike. Blunt the tip a little: needle points break, and hurt.',
    )
  },
  sources: [
    { fact: 'point = half the width ÷ tan(half the angle)', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  drawing: pointedTopDrawing,
  examples: [
    // 1.75 / tan 45 = 1.75; 45; 42 − 1.75
    {
      ask: 'How high is the point on 3 1/2 in pickets with a 90 degree point, pickets 42 in long?',
      given: { picketWidth: '3 1/2 in', pointAngle: '90 deg', picketLength: '42 in' },
      expect: { pointRise: '1.75 in', pointCut: '45°', shoulderHeight: '40.25 in' },
    },
    // 35 / tan 30 = 60.62
    {
      ask: 'What angle do I cut the points for a 60 degree point on 70 mm pickets?',
      given: { picketWidth: '70 mm', pointAngle: '60 deg' },
      expect: { pointRise: '60.62 mm', pointCut: '60°' },
    },
  ],
})
