import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { numberIn, type Quantity } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

const worked = (given: Record<string, string | readonly string[]>, places?: readonly string[]) => {
  const { outcome } = runNamed('digging-hours', given, places ? { places } : {})
  if (!outcome.ok) throw new Error(outcome.problems.map((it) => it.message).join(' '))
  return (name: string): number => numberIn(outcome.values.get(name) as Quantity, 'h')
}

describe('hours of digging', () => {
  // 10 holes for three: 4 + 3 + 3, so 4 × 30 min = 2 h, not 10/3 × 30 min
  it('nobody digs a third of a hole: ten holes for three take as long as four', () => {
    expect(worked({ posts: '10', holeTime: '30 minutes', diggers: '3' })('diggingClock')).toBe(2)
  })

  it('two helpers are three people', () => {
    const given = { posts: '10', holeTime: '30 minutes' }
    expect(worked({ ...given, helpers: '2' })('diggingClock')).toBe(worked({ ...given, diggers: '3' })('diggingClock'))
  })

  // 4 corner holes at an hour and 7 line holes at half an hour: 4 + 3.5 = 7.5 h
  it('kinds of post with their own pace are added up', () => {
    const given = { posts: ['4', '7'], holeTime: ['1 h', '30 minutes'] }
    expect(worked(given, ['corner-posts', 'line-posts'])('diggingTime')).toBe(7.5)
  })

  // 4 + 7 = 11 holes for three: 4 each, 2 h; kind by kind it would be 2 + 3 = 5 each
  it('kinds of post at one pace are shared out together', () => {
    const given = { posts: ['4', '7'], holeTime: '30 minutes', diggers: '3' }
    expect(worked(given, ['corner-posts', 'line-posts'])('diggingClock')).toBe(2)
  })

  // 4 and 7 holes for three, at an hour and at half an hour: ⌈4/3⌉ × 1 + ⌈7/3⌉ × 0.5 = 3.5 h
  it('at paces of their own, one kind after the other', () => {
    const given = { posts: ['4', '7'], holeTime: ['1 h', '30 minutes'], diggers: '3' }
    expect(worked(given, ['corner-posts', 'line-posts'])('diggingClock')).toBe(3.5)
  })

  it('more hands never take longer, and never less than their even share', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 9 }), (posts, people) => {
        const clock = (diggers: number): number =>
          worked({ posts: `${posts}`, holeTime: '25 minutes', diggers: `${diggers}` })('diggingClock')
        expect(clock(people + 1)).toBeLessThanOrEqual(clock(people))
        expect(clock(people)).toBeGreaterThanOrEqual((posts * 25) / 60 / people - 1e-9)
      }),
      { numRuns: 100, seed: 5 },
    )
  })

  it('has no usual pace: it asks', () => {
    expect(runNamed('digging-hours', { posts: '10' }).said).toContain('missing holeTime')
  })
})
