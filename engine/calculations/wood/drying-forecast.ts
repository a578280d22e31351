// When wood will be dry enough, from two readings or more and the air it stands in.
//
//   moisture ▲●
//            │  ╲ ●
//            │     ‾‾●‾‾‾-----______  wanted
//   settles  ┼ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─     what it can still lose shrinks by the same share each day
//            └──────────────────────► days
import { calculation } from '../../calculation.ts'
import { dryingDrawing } from '../../drawings/drying.ts'
import { exact, isExact, subtract, toNumber } from '../../quantities/amount.ts'
import { daysAfter } from '../../quantities/calendar.ts'
import { less, numberIn, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { equilibriumMoisture } from '../../words/air.ts'
import {
  daysToDry,
  daysToDryFrom,
  daysToDryTo,
  driesHere,
  dryBy,
  dryFrom,
  dryingReadings,
  halfTime,
  readingDates,
  readingSpacing,
  settlesByReadings,
  timeConstant,
} from '../../words/drying.ts'
import { moistureLimit } from '../../words/wood.ts'

const fewest = 2
const mostReadings = 60
/** So near to where the air lets it settle, a point more or less in either makes weeks of it. */
const nearness = quantity(1, 'percent')
const longest = quantity(3, 'year')

export const dryingForecast = calculation({
  name: 'drying-forecast',
  title: 'When the wood will be dry enough',
  answers:
    'How long wood still dries until it is down to the moisture you want, from readings on two days or more and from where it settles in that air; or that it never gets there in this weather.',
  needs: { dryingReadings, readingDates, readingSpacing, equilibriumMoisture, moistureLimit },
  may: ['dryingReadings', 'readingDates', 'readingSpacing'],
  gives: {
    daysToDry,
    daysToDryFrom,
    daysToDryTo,
    driesHere,
    dryFrom,
    dryBy,
    halfTime,
    timeConstant,
    settlesByReadings,
  },
  headlines: ['daysToDry', 'driesHere'],
  together: {
    daysToDry: ['driesHere', 'daysToDry', 'daysToDryFrom', 'daysToDryTo', 'dryFrom', 'dryBy'],
    dryBy: ['driesHere', 'dryBy', 'dryFrom', 'daysToDry'],
    driesHere: ['driesHere', 'daysToDry', 'daysToDryFrom', 'daysToDryTo'],
    settlesByReadings: ['settlesByReadings', 'halfTime'],
  },
  locals: {
    days: 'duration',
    readings: 'number',
    last: 'percent',
    first: 'percent',
    middle: 'percent',
    wholeDay: 'duration',
  },
  lines: {
    above: ['dryingReadings - equilibriumMoisture', 'what it can still lose, at each reading'],
    logarithms: ['ln(above)', 'where the same share is lost each day, these fall in a straight line'],
    meanDay: ['sum(days) / readings', 'the middle of the days'],
    meanLogarithm: ['sum(logarithms) / readings', 'and of the logarithms'],
    falls: [
      '-sum((days - meanDay) * (logarithms - meanLogarithm)) / sum((days - meanDay) ^ 2)',
      'the straight line that fits them best: with two readings it goes through both',
    ],
    timeConstant: ['1 / falls', 'the days after which 37 % of what it could lose is left'],
    halfTime: ['timeConstant * ln(2)', 'the days after which half of it is left'],
    daysToDry: [
      'timeConstant * ln((last - equilibriumMoisture) / (moistureLimit - equilibriumMoisture))',
      'from the last reading on, along the same curve',
    ],
    daysToDryFrom: ['floor(daysToDry / 2 / wholeDay) * wholeDay', 'half of that, in whole days'],
    daysToDryTo: ['ceil(2 * daysToDry / wholeDay) * wholeDay', 'twice that, in whole days'],
    settlesByReadings: [
      '(first * last - middle ^ 2) / (first + last - 2 * middle)',
      'three readings equally far apart fix the curve, and where it levels out',
    ],
  },
  work({ equilibriumMoisture: settles, moistureLimit: limit }, tools) {
    const { line, put, tell, has, need, rows, remark, doubt, cite, refuse } = tools
    // Whether it can get there is for the air to say, before any reading.
    const reaches = less(settles, limit)
    if (!reaches) {
      tell('driesHere', false)
      remark(
        `The air decides: wood settles at ${show(settles)} in it, and ${show(limit)} is wanted. It will not get there in this weather, however long you wait. Wait for drier air, or bring the wood under a roof with air moving through.`,
      )
      if (!has('dryingReadings') || !(has('readingSpacing') || has('readingDates'))) return
    }
    if (!has('dryingReadings')) need('dryingReadings')
    const readings = rows('dryingReadings')
    if (readings.length < fewest || readings.length > mostReadings)
      refuse(
        'dryingReadings',
        `I have ${show(quantity(readings.length, 'reading'))}. It takes two or more of the same boards, on different days, and no more than ${cite(quantity(mostReadings, 'reading'), 'most readings')}.`,
      )
    if (!has('readingDates') && !has('readingSpacing')) need('readingSpacing')
    const days = put('days', daysOf(readings.length, tools))
    const [first, last] = [readings[0], readings.at(-1)] as [Quantity, Quantity]
    put('first', first)
    put('last', last)
    put('wholeDay', quantity(1, 'day'))
    put('readings', quantity(readings.length, 'ratio'))
    levelsOut(readings, days, settles, tools)
    if (!reaches) return
    if (!less(limit, last)) {
      tell('driesHere', true)
      tell('daysToDry', quantity(0, 'day'))
      remark(`The last reading decides: ${show(last)} is within ${show(limit)} already.`)
      return
    }
    if (readings.some((it) => !less(settles, it))) {
      tell('driesHere', null)
      doubt(
        'contradictory',
        'dryingReadings',
        `A reading at or under ${show(settles)} says that the wood is already as dry as this air makes it, and the last one, ${show(last)}, says that it is not. Measure again, or check the temperature and humidity.`,
      )
      return
    }
    line('above')
    line('logarithms')
    line('meanDay')
    line('meanLogarithm')
    const falls = line('falls').amount
    if (toNumber(falls) <= (isExact(falls) ? 0 : falls.error)) {
      tell('driesHere', null)
      remark(
        `The readings decide: from ${show(first)} to ${show(last)} they do not fall, so I cannot say when it will be dry. It may have been rained on, or not have been measured in the same place.`,
      )
      return
    }
    line('timeConstant')
    line('halfTime')
    const wait = line('daysToDry')
    tell('driesHere', true)
    if (less(longest, wait))
      return refuse(
        'dryingReadings',
        `By these readings it would be more than ${cite(longest, 'longest forecast')}: they hardly fall. Measure again in a month.`,
      )
    const [soonest, latest] = [line('daysToDryFrom'), line('daysToDryTo')]
    remark(
      `Two facts decide: the readings fall, and the air lets it settle at ${show(settles)}, under the ${show(limit)} wanted.`,
    )
    remark(
      `Take ${show(soonest)} to ${show(latest)}: the curve is a rough picture, and weather changes. Measure again after ${show(soonest)}, at the same places and the same depth.`,
    )
    if (less({ ...limit, amount: subtract(limit.amount, settles.amount) }, nearness))
      doubt(
        'implausible',
        'moistureLimit',
        `${show(limit)} is within a point of where it settles, ${show(settles)}. So near to it the curve is flat, and the time is little more than a guess.`,
      )
    if (has('readingDates')) {
      const from = rows('readingDates').at(-1) as Quantity
      tell('dryFrom', daysAfter(from, Math.floor(numberIn(soonest, 'day'))))
      tell('dryBy', daysAfter(from, Math.ceil(numberIn(latest, 'day'))))
    }
  },
  sources: [
    {
      fact: 'what wood can still lose shrinks by the same share each day: moisture = settled + (first − settled) × e^(−days / time constant)',
      from: 'a usual picture of air drying, no source; the time constant is your own, from your readings',
    },
    {
      fact: 'half to twice the time',
      from: 'common practice, no source: the same curve fitted to published drying times of 45 to 60 days already parts by a third',
    },
  ],
  cautions: ['weather'],
  drawing: dryingDrawing,
  examples: [
    // above 12: 12 and 7; 7 / ln(12/7) = 12.99; × ln(7/3) = 11.0 days; half 5, twice 23
    {
      ask: 'The wood read 24 % and a week later 19 %. It settles at 12 %. When will it get to 15 %?',
      given: {
        dryingReadings: ['24 %', '19 %'],
        readingSpacing: '1 week',
        equilibriumMoisture: '12 %',
        moistureLimit: '15 %',
      },
      expect: {
        driesHere: 'it dries that far in this weather',
        daysToDry: '11 days',
        daysToDryFrom: '5 days',
        daysToDryTo: '23 days',
      },
    },
    // 80 % at 10 °C settles at 16.4 %: over 15
    {
      ask: 'Readings of 28 % and 25 %, 10 days apart, air at 10 C and 80 % humidity: when will it reach 15 %?',
      given: {
        dryingReadings: ['28 %', '25 %'],
        readingSpacing: '10 days',
        equilibriumMoisture: '16.4 %',
        moistureLimit: '15 %',
      },
      expect: { driesHere: 'not in this weather' },
    },
    // above 13: 15, 9, 5.4: a share of 0.6 each week; 7 / ln(1/0.6) = 13.70; × ln(5.4/2) = 13.61; half 6, twice 28 days from 15 May
    {
      ask: 'It read 28 %, 22 % and 18.4 %, read on 1 May 2026, 8 May 2026 and 15 May 2026; it settles at 13 %. When will it be dry enough for a limit of 15 %?',
      given: {
        dryingReadings: ['28 %', '22 %', '18.4 %'],
        readingDates: ['2026-05-01', '2026-05-08', '2026-05-15'],
        equilibriumMoisture: '13 %',
        moistureLimit: '15 %',
      },
      expect: {
        driesHere: 'it dries that far in this weather',
        daysToDry: '13.61 days',
        dryFrom: 'Thursday 21 May 2026',
        dryBy: 'Friday 12 June 2026',
      },
    },
  ],
})

type Tools = Parameters<typeof dryingForecast.work>[1]

/** The day of each reading, counted from the first. */
function daysOf(count: number, { has, rows, refuse }: Tools): Quantity[] {
  if (!has('readingDates')) {
    const apart = rows('readingSpacing')[0] as Quantity
    return Array.from({ length: count }, (_, i) => ({ ...apart, amount: exact(toNumber(apart.amount)).mul(i) }))
  }
  const dates = rows('readingDates')
  if (dates.length !== count)
    refuse(
      'readingDates',
      `I have ${show(quantity(count, 'reading'))} and ${show(quantity(dates.length, 'date'))}. Give one date for each reading, in the same order.`,
    )
  const start = toNumber((dates[0] as Quantity).amount)
  const days = dates.map((it) => quantity(toNumber(it.amount) - start, 'day'))
  const wrong = days.findIndex((it, i) => i > 0 && !less(days[i - 1] as Quantity, it))
  if (wrong > 0)
    refuse(
      'readingDates',
      `${show(dates[wrong] as Quantity)} does not come after ${show(dates[wrong - 1] as Quantity)}. Give the oldest reading first.`,
    )
  return days
}

/** Three readings equally far apart tell where they level out by themselves; said beside where the air lets it settle. */
function levelsOut(readings: readonly Quantity[], days: readonly Quantity[], settles: Quantity, tools: Tools): void {
  const { line, put, remark } = tools
  const [a, b, c] = readings.map((it) => numberIn(it, 'percent')) as [number, number, number]
  const [x, y, z] = days.map((it) => numberIn(it, 'day')) as [number, number, number]
  if (readings.length !== 3 || Math.abs(z - y - (y - x)) > 1e-9 || !(a > b && b > c) || a + c - 2 * b <= 0) return
  put('middle', readings[1] as Quantity)
  const out = line('settlesByReadings')
  if (numberIn(out, 'percent') > 0)
    remark(
      `By themselves your three readings level out at ${show(out)}; by the air it is ${show(settles)}. Where the two are far apart, trust neither.`,
    )
}
