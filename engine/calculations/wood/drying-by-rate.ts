// When wood is down to a moisture, at a rate of drying that was told, and how much narrower a board is by then.
//
//   24 % ●
//         ╲          the same loss each day
//   16 %   ╲_ _●
//   ├── days ──┤
import { calculation } from '../../calculation.ts'
import { daysAfter } from '../../quantities/calendar.ts'
import { less, numberIn, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dimensionalChange } from '../../tables/dimensional-change.ts'
import {
  daysAtRate,
  dryingRate,
  gapOpened,
  gapWhenWet,
  ratePer,
  readyAtRate,
  shrinkRate,
  shrunkBy,
  shrunkWidth,
  weeksAtRate,
} from '../../words/drying-rate.ts'
import { picketWidth } from '../../words/pickets.ts'
import { moistureNow } from '../../words/wet-wood.ts'
import { moistureLimit } from '../../words/wood.ts'
import { fromDay } from '../../words/working-days.ts'

const lengths = { day: 1, week: 7, month: 30 } as const

export const dryingByRate = calculation({
  name: 'drying-by-rate',
  title: 'Drying and shrinking at a rate you give',
  answers:
    'On what date wood is down to a moisture when it loses so many points a day or a week, and how much narrower a board is by then at so much for each point.',
  needs: { moistureNow, moistureLimit, dryingRate, ratePer, fromDay, picketWidth, shrinkRate, gapWhenWet },
  onlyFor: {
    dryingRate: ['daysAtRate', 'weeksAtRate', 'readyAtRate'],
    ratePer: ['daysAtRate', 'weeksAtRate', 'readyAtRate'],
    fromDay: ['readyAtRate'],
    picketWidth: ['shrunkBy', 'shrunkWidth', 'gapOpened'],
    shrinkRate: ['shrunkBy', 'shrunkWidth', 'gapOpened'],
    gapWhenWet: ['gapOpened'],
  },
  gives: { daysAtRate, weeksAtRate, readyAtRate, shrunkBy, shrunkWidth, gapOpened },
  headlines: ['daysAtRate'],
  together: {
    weeksAtRate: ['weeksAtRate', 'daysAtRate'],
    readyAtRate: ['readyAtRate', 'daysAtRate'],
    shrunkBy: ['shrunkBy', 'shrunkWidth'],
    shrunkWidth: ['shrunkWidth', 'shrunkBy'],
    gapOpened: ['gapOpened', 'shrunkBy'],
  },
  locals: { timeOfRate: 'duration', points: 'number', onePoint: 'percent', saturation: 'percent' },
  lines: {
    toLose: ['moistureNow - moistureLimit', 'what it still has to lose'],
    daysAtRate: ['toLose / dryingRate * timeOfRate', 'at the same loss all the time'],
    weeksAtRate: ['toLose / dryingRate * timeOfRate', 'the same, in weeks'],
    countsNow: ['min(moistureNow, saturation)', 'above fibre saturation wood loses water and keeps its size'],
    points: ['(countsNow - moistureLimit) / onePoint', 'in points of moisture'],
    shrunkBy: ['picketWidth * shrinkRate * points', 'so much of its width for each point'],
    shrunkWidth: ['picketWidth - shrunkBy', 'what is left'],
    gapOpened: ['gapWhenWet + shrunkBy', 'half of it from the board on either side'],
  },
  work(
    { moistureNow: now, moistureLimit: limit, ratePer: per, fromDay: from },
    { line, put, has, tell, worked, refuse, remark },
  ) {
    if (!less(limit, now))
      refuse(
        'moistureLimit',
        `It is at ${show(now)} already, and ${show(limit)} is wanted: nothing is left to lose. Check both readings.`,
      )
    line('toLose')
    if (has('dryingRate') && has('ratePer')) {
      put('timeOfRate', quantity(lengths[per as keyof typeof lengths], 'day'))
      const days = line('daysAtRate')
      line('weeksAtRate')
      if (has('fromDay')) tell('readyAtRate', daysAfter(from, Math.ceil(numberIn(days, 'day') - 1e-9)))
      remark(
        'Wood seldom dries at one rate: the drier it is, the slower it goes, and in damp weather it stops. Read the meter again before that day, and paint by what it reads.',
      )
      if (per === 'month') remark('A month is counted as thirty days.')
    }
    if (has('picketWidth') && has('shrinkRate')) {
      put('onePoint', quantity(1, 'percent'))
      const saturation = put('saturation', quantity(dimensionalChange.saturation.percent, 'percent'))
      if (!less(limit, saturation)) {
        const why = `Down to ${show(limit)} it does not shrink: wood changes its width below ${show(saturation)} only.`
        if (!worked('daysAtRate')) refuse('moistureLimit', why)
        remark(why)
        return
      }
      line('countsNow')
      line('points')
      line('shrunkBy')
      line('shrunkWidth')
      if (has('gapWhenWet')) line('gapOpened')
      if (less(saturation, now))
        remark(`I counted from ${show(saturation)}: what it loses down to there changes no width.`)
    }
  },
  sources: [
    { fact: 'time = what it has to lose ÷ what it loses in a day', from: 'Derived here; needs no table.' },
    { fact: 'how fast it dries, and shrinks', from: 'Your own figures: no table is used.' },
    { fact: dimensionalChange.saturation.fact, from: dimensionalChange.saturation.from },
  ],
  cautions: ['weather'],
  examples: [
    // (22 − 14) / 2 = 4 weeks = 28 days; 7 April + 28 = 5 May
    {
      ask: 'The wood reads 22 % now and loses 2 points a week: when is it down to 14 %, from 7 April 2025?',
      given: { moistureNow: '22 %', moistureLimit: '14 %', dryingRate: '2 %', ratePer: 'week', fromDay: '2025-04-07' },
      expect: { daysAtRate: '28 days', readyAtRate: 'Monday 5 May 2025' },
    },
    // 120 × 0.002 × 10 = 2.4; 120 − 2.4
    {
      ask: 'How much does a 120 mm board shrink from 25 % now to 15 %, at a fifth of a percent of its width for each percent?',
      given: { picketWidth: '120 mm', moistureNow: '25 %', moistureLimit: '15 %', shrinkRate: '0.2 %' },
      expect: { shrunkBy: '2.4 mm', shrunkWidth: '117.6 mm' },
    },
  ],
})
