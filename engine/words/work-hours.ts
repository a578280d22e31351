// This file is about how long the work takes: so many an hour, hours in all, hours by the clock, days.
import { word } from './word.ts'

const pace = 'common practice, no source: time your own first ones'

export const postsAnHour = word<'count'>('postsAnHour', {
  kind: 'count',
  noun: 'post',
  label: 'posts set in an hour',
  measure: 'Stone or concrete in, plumbed both ways and braced; the hole is dug before.',
  ask: 'How many posts do you set in an hour?',
  called: { names: ['posts an hour', 'posts per hour', 'posts each hour', 'posts every hour', 'posts in an hour'] },
  possible: { above: '0' },
  plausible: { from: '0.25', to: '8' },
  usual: { value: '2', because: 'half an hour a post, with the mixing and the bracing', from: pace },
})

export const railsAnHour = word<'count'>('railsAnHour', {
  kind: 'count',
  noun: 'rail',
  label: 'rails fitted in an hour',
  measure: 'Measured, cut and fixed at both ends.',
  ask: 'How many rails do you fit in an hour?',
  called: { names: ['rails an hour', 'rails per hour', 'rails each hour', 'rails every hour', 'rails in an hour'] },
  possible: { above: '0' },
  plausible: { from: '1', to: '20' },
  usual: { value: '6', because: 'ten minutes a rail, with the saw set up', from: pace },
})

export const picketsAnHour = word<'count'>('picketsAnHour', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets hung in an hour',
  measure: 'Ready to hang: set to the string and the stick, and screwed.',
  ask: 'How many pickets do you hang in an hour?',
  called: {
    names: [
      'pickets an hour',
      'pickets per hour',
      'pickets each hour',
      'pickets every hour',
      'pickets in an hour',
      'palings an hour',
      'boards an hour',
      'palings per hour',
      'boards per hour',
    ],
  },
  possible: { above: '0' },
  plausible: { from: '4', to: '60' },
  usual: { value: '20', because: 'three minutes a picket with four screws', from: pace },
})

export const gateTime = word<'duration'>('gateTime', {
  kind: 'duration',
  label: 'time for one gate',
  units: { imperial: 'h', metric: 'h' },
  measure: 'Built, braced, hung, and its latch set.',
  ask: 'How long does one gate take you?',
  called: {
    names: ['a gate takes', 'for a gate', 'per gate', 'each gate', 'hours a gate', 'hours per gate'],
    things: ['gate'],
  },
  possible: { above: '0 h' },
  plausible: { from: '0.5 h', to: '30 h' },
  usual: { value: '5 h', because: 'half a day and more: frame, brace, pickets, hinges, latch', from: pace },
})

export const crew = word<'count'>('crew', {
  kind: 'count',
  noun: 'person',
  label: 'people at work',
  whole: true,
  measure: 'You included.',
  ask: 'How many people work on it, you included?',
  called: {
    names: ['of us', 'people', 'persons', 'people working', 'pairs of hands', 'workers', 'man crew'],
    things: ['people', 'person', 'men', 'worker', 'labourer', 'laborer', 'hand'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '12' },
  replaces: ['helpers'],
})

const inAll = {
  kind: 'duration',
  units: { imperial: 'h', metric: 'h' },
  measure: 'By one person, at the pace given.',
} as const

export const settingTime = word<'duration'>('settingTime', {
  ...inAll,
  label: 'setting the posts',
  ask: 'How long does setting the posts take?',
  called: {
    asks: [
      'how long to set the posts',
      'how long to set posts',
      'how long will setting the posts take',
      'how many hours to set the posts',
      'how long does it take to set',
    ],
  },
})

export const railFitting = word<'duration'>('railFitting', {
  ...inAll,
  label: 'fitting the rails',
  ask: 'How long does fitting the rails take?',
  called: {
    asks: [
      'how long to fit the rails',
      'how long will the rails take',
      'how many hours to fit the rails',
      'how long to hang the rails',
    ],
  },
})

export const picketHanging = word<'duration'>('picketHanging', {
  ...inAll,
  label: 'hanging the pickets',
  ask: 'How long does hanging the pickets take?',
  called: {
    asks: [
      'how long to hang the pickets',
      'how long to hang pickets',
      'how long will hanging the pickets take',
      'how many hours to hang the pickets',
      'how long will the pickets take',
      'how long does it take to hang',
      'how many hours to hang',
      'how long to hang',
    ],
  },
})

export const gateBuilding = word<'duration'>('gateBuilding', {
  ...inAll,
  label: 'building and hanging the gates',
  ask: 'How long do the gates take?',
  called: { asks: ['how long will the gates take', 'how long to build the gates', 'how long to build the gate'] },
})

export const workTime = word<'duration'>('workTime', {
  kind: 'duration',
  label: 'work in all, for one person',
  units: { imperial: 'h', metric: 'h' },
  measure:
    'The tasks that were counted, one after the other. Marking out, cutting to height, fetching and painting are not in it.',
  ask: 'How many hours of work is it in all?',
  called: {
    names: ['hours of work'],
    asks: [
      'how long will the work take',
      'how many hours of work',
      'how long will the job take',
      'how long will the fence take',
      'how long to build the fence',
      'how long to build it',
      'how long does it take to build',
      'how many hours to build',
      'how many hours will it take',
      'how many hours',
      'how many man hours',
      'hours in all',
      'hours of labour',
      'hours of labor',
      'how long will it take us',
    ],
  },
})

export const workClock = word<'duration'>('workClock', {
  kind: 'duration',
  label: 'by the clock, all hands working',
  units: { imperial: 'h', metric: 'h' },
  measure: 'Shared evenly. Setting posts and hanging gates go hardly faster with more than two.',
  ask: 'How many hours is it by the clock?',
  called: { names: ['work by the clock'] },
})

export const workDays = word<'count'>('workDays', {
  kind: 'count',
  noun: 'working day',
  label: 'begun days counted',
  whole: true,
  measure: 'By the clock, shared into days of so many hours; a day begun counts.',
  ask: 'How many days of work is it?',
  called: {
    names: ['days of work'],
    asks: [
      'how many days of work',
      'how many days to build',
      'how many days will it take',
      'how many days will the work take',
      'how many days will the job take',
      'how many days will the fence take',
      'how many weekends',
    ],
  },
})
