// Every figure of a reply is among the answer's figures: what other programs read is what the person is shown.
import { describe, expect, it } from 'vitest'
import { numberIn } from '../../engine/quantities/quantity.ts'
import { readQuantities } from '../../engine/quantities/read.ts'
import type { Answer } from '../../src/answer.ts'
import { talk } from './talk.ts'

/** The answer and its working, without what was typed, the reasons of usual values, sources, tables and cautions. */
const ownWords = (answer: Answer): string =>
  answer.reply
    .split('### ')
    .filter(
      (it) =>
        !/^(How I read it|Taken as usual|Where it comes from|Take care|Running marks|Post centres|I need to know)/.test(
          it,
        ),
    )
    .join('\n')
    .split('\n')
    // Of the working the results stand in bold; the lines before them put inputs in.
    .filter((line) => !/^ {2}(`|= (?!\*\*))/.test(line))
    .join('\n')
    .replace(/[*~`]/g, '')

describe.each([
  [
    [
      'How many 60 lb bags for eleven corner and gate posts, 10 in holes 30 in deep, 6 in of gravel?',
      'and if the holes are 12 in?',
    ],
  ],
  [
    [
      'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps at most 2 1/2 in?',
      'and 5 1/2 in boards with gaps of at most 1/4 in?',
    ],
  ],
  [['Between two walls 60 ft apart, one 42 in gate, bays of at most 8 ft: how many posts?']],
  [['We have 8.4 m between the post centres and the bays can be 1.2 m at most. How many bays?']],
  [['How deep do I set posts for a 4 ft fence with 6 in of gravel?', 'our frost depth is 36 in']],
  [['Is a 36 in hole with a foot of stone deep enough for a 6 ft fence?']],
  [['How much gravel for 18 holes 12 in wide with 6 in of stone in the bottom? How many buckets?']],
  [
    [
      '14 % at the surface and 20 % at depth, water still beads. Is it dry enough to finish?',
      'Eight months later it reads 11 % and water soaks in.',
    ],
  ],
])('%s', (messages) => {
  it('shows no figure that is not recorded', async () => {
    for (const answer of await talk(messages)) {
      const recorded = answer.figures
      for (const reading of readQuantities(ownWords(answer))) {
        const { quantity, bare, said } = reading
        // "one hole", "a third", "tape held at zero" are words of the trade.
        if (!/\d/.test(said)) continue
        const known = recorded.some((it) =>
          quantity
            ? it.text === said ||
              (it.unit === quantity.unit &&
                typeof it.value === 'number' &&
                Math.abs(numberIn(quantity, it.unit) - it.value) <= Math.abs(it.value) * 5e-4)
            : typeof it.value === 'number' && bare !== null && it.text.startsWith(said.replace(/^0+(?=\d)/, '')),
        )
        expect(known, `“${said}” in: ${answer.reply.slice(0, 200)}`).toBe(true)
      }
    }
  })
})

describe('the units of an answer', () => {
  it('are those of the lengths that were said, whatever the degrees beside them may be', async () => {
    // 45 mm from the middle to the edge; 45 / tan(35°) = 64.27 mm down.
    const [answer] = await talk([
      'Pointed pickets 90 mm wide and 1.2 m long with a point of 70 degrees: how far down does the cut start?',
    ])
    const point = answer?.figures.find((it) => it.word === 'pointRise')
    expect(point?.unit).toBe('mm')
    expect(point?.value).toBeCloseTo(45 / Math.tan((35 * Math.PI) / 180), 6)
  })
})
