// This file is about the evidence for time: working days against the platform's own calendar, the job's end against every path tried.
import type { Ran } from '../../engine/run-named.ts'
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const noticeCalendar =
  'SC811 notice calendar, https://www.sc811.com/notice-calendar/ : a Monday call and three full working days give Friday'
const platform = 'the calendar of the JavaScript platform (Date, in UTC), day by day'

const dayNumber = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000
const isWeekday = (day: number): boolean => ![0, 6].includes(new Date(day * 86_400_000).getUTCDay())

function workingDays(from: string, to: string, closed: readonly string[] = []): number {
  const off = new Set(closed.map(dayNumber))
  let count = 0
  for (let day = dayNumber(from); day <= dayNumber(to); day++) if (isWeekday(day) && !off.has(day)) count++
  return count
}

/** A day of the table of parts, by its row and column: `Friday 9 October 2026` as a day number. */
const inParts =
  (part: string, column: 'from' | 'to') =>
  ({ outcome }: Ran): number => {
    const row = outcome.ok ? outcome.tables[0]?.rows.find((it) => it[0] === part) : undefined
    const text = String(row?.[column === 'from' ? 1 : 2]).replace(/^\w+ /, '')
    return Date.parse(`${text} UTC`) / 86_400_000
  }
const slackIn =
  (part: string) =>
  ({ outcome }: Ran): number =>
    Number((outcome.ok ? outcome.tables[0]?.rows.find((it) => it[0] === part) : undefined)?.[4])

/** The job as a network of days, where every day counts: what each part takes, and what it waits for. */
type Network = Readonly<Record<string, readonly [days: number, after: readonly string[]]>>

/** Every path from a start to an end, written out, and the longest of them. */
function longestOfAllPaths(parts: Network): number {
  const next = (name: string): string[] => Object.keys(parts).filter((it) => parts[it]?.[1].includes(name))
  const lengths: number[] = []
  const walk = (name: string, so_far: number): void => {
    const total = so_far + (parts[name]?.[0] ?? 0)
    const on = next(name)
    if (on.length === 0) lengths.push(total)
    for (const it of on) walk(it, total)
  }
  for (const [name, [, after]] of Object.entries(parts)) if (after.length === 0) walk(name, 0)
  return Math.max(...lengths)
}

const allPaths = 'exhaustive search: every path through the parts is written out, and the longest one counts'
/** Monday 1 June 2026, three full working days to Thursday, so that no weekend lies in the notice. */
const network = (
  of: Partial<Record<'wood' | 'dig' | 'set' | 'cure' | 'gates' | 'rails' | 'pickets' | 'dry', number>>,
): Network => ({
  call: [1, []],
  notice: [3, ['call']],
  wood: [of.wood ?? 0, []],
  dig: [of.dig ?? 2, ['notice']],
  set: [of.set ?? 1, ['dig', 'wood']],
  cure: [of.cure ?? 2, ['set']],
  gates: [of.gates ?? 0, ['set']],
  rails: [of.rails ?? 1, ['cure', 'gates']],
  pickets: [of.pickets ?? 2, ['rails']],
  dry: [of.dry ?? 21, ['pickets']],
  coat1: [1, ['dry']],
  wait: [1, ['coat1']],
  coat2: [1, ['wait']],
})

/** Counted forward one day at a time: each day every part that is free and whose day it is goes on by one. */
function endDayByDay(start: string, isOwn: (day: number) => boolean): number {
  const parts: { name: string; left: number; after: string[]; on: (day: number) => boolean }[] = [
    { name: 'call', left: 1, after: [], on: () => true },
    { name: 'notice', left: 2, after: ['call'], on: isWeekday },
    { name: 'wood', left: 10, after: [], on: () => true },
    { name: 'dig', left: 2, after: ['notice'], on: isOwn },
    { name: 'set', left: 1, after: ['dig', 'wood'], on: isOwn },
    { name: 'cure', left: 2, after: ['set'], on: () => true },
    { name: 'rails', left: 1, after: ['cure'], on: isOwn },
    { name: 'pickets', left: 2, after: ['rails'], on: isOwn },
    { name: 'dry', left: 14, after: ['pickets'], on: () => true },
    { name: 'coat1', left: 1, after: ['dry'], on: isOwn },
    { name: 'wait', left: 1, after: ['coat1'], on: () => true },
    { name: 'coat2', left: 1, after: ['wait'], on: isOwn },
  ]
  let day = dayNumber(start)
  for (; ; day++) {
    const open = new Set(parts.filter((it) => it.left > 0).map((it) => it.name))
    for (const it of parts) if (it.left > 0 && it.on(day) && it.after.every((name) => !open.has(name))) it.left--
    if (parts.every((it) => it.left === 0)) return day
  }
}

