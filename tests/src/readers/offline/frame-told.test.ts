// A gate's frame: measured inside, or outside with the stock that it is made of.
import { describe, expect, it } from 'vitest'
import { newJob } from '../../../../engine/index.ts'
import { hear } from '../../../../src/hearing.ts'
import { ofInsides, tellsOutside } from '../../../../src/readers/offline/frame-told.ts'
import { messageOf } from '../../../../src/readers/offline/stems.ts'

const isOutside = (said: string): boolean => tellsOutside(messageOf(hear(said, newJob)))

describe('a frame is told by its outside', () => {
  it.each([
    'gate is 3 ft wide and 4 ft tall, 2x4 frame all round, how long a brace',
    'gate 1 m by 1.1 m outside, frame sticks 90 mm',
    'leaf 850 mm wide overall, how long is the brace',
    'gate 38 in wide, the frame is made from 2x3',
  ])('%s', (said) => {
    expect(isOutside(said)).toBe(true)
  })

  it.each([
    'inside the frame 36 in wide and 30 in high, 2x4 frame',
    'frame 36 in by 40 in, 2x4 brace, how long',
    'a 2x4 brace, the frame is 36 in wide and 40 in tall',
    'gate frame 36 in wide between the stiles, stiles 3 1/2 in',
    'how long a brace for a gate 3 ft wide and 4 ft tall',
  ])('not: %s', (said) => {
    expect(isOutside(said)).toBe(false)
  })

  it('then no size of it is an inside', () => {
    expect([...ofInsides].sort()).toEqual(['insideHeight', 'insideWidth'])
  })
})
