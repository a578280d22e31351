import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

// 522 lbf × 39.6 in ÷ 7.1458 in³ = 2893 psi against 1680 for cedar; 300 lbf: 1662.5 psi
const post = { sideForce: '300 lb', forceHeight: '3.3 ft', postWidth: '3 1/2 in', lumberGroup: 'western-cedars' }

describe('a post against bending', () => {
  it('holds at 300 lb, and says what decided', () => {
    const { shown, said } = runNamed('post-strength', post)
    expect(shown.postHolds).toBe('true')
    expect(said).toContain('Decided by bending at the ground: 1,663 psi against 1,680 psi allowed')
  })

  it.each([
    ['sideForce', '304 lb'],
    ['forceHeight', '3.4 ft'],
    ['postWidth', '3 7/16 in'],
    ['incised', 'yes'],
    ['sectionLeft', '90 %'],
    ['bendingValue', '1600 psi'],
  ])('fails once %s alone is %s', (word, value) => {
    expect(runNamed('post-strength', { ...post, [word]: value }).shown.postHolds).toBe('false')
  })

  it('cannot say without a grade, nor for a post that other values hold for', () => {
    const { lumberGroup: _, ...bare } = post
    const unstamped = runNamed('post-strength', bare)
    expect(unstamped.shown.postHolds).toBe('null')
    expect(unstamped.said).toContain('depends on its grade')
    const thick = runNamed('post-strength', { ...post, postWidth: '5 1/2 in' })
    expect(thick.shown.postHolds).toBe('null')
    expect(thick.said).toContain('Decided by the size')
  })

  it('has nothing left to hold with where the rot leaves nothing', () => {
    const { shown, said } = runNamed('post-strength', { ...post, sectionLeft: '0 %' })
    expect(shown.postHolds).toBe('false')
    expect(said).toContain('Decided by the rot')
  })
})

// 100 lb in the middle of 60 in: 1500 lbf-in; standing 3.0625 in³: 490 psi; lying 1.3125: 1143 psi, against 1312.5
const rail = {
  opening: '60 in',
  railDepth: '3 1/2 in',
  railThickness: '1 1/2 in',
  leanWeight: '100 lb',
  lumberGroup: 'western-cedars',
}

describe('a rail against bending', () => {
  it('holds, and the lean against it decides', () => {
    const { shown, said } = runNamed('rail-strength', rail)
    expect(shown.railHolds).toBe('true')
    expect(said).toContain('Decided by leaning against it: 1,143 psi against 1,312.5 psi allowed')
  })

  it.each([
    ['leanWeight', '120 lb'],
    ['opening', '70 in'],
    ['railThickness', '1 3/8 in'],
    ['incised', 'yes'],
    ['bendingValue', '1000 psi'],
    ['sideForce', '700 lb'],
  ])('fails once %s alone is %s', (word, value) => {
    expect(runNamed('rail-strength', { ...rail, [word]: value }).shown.railHolds).toBe('false')
  })

  it('the wind decides where it bends the rail most', () => {
    expect(runNamed('rail-strength', { ...rail, sideForce: '700 lb' }).said).toContain('Decided by the wind')
  })

  it('cannot say without a grade', () => {
    const { lumberGroup: _, ...bare } = rail
    expect(runNamed('rail-strength', bare).shown.railHolds).toBe('null')
  })

  it('bows under the wind by the very formula of the sag: the same load laid evenly, turned a quarter', () => {
    // 5/384 × 100 × 60³ / (0.9 × 1,000,000 × 3.5 × 1.5³/12)
    const { outcome } = runNamed('rail-strength', { ...rail, sideForce: '200 lb' })
    const windBow = outcome.ok ? outcome.values.get('windBow') : undefined
    const bow = ((5 / 384) * 100 * 60 ** 3) / (0.9e6 * ((3.5 * 1.5 ** 3) / 12))
    expect(isQuantity(windBow) && numberIn(windBow, 'in')).toBeCloseTo(bow, 9)
  })
})
