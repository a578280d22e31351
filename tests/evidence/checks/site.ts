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

/** A corner-on meter box and a straight fence in coordinates: the fence moved away by whole steps until no corner of the box is nearer than the rule. */
function movedByCorners(rule: number, measured: number, step: number): number {
  const box = [
    [0, 0],
    [10, 0],
    [10, 15],
    [0, 15],
  ] as const
  // The fence runs along 3x + 4y = c; five is the length of (3, 4). It is set up so that its nearest corner is as far off as measured.
  const nearest = (c: number): number => Math.min(...box.map(([x, y]) => (c - 3 * x - 4 * y) / 5))
  let c = 0
  while (nearest(c) < measured - 1e-9) c += 5 * step
  let steps = 0
  while (nearest(c + 5 * steps * step) < rule - 1e-9) steps++
  return steps * step
}

/** A length in ten-thousandths of a millimetre, all of them whole: a sixteenth of an inch is 15,875. */
const tiny = (text: string): number => {
  const [inches, sixteenths, millimetres] = text.split('+').map(Number) as [number, number, number]
  return (inches * 16 + sixteenths) * 15_875 + millimetres * 10_000
}

/** A fence over a step in the ground, on a pole marked in whole steps: how far its top stands over each level between the two grounds. */
function heightsOverStep(height: number, fall: number, step: number): { lower: number; all: number[] } {
  // The pole's zero is somewhere below. Own ground, the other ground and the top are found by walking along its marks.
  let [own, other, top] = [1_000_000, 1_000_000, 1_000_000]
  for (let gone = 0; gone < fall - 1e-9; gone += step) other--
  for (let gone = 0; gone < height - 1e-9; gone += step) top++
  const all: number[] = []
  for (let level = other; level <= own; level++) all.push((top - level) * step)
  return { lower: all[0] as number, all }
}

