// This file is about the dew point of air, by ASHRAE's equation for water vapour over water: one text of it for every calculation that needs it.
//
// How much vapour the air holds when it is full grows steeply with warmth. The dew point is where the vapour that is there would fill it:
// a first guess by Magnus's short formula, then one step of Newton's on the long one, which leaves less than a thousandth of a degree.
import { readLine, workLine } from './formula.ts'
import type { Amount } from './quantities/amount.ts'
import { type Quantity, quantity } from './quantities/quantity.ts'

const full = (kelvin: string): string =>
  `-5800.2206 / ${kelvin} + 1.3914993 - 0.048640239 * ${kelvin} + 0.000041764768 * ${kelvin} ^ 2 - 0.000000014452093 * ${kelvin} ^ 3 + 6.5459673 * ln(${kelvin})`

export const dewLocals = { oneKelvin: 'temperatureDifference' } as const
export const oneKelvin: Quantity = quantity(1, 'dC')

/** Need the words `airNow` and `humidityNow`, and `oneKelvin`. */
export const dewLines = {
  K: ['(fahrenheit(airNow) + 459.67) / 1.8', 'the air’s temperature from absolute zero'],
  lnVapour: [
    `${full('K')} + ln(humidityNow)`,
    'the logarithm of the vapour’s pressure: that of full air, times the humidity',
  ],
  g: ['ln(humidityNow) + 17.625 * (K - 273.15) / (K - 30.11)', 'Magnus’s short formula, for a first guess'],
  guess: ['243.04 * g / (17.625 - g) + 273.15', 'its dew point, from absolute zero'],
  lnGuess: [full('guess'), 'what the long formula says there'],
  steepness: [
    '5800.2206 / guess ^ 2 - 0.048640239 + 0.000083529536 * guess - 0.000000043356279 * guess ^ 2 + 6.5459673 / guess',
    'and how fast it grows there',
  ],
  below: [
    'K - guess - (lnVapour - lnGuess) / steepness',
    'one step towards it: how far the dew point lies below the air',
  ],
  dewPoint: ['airNow - below * oneKelvin', 'that far below the air'],
} as const

const lines = Object.entries(dewLines).map(([name, [text]]) => [name, readLine(text)] as const)

/** The same worked without its steps, for an hour of many. */
export function dewPointOf(air: Quantity, humidity: Quantity): Quantity {
  const known: Record<string, Amount> = {
    airNow: air.amount,
    humidityNow: humidity.amount,
    oneKelvin: oneKelvin.amount,
  }
  for (const [name, line] of lines)
    known[name] = workLine(
      line,
      (used) => known[used] as Amount,
      () => {},
    ) as Amount
  return { ...air, amount: known.dewPoint as Amount }
}

export const dewSource = {
  fact: 'pressure of water vapour over water, from 0 °C up',
  from: 'ASHRAE Handbook, Fundamentals, chapter on psychrometrics (Hyland and Wexler 1983), constants as in the open-source library psychrolib',
} as const
