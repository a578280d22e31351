// The mean of some temperatures, and how far they lie apart. Their sum would mean nothing.
import { calculation } from '../../calculation.ts'
import { compare } from '../../quantities/amount.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { temperatureMean, temperatures, temperatureSpread } from '../../words/plain-sums.ts'

export const temperaturesTogether = calculation({
  name: 'temperatures-together',
  title: 'Temperatures averaged and compared',
  answers: 'The mean of some temperatures, and how far the warmest lies above the coldest.',
  needs: { temperatures },
  gives: { temperatureMean, temperatureSpread },
  headlines: ['temperatureMean', 'temperatureSpread'],
  plain: true,
  locals: {
    many: 'number',
    warmest: 'temperature',
    coldest: 'temperature',
    temperatureSpread: 'temperatureDifference',
  },
  lines: {
    temperatureMean: ['sum(temperatures) / many', 'added up, and shared by how many there are'],
    temperatureSpread: ['warmest - coldest', 'the warmest less the coldest'],
  },
  work(_given, { line, rows, put, wants, refuse }) {
    const all = rows('temperatures')
    const [first] = all as [Quantity]
    if (all.length < 2)
      refuse('temperatures', `I have only ${show(first)}, and no temperature beside it. Check that each has its scale.`)
    put('many', quantity(all.length, 'ratio'))
    if (wants('temperatureMean')) line('temperatureMean', first.unit)
    if (!wants('temperatureSpread')) return
    put(
      'warmest',
      all.reduce((most, it) => (compare(it.amount, most.amount) === 1 ? it : most)),
    )
    put(
      'coldest',
      all.reduce((least, it) => (compare(it.amount, least.amount) === -1 ? it : least)),
    )
    line('temperatureSpread', first.unit === 'C' ? 'dC' : 'dF')
  },
  sources: [{ fact: 'mean and difference', from: 'Arithmetic, in exact fractions; needs no table.' }],
  cautions: [],
  examples: [
    // (52 + 61 + 58) / 3
    {
      ask: 'What is the average of 52 °F, 61 °F and 58 °F?',
      given: { temperatures: ['52 °F', '61 °F', '58 °F'] },
      expect: { temperatureMean: '57 °F' },
    },
    // 21 − 8.5
    {
      ask: 'What is the difference between 8.5 °C and 21 °C?',
      given: { temperatures: ['8.5 °C', '21 °C'] },
      expect: { temperatureSpread: '12.5 °C difference' },
    },
  ],
})
