// Sums of any trade, as they are asked; and trade questions that sound like them, which stay what they are.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('a plain sum', () => {
  it.each([
    ['what is 8 ft in millimetres', { lengthConverted: '2,438.4 mm' }],
    ["what's 3/4 of an inch in mm?", { lengthConverted: '19.05 mm' }],
    ['2.4m in feet', { lengthConverted: '7 ft 10 62/127 in' }],
    ['how many inches in 2 metres', { lengthConverted: '78 94/127 in' }],
    ['convert 70 F to Celsius', { temperatureConverted: '21.11 °C' }],
    ['how many litres are 5 gallons?', { volumeConverted: '18.93 L' }],
    ['add 7 ft 3 1/2 in and 4 ft 9 in', { lengthSum: '12 ft 0 1/2 in' }],
    ['7 ft 3 1/2 in plus 4 ft 9 in', { lengthSum: '12 ft 0 1/2 in' }],
    ['7 ft 3 1/2 in + 4 ft 9 in', { lengthSum: '12 ft 0 1/2 in' }],
    ['93 in less 3 1/2 in', { lengthDifference: '89 1/2 in' }],
    ['take 3 1/2 in from 93 in', { lengthDifference: '89 1/2 in' }],
    ['14 times 8 ft', { lengthMultiple: '112 ft' }],
    ['14 × 8 ft', { lengthMultiple: '112 ft' }],
    ['90 in divided by 12', { lengthShare: '7 1/2 in' }],
    ['90 in / 12', { lengthShare: '7 1/2 in' }],
    ['average of 9.5 ft, 10 ft and 11 ft', { lengthMean: '10 ft 2 in' }],
    ['93 3/4 minus 3 1/2', { numberDifference: '90.25' }],
    ['what is $12.50 plus $3.99', { moneySum: '$16.49' }],
  ])('%s', async (said, expected) => {
    const [answer] = await talk([said])
    expect(results(answer)).toMatchObject(expected)
  })

  it('goes on in another unit', async () => {
    const answers = await talk(['what is 8 ft in millimetres', 'and in metres?'])
    expect(results(answers[1])).toMatchObject({ lengthConverted: '2.4384 m' })
  })

  it('says the last answer of the trade in another unit', async () => {
    const answers = await talk([
      'What is the gap for 14 pickets of 3 1/2 in in an 84 in opening?',
      'what is that in mm?',
    ])
    // 84 − 49 = 35; / 15 = 2 1/3, by the tape 2 5/16 in; × 25.4
    expect(results(answers[1])).toMatchObject({ lengthConverted: '58.7375 mm' })
  })

  it('prices what was just counted', async () => {
    const answers = await talk([
      'How many bags for 10 posts, 12 in holes, 36 in deep, 6 in gravel, 80 lb bags?',
      'what do they cost at $5.98 each?',
    ])
    // 30 bags
    expect(results(answers[1])).toMatchObject({ billTotal: '$179.40' })
  })

  it('of two kinds is refused, with what to check', async () => {
    const [answer] = await talk(['add 5 ft and 3 lb'])
    expect(answer?.reply).toContain('Only lengths go with lengths')
    expect(results(answer)).toEqual({})
  })
})

describe('what only sounds like one', () => {
  it.each([
    // A change to the job, not a sum.
    [['run of 96 ft, bays at most 8 ft. how many posts?', 'add a gate 4 ft wide'], 'bays-in-run'],
    [
      [
        'How many bags for 10 posts, 12 in holes, 36 in deep, 6 in gravel, 80 lb bags?',
        'make the holes 2 in less, 10 in',
      ],
      'concrete-for-posts',
    ],
    [['opening 93 in, pickets 3 1/2, max gap 2 1/2. how many?', 'and 88 in less the hinge?'], 'picket-spacing'],
    // A limit, not a difference.
    [['How many 3 1/2 in pickets fill 93 in with gaps of 2 1/2 in or less?'], 'picket-spacing'],
    // A plat read on a tape, not a plain conversion.
    [['The plat says 47.35 ft. What is that in feet and inches?'], 'tenths'],
    [
      ['I measured the opening three times: 93 in, 93 1/8 in, 93 in. Pickets 3 1/2 in, gap max 2 1/2 in. How many?'],
      'picket-spacing',
    ],
  ] as const)('%j is %s', async (said, calculation) => {
    const answers = await talk(said)
    expect(answers.at(-1)?.calls.map((it) => it.calculation)).toContain(calculation)
  })

  it('an answer to our own question stays one', async () => {
    const answers = await talk([
      'how many pickets in the opening with 3 1/2 in pickets and gaps of at most 2 1/2 in',
      '7 ft plus 9 in',
    ])
    expect(answers[1]?.calls.map((it) => it.calculation)).not.toContain('lengths-together')
  })
})
