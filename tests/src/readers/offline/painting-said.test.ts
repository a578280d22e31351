// Painting: the air of a day and the limits of the tin, and how much it takes by what was told. The figures are worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('a margin and a limit are no temperature of the wood', () => {
  it('is the face more than so many degrees above it?', async () => {
    // psychrolib gives 57.0 °F for 68 °F and 68 %; 64 − 57 = 7, over 4
    const [first, second] = await talk([
      'It is 68 °F with 68 % humidity and the boards read 64 °F. What is the dew point, and are they more than 4 degrees above it?',
      'and at 80 % humidity?',
    ])
    expect(results(first)).toMatchObject({ dewHolds: 'far enough from dew' })
    // 61.6 °F at 80 %: 2.4 is under 4
    expect(results(second)).toMatchObject({ dewHolds: 'too near to dew' })
  })

  it('the tin’s limits hold for the air', async () => {
    // dew point of 10 °C at 90 %: 8.4 °C, 1.6 below, under 3; of 16 °C at 60 %: 8.2 °C, 7.8 below
    const [first, second] = await talk([
      'The tin says never paint below 9 degrees, nor when the air is within 3 degrees of the dew point. It is 10 degrees and the humidity is 90 per cent. May I start?',
      'Tomorrow they promise 16 degrees and 60 per cent. Would that be all right?',
    ])
    expect(results(first)).toMatchObject({ airHolds: 'no, not in this air' })
    expect(results(second)).toMatchObject({ airHolds: 'yes, by the air' })
  })

  it('what is asked is answered next', async () => {
    const [first, second] = await talk(['can I varnish on Sunday?', "it will be 8 °C and the humidity's about ninety"])
    expect(first?.asks.map((it) => it.word)).toEqual(['airNow', 'humidityNow'])
    expect(results(second)).toMatchObject({ airHolds: 'no, not in this air' })
  })
})

describe('a fence by its length and height', () => {
  it('is painted on both sides', async () => {
    // 24 × 1.5 × 2 × 2 / 9 = 16 L; × 1.1 = 17.6; / 10 → 2 cans at £61
    const answers = await talk([
      'stain for 24m x 1500, tight boards, both sides, 2 coats, 9 sqm a litre',
      'the tins are 10 litres at £61 each. cost?',
    ])
    expect(results(answers[0])).toMatchObject({ faceArea: '72 m²', finishNeeded: '17.6 L' })
    expect(results(answers[1])).toMatchObject({ finishCost: '£122.00', finishCans: '2 cans' })
  })

  it('its gaps take no paint', async () => {
    // 90 × 3.5 × 2 × 3 / 5 = 378 ft²; × 2 / 350 = 2.16; × 1.1 = 2.376
    const [only] = await talk([
      'Both faces get two coats. The fence is 90 ft long and 42 in tall, 3 in pickets and 2 in gaps, the paint covers 350 sq ft per gallon. How many gallons?',
    ])
    expect(results(only)).toMatchObject({ faceArea: '378 ft²', finishNeeded: '2.376 gal' })
  })
})

it('pickets and rails are each painted all round', async () => {
  // 100 × 2 (0.09 × 1 + 0.02 × 1 + 0.09 × 0.02) = 22.36 m²; × 2 / 10 × 1.1 = 4.919 L; 10 rails 3 m: 2 (0.07 + 0.04) × 30 = 6.6 m²; 28.96 → 6.371 L
  const answers = await talk([
    'I have 100 pickets, each 1000 mm long, 90 mm wide and 20 mm thick, to paint with two coats at 10 square metres to the litre. How many litres?',
    'I forgot the rails: ten of them, each 3 m long and 70 mm by 40 mm. How many litres with them?',
  ])
  expect(results(answers[0])).toMatchObject({ finishNeeded: '4.9192 L' })
  expect(results(answers[1])).toMatchObject({ finishNeeded: '6.3712 L' })
})
