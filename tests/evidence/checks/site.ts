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
      ['42 in', 0],
      ['45 in', 1],
      ['44 15/16 in', 0],
    ] as const
  ).map(
    ([railTopsApart, expected]): Check => ({
      calculation: 'pool-barrier',
      what: `rails ${railTopsApart} apart with gaps of 2 1/2 in`,
      kind: 'handbook',
      source:
        'ISPSC 2018, 305.2.5 and 305.2.6, https://www.thebuildingcodeforum.com/forum/threads/r2-pool-barrier.30545/latest',
      reference: 'gate-07-pool',
      given: { country: 'us', barrierHeight: '48 in', railTopsApart, barrierGap: '2 1/2 in', railSide: 'pool' },
      gives: 'poolFails',
      unit: 'verdict',
      expected,
      tolerance: 0,
    }),
  ),
]
