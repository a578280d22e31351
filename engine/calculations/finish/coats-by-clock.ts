// Coats by the clock: each takes so long to put on, and waits so long before the next.
//
//   8:00 ▓▓▓ 9:30 ............ 13:30 ▓▓▓ 15:00        two coats; the wait behind the last is not counted
import { calculation } from '../../calculation.ts'
import { subtract, toNumber } from '../../quantities/amount.ts'
import { less, numberIn, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { coats } from '../../words/finish.ts'
import { word } from '../../words/word.ts'

const timeOf = (name: string, label: string, ask: string) =>
  word<'duration'>(name, {
    kind: 'duration',
    label,
    units: { imperial: 'h', metric: 'h' },
    measure: 'By the clock; the wait is on the can.',
    ask,
    called: {},
    possible: { above: '0 h' },
    plausible: { from: '5 minutes', to: '100 h' },
  })
const coatTime = timeOf('coatTime', 'to put one coat on', 'How long does one coat take to put on?')
const coatWait = timeOf('coatWait', 'wait before the next coat', 'How long must a coat dry before the next?')
const clockOf = (name: string, label: string, ask: string) =>
  word<'count'>(name, {
    kind: 'count',
    noun: 'o’clock',
    label,
    measure: 'By the 24-hour clock: 8 is eight in the morning, 18 six in the evening.',
    ask,
    called: {},
    possible: { least: '0', most: '24' },
  })
const startsAt = clockOf('startsAt', 'begun at', 'At what hour do you begin?')
const stopsAt = clockOf('stopsAt', 'hour after which nothing goes on', 'After what hour may nothing go on?')

const coatsSpan = word<'duration'>('coatsSpan', {
  kind: 'duration',
  label: 'from the first stroke to the last',
  units: { imperial: 'h', metric: 'h' },
  measure: 'All coats with the waits between them.',
  ask: 'How long is it from the first stroke to the last?',
  called: {},
})
const coatsDone = word<'count'>('coatsDone', {
  kind: 'count',
  noun: 'coat',
  label: 'coats finished by then',
  whole: true,
  measure: 'Whole ones that are on before nothing may go on any more.',
  ask: 'How many coats are done by then?',
  called: {},
})

export const coatsByClock = calculation({
  name: 'coats-by-clock',
  title: 'Coats by the clock',
  answers:
    'When the last coat is on where each takes so long and waits so long for the next, and how many go on before an hour.',
  needs: { coats, coatTime, coatWait, startsAt, stopsAt },
  onlyFor: { coats: ['coatsSpan'], stopsAt: ['coatsDone'] },
  may: ['startsAt'],
  gives: { coatsSpan, coatsDone },
  headlines: ['coatsSpan', 'coatsDone'],
  locals: { oneCoat: 'count', until: 'duration' },
  lines: {
    coatsSpan: ['coats / oneCoat * coatTime + (coats / oneCoat - 1) * coatWait', 'one wait fewer than coats'],
    coatsDone: ['max(0, floor((until + coatWait) / (coatTime + coatWait)))', 'the last needs no wait behind it'],
  },
  work(
    { startsAt: start, stopsAt: stop, coatTime: one, coatWait: wait },
    { line, put, has, assumed, need, remark, refuse, table },
  ) {
    put('oneCoat', quantity(1, 'coat'))
    const [each, between] = [numberIn(one, 'h'), numberIn(wait, 'h')]
    // How many go on by an hour is asked: the usual number of coats is none that was told.
    if (has('coats') && !(assumed('coats') && has('stopsAt'))) {
      const span = line('coatsSpan')
      const many = Math.round(numberIn(span, 'h') === 0 ? 0 : (numberIn(span, 'h') + between) / (each + between))
      if (has('startsAt')) {
        const begun = toNumber(start.amount)
        table({
          title: 'By the clock',
          columns: [
            { label: 'coat', unit: '' },
            { label: 'begun', unit: '' },
            { label: 'on', unit: '' },
          ],
          rows: Array.from({ length: Math.min(many, 20) }, (_, i) => {
            const at = begun + i * (each + between)
            return [`${i + 1}`, clock(at), clock(at + each)]
          }),
        })
        remark(`Begun at ${clock(begun)}, the last coat is on at ${clock(begun + numberIn(span, 'h'))}.`)
      }
    }
    if (has('stopsAt')) {
      if (!has('startsAt')) need('startsAt')
      if (!less(start, stop))
        refuse('stopsAt', `${show(stop)} is not after ${show(start)}. Give both by the 24-hour clock.`)
      put('until', quantity(subtract(stop.amount, start.amount), 'h'))
      line('coatsDone')
      remark('A coat must be on by then; whether it is dry before the dew, the can says: count its hours, too.')
    }
    remark('Cool or damp air makes the wait longer than the can says.')
  },
  sources: [{ fact: 'so many coats, and one wait fewer', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['weather', 'fire', 'lead', 'dust'],
  examples: [
    // 2 × 2 h + 3 h = 7 h
    {
      ask: 'One coat takes 2 hours to put on and dries 3 hours before the next. 2 coats, begun at 9 am: when is it finished?',
      given: { coatTime: '2 h', coatWait: '3 h', coats: '2', startsAt: '9' },
      expect: { coatsSpan: '7 hours' },
    },
    // 18 − 7 = 11 h; (11 + 4) / (1 + 4) = 3
    {
      ask: 'A coat takes 1 hour and 4 hours between coats. From 7 am, how many coats are done before 6 pm?',
      given: { coatTime: '1 h', coatWait: '4 h', startsAt: '7', stopsAt: '18' },
      expect: { coatsDone: '3 coats' },
    },
  ],
})

/** “8:00 pm”, on the next day where it runs past midnight. */
function clock(hours: number): string {
  const minutes = Math.round(hours * 60)
  const [hour, minute] = [Math.floor(minutes / 60) % 24, minutes % 60]
  const day = Math.floor(minutes / 1440)
  const twelve = hour % 12 === 0 ? 12 : hour % 12
  return `${twelve}:${`${minute}`.padStart(2, '0')} ${hour < 12 ? 'am' : 'pm'}${day > 0 ? `, ${day === 1 ? 'the next day' : `${day} days on`}` : ''}`
}
