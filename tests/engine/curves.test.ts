// The three curves of a fence top, against their own equations and a printed table of cuts.
import { describe, expect, it } from 'vitest'
import { chainFor, heightAt, slopeAt } from '../../engine/curves.ts'
import { exact, toNumber } from '../../engine/quantities/amount.ts'

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
})
