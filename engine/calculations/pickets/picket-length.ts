// How long a picket is for a fence of given height that stands clear of the ground.
//
//   ▲ ▲ ▲   ─── overall height
//   █ █ █
//   █ █ █   ─── foot of the pickets
//           ─── ground
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { fenceHeight } from '../../words/boundary.ts'
import { footGap } from '../../words/framing.ts'
import { picketLength } from '../../words/pickets.ts'

export const picketLengthOf = calculation({
  name: 'picket-length',
  title: 'Picket length from the height of the fence',
  answers: 'How long a picket is for a fence of given overall height that stands clear of the ground.',
  needs: { fenceHeight, footGap },
  gives: { picketLength },
  headlines: ['picketLength'],
  lines: { picketLength: ['fenceHeight - footGap', 'the overall height, less what is clear below'] },
  work({ fenceHeight, footGap }, { line, refuse, remark }) {
    if (!less(footGap, fenceHeight))
      refuse('footGap', `A fence ${show(fenceHeight)} high cannot stand ${show(footGap)} clear. Check both.`)
    line('picketLength')
    remark(
      'It is the picket’s top that I took for the height. Where a cap or a post stands higher, take that off first.',
    )
  },
  sources: [{ fact: 'height = picket + clearance below', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // 48 − 3
    {
      ask: 'A fence 48 in tall overall and 3 in off the ground: how long are the pickets?',
      given: { fenceHeight: '48 in', footGap: '3 in' },
      expect: { picketLength: '45 in' },
    },
    // 1000 − 60
    {
      ask: 'Total height 1000 mm with 60 mm clear of the ground: what picket length?',
      given: { fenceHeight: '1000 mm', footGap: '60 mm' },
      expect: { picketLength: '940 mm' },
    },
  ],
})
