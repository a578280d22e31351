// A picket with a rounded top: half round, or flatter.
//
//      .-◄-.        tip
//    /   │   \      rise = R − √(R² − width² / 4)
//   │----│----│ ◄── shoulders
//   │    ✕    │     the compass stands a radius R below the tip: on the shoulder line for a half round, lower for a flatter top
import { calculation } from '../../calculation.ts'
import { roundTopDrawing } from '../../drawings/picket-top.ts'
import { subtract } from '../../quantities/amount.ts'
import { equal, less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { picketLength, picketWidth } from '../../words/pickets.ts'
import {
  compassPoint,
  cornersLost,
  roundLength,
  roundRadius,
  roundRise,
  shoulderHeight,
  wantedRadius,
  wantedRise,
} from '../../words/picket-tops.ts'

export const roundedTop = calculation({
  name: 'rounded-top',
  title: 'Rounded tops',
  answers:
    'The radius and rise of a half-round or flatter picket top, how long its cut is, where the compass stands, and what is cut away at the corners.',
  needs: { picketWidth, wantedRadius, wantedRise, picketLength },
  may: ['wantedRadius', 'wantedRise'],
  onlyFor: { picketLength: ['shoulderHeight'] },
  gives: { roundRadius, roundRise, roundLength, compassPoint, cornersLost, shoulderHeight },
  headlines: ['roundRadius', 'roundRise'],
  together: {
    roundRadius: ['roundRadius', 'roundRise', 'compassPoint', 'roundLength', 'cornersLost'],
    roundRise: ['roundRise', 'roundRadius', 'compassPoint'],
    roundLength: ['roundLength', 'roundRadius', 'roundRise'],
    compassPoint: ['compassPoint', 'roundRadius', 'roundRise'],
    cornersLost: ['cornersLost', 'roundRise'],
  },
  called: ['rounded top', 'round top', 'half round', 'half-round', 'rounded tops', 'round tops'],
  locals: { radius: 'length', rise: 'length', halfAngle: 'angle' },
  lines: {
    halfWidth: ['picketWidth / 2', 'a half round has half the width for its radius'],
    riseOfRadius: [
      'wantedRadius - sqrt(wantedRadius ^ 2 - picketWidth ^ 2 / 4)',
      'the circle’s height over its chord, the chord being the width',
    ],
    radiusOfRise: [
      '(picketWidth ^ 2 / 4 + wantedRise ^ 2) / (2 * wantedRise)',
      'the circle through both shoulders and the tip',
    ],
    compassPoint: ['radius', 'a radius down the middle line from the tip'],
    halfAngle: ['asin(picketWidth / 2 / radius)', 'from the middle line to a shoulder, seen from the compass point'],
    roundLength: ['pi * radius * halfAngle / 90', 'the share of a whole circle that is cut'],
    rounded: [
      'pi * radius ^ 2 * halfAngle / 180 - picketWidth / 2 * (radius - rise)',
      'the slice of the circle, less the triangle under the shoulders',
    ],
    cornersLost: ['picketWidth * rise - rounded', 'what a square top would have had'],
    shoulderHeight: ['picketLength - rise', 'down from the tip'],
  },
  work({ picketWidth, wantedRadius, wantedRise }, { line, has, put, tell, rows, refuse, remark, cite }) {
    const half = line('halfWidth')
    if (has('wantedRadius')) {
      if (less(wantedRadius, half))
        refuse(
          'wantedRadius',
          `A radius of ${show(wantedRadius)} does not reach from the middle of a ${show(picketWidth)} picket to its edges: at least ${cite(half, 'radius of a half round')} is needed. Check both.`,
        )
      const rise = put('rise', line('riseOfRadius'))
      put('radius', wantedRadius)
      if (has('wantedRise') && (less(rise, wantedRise) || less(wantedRise, rise)))
        refuse(
          'wantedRise',
          `A radius of ${show(wantedRadius)} on a ${show(picketWidth)} picket rises by ${cite(rise, 'rise with that radius')}, not by ${show(wantedRise)}. Give me one of the two.`,
        )
    } else if (has('wantedRise')) {
      if (less(half, wantedRise))
        refuse(
          'wantedRise',
          `A rise of ${show(wantedRise)} is more than half of a ${show(picketWidth)} picket: the round would bulge past its edges. At most ${cite(half, 'rise of a half round')} is possible.`,
        )
      put('rise', wantedRise)
      put('radius', line('radiusOfRise'))
    } else {
      put('radius', half)
      put('rise', half)
      remark('You named no radius and no rise, so this is a half round. Say either for a flatter top.')
    }
    const [radius, rise] = ['radius', 'rise'].map((it) => rows(it)[0]) as [Quantity, Quantity]
    tell('roundRadius', radius)
    tell('roundRise', rise)
    for (const name of ['compassPoint', 'halfAngle', 'roundLength', 'rounded', 'cornersLost']) line(name)
    if (has('picketLength')) {
      const long = rows('picketLength')[0] as Quantity
      if (!less(rise, long))
        refuse(
          'picketLength',
          `A round that rises ${show(rise)} leaves nothing of a ${show(long)} picket. Check the width and the length.`,
        )
      line('shoulderHeight')
    }
    if (!equal(radius, half) && less(half, radius)) {
      const below: Quantity = { ...half, amount: subtract(radius.amount, rise.amount) }
      remark(
        `The compass stands ${cite(below, 'compass point below the shoulders')} below the shoulders. Draw the middle line that far down on the template.`,
      )
    }
    remark(
      'Make one template of thin board, trace it on every picket, and saw just outside the line; sand to it with a stack clamped together. A round top sheds rain from the end grain: seal it.',
    )
  },
  sources: [
    {
      fact: 'rise = R − √(R² − width²/4); cut = the circle’s arc; cut away = the square corner less the slice of the circle',
      from: 'Plane geometry of the circle; derived here from the sketch.',
    },
    { fact: 'one template for all, sanded in a stack', from: 'common practice, no source' },
  ],
  cautions: ['tools', 'dust'],
  drawing: roundTopDrawing,
  examples: [
    // 3.5/2 = 1.75; π × 1.75 = 5.498; 3.5 × 1.75 − π × 1.75²/2 = 6.125 − 4.811 = 1.314; 42 − 1.75
    {
      ask: 'What radius for a half round top on 3 1/2 in pickets, 42 in long?',
      given: { picketWidth: '3 1/2 in', picketLength: '42 in' },
      expect: {
        roundRadius: '1 3/4 in',
        roundRise: '1 3/4 in',
        compassPoint: '1 3/4 in',
        roundLength: '5.498 in',
        cornersLost: '1.314 in²',
        shoulderHeight: '40 1/4 in',
      },
    },
    // (35² + 20²)/40 = 1625/40 = 40.625; asin(35/40.625) = 59.49°; π × 40.625 × 59.49/90 = 84.36
    {
      ask: 'What radius for rounded tops on 70 mm pickets with a rise of 20 mm, and how long is the rounded cut?',
      given: { picketWidth: '70 mm', wantedRise: '20 mm' },
      expect: { roundRadius: '40.625 mm', roundRise: '20 mm', roundLength: '84.36 mm' },
    },
  ],
})
