// A temperature on the other scale.
//
//   °F   32 ────── 212      one counts 180 degrees from ice to steam, the other 100,
//   °C    0 ────── 100      and they do not begin at the same cold
import { calculation } from '../../calculation.ts'
import { inFull } from '../../plain-conversion.ts'
import { amountIn } from '../../quantities/quantity.ts'
import { temperatureConverted, temperatureGiven, temperatureUnit } from '../../words/plain-sums.ts'

export const convertTemperature = calculation({
  name: 'convert-temperature',
  title: 'A temperature on the other scale',
  answers: 'The same temperature in degrees Fahrenheit or Celsius, exactly.',
  needs: { temperatureGiven, temperatureUnit },
  gives: { temperatureConverted },
  headlines: ['temperatureConverted'],
  plain: true,
  locals: { reading: 'number' },
  lines: {
    fahrenheit: ['reading * 9 / 5 + 32', 'nine degrees for every five, counted from 32 at freezing'],
    celsius: ['(reading - 32) * 5 / 9', 'from freezing, five degrees for every nine'],
  },
  work({ temperatureGiven: given, temperatureUnit: wanted }, { line, put, tell, remark }) {
    put('reading', { kind: 'number', amount: amountIn(given, given.unit), unit: 'ratio' })
    if (wanted !== given.unit) line(wanted === 'F' ? 'fahrenheit' : 'celsius')
    const said = inFull(tell('temperatureConverted', { ...given, unit: wanted }))
    if (said) remark(said)
    remark('This is a temperature, not a difference: 5 degrees warmer is another sum.')
  },
  sources: [{ fact: '°F = °C × 9/5 + 32', from: 'NIST SP 811, appendix B.' }],
  cautions: [],
  examples: [
    // 10 × 9/5 + 32
    {
      ask: 'What is 10 °C in Fahrenheit?',
      given: { temperatureGiven: '10 °C', temperatureUnit: 'F' },
      expect: { temperatureConverted: '50 °F' },
    },
    // (41 − 32) × 5/9
    {
      ask: 'Convert 41 °F to Celsius.',
      given: { temperatureGiven: '41 °F', temperatureUnit: 'C' },
      expect: { temperatureConverted: '5 °C' },
    },
  ],
})
