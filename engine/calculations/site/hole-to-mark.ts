// A hole beside a paint mark: it is the hole's edge that counts, against the zone on both sides of the buried line.
//
//        zone │line│ zone          hole
//   ◄────────►│▓▓▓▓│◄────────►    ╭────╮
//             └─┬──┘              │ ●  │   centre of the hole to the middle of the mark
//               └──── mark ───────┼─┘
import { calculation } from '../../calculation.ts'
import { markDrawing } from '../../drawings/mark.ts'
import { compare, exact } from '../../quantities/amount.ts'
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
import { holeDiameter } from '../../words/posts.ts'

export const holeToMark = calculation({
  name: 'hole-to-mark',
  title: 'A hole beside a paint mark',
  answers:
    'Whether the edge of a hole lies outside the tolerance zone of one paint mark, and how far the hole must move. It never says that the ground is clear.',
  needs: { markDistance, holeDiameter, zoneEachSide, facilityWidth },
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
    edgeToZone: ['edge - zoneWidth / 2', 'from the edge of the hole to the zone'],
    moveHole: ['max(-edgeToZone, 0 * edgeToZone)', 'what is missing, or nothing'],
  },
  work({ zoneEachSide }, { line, has, tell, remark }) {
    const zone = line('zoneWidth')
    if (!has('markDistance') || !has('holeDiameter')) return
    line('edge')
    const left = line('edgeToZone')
    line('moveHole')
    const outside = compare(left.amount, exact(0)) === 1
    tell('outsideZone', outside)
    remark(
      outside
        ? `Decided by: the edge of the hole, ${show(left)} outside a zone of ${show(zone)}.`
        : `Decided by: the edge of the hole, which is not outside a zone of ${show(zone)}. Inside it, dig by hand with a dull tool, or move the hole: no auger, no digging bar.`,
    )
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
  ],
})
