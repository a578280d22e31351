// What comes out of the holes: as it lay, as it lies on the heap, and how often the barrow goes.
import { calculation } from '../../calculation.ts'
import { sectionLines, workSection } from '../../holes.ts'
import {
  barrows,
  barrowSize,
  loadSize,
  looseDensity,
  soilDensity,
  soilOut,
  soilSwell,
  spoilInGround,
  spoilWeight,
  vesselLoads,
} from '../../words/spoil.ts'
import { holeDepth, holeDiameter, holeShape, posts } from '../../words/posts.ts'

export const spoilOfHoles = calculation({
  name: 'spoil-of-holes',
  title: 'Soil out of the holes',
  answers: 'How much soil comes out of the post holes, loose, what it weighs, and how many barrow loads it is.',
  needs: { posts, holeDiameter, holeShape, holeDepth, soilSwell, soilDensity, looseDensity, barrowSize, loadSize },
  may: ['looseDensity'],
  onlyFor: { loadSize: ['vesselLoads'], barrowSize: ['barrows'] },
  gives: { soilOut, barrows, vesselLoads, spoilInGround, spoilWeight },
  headlines: ['soilOut', 'barrows'],
  together: {
    soilOut: ['soilOut', 'barrows', 'spoilInGround', 'spoilWeight'],
    barrows: ['barrows', 'soilOut', 'spoilWeight'],
    vesselLoads: ['vesselLoads', 'soilOut', 'spoilWeight'],
    spoilWeight: ['spoilWeight', 'soilOut'],
  },
  locals: { holeSection: 'area' },
  lines: {
    ...sectionLines,
    spoilInGround: ['sum(posts * (holeSection * holeDepth))', 'the holes, all of them'],
    soilOut: ['spoilInGround * (1 + soilSwell)', 'dug soil takes more room'],
    spoilWeight: ['spoilInGround * soilDensity', 'swelling changes no weight'],
    looseWeight: ['soilOut * looseDensity', 'as it was said of the heap'],
    barrows: ['ceil(soilOut / barrowSize)', 'whole loads'],
    vesselLoads: ['ceil(soilOut / loadSize)', 'whole loads, by the room'],
  },
  work({ holeShape }, { line, rows, put, remark, has, tell, wants, assumed }) {
    workSection(holeShape, { line, rows, put, remark })
    for (const name of ['spoilInGround', 'soilOut']) line(name)
    if (has('looseDensity')) tell('spoilWeight', line('looseWeight'))
    else line('spoilWeight')
    if (has('barrowSize') && !(has('loadSize') && assumed('barrowSize') && !wants('barrows'))) line('barrows')
    if (has('loadSize')) {
      line('vesselLoads')
      remark('A trailer is often too heavy long before it is full: hold the weight against what it may carry.')
    }
    remark(
      'Some of it goes back round the posts. Do not bank the rest against the fence: wood rots in it. Old concrete and treated scraps do not belong in it.',
    )
  },
  sources: [
    {
      fact: 'loose volume = volume in the ground × (1 + swell)',
      from: 'Definition of swell in earthwork; the figure is common practice, no source',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole', 'lifting'],
  examples: [
    // π/4 × 1 × 3 × 18 = 42.41; × 1.25 = 53.01 ft³ = 1.963 yd³; 4241 lb; 53.01/3 → 18
    {
      ask: 'How much dirt comes out of 18 holes 12 in wide and 36 in deep, and how many barrow loads?',
      given: { posts: '18', holeDiameter: '12 in', holeDepth: '36 in' },
      expect: { spoilInGround: '42.41 ft³', soilOut: '1.963 yd³', spoilWeight: '4,241 lb', barrows: '18 loads' },
    },
    // π/4 × 0.09 × 0.6 × 10 = 0.4241 m³; × 1.25 = 0.5301; /85 L → 7
    {
      ask: 'Spoil from 10 holes 300 mm wide and 600 mm deep: how many wheelbarrow loads?',
      given: { posts: '10', holeDiameter: '300 mm', holeDepth: '600 mm' },
      expect: { soilOut: '0.5301 m³', barrows: '7 loads' },
    },
    // π/4 × 0.35² × 0.8 × 16 = 1.2315 m³; × 1.3 = 1.601; /0.75 = 2.13 → 3; 1.2315 × 1500 kg = 1847
    {
      ask: 'Spoil from 16 holes 350 mm wide and 800 mm deep, swelling 30 %, soil 1.5 t a cube: how many trailer loads at 0.75 m3?',
      given: {
        posts: '16',
        holeDiameter: '350 mm',
        holeDepth: '800 mm',
        soilSwell: '30 %',
        soilDensity: '1.5 tonne/m3',
        loadSize: '0.75 m3',
      },
      expect: { vesselLoads: '3 loads', soilOut: '1.601 m³', spoilWeight: '1,847 kg' },
    },
    // square: 0.09 × 0.6 × 10 = 0.54 m³; × 1.25 = 0.675; /85 L = 7.94 → 8
    {
      ask: 'Spoil from ten 300 mm square holes 600 deep: how many wheelbarrow loads?',
      given: { posts: '10', holeDiameter: '300 mm', holeShape: 'square', holeDepth: '600 mm' },
      expect: { soilOut: '0.675 m³', barrows: '8 loads' },
    },
  ],
})
