// How long the digging takes, at the pace of the first hole.
//
//   you       ●  ●  ●  ●      whole holes are shared out:
//   helper    ●  ●  ●         the one with the most decides when all are done
import { calculation } from '../../calculation.ts'
import { numberIn, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dayHours, diggers, diggingClock, diggingDays, diggingTime, helpers, holeTime } from '../../words/digging.ts'
import { posts } from '../../words/posts.ts'

export const diggingHours = calculation({
  name: 'digging-hours',
  title: 'Hours of digging',
  answers: 'How many hours the holes take at your own pace, by the clock with helpers, and how many days that is.',
  needs: { posts, holeTime, helpers, diggers, dayHours },
  may: ['helpers', 'diggers'],
  onlyFor: { dayHours: ['diggingDays'] },
  gives: { diggingTime, diggingClock, diggingDays },
  called: ['dig holes', 'digging holes', 'hole by hand', 'holes by hand'],
  headlines: ['diggingTime', 'diggingDays'],
  together: {
    diggingTime: ['diggingTime', 'diggingClock'],
    diggingClock: ['diggingClock', 'diggingTime'],
    diggingDays: ['diggingDays', 'diggingClock', 'diggingTime'],
  },
  locals: { people: 'number' },
  lines: {
    people: ['helpers + 1', 'you dig too'],
    diggingTime: ['sum(posts * holeTime)', 'every hole at the pace of your first'],
    holesEach: ['ceil(sum(posts) / people)', 'nobody digs half a hole: the most that falls to one'],
    diggingClock: ['holesEach * holeTime', 'all are done when the one with the most is done'],
    holesOfKind: ['ceil(posts / people)', 'kind by kind, since each has its own pace'],
    clockByKind: ['sum(holesOfKind * holeTime)', 'one kind of hole after the other'],
    diggingDays: ['ceil(diggingClock / dayHours)', 'a day begun counts'],
  },
  work({ helpers, diggers }, { line, rows, put, tell, has, remark, doubt }) {
    if (has('diggers')) {
      put('people', { ...diggers, kind: 'number', unit: 'ratio' })
      if (has('helpers') && numberIn(diggers, diggers.unit) !== numberIn(helpers, helpers.unit) + 1)
        doubt(
          'contradictory',
          'diggers',
          `${show(diggers)} in all and ${show(helpers)} beside you do not agree. I went by ${show(diggers)} in all.`,
        )
    } else if (has('helpers')) line('people')
    else {
      put('people', quantity(1, 'ratio'))
      remark('You did not speak of helpers, so it is you alone.')
    }
    line('diggingTime')
    if (rows('holeTime').length === 1) {
      line('holesEach')
      line('diggingClock')
    } else {
      line('holesOfKind')
      tell('diggingClock', line('clockByKind', 'h'))
      remark(
        'I took it that you all finish one kind of hole before the next. Whoever is done first may go ahead, and save a little.',
      )
    }
    if (has('dayHours')) line('diggingDays')
    remark(
      'It is your own pace, and it slackens: the last holes are slower than the first, and one root or stone can cost an hour. Near marks you dig by hand, slower still. Mixing, setting posts and carrying the soil away are not in it.',
    )
    remark('Two on one auger dig one hole at a time: count them as one. Cover every hole that waits overnight.')
  },
  sources: [
    {
      fact: 'hours = holes × time for one, shared out by whole holes',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'how long one hole takes', from: 'Your own first hole: no figure from a book would know your ground.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole', 'lifting'],
  examples: [
    // 11 × 40 min = 440 min = 7 1/3 h; ⌈11/2⌉ = 6 × 40 = 240 min = 4 h; 4/3 → 2 days
    {
      ask: 'How many days to dig 11 holes at 40 minutes a hole with 1 helper, 3 hours a day?',
      given: { posts: '11', holeTime: '40 min', helpers: '1', dayHours: '3 h' },
      expect: { diggingTime: '7.333 hours', diggingClock: '4 hours', diggingDays: '2 digging days' },
    },
    // 18 × 25 = 450 min = 7.5 h; ⌈18/3⌉ = 6 × 25 = 150 min = 2.5 h
    {
      ask: 'Three of us dig 18 holes and the first hole took 25 minutes. How long will the digging take?',
      given: { posts: '18', holeTime: '25 min', diggers: '3' },
      expect: { diggingTime: '7.5 hours', diggingClock: '2.5 hours' },
    },
  ],
})
