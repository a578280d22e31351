// What humidity the air must have for wood to settle at a wanted moisture: the handbook's equation, turned round.
//
//   moisture ▲           ╱
//     wanted ┼ ─ ─ ─ ─ ╱        the more humid the air, the wetter the wood; so there is one humidity, and no more
//            │      ╱ │
//            └────────┴──────► humidity
import { calculation } from '../../calculation.ts'
import { equilibriumLines, humidityFor, settlesAt } from '../../equilibrium.ts'
import { toNumber } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { equilibriumMoistureFit } from '../../tables/equilibrium-moisture.ts'
import { airTemperature, humidityNeeded, wantedMoisture } from '../../words/air.ts'

export const airForMoisture = calculation({
  name: 'air-for-moisture',
  title: 'The humidity for a wanted moisture',
  answers: 'How humid the air must be, at a given temperature, for wood to settle at the moisture that you want.',
  needs: { airTemperature, wantedMoisture },
  gives: { humidityNeeded },
  headlines: ['humidityNeeded'],
  locals: { Kh: 'number', humidityNeeded: 'percent' },
  lines: {
    T: ['fahrenheit(airTemperature)', 'the temperature in °F'],
    ...equilibriumLines,
    Kh: ['K * humidityNeeded', 'the humidity that was looked for, put back into the equation'],
    settles: [settlesAt, 'and it gives the moisture back: that proves the humidity'],
  },
  work({ airTemperature, wantedMoisture }, { line, tell, refuse, doubt, remark, cite }) {
    line('T')
    const fit = { W: line('W').amount, K: line('K').amount, K1: line('K1').amount, K2: line('K2').amount }
    const found =
      toNumber(fit.W) > 0 && toNumber(fit.K) > 0 ? humidityFor(toNumber(wantedMoisture.amount), fit) : undefined
    if (!found)
      return refuse(
        'wantedMoisture',
        `No air makes wood settle at ${show(wantedMoisture)} at ${show(airTemperature)}: even saturated air leaves it drier. Wood that wet is wet from rain or fresh from the saw.`,
      )
    const humidity: Quantity = tell('humidityNeeded', { kind: 'percent', amount: found, unit: 'percent' })
    line('Kh')
    line('settles')
    if (
      less(airTemperature, quantity(30, 'F')) ||
      less(quantity(270, 'F'), airTemperature) ||
      less(humidity, quantity(5, 'percent')) ||
      less(quantity(95, 'percent'), humidity)
    )
      doubt(
        'implausible',
        'airTemperature',
        `The handbook’s table runs from 30 to 270 °F and 5 to 95 % humidity; ${show(airTemperature)} and ${cite(humidity, 'humidity')} lie outside it.`,
      )
    remark(
      `In air drier than ${show(humidity)}, taken over day and night and over weeks, the wood gets to ${show(wantedMoisture)} and below; in damper air it never does, however long you wait.`,
    )
  },
  sources: [
    {
      fact: `equilibrium moisture, solved for the humidity by halving; holds for ${equilibriumMoistureFit.holds}`,
      from: `${equilibriumMoistureFit.title}. ${equilibriumMoistureFit.address}`,
    },
  ],
  cautions: [],
  examples: [
    // 12.0 % at 70 °F and 65 % in table 4-2; at 20 °C the equation turned round gives 65.0
    {
      ask: 'At 20 C, what humidity do I need for wood at 12 %?',
      given: { airTemperature: '20 C', wantedMoisture: '12 %' },
      expect: { humidityNeeded: '65 %' },
    },
    // table 4-2 prints 14.9 at 30 °F and 75 %, 14.8 at 50 °F and 75 %
    {
      ask: 'What humidity dries wood to 15 % at 50 F?',
      given: { airTemperature: '50 F', wantedMoisture: '15 %' },
      expect: { humidityNeeded: '75.7 %' },
    },
  ],
})
