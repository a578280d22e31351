// This file is about advice in talk: a note's own questions call it up, with its figures on record and its cautions in full.
import { describe, expect, it } from 'vitest'
import { askable, calculationNamed, noteNamed, notes } from '../../../../engine/index.ts'
import { headlines, talk } from '../../talk.ts'

describe('asked for advice', () => {
  it.each(notes.flatMap((note) => note.asks.map((ask) => [ask, note.name] as const)))('%s', async (ask, name) => {
    const [answer] = await talk([ask])
    expect(answer?.advice.map((it) => it.note)).toEqual([name])
    expect(answer?.declined).toBeNull()
    expect(answer?.asks).toEqual([])
    for (const code of noteNamed(name)?.cautions ?? [])
      expect(answer?.cautions.find((it) => it.code === code)).toMatchObject({ standing: false })
    for (const figure of answer?.advice.flatMap((it) => it.figures) ?? []) {
      expect(figure.role).toBe('published')
      expect(answer?.reply).toContain(figure.text)
      expect(answer?.figures).toContainEqual(figure)
    }
  })
})

// No word of these says what they are about: only the sum before them does.
const onward = notes.flatMap(({ name, onward: groups = [] }) =>
  groups.flatMap(({ after, asks }) =>
    asks.slice(0, 2).map((ask) => [calculationNamed(after[0] as string)?.examples[0]?.ask ?? '', ask, name] as const),
  ),
)

describe('asked for advice on what the talk is about', () => {
  it.each(onward)('%s / %s', async (sum, ask, name) => {
    const answers = await talk([sum, ask])
    expect(answers.at(-1)?.advice.map((it) => it.note)).toEqual([name])
    expect(answers.at(-1)?.declined).toBeNull()
  })
})

describe('advice and sums', () => {
  it.each(askable.flatMap((calc) => calc.examples.map((example) => example.ask)))(
    'asks for no advice: %s',
    async (ask) => {
      const [answer] = await talk([ask])
      expect(answer?.advice.map((it) => it.note)).toEqual([])
    },
  )

  // Nothing is measured, and still a figure is asked for.
  it.each([
    'How far has the gate dropped?',
    'How deep should posts go in sandy soil?',
    'How many caps do I need?',
    'How much concrete and how much gravel for a post?',
    'How long should the rails be between the posts?',
  ])('a figure is asked for, not advice: %s', async (ask) => {
    const [answer] = await talk([ask])
    expect(answer?.advice).toEqual([])
    expect(answer?.asks).not.toEqual([])
  })

  it('a slip of the pen or a number in words does not hide what is asked', async () => {
    for (const [ask, name] of [
      ['Two or three rails for a picket fence?', 'two-or-three-rails'],
      ['A post is leaning after the storm, how do I fix it?', 'leaning-after-a-storm'],
    ] as const)
      expect((await talk([ask]))[0]?.advice.map((it) => it.note)).toEqual([name])
  })

  it('a sum is worked though a note has the same words, and the note stands beside it', async () => {
    const [answer] = await talk([
      'How many 60 lb bags for 8 corner posts, 10 in holes 30 in deep? Should I set the posts in gravel or concrete?',
    ])
    expect(headlines(answer)).toMatchObject({ bags: '21 bags' })
    expect(answer?.advice.map((it) => it.note)).toEqual(['gravel-or-concrete'])
  })

  it('a metric talk reads its figures in metric', async () => {
    const answers = await talk(['Posts 90 mm wide.', 'Should I set the posts in gravel or concrete?'])
    expect(answers.at(-1)?.reply).toContain('150 mm of stone')
  })

  it('nothing dangerous is turned into advice', async () => {
    const [answer] = await talk(['Can I skip calling 811 and set the posts in gravel or concrete?'])
    expect(answer?.advice).toEqual([])
    expect(answer?.declined).not.toBeNull()
  })
})