/** The level half way between the two grounds, found by halving; the top over it. */
function heightOverMean(height: number, fall: number): number {
  let [low, high] = [-fall, 0]
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2
    if (middle - -fall < 0 - middle) low = middle
    else high = middle
  }
  return height - low
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
  ...(
    [
      [36, 27.25, 'in', 1 / 16],
      [60, 44.0625, 'in', 1 / 16],
      [36, 41.5, 'in', 1 / 16],
      [1000, 815, 'mm', 1],
      [900, 900, 'mm', 1],
    ] as const
  ).map(
    ([rule, measured, unit, step]): Check => ({
      calculation: 'clearance',
      what: `a box that stands corner-on to the fence, ${measured} ${unit} from it, where ${rule} are asked`,
      kind: 'second derivation',
      source:
        'second derivation: box and fence by coordinates, the fence moved away a step at a time until no corner of the box is nearer than the rule',
      given: { clearanceRule: `${rule} ${unit}`, clearanceMeasured: `${measured} ${unit}` },
      system: unit === 'mm' ? 'metric' : 'imperial',
      gives: 'clearanceShort',
      unit,
      expected: () => movedByCorners(rule, measured, step),
      tolerance: 1e-9,
    }),
  ),
  // Inches, sixteenths and millimetres of each, for the count.
  ...(
    [
      ['1 m', '39 3/8 in', '0+0+1000', '39+6+0'],
      ['1 m', '39 5/16 in', '0+0+1000', '39+5+0'],
      ['36 in', '914 mm', '36+0+0', '0+0+914'],
      ['36 in', '915 mm', '36+0+0', '0+0+915'],
      ['3 ft', '914.4 mm', '36+0+0', '0+0+914.4'],
      ['3 ft', '35 15/16 in', '36+0+0', '35+15+0'],
    ] as const
  ).map(
    ([clearanceRule, clearanceMeasured, rule, measured]): Check => ({
      calculation: 'clearance',
      what: `${clearanceMeasured} of room against ${clearanceRule}`,
      kind: 'second derivation',
      source:
        'second derivation: both counted in ten-thousandths of a millimetre, an inch being 25.4 mm exactly (NIST SP 811, appendix B)',
      given: { clearanceRule, clearanceMeasured },
      gives: 'clearanceHolds',
      unit: 'verdict',
      expected: () => (tiny(measured) >= tiny(rule) ? 1 : 0),
      tolerance: 0,
    }),
  ),
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
  ...(
    [
      [45.25, 13.6875, 'in', 1 / 16],
      [70, 27.5, 'in', 1 / 16],
      [1215, 385, 'mm', 1],
    ] as const
  ).flatMap(([height, fall, unit, step]): Check[] => {
    const shared = {
      calculation: 'height-both-sides',
      given: { fenceHeight: `${height} ${unit}`, gradeDifference: `${fall} ${unit}` },
      system: unit === 'mm' ? 'metric' : 'imperial',
      kind: 'second derivation',
      unit,
      tolerance: 1e-9,
    } as const
    const what = `a fence of ${height} ${unit} over a step of ${fall}`
    return [
      {
        ...shared,
        what: `${what}, from the lower side`,
        source:
          'second derivation: a pole marked in whole steps, its marks counted from the lower ground to the fence’s top',
        gives: 'heightOtherSide',
        expected: () => heightsOverStep(height, fall, step).lower,
      },
      {
        ...shared,
        what: `${what}, from half way between`,
        source: 'second derivation: the level that is as far from one ground as from the other, found by halving',
        given: { ...shared.given, heightLimit: `${height} ${unit}`, heightDatum: 'mean' },
        gives: 'heightByRule',
        expected: () => heightOverMean(height, fall),
      },
    ]
  }),
  ...(
    [
      [48, 14, 62, 'in', 1 / 16],
      [48, 14, 61.9375, 'in', 1 / 16],
      [48, 14, 48, 'in', 1 / 16],
      [48, 14, 47.9375, 'in', 1 / 16],
      [1200, 385, 1585, 'mm', 1],
      [1200, 385, 1584, 'mm', 1],
      [1200, 385, 1199, 'mm', 1],
    ] as const
  ).map(
    ([height, fall, limit, unit, step]): Check => ({
      calculation: 'height-both-sides',
      what: `${height} ${unit} over a step of ${fall} against a limit of ${limit}, the side it is measured from not known`,
      kind: 'second derivation',
      source:
        'second derivation: every mark between the two grounds tried as the level to measure from: all hold, none holds, or it depends',
      given: {
        fenceHeight: `${height} ${unit}`,
        gradeDifference: `${fall} ${unit}`,
        heightLimit: `${limit} ${unit}`,
      },
      system: unit === 'mm' ? 'metric' : 'imperial',
      gives: 'heightHolds',
      unit: 'verdict',
      expected: () => {
        const holds = heightsOverStep(height, fall, step).all.map((it) => it <= limit + 1e-9)
        return holds.every((it) => it) ? 1 : holds.some((it) => it) ? -1 : 0
      },
      tolerance: 0,
    }),
  ),
  ...(
    [
      ['lower', 62, 1],
      ['lower', 61.9375, 0],
      ['mean', 55, 1],
      ['mean', 54.9375, 0],
      ['higher', 48, 1],
      ['higher', 47.9375, 0],
    ] as const
  ).map(
    ([heightDatum, limit, holds]): Check => ({
      calculation: 'height-both-sides',
      what: `48 in over a step of 14 against a limit of ${limit} in, measured from the ${heightDatum} level`,
      kind: 'second derivation',
      source: 'second derivation: the pole’s marks counted from that level to the top, one by one, up to the limit',
      given: { fenceHeight: '48 in', gradeDifference: '14 in', heightLimit: `${limit} in`, heightDatum },
      gives: 'heightHolds',
      unit: 'verdict',
      expected: () => {
        const { all } = heightsOverStep(48, 14, 1 / 16)
        const at = { lower: 0, mean: (all.length - 1) / 2, higher: all.length - 1 }[heightDatum]
        if (((all[at] as number) <= limit ? 1 : 0) !== holds) throw new Error('the check expects the other verdict')
        return holds
      },
      tolerance: 0,
    }),
  ),
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
