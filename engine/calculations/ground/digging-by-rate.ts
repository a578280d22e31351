// How long the digging takes where people tell their pace in holes an hour, each with a pace of his own.
//
//   you      3 an hour  ●●●
//   brother  2 an hour  ●●       5 an hour between you
import { calculation } from '../../calculation.ts'
import { quantity } from '../../quantities/quantity.ts'
import { dayHours, diggingClock, diggingDays } from '../../words/digging.ts'
import { posts } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const holesByHour = word<'count'>('holesByHour', {
  kind: 'count',
  noun: 'hole',
  list: true,
  label: 'holes an hour, each of those who dig',
  measure: 'Time your first holes, rests counted.',
  ask: 'How many holes does each of you dig in an hour?',
  called: {},
  possible: { above: '0' },
  plausible: { from: '0.1', to: '20' },
})

export const diggingByRate = calculation({
  name: 'digging-by-rate',
  title: 'Digging at so many holes an hour',
  answers: 'How many hours, evenings or days the holes take at so many an hour, each digger at a pace of his own.',
  needs: { posts, holesByHour, dayHours },
  onlyFor: { dayHours: ['diggingDays'] },
  gives: { diggingClock, diggingDays },
  headlines: ['diggingClock', 'diggingDays'],
  together: { diggingDays: ['diggingDays', 'diggingClock'], diggingClock: ['diggingClock', 'diggingDays'] },
  locals: { hour: 'duration' },
  lines: {
    diggingClock: ['sum(posts) / sum(holesByHour) * hour', 'all of you digging at once'],
    diggingDays: ['ceil(diggingClock / dayHours)', 'a day or an evening begun counts'],
  },
  work(_, { line, put, has, remark }) {
    put('hour', quantity(1, 'h'))
    line('diggingClock')
    if (has('dayHours')) line('diggingDays')
    remark(
      'It is your own pace, and it slackens: the last holes are slower than the first, and one root or stone can cost an hour. Cover every hole that waits overnight.',
    )
  },
  sources: [{ fact: 'hours = holes ÷ holes an hour, paces added up', from: 'Derived here; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole', 'lifting'],
  examples: [
    // 22 / 4 = 5.5 h; 5.5 / 2 = 2.75 → 3
    {
      ask: 'I dig 4 holes an hour and there are 22 holes. How many evenings of 2 hours is that?',
      given: { posts: '22', holesByHour: '4', dayHours: '2 h' },
      expect: { diggingClock: '5.5 hours', diggingDays: '3 digging days' },
    },
    // 30 / (3 + 2) = 6 h
    {
      ask: 'I dig 3 holes an hour and my son does 2 an hour beside me. How long for 30 holes?',
      given: { posts: '30', holesByHour: ['3', '2'] },
      expect: { diggingClock: '6 hours' },
    },
  ],
})
