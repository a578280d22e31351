// This file is about the days that each part of the job takes, from the call to the last coat.
import { word } from './word.ts'

const guess = 'common practice, no source: put your own in its place'
const days = { kind: 'duration', units: { imperial: 'day', metric: 'day' } } as const
const work = {
  ...days,
  measure: 'Days on which you work at it; one begun counts whole.',
  possible: { least: '0 days' },
  plausible: { from: '0.25 days', to: '60 days' },
} as const

export const ownDays = word<'choice'>('ownDays', {
  kind: 'choice',
  label: 'days on which you work',
  measure: 'Your own days on the fence. Offices keep their own, and concrete and wood take no day off.',
  ask: 'Do you work on it every day, at weekends only, or from Monday to Friday?',
  called: { names: ['days i work'] },
  options: {
    'every day': { label: 'every day', called: ['every day', 'each day', 'seven days a week', 'full time'] },
    weekends: {
      label: 'weekends only',
      called: [
        'weekends only',
        'only at weekends',
        'at weekends',
        'on weekends',
        'only weekends',
        'saturdays and sundays',
        'weekends',
      ],
    },
    weekdays: { label: 'Monday to Friday', called: ['monday to friday', 'on weekdays', 'weekdays only', 'weekdays'] },
  },
  usual: {
    value: 'every day',
    because: 'you did not say which days you work',
    from: 'Decided here; say “weekends only”.',
  },
})

export const woodWait = word<'duration'>('woodWait', {
  ...days,
  label: 'wait for the wood',
  measure: 'From the call, when you order on the same day, until it lies in your yard.',
  ask: 'How long does the wood take to come?',
  called: {
    names: [
      'delivery takes',
      'wood takes',
      'lumber takes',
      'timber takes',
      'delivered in',
      'wood comes in',
      'for delivery',
      'wait for the wood',
    ],
    things: ['delivery'],
    sides: ['to come', 'to arrive'],
  },
  possible: { least: '0 days' },
  plausible: { from: '0 days', to: '120 days' },
})

export const digWork = word<'duration'>('digWork', {
  ...work,
  label: 'days of digging holes',
  ask: 'How many days will you dig?',
  called: {
    names: ['digging takes', 'days of digging', 'holes take', 'digging the holes', 'for digging', 'days to dig'],
    things: ['digging'],
  },
  usual: { value: '2 days', because: 'a dozen holes by hand is a weekend', from: guess },
})

export const inspectionWait = word<'count'>('inspectionWait', {
  kind: 'count',
  noun: 'working day',
  label: 'working days until the holes are inspected',
  whole: true,
  measure:
    'Only where your permit asks for one: from the last hole until the inspector has been. Open holes stay covered.',
  ask: 'How many working days until the inspector comes?',
  called: {
    names: [
      'for the inspector',
      'for the inspection',
      'for inspection',
      'until the inspector',
      'inspection takes',
      'inspector takes',
      'wait for the inspector',
    ],
    things: ['inspection', 'inspector'],
  },
  possible: { least: '0' },
  plausible: { from: '0', to: '30' },
})

export const setWork = word<'duration'>('setWork', {
  ...work,
  label: 'days of setting posts',
  ask: 'How many days will you set posts?',
  called: {
    names: ['setting posts', 'setting the posts', 'setting takes', 'to set the posts', 'to set posts'],
    things: ['setting'],
  },
  usual: { value: '1 day', because: 'a dozen posts, plumbed and braced, is a long day', from: guess },
})

export const railWork = word<'duration'>('railWork', {
  ...work,
  label: 'days of fitting rails',
  ask: 'How many days will the rails take?',
  called: { names: ['rails take', 'fitting rails', 'fitting the rails', 'for the rails'], things: ['rail'] },
  usual: { value: '1 day', because: 'two or three rails in a dozen bays', from: guess },
})

export const picketWork = word<'duration'>('picketWork', {
  ...work,
  label: 'days of hanging pickets',
  ask: 'How many days will the pickets take?',
  called: {
    names: ['pickets take', 'hanging pickets', 'hanging the pickets', 'for the pickets'],
    things: ['picket', 'paling'],
  },
  usual: { value: '2 days', because: 'a hundred and more pickets, gates hung with them', from: guess },
})

