// A gate that has dropped at the latch, turned level again by packing its bottom hinge out from the post.
//
//   ╪──────────┐        the leaf turns about its top hinge by drop ÷ width,
//   │          │        and the bottom hinge moves by that turn × hinges apart
//   ╪──────────┘ ↓ drop
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { latchDrop } from '../../words/gate-sag.ts'
import { hingeSpacing } from '../../words/gate-weight.ts'
import { leafWidth } from '../../words/gates.ts'
import { word } from '../../words/word.ts'

const hingePacking = word<'length'>('hingePacking', {
  kind: 'length',
  label: 'packing behind the bottom hinge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the hinge and the post, or the hinge and the leaf.',
  ask: 'How thick is the packing behind the bottom hinge?',
  called: { names: ['packing', 'shim'], asks: ['pack out the bottom hinge', 'shim the bottom hinge'] },
})

export const hingePackingOf = calculation({
  name: 'hinge-packing',
  title: 'A dropped gate: packing the bottom hinge',
  answers: 'How far the bottom hinge is packed out, or the top one let in, to lift the latch side by what it dropped.',
  needs: { latchDrop, leafWidth, hingeSpacing },
  gives: { hingePacking },
  headlines: ['hingePacking'],
  lines: {
    hingePacking: [
      'latchDrop * hingeSpacing / leafWidth',
      'the leaf turns as one: as far for its height as for its width',
    ],
  },
  work({ latchDrop, leafWidth }, { line, refuse, remark }) {
    if (!less(latchDrop, leafWidth))
      refuse(
        'latchDrop',
        `A leaf ${show(leafWidth)} wide cannot have dropped by ${show(latchDrop)}. Check both measurements.`,
      )
    line('hingePacking')
    remark(
      'That turns a leaf that is still square. Check its two diagonals and the hinge post first: a leaf out of square wants its brace mended, and a leaning post wants setting upright. The gap at the hinges grows at the bottom by the packing, and the foot of the leaf moves as far toward the latch: see that it still clears the latch post. Block the leaf up before you loosen a hinge.',
    )
  },
  sources: [
    {
      fact: 'packing ÷ hinges apart = drop ÷ width of the leaf, in a small turn',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['tools', 'lifting'],
  examples: [
    // 3/4 × 30 / 45 = 1/2
    {
      ask: 'The gate is 45 in wide and dropped 3/4 in at the latch, hinges 30 in apart: how much do I pack out the bottom hinge?',
      given: { latchDrop: '3/4 in', leafWidth: '45 in', hingeSpacing: '30 in' },
      expect: { hingePacking: '1/2 in' },
    },
    // 18 × 600 / 900 = 12
    {
      ask: 'A gate 900 mm wide sits 18 mm low at the latch, its hinges are 600 mm apart. How thick a shim behind the bottom hinge?',
      given: { latchDrop: '18 mm', leafWidth: '900 mm', hingeSpacing: '600 mm' },
      expect: { hingePacking: '12 mm' },
    },
  ],
})
