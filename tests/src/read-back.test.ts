import { describe, expect, it } from 'vitest'
import { results, talk } from './talk.ts'

describe('a fence that is told in pieces', () => {
  const pieces = [
    'left side is 32 ft, back 48, right side 32 again, all measured post center to post center',
    'posts are 4x4, no section over 8 ft, gate of 42 in the right side right by the house. How many posts in total',
  ]

  it('is read back before its first figure, and worked at “yes”', async () => {
    const [, asked, answered] = await talk([...pieces, 'yes'])
    expect(results(asked)).toEqual({})
    expect(asked?.asks).toMatchObject([{ word: 'runLength' }])
    expect(asked?.asks[0]?.question).toContain('right run 32 ft, with a gate of 42 in; back run 48 ft; left run 32 ft')
    // A gate takes 42 + 3 1/2 in from middle to middle: 384 − 45.5 = 338.5 in, four bays of at most 96; 6 and 4 on the others.
    // 6 posts on the right, 7 at the back, 5 on the left, and two corners are shared.
    expect(results(answered)).toMatchObject({ posts: '16 posts', bays: '14 bays' })
  })

  it('is read back once: what is put right later is worked at once', async () => {
    const later = (await talk([...pieces, 'yes', 'the back is 40 ft'])).at(-1)
    // 480 / 96 = 5 bays at the back
    expect(results(later)).toMatchObject({ bays: '13 bays' })
  })

  it('is asked of one side in total where that is named', async () => {
    const sides = 'left side is 32 ft, back 48, right side 32'
    const answer = (await talk([sides, 'posts no more than 8 ft apart. How many posts in total on the back?'])).at(-1)
    // 48 / 8 = 6 bays
    expect(results(answer)).toMatchObject({ posts: '7 posts', bays: '6 bays' })
  })

  it('has a side “right at 32 ft”, and none “right by the house”', async () => {
    const [answer] = await talk([
      'left at 32 ft, back at 48 ft, right at 32 ft, posts at most 8 ft apart, how many bays',
    ])
    expect(results(answer)).toMatchObject({ bays: '14 bays' })
  })

  it('is not read back where one message tells all of it', async () => {
    const [answer] = await talk([
      'The left side is 32 ft, the back is 48 ft and the right side is 32 ft, posts no more than 8 ft apart. How many bays?',
    ])
    expect(results(answer)).toMatchObject({ bays: '14 bays' })
  })
})
