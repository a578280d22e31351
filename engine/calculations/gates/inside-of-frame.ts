// The inside of a gate's frame, from its outside and the stock it is made of.
//
//   ├────── leaf width ──────┤
//   ┌──┬──────────────────┬──┐ ─┬─
//   │  ├──────────────────┤  │  │
//   │  │◄─ inside width ─►│  │  leaf height: the inside height is less by the two rails
//   │  ├──────────────────┤  │  │
//   └──┴──────────────────┴──┘ ─┴─
import { calculation } from '../../calculation.ts'
import { less, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { insideHeight, insideWidth } from '../../words/gate-braces.ts'
import { leafHeight, leafWidth, memberWidth } from '../../words/gates.ts'

export const insideOfFrame = calculation({
  name: 'inside-of-frame',
  title: 'The inside of a gate’s frame',
  answers: 'How wide and how tall a gate’s frame is inside, where its brace goes, from its outside size and its stock.',
  needs: { leafWidth, leafHeight, memberWidth },
  onlyFor: { leafWidth: ['insideWidth'], leafHeight: ['insideHeight'] },
  usually: {
    memberWidth: {
      value: '3 1/2 in',
      metric: '90 mm',
      because: 'a 2x4 laid flat is 3 1/2 in across',
      from: 'PS 20, American Softwood Lumber Standard; the metric size is common practice, no source',
    },
  },
  gives: { insideWidth, insideHeight },
  headlines: ['insideWidth', 'insideHeight'],
  together: { insideWidth: ['insideWidth', 'insideHeight'], insideHeight: ['insideHeight', 'insideWidth'] },
  joins: true,
  lines: {
    insideWidth: ['leafWidth - 2 * memberWidth', 'a stile is taken off at each side'],
    insideHeight: ['leafHeight - 2 * memberWidth', 'a rail is taken off at the top and at the bottom'],
  },
  work({ memberWidth }, { line, has, rows, refuse, remark }) {
    const inside = (outside: 'leafWidth' | 'leafHeight', name: 'insideWidth' | 'insideHeight'): void => {
      if (!has(outside)) return
      const size = rows(outside)[0] as Quantity
      const left = line(name)
      if (!less(zero('length', 'in'), left))
        refuse(
          'memberWidth',
          `Two frame members of ${show(memberWidth)} leave nothing inside a leaf of ${show(size)}. Check both measurements.`,
        )
    }
    inside('leafWidth', 'insideWidth')
    inside('leafHeight', 'insideHeight')
    remark(
      'That is for a frame all round, its members laid flat and all alike. Where the frame is put together already, measure inside it.',
    )
  },
  sources: [
    {
      fact: 'inside = outside less a frame member at each side',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: [],
  examples: [
    // 36 − 2 × 3 1/2 = 29; 48 − 7 = 41
    {
      ask: 'A gate is 36 in wide and 48 in tall outside, with a 2x4 frame all round. How wide and how tall is the frame inside?',
      given: { leafWidth: '36 in', leafHeight: '48 in', memberWidth: '3 1/2 in' },
      expect: { insideWidth: '29 in', insideHeight: '41 in' },
    },
    // 1000 − 2 × 90 = 820; 1100 − 180 = 920
    {
      ask: 'Gate 1000 mm by 1100 mm outside, frame sticks 90 mm wide: the inside of the frame?',
      given: { leafWidth: '1000 mm', leafHeight: '1100 mm', memberWidth: '90 mm' },
      expect: { insideWidth: '820 mm', insideHeight: '920 mm' },
    },
  ],
})
