// What a quantity is of two words it may be is asked, and the answer to that is understood. All cases are our own.
import { describe, expect, test } from 'vitest'
import type { Answer, Turn } from '../../src/answer.ts'
import { createAssistant } from '../../src/assistant.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'

/** The last answer of a talk. */
async function answers(...talk: string[]): Promise<Answer[]> {
  const assistant = createAssistant(offlineReader)
  const before: Turn[] = []
  for (const said of talk) {
    const { answer, job } = await assistant.turn({ said, before })
    before.push({ n: before.length, said, answer, job })
  }
  return before.map((it) => it.answer)
}

const given = (answer: Answer | undefined, word: string): string | undefined =>
  answer?.calls.flatMap((it) => it.inputs).find((it) => it.word === word)?.text

const hauled = ['16 footers in an 8 foot bed. How much hangs out?', '12 footers?']
const asked = 'You said “12 footers”. Is that the longest piece that is hauled, or the length that carries the load?'

describe('a quantity that may be either of two words', () => {
  test('is asked about once, and no figure is given until it is known', async () => {
    const [, answer] = await answers(...hauled)
    expect(answer?.asks.map((it) => it.question)).toEqual([asked])
    expect(answer?.figures.filter((it) => it.role === 'result')).toEqual([])
    expect(answer?.reply).not.toContain('I did not use')
  })

  test.each([
    ['the first', 'longestPiece', 'overhang', '4 ft'],
    ['The longest piece.', 'longestPiece', 'overhang', '4 ft'],
    ['the piece we haul, 12 footers', 'longestPiece', 'overhang', '4 ft'],
    ['second one', 'bedLength', 'overhang', '4 ft'],
    ['no its what carries the load', 'bedLength', 'overhang', '4 ft'],
  ])('“%s” says which', async (said, word, result, text) => {
    const answer = (await answers(...hauled, said)).at(-1)
    expect(given(answer, word)).toBe('12 ft')
    expect(given(answer, word === 'bedLength' ? 'longestPiece' : 'bedLength')).toBe(
      word === 'bedLength' ? '16 ft' : '8 ft',
    )
    expect(answer?.figures.find((it) => it.word === result && it.role === 'result')?.text).toBe(text)
  })

  test.each(['the 20 ft one', 'hm, what do you think', 'not the bed', 'which piece is hauled?'])(
    '“%s” says neither, and nothing is taken for it',
    async (said) => {
      const answer = (await answers(...hauled, said)).at(-1)
      expect([given(answer, 'longestPiece'), given(answer, 'bedLength')]).not.toContain('12 ft')
    },
  )
})
