// A square corner: the diagonal that makes it square, and what a measured diagonal says of the corner as it stands.
//
//   second side
//   │╲
//   │  ╲ c        c² = a² + b² when the corner is square; 3-4-5 and its multiples come out in whole numbers
//  b│    ╲
//   │      ╲      c longer: the corner stands open; c shorter: it is pinched
//   └────────
//        a        first side
import { calculation } from '../../calculation.ts'
import { cornerDrawing } from '../../drawings/corner.ts'
import { absolute, add, compare, exact, floor, over, subtract, times } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { tapeMark } from '../../words/pickets.ts'
import {
  cornerAngle,
  legs,
  measuredDiagonal,
  moveStake,
  offsetPerHundred,
  outOfSquare,
  squareAcross,
} from '../../words/survey.ts'

export const squareCorner = calculation({
  name: 'square-corner',
  title: 'A square corner',
  answers:
    'The diagonal that makes a corner square, the biggest 3-4-5 that fits, and from a measured diagonal how far the corner is out and how far to move the far stake.',
  needs: { legs, measuredDiagonal, tapeMark },
  may: ['measuredDiagonal'],
  onlyFor: { measuredDiagonal: ['cornerAngle', 'outOfSquare', 'moveStake', 'offsetPerHundred'] },
  gives: { squareAcross, cornerAngle, outOfSquare, moveStake, offsetPerHundred },
  headlines: ['squareAcross'],
  together: {
    squareAcross: ['squareAcross', 'cornerAngle', 'moveStake'],
    cornerAngle: ['cornerAngle', 'outOfSquare', 'moveStake', 'squareAcross'],
    moveStake: ['moveStake', 'outOfSquare', 'squareAcross'],
  },
  called: ['3-4-5', '3 4 5'],
  locals: { legA: 'length', legB: 'length', hundredFeet: 'length' },
  lines: {
    squareAcross: ['sqrt(legA ^ 2 + legB ^ 2)', 'the two sides squared and added, and the root of that'],
    cosine: ['(legA ^ 2 + legB ^ 2 - measuredDiagonal ^ 2) / (2 * legA * legB)', 'the law of cosines'],
    cornerAngle: ['acos(cosine)', 'the angle between the two sides'],
    outOfSquare: ['abs(cornerAngle - 90)', 'a square corner has 90°'],
    moveStake: [
      '2 * legB * sin(outOfSquare / 2)',
      'the second side swings about the corner stake, and its length stays',
    ],
    offTheMark: ['abs(measuredDiagonal - squareAcross)', 'what the tape shows too much or too little'],
    offsetPerHundred: ['hundredFeet * sin(outOfSquare)', 'so far would the fence have run off'],
  },
  work({ tapeMark }, { line, has, rows, put, tell, refuse, remark, cite, system }) {
    const [legA, legB, more] = rows('legs')
    if (!legA || !legB || more)
      return refuse(
        'legs',
        `A corner has two sides, and I have ${show(quantity(rows('legs').length, 'side'))}. Give the first and the second, from the corner.`,
      )
    put('legA', legA)
    put('legB', legB)
    const right = line('squareAcross')
    const unit = quantity(1, system === 'metric' ? 'm' : 'ft')
    const [short, long] = less(legA, legB) ? [legA, legB] : [legB, legA]
    const step = (side: Quantity, parts: number) => floor(over(side.amount, times(unit.amount, exact(parts)))).whole
    const times345 = step(short, 3).compare(step(long, 4)) < 0 ? step(short, 3) : step(long, 4)
    const leg = (parts: number): Quantity => ({ ...unit, amount: times(unit.amount, times345.mul(parts)) })
    if (times345.compare(1) >= 0)
      remark(
        `The biggest 3-4-5 in whole ${system === 'metric' ? 'metres' : 'feet'} that fits: ${cite(leg(3), 'three')} one way, ${cite(leg(4), 'four')} the other, ${cite(leg(5), 'five')} straight across. The longer the sides, the truer the corner.`,
      )
    if (!has('measuredDiagonal')) return
    const measured = rows('measuredDiagonal')[0] as Quantity
    const [sum, difference] = [add(legA.amount, legB.amount), absolute(subtract(legA.amount, legB.amount))]
    if (compare(measured.amount, sum) !== -1 || compare(measured.amount, difference) !== 1)
      refuse(
        'measuredDiagonal',
        `Sides of ${show(legA)} and ${show(legB)} cannot have ${show(measured)} across: it must be less than both together and more than their difference. Measure the three again.`,
      )
    // What a tape cannot show is square: the measure lies no further from it than half a mark.
    const off = line('offTheMark')
    if (compare(off.amount, over(tapeMark.amount, exact(2))) !== 1) {
      tell('cornerAngle', quantity(90, 'deg'))
      tell('outOfSquare', quantity(0, 'deg'))
      for (const name of ['moveStake', 'offsetPerHundred']) tell(name, quantity(0, system === 'metric' ? 'mm' : 'in'))
      remark(
        `Decided by: ${show(measured)} across, which is what a square corner has, as near as a tape with marks of ${show(tapeMark)} shows.`,
      )
      return
    }
    line('cosine')
    const angle = line('cornerAngle')
    line('outOfSquare')
    const move = line('moveStake')
    put('hundredFeet', quantity(100, 'ft'))
    line('offsetPerHundred')
    const open = compare(measured.amount, right.amount) === 1
    remark(
      `Decided by: ${show(measured)} across against ${show(right)}. The corner has ${show(angle)}: it stands ${open ? 'open' : 'pinched'}. Move the far stake of the second side ${open ? `in toward the first side by ${show(move)}` : `out from the first side by ${show(move)}`}, and keep its distance from the corner.`,
    )
  },
  sources: [
    {
      fact: 'a² + b² = c² in a square corner; cos C = (a² + b² − c²) / 2ab in any',
      from: 'Plane geometry (Euclid, Elements, I.47 and II.12–13); needs no table.',
    },
    { fact: 'the offset is given for a hundred feet, which is 30.48 m', from: 'Chosen here.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: cornerDrawing,
  examples: [
    // 12² + 16² = 400, √400 = 20
    {
      ask: 'What should the diagonal be for a square corner with sides of 12 ft and 16 ft?',
      given: { legs: ['12 ft', '16 ft'] },
      expect: { squareAcross: '20 ft' },
    },
    // cos C = (144 + 256 − 410.0625)/384 = −0.026204; C = 91.5016°; 2 × 192 × sin(0.7508°) = 5.032
    {
      ask: 'Is my corner square? I have 12 ft on the first side, 16 ft on the second side and 20 ft 3 in across.',
      given: { legs: ['12 ft', '16 ft'], measuredDiagonal: '20 ft 3 in' },
      expect: { cornerAngle: '91.5°', outOfSquare: '1.502°', moveStake: '5.032 in' },
    },
    // 3² + 4² = 5²; measured 5 m exactly
    {
      ask: 'Corner with 3 m on one side and 4 m on the other side, diagonal measures 4.98 m. How far do I move the stake?',
      given: { legs: ['3 m', '4 m'], measuredDiagonal: '4.98 m' },
      expect: { squareAcross: '5 m', cornerAngle: '89.52°', moveStake: '33.27 mm' },
    },
  ],
})
