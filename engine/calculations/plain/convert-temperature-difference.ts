// A difference of temperatures on the other scale: 5 F° warmer is 2.8 C° warmer, wherever one begins.
import { calculation } from '../../calculation.ts'
import { inFull } from '../../plain-conversion.ts'
import { amountIn } from '../../quantities/quantity.ts'
import { differenceConverted, differenceGiven, differenceUnit } from '../../words/plain-sums.ts'

export const convertTemperatureDifference = calculation({
  name: 'convert-temperature-difference',
  title: 'A difference of temperatures on the other scale',
  answers: 'The same difference of temperatures in degrees Fahrenheit or Celsius, exactly.',
  needs: { differenceGiven, differenceUnit },
  gives: { differenceConverted },
  headlines: ['differenceConverted'],
  plain: true,
  locals: { difference: 'number' },
  lines: {
    inFahrenheit: ['difference * 9 / 5', 'nine Fahrenheit degrees are as much as five Celsius degrees'],
    inCelsius: ['difference * 5 / 9', 'five Celsius degrees are as much as nine Fahrenheit degrees'],
  },
  work({ differenceGiven: given, differenceUnit: wanted }, { line, put, tell, remark }) {
    put('difference', { kind: 'number', amount: amountIn(given, given.unit), unit: 'ratio' })
    if (wanted !== given.unit) line(wanted === 'dF' ? 'inFahrenheit' : 'inCelsius')
    const said = inFull(tell('differenceConverted', { ...given, unit: wanted }))
    if (said) remark(said)
    remark('This is a difference, so the 32 of the scale does not come into it.')
  },
  sources: [{ fact: '1 C° = 9/5 F°', from: 'NIST SP 811, appendix B.' }],
  cautions: [],
  examples: [
    // 5 × 5/9 = 2.7777…
    {
      ask: 'What is a 5 °F difference in Celsius?',
      given: { differenceGiven: '5 dF', differenceUnit: 'dC' },
      expect: { differenceConverted: '2.778 °C difference' },
    },
    // 3 × 9/5
    {
      ask: 'How much is 3 °C warmer in Fahrenheit?',
      given: { differenceGiven: '3 dC', differenceUnit: 'dF' },
      expect: { differenceConverted: '5.4 °F difference' },
    },
  ],
})
