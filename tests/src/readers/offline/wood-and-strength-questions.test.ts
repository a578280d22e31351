// This file is about questions on wood, paint, wind and repair as people put them: short, out of order, answered in a word.
// The figures were worked by a second person from the question alone, or by the sum that stands beside them.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

const cases: readonly (readonly [said: string | readonly string[], expected: Readonly<Record<string, string>>])[] = [
  // 26 × 2 × 4 × 8 / 12
  ['26 2x4s at 8 foot how many board ft', { boardFeet: '138.7 board feet' }],
  // 30 × 1 × 6 × 6 / 12; 18 × 4 × 4 × 8 / 12; 12 × 2 × 4 × 8 / 12
  ['30 1x6 pickets 6 ft long, board feet?', { boardFeet: '90 board feet' }],
  ['18 posts 4x4 8 ft how many board feet', { boardFeet: '192 board feet' }],
  ['board feet of 12 2x4x8', { boardFeet: '64 board feet' }],
  // (3.5 / 12)² × 8 × 36.73 lb/ft³ = 25 lb, 18 of them
  ['18 southern pine 4x4 posts 8 ft long at 19 percent, what do they weigh', { sticksWeight: '450 lb' }],
  // PS 20, green: 2 → 1 9/16, 4 → 3 9/16
  ['real size of a 2x4 sold green', { dressedThickness: '1 9/16 in', dressedWidth: '3 9/16 in' }],
  // Wood Handbook, table of equilibrium moisture: 12.0 % at 70 °F and 65 %; 9.2 % at 70 °F and 50 %
  ['emc at 20 C and 65 %', { equilibriumMoisture: '12 %' }],
  ['equilibrium moisture at 20 C and 65 % rh', { equilibriumMoisture: '12 %' }],
  ['where does wood settle at 70 F and 50 % humidity?', { equilibriumMoisture: '9.2 %' }],
  [
    'picket 1x4 southern pine now 24 % dries to 12 %, want 2 1/2 in gap dry, what gap now',
    { gapNow: '2.395 in', widthChange: '−0.1052 in' },
  ],
  // 800 × 2 / 300 = 5 1/3 gal, and a tenth to spare
  ['how much paint for 800 sq ft, two coats, a gallon does 300 sq ft', { finishNeeded: '5.867 gal' }],
  // (7/8 − 1/4) in over 730 days
  [
    'post was 1/4 in out on 1 May 2024, 1/2 in on 1 May 2025 and 7/8 in on 1 May 2026: is it still moving?',
    { leanMoves: 'it moves', leanGrowth: '0.3127 in' },
  ],
  [['which treatment class for fence posts in the ground', 'US'], { useClass: 'UC4A' }],
  ['use class for fence post in the ground, Germany', { useClass: 'use class 4' }],
  // The second turn answers in other words than the question's.
  [
    ['wind force on a 4 ft picket fence, 3 1/2 in pickets, 2 1/2 in gap, posts 8 ft, 115 mph', 'houses close together'],
    { sideForce: '275.9 lbf' },
  ],
  // What belongs to a solid fence does not turn an open one into it.
  [
    [
      'picket fence pickets 3 1/2 in wide gap 2 1/2 in, 4 ft high, bays 8 ft, 115 mph, exposure C, force on a post?',
      'the run is 96 ft',
    ],
    { sideForce: '411.4 lbf' },
  ],
  // 300 × 36 in / (3.5³ / 6) in³ = 1,511 psi
  ['will a 4x4 no 2 southern pine post hold 300 lbf at 3 ft', { postStress: '1,511 psi' }],
]

describe('of wood, paint, wind and repair', () => {
  it.each(cases.map(([said, expected]) => [[said].flat().join(' / '), said, expected] as const))(
    '%s',
    async (_, said, expected) => {
      const answers = await talk([said].flat())
      expect(results(answers.at(-1))).toMatchObject(expected)
    },
  )

  it('readings with their dates are followed over time, whatever is asked', async () => {
    const [answer] = await talk(['readings on 1 May 2025 26 %, 11 May 2025 22 %, 21 May 2025 19%, when can i paint'])
    expect(answer?.calls.map((it) => it.calculation)).toEqual(['drying-forecast'])
    expect(answer?.readAs.filter((it) => it.figure.word === 'dryingReadings').map((it) => it.said)).toEqual([
      '26 %',
      '22 %',
      '19%',
    ])
  })

  it('“F” picks between 40 °F and 40 °C', async () => {
    const answers = await talk(['What moisture does wood settle at in 40 degrees and 55 % humidity?', 'F'])
    expect(answers[0]?.asks.map((it) => it.question).join()).toMatch(/40 °F, or 40 °C/)
    expect(answers[1]?.readAs.map((it) => it.figure.text)).toEqual(['40 °F'])
    expect(asked(answers[1])).toEqual([])
  })

  it('anything else said while that is open is read for itself', async () => {
    const open = 'What moisture does wood settle at in 40 degrees and 55 % humidity?'
    const hurt = await talk([open, 'first: I hit a gas line'])
    expect(hurt.at(-1)?.advice.map((it) => it.note)).toEqual(['hit-gas'])
    const corrected = await talk([open, 'no, 70 F'])
    expect(corrected.at(-1)?.readAs.map((it) => it.figure.text)).toEqual(['70 °F'])
  })

  it('a number of things that no sum took holds up its total', async () => {
    for (const said of ['26 boards 6 ft at $1.35 a foot', 'rails 8 ft 2x4, 20 of them at $640 per MBF']) {
      const [answer] = await talk([said])
      expect(
        answer?.figures.filter((it) => it.headline),
        said,
      ).toEqual([])
      expect(answer?.asks, said).not.toEqual([])
    }
  })

  it('bare numbers beside inches are not taken for feet', async () => {
    const [answer] = await talk(['diagonals are 55 and 56 1/4, gate 36 in wide'])
    // They are the gate’s diagonals, and in inches as its width is: no figure comes of 55 ft.
    const units = answer?.readAs.filter((it) => it.said.startsWith('5')).map((it) => it.figure.unit)
    expect(units).toEqual(['in', 'in'])
  })

  it('a kind of post that is denied is none that is asked about', async () => {
    const answers = await talk([
      'sister or replace? 4 ft above ground, rot goes 6 in up',
      'it is a line post, not a gate post',
    ])
    const places = answers
      .at(-1)
      ?.figures.filter((it) => it.headline)
      .map((it) => it.at)
    expect(new Set(places)).toEqual(new Set(['line-posts']))
  })
})
