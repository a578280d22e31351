// A picket with both corners of its top clipped. "Dog-eared" is the trade's word for it.
//
//     along the top
//    ◄──►
//      ╱────╲  ▲
//     ╱      ╲ ▼ down the edge = along the top × tan of the angle from square
//    │        │
import { calculation } from '../../calculation.ts'
import { clippedDrawing } from '../../drawings/picket-top.ts'
import { less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { picketLength, picketWidth } from '../../words/pickets.ts'
import {
  clipAcross,
  clipAngle,
  clipCut,
  clipDown,
  clipLength,
  clipShoulder,
  cornersLost,
  flatTop,
  shoulderHeight,
} from '../../words/picket-tops.ts'

const plain = quantity(45, 'deg')

export const clippedCorners = calculation({
  name: 'clipped-corners',
  title: 'Clipped corners',
  answers:
    'The two cuts of a picket with clipped (dog-eared) corners: where each is marked, how long it is, its angle, and what is left flat on top.',
  needs: { picketWidth, clipAcross, clipDown, clipAngle, picketLength },
  may: ['clipDown', 'clipAngle'],
  onlyFor: { picketLength: ['shoulderHeight'] },
  gives: { clipLength, clipShoulder, clipCut, flatTop, cornersLost, shoulderHeight },
  headlines: ['clipLength', 'clipShoulder'],
  together: {
    clipLength: ['clipLength', 'clipShoulder', 'clipCut', 'flatTop'],
    clipShoulder: ['clipShoulder', 'clipLength', 'clipCut'],
    clipCut: ['clipCut', 'clipShoulder', 'clipLength'],
    flatTop: ['flatTop', 'clipLength', 'clipShoulder'],
  },
  called: ['dog-eared', 'dog eared', 'dog ear', 'dog ears', 'clipped corners', 'clip the corners'],
  locals: { down: 'length', angle: 'angle' },
  lines: {
    flatTop: ['picketWidth - 2 * clipAcross', 'a corner is clipped at both sides'],
    angleOfBoth: ['atan(clipDown / clipAcross)', 'the slope of the cut, counted from a square one'],
    downByAngle: ['clipAcross * tan(clipAngle)', 'the steeper the cut, the further down it reaches'],
    clipShoulder: ['down', 'where the cut meets the edge'],
    clipCut: ['angle', 'from a square cut'],
    clipLength: ['sqrt(clipAcross ^ 2 + down ^ 2)', 'the long side of the corner that falls off'],
    cornersLost: ['clipAcross * down', 'two corners, each half of its sides multiplied'],
    shoulderHeight: ['picketLength - down', 'down from the top'],
  },
  work({ picketWidth, clipAcross, clipDown, clipAngle }, { line, has, put, rows, refuse, remark }) {
    const flat = line('flatTop')
    if (less(flat, zero('length', flat.unit)))
      refuse(
        'clipAcross',
        `Two corners clipped ${show(clipAcross)} along the top are more than a ${show(picketWidth)} picket is wide. Check both.`,
      )
    if (has('clipDown') && has('clipAngle'))
      refuse(
        'clipAngle',
        `The cut is set by ${show(clipDown)} down the edge already; ${show(clipAngle)} besides would be a second answer. Give me one of the two.`,
      )
    if (has('clipDown')) {
      put('down', clipDown)
      put('angle', line('angleOfBoth'))
    } else if (has('clipAngle')) {
      put('down', line('downByAngle'))
      put('angle', clipAngle)
    } else {
      put('down', clipAcross)
      put('angle', plain)
      remark('You gave one size, so both cuts are at 45°: as far down the edge as along the top.')
    }
    for (const name of ['clipShoulder', 'clipCut', 'clipLength', 'cornersLost']) line(name)
    if (has('picketLength')) {
      const [down, long] = [rows('down')[0], rows('picketLength')[0]] as [Quantity, Quantity]
      if (!less(down, long))
        refuse(
          'picketLength',
          `A cut that reaches ${show(down)} down the edge leaves nothing of a ${show(long)} picket. Check the two.`,
        )
      line('shoulderHeight')
    }
    if (!less(zero('length', flat.unit), flat)) remark('The two cuts meet in the middle: that is a point.')
    remark('Clamp a stop to the saw and turn each picket over for its second corner, so that all of them are alike.')
  },
  sources: [
    {
      fact: 'down = along × tan(angle); cut = √(along² + down²)',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'both cuts at 45° where one size is named', from: 'common practice, no source' },
  ],
  cautions: ['tools'],
  drawing: clippedDrawing,
  examples: [
    // √(1 + 1) = 1.414; 5.5 − 2 = 3.5
    {
      ask: 'Dog-eared pickets 5 1/2 in wide with the corners clipped 1 in: how long is each cut, and how much flat is left on top?',
      given: { picketWidth: '5 1/2 in', clipAcross: '1 in' },
      expect: { clipLength: '1.414 in', clipShoulder: '1 in', clipCut: '45°', flatTop: '3 1/2 in' },
    },
    // √(20² + 40²) = 44.72; atan 2 = 63.43; 90 − 40 = 50
    {
      ask: 'Clipped corners on 90 mm pickets, clipped 20 mm along the top and 40 mm down the edge: what angle for the corners?',
      given: { picketWidth: '90 mm', clipAcross: '20 mm', clipDown: '40 mm' },
      expect: { clipLength: '44.72 mm', clipCut: '63.43°', clipShoulder: '40 mm', flatTop: '50 mm' },
    },
  ],
})
