// This file is about the evidence for the calculations in site/ that look at rules, marks and the lot line.
import { isoDate } from '../../../engine/quantities/calendar.ts'
import type { Quantity } from '../../../engine/quantities/quantity.ts'
import type { Ran } from '../../engine/run-named.ts'
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const ours = 'Reference book, utilities and boundary'
const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']

/** A date as days since 1970, by the platform's own calendar. */
const day = (text: string): number => Date.parse(`${text}T00:00:00Z`) / 86_400_000
const dayIn =
  (word: string) =>
  ({ outcome }: Ran): number =>
    day(isoDate((outcome.ok ? outcome.values.get(word) : undefined) as Quantity))
const weekdayIn = ({ outcome }: Ran): number =>
  weekdays.indexOf(String(outcome.ok ? outcome.values.get('firstDigWeekday') : ''))

/** Counted with the platform's calendar: whole working days after the call, then the next working day. */
function firstDay(call: string, notice: number, holidays: readonly string[]): number {
  const date = new Date(`${call}T00:00:00Z`)
  const works = (): boolean => date.getUTCDay() % 6 !== 0 && !holidays.includes(date.toISOString().slice(0, 10))
  const next = (): void => void date.setUTCDate(date.getUTCDate() + 1)
  for (let left = notice; left > 0; ) {
    next()
    if (works()) left--
  }
  do next()
  while (!works())
  return date.getTime() / 86_400_000
}

