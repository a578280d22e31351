// Bricks or pavers along the fence.
//
//   ▭▭▭▭▭▭    end to end: the long side lies along the edge
//   ▯▯▯▯▯▯    across (soldier course) or on edge: the short side lies along it
import { calculation } from '../../calculation.ts'
import { brickDrawing } from '../../drawings/brick.ts'
import { exact, times } from '../../quantities/amount.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { breakage, brickAlong, brickJoint, brickRows, bricks, bricksToBuy, edgeRun } from '../../words/border.ts'

const most = exact(100_000)

export const brickEdge = calculation({
  name: 'brick-edge',
  title: 'Bricks or pavers along the fence',
  answers:
    'How many bricks or pavers an edge takes, laid flat, on edge or as a soldier course, with joints and breakage.',
  needs: { edgeRun, brickAlong, brickJoint, brickRows, breakage },
  gives: { bricks, bricksToBuy },
  headlines: ['bricksToBuy'],
  together: { bricks: ['bricksToBuy', 'bricks'], bricksToBuy: ['bricksToBuy', 'bricks'] },
  lines: {
    bricks: [
      'ceil((edgeRun + brickJoint) / (brickAlong + brickJoint)) * brickRows',
      'a joint between each two; a part of a brick counts whole',
    ],
    bricksToBuy: ['ceil(bricks * (1 + breakage))', 'breakage added, rounded up once'],
  },
  work({ edgeRun, brickAlong }, { line, refuse, remark }) {
    if (less({ ...brickAlong, amount: times(brickAlong.amount, most) }, edgeRun))
      refuse(
        'edgeRun',
        `An edge of ${show(edgeRun)} in pieces of ${show(brickAlong)} is more than I can count here. Check both units.`,
      )
    line('bricks')
    line('bricksToBuy')
    remark(
      `The side along the edge is ${show(brickAlong)}: a brick’s own size, not its name. Turn the bricks, and the number changes.`,
    )
  },
  sources: [{ fact: 'bricks = (run + joint) ÷ (side + joint)', from: 'Derived here from the sketch; needs no table.' }],
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
  ],
})
