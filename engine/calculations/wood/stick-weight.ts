// What a stick weighs: the wood of its kind, and the water in it.
//
//   weight = water's density × specific gravity × (1 + moisture) × thickness × width × length
//   the gravity is by the volume: wood that dries shrinks, and is a little denser for it
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { woodDensity } from '../../words/rail-sag.ts'
import { sticks, sticksWeight, lumberLength, lumberThickness, stickWeight, lumberWidth } from '../../words/sticks.ts'
import { moistureNow, species } from '../../words/wet-wood.ts'
import { word } from '../../words/word.ts'
import { densityLines, densityLocals, densityRemark, densitySources, workDensity } from '../../wood-density.ts'

const toldDensity = word<'density'>('toldDensity', {
  kind: 'density',
  label: 'weight of the wood by volume',
  units: { imperial: 'lb/ft3', metric: 'kg/m3' },
  measure: 'As the mill or the table says, for the moisture it has.',
  ask: 'How heavy is the wood, by volume?',
  called: {},
  possible: { above: '0 lb/ft3' },
  plausible: { from: '15 lb/ft3', to: '75 lb/ft3' },
})

export const stickWeightOf = calculation({
  name: 'stick-weight',
  title: 'What sticks weigh',
  answers: 'What a post, rail or board weighs, by its kind of wood, its moisture and what it measures.',
  needs: { species, moistureNow, toldDensity, lumberThickness, lumberWidth, lumberLength, sticks },
  may: ['species', 'moistureNow', 'toldDensity'],
  oneOf: [
    ['species', 'toldDensity'],
    ['moistureNow', 'toldDensity'],
  ],
  onlyFor: { sticks: ['sticksWeight'] },
  gives: { stickWeight, sticksWeight, woodDensity },
  headlines: ['stickWeight', 'sticksWeight'],
  together: {
    stickWeight: ['stickWeight', 'sticksWeight', 'woodDensity'],
    sticksWeight: ['sticksWeight', 'stickWeight', 'woodDensity'],
  },
  locals: { ...densityLocals, dense: 'density' },
  lines: {
    ...densityLines,
    stickWeight: ['dense * lumberThickness * lumberWidth * lumberLength', 'for one stick'],
    sticksWeight: ['sticks * stickWeight', 'for all of them'],
  },
  work({ species: kind, toldDensity }, { line, put, has, remark }) {
    const isTold = has('toldDensity')
    put('dense', isTold ? toldDensity : workDensity(kind, { line, put }))
    line('stickWeight')
    if (has('sticks')) line('sticksWeight')
    remark(isTold ? `At ${show(toldDensity)}, as you gave it: wet wood is heavier than dry.` : densityRemark)
  },
  sources: [...densitySources],
  cautions: ['lifting'],
  examples: [
    // 1000 kg/m³ × 0.47 × 1.8 = 846 kg/m³ = 52.81 lb/ft³; 3.5 × 3.5 × 96 in = 0.6806 ft³
    {
      ask: 'How heavy is a post of southern pine, a 4x4 8 ft long, with 80 % moisture now?',
      given: {
        species: 'southern-pine',
        moistureNow: '80 %',
        lumberThickness: '4x4',
        lumberWidth: '4x4',
        lumberLength: '8 ft',
      },
      expect: { stickWeight: '35.94 lb', woodDensity: '52.81 lb/ft³' },
    },
    // 1000 × 0.32 × 1.12 = 358.4 kg/m³; 19 × 90 × 1100 mm = 1.881 L; × 40
    {
      ask: 'What do the pickets weigh: 40 pickets of western redcedar, 90x19 and 1100 mm long, moisture now 12 %?',
      given: {
        species: 'western-redcedar',
        moistureNow: '12 %',
        lumberThickness: '90x19',
        lumberWidth: '90x19',
        lumberLength: '1100 mm',
        sticks: '40',
      },
      expect: { stickWeight: '0.6742 kg', sticksWeight: '26.97 kg', woodDensity: '358.4 kg/m³' },
    },
    // 100 × 20 × 1000 mm = 2 L; × 0.6 = 1.2; × 50
    {
      ask: 'What do 50 pickets weigh, each 100 mm by 20 mm and 1000 mm long, at 600 kg/m3?',
      given: {
        toldDensity: '600 kg/m3',
        lumberThickness: '20 mm',
        lumberWidth: '100 mm',
        lumberLength: '1000 mm',
        sticks: '50',
      },
      expect: { stickWeight: '1.2 kg', sticksWeight: '60 kg' },
    },
  ],
})
