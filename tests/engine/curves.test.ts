// The three curves of a fence top, against their own equations and a printed table of cuts.
import { describe, expect, it } from 'vitest'
import { chainFor, heightAt, lengthOf, slopeAt } from '../../engine/curves.ts'
import { exact, isExact, toNumber } from '../../engine/quantities/amount.ts'

const [span, rise] = [exact(72), exact(10)]

describe('a curve', () => {
  // Reference book, arches, arch-72-6: a circle of 111 in.
  it.each([
    [12, 6.2062678],
    [18, 9.3324182],
    [24, 12.48689],
    [30, 15.68035],
  ])('of a circle is cut as the reference book says %d in from the middle', (x, printed) => {
    expect(slopeAt('circle', exact(x), span, exact(6), exact(111))).toBeCloseTo(printed, 5)
  })

  it('a hanging chain sags by what it was asked to', () => {
    const a = toNumber(chainFor(span, rise))
    expect(a * (Math.cosh(36 / a) - 1)).toBeCloseTo(10, 9)
  })

  it.each(['circle', 'parabola', 'chain'] as const)(
    '%s: full height in the middle, none at the ends, cut as steep as it climbs',
    (curve) => {
      // (36² + 10²) / 20 is the circle's radius.
      const size = curve === 'chain' ? chainFor(span, rise) : exact(69.8)
      const height = (x: number): number => toNumber(heightAt(curve, exact(x), span, rise, size))
      expect(height(0)).toBeCloseTo(10, 9)
      expect(height(36)).toBeCloseTo(0, 6)
      for (const x of [3, 11, 20, 35]) {
        const climbs = (height(x - 1e-5) - height(x + 1e-5)) / 2e-5
        expect(slopeAt(curve, exact(x), span, rise, size)).toBeCloseTo((Math.atan(climbs) * 180) / Math.PI, 4)
      }
    },
  )

  it.each(['circle', 'parabola', 'chain'] as const)('%s is as long as many short chords of it', (curve) => {
    for (const [across, up] of [
      [72, 10],
      [30, 14],
    ] as const) {
      const [c, r] = [exact(across), exact(up)]
      const radius = exact((across * across) / 4 + up * up).div(2 * up)
      const size = curve === 'chain' ? chainFor(c, r) : radius
      const height = (x: number): number => toNumber(heightAt(curve, exact(x), c, r, size))
      const steps = 200
      let long = 0
      for (let i = 0; i < steps; i++) {
        const [a, b] = [i, i + 1].map((it) => -across / 2 + (it * across) / steps) as [number, number]
        long += Math.hypot(b - a, height(b) - height(a))
      }
      expect(toNumber(lengthOf(curve, c, r, size))).toBeCloseTo(long, 2)
    }
  })

  it('tells how far off it may be: a hanging chain and its length to one part in a million million', () => {
    const size = chainFor(span, rise)
    if (isExact(size)) throw new Error('a chain is not exact')
    expect(size.error / size.value).toBeCloseTo(1e-12, 15)
    const long = lengthOf('chain', span, rise, size)
    expect(!isExact(long) && long.error).toBeCloseTo(72e-12, 15)
  })

  it('outside its own circle is no higher than the circle’s middle, and stands upright there', () => {
    expect(toNumber(heightAt('circle', exact(40), span, exact(36), exact(36)))).toBe(0)
    expect(slopeAt('circle', exact(36), span, exact(36), exact(36))).toBeCloseTo(90, 3)
    expect(slopeAt('parabola', exact(-36), span, rise, exact(1))).toBeCloseTo((Math.atan(40 / 72) * 180) / Math.PI, 9)
  })
})
