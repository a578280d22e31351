// The profile of the ground from readings down from a level string.
//
//   ───┬──────┬──────┬──────┬───  level string
//      │      │      │      │     reading: straight down to the ground; a bigger reading is lower ground
//   ▔▔▔▔──────__     ▔▔▔────▔▔
import { calculation } from '../../calculation.ts'
import { profileDrawing } from '../../drawings/profile.ts'
import { exact, subtract, times } from '../../quantities/amount.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { levelReadings, readingsApart, slopeAngle, totalFall } from '../../words/heights.ts'
import { slope } from '../../words/slopes.ts'

const mostReadings = 200

export const slopeFromLevels = calculation({
  name: 'slope-from-levels',
  title: 'The ground from level readings',
  answers: 'The fall between readings down from a level string, the fall in all and the slope.',
  needs: { levelReadings, readingsApart },
  onlyFor: { readingsApart: ['slope', 'slopeAngle'] },
  gives: { totalFall, slope, slopeAngle },
  headlines: ['totalFall', 'slope'],
  together: { totalFall: ['totalFall', 'slope'], slope: ['slope', 'totalFall', 'slopeAngle'] },
  called: [
    'level readings',
    'readings down',
    'readings from a level',
    'readings from the string',
    'down from the string',
  ],
  locals: { first: 'length', last: 'length', steps: 'number' },
  lines: {
    totalFall: ['last - first', 'a bigger reading is lower ground'],
    distance: ['steps * readingsApart', 'from the first reading to the last, measured level'],
    slope: ['totalFall / distance', 'over the whole length'],
    slopeAngle: ['atan(totalFall / distance)', 'the same as an angle'],
  },
  work({ readingsApart }, { line, has, rows, put, refuse, remark, table, system }) {
    const readings = rows('levelReadings')
    const [first] = readings
    const last = readings.at(-1)
    if (!first || !last || readings.length < 2)
      return refuse('levelReadings', 'One reading shows no fall. Give two or more, in order along the fence.')
    if (readings.length > mostReadings)
      refuse(
        'levelReadings',
        `That is ${show(quantity(readings.length, 'reading'))}. Take the fence in parts of at most ${show(quantity(mostReadings, 'reading'))}.`,
      )
    put('first', first)
    put('last', last)
    put('steps', quantity(readings.length - 1, 'ratio'))
    line('totalFall')
    const fallTo = (i: number): Quantity => ({
      ...(readings[i] as Quantity),
      amount: subtract((readings[i] as Quantity).amount, (readings[i - 1] as Quantity).amount),
    })
    const unit = system === 'metric' ? 'mm' : 'in'
    const apart = has('readingsApart') ? readingsApart : undefined
    table({
      title: 'Ground, reading by reading',
      columns: [
        { label: 'reading', unit: '' },
        ...(apart ? [{ label: 'from the first', unit: apart.unit }] : []),
        { label: 'down from the string', unit },
        { label: 'fall since the last', unit },
      ],
      rows: readings.map((it, i) => [
        i + 1,
        ...(apart ? [show({ ...apart, amount: times(apart.amount, exact(i)) })] : []),
        show({ ...it, unit }),
        i === 0 ? '–' : show({ ...fallTo(i), unit }),
      ]),
    })
    if (has('readingsApart')) {
      line('distance')
      line('slope')
      line('slopeAngle')
    }
    remark(
      'A fall of less than nothing is a rise. The string must be level, not parallel to the ground: check it from both ends.',
    )
  },
  sources: [
    {
      fact: 'fall between two places = difference of their readings',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: profileDrawing,
  examples: [
    // 40 − 12 = 28; 3 × 8 ft = 24 ft = 288 in; 28/288 = 9.7222 %
    {
      ask: 'Level readings of 12, 20, 33 and 40 in, taken every 8 ft: how much does it fall and what is the slope?',
      given: { levelReadings: ['12 in', '20 in', '33 in', '40 in'], readingsApart: '8 ft' },
      expect: { totalFall: '28 in', slope: '9.722 %', slopeAngle: '5.553°' },
    },
    // 310 − 100 = 210 mm over 3 × 2.4 m = 7.2 m: 2.9167 %
    {
      ask: 'I measure down from the string 100, 150, 230 and 310 mm, readings 2.4 m apart. How far does the ground fall?',
      given: { levelReadings: ['100 mm', '150 mm', '230 mm', '310 mm'], readingsApart: '2.4 m' },
      expect: { totalFall: '210 mm', slope: '2.917 %' },
    },
  ],
})
