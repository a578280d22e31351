import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { type Inputs, runNamed } from '../../run-named.ts'

const post = {
  sideForce: '206.9 lb',
  forceHeight: '2 ft',
  postSetIn: 'concrete',
  holeDiameter: '10 in',
  soilClass: 'sand',
  bearingDoubled: 'doubled',
  postAbove: '4 ft',
}

function depthOf(given: Inputs): number {
  const { outcome, said } = runNamed('embedment-check', given, { confirmed: Object.keys(given), wanted: ['codeDepth'] })
  const depth = outcome.ok ? outcome.values.get('codeDepth') : undefined
  if (!isQuantity(depth)) throw new Error(said)
  return numberIn(depth, 'ft')
}

describe('depth by the code’s formula', () => {
  // The shallowest that 206.9 lb at 2 ft leaves in doubled sand with a 10 in collar is 37.65 in.
  it('fails at 3 ft and not at 3 ft 2 in: the planned depth alone decides', () => {
    expect(runNamed('embedment-check', { ...post, embedment: '36 in' }).shown.deepEnoughForForce).toBe('false')
    const { shown, said } = runNamed('embedment-check', { ...post, embedment: '38 in' })
    expect(shown.deepEnoughForForce).toBe('true')
    expect(said).toContain('Decided by: 38 in of post in the ground against 37.65 in by the formula')
  })

  it.each([
    ['soilClass', 'clay'],
    ['bearingDoubled', 'once'],
    ['sideForce', '250 lb'],
    ['forceHeight', '30 in'],
    ['holeDiameter', '8 in'],
    ['postSetIn', 'earth'],
  ])('38 in are too few once %s alone is %s', (word, value) => {
    expect(runNamed('embedment-check', { ...post, embedment: '38 in', [word]: value }).shown.deepEnoughForForce).toBe(
      'false',
    )
  })

  it('in fill, peat or mud nothing can be said, and the soil decided', () => {
    const { shown, said } = runNamed('embedment-check', { ...post, soilClass: 'none', embedment: '60 in' })
    expect(shown.deepEnoughForForce).toBe('null')
    expect(said).toContain('Decided by the soil')
    expect(shown.codeDepth).toBeUndefined()
  })

  it('stands beside the trade’s rule as another thing', () => {
    const { shown, said, outcome } = runNamed('embedment-check', post)
    expect(shown.depthByRule).toBe('24 in')
    expect(said).toContain('Two different things: the trade’s rule says 24 in')
    expect(outcome.ok && outcome.tables[0]?.rows.map((it) => it[1])).toEqual(['24 in', '37.65 in'])
  })

  it('doubles only when the person says so, and gives the condition', () => {
    const { bearingDoubled: _, ...once } = post
    expect(depthOf(once)).toBeGreaterThan(depthOf(post))
    expect(runNamed('embedment-check', once).said).toContain('ask your building office')
    expect(runNamed('embedment-check', post).said).toContain('half an inch of movement at the ground does no harm')
  })

  it('refuses what no fence post is for', () => {
    expect(runNamed('embedment-check', { ...post, sideForce: '9000 lb' }, { confirmed: ['sideForce'] }).said).toContain(
      'ask an engineer',
    )
  })

  // s b d³ = 7.02 P (d + 1.09 h): what the book says a right solution keeps to.
  it('rises with the push and its height, falls with soil and width; held is less than free; push and width together change nothing', () => {
    const share = fc.integer({ min: 11, max: 30 }).map((it) => it / 10)
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 300 }),
        fc.integer({ min: 12, max: 40 }),
        fc.integer({ min: 6, max: 14 }),
        share,
        (force, arm, wide, more) => {
          const given = (P: number, h: number, b: number, s: number): Inputs => ({
            sideForce: `${P.toFixed(6)} lb`,
            forceHeight: `${h.toFixed(6)} in`,
            postSetIn: 'concrete',
            holeDiameter: `${b.toFixed(6)} in`,
            lateralBearing: `${s.toFixed(6)} psf/ft`,
          })
          const usual = depthOf(given(force, arm, wide, 150))
          expect(depthOf(given(force * more, arm, wide, 150))).toBeGreaterThan(usual)
          expect(depthOf(given(force, arm * more, wide, 150))).toBeGreaterThan(usual)
          expect(depthOf(given(force, arm, wide * more, 150))).toBeLessThan(usual)
          expect(depthOf(given(force, arm, wide, 150 * more))).toBeLessThan(usual)
          expect(depthOf({ ...given(force, arm, wide, 150), postHeld: 'held' })).toBeLessThan(usual)
          expect(depthOf(given(force * more, arm, wide * more, 150))).toBeCloseTo(usual, 4)
        },
      ),
      { numRuns: 25, seed: 4 },
    )
  })
})
