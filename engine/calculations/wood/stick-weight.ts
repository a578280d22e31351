// What a stick weighs: the wood of its kind, and the water in it.
//
//   weight = water's density × specific gravity × (1 + moisture) × thickness × width × length
//   the gravity is by the volume: wood that dries shrinks, and is a little denser for it
import { calculation } from '../../calculation.ts'
import { woodDensity } from '../../words/rail-sag.ts'
import { sticks, sticksWeight, lumberLength, lumberThickness, stickWeight, lumberWidth } from '../../words/sticks.ts'
import { moistureNow, species } from '../../words/wet-wood.ts'
import { densityLines, densityLocals, densityRemark, densitySources, workDensity } from '../../wood-density.ts'

export const stickWeightOf = calculation({
  name: 'stick-weight',
  title: 'What sticks weigh',
  answers: 'What a post, rail or board weighs, by its kind of wood, its moisture and what it measures.',
  needs: { species, moistureNow, lumberThickness, lumberWidth, lumberLength, sticks },
  onlyFor: { sticks: ['sticksWeight'] },
  gives: { stickWeight, sticksWeight, woodDensity },
  headlines: ['stickWeight', 'sticksWeight'],
  together: {
    stickWeight: ['stickWeight', 'sticksWeight', 'woodDensity'],
    sticksWeight: ['sticksWeight', 'stickWeight', 'woodDensity'],
  },
  locals: densityLocals,
  lines: {
    ...densityLines,
    stickWeight: ['woodDensity * lumberThickness * lumberWidth * lumberLength', 'for one stick'],
    sticksWeight: ['sticks * stickWeight', 'for all of them'],
  },
  work({ species: kind }, { line, put, has, remark }) {
    workDensity(kind, { line, put })
    line('stickWeight')
    if (has('sticks')) line('sticksWeight')
    remark(densityRemark)
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
  ],
})
