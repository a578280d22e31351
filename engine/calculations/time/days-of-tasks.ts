// How many days each task of a fence takes, from its hours, the hands and the hours of a day.
//
//   holes   ██████████ 16 h ÷ 2 hands ÷ 5 h a day   1.6, so 2 days;
//   rails   ███         4 h ÷ 2 hands ÷ 5 h a day   0.4, so 1 day: a day begun counts whole
import { calculation } from '../../calculation.ts'
import { quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dayHours, diggingTime, helpers } from '../../words/digging.ts'
import { digWork, gateWork, picketWork, railWork, setWork } from '../../words/job-calendar.ts'
import { crew, gateBuilding, picketHanging, railFitting, settingTime } from '../../words/work-hours.ts'

/** The hours of each task, and the days they give. */
const tasks = [
  ['diggingTime', 'digWork'],
  ['settingTime', 'setWork'],
  ['railFitting', 'railWork'],
  ['picketHanging', 'picketWork'],
  ['gateBuilding', 'gateWork'],
] as const

export const daysOfTasks = calculation({
  name: 'days-of-tasks',
  title: 'Days for each task',
  answers: 'How many days the holes, posts, rails, pickets and gates take, each from its hours, with helpers.',
  needs: { diggingTime, settingTime, railFitting, picketHanging, gateBuilding, helpers, crew, dayHours },
  may: ['diggingTime', 'settingTime', 'railFitting', 'picketHanging', 'gateBuilding', 'helpers', 'crew'],
  oneOf: [['diggingTime', 'settingTime', 'railFitting', 'picketHanging', 'gateBuilding']],
  gives: { digWork, setWork, railWork, picketWork, gateWork },
  headlines: ['picketWork'],
  ofTheFence: true,
  locals: { people: 'number', oneDay: 'duration' },
  lines: {
    hands: ['helpers + 1', 'you work too'],
    ...Object.fromEntries(
      tasks.map(([hours, days]) => [
        days,
        [`ceil(${hours} / people / dayHours) * oneDay`, 'a day begun counts'] as const,
      ]),
    ),
  },
  work(given, { line, has, put, remark }) {
    put('oneDay', quantity(1, 'day'))
    if (has('crew')) put('people', { ...given.crew, kind: 'number', unit: 'ratio' })
    else put('people', has('helpers') ? line('hands') : quantity(1, 'ratio'))
    for (const [hours, days] of tasks) if (has(hours)) line(days)
    remark(`Days of ${show(given.dayHours)}. Rain, rock and a first try take more.`)
  },
  sources: [
    { fact: 'days = hours / hands / hours a day, a day begun counted whole', from: 'Arithmetic; needs no table.' },
  ],
  cautions: [],
  examples: [
    // 16/2/5 = 1.6 → 2; 4/2/5 = 0.4 → 1
    {
      ask: 'Digging is 16 hours and the rails are 4 hours, with 1 helper and 5 hours a day: how many days for each?',
      given: { diggingTime: '16 h', railFitting: '4 h', helpers: '1', dayHours: '5 h' },
      expect: { digWork: '2 days', railWork: '1 day' },
    },
    // 21/6 = 3.5 → 4; 10/6 → 2
    {
      ask: 'Pickets take 21 hours and two gates 10, alone, 6 hours a day: how many days?',
      given: { picketHanging: '21 h', gateBuilding: '10 h', dayHours: '6 h' },
      expect: { picketWork: '4 days', gateWork: '2 days' },
    },
  ],
})