export const siteChecks: readonly Check[] = [
  {
    calculation: 'dig-notice',
    what: 'a Monday call and three full working days give Friday',
    kind: 'published',
    source: 'South Carolina one-call centre, notice calendar, https://www.sc811.com/notice-calendar/',
    reference: 'util-02-pub',
    given: { callWeekday: 'monday', noticeDays: '3' },
    gives: 'firstDigWeekday',
    unit: 'weekday, Monday is 0',
    got: weekdayIn,
    expected: 4,
    tolerance: 0,
  },
  {
    calculation: 'dig-notice',
    what: 'a Tuesday call and two full working days give Friday',
    kind: 'published',
    source: 'An Indiana electric co-operative, https://kremc.com/safety/digging-safely/',
    reference: 'util-03-pub',
    given: { callWeekday: 'tuesday', noticeDays: '2' },
    gives: 'firstDigWeekday',
    unit: 'weekday, Monday is 0',
    got: weekdayIn,
    expected: 4,
    tolerance: 0,
  },
  {
    calculation: 'dig-notice',
    what: 'a ticket of 28 calendar days with the day of the call ends on the 28th when called on the 1st',
    kind: 'published',
    source: 'Illinois one-call centre, ticket life, http://www.illinois1call.com/processing_request/ticket_life.htm',
    reference: 'util-04-pub',
    given: { callDate: '2026-10-01', noticeDays: '2', ticketLife: '28', ticketCounts: 'calendar-from-call' },
    gives: 'lastTicketDay',
    unit: 'days since 1970',
    got: dayIn('lastTicketDay'),
    expected: () => day('2026-10-28'),
    tolerance: 0,
  },
  {
    calculation: 'dig-notice',
    what: 'over a holiday and two weekends',
    kind: 'library',
    source: 'The platform’s own calendar, counting day by day in UTC',
    given: { callDate: '2026-12-23', noticeDays: '4', holidays: ['2026-12-25', '2027-01-01'] },
    gives: 'firstDigDay',
    unit: 'days since 1970',
    got: dayIn('firstDigDay'),
    expected: () => firstDay('2026-12-23', 4, ['2026-12-25', '2027-01-01']),
    tolerance: 0,
  },
  {
    calculation: 'dig-notice',
    what: 'the last working day from which a new call still lets the notice pass before the ticket ends, over a holiday',
    kind: 'library',
    source:
      'The platform’s own calendar: every day of the ticket tried as the day of a new call, the last good one taken',
    given: {
      callDate: '2026-12-01',
      noticeDays: '3',
      holidays: ['2026-12-25'],
      ticketLife: '28',
      ticketCounts: 'calendar-from-call',
    },
    gives: 'renewBy',
    unit: 'days since 1970',
    got: dayIn('renewBy'),
    expected: () => {
      const holidays = ['2026-12-25']
      const last = day('2026-12-28')
      let best = 0
      for (let at = day('2026-12-01'); at <= last; at++) {
        const text = new Date(at * 86_400_000).toISOString().slice(0, 10)
        const works = new Date(at * 86_400_000).getUTCDay() % 6 !== 0 && !holidays.includes(text)
        // The working day after two whole ones is the third: with it the notice has passed.
        if (works && firstDay(text, 2, holidays) <= last) best = at
      }
      return best
    },
    tolerance: 0,
  },
  ...(
    [
      ['18 in', 38],
      ['24 in', 50],
    ] as const
  ).map(
    ([zoneEachSide, expected]): Check => ({
      calculation: 'hole-to-mark',
      what: `the zone of a 2 in pipe with ${zoneEachSide} on each side`,
      kind: 'reference',
      source: ours,
      reference: 'util-01',
      given: { zoneEachSide, facilityWidth: '2 in' },
      gives: 'zoneWidth',
      unit: 'in',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'hole-to-mark',
    what: 'the nearest point of the hole’s rim to the zone',
    kind: 'second derivation',
    source: 'second derivation: a thousand points of the rim, the nearest of them taken',
    given: { markDistance: '40 in', holeDiameter: '10 in', zoneEachSide: '24 in', facilityWidth: '2 in' },
    gives: 'edgeToZone',
    unit: 'in',
    expected: () => {
      const rim = Array.from({ length: 1000 }, (_, i) => 40 + 5 * Math.cos((i / 500) * Math.PI))
      return Math.min(...rim) - 25
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'hole-to-mark',
    what: 'the nearest point of a square hole, however it is turned',
    kind: 'second derivation',
    source:
      'second derivation: the square turned through 3,600 positions, its four corners each time, the nearest taken',
    given: {
      markDistance: '32 in',
      holeDiameter: '12 in',
      holeShape: 'square',
      zoneEachSide: '24 in',
      facilityWidth: '2 in',
    },
    gives: 'edgeToZone',
    unit: 'in',
    expected: () => {
      let nearest = Infinity
      for (let i = 0; i < 3600; i++) {
        const [cos, sin] = [Math.cos((i / 1800) * Math.PI), Math.sin((i / 1800) * Math.PI)]
        for (const [x, y] of [
          [6, 6],
          [6, -6],
          [-6, 6],
          [-6, -6],
        ] as const)
          nearest = Math.min(nearest, 32 + x * cos - y * sin)
      }
      return nearest - 25
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'clearance',
    what: 'what is missing from 36 in when there are 30',
    kind: 'library',
    source: mathjsWorks,
    given: { clearanceRule: '36 in', clearanceMeasured: '30 in' },
    gives: 'clearanceShort',
    unit: 'in',
    expected: () => byMathjs('3 ft - 30 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'post-line',
    what: 'the furthest of all that stands out, laid off from the lot line',
    kind: 'library',
    source: mathjsWorks,
    given: {
      setback: '6 in',
      picketSide: 'outside',
      postWidth: '3 1/2 in',
      railThickness: '1 1/2 in',
      picketThickness: '3/4 in',
    },
    gives: 'postLineOffset',
    unit: 'in',
    expected: () => byMathjs('0.5 ft + 3/4 inch + 1.5 inch + 3.5 inch / 2', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'post-line',
    what: 'a cap that stands out further than the pickets: every part laid off from the line, the nearest of them just at the setback',
    kind: 'second derivation',
    source:
      'second derivation: the posts moved back by thousandths until no corner of post, pickets or cap is nearer than the setback',
    given: {
      setback: '3 in',
      picketSide: 'between',
      postWidth: '3 1/2 in',
      picketThickness: '3/4 in',
      capOverhang: '1 1/4 in',
    },
    gives: 'postLineOffset',
    unit: 'in',
    expected: () => {
      let thousandths = 0
      const nearest = (middle: number): number => Math.min(middle - 1.75, middle - 1.75 - 0.75, middle - 1.75 - 1.25)
      while (nearest(thousandths / 1000) < 3) thousandths++
      return thousandths / 1000
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'height-both-sides',
    what: 'a 48 in fence over a step of 14 in, from the lower side',
    kind: 'library',
    source: mathjsWorks,
    given: { fenceHeight: '48 in', gradeDifference: '14 in' },
    gives: 'heightOtherSide',
    unit: 'in',
    expected: () => byMathjs('4 ft + 14 inch', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'sight-triangle',
    what: 'the area with legs of 25 ft',
    kind: 'reference',
    source: ours,
    reference: 'util-05',
    given: { sightLegs: ['25 ft'] },
    gives: 'sightArea',
    unit: 'ft2',
    expected: 312.5,
    tolerance: 0,
  },
  {
    calculation: 'sight-triangle',
    what: 'its long side',
    kind: 'reference',
    source: ours,
    reference: 'util-05',
    given: { sightLegs: ['25 ft'] },
    gives: 'sightSide',
    unit: 'ft',
    expected: 35.36,
    tolerance: 0.005,
  },
  ...(
    [
      [4, 2, 0],
      [5, 5, 1],
      [1, 6, 1],
      [6, 0.5, 0],
    ] as const
  ).map(
    ([along, back, expected]): Check => ({
      calculation: 'sight-triangle',
      what: `a place ${along} and ${back} m from a corner with legs of 7 m`,
      kind: 'second derivation',
      source: 'second derivation: the side of the long side on which the place lies, by the sign of a cross product',
      given: { sightLegs: ['7 m'], fenceAlong: [`${along} m`, `${back} m`] },
      gives: 'outsideSight',
      unit: 'verdict',
      expected: () => {
        // The long side runs from (7, 0) to (0, 7); the corner itself lies inside.
        const turn = (x: number, y: number): number => (0 - 7) * (y - 0) - (7 - 0) * (x - 7)
        const inside = Math.sign(turn(along, back)) === Math.sign(turn(0, 0))
        if (Number(inside) === expected) throw new Error('the check expects the other side')
        return inside ? 0 : 1
      },
      tolerance: 0,
    }),
  ),
  ...(
    [
      ['leavesFirst', 0],
      ['leavesSecond', 1],
    ] as const
  ).map(
    ([gives, street]): Check => ({
      calculation: 'sight-triangle',
      what: `walking along street ${street + 1} beside a fence 8 and 10 ft back, legs of 25 and 40 ft: ${gives}`,
      kind: 'second derivation',
      source:
        'second derivation: a place moved along the fence by thousandths of a foot until the three areas it makes with the triangle’s corners are more than the triangle',
      given: { sightLegs: ['25 ft', '40 ft'], fenceAlong: ['8 ft', '10 ft'] },
      gives,
      unit: 'ft',
      expected: () => {
        const area = (ax: number, ay: number, bx: number, by: number, cx: number, cy: number): number =>
          Math.abs((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2
        const isInside = (x: number, y: number): boolean =>
          area(x, y, 0, 0, 25, 0) + area(x, y, 25, 0, 0, 40) + area(x, y, 0, 40, 0, 0) <= 500 + 1e-9
        let walked = 0
        while (street === 0 ? isInside(8 + walked / 1000, 10) : isInside(8, 10 + walked / 1000)) walked++
        return (street === 0 ? 8 : 10) + walked / 1000
      },
      tolerance: 0.0011,
    }),
  ),
  ...(
    [
      ['42 in', 0],
      ['45 in', 1],
      ['44 15/16 in', 0],
    ] as const
  ).map(
    ([railsApart, expected]): Check => ({
      calculation: 'pool-barrier',
      what: `rails ${railsApart} apart with gaps of 2 1/2 in`,
      kind: 'handbook',
      source:
        'ISPSC 2018, 305.2.5 and 305.2.6, https://www.thebuildingcodeforum.com/forum/threads/r2-pool-barrier.30545/latest',
      reference: 'gate-07-pool',
      given: { country: 'us', barrierHeight: '48 in', railsApart, barrierGap: '2 1/2 in', railSide: 'pool' },
      gives: 'poolHolds',
      unit: 'verdict',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'old-fence-out',
    what: 'a solid footing 10 in wide and 24 in deep',
    kind: 'library',
    source: mathjsWorks,
    given: { footingWidth: '10 in', footingDepth: '24 in', hardDensity: '150 lb/ft3' },
    gives: 'footingWeight',
    unit: 'lb',
    expected: () => byMathjs('pi / 4 * (10 inch)^2 * 24 inch * 150 lb / ft^3', 'lb'),
    tolerance: 1e-6,
  },
  {
    calculation: 'old-fence-out',
    what: 'a footing with the room of its post, cut into a fine grid',
    kind: 'second derivation',
    source:
      'second derivation: the footing’s section cut into 810,000 cells, those outside the post counted and weighed',
    given: { footingWidth: '300 mm', footingDepth: '600 mm', oldPostWidth: '100 mm', hardDensity: '2400 kg/m3' },
    system: 'metric',
    gives: 'footingWeight',
    unit: 'kg',
    expected: () => {
      const cells = 900
      let full = 0
      for (let i = 0; i < cells; i++)
        for (let j = 0; j < cells; j++) {
          const [x, y] = [((i + 0.5) / cells - 0.5) * 0.3, ((j + 0.5) / cells - 0.5) * 0.3]
          if (x * x + y * y <= 0.15 ** 2 && (Math.abs(x) > 0.05 || Math.abs(y) > 0.05)) full++
        }
      return full * (0.3 / cells) ** 2 * 0.6 * 2400
    },
    tolerance: 0.05,
  },
  {
    calculation: 'old-fence-out',
    what: 'pieces broken off one footing',
    kind: 'second derivation',
    source: 'second derivation: one person’s lift taken off the footing until nothing is left',
    given: { footingWidth: '10 in', footingDepth: '24 in' },
    gives: 'footingPieces',
    unit: 'piece',
    expected: () => {
      let [left, pieces] = [((Math.PI / 4) * 100 * 24 * 150) / 1728, 0]
      while (left > 0) {
        left -= 51
        pieces++
      }
      return pieces
    },
    tolerance: 0,
  },
]
