// Kinds of post told apart, from the message to the reply: nothing said of one kind is left out without a word.
import { describe, expect, it } from 'vitest'
import type { Turn } from '../../src/answer.ts'
import { createAssistant } from '../../src/assistant.ts'
import type { Reader } from '../../src/readers/reader.ts'
import type { Request } from '../../src/request.ts'
import { jobSheet } from '../../src/sheet.ts'
import { asked, headlines, talk } from './talk.ts'

/** A reader that binds the quantities of a message, in their order, to these words at these places, and wants the bags. */
const binding = (words: readonly (readonly [word: string, at: string])[]): Reader => ({
  front: 'offline',
  read: ({ readings }) =>
    Promise.resolve({
      by: 'offline',
      request: {
        told: words.map(([word, at], i) => ({
          word,
          at,
          from: { tag: readings[i]?.tag ?? null, quote: null, option: null, usual: null },
        })),
        wants: [{ word: 'bags', at: 'yard' }],
        calculation: null,
        confirms: [],
        declines: [],
      } satisfies Request,
    }),
})

describe('a size told of one kind of post', () => {
  const said =
    '4 corner posts 5 1/2 in wide, 3 gate posts, holes 12 in wide and 30 in deep, bags of 0.6 ft3: how many bags?'
  const reader = binding([
    ['posts', 'corner-posts'],
    ['postWidth', 'corner-posts'],
    ['posts', 'gate-posts'],
    ['holeDiameter', 'yard'],
    ['holeDepth', 'yard'],
    ['bagYield', 'yard'],
  ])

  // 4 × (113.097 − 30.25) × 30 + 3 × (113.097 − 12.25) × 30 = 19,018 in³ = 11.006 ft³; / 0.6 = 18.3 → 19; all 3 1/2 in: 21
  it('is worked for that kind, and the usual size is said to be taken for the other', async () => {
    const [answer] = await talk([said], reader)
    expect(headlines(answer)).toMatchObject({ bags: '19 bags' })
    expect(answer?.reply).toContain('- Post width (gate posts): 3 1/2 in, since a nominal 4x4')
    expect(answer?.figures.filter((it) => it.word === 'postWidth').map((it) => [it.at, it.text, it.role])).toEqual(
      expect.arrayContaining([
        ['corner-posts', '5 1/2 in', 'said'],
        ['gate-posts', '3 1/2 in', 'assumed'],
      ]),
    )
  })

  it('stands on the job sheet as said, and the other as usual', async () => {
    const { answer, job } = await createAssistant(reader).turn({ said, before: [] })
    const sheet = jobSheet([{ n: 0, said, answer, job } as Turn]).filter((it) => it.word === 'postWidth')
    expect(sheet.map((it) => [it.at, it.text, it.from])).toEqual([
      ['corner-posts', '5 1/2 in', 'said'],
      ['gate-posts', '3 1/2 in', 'usual'],
    ])
  })
})

describe('posts in all, with holes of their own for some of them', () => {
  const first =
    '20 posts, holes 10 in wide and 30 in deep, 4 corner posts, corner holes 12 in wide: how many 80 lb bags?'

  it('are asked about, and either answer is understood', async () => {
    const [unsure, among] = await talk([first, '16 line posts'])
    expect(asked(unsure)).toEqual(['posts'])
    expect(headlines(unsure)).toEqual({})
    // 4 × 1.7508 + 16 × 1.1508 = 25.42 ft³; / 0.6 = 42.4 → 43
    expect(headlines(among)).toMatchObject({ bags: '43 bags' })
    // 4 × 1.7508 + 20 × 1.1508 = 30.02 ft³; / 0.6 = 50.03 → 51
    const [, onTop] = await talk([first, '24 posts in all, 20 line posts'])
    expect(headlines(onTop)).toMatchObject({ bags: '51 bags' })
  })

  // 20 × 1.1508 = 23.02 ft³; / 0.6 = 38.4 → 39
  it('without, are all counted, though only some are named by their kind', async () => {
    const [answer] = await talk(['20 posts, 4 corner posts, holes 10 in wide and 30 in deep: how many 80 lb bags?'])
    expect(headlines(answer)).toMatchObject({ bags: '39 bags' })
    expect(answer?.reply).toContain('I took the 4 corner posts to be among the 20 posts.')
  })
})

describe('holes of each kind, told in one sentence', () => {
  // 4 × (113.097 − 12.25) × 30 + 10 × (78.540 − 12.25) × 24 = 28,011 in³ = 16.210 ft³; / 0.45 = 36.02 → 37
  it.each([
    '4 corner posts in 12 in holes 30 in deep, and 10 line posts in 10 in holes 24 in deep: how many 60 lb bags?',
    'How many 60 lb bags? 10 line posts, holes 10 in wide and 24 in deep. 4 corner posts, holes 12 in wide and 30 in deep.',
  ])('stay with their kind: %s', async (said) => {
    const [answer] = await talk([said])
    expect(headlines(answer)).toMatchObject({ bags: '37 bags' })
  })

  // 10 × 0.9207 = 9.207 ft³; / 0.45 = 20.5 → 21
  it('told later, are the new kind’s own, and the question is asked of it', async () => {
    const [first, second] = await talk([
      '4 corner posts in 12 in square holes 30 in deep: how many 60 lb bags?',
      'And 10 line posts in 10 in round holes 24 in deep?',
    ])
    expect(headlines(first)).toMatchObject({ bags: '21 bags' })
    expect(headlines(second)).toMatchObject({ bags: '21 bags' })
    expect(second?.figures.find((it) => it.word === 'bags')?.at).toBe('line-posts')
    expect(second?.changed).toEqual([])
  })

  it('of two shapes are not worked in one: it says so', async () => {
    const [answer] = await talk([
      '4 corner posts in 12 in square holes 30 in deep and 10 line posts in 10 in round holes 24 in deep: how many 60 lb bags?',
    ])
    expect(headlines(answer)).toEqual({})
    expect(answer?.reply).toContain('I can work only one at a time')
  })

  it('said after all kinds are of them all', async () => {
    const [answer] = await talk([
      '4 corner posts and 10 line posts, holes 10 in wide and 24 in deep: how many 60 lb bags?',
    ])
    // 14 × 0.9207 = 12.89 ft³; / 0.45 = 28.6 → 29
    expect(headlines(answer)).toMatchObject({ bags: '29 bags' })
  })
})
