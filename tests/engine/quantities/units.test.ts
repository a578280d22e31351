// Units and lines of arithmetic against reference libraries of general use: js-quantities and mathjs.
import fc from 'fast-check'
import Qty from 'js-quantities'
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { readLine, workLine } from '../../../engine/formula.ts'
import { type Amount, exact, toNumber } from '../../../engine/quantities/amount.ts'
import { numberIn, quantity } from '../../../engine/quantities/quantity.ts'

describe('units against js-quantities', () => {
  it.each([
    ['in', 'mm', 'in', 'mm'],
    ['ft', 'm', 'ft', 'm'],
    ['yd', 'cm', 'yd', 'cm'],
    ['ft2', 'm2', 'ft^2', 'm^2'],
    ['in2', 'ft2', 'in^2', 'ft^2'],
    ['in2', 'cm2', 'in^2', 'cm^2'],
    ['mm2', 'in2', 'mm^2', 'in^2'],
    ['psi', 'kPa', 'psi', 'kPa'],
    ['psi', 'MPa', 'psi', 'MPa'],
    ['lb/ft2', 'kPa', 'lbf/ft^2', 'kPa'],
    ['N/mm2', 'psi', 'N/mm^2', 'psi'],
    ['GPa', 'psi', 'GPa', 'psi'],
    ['psf/ft', 'kPa/m', 'lbf/ft^3', 'kPa/m'],
    ['mph', 'm/s', 'mph', 'm/s'],
    ['km/h', 'mph', 'kph', 'mph'],
    ['knot', 'km/h', 'knot', 'kph'],
    ['ft3', 'L', 'ft^3', 'l'],
    ['yd3', 'm3', 'yd^3', 'm^3'],
    ['in3', 'cm3', 'in^3', 'cm^3'],
    ['gal', 'L', 'gal', 'l'],
    ['floz', 'in3', 'floz', 'in^3'],
    ['lb', 'kg', 'lb', 'kg'],
    ['ton', 'kg', 'ton', 'kg'],
    ['lb/ft3', 'kg/m3', 'lb/ft^3', 'kg/m^3'],
    ['lb/yd3', 'kg/m3', 'lb/yd^3', 'kg/m^3'],
    ['ton/yd3', 'kg/m3', 'ton/yd^3', 'kg/m^3'],
    ['tonne/m3', 'lb/ft3', 'tonne/m^3', 'lb/ft^3'],
    ['ft2/gal', 'm2/L', 'ft^2/gal', 'm^2/l'],
    ['F', 'C', 'tempF', 'tempC'],
    ['C', 'F', 'tempC', 'tempF'],
    ['h', 'min', 'hour', 'min'],
    ['week', 'day', 'week', 'day'],
  ])('%s in %s', (from, to, theirs, theirOther) => {
    for (const amount of [0.25, 1, 37, 1250]) {
      const reference = Qty(amount, theirs).to(theirOther).scalar
      expect(Math.abs(numberIn(quantity(amount, from), to) - reference)).toBeLessThanOrEqual(
        Math.abs(reference) * 1e-6 + 1e-9,
      )
    }
  })
})

describe('pressures against the printed factors', () => {
  // NIST SP 811 (2008), appendix B.8: psi 6.894 757 E+03 Pa; lbf/ft² 4.788 026 E+01 Pa. Half of the last figure each.
  it.each([
    ['psi', 6894.757, 0.0005],
    ['lb/ft2', 47.88026, 0.000005],
  ])('%s is %s Pa', (unit, pascals, half) => {
    expect(Math.abs(numberIn(quantity(1, unit), 'kPa') * 1000 - pascals)).toBeLessThanOrEqual(half)
  })
})

describe('lines of arithmetic against mathjs', () => {
  const leaf = fc.constantFrom('a', 'b', 'c', '2', '0.5', '7')
  const { tree } = fc.letrec<{ tree: string }>((tie) => ({
    tree: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      leaf,
      fc
        .tuple(tie('tree'), fc.constantFrom('+', '-', '*'), tie('tree'))
        .map(([left, sign, right]) => `(${left} ${sign} ${right})`),
      fc.tuple(tie('tree'), tie('tree')).map(([left, right]) => `max(${left}, ${right})`),
      tie('tree').map((inner) => `abs(${inner})`),
      tie('tree').map((inner) => `${inner === 'a' ? 'a' : `(${inner})`} ^ 2`),
      tie('tree').map((inner) => `ceil(${inner})`),
    ),
  }))
  it('give the same number, whatever they say', () => {
    fc.assert(
      fc.property(tree, fc.integer({ min: -40, max: 40 }), fc.integer({ min: 1, max: 40 }), (text, a, b) => {
        const values: Record<string, number> = { a, b: b / 4, c: 3 }
        const ours = workLine(
          readLine(text),
          (name) => exact(values[name] as number),
          () => {},
        ) as Amount
        const theirs = Number(evaluate(text, { ...values }))
        // Doubles run out long before fractions do.
        fc.pre(Math.abs(theirs) < 1e9)
        expect(Math.abs(toNumber(ours) - theirs)).toBeLessThanOrEqual(Math.abs(theirs) * 1e-9 + 1e-9)
      }),
      { numRuns: 500, seed: 6 },
    )
  })
})
