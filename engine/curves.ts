// This file is about the three curves that a fence top follows: part of a circle, a parabola, a hanging chain. Inches throughout.
import { about, type Amount, add, exact, over, squareRoot, subtract, times, toNumber } from './quantities/amount.ts'

export type Curve = 'circle' | 'parabola' | 'chain'

/** Height of the curve above its ends, at a place from its middle; `size` is the circle's radius or the chain's parameter. */
export function heightAt(curve: Curve, x: Amount, chord: Amount, rise: Amount, size: Amount): Amount {
  switch (curve) {
    case 'circle': {
      const inside = subtract(times(size, size), times(x, x))
      return subtract(squareRoot(toNumber(inside) < 0 ? exact(0) : inside), subtract(size, rise))
    }
    case 'parabola': {
      const share = over(times(exact(2), x), chord)
      return times(rise, subtract(exact(1), times(share, share)))
    }
    case 'chain': {
      const a = toNumber(size)
      return add(rise, about(-a * (Math.cosh(toNumber(x) / a) - 1), toNumber(rise) * 1e-12))
    }
    default:
      return curve satisfies never
  }
}

/** How far the curve is from level at a place, in degrees. */
export function slopeAt(curve: Curve, x: Amount, chord: Amount, rise: Amount, size: Amount): number {
  const [at, c, r, s] = [x, chord, rise, size].map(toNumber) as [number, number, number, number]
  const slope =
    curve === 'circle'
      ? at / Math.sqrt(Math.max(s * s - at * at, 1e-12))
      : curve === 'parabola'
        ? (8 * r * at) / (c * c)
        : Math.sinh(at / s)
  return (Math.abs(Math.atan(slope)) * 180) / Math.PI
}

/** A hanging chain's parameter from its span and sag, a (cosh(span / 2a) − 1) = sag, by halving. */
export function chainFor(span: Amount, sag: Amount): Amount {
  const [c, s] = [toNumber(span), toNumber(sag)]
  let [low, high] = [c / 1400, (c * c) / s]
  for (let i = 0; i < 200; i++) {
    const a = (low + high) / 2
    if (a * (Math.cosh(c / (2 * a)) - 1) > s) low = a
    else high = a
  }
  return about((low + high) / 2, ((low + high) / 2) * 1e-12)
}

/** Length along the curve from end to end. */
export function lengthOf(curve: Curve, chord: Amount, rise: Amount, size: Amount): Amount {
  const [c, r, s] = [chord, rise, size].map(toNumber) as [number, number, number]
  if (curve === 'circle') return about(2 * s * Math.asin(Math.min(1, c / (2 * s))), c * 1e-13)
  if (curve === 'chain') return about(2 * s * Math.sinh(c / (2 * s)), c * 1e-12)
  const steep = (4 * r) / c
  return about((c / 2) * (Math.sqrt(1 + steep * steep) + Math.asinh(steep) / steep), c * 1e-13)
}