export const gateWork = word<'duration'>('gateWork', {
  ...work,
  label: 'days of building gates',
  measure: 'Building them, while the concrete hardens. Hanging counts with the pickets.',
  ask: 'How many days will you build gates?',
  called: {
    names: [
      'building gates',
      'building the gates',
      'building the gate',
      'to build the gate',
      'to build the gates',
      'gates take',
    ],
    things: ['gate'],
  },
})

export const dryWait = word<'duration'>('dryWait', {
  ...days,
  label: 'wait for the wood to dry',
  measure: 'From the last picket to the first coat. The meter and the drops of water decide, not the calendar.',
  ask: 'How long shall the wood dry before the first coat?',
  called: {
    names: ['to dry', 'dry for', 'dries for', 'drying takes', 'wood dries', 'let it dry', 'of drying'],
    things: ['drying'],
  },
  possible: { least: '0 days' },
  plausible: { from: '0 days', to: '400 days' },
  usual: {
    value: '21 days',
    because: 'wood bought wet wants some weeks, dry wood none; measure before you paint',
    from: 'common practice, no source',
  },
})

export const coatWork = word<'duration'>('coatWork', {
  ...work,
  label: 'days for one coat',
  ask: 'How many days does one coat take?',
  called: { names: ['a coat takes', 'each coat takes', 'for each coat', 'a day for each coat'], things: ['coat'] },
  usual: { value: '1 day', because: 'both sides of a middling fence by brush', from: guess },
})

export const betweenCoats = word<'duration'>('betweenCoats', {
  ...days,
  label: 'wait between coats',
  measure: 'On the can: the least time before the next coat. Cold and damp make it longer.',
  ask: 'How long does the can say to wait between coats?',
  called: {
    names: ['between coats', 'between the coats', 'before the next coat', 'before the second coat', 'recoat after'],
    things: ['recoat'],
  },
  possible: { least: '0 days' },
  plausible: { from: '0 days', to: '60 days' },
  usual: { value: '1 day', because: 'most cans say a day or less in fair weather; yours comes first', from: guess },
})

export const finishDate = word<'date'>('finishDate', {
  kind: 'date',
  label: 'last coat goes on',
  measure: 'If nothing goes wrong, and no rain. It always rains.',
  ask: 'When is the fence finished?',
  called: {
    names: ['finish date', 'finishing date', 'last day of the job'],
    asks: [
      'when is the fence finished',
      'when will the fence be finished',
      'when will it be finished',
      'when is it finished',
      'when will i be done',
      'when am i done',
      'when will it be done',
      'when is the job done',
      'when will the job be done',
      'when do i finish',
      'when will i finish',
      'when can i finish',
      'finish date',
      'calendar of the job',
      'calendar for the job',
      'job calendar',
      'schedule for the job',
      'critical path',
    ],
  },
})

export const postsSetDate = word<'date'>('postsSetDate', {
  kind: 'date',
  label: 'last post set',
  measure: 'The day on which the last of them stands.',
  ask: 'When do the posts stand?',
  called: {
    names: ['last post set'],
    asks: ['when do the posts stand', 'when will the posts be set', 'when are the posts set'],
  },
})

export const firstCoatDate = word<'date'>('firstCoatDate', {
  kind: 'date',
  label: 'first coat goes on',
  measure: 'If the wood is dry by then and the weather holds.',
  ask: 'When does the first coat go on?',
  called: { names: ['first coat goes on'], asks: ['when is the first coat', 'when does the first coat go on'] },
})

export const jobDays = word<'duration'>('jobDays', {
  kind: 'duration',
  label: 'from the call to the last coat',
  units: { imperial: 'day', metric: 'day' },
  measure: 'By the calendar, both ends counted.',
  ask: 'How many days is that by the calendar?',
  called: { names: ['length of the job'], asks: ['how long from the call', 'how many days from start to finish'] },
})
