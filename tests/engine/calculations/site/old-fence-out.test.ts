import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('taking out an old fence', () => {
  // π/4 × 8² × 18 = 904.8 in³ = 0.5236 ft³; × 150 = 78.5 lb: more than 51, less than 102
  it('says whether the post’s room is taken out, and who should lift', () => {
    const solid = runNamed('old-fence-out', { footingWidth: '8 in', footingDepth: '18 in' })
    expect(solid.shown.footingWeight).toBe('78.54 lb')
    expect(solid.said).toContain('is not taken out')
    expect(solid.said).toContain('more than one person should lift, and two at best')
    const hollow = runNamed('old-fence-out', { footingWidth: '8 in', footingDepth: '18 in', oldPostWidth: '3 1/2 in' })
    // less 12.25 × 18 = 220.5 in³ = 0.1276 ft³ = 19.1 lb
    expect(hollow.shown.footingWeight).toBe('59.4 lb')
    expect(hollow.said).toContain('is taken out')
  })

  it('nobody lifts what is too much for two', () => {
    expect(runNamed('old-fence-out', { footingWidth: '10 in', footingDepth: '24 in' }).said).toContain(
      'Nobody lifts it',
    )
  })

  it('never says that one person can lift it: too heavy, or cannot say', () => {
    for (const [width, expected] of [
      ['6 in', null],
      ['10 in', false],
    ] as const) {
      const { outcome } = runNamed('old-fence-out', { footingWidth: width, footingDepth: '12 in' })
      if (!outcome.ok) throw new Error('must be ok')
      expect(outcome.values.get('liftedByOne')).toBe(expected)
    }
  })

  it('posts in soil have no footing to weigh, and everything else still holds', () => {
    const { shown, said } = runNamed('old-fence-out', { oldPosts: '9', footingSet: 'soil' })
    expect(shown.footingsWeight).toBe('0 lb')
    for (const it of [
      'Whose fence is it?',
      'Have the lines located',
      'street tree',
      'never burn',
      'Pull the nails',
      'Cover every hole',
    ])
      expect(said).toContain(it)
  })

  it('refuses a post wider than its footing, and a footing where there is none', () => {
    expect(
      runNamed('old-fence-out', { footingWidth: '4 in', footingDepth: '18 in', oldPostWidth: '3 1/2 in' }).said,
    ).toContain('corner to corner')
    expect(runNamed('old-fence-out', { footingSet: 'soil', footingWidth: '10 in' }).said).toContain('Which is it?')
  })
})
