// What is dug out for a strip, and how often the barrow goes.
import { calculation } from '../../calculation.ts'
import { edgeRun, edgeWidth } from '../../words/border.ts'
import { barrows, barrowSize, soilOut, soilSwell, spoilDepth } from '../../words/spoil.ts'

export const stripBed = calculation({
  name: 'strip-bed',
  title: 'Soil dug out for the strip',
  answers: 'How much sod and soil a trench for the strip gives, loose, and how many barrow loads.',
  needs: { edgeRun, edgeWidth, spoilDepth, soilSwell, barrowSize },
  gives: { soilOut, barrows },
  headlines: ['soilOut', 'barrows'],
  together: { soilOut: ['soilOut', 'barrows'], barrows: ['barrows', 'soilOut'] },
  called: ['trench', 'dug out', 'dig out', 'excavate'],
  lines: {
    inGround: ['edgeRun * edgeWidth * spoilDepth', 'as it lay in the ground'],
    soilOut: ['inGround * (1 + soilSwell)', 'dug soil takes more room'],
    barrows: ['ceil(soilOut / barrowSize)', 'whole loads'],
  },
  work(_given, { line, remark }) {
    for (const name of ['inGround', 'soilOut', 'barrows']) line(name)
    remark(
      'Have the buried lines located before you trench: edging trenches cut cables too. Stack the sod apart, grass to grass; it rots to good soil. Never bank soil against the fence.',
    )
  },
  sources: [
    { fact: 'volume = length × width × depth', from: 'Derived here; needs no table.' },
    {
      fact: 'loose volume = volume in the ground × (1 + swell)',
      from: 'Definition of swell in earthwork; common practice, no source for the figure',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'lifting'],
  examples: [
    // 50 × 0.75 × 0.5 = 18.75; × 1.25 = 23.4375 ft³ = 0.868 yd³; ÷ 3 = 7.8 → 8
    {
      ask: 'How much soil comes out of a trench for the strip 50 ft long, 9 in wide, dug 6 in deep, and how many barrow loads?',
      given: { edgeRun: '50 ft', edgeWidth: '9 in', spoilDepth: '6 in' },
      expect: { soilOut: '0.8681 yd³', barrows: '8 loads' },
    },
    // 15 × 0.3 × 0.2 = 0.9; × 1.25 = 1.125 m³; ÷ 85 L = 13.2 → 14
    {
      ask: 'Strip 15 m long and 300 mm wide, dug out 200 mm: how many barrow loads?',
      given: { edgeRun: '15 m', edgeWidth: '300 mm', spoilDepth: '200 mm' },
      expect: { soilOut: '1.125 m³', barrows: '14 loads' },
    },
  ],
})
