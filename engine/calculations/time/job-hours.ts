// Hours of work from a pace for each task, and days from hours, hands and how long a day is.
//
//   posts ████████          so many an hour, so many hours;
//   rails ████              added up, shared by the hands,
//   pickets ██████████      cut into days
import { calculation } from '../../calculation.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bays, gates } from '../../words/bays.ts'
import { dayHours, helpers, holeTime } from '../../words/digging.ts'
import { railsInAll } from '../../words/framing.ts'
import { picketsHung } from '../../words/picket-count.ts'
import { posts } from '../../words/posts.ts'
import { rails } from '../../words/rails.ts'
import {
  crew,
  gateBuilding,
  gateTime,
  picketHanging,
  picketsAnHour,
  postsAnHour,
  railFitting,
  railsAnHour,
  settingTime,
  workClock,
  workDays,
  workTime,
} from '../../words/work-hours.ts'

const together = ['workTime', 'workClock', 'workDays']

export const jobHours = calculation({
  name: 'job-hours',
  title: 'Hours and days of work',
  answers:
    'How many hours the posts, rails, pickets and gates take at a pace you can change, by the clock with helpers, and how many days that is.',
  needs: {
    posts,
    railsInAll,
    rails,
    bays,
    picketsHung,
    gates,
    postsAnHour,
    railsAnHour,
    picketsAnHour,
    gateTime,
    holeTime,
    helpers,
    crew,
    dayHours,
  },
  may: ['posts', 'railsInAll', 'rails', 'bays', 'picketsHung', 'gates', 'holeTime', 'helpers', 'crew'],
  oneOf: [['posts', 'picketsHung', 'railsInAll', 'gates']],
  onlyFor: {
    posts: ['settingTime', ...together],
    railsInAll: ['railFitting', ...together],
    picketsHung: ['picketHanging', ...together],
    gates: ['gateBuilding', ...together],
    postsAnHour: ['settingTime', ...together],
    railsAnHour: ['railFitting', ...together],
    picketsAnHour: ['picketHanging', ...together],
    gateTime: ['gateBuilding', ...together],
    dayHours: ['workDays'],
  },
  gives: { workTime, workClock, workDays, settingTime, railFitting, picketHanging, gateBuilding },
  headlines: ['workTime', 'workDays'],
  together: {
    workTime: ['workTime', 'workClock'],
    workDays: ['workDays', 'workClock', 'workTime'],
  },
  locals: { oneHour: 'duration', people: 'number', tasks: 'duration', allRails: 'number', railsByBay: 'duration' },
  lines: {
    digging: ['sum(posts * holeTime)', 'every hole at the pace you gave'],
    settingTime: ['sum(posts) / postsAnHour * oneHour', 'so many an hour'],
    railFitting: ['railsInAll / railsAnHour * oneHour', 'so many an hour'],
    allRails: ['rails * bays', 'as many in every bay'],
    railsByBay: ['allRails / railsAnHour * oneHour', 'so many an hour'],
    picketHanging: ['picketsHung / picketsAnHour * oneHour', 'so many an hour'],
    gateBuilding: ['gates * gateTime', 'one gate after the other'],
    workTime: ['sum(tasks)', 'one task after the other'],
    people: ['helpers + 1', 'you work too'],
    workClock: ['workTime / people', 'shared evenly by the hands'],
    workDays: ['ceil(workClock / dayHours)', 'a day begun counts'],
  },
  work(given, { line, has, need, assumed, put, tell, remark, table }) {
    put('oneHour', quantity(1, 'h'))
    const tasks: { what: string; pace: string; time: Quantity }[] = []
    const add = (what: string, pace: string, time: Quantity): void => {
      tasks.push({ what, pace, time })
    }
    const anHour = (q: Quantity): string => `${show(q)} an hour`
    if (has('posts') && has('holeTime')) add('holes', `${show(given.holeTime)} a hole`, line('digging', 'h'))
    if (has('posts') && has('postsAnHour')) add('posts set', anHour(given.postsAnHour), line('settingTime'))
    if (has('railsInAll') && has('railsAnHour')) add('rails', anHour(given.railsAnHour), line('railFitting'))
    // Two rails a bay, thirteen bays: nobody counted them.
    else if (has('rails') && has('bays') && has('railsAnHour')) {
      line('allRails')
      add('rails', anHour(given.railsAnHour), tell('railFitting', line('railsByBay', 'h')))
    }
    if (has('picketsHung') && has('picketsAnHour')) add('pickets', anHour(given.picketsAnHour), line('picketHanging'))
    if (has('gates') && has('gateTime')) add('gates', `${show(given.gateTime)} a gate`, line('gateBuilding'))
    if (tasks.length === 0) need('posts')
    put(
      'tasks',
      tasks.map((it) => it.time),
    )
    line('workTime')
    if (has('crew')) put('people', { ...given.crew, kind: 'number', unit: 'ratio' })
    else if (has('helpers')) line('people')
    else put('people', quantity(1, 'ratio'))
    line('workClock')
    if (has('dayHours')) line('workDays')
    table({
      title: 'Task by task',
      columns: [
        { label: 'task', unit: '' },
        { label: 'pace', unit: '' },
        { label: 'time', unit: '' },
      ],
      rows: tasks.map(({ what, pace, time }) => [what, pace, show(time)]),
    })
    const paces = [
      ['posts', 'postsAnHour'],
      ['railsInAll', 'railsAnHour'],
      ['picketsHung', 'picketsAnHour'],
      ['gates', 'gateTime'],
    ] as const
    const taken = paces.filter(([what, pace]) => has(what) && assumed(pace))
    if (taken.length > 0)
      remark('The paces are usual ones, and nobody has seen you work. Do one of each, time it, and tell me yours.')
    if (has('posts') && !has('holeTime'))
      remark('Digging is not in it: dig the first hole, and say how many minutes a hole takes you.')
    if (!has('helpers') && !has('crew')) remark('You did not speak of helpers, so it is you alone.')
    remark(
      'Marking out, cutting to height, carrying, waiting for concrete and painting are not in it. A first fence takes half as long again.',
    )
  },
  sources: [
    { fact: 'hours = how many / how many an hour', from: 'Arithmetic; needs no table.' },
    { fact: 'the usual paces; a first fence takes half as long again', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'lifting', 'tools'],
  examples: [
    // 11/2 = 5.5; 20/6 = 3 1/3; 160/20 = 8; 5: 21 5/6 h; by two 10 11/12; /6 → 2
    {
      ask: 'How many days of work are 11 posts, 20 rails, 160 pickets and 1 gate with 1 helper, 6 hours a day?',
      given: { posts: '11', railsInAll: '20', picketsHung: '160', gates: '1', helpers: '1', dayHours: '6 h' },
      expect: { workDays: '2 working days', workClock: '10.92 hours', workTime: '21.83 hours' },
    },
    // 14/2 = 7; 13 × 2 = 26, /6 = 4 1/3; 150/20 = 7.5; 5: 23 5/6 h; by two 11 11/12
    {
      ask: '14 posts, 13 bays, 2 rails a bay, 150 pickets, 1 gate: how many hours with 2 people?',
      given: { posts: '14', bays: '13', rails: '2', picketsHung: '150', gates: '1', crew: '2' },
      expect: { workTime: '23.83 hours', workClock: '11.92 hours' },
    },
    // 240/24 = 10 h
    {
      ask: 'How long to hang 240 pickets at 24 pickets an hour?',
      given: { picketsHung: '240', picketsAnHour: '24' },
      expect: { picketHanging: '10 hours' },
    },
    // 14 × 50 min = 11 2/3 h and 14/2 = 7 h
    {
      ask: 'How long will the work take for 14 posts at 50 minutes a hole?',
      given: { posts: '14', holeTime: '50 min' },
      expect: { workTime: '18.67 hours', settingTime: '7 hours' },
    },
  ],
})
