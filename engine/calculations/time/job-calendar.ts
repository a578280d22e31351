// The days of the whole job, from the call to the last coat, and which of its parts decide the end.
//
//   call ── notice ── holes ──(inspection)── posts ── concrete ── rails ── pickets ── dry ── coat ── coat
//     └───── wood on its way ──────────────────┘  └── gates ──┘
//
// You are one pair of hands: digging, posts, gates, rails, pickets and coats come one after the other, on your own days.
// Notice and inspection count working days; the wood on its way, concrete and drying count every day.
import { calculation } from '../../calculation.ts'
import { decidingPath, endOf, type Placed, place, slackOf } from '../../critical-path.ts'
import { jobCalendarDrawing } from '../../drawings/job-calendar.ts'
import { tasksOf, wholeDays } from '../../job-plan.ts'
import { exact, toNumber } from '../../quantities/amount.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { railsUp } from '../../words/curing.ts'
import { callDate, holidays, noticeDays } from '../../words/digging-notice.ts'
import { coats } from '../../words/finish.ts'
import {
  betweenCoats,
  coatWork,
  digWork,
  dryWait,
  finishDate,
  firstCoatDate,
  gateWork,
  inspectionWait,
  jobDays,
  ownDays,
  picketWork,
  postsSetDate,
  railWork,
  setWork,
  woodWait,
} from '../../words/job-calendar.ts'

/** Longer than this is no fence but a slip of units. */
const longestPart = 800
const longestNotice = 60
const parts = [
  'woodWait',
  'digWork',
  'setWork',
  'railsUp',
  'gateWork',
  'railWork',
  'picketWork',
  'dryWait',
  'coatWork',
  'betweenCoats',
] as const

