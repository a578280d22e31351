// This file is about the work of keeping a fence up: setting posts straight, and the yearly walk along it.
import { word } from './word.ts'

export const resetPosts = word<'count'>('resetPosts', {
  kind: 'count',
  noun: 'leaning post',
  label: 'posts to set straight',
  whole: true,
  measure: 'Count the posts that are dug out and set again.',
  ask: 'How many posts are to be set straight?',
  called: {
    names: ['posts to reset', 'posts to set straight', 'leaning posts'],
    things: ['leaning post', 'post to reset', 'loose post', 'crooked post'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '100' },
})

export const resetTime = word<'duration'>('resetTime', {
  kind: 'duration',
  label: 'time to set one post straight',
  units: { imperial: 'h', metric: 'h' },
  measure:
    'Time your first: brace the fence, dig out, break up what holds it, set it plumb, fill and tamp, fasten again.',
  ask: 'How long does one post take you? Set the first straight and time it.',
  called: {
    names: [
      'to set straight',
      'to reset',
      'to straighten',
      'takes to reset',
      'each post takes',
      'a post takes',
      'the first post took',
      'first one took',
      'for each post',
      'a post',
      'each post',
    ],
    things: ['post'],
    sides: ['took', 'takes', 'each', 'apiece'],
    plainly: true,
  },
  possible: { above: '0 h' },
  plausible: { from: '0.25 h', to: '16 h' },
})

export const resetHours = word<'duration'>('resetHours', {
  kind: 'duration',
  label: 'hours to set them straight',
  units: { imperial: 'h', metric: 'h' },
  measure: 'One post after the other, by the pace of the first.',
  ask: 'How many hours does it take to set them straight?',
  called: {
    names: ['hours to reset'],
    asks: [
      'how long to reset',
      'how long to set them straight',
      'how long to straighten',
      'how many hours to reset',
      'how many hours to straighten',
      'how long will it take to reset',
      'how long will it take to straighten',
    ],
  },
})

export const resetDays = word<'count'>('resetDays', {
  kind: 'count',
  noun: 'resetting day',
  label: 'days to set them straight',
  whole: true,
  measure: 'Whole days, the last one perhaps short. Waiting for concrete comes on top.',
  ask: 'How many days does it take to set them straight?',
  called: {
    names: ['days to reset'],
    asks: ['how many days to reset', 'how many days to straighten', 'how many days to set them straight'],
  },
})

export const walkDate = word<'date'>('walkDate', {
  kind: 'date',
  label: 'day of this year’s walk',
  measure: 'The day you walk along the fence and look at every post.',
  ask: 'On which day do you walk the fence this year?',
  called: {
    names: [
      'walk on',
      'walk the fence on',
      'walked the fence on',
      'walked on',
      'look it over on',
      'inspect it on',
      'inspected on',
    ],
    byDefault: true,
    plainly: true,
  },
})

export const walkEach = word<'duration'>('walkEach', {
  kind: 'duration',
  label: 'time for one post on the walk',
  units: { imperial: 'min', metric: 'min' },
  measure: 'Plumb, probe, look at the rails and screws beside it, write it down.',
  ask: 'How many minutes does one post take you on the walk?',
  called: { names: ['minutes a post on the walk', 'per post on the walk'] },
  possible: { above: '0 h' },
  plausible: { from: '1 minutes', to: '30 minutes' },
  usual: {
    value: '4 minutes',
    because: 'two faces plumbed, one probed, and a note',
    from: 'common practice, no source',
  },
})

export const nextWalk = word<'date'>('nextWalk', {
  kind: 'date',
  label: 'next year’s walk',
  measure: 'The same day of the next year.',
  ask: 'When is next year’s walk?',
  called: {
    names: ['next walk'],
    asks: [
      'next year’s list',
      "next year's list",
      'list for next year',
      'what do i check each year',
      'what should i check each year',
      'what to check each year',
      'what should i check next year',
      'what do i check next year',
      'yearly check',
      'yearly checks',
      'yearly walk',
      'annual check',
      'annual inspection',
      'when is the next walk',
      'when do i walk it again',
      'when to inspect again',
      'maintenance list',
    ],
  },
})

export const halfWalk = word<'date'>('halfWalk', {
  kind: 'date',
  label: 'short look in between',
  measure: 'Half a year on: gates, latches, and what the season has moved.',
  ask: 'When is the short look in between?',
  called: { names: ['short look'], asks: ['when is the short look'] },
})

export const walkTime = word<'duration'>('walkTime', {
  kind: 'duration',
  label: 'time for the walk',
  units: { imperial: 'h', metric: 'h' },
  measure: 'Every post, one after the other.',
  ask: 'How long does the walk take?',
  called: { names: ['walk time'], asks: ['how long does the walk take', 'how long is the walk'] },
})
