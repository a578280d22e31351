// A fence told side by side, in sentences of our own; posts and bays are counted by hand beside each.
import { describe, expect, it } from 'vitest'
import { createAssistant } from '../../../../src/assistant.ts'
import type { Turn } from '../../../../src/answer.ts'
import { offlineReader } from '../../../../src/readers/offline/offline.ts'

const posts = async (talk: string): Promise<string | undefined> => {
  const assistant = createAssistant(offlineReader)
  const before: Turn[] = []
  for (const said of talk.split(' || ')) {
    const { answer, job } = await assistant.turn({ said, before })
    before.push({ n: before.length, said, answer, job })
  }
  return before.at(-1)?.answer.figures.find((it) => it.word === 'posts' && it.headline)?.text
}

describe('a walk along the fence', () => {
  it.each([
    // 16 ft → 2 bays, 24 → 3, 40 → 5: 10 bays and one gate, 11 spaces, 12 posts
    [
      'From the shed 16 ft, then a gate 42 inches clear, then 24 ft to the corner, then turn left and 40 ft along the hedge. 4x4 posts, 8 ft max between. How many posts?',
      '12 posts',
    ],
    // 5 m → 3 bays, 9 → 5, 5 → 3: 11 bays, 12 posts
    [
      'Starting at the barn, 5 m to the corner, then 9 m along the orchard to the next corner, then 5 m back to the barn. Bays 2 m at most. How many posts do I need?',
      '12 posts',
    ],
    // 32 → 4, 48 → 6, 32 → 4: 14 bays, 15 posts
    [
      'The back is 48 ft, the left is 32 ft and the right the same. 8 ft max between posts. How many posts?',
      '15 posts',
    ],
    // 60 − 51.5 in → 7 bays (668.5 / 96 = 6.96), 60 → 8, 40 → 5 twice: 25 bays and a gate in a ring, 26 posts
    [
      'The garden is a rectangle of 60 by 40 feet, fenced all round. One 4 ft gate on a long side by the corner. 4x4 posts, 8 ft max. How many posts?',
      '26 posts',
    ],
    // 12 ft → 2 bays each side of the gate, in one line: 5 spaces, 6 posts
    ['Two 12 ft runs and a gate of 42 in between them. Bays no more than 6 ft. How many posts in all?', '6 posts'],
    // 24 → 3, 40 → 5, 24 → 3: 11 bays, 12 posts
    ['The left is 24 ft, the back 40 ft, the right 24 ft. 8 ft max. How many posts in total?', '12 posts'],
  ])('%s: %s', async (said, expected) => {
    expect(await posts(said)).toBe(expected)
  })

  it.each([
    'Five sides to fence. From the barn 12 m to the corner, then 9 m to the next corner, then 7 m back to the barn. 2 m max. How many posts?',
    'Four sides, the back is 48 ft, the left 32 ft. 8 ft max. How many posts?',
  ])('gives no figure where the sides are not as many as it says: %s', async (said) => {
    expect(await posts(said)).toBeUndefined()
  })
})
