// Sums of any trade, as they are asked; and trade questions that sound like them, which stay what they are.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('a plain sum', () => {
  it.each([
    ['what is 8 ft in millimetres', { lengthConverted: '2,438.4 mm' }],
    ["what's 3/4 of an inch in mm?", { lengthConverted: '19.05 mm' }],
    ['2.4m in feet', { lengthConverted: '7 ft 10.49 in' }],
    ['how many inches in 2 metres', { lengthConverted: '78.74 in' }],
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
    // 125/16 / 2
    ['half of 7 13/16 in', { lengthMultiple: '3 29/32 in' }],
    ['2/3 of 94 in', { lengthMultiple: '62 2/3 in' }],
    ['two thirds of 94 inches', { lengthMultiple: '62 2/3 in' }],
    ['what is a third of 12 ft', { lengthMultiple: '4 ft' }],
    ['subtract 3 5/16 from 10 1/8', { numberDifference: '6.8125' }],
    ['take 3 5/16 from 10 1/8', { numberDifference: '6.8125' }],
    ['subtract 3 5/16 in from 10 1/8 in', { lengthDifference: '6 13/16 in' }],
    ['7.5% of $1,860', { moneyPart: '$139.50' }],
    ['15% of 92 ft', { lengthPart: '13 ft 9 3/5 in' }],
    ['7.5% of 1860', { numberPart: '139.5' }],
    // 5 + 7/16 = 87/16; 3 × 12 + 87/16 = 663/16; × 4
    ['what is 3 foot 5 and 7 sixteenths times 4', { lengthMultiple: '13 ft 9 3/4 in' }],
    ['could you do 96 ft / 12 bays please', { lengthShare: '8 ft' }],
    // (50 − 32) × 5/9
    ['50 F is how much celsius', { temperatureConverted: '10 °C' }],
    ['my sister pays half of 1 236.60 euro, what is that', { moneyMultiple: '€618.30' }],
    ['we split $1,236.60 three ways', { moneyShare: '$412.20' }],
    // 226.796 185
    ['1/2 lb in grams', { massConverted: '226.8 g' }],
    ['how many square feet are 4 square yards', { areaConverted: '36 ft²' }],
    // 12 × 0.836 127 36
    ['12 sq yd in m2', { areaConverted: '10.03 m²' }],
    ['28 mm in inches', { lengthConverted: '1.102 in' }],
  ])('%s', async (said, expected) => {
    const [answer] = await talk([said])
    expect(results(answer)).toMatchObject(expected)
  })

  it('goes on in another unit', async () => {
    const answers = await talk(['what is 8 ft in millimetres', 'and in metres?'])
    expect(results(answers[1])).toMatchObject({ lengthConverted: '2.4384 m' })
  })

  it.each(['12, 18 and 24 in in mm', '12 in, 18 in and 24 in in mm'])('takes several at once: %s', async (said) => {
    const [answer] = await talk([said])
    const shown = answer?.calls.flatMap((call) => call.results.map((it) => it.text))
    expect(shown).toEqual(['304.8 mm', '457.2 mm', '609.6 mm'])
  })

  it('writes out no figure that nobody can read', async () => {
    const [answer] = await talk(['32 m2 in square feet'])
    // 344.445 133 334 711 113
    expect(results(answer)).toEqual({ areaConverted: '344.4 ft²' })
    expect(answer?.reply).not.toMatch(/344\.\d{9}/)
  })

  it.each([
    [['120 ft and 38 ft 6 in', 'add those two'], { lengthSum: '158 ft 6 in' }],
    [['1200 mm and 800 mm', 'sum of those'], { lengthSum: '2,000 mm' }],
    // 26 1/2 ft / 3
    [['22 ft 6 in plus 4 ft', 'divide that by 3'], { lengthShare: '8 ft 10 in' }],
    [['22 ft 6 in plus 4 ft', 'times 3'], { lengthMultiple: '79 ft 6 in' }],
    [['22 ft 6 in plus 4 ft', 'minus 18 in'], { lengthDifference: '25 ft' }],
    [['what is 96 in less 3 1/2 in', 'half of that?'], { lengthMultiple: '46 1/4 in' }],
  ])('goes on with what was worked or noted: %j', async (said, expected) => {
    expect(results((await talk(said)).at(-1))).toMatchObject(expected)
  })

  it('says the last answer of the trade in another unit', async () => {
    const answers = await talk([
      'What is the gap for 14 pickets of 3 1/2 in in an 84 in opening?',
      'what is that in mm?',
    ])
    // 84 − 49 = 35; / 15 = 2 1/3 in; × 25.4 = 59.2667
    expect(results(answers[1])).toMatchObject({ lengthConverted: '59 4/15 mm' })
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
