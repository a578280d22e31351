// Whether a gate clears the ground as it swings, and the room its square edge needs.
//
//           ┌──────────┐          shut, the ground is level under it; open, the ground has risen by slope × width
//     ┃     │   leaf   │
//   ──┃─────┴──────────┴──╱╱──    gap below − rise = what is left under the latch end
import { calculation } from '../../calculation.ts'
import { gateSwingDrawing } from '../../drawings/gate-swing.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { edgeRoom, gateClears, gateGapBelow, leafThickness, swingRise } from '../../words/gate-swing.ts'
import { leafWidth } from '../../words/gates.ts'
import { slope } from '../../words/slopes.ts'

export const gateSwing = calculation({
  name: 'gate-swing',
  title: 'A gate that swings over rising ground',
  answers:
    'How much the ground rises under a gate as it swings uphill, whether the leaf clears it, and the room its edge needs past the latch post.',
  needs: { leafWidth, slope, gateGapBelow, leafThickness },
  onlyFor: { slope: ['swingRise', 'gateClears'], gateGapBelow: ['gateClears'] },
  gives: { swingRise, gateClears, edgeRoom },
  headlines: ['gateClears', 'swingRise'],
  together: { gateClears: ['gateClears', 'swingRise'], swingRise: ['swingRise', 'gateClears'] },
  lines: {
    swingRise: ['slope * leafWidth', 'open, the leaf reaches uphill by its own width'],
    reach: [
      'sqrt(leafWidth ^ 2 + leafThickness ^ 2)',
      'the far corner of the edge swings on a longer arc than the face',
    ],
    edgeRoom: ['reach - leafWidth', 'so the latch gap must be at least that'],
  },
  work(given, { line, has, tell, remark, rows }) {
    if (has('slope')) {
      const rise = line('swingRise')
      if (has('gateGapBelow')) {
        const gap = rows('gateGapBelow')[0] as Quantity
        const fits = less(rise, gap)
        tell('gateClears', fits)
        remark(
          fits
            ? `Decided by: a rise of ${show(rise)} against a gap of ${show(gap)} under the shut gate.`
            : `Decided by: a rise of ${show(rise)} against a gap of only ${show(gap)} under the shut gate. Swing it downhill, hang it on rising hinges, or raise or cut its bottom edge.`,
        )
      } else remark('The gap under the shut gate must be more than that rise, or the gate swings the other way.')
      remark(
        `Walk the arc with a level from the hinge post: ground is never as even as one figure for its slope (${show(given.slope)}).`,
      )
    }
    line('reach')
    line('edgeRoom')
  },
  sources: [
    {
      fact: 'rise = slope × width for a gate opened square to its line, straight up the slope',
      from: 'Derived here from the sketch; needs no table.',
    },
    {
      fact: 'the far corner of a square edge is √(width² + thickness²) from the hinge line',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: gateSwingDrawing,
  examples: [
    // 8 % of 42 = 3.36; √(42² + 1.5²) − 42 = 0.0268
    {
      ask: 'A gate 42 in wide and 1 1/2 in thick swings uphill on a slope of 8 %, with 2 in under the gate. Will it drag?',
      given: { leafWidth: '42 in', slope: '8 %', gateGapBelow: '2 in', leafThickness: '1 1/2 in' },
      expect: { swingRise: '3 9/25 in', gateClears: 'the leaf drags on the ground', edgeRoom: '0.02678 in' },
    },
    // 3 % of 1000 = 30 < 50
    {
      ask: 'Gate 1000 mm wide, ground slope 3 %, 50 mm off the ground: will the gate clear?',
      given: { leafWidth: '1000 mm', slope: '3 %', gateGapBelow: '50 mm' },
      expect: { swingRise: '30 mm', gateClears: 'the leaf clears the ground' },
    },
  ],
})
