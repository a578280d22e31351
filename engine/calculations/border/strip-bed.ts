// What is dug out for a strip, how often the barrow goes, and the base and sand that go in under bricks.
//
//   grass ───┐ ▭▭▭ ┌───   room left for the bricks
//            │·····│      sand, struck off level
//            │ooooo│      base, tamped
//            └─────┘
import { calculation } from '../../calculation.ts'
import { bedDrawing } from '../../drawings/strip-bed.ts'
import { add } from '../../quantities/amount.ts'
import { equal, less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { edgeRun, edgeWidth } from '../../words/border.ts'
import { gravelDensity, settling } from '../../words/gravel.ts'
import { barrows, barrowSize, soilOut, soilSwell, spoilDepth } from '../../words/spoil.ts'
import {
  baseDepth,
  baseToBuy,
  baseWeight,
  brickRoom,
  sandDensity,
  sandDepth,
  sandToBuy,
  sandWeight,
} from '../../words/strip-bed.ts'

const ofBase = ['baseToBuy', 'baseWeight', 'brickRoom']
const ofSand = ['sandToBuy', 'sandWeight', 'brickRoom']

export const stripBed = calculation({
  name: 'strip-bed',
  title: 'The bed of the strip: soil out, base and sand in',
  answers:
    'How much sod and soil a trench for the strip gives and how many barrow loads, and how much base and sand go in, bought loose.',
  needs: {
    edgeRun,
    edgeWidth,
    spoilDepth,
    soilSwell,
    barrowSize,
    baseDepth,
    sandDepth,
    settling,
    gravelDensity,
    sandDensity,
  },
  onlyFor: {
    edgeRun: ['soilOut', 'barrows', 'baseToBuy', 'baseWeight', 'sandToBuy', 'sandWeight'],
    edgeWidth: ['soilOut', 'barrows', 'baseToBuy', 'baseWeight', 'sandToBuy', 'sandWeight'],
    spoilDepth: ['soilOut', 'barrows', 'brickRoom'],
    soilSwell: ['soilOut', 'barrows'],
    barrowSize: ['barrows'],
    settling: ['baseToBuy', 'baseWeight', 'sandToBuy', 'sandWeight'],
    gravelDensity: ['baseWeight'],
    sandDensity: ['sandWeight'],
    baseDepth: ofBase,
    sandDepth: ofSand,
  },
  gives: { soilOut, barrows, baseToBuy, sandToBuy, baseWeight, sandWeight, brickRoom },
  headlines: ['soilOut', 'barrows'],
  together: {
    soilOut: ['soilOut', 'barrows'],
    barrows: ['barrows', 'soilOut'],
    baseToBuy: ['baseToBuy', 'baseWeight'],
    baseWeight: ['baseWeight', 'baseToBuy'],
    sandToBuy: ['sandToBuy', 'sandWeight'],
    sandWeight: ['sandWeight', 'sandToBuy'],
  },
  called: ['trench', 'dug out', 'dig out', 'excavate'],
  lines: {
    inGround: ['edgeRun * edgeWidth * spoilDepth', 'as it lay in the ground'],
    soilOut: ['inGround * (1 + soilSwell)', 'dug soil takes more room'],
    barrows: ['ceil(soilOut / barrowSize)', 'whole loads'],
    baseInPlace: ['edgeRun * edgeWidth * baseDepth', 'as it lies tamped'],
    baseToBuy: ['baseInPlace * (1 + settling)', 'loose stone settles when it is tamped, so more is bought'],
    baseWeight: ['baseToBuy * gravelDensity', 'loose, as it comes'],
    sandInPlace: ['edgeRun * edgeWidth * sandDepth', 'as it lies struck off'],
    sandToBuy: ['sandInPlace * (1 + settling)', 'sand settles too, and some is spilt'],
    sandWeight: ['sandToBuy * sandDensity', 'loose and dry'],
    brickRoom: ['spoilDepth - baseDepth - sandDepth', 'what the bed leaves of the depth dug'],
  },
  work({ spoilDepth, baseDepth, sandDepth }, { line, has, refuse, remark }) {
    const strip = has('edgeRun') && has('edgeWidth')
    const [dug, base, sand] = [has('spoilDepth'), has('baseDepth'), has('sandDepth')]
    if (dug && base && sand) {
      const bed = { ...baseDepth, amount: add(baseDepth.amount, sandDepth.amount) }
      if (!less(bed, spoilDepth))
        refuse(
          'spoilDepth',
          `${show(baseDepth)} of base and ${show(sandDepth)} of sand ${equal(bed, spoilDepth) ? 'fill' : 'are more than'} a trench ${show(spoilDepth)} deep, and leave no room for bricks. Dig deeper, or check the three.`,
        )
      line('brickRoom')
    }
    const work = (name: string, ...needed: readonly Parameters<typeof has>[0][]): void => {
      if (strip && needed.every(has)) line(name)
    }
    work('inGround', 'spoilDepth')
    work('soilOut', 'spoilDepth', 'soilSwell')
    work('barrows', 'spoilDepth', 'soilSwell', 'barrowSize')
    work('baseInPlace', 'baseDepth')
    work('baseToBuy', 'baseDepth', 'settling')
    work('baseWeight', 'baseDepth', 'settling', 'gravelDensity')
    work('sandInPlace', 'sandDepth')
    work('sandToBuy', 'sandDepth', 'settling')
    work('sandWeight', 'sandDepth', 'settling', 'sandDensity')
    if (dug || !(base || sand))
      remark(
        'Have the buried lines located before you trench: edging trenches cut cables too. Stack the sod apart, grass to grass; it rots to good soil. Never bank soil against the fence.',
      )
    if (base)
      remark(
        'Tamp the base in layers no deeper than your tamper reaches, a hand’s breadth or less by hand, and slope it away from the posts. Stone with fines in it locks; round pebbles never do. Have the buried lines located before the trench is dug.',
      )
    if (sand)
      remark(
        'Strike the sand off level and do not tread on it; never make up a low base with more sand. The sand swept into the joints is not in this.',
      )
  },
  sources: [
    { fact: 'volume = length × width × depth', from: 'Derived here; needs no table.' },
    {
      fact: 'loose volume = volume in the ground × (1 + swell)',
      from: 'Definition of swell in earthwork; common practice, no source for the figure',
    },
    {
      fact: 'loose to buy = in place × (1 + what tamping takes)',
      from: 'Definition; the figure is common practice, no source',
    },
    { fact: 'a base of 4 to 6 in and 1 in of sand', from: 'common practice, no source' },
    { fact: 'tamping in layers, stone with fines, level sand', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'lifting', 'dust'],
  drawing: bedDrawing,
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
    // 50 × 0.75 × 1/3 = 12.5 ft³; × 1.15 = 14.375 ft³ = 0.5324 yd³; × 100 = 1437.5 lb = 0.7188 ton; sand: 50 × 0.75 / 12 = 3.125; × 1.15 = 3.594 ft³ = 0.1331 yd³; 359.4 lb
    {
      ask: 'How much base and how much sand for a strip 50 ft long and 9 in wide, with 4 in of base and 1 in of sand?',
      given: { edgeRun: '50 ft', edgeWidth: '9 in', baseDepth: '4 in', sandDepth: '1 in' },
      expect: { baseToBuy: '0.5324 yd³', baseWeight: '0.7188 tons', sandToBuy: '0.1331 yd³', sandWeight: '359.375 lb' },
    },
    // 200 − 100 − 25 = 75 mm
    {
      ask: 'The trench is dug out 200 mm, with 100 mm of base and 25 mm of sand: how much room is left for the bricks?',
      given: { spoilDepth: '200 mm', baseDepth: '100 mm', sandDepth: '25 mm' },
      expect: { brickRoom: '75 mm' },
    },
  ],
})
