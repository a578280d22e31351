// Bricks or pavers along the fence, seen from above.
//
//   ▭▭▭▭▭▭    flat, end to end: the length lies along the edge
//   ▯▯▯▯▯▯    flat, side by side (soldier course): the width lies along it
//   ││││││    on edge, side by side: the height lies along it
import { calculation } from '../../calculation.ts'
import { brickDrawing } from '../../drawings/brick.ts'
import { equal, holdsMoreThan, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { breakage, brickAlong, brickJoint, brickRows, bricks, bricksToBuy, edgeRun } from '../../words/border.ts'
import { brickHeight, brickLength, brickLies, brickWidth } from '../../words/brick-sizes.ts'

const mostPieces = 100_000

/** By how a brick lies: the size that is along the edge, and the line that says so. */
const along = {
  'end-to-end': ['brickLength', 'lengthAlong'],
  across: ['brickWidth', 'widthAlong'],
  'on-edge': ['brickHeight', 'heightAlong'],
  'edge-to-end': ['brickLength', 'lengthAlong'],
  'on-end': ['brickWidth', 'widthAlong'],
} as const

// What a side is called by its name, and what it measures with a joint taken off.
const named: readonly (readonly [called: Quantity, measured: Quantity])[] = [
  [quantity(8, 'in'), quantity('7.625', 'in')],
  [quantity(4, 'in'), quantity('3.625', 'in')],
  [quantity('8/3', 'in'), quantity('2.25', 'in')],
  [quantity(225, 'mm'), quantity(215, 'mm')],
  [quantity('112.5', 'mm'), quantity('102.5', 'mm')],
  [quantity(75, 'mm'), quantity(65, 'mm')],
]

export const brickEdge = calculation({
  name: 'brick-edge',
  title: 'Bricks or pavers along the fence',
  answers:
    'How many bricks or pavers an edge takes, laid flat, on edge or as a soldier course, with joints and breakage.',
  needs: { edgeRun, brickAlong, brickLies, brickLength, brickWidth, brickHeight, brickJoint, brickRows, breakage },
  may: ['brickAlong', 'brickLies', 'brickLength', 'brickWidth', 'brickHeight'],
  oneOf: [['brickAlong', 'brickLies', 'brickLength', 'brickWidth', 'brickHeight']],
  gives: { bricks, bricksToBuy },
  headlines: ['bricksToBuy'],
  together: { bricks: ['bricksToBuy', 'bricks'], bricksToBuy: ['bricksToBuy', 'bricks'] },
  locals: { brickSide: 'length' },
  lines: {
    lengthAlong: ['brickLength', 'laid end to end, so the length lies along the edge'],
    widthAlong: ['brickWidth', 'turned across the strip or stood up, so the width lies along the edge'],
    heightAlong: ['brickHeight', 'on edge side by side, so the height lies along the edge'],
    bricks: [
      'ceil((edgeRun + brickJoint) / (brickSide + brickJoint)) * brickRows',
      'a joint between each two; a part of a brick counts whole',
    ],
    bricksToBuy: ['ceil(bricks * (1 + breakage))', 'breakage added, rounded up once'],
  },
  work(given, { line, put, has, need, refuse, doubt, remark, cite }) {
    const { edgeRun, brickAlong, brickJoint, brickLies: lies } = given
    if (!has('brickAlong') && !has('brickLies')) need('brickLies')
    const [size, by] = along[(has('brickLies') ? lies : 'end-to-end') as keyof typeof along]
    if (!has('brickAlong')) {
      if (!has(size)) need(size)
      line(by)
    } else if (has('brickLies') && has(size) && !equal(given[size], brickAlong))
      doubt(
        'contradictory',
        'brickAlong',
        `You say ${show(brickAlong)} lies along the edge. As the bricks lie, it would be ${show(given[size])}. I went by ${show(brickAlong)}.`,
      )
    const side = put('brickSide', has('brickAlong') ? brickAlong : given[size])
    if (holdsMoreThan(mostPieces, side, edgeRun))
      refuse(
        'edgeRun',
        `An edge of ${show(edgeRun)} in pieces of ${show(side)} is more than I can count here. Check both units.`,
      )
    line('bricks')
    line('bricksToBuy')
    remark(
      `The side along the edge is ${show(side)}: a brick’s own size, not its name. Turn the bricks, and the number changes.`,
    )
    const name = named.find(([called]) => equal(called, side))
    if (name && less(quantity(0, 'in'), brickJoint))
      remark(
        `${show(side)} is what a side is called that measures ${cite(name[1], 'measured side', 'published')}: a brick’s name has a joint in it. Measure one. Pavers laid tight are often as large as their name.`,
      )
    if (has('brickAlong')) return
    if (lies === 'across')
      remark('A soldier course is taken as bricks lying flat across the strip. If yours stand on end, say “on end”.')
    if (lies === 'on-end')
      remark(
        'Standing with broad faces out, the width is along the edge. With narrow faces out it is the height: give that side instead.',
      )
    if (lies === 'on-edge')
      remark('On edge is taken as side by side across the strip. If yours run end to end, say “on edge end to end”.')
  },
  sources: [
    { fact: 'bricks = (run + joint) ÷ (side + joint)', from: 'Derived here from the sketch; needs no table.' },
    {
      fact: 'a modular brick is called 4 × 2 2/3 × 8 in and measures 3 5/8 × 2 1/4 × 7 5/8 in',
      from: 'https://www.engineeringtoolbox.com/amp/brick-mortar-consumption-d_1549.html',
    },
    {
      fact: 'a metric brick of 225 × 112.5 × 75 mm with its joints measures 215 × 102.5 × 65 mm',
      from: 'common practice, no source (from memory)',
    },
    { fact: 'how bricks are turned, and what that is called', from: 'common practice, no source; the names differ' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'lifting', 'dust'],
  drawing: brickDrawing,
  examples: [
    // (600 + 0.375)/4 = 150.09 → 151; × 1.05 = 158.55 → 159
    {
      ask: 'How many bricks for a mowing edge 50 ft long, bricks 3 5/8 in along the edge with 3/8 in joints and 5 % breakage?',
      given: { edgeRun: '50 ft', brickAlong: '3 5/8 in', brickJoint: '3/8 in', breakage: '5 %' },
      expect: { bricks: '151 bricks', bricksToBuy: '159 bricks' },
    },
    // (12,000 + 10)/225 = 53.4 → 54; × 2 = 108; × 1.05 = 113.4 → 114
    {
      ask: 'Edge 12 m long, two rows of bricks 215 mm along the edge, 10 mm joints: how many bricks?',
      given: { edgeRun: '12 m', brickAlong: '215 mm', brickJoint: '10 mm', brickRows: '2' },
      expect: { bricks: '108 bricks', bricksToBuy: '114 bricks' },
    },
    // on edge: (360 + 0.375)/(2.25 + 0.375) = 137.3 → 138; × 1.05 = 144.9 → 145
    {
      ask: 'How many bricks for an edge 30 ft long? The bricks lie on edge; a brick is 7 5/8 in long, 3 5/8 in wide and 2 1/4 in thick.',
      given: {
        edgeRun: '30 ft',
        brickLies: 'on-edge',
        brickLength: '7 5/8 in',
        brickWidth: '3 5/8 in',
        brickHeight: '2 1/4 in',
      },
      expect: { bricks: '138 bricks', bricksToBuy: '145 bricks' },
    },
    // soldier course: (9,000 + 10)/(102.5 + 10) = 80.09 → 81; × 1.05 = 85.05 → 86
    {
      ask: 'Edge 9 m long in a soldier course, bricks 102.5 mm wide, 10 mm joints: how many bricks?',
      given: { edgeRun: '9 m', brickLies: 'across', brickWidth: '102.5 mm', brickJoint: '10 mm' },
      expect: { bricks: '81 bricks', bricksToBuy: '86 bricks' },
    },
  ],
})
