// The bed of mortar under the bricks of an edge.
//
//   ▭▭▭▭▭▭▭▭
//   ░░░░░░░░  bed: length × width × depth
import { calculation } from '../../calculation.ts'
import { edgeRun, edgeWidth } from '../../words/border.ts'
import { mortarBed, mortarDepth } from '../../words/mortar.ts'

export const brickMortar = calculation({
  name: 'brick-mortar',
  title: 'Mortar under the bricks',
  answers: 'How much mortar the bed under a brick edge takes, by its length, width and depth.',
  needs: { edgeRun, edgeWidth, mortarDepth },
  gives: { mortarBed },
  headlines: ['mortarBed'],
  called: ['mortar bed', 'bed of mortar'],
  lines: { mortarBed: ['edgeRun * edgeWidth * mortarDepth', 'the bed alone'] },
  work(_given, { line, remark }) {
    line('mortarBed')
    remark('Joints between the bricks, and what falls off the trowel, come on top. Mix a little at a time.')
  },
  sources: [{ fact: 'volume = length × width × depth', from: 'Plain arithmetic; needs no table.' }],
  cautions: ['lifting', 'wet-cement', 'dust'],
  examples: [
    // 480 × 8 × 1 = 3840 in³ = 2.222 ft³
    {
      ask: 'How much mortar for a bed of mortar 1 in deep and 8 in wide under a brick edge 40 ft long?',
      given: { edgeRun: '40 ft', edgeWidth: '8 in', mortarDepth: '1 in' },
      expect: { mortarBed: '2.222 ft³' },
    },
    // 10 × 0.2 × 0.025 = 0.05 m³
    {
      ask: 'Brick edge 10 m long, mortar bed 200 mm wide and 25 mm deep: how many litres of mortar?',
      given: { edgeRun: '10 m', edgeWidth: '200 mm', mortarDepth: '25 mm' },
      expect: { mortarBed: '50 L' },
    },
  ],
})
