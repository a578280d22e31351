import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

// International Swimming Pool and Spa Code 2018, 305.2.5: where the rails' tops are less than 45 in apart, the rails are on the
// pool side, and the gaps between pickets at most 1 3/4 in.
describe('a fence around a pool', () => {
  const fence = { country: 'us', barrierHeight: '48 in' }

  it('rails 24 in apart on the outside fail, whether or not a gap is given', () => {
    const close = { ...fence, railsApart: '24 in', railSide: 'outside' }
    for (const given of [close, { ...close, barrierGap: '1 1/2 in' }]) {
      const { shown, said } = runNamed('pool-barrier', given)
      expect(shown.poolHolds).toBe('false')
      expect(said).toContain('side of the rails, outside where it must be on the pool side')
    }
    expect(runNamed('pool-barrier', { country: 'us', railsApart: '24 in', railSide: 'outside' }).shown.poolHolds).toBe(
      'false',
    )
  })

  it('rails 24 in apart ask on which side they are; rails 45 in apart may be on either', () => {
    expect(runNamed('pool-barrier', { ...fence, railsApart: '24 in' }).said).toContain('must be on the pool side')
    const apart = runNamed('pool-barrier', { ...fence, railsApart: '45 in', railSide: 'outside' })
    expect(apart.shown.poolHolds).toBe('true')
  })

  it('rails on the outside ask how far apart they are', () => {
    const { outcome } = runNamed('pool-barrier', { ...fence, railSide: 'outside' })
    expect(outcome.ok && outcome.doubts.map((it) => it.word)).toEqual(['railsApart'])
  })

  it('gaps of 2 in between close rails fail, though a 4 in ball does not pass', () => {
    const close = { ...fence, barrierGap: '2 in', railsApart: '30 in', railSide: 'pool' }
    expect(runNamed('pool-barrier', close).shown.poolHolds).toBe('false')
    expect(runNamed('pool-barrier', { ...close, barrierGap: '1 3/4 in' }).shown.poolHolds).toBe('true')
  })
})
