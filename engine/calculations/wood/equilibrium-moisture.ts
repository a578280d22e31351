// Where wood settles, wet or dry to begin with, when it is left long enough in air of one temperature and humidity.
import { calculation } from '../../calculation.ts'
import { moistureDrawing } from '../../drawings/moisture.ts'
import { equilibriumLines, settlesAt } from '../../equilibrium.ts'
import { quantity, less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { equilibriumMoistureFit } from '../../tables/equilibrium-moisture.ts'
import { airTemperature, equilibriumMoisture, humidity } from '../../words/air.ts'

export const equilibrium = calculation({
  name: 'equilibrium-moisture',
  title: 'The moisture wood settles at',
  answers:
    'The moisture content that wood ends up at in air of a given temperature and humidity: as dry as it gets there.',
  needs: { airTemperature, humidity },
  gives: { equilibriumMoisture },
  headlines: ['equilibriumMoisture'],
  joins: true,
  lines: {
    T: ['fahrenheit(airTemperature)', 'the temperature in °F'],
    ...equilibriumLines,
    Kh: ['K * humidity', 'humidity as a share of one'],
    equilibriumMoisture: [settlesAt, 'water held in the cell walls, in two ways'],
  },
  work({ airTemperature, humidity }, { line, doubt, remark }) {
    for (const name of ['T', 'W', 'K', 'K1', 'K2', 'Kh', 'equilibriumMoisture']) line(name)
    if (
      less(airTemperature, quantity(30, 'F')) ||
      less(quantity(270, 'F'), airTemperature) ||
      less(humidity, quantity(5, 'percent')) ||
      less(quantity(95, 'percent'), humidity)
    )
      doubt(
        'implausible',
        'airTemperature',
        `The handbook’s table runs from 30 to 270 °F and 5 to 95 % humidity; ${show(airTemperature)} and ${show(humidity)} lie outside it.`,
      )
    remark(
      'Take it to the nearest point or so: species differ, and wood that is drying stays a little wetter than wood that is wetting.',
    )
  },
  sources: [
    {
      fact: `equilibrium moisture; holds for ${equilibriumMoistureFit.holds}`,
      from: `${equilibriumMoistureFit.title}. ${equilibriumMoistureFit.address}`,
    },
  ],
  cautions: [],
  drawing: moistureDrawing,
  examples: [
    // Table 4-2 prints 12.0 at 70 °F and 65 %; the fit gives 12.03
    {
      ask: 'What moisture does wood settle at in 70 F and 65 % humidity?',
      given: { airTemperature: '70 F', humidity: '65 %' },
      expect: { equilibriumMoisture: '12 %' },
    },
    // Table 4-2 prints 16.2 at 60 °F (15.6 °C) and 80 %
    {
      ask: 'EMC at 60 F and 80 % RH?',
      given: { airTemperature: '60 F', humidity: '80 %' },
      expect: { equilibriumMoisture: '16.2 %' },
    },
  ],
})
