// Whether paint may go on in this air, by the limits on the can.
//
//   14 °C ─ air           at least the coldest that the can allows,
//    ┊    the margin      and so far above the dew point,
//    9 °C ─ dew point     and no damper than the can allows
import { calculation } from '../../calculation.ts'
import { dewLines, dewLocals, dewSource, oneKelvin } from '../../dew.ts'
import { compare } from '../../quantities/amount.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show, showApart } from '../../quantities/show.ts'
import { airNow, dewMargin, dewPoint, humidityLimit, humidityNow } from '../../words/dew.ts'
import { leastPaintTemperature } from '../../words/paint-hours.ts'
import { word } from '../../words/word.ts'

const airAboveDew = word<'temperatureDifference'>('airAboveDew', {
  kind: 'temperatureDifference',
  label: 'air above the dew point by',
  units: { imperial: 'dF', metric: 'dC' },
  measure: 'How much the air may cool before dew falls.',
  ask: 'How far is the air above the dew point?',
  called: { names: ['air above the dew point'] },
})

const airHolds = word<'verdict'>('airHolds', {
  kind: 'verdict',
  label: 'paint in this air',
  measure: 'The air against the coldest that the can allows, the dew point with its margin, and the most humidity.',
  ask: 'May it be painted in this air?',
  called: {
    names: ['paint in this air'],
    asks: ['weather good enough to paint', 'weather good enough to stain', 'weather right for painting'],
  },
  says: {
    yes: 'yes, by the air',
    no: 'no, not in this air',
    unknown: 'cannot say whether it may be painted in this air',
  },
})

const warmest = quantity(45, 'C')

export const airForPaint = calculation({
  name: 'air-for-paint',
  title: 'Painting or staining in this air',
  answers:
    'Whether it may be painted or stained in air of a temperature and humidity: warm enough for the can, far enough above the dew point, and not too damp.',
  needs: { airNow, humidityNow, leastPaintTemperature, dewMargin, humidityLimit },
  onlyFor: { leastPaintTemperature: ['airHolds'], dewMargin: ['airHolds'], humidityLimit: ['airHolds'] },
  gives: { airHolds, dewPoint, airAboveDew },
  headlines: ['airHolds'],
  together: { airHolds: ['airHolds', 'dewPoint', 'airAboveDew'] },
  locals: dewLocals,
  lines: { ...dewLines, airAboveDew: ['airNow - dewPoint', 'how much the air may cool before dew falls'] },
  work(given, { line, put, has, tell, remark, doubt, cite }) {
    put('oneKelvin', oneKelvin)
    for (const name of ['K', 'lnVapour', 'g', 'guess', 'lnGuess', 'steepness', 'below']) line(name)
    const dew = line('dewPoint')
    if (less(warmest, given.airNow))
      doubt(
        'implausible',
        'airNow',
        `In air over ${cite(warmest, 'warmest air', 'published')} I have not held this against another table.`,
      )
    const above = line('airAboveDew')
    if (!has('leastPaintTemperature') || !has('dewMargin') || !has('humidityLimit')) return
    const {
      airNow: air,
      humidityNow: damp,
      leastPaintTemperature: least,
      dewMargin: margin,
      humidityLimit: most,
    } = given
    const faults = [
      ...(less(air, least) ? [`${show(air)} is colder than ${show(least)}`] : []),
      ...(compare(above.amount, margin.amount) === -1
        ? [`the air is ${showApart(above)} above the dew point of ${show(dew)}, and ${showApart(margin)} is wanted`]
        : []),
      ...(less(most, damp) ? [`${show(damp)} humidity is over ${show(most)}`] : []),
    ]
    tell('airHolds', faults.length === 0)
    remark(
      faults.length === 0
        ? `What decides it: ${show(air)} is no colder than ${show(least)}, it is ${showApart(above)} above the dew point of ${show(dew)} with ${showApart(margin)} wanted, and ${show(damp)} humidity is within ${show(most)}.`
        : `What decides against it: ${faults.join('; ')}.`,
    )
    remark(
      'The wood may be colder than the air, in the shade and in the morning: measure its face, and tell me. No rain may come before the coat is dry, and the night must stay above the least temperature too.',
    )
  },
  sources: [
    dewSource,
    {
      fact: 'at least 3 °C (5 °F) above the dew point, and no more than 85 % humidity',
      from: 'paint inspection practice, as printed at https://fr.scribd.com/document/146044552/; your can comes first',
    },
    {
      fact: 'latex at 50 °F (10 °C) and above',
      from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16, https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378',
    },
  ],
  cautions: ['weather'],
  examples: [
    // Magnus: g = ln 0.6 + 17.625 × 20 / 263.04 = 0.8293; 243.04 × g / (17.625 − g) = 12.0 °C; 20 − 12 = 8, over 3
    {
      ask: 'May I paint today: the air is 20 C now, 60 % humidity, and the tin says not below 8 C?',
      given: { airNow: '20 C', humidityNow: '60 %', leastPaintTemperature: '8 C' },
      expect: { airHolds: 'yes, by the air', dewPoint: '12.01 °C' },
    },
    // g = ln 0.9 + 17.625 × 12 / 255.04 = 0.7239; 243.04 × g / (17.625 − g) = 10.41 °C; 12 − 10.41 = 1.6, under 3; 90 over 85
    {
      ask: 'Can I stain this afternoon at 12 C and 90 % humidity?',
      given: { airNow: '12 C', humidityNow: '90 %' },
      expect: { airHolds: 'no, not in this air' },
    },
  ],
})
