// A hole beside a paint mark: it is the hole's edge that counts, against the zone on both sides of the buried line.
//
//        zone │line│ zone          hole
//   ◄────────►│▓▓▓▓│◄────────►    ╭────╮
//             └─┬──┘              │ ●  │   centre of the hole to the middle of the mark; a square hole is measured by its corner
//               └──── mark ───────┼─┘
import { calculation } from '../../calculation.ts'
import { markDrawing } from '../../drawings/mark.ts'
import { compare, exact, times } from '../../quantities/amount.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  edgeToZone,
  facilityWidth,
  markDistance,
  moveHole,
  outsideZone,
  zoneEachSide,
  zoneWidth,
} from '../../words/digging-notice.ts'
import { holeDiameter, holeShape } from '../../words/posts.ts'

export const holeToMark = calculation({
  name: 'hole-to-mark',
  title: 'A hole beside a paint mark',
  answers:
    'Whether the edge of a hole lies outside the tolerance zone of one paint mark, and how far the hole must move. It never says that the ground is clear.',
  needs: { markDistance, holeDiameter, holeShape, zoneEachSide, facilityWidth },
  onlyFor: {
    markDistance: ['edgeToZone', 'moveHole', 'outsideZone'],
    holeDiameter: ['edgeToZone', 'moveHole', 'outsideZone'],
  },
  gives: { outsideZone, edgeToZone, moveHole, zoneWidth },
  headlines: ['outsideZone', 'edgeToZone'],
  together: {
    outsideZone: ['outsideZone', 'edgeToZone', 'moveHole', 'zoneWidth'],
    edgeToZone: ['edgeToZone', 'outsideZone', 'moveHole'],
    moveHole: ['moveHole', 'outsideZone', 'edgeToZone'],
  },
  lines: {
    zoneWidth: ['facilityWidth + 2 * zoneEachSide', 'the line itself and the zone on both its sides'],
    edge: ['markDistance - holeDiameter / 2', 'the edge of the hole is nearer than its centre, by half its width'],
    corner: [
      'markDistance - sqrt(2 * holeDiameter ^ 2) / 2',
      'a corner reaches half the diagonal, if the hole lies that way round',
    ],
    edgeToZone: ['edge - zoneWidth / 2', 'from the edge of the hole to the zone'],
    moveHole: ['max(-edgeToZone, 0)', 'what is missing, or nothing'],
  },
  work({ zoneEachSide, holeShape }, { line, put, has, assumed, tell, doubt, remark, cite }) {
    const zone = line('zoneWidth')
    if (!has('markDistance') || !has('holeDiameter')) return
    if (holeShape === 'square') {
      put('edge', line('corner'))
      remark('I measured to a corner of the square hole, as if it pointed at the mark.')
    } else line('edge')
    const left = line('edgeToZone')
    const outside = compare(left.amount, exact(0)) === 1
    const isWidthKnown = !assumed('facilityWidth')
    // The zone begins at the outside of the buried line: not knowing how wide it is cannot put a hole outside.
    tell('outsideZone', outside && !isWidthKnown ? null : outside)
    if (!outside || isWidthKnown) line('moveHole')
    if (!outside)
      remark(
        `Decided by: the edge of the hole, which is not outside a zone of ${show(zone)}. Inside it, dig by hand with a dull tool, or move the hole: no auger, no digging bar.${isWidthKnown ? '' : ' Move it by half the width of the buried line more: the mark did not say how wide that is.'}`,
      )
    else if (isWidthKnown) remark(`Decided by: the edge of the hole, ${show(left)} outside a zone of ${show(zone)}.`)
    else {
      const widest: Quantity = { ...left, amount: times(exact(2), left.amount) }
      remark(
        `It depends on how wide the buried line is, since the zone begins at its outside. The hole is outside this mark’s zone only if the line is narrower than ${cite(widest, 'widest line that leaves the hole outside')}. Until you know, dig by hand.`,
      )
      doubt('missing', 'facilityWidth', 'The mark does not say how wide the line is.', facilityWidth.ask)
    }
    remark(
      `This is about one mark. A mark tells roughly where a line runs, not how deep, and private lines (past the meter, to a shed, sprinklers, lights) are not marked at all. The zone of ${show(zoneEachSide)} is the one you gave.`,
    )
  },
  sources: [
    {
      fact: 'zone = width of the line + tolerance on both sides, from its outside',
      from: 'Common ground of one-call rules; the figure is the one you gave.',
    },
    { fact: 'marks do not show private lines or depth', from: 'https://digline.com/utility-color-codes' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole'],
  drawing: markDrawing,
  examples: [
    // zone 2 + 2 × 24 = 50; edge 40 − 5 = 35; 35 − 25 = 10
    {
      ask: 'The hole center is 40 in from the mark of a 2 in pipe. 10 in hole, tolerance zone 24 in each side. Is my hole in the zone?',
      given: { markDistance: '40 in', holeDiameter: '10 in', zoneEachSide: '24 in', facilityWidth: '2 in' },
      expect: { outsideZone: 'outside this mark’s zone', edgeToZone: '10 in', zoneWidth: '50 in', moveHole: '0 in' },
    },
    // edge 600 − 150 = 450; zone 500 → 450 − 500 = −50
    {
      ask: 'Hole 300 mm wide, its centre 600 mm from the paint mark, zone of 500 mm: do I have to hand dig?',
      given: { markDistance: '600 mm', holeDiameter: '300 mm', zoneEachSide: '500 mm', facilityWidth: '0 mm' },
      expect: { outsideZone: 'inside this mark’s zone: dig by hand only', edgeToZone: '−50 mm', moveHole: '50 mm' },
    },
    // corner 32 − √288/2 = 32 − 8.485 = 23.515; zone 2 + 2 × 24 = 50 → 23.515 − 25 = −1.485; a side would be 32 − 6 − 25 = 1 in outside
    {
      ask: 'The hole center is 32 in from the mark of a 2 in pipe. Holes 12 in square, tolerance zone 24 in each side. Is my hole in the zone?',
      given: {
        markDistance: '32 in',
        holeDiameter: '12 in',
        holeShape: 'square',
        zoneEachSide: '24 in',
        facilityWidth: '2 in',
      },
      expect: { outsideZone: 'inside this mark’s zone: dig by hand only', edgeToZone: '−1.485 in' },
    },
  ],
})