export const jobCalendar = calculation({
  name: 'job-calendar',
  title: 'The job day by day',
  answers:
    'When the fence is finished, from the day of the call and the days that each part takes, which parts decide that, and how late the others may be.',
  needs: {
    callDate,
    noticeDays,
    holidays,
    ownDays,
    woodWait,
    digWork,
    inspectionWait,
    setWork,
    railsUp,
    gateWork,
    railWork,
    picketWork,
    dryWait,
    coats,
    coatWork,
    betweenCoats,
  },
  may: ['holidays', 'woodWait', 'inspectionWait', 'gateWork'],
  usually: {
    railsUp: {
      value: '2 days',
      because: 'rails a day or two after the concrete; the bag comes first, and cold makes it longer',
      from: 'common practice, no source',
    },
  },
  gives: { finishDate, jobDays, postsSetDate, firstCoatDate },
  headlines: ['finishDate'],
  together: {
    finishDate: ['finishDate', 'jobDays', 'postsSetDate', 'firstCoatDate'],
    jobDays: ['jobDays', 'finishDate'],
    postsSetDate: ['postsSetDate'],
    firstCoatDate: ['firstCoatDate', 'finishDate'],
  },
  locals: { oneDay: 'duration', finishDate: 'date' },
  lines: {
    jobDays: ['finishDate - callDate + oneDay', 'one date less the other, the first day counted as well'],
  },
  work(given, { line, has, assumed, put, tell, rows, refuse, remark, table }) {
    for (const name of parts)
      if (has(name) && wholeDays(given[name]) > longestPart)
        refuse(name, `${show(given[name])} is longer than any part of a fence. Check the figure and its unit.`)
    for (const name of ['noticeDays', 'inspectionWait'] as const)
      if (has(name) && wholeDays(given[name]) > longestNotice)
        refuse(name, `${show(given[name])} is longer than I count. Check the figure.`)
    const asDate = (day: number): Quantity => ({ ...given.callDate, amount: exact(day) })
    const call = toNumber(given.callDate.amount)
    const tasks = tasksOf({
      maybe: (name) => (has(name as keyof typeof given) ? (given[name as keyof typeof given] as Quantity) : undefined),
      ownDays: given.ownDays,
      holidays: has('holidays') ? rows('holidays') : [],
    })
    const placed = place(tasks, call)
    const last = asDate(endOf(placed))
    tell('finishDate', last)
    put('oneDay', quantity(1, 'day'))
    line('jobDays')
    const at = (name: string): Quantity => asDate(placed.find((it) => it.name === name)?.last ?? call)
    tell('postsSetDate', at('posts set'))
    const first = placed.find((it) => it.name === 'coat 1') as Placed
    tell('firstCoatDate', asDate(Math.min(first.first, first.last)))
    const path = decidingPath(placed)
    const slack = slackOf(placed)
    table({
      title: 'Part by part',
      columns: [
        { label: 'part', unit: '' },
        { label: 'from', unit: 'date' },
        { label: 'to', unit: 'date' },
        { label: 'decides', unit: '' },
        { label: 'days it may slip', unit: 'day' },
      ],
      rows: placed
        .filter((it) => it.days > 0)
        .map((it) => [
          it.name,
          show(asDate(it.first)),
          show(asDate(it.last)),
          path.includes(it.name) ? 'yes' : '',
          slack.get(it.name) as number,
        ]),
    })
    remark(
      `What decides the end: ${path.join(' → ')}. A day lost there is mostly a day lost for good; the others may slip as the table says.`,
    )
    if (path.some((it) => (slack.get(it) as number) > 0))
      remark(
        'Where even a deciding part may slip a little, it is because the next one waits for one of your own days, or an office’s.',
      )
    const usual = Object.keys(usualNames).filter((it) => assumed(it as keyof typeof usualNames))
    if (usual.length > 0)
      remark(
        `Usual, not yours: ${usual.map((it) => usualNames[it as keyof typeof usualNames]).join(', ')}. Give your own, and I reckon again.`,
      )
    if (!has('woodWait')) remark('I took the wood to be in your yard before the posts go in.')
    if (!has('inspectionWait'))
      remark(
        'I put in no inspection. If your permit asks for one of the open holes, say how many working days it takes to come.',
      )
    remark(
      'Dig only when every utility has answered. Rain, rock and the can’s own limits move all of it: put in what has happened, and ask again.',
    )
  },
  sources: [
    {
      fact: 'the day of the call does not count, and the days of notice must pass whole',
      from: 'As some one-call centres count, for instance https://www.sc811.com/notice-calendar/ : a Monday call and three full working days give Friday',
    },
    {
      fact: 'the end is decided by the longest chain of parts that wait for each other',
      from: 'The critical path of a plan of tasks; worked, no table.',
    },
    { fact: 'usual days for each part', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole', 'weather'],
  drawing: jobCalendarDrawing,
  examples: [
    // Mon 1: call; 2–4 notice; Fri 5–6 holes; 7 posts; 8–10 concrete; 11 rails; 12–13 pickets; 14–27 dry; 28 coat; 29 between; 30 coat
    {
      ask: 'I call on 1 June 2026 with 3 full working days notice. Digging takes 2 days, setting posts 1 day, the concrete cures for 3 days, rails 1 day, pickets 2 days, 14 days to dry, then 2 coats. When is the fence finished?',
      given: {
        callDate: '2026-06-01',
        noticeDays: '3',
        digWork: '2 days',
        setWork: '1 day',
        railsUp: '3 days',
        railWork: '1 day',
        picketWork: '2 days',
        dryWait: '14 days',
        coats: '2',
      },
      expect: {
        finishDate: 'Tuesday 30 June 2026',
        jobDays: '30 days',
        postsSetDate: 'Sunday 7 June 2026',
        firstCoatDate: 'Sunday 28 June 2026',
      },
    },
    // Tue 3 Nov: call; Wed–Thu notice; Fri 6 may dig; Sat 7, Sun 8 holes; Sat 14 posts, the wood came on the 12th; 15–16 concrete;
    // Sat 21 rails; Sun 22, Sat 28 pickets; 29 Nov – 12 Dec dry (14 days); Sun 13 coat; 14 between; Sat 19 coat
    {
      ask: 'We call on 3 November 2026, 2 working days notice, and work at weekends only. The wood takes 10 days to come, 14 days to dry, 2 coats. When will it be finished?',
      given: {
        callDate: '2026-11-03',
        noticeDays: '2',
        ownDays: 'weekends',
        woodWait: '10 days',
        dryWait: '14 days',
        coats: '2',
      },
      expect: { finishDate: 'Saturday 19 December 2026', jobDays: '47 days' },
    },
  ],
})

const usualNames = {
  digWork: 'digging',
  setWork: 'setting posts',
  railsUp: 'concrete',
  railWork: 'rails',
  picketWork: 'pickets',
  dryWait: 'drying',
  coats: 'coats',
  coatWork: 'days a coat',
  betweenCoats: 'between coats',
  ownDays: 'the days you work',
} as const
