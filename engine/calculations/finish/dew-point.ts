// The dew point of the air, and whether the face of the wood is far enough above it to be painted.
//
//   21 °C ─ air
//   18 °C ─ face of the wood   ┐ at least the margin,
//   14 °C ─ dew point          ┘ or water settles in the wet paint
import { calculation } from '../../calculation.ts'
import { dewLines, dewLocals, dewSource, oneKelvin } from '../../dew.ts'
import { dewDrawing } from '../../drawings/dew.ts'
import { compare } from '../../quantities/amount.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show, showApart } from '../../quantities/show.ts'
import {
  aboveDew,
  airNow,
  dewHolds,
  dewMargin,
  dewPoint,
  humidityLimit,
  humidityNow,
  surfaceTemperature,
} from '../../words/dew.ts'

const freezing = quantity(32, 'F')
const warmest = quantity(45, 'C')

export const dewPointOfAir = calculation({
  name: 'dew-point',
  title: 'Dew point, and dew on the wood',
  answers:
    'The dew point from the air’s temperature and humidity, and whether the face of the wood is far enough above it to be painted.',
  needs: { airNow, humidityNow, surfaceTemperature, dewMargin, humidityLimit },
  onlyFor: {
    surfaceTemperature: ['aboveDew', 'dewHolds'],
    dewMargin: ['dewHolds'],
    humidityLimit: ['dewHolds'],
  },
  gives: { dewPoint, aboveDew, dewHolds },
  headlines: ['dewPoint', 'dewHolds'],
  together: { dewHolds: ['dewHolds', 'dewPoint', 'aboveDew'], aboveDew: ['aboveDew', 'dewPoint', 'dewHolds'] },
  locals: dewLocals,
  lines: {
    ...dewLines,
    aboveDew: ['surfaceTemperature - dewPoint', 'how much warmer the face is than the dew point'],
  },
  work(given, { line, put, has, tell, remark, doubt, cite }) {
    put('oneKelvin', oneKelvin)
    for (const name of ['K', 'lnVapour', 'g', 'guess', 'lnGuess', 'steepness', 'below']) line(name)
    const dew = line('dewPoint')
    if (less(dew, freezing))
      doubt(
        'implausible',
        'airNow',
        `The dew point, ${show(dew)}, is below freezing: there it is frost that settles, and other tables may give up to some degrees more. It is too cold for paint either way.`,
      )
    if (less(warmest, given.airNow))
      doubt(
        'implausible',
        'airNow',
        `In air over ${cite(warmest, 'warmest air', 'published')} I have not held this against another table.`,
      )
    if (!has('surfaceTemperature')) {
      remark(
        `Where the face of the wood is no warmer than ${show(dew)}, water settles on it. Under a clear evening sky a face gets colder than the air.`,
      )
      return
    }
    const above = line('aboveDew')
    if (!has('dewMargin') || !has('humidityLimit')) return
    const { humidityNow: damp, humidityLimit: most, dewMargin: margin } = given
    const near = compare(above.amount, margin.amount) === -1
    const tooDamp = less(most, damp)
    tell('dewHolds', !near && !tooDamp)
    if (near)
      remark(
        `The face decides: ${show(given.surfaceTemperature)} is ${showApart(above)} above the dew point of ${show(dew)}, and it should be at least ${showApart(margin)}. Wait until the sun has warmed it, or until the air is drier.`,
      )
    else if (tooDamp)
      remark(
        `The humidity decides: ${show(damp)} is over the limit of ${show(most)}, though the face is ${showApart(above)} above the dew point.`,
      )
    else
      remark(
        `Two facts decide: the face is ${showApart(above)} above the dew point of ${show(dew)}, with ${showApart(margin)} wanted, and ${show(damp)} humidity is within ${show(most)}.`,
      )
    remark('It must stay so until the coat is dry: the night’s lowest temperature often falls to about the dew point.')
  },
  sources: [
    dewSource,
    {
      fact: 'the face at least 3 °C (5 °F) above the dew point, and no more than 85 % humidity',
      from: 'paint inspection practice, as printed at https://fr.scribd.com/document/146044552/; your can comes first',
    },
    {
      fact: 'the dew point tells about how cold the night will be',
      from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16, https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378',
    },
  ],
  cautions: ['weather'],
  drawing: dewDrawing,
  examples: [
    // psychrolib 1.1.1 gives 64.5 °F
    {
      ask: 'What is the dew point at 75 F and 70 % humidity?',
      given: { airNow: '75 F', humidityNow: '70 %' },
      expect: { dewPoint: '64.56 °F' },
    },
    // dew point 14.17 °C; 18 − 14.17 = 3.83, over 3
    {
      ask: 'Air at 21 C, 65 % humidity, surface at 18 C: too close to the dew point?',
      given: { airNow: '21 C', humidityNow: '65 %', surfaceTemperature: '18 C' },
      expect: { dewHolds: 'far enough from dew', dewPoint: '14.18 °C', aboveDew: '3.8 °C difference' },
    },
    // dew point 10.75 °C; 13 − 10.75 = 2.25, under 3: the source rejects it too
    {
      ask: 'Air at 16 C, 71 % humidity, surface at 13 C: is the surface warm enough to paint?',
      given: { airNow: '16 C', humidityNow: '71 %', surfaceTemperature: '13 C' },
      expect: { dewHolds: 'too near to dew' },
    },
  ],
})
