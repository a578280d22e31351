// A cap built up from a block with a mitred moulding frame round it.
//
//    ┌──────────┐  ◄── outer: the block and the moulding on both sides
//    │╲________╱│
//    ││ block  ││      four pieces, mitred at 45°, each as long outside as block + 2 × moulding
//    │╱▔▔▔▔▔▔▔▔╲│
//    └──────────┘
import { calculation } from '../../calculation.ts'
import { capDrawing } from '../../drawings/cap.ts'
import { show } from '../../quantities/show.ts'
import {
  blockLong,
  blockShort,
  capCount,
  mouldingAll,
  mouldingEach,
  mouldingWidth,
  outerLong,
  outerShort,
} from '../../words/caps.ts'
import { kerf } from '../../words/lumber.ts'

export const builtUpCap = calculation({
  name: 'built-up-cap',
  title: 'A built-up cap with a mitred frame',
  answers: 'How long the pieces of moulding round a block are cut, and how much moulding one cap and all caps take.',
  needs: { blockLong, blockShort, mouldingWidth, kerf, capCount },
  may: ['blockShort', 'capCount'],
  onlyFor: { capCount: ['mouldingAll'] },
  gives: { outerLong, outerShort, mouldingEach, mouldingAll },
  headlines: ['outerLong', 'mouldingAll'],
  together: {
    outerLong: ['outerLong', 'outerShort', 'mouldingEach', 'mouldingAll'],
    mouldingAll: ['mouldingAll', 'mouldingEach', 'outerLong', 'outerShort'],
    mouldingEach: ['mouldingEach', 'outerLong', 'outerShort'],
  },
  called: ['moulding', 'molding', 'built up', 'built-up', 'mitred frame', 'mitered frame'],
  locals: { otherSide: 'length' },
  lines: {
    outerLong: ['blockLong + 2 * mouldingWidth', 'the block, and the moulding at both its ends'],
    outerShort: ['otherSide + 2 * mouldingWidth', 'the other way'],
    mouldingEach: ['2 * outerLong + 2 * outerShort + 4 * kerf', 'two of each, and a cut at the end of each piece'],
    mouldingAll: ['mouldingEach * capCount', 'all caps'],
  },
  work({ blockLong, blockShort }, { line, has, put, remark }) {
    const other = has('blockShort') ? blockShort : blockLong
    put('otherSide', other)
    line('outerLong')
    line('outerShort')
    line('mouldingEach')
    if (has('capCount')) line('mouldingAll')
    remark(
      'All ends are mitred at half a right angle. Lengths are over the long points. Cut the first piece a hair long, try it, and set a stop for the rest. Sticks leave a piece at their end: buy some to spare, and put it in when you count sticks.',
    )
    if (!has('blockShort')) remark(`I took the block as square, ${show(blockLong)} both ways.`)
  },
  sources: [
    { fact: 'outside = inside + 2 × moulding for each piece', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  drawing: capDrawing,
  examples: [
    // 20 + 4.5 = 24.5; 14 + 4.5 = 18.5; 2 × 24.5 + 2 × 18.5 + 4/8 = 86.5
    {
      ask: 'How do I cut the moulding for a built up cap round a block of 20 in, shorter side of the block 14 in, moulding 2 1/4 in wide?',
      given: { blockLong: '20 in', blockShort: '14 in', mouldingWidth: '2 1/4 in', kerf: '1/8 in' },
      expect: { outerLong: '24 1/2 in', outerShort: '18 1/2 in', mouldingEach: '86 1/2 in' },
    },
    // 120 + 60 = 180; 4 × 180 + 12 = 732; × 11 = 8.052 m
    {
      ask: 'Moulding 30 mm wide round a block of 120 mm square for 11 caps: how much moulding in all?',
      given: { blockLong: '120 mm', mouldingWidth: '30 mm', kerf: '3 mm', capCount: '11' },
      expect: { outerLong: '180 mm', mouldingEach: '732 mm', mouldingAll: '8.052 m' },
    },
  ],
})
