// This file is about quantities that are what their place in the message makes them: rows, diagonals, people told without a number, an option denied.
// The figures were worked by hand; the sum stands beside them.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

const cases: readonly (readonly [said: readonly string[], expected: Readonly<Record<string, string>>])[] = [
  // 30 1/4 − 12 over four times 8 ft: 18 1/4 / 384
  [
    [
      'From the string to the ground every 8 feet: 12 inch, 15 1/2, 19, 26, 30 1/4. What is the total fall and the slope?',
    ],
    { totalFall: '18 1/4 in', slope: '4.753 %' },
  ],
  // 51 + 24, 42 + 24
  [
    [
      'String is 44, 47, 51, 46 and 42 inches off the ground at the posts and they all go 24 in the ground. longest and shortest post?',
    ],
    { tallestPost: '75 in', shortestPost: '66 in' },
  ],
  // Both ways of telling a diagonal, and both orders: the tie is the longer one where the latch hangs.
  [
    [
      'Top hinge to bottom latch 1512, bottom hinge to top latch 1496. Leaf is 1100 high. How far has the latch side dropped?',
    ],
    { latchDrop: '10 258/275 mm' },
  ],
  [
    [
      'leaf is 1100 mm high, 1496 mm from bottom hinge to top latch and 1512 mm from top hinge to bottom latch, how far has the gate dropped',
    ],
    { latchDrop: '10 258/275 mm' },
  ],
  [
    [
      'Bottom hinge corner up to the top latch corner is 1496 mm, the other way 1512 mm. Leaf is 1100 mm tall. How far has it dropped?',
    ],
    { latchDrop: '10 258/275 mm' },
  ],
  // 22 × 35 min = 12 h 50 min; by two 6 h 25 min, which is two days of five hours
  [
    ['A hole takes me 35 minutes, 22 holes, 5 hours a day, and my son digs too with his own digger. How many days?'],
    { diggingDays: '2 digging days' },
  ],
  // A shape at the end of a sentence is of that sentence: round holes, (0.15² × π − 0.1²) × 0.6 × 9 = 0.3277 m³
  [['Nine posts, 100mm square. Holes 300 wide and 600 deep. Bags make 10 litres. How many bags?'], { bags: '33 bags' }],
  // (3200 − 2 × 10 − 12) / 2
  [
    [
      'Driveway gap 3.2 m for a pair of gates. 10 mm hinge side, 12 in the middle where they meet. How wide is each leaf?',
    ],
    { leafWidth: '1,584 mm' },
  ],
  // Six weeks are 42 days: 28 of May after the third, and 14.
  [['what date is six weeks after the third of May 2026'], { dateLater: 'Sunday 14 June 2026' }],
]

describe('where a quantity stands', () => {
  it.each(cases.map(([said, expected]) => [said.join(' / '), said, expected] as const))(
    '%s',
    async (_, said, expected) => {
      const answers = await talk([...said])
      expect(results(answers.at(-1))).toMatchObject(expected)
    },
  )

  it('says how many people work, and is said back', async () => {
    const [answer] = await talk([
      '16 posts, 28 rails, 206 pickets, 1 gate. me and one buddy, 7 hours a day. how many days?',
    ])
    expect(answer?.readAs.find((it) => it.said === 'me and one buddy')?.figure.value).toBe(2)
  })

  it('what is denied is no option', async () => {
    const answers = await talk([
      'wind on a 6 ft picket fence, pickets 3 1/2 in, gap 2 1/2 in, posts 8 ft, 115 mph, force on a post?',
      'it is the suburbs with trees, not open country',
    ])
    const exposure = answers
      .at(-1)
      ?.calls.flatMap((it) => it.inputs)
      .find((it) => it.word === 'exposure')
    expect(exposure?.text).toContain('exposure B')
  })

  it('a limit on a can is no reading of a meter', async () => {
    const answers = await talk([
      'dry enough to finish? it reads 14 % and water beads on it',
      'The can says 12 % or less, and it is a solid stain.',
    ])
    const inputs = answers.at(-1)?.calls.flatMap((it) => it.inputs.map(({ word, text }) => `${word} ${text}`))
    expect(inputs).toEqual(expect.arrayContaining(['moistureReading 14 %', 'moistureLimit 12 %']))
  })

  it.each([
    '12 in is the hole width, 24 in the depth. 6 posts 4x4, bags make 0.6 cu ft. how many bags?',
    '6 posts 4x4, 24 in is the depth and 12 in the hole width, bags make 0.6 cu ft. how many bags?',
  ])('a name may come after its size: %s', async (said) => {
    const [answer] = await talk([said])
    const sizes = answer?.readAs
      .filter((it) => it.figure.word.startsWith('hole'))
      .map((it) => `${it.figure.word} ${it.figure.text}`)
    expect(sizes?.sort()).toEqual(['holeDepth 24 in', 'holeDiameter 12 in'])
  })

  it('who asks counts nothing where no hours are told, and is named where they are and no sum takes it', async () => {
    const asked = await talk([
      'my wife and I have a 93 in opening, 3 1/2 in pickets, gaps at most 2 1/2 in. how many pickets?',
    ])
    expect(results(asked.at(-1)).pickets).toBe('16 pickets')
    expect(asked.at(-1)?.reply).not.toContain('I did not use')
    const hours = await talk([
      'I have 7 leaning posts to set right, the first took me 2.5 hours. 5 hours a day, me and my brother. How many days?',
    ])
    expect(hours.at(-1)?.reply).toContain('I did not use “me and my brother”')
  })
})
