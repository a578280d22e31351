import { describe, expect, it } from 'vitest'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import type { Reader } from '../../src/readers/reader.ts'
import { results, talk } from './talk.ts'

/** The offline reader, never sure of its first message. */
const doubting: Reader = {
  front: 'offline',
  read: async (heard, allowance, signal) => {
    const heed = await offlineReader.read(heard, allowance, signal)
    if (heed === 'halted' || heard.job.moves.length > 0) return heed
    return { ...heed, request: { ...heed.request, unsure: true } }
  },
}

describe('a sum that the reader is not sure of', () => {
  const asked = 'For 14 posts with holes 10 in wide and 30 in deep, how much soil comes out?'

  it('is said back before any figure, with what each number was taken for', async () => {
    const [answer] = await talk([asked], doubting)
    expect(results(answer)).toEqual({})
    expect(answer?.asks).toHaveLength(1)
    expect(answer?.asks[0]?.question).toMatch(
      /^Is this what you mean\? You want the soil .*posts 14 posts; hole width 10 in; hole depth 30 in\. Say yes, or say what is different\.$/,
    )
  })

  it('is read back still where the next message neither says yes nor says all of it anew', async () => {
    const [, answer] = await talk([asked, 'the soil swells 30 percent'], doubting)
    expect(results(answer)).toEqual({})
    expect(answer?.asks[0]?.question).toMatch(
      /^Is this what you mean\? .*posts 14 posts; hole width 10 in; hole depth 30 in; .*30 %/,
    )
  })

  it('is worked at “yes”', async () => {
    const [, answer] = await talk([asked, 'yes'], doubting)
    // 14 × π/4 × 10² × 30 in³ = 32,987 in³ = 19.09 ft³ in the ground
    expect(results(answer)).toMatchObject({ spoilInGround: '19.09 ft³' })
  })

  it('takes what is put right instead', async () => {
    const [, answer] = await talk([asked, 'no, the holes are 12 in wide'], doubting)
    // 14 × π/4 × 12² × 30 in³ = 47,501 in³ = 27.49 ft³
    expect(results(answer)).toMatchObject({ spoilInGround: '27.49 ft³' })
  })
})

describe('a number that was asked about', () => {
  it('is asked about again after a “yes” that says nothing of it', async () => {
    const [held, still] = await talk([
      '21 holes at 30 minutes each, 4 hours a day, 12 minutes for the bar, how many days?',
      'yes',
    ])
    expect(results(held)).toEqual({})
    expect(results(still)).toEqual({})
    expect(still?.asks.map((it) => it.question).join(' ')).toContain('12 minutes')
  })
})
