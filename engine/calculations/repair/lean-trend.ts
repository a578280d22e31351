// Whether a post goes on leaning, from plumb readings on different days.
//
//   first day   │╲   1/4 in        the change, over the days between, for a year
//   last day    │ ╲  3/4 in        A level tells about 1/16 in each time: less than 1/8 in of change may be no change.
import { calculation } from '../../calculation.ts'
import { plumbTrendDrawing } from '../../drawings/plumb.ts'
import { about, absolute, exact, subtract } from '../../quantities/amount.ts'
import { equal, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { plumbOver } from '../../words/gate-swing.ts'
import { leanGrowth, leanMoves, plumbDates, plumbReadings } from '../../words/lean.ts'

const telling = quantity('1/8', 'in')
const longEnough = quantity(180, 'day')

export const leanTrend = calculation({
  name: 'lean-trend',
  title: 'Whether a post goes on leaning',
  answers:
    'How much further a post leans in a year, from two or more plumb readings with their days, and whether that is more than a level can tell.',
  needs: { plumbReadings, plumbDates, plumbOver },
  may: ['plumbOver'],
  gives: { leanMoves, leanGrowth },
  headlines: ['leanMoves', 'leanGrowth'],
  together: { leanMoves: ['leanMoves', 'leanGrowth'], leanGrowth: ['leanGrowth', 'leanMoves'] },
  locals: { firstOut: 'length', lastOut: 'length', firstDay: 'date', lastDay: 'date', oneYear: 'duration' },
  lines: {
    leanChange: ['lastOut - firstOut', 'the last reading less the first'],
    daysBetween: ['lastDay - firstDay', 'from the first reading to the last'],
    leanGrowth: ['leanChange / daysBetween * oneYear', 'at that pace for a year'],
  },
  work(_given, { rows, line, put, tell, has, refuse, remark, cite, table, system }) {
    const [outs, days] = [rows('plumbReadings'), rows('plumbDates')]
    if (outs.length < 2 || outs.length !== days.length)
      refuse(
        outs.length < 2 ? 'plumbReadings' : 'plumbDates',
        `I have ${outs.length} readings and ${days.length} days. It takes at least two readings, each with its day, in the same order.`,
      )
    const late = days.findIndex((it, i) => i > 0 && !less(days[i - 1] as Quantity, it))
    if (late > 0)
      refuse(
        'plumbDates',
        `${show(days[late] as Quantity)} does not come after ${show(days[late - 1] as Quantity)}. Give the readings with the oldest first.`,
      )
    const [first, last] = [days[0] as Quantity, days.at(-1) as Quantity]
    put('firstOut', outs[0] as Quantity)
    put('lastOut', outs.at(-1) as Quantity)
    put('firstDay', first)
    put('lastDay', last)
    // 365 or 366 days: a pace is no finer than that.
    put('oneYear', { kind: 'duration', amount: about(365.25, 0.75), unit: 'day' })
    const change = line('leanChange')
    const between = { ...line('daysBetween'), kind: 'duration' as const, unit: 'day' }
    const year = line('leanGrowth')
    const moved: Quantity = { ...change, amount: absolute(change.amount) }
    const limit: Quantity = { ...telling, unit: system === 'metric' ? 'mm' : 'in' }
    const told = cite(limit, 'change that a level can tell')
    const span = cite(between, 'days between the readings')
    if (less(limit, moved)) {
      tell('leanMoves', true)
      remark(
        `Decided by the change: ${show(moved)} ${less(change, { ...change, amount: exact(0) }) ? 'back' : 'further out'} in ${span}, more than the ${told} that two readings can be wrong by together.`,
      )
    } else if (less(between, longEnough)) {
      tell('leanMoves', null)
      remark(
        `Decided by the days: ${span} are too few. A change of ${show(moved)} is within the ${told} that two readings can be wrong by together. Read again half a year after the first.`,
      )
    } else {
      tell('leanMoves', false)
      remark(
        `Decided by the change: ${show(moved)} in ${span} is within the ${told} that two readings can be wrong by together.`,
      )
    }
    table({
      title: 'Plumb readings',
      columns: [
        { label: 'day', unit: 'date' },
        { label: 'out of plumb', unit: '' },
        { label: 'since the reading before', unit: '' },
      ],
      rows: outs.map((out, i) => {
        const before = outs[i - 1]
        return [
          show(days[i] as Quantity),
          show(out),
          before === undefined
            ? ''
            : equal(out, before)
              ? 'none'
              : show({ ...out, amount: subtract(out.amount, before.amount) }),
        ]
      }),
    })
    remark(
      `${show(year)} in a year is that pace and no forecast: clay moves with wet and dry, frost with the winter, a post in a storm all at once. ${has('plumbOver') ? '' : 'Both readings must be over the same height, on the same face. '}Compare readings of the same season.`,
    )
  },
  sources: [
    {
      fact: 'change over the days between, for a year of 365.25 days',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'a level or plumb line is read to about 1/16 in each time', from: 'common practice, no source' },
  ],
  cautions: ['structure'],
  drawing: plumbTrendDrawing,
  examples: [
    // 3/4 − 1/4 = 1/2 in in 548 days (1 Apr 2025 to 1 Oct 2026); × 365.25/548 = 0.3333
    {
      ask: 'Is the post still moving? Plumb readings 1/4 in and 3/4 in, read on 1 April 2025 and 1 October 2026.',
      given: { plumbReadings: ['1/4 in', '3/4 in'], plumbDates: ['2025-04-01', '2026-10-01'] },
      expect: { leanMoves: 'it moves', leanGrowth: '0.3333 in' },
    },
    // 1 mm in 92 days: within 3.2 mm, and too soon
    {
      ask: 'Plumb readings 10 mm and 11 mm, read on 2026-03-01 and 2026-06-01: is the post still leaning?',
      given: { plumbReadings: ['10 mm', '11 mm'], plumbDates: ['2026-03-01', '2026-06-01'] },
      expect: { leanMoves: 'cannot say whether it moves' },
    },
  ],
})
