// Stone along the fence, by depth.
import { calculation } from '../../calculation.ts'
import { edgeDepth, edgeRun, edgeWidth, stripStone, stripStoneWeight, tonCovers, tonSize } from '../../words/border.ts'
import { gravelDensity } from '../../words/gravel.ts'

export const stoneStrip = calculation({
  name: 'stone-strip',
  title: 'A strip of stone along the fence',
  answers: 'How much stone a strip takes, what it weighs, and how much ground a ton covers at that depth.',
  needs: { edgeRun, edgeWidth, edgeDepth, gravelDensity, tonSize },
  onlyFor: { edgeRun: ['stripStone', 'stripStoneWeight'], edgeWidth: ['stripStone', 'stripStoneWeight'] },
  gives: { stripStone, stripStoneWeight, tonCovers },
  headlines: ['stripStone', 'stripStoneWeight'],
  together: {
    stripStone: ['stripStone', 'stripStoneWeight', 'tonCovers'],
    stripStoneWeight: ['stripStoneWeight', 'stripStone', 'tonCovers'],
  },
  lines: {
    stripStone: ['edgeRun * edgeWidth * edgeDepth', 'length times width times depth'],
    stripStoneWeight: ['stripStone * gravelDensity', 'loose stone'],
    tonCovers: ['tonSize / gravelDensity / edgeDepth', 'its volume, spread to that depth'],
  },
  work(_given, { line, has, remark }) {
    if (has('edgeRun') && has('edgeWidth')) {
      line('stripStone')
      line('stripStoneWeight')
    }
    line('tonCovers')
    remark(
      'Stones differ: the yard’s own coverage comes first. Keep stone and soil off the wood, a hand’s breadth under the pickets.',
    )
  },
  sources: [
    { fact: 'volume = length × width × depth; weight = volume × density', from: 'Derived here; needs no table.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'lifting'],
  examples: [
    // 60 × 1.5 × 0.25 = 22.5 ft³; × 100 = 2250 lb = 1.125 ton; 2000/100/0.25 = 80
    {
      ask: 'How much stone for a strip 60 ft long, 18 in wide and 3 in deep?',
      given: { edgeRun: '60 ft', edgeWidth: '18 in', edgeDepth: '3 in', gravelDensity: '100 lb/ft3' },
      expect: { stripStone: '22.5 ft³', stripStoneWeight: '1.125 tons', tonCovers: '80 ft²' },
    },
    // 20 × 0.5 × 0.05 = 0.5 m³; × 1600 = 800 kg
    {
      ask: 'Stone for the strip: 20 m long, 500 mm wide, 50 mm deep, stone at 1600 kg/m3. How many tonnes?',
      given: { edgeRun: '20 m', edgeWidth: '500 mm', edgeDepth: '50 mm', gravelDensity: '1600 kg/m3' },
      expect: { stripStone: '0.5 m³', stripStoneWeight: '0.8 tonnes', tonCovers: '12.5 m²' },
    },
  ],
})
