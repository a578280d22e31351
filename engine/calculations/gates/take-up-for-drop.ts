// How much a cable must be taken up, from how far the latch side has dropped.
//
//   h┌──────────┐l        the rails keep their length, the latch side sinks by the drop
//    │╲         │         tie² = width² + height² + 2 × height × drop
//    │  ╲       │ ↓       square: tie² = width² + height²
//   h└──────────┘l
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { latchDrop, squareDiagonal, takeUp } from '../../words/gate-sag.ts'
import { leafHeight, leafWidth } from '../../words/gates.ts'

export const takeUpForDrop = calculation({
  name: 'take-up-for-drop',
  title: 'A sagging gate: the cable for its drop',
  answers:
    'How much a cable or turnbuckle, from the top hinge to the bottom latch corner, must be taken up when the latch side has dropped so far.',
  needs: { latchDrop, leafWidth, leafHeight },
  gives: { takeUp, squareDiagonal },
  headlines: ['takeUp'],
  together: { takeUp: ['takeUp', 'squareDiagonal'] },
  lines: {
    squareDiagonal: ['sqrt(leafWidth ^ 2 + leafHeight ^ 2)', 'square again, both diagonals are alike'],
    tie: [
      'sqrt(leafWidth ^ 2 + leafHeight ^ 2 + 2 * leafHeight * latchDrop)',
      'sagged, the cable’s diagonal has grown',
    ],
    takeUp: ['tie - squareDiagonal', 'so much shorter must it become'],
  },
  work({ latchDrop, leafHeight, leafWidth }, { line, refuse, remark }) {
    if (!less(latchDrop, leafHeight) || !less(latchDrop, leafWidth))
      refuse(
        'latchDrop',
        `A leaf ${show(leafWidth)} by ${show(leafHeight)} cannot have dropped by ${show(latchDrop)}. Check the three.`,
      )
    line('squareDiagonal')
    line('tie')
    line('takeUp')
    remark(
      'That is for a leaf that has leaned out of square on a plumb post. Hold a level to the hinge post first: where it leans, or a hinge gives, a cable mends nothing. Lift the latch end on a block before you tighten.',
    )
  },
  sources: [
    {
      fact: 'tie² = width² + height² + 2 × height × drop, where the rails keep their length',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['tools', 'lifting'],
  examples: [
    // √(42² + 40²) = √3364 = 58; √(3364 + 2 × 40 × 1) = √3444 = 58.6856
    {
      ask: 'My gate is 42 in wide and 40 in tall and has dropped 1 in at the latch: how much take-up for the turnbuckle?',
      given: { latchDrop: '1 in', leafWidth: '42 in', leafHeight: '40 in' },
      expect: { takeUp: '0.6856 in', squareDiagonal: '58 in' },
    },
    // √(900² + 1200²) = 1500; √(2,250,000 + 2 × 1200 × 25) = √2,310,000 = 1519.868
    {
      ask: 'Gate 900 mm wide, 1200 mm high, sunk 25 mm at the latch: how much must the cable be taken up?',
      given: { latchDrop: '25 mm', leafWidth: '900 mm', leafHeight: '1200 mm' },
      expect: { takeUp: '19.87 mm', squareDiagonal: '1,500 mm' },
    },
  ],
})
