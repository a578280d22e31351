import { describe, expect, it } from 'vitest'
import { results, talk } from './talk.ts'

const bags = 'How many bags for 12 posts, holes 10 in wide and 30 in deep, 0.6 cubic feet a bag?'

describe('what is asked of an answer', () => {
  it.each(['what have you assumed?', 'what did you take for granted', 'are you counting on any waste in that'])(
    'what a single sum took as usual is told: “%s”',
    async (said) => {
      const [, answer] = await talk([bags, said])
      expect(answer?.reply).toContain('post width 3 1/2 in')
      expect(answer?.reply).toContain('added for spills and rough holes 0 %')
      expect(answer?.reply).not.toContain('Nothing is taken as usual')
    },
  )

  it('what was told of waste is shown in the working', async () => {
    const answer = (await talk([bags, 'add 10%', 'did you allow any extra for waste'])).at(-1)
    expect(answer?.calls[0]?.inputs.find((it) => it.word === 'spare')).toMatchObject({ text: '10 %', role: 'known' })
  })

  it.each(["how'd you get that", 'how did you come up with that', 'break that down for me', "where's that from"])(
    'it is explained: “%s”',
    async (said) => {
      const [first, answer] = await talk([bags, said])
      expect(results(answer)).toEqual(results(first))
      expect(results(answer).bags).toBe('24 bags')
    },
  )

  it('is taken back late in a short message', async () => {
    const answers = await talk([bags, 'add 10%', 'no forget the extra, back to how it was'])
    // 13.81 × 1.1 = 15.19; / 0.6 = 25.3 → 26, and 24 without
    expect(answers.slice(1).map((it) => results(it).bags)).toEqual(['26 bags', '24 bags'])
  })

  it('“10% extra for waste” tells, and asks nothing of it', async () => {
    expect(results((await talk([bags, 'and 10% extra for waste']))[1]).bags).toBe('26 bags')
  })
})
