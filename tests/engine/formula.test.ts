import { describe, expect, it } from 'vitest'
import { dimensionOfLine, type Edge, readLine, workLine, writeLine } from '../../engine/formula.ts'
import { type Amount, about, exact, isExact, toNumber } from '../../engine/quantities/amount.ts'
import { quantity } from '../../engine/quantities/quantity.ts'
import { dimensionOf, type Kind } from '../../engine/quantities/units.ts'

const values: Record<string, Amount> = { a: exact('7/2'), b: exact(3), half: exact('1/2') }
const work = (text: string): Amount =>
  workLine(
    readLine(text),
    (name) => values[name] as Amount,
    () => {},
  ) as Amount
const kinds: Record<string, Kind> = {
  width: 'length',
  gap: 'length',
  pickets: 'count',
  weight: 'mass',
  room: 'volume',
  heat: 'temperature',
}
const dimensionFor = (text: string) =>
  dimensionOfLine(readLine(text), (name) => (kinds[name] ? dimensionOf[kinds[name] as Kind] : undefined))

describe('a line of arithmetic', () => {
  it.each([
    ['1 + 2 * 3', 7],
    ['(1 + 2) * 3', 9],
    ['2 ^ 3 * 2', 16],
    ['-2 ^ 2', -4],
    ['8 / 2 / 2', 2],
    ['7 - 2 - 1', 4],
    ['a * b', 10.5],
    ['ceil(a)', 4],
    ['floor(-a)', -4],
    ['round(a, b)', 3],
    ['min(a, b)', 3],
    ['max(a, b)', 3.5],
    ['abs(b - a)', 0.5],
    ['sqrt(b * 3)', 3],
    ['0.25 * 4', 1],
  ] as const)('%s is %d', (text, result) => expect(toNumber(work(text))).toBe(result))

  it('an exact division stays exact: 8.4 / 1.2 is 7, where floating point says 7.000000000000001', () => {
    const result = work('8.4 / 1.2')
    expect(isExact(result) && result.toFraction()).toBe('7')
    expect(8.4 / 1.2).not.toBe(7)
  })

  it('pi makes a value approximate, with an error that holds the true one', () => {
    const result = work('pi * 1000000')
    if (isExact(result)) throw new Error('pi is not exact')
    expect(Math.abs(result.value - 3141592.653589793)).toBeLessThanOrEqual(result.error)
  })

  it('a logarithm and a power of e undo each other, within the error they carry', () => {
    const back = work('exp(ln(2 + 1))')
    if (isExact(back)) throw new Error('a logarithm is not exact')
    expect(Math.abs(back.value - 3)).toBeLessThanOrEqual(back.error)
    expect(back.error).toBeLessThan(1e-12)
  })

  it('nothing, or less than nothing, has no logarithm', () => {
    expect(() => work('ln(0 * 1)')).toThrow('has no logarithm')
    expect(() => work('ln(-1)')).toThrow('has no logarithm')
  })

  // 3 give or take a trillionth: rounded up it may be 3 or 4, of which the higher is taken; rounded down 2 or 3, of which the lower.
  it.each([
    ['ceil(x)', 4, [3, 4]],
    ['floor(x)', 2, [2, 3]],
  ] as const)('a rounding that could go either way says both, and which was taken: %s', (text, taken, either) => {
    const edges: Edge[] = []
    const result = workLine(
      readLine(text),
      () => about(3.0000000000000004, 1e-12),
      (edge) => edges.push(edge),
    ) as Amount
    expect(toNumber(result)).toBe(taken)
    expect(edges.map((it) => [it.either.map(toNumber), toNumber(it.taken)])).toEqual([[either, taken]])
  })

  it.each([
    ['width + pickets', 'add'],
    ['weight - width', 'subtract'],
    ['min(width, weight)', 'compare'],
    ['max(width, 1)', 'compare'],
    ['ceil(width)', 'number'],
    ['sqrt(width) + width', 'add'],
    ['width + nothing', 'not an input'],
    ['fahrenheit(width)', 'temperature'],
    ['ln(width)', 'number'],
    ['exp(width)', 'number'],
  ])('%s is refused when it is read', (text, why) => expect(() => dimensionFor(text)).toThrow(why))

  it.each([
    ['width * 3 + gap', 'length'],
    ['width ^ 3', 'volume'],
    ['room / width / gap', 'length'],
    ['pickets + 1', 'number'],
    ['max(width - gap, 0)', 'length'],
    ['fahrenheit(heat) * 2', 'number'],
  ] as const)('%s is a %s', (text, kind) => {
    expect(dimensionFor(text)).toEqual(dimensionOf[kind])
  })

  it.each(['1 +', '(1', 'a b', 'f(1)', 'max(1)', '1 ? 2', '2 ^ width', ''])('“%s” is not arithmetic', (text) =>
    expect(() => readLine(text)).toThrow(),
  )

  it('is written with the numbers in, brackets where they are needed', () => {
    const said = { width: quantity('3 1/2', 'in'), gap: quantity('1/2', 'in'), pickets: quantity(12, 'picket') }
    const write = (text: string): string => writeLine(readLine(text), (name) => said[name as keyof typeof said])
    expect(write('(width + gap) * pickets')).toBe('(3 1/2 in + 1/2 in) × 12')
    expect(write('width - (gap - width)')).toBe('3 1/2 in − (1/2 in − 3 1/2 in)')
    expect(write('width ^ 2 / 4')).toBe('(3 1/2 in)² / 4')
    expect(write('((width + gap) * pickets) ^ 2')).toBe('((3 1/2 in + 1/2 in) × 12)²')
    expect(write('sum(width + gap) * pickets')).toBe('(3 1/2 in + 1/2 in) × 12')
  })

  it('lists are worked place by place, and summed with every place in view', () => {
    const list = [exact(4), exact(7)]
    const line = readLine('sum(a * b)')
    expect(
      toNumber(
        workLine(
          line,
          (name) => (name === 'a' ? list : exact(2)),
          () => {},
        ) as Amount,
      ),
    ).toBe(22)
    const shown = { a: [quantity(4, 'post'), quantity(7, 'post')], b: quantity('1.5', 'ft3') }
    expect(writeLine(line, (name) => shown[name as 'a' | 'b'])).toBe('4 × 1.5 ft³ + 7 × 1.5 ft³')
    // What is done to the whole sum is written outside it.
    const write = (text: string): string => writeLine(readLine(text), (name) => shown[name as 'a' | 'b'])
    expect(write('sum(a * b) * (1 + 0.1)')).toBe('(4 × 1.5 ft³ + 7 × 1.5 ft³) × (1 + 0.1)')
    expect(write('2 - sum(a)')).toBe('2 − (4 + 7)')
    expect(write('ceil(sum(a * b) / b)')).toBe('round up ((4 × 1.5 ft³ + 7 × 1.5 ft³) / 1.5 ft³)')
    expect(write('sum(a + 1) ^ 2')).toBe('((4 + 1) + (7 + 1))²')
  })
})