const june = { callDate: '2026-06-01', noticeDays: '3', coats: '2' }

export const timeChecks: readonly Check[] = [
  ...(
    [
      ['2025-06-15', '90 days', 'dateLater', () => dayNumber('2025-06-15') + 90],
      ['2024-01-31', '1 month', 'dateLater', () => dayNumber('2024-02-29')],
      ['2025-06-01', '6 weeks', 'dateEarlier', () => dayNumber('2025-06-01') - 42],
    ] as const
  ).map(
    ([fromDay, laterBy, gives, expected]): Check => ({
      calculation: 'days-later',
      what: `${laterBy} from ${fromDay}`,
      kind: 'library',
      source: platform,
      given: { fromDay, laterBy },
      gives,
      unit: 'date',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'working-days-before',
    what: 'the first of fifteen working days that end on a Friday',
    kind: 'library',
    source: platform,
    given: { finishBy: '2026-06-19', daysAhead: '15' },
    gives: 'startOn',
    unit: 'date',
    expected: () => {
      let day = dayNumber('2026-06-19') + 1
      for (let left = 15; left > 0; ) if (isWeekday(--day)) left--
      return day
    },
    tolerance: 0,
  },
  {
    calculation: 'working-days-later',
    what: 'the last of twelve working days of which the first is the day of the start',
    kind: 'library',
    source: platform,
    given: { fromDay: '2025-03-03', daysAhead: '12' },
    gives: 'lastWorkDay',
    unit: 'date',
    expected: () => {
      let day = dayNumber('2025-03-03')
      for (let left = isWeekday(day) ? 11 : 12; left > 0; ) if (isWeekday(++day)) left--
      return day
    },
    tolerance: 0,
  },
  {
    calculation: 'working-days-later',
    what: 'the first day to dig: the fourth working day after a Monday call with three full ones',
    kind: 'published',
    source: noticeCalendar,
    given: { fromDay: '2026-10-05', daysAhead: '4' },
    gives: 'dayReached',
    unit: 'date',
    expected: () => dayNumber('2026-10-09'),
    tolerance: 0,
  },
  {
    calculation: 'working-days-later',
    what: 'the 250th working day over a year’s end, with five holidays',
    kind: 'library',
    source: platform,
    given: {
      fromDay: '2026-07-03',
      daysAhead: '250',
      holidays: ['2026-09-07', '2026-11-26', '2026-12-25', '2027-01-01', '2027-05-31'],
    },
    gives: 'dayReached',
    unit: 'date',
    expected: () => {
      const off = new Set(['2026-09-07', '2026-11-26', '2026-12-25', '2027-01-01', '2027-05-31'].map(dayNumber))
      let day = dayNumber('2026-07-03')
      for (let left = 250; left > 0; ) {
        day++
        if (isWeekday(day) && !off.has(day)) left--
      }
      return day
    },
    tolerance: 0,
  },
  {
    calculation: 'working-days-between',
    what: 'a leap year from end to end',
    kind: 'library',
    source: platform,
    given: { fromDay: '2028-01-01', toDay: '2028-12-31' },
    gives: 'workingDaysBoth',
    unit: 'working day',
    expected: () => workingDays('2028-01-01', '2028-12-31'),
    tolerance: 0,
  },
  {
    calculation: 'working-days-between',
    what: 'a year’s end with three holidays, the first day not counted',
    kind: 'library',
    source: platform,
    given: { fromDay: '2026-12-18', toDay: '2027-01-08', holidays: ['2026-12-25', '2026-12-28', '2027-01-01'] },
    gives: 'workingDaysAfter',
    unit: 'working day',
    expected: () => workingDays('2026-12-19', '2027-01-08', ['2026-12-25', '2026-12-28', '2027-01-01']),
    tolerance: 0,
  },
  {
    calculation: 'job-hours',
    what: 'hours of 17 posts, 36 rails, 212 pickets and 2 gates',
    kind: 'library',
    source: mathjsWorks,
    given: { posts: '17', railsInAll: '36', picketsHung: '212', gates: '2', gateTime: '4 h' },
    gives: 'workTime',
    unit: 'h',
    expected: () => byMathjs('17 * 30 minutes + 36 * 10 minutes + 212 * 3 minutes + 2 * 4 hours', 'hours'),
    tolerance: 1e-9,
  },
  {
    calculation: 'job-hours',
    what: 'days of the same for three people, worked off six hours at a time',
    kind: 'second derivation',
    source: 'minute by minute in whole numbers: the minutes of all tasks are worked off, three at once, 360 to a day',
    given: {
      posts: '17',
      railsInAll: '36',
      picketsHung: '212',
      gates: '2',
      gateTime: '4 h',
      helpers: '2',
      dayHours: '6 h',
    },
    gives: 'workDays',
    unit: 'working day',
    expected: () => {
      let left = 17 * 30 + 36 * 10 + 212 * 3 + 2 * 240
      let days = 0
      for (; left > 0; days++) for (let minute = 0; minute < 360 && left > 0; minute++) left -= 3
      return days
    },
    tolerance: 0,
  },
  {
    calculation: 'job-calendar',
    what: 'the first day in the ground after a Monday call with three full working days',
    kind: 'published',
    source: noticeCalendar,
    given: { callDate: '2026-10-05', noticeDays: '3' },
    gives: 'finishDate',
    unit: 'date',
    got: inParts('holes', 'from'),
    expected: () => dayNumber('2026-10-09'),
    tolerance: 0,
  },
  ...(
    [
      ['as usual', {}, {}],
      ['with wood that is long on its way', { woodWait: '19 days' }, { wood: 19 }],
      ['with gates that take longer than the concrete', { gateWork: '6 days' }, { gates: 6 }],
      [
        'with both, and other days for all',
        {
          woodWait: '12 days',
          gateWork: '4 days',
          digWork: '5 days',
          setWork: '3 days',
          railsUp: '3 days',
          railWork: '2 days',
          picketWork: '4 days',
          dryWait: '9 days',
        },
        { wood: 12, gates: 4, dig: 5, set: 3, cure: 3, rails: 2, pickets: 4, dry: 9 },
      ],
    ] as const
  ).map(
    ([what, given, days]): Check => ({
      calculation: 'job-calendar',
      what: `days from the call to the last coat, ${what}`,
      kind: 'second derivation',
      source: allPaths,
      given: { ...june, ...given },
      gives: 'jobDays',
      unit: 'day',
      expected: () => longestOfAllPaths(network(days)),
      tolerance: 0,
    }),
  ),
  {
    calculation: 'job-calendar',
    what: 'how late the wood may come: the end with it one day later than the slack, and not before, moves',
    kind: 'second derivation',
    source: `${allPaths}; the wait for the wood is made longer until the end moves`,
    given: { ...june, woodWait: '2 days' },
    gives: 'jobDays',
    unit: 'day',
    got: slackIn('wood comes'),
    expected: () => {
      const end = longestOfAllPaths(network({ wood: 2 }))
      let more = 0
      while (longestOfAllPaths(network({ wood: 2 + more + 1 })) === end) more++
      return more
    },
    tolerance: 0,
  },
  {
    calculation: 'job-calendar',
    what: 'weekends only, the wood ten days on its way',
    kind: 'second derivation',
    source: 'day by day on the platform’s calendar: each day every part that is free goes on by one',
    given: {
      callDate: '2026-11-03',
      noticeDays: '2',
      ownDays: 'weekends',
      woodWait: '10 days',
      dryWait: '14 days',
      coats: '2',
    },
    gives: 'finishDate',
    unit: 'date',
    expected: () => endDayByDay('2026-11-03', (day) => !isWeekday(day)),
    tolerance: 0,
  },
  ...(
    [
      ['september', 'south', 'spring'],
      ['december', 'south', 'summer'],
      ['march', 'south', 'autumn'],
      ['august', 'south', 'winter'],
    ] as const
  ).map(
    ([month, half, season]): Check => ({
      calculation: 'season-check',
      what: `${month} in the ${half}`,
      kind: 'published',
      source: 'Australian meteorological seasons by months, https://southernwheel.com.au/the-seasons',
      given: { coatMonth: month, hemisphere: half, nightLow: '12 °C' },
      gives: 'coatSeason',
      unit: 'yes',
      got: ({ outcome }) => (outcome.ok && outcome.values.get('coatSeason') === season ? 1 : 0),
      expected: 1,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'season-check',
    what: 'nights of 49 °F under a can of 10 °C, compared on the other scale',
    kind: 'library',
    source: mathjsWorks,
    given: { coatMonth: 'may', hemisphere: 'north', nightLow: '49 °F', leastPaintTemperature: '10 °C' },
    gives: 'warmEnough',
    unit: 'verdict',
    expected: () => (byMathjs('49 degF', 'degC') >= 10 ? 1 : 0),
    tolerance: 0,
  },
]
