// How far the latch end of a gate falls when its post leans toward the opening.
//
//   ╲           the leaf stands square to its post: the post leans by an angle, the leaf tips by the same angle
//    ╲━━━━━━    out ÷ height = tan of that angle; the latch end moves by width × sin of it
//     ╲   ↓
import { calculation } from '../../calculation.ts'
import { postLeanDrawing } from '../../drawings/post-lean.ts'
import { show } from '../../quantities/show.ts'
import { sagLines } from '../../sag.ts'
import { latchMove, leanAngle, outOfPlumb, plumbOver } from '../../words/gate-swing.ts'
import { leafWidth } from '../../words/gates.ts'

export const gatePostLean = calculation({
  name: 'gate-post-lean',
  title: 'A leaning hinge post, and what it does to the gate',
  answers:
    'The angle of a leaning post from how far it is out of plumb, and how far the latch end of the gate moves for it.',
  needs: { outOfPlumb, plumbOver, leafWidth },
  onlyFor: { leafWidth: ['latchMove'] },
  gives: { leanAngle, latchMove },
  headlines: ['latchMove'],
  together: { latchMove: ['latchMove', 'leanAngle'] },
  lines: {
    leanAngle: sagLines.leanAngle,
    latchMove: sagLines.latchMove,
  },
  work(_given, { line, has, remark }) {
    line('leanAngle')
    if (!has('leafWidth')) return
    const move = line('latchMove')
    remark(
      `When the post leans toward the opening the latch end falls by ${show(move)}; when it leans away, it rises as much. Set the post plumb again: planing the gate mends nothing.`,
    )
  },
  sources: [
    { fact: 'out of plumb ÷ height = tangent of the lean', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['structure', 'open-hole'],
  drawing: postLeanDrawing,
  examples: [
    // atan(1/48) = 1.1935°, shown as 1.193; 42 × sin = 0.8748
    {
      ask: 'The hinge post leans 1 in over 48 in. How far does the latch end of a 42 in wide gate drop?',
      given: { outOfPlumb: '1 in', plumbOver: '48 in', leafWidth: '42 in' },
      expect: { leanAngle: '1.193°', latchMove: '0.8748 in' },
    },
    // atan(20/1200) = 0.9548°; 900 × sin = 15.00
    {
      ask: 'Post out of plumb 20 mm over 1200 mm, gate 900 mm wide: how much does the latch drop?',
      given: { outOfPlumb: '20 mm', plumbOver: '1200 mm', leafWidth: '900 mm' },
      expect: { leanAngle: '0.9548°', latchMove: '15 mm' },
    },
  ],
})
