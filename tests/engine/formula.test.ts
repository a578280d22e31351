import fc from 'fast-check'
import Fraction from 'fraction.js'
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

/** A line, and what it comes to worked by other means. */
interface Told {
  readonly text: string
  readonly value: Fraction
}
const given = { a: new Fraction('7/2'), b: new Fraction(3), c: new Fraction('-5/4'), d: new Fraction(12) }
const lesser = (x: Fraction, y: Fraction): Fraction => (x.compare(y) < 0 ? x : y)
const leaf: fc.Arbitrary<Told> = fc.oneof(
  fc.constantFrom(...(['a', 'b', 'c', 'd'] as const)).map((name) => ({ text: name, value: given[name] })),
  fc.integer({ min: 1, max: 40 }).map((it) => ({ text: `${it / 4}`, value: new Fraction(it, 4) })),
)
const { line: anyLine } = fc.letrec<{ line: Told }>((tie) => {
  const pair = fc.tuple(tie('line'), tie('line'))
  const called = (name: string, work: (x: Fraction, y: Fraction) => Fraction): fc.Arbitrary<Told> =>
    pair.map(([x, y]) => ({ text: `${name}(${x.text}, ${y.text})`, value: work(x.value, y.value) }))
  const alone = (write: (text: string) => string, work: (x: Fraction) => Fraction): fc.Arbitrary<Told> =>
    tie('line').map((x) => ({ text: write(x.text), value: work(x.value) }))
  return {
    line: fc.oneof(
      { maxDepth: 4, depthSize: 'small' },
      leaf,
      pair.map(([x, y]) => ({ text: `(${x.text}) + (${y.text})`, value: x.value.add(y.value) })),
      pair.map(([x, y]) => ({ text: `${x.text} - (${y.text})`, value: x.value.sub(y.value) })),
      pair.map(([x, y]) => ({ text: `(${x.text}) * (${y.text})`, value: x.value.mul(y.value) })),
      pair.map(([x, y]) =>
        y.value.equals(0) ? x : { text: `(${x.text}) / (${y.text})`, value: x.value.div(y.value) },
      ),
      alone(
        (it) => `-(${it})`,
        (it) => it.neg(),
      ),
      alone(
        (it) => `(${it}) ^ 2`,
        (it) => it.mul(it),
      ),
      alone(
        (it) => `abs(${it})`,
        (it) => it.abs(),
      ),
      alone(
        (it) => `ceil(${it})`,
        (it) => it.ceil(),
      ),
      alone(
        (it) => `floor(${it})`,
        (it) => it.floor(),
      ),
      called('min', lesser),
      called('max', (x, y) => (lesser(x, y) === x ? y : x)),
    ),
  }
})

describe('any line', () => {
  it('comes to what its parts come to, and as it is written with its numbers comes to the same again', () => {
    fc.assert(
      fc.property(anyLine, ({ text, value }) => {
        const line = readLine(text)
        const work = (it: ReturnType<typeof readLine>): Amount =>
          workLine(
            it,
            (name) => given[name as keyof typeof given],
            () => {},
          ) as Amount
        const result = work(line)
        expect(isExact(result) && result.toFraction(), text).toBe(value.toFraction())
        // Only what is written as a person reads it is written back: a count stands without its noun.
        const written = writeLine(line, (name) => quantity(given[name as keyof typeof given], 'ratio'))
          .replaceAll('−', '-')
          .replaceAll('×', '*')
          .replaceAll('²', ' ^ 2')
          .replaceAll('round up', 'ceil')
          .replaceAll('round down', 'floor')
          .replaceAll(';', ',')
        const again = work(readLine(written))
        expect(isExact(again) && again.toFraction(), `${text}: ${written}`).toBe(value.toFraction())
      }),
      { seed: 20_261_128, numRuns: 500 },
    )
  })

  it.each([
    ['sin(30)', 0.5],
    ['cos(60)', 0.5],
    ['tan(45)', 1],
    ['asin(0.5)', 30],
    ['acos(0.5)', 60],
    ['asin(1)', 90],
    ['acos(-1)', 180],
    ['atan(1)', 45],
    ['exp(1)', Math.E],
    ['ln(10)', Math.LN10],
    ['asin(0)', 0],
    ['ln(1)', 0],
    ['sinh(1)', 1.1752011936438014],
    ['cosh(1)', 1.5430806348152437],
    ['sqrt(2)', Math.SQRT2],
    ['pi * 2', 6.283185307179586],
    ['weight(b)', 3],
    ['fahrenheit(a)', 3.5],
    ['sum(a)', 3.5],
  ])('%s is %d, within the error it carries', (text, value) => {
    const result = work(text)
    expect(Math.abs(toNumber(result) - value)).toBeLessThanOrEqual((isExact(result) ? 0 : result.error) + 1e-15 * value)
    if (!isExact(result)) expect(result.error).toBeLessThan(1e-12)
  })

  // A tenth of a degree either way: the sine lies between those of both ends.
  it.each([
    ['sin(x)', 30, 0.1],
    ['cos(x)', 30, 0.1],
    ['tan(x)', 30, 0.1],
    ['asin(x)', 0.5, 0.01],
    ['acos(x)', 0.5, 0.01],
    ['asin(x)', 0.999, 0.01],
    ['acos(x)', -0.999, 0.01],
    ['atan(x)', 0.2, 0.1],
    ['exp(x)', 2, 0.1],
    ['ln(x)', 2, 0.1],
    ['sinh(x)', 1, 0.001],
    ['cosh(x)', 1, 0.001],
  ])('%s of %d give or take %d holds what it is at both ends', (text, x, error) => {
    const at = (value: Amount): Amount =>
      workLine(
        readLine(text),
        () => value,
        () => {},
      ) as Amount
    const result = at(about(x, error))
    // A sine is no more than 1.
    const held = (it: number): number =>
      text.startsWith('a') && !text.startsWith('atan') ? Math.max(-1, Math.min(1, it)) : it
    const ends = [x - error, x + error].map((it) => toNumber(at(about(held(it), 1e-9))))
    if (isExact(result)) throw new Error('it is not exact')
    for (const end of ends) {
      const off = Math.abs(end - result.value)
      expect(off).toBeLessThanOrEqual(result.error * 1.02)
      expect(result.error).toBeLessThan(off * 3 + 1e-9)
    }
  })

  it('has no angle outside −1 to 1, and no whole powers but whole ones', () => {
    expect(() => work('asin(b)')).toThrow('3 has no angle: it lies outside −1 to 1')
    expect(() => work('acos(-b)')).toThrow('-3 has no angle')
    expect(() => work('round(a, pi)')).toThrow('“round(a, pi)”: a mark is exact')
    expect(() => readLine('2 ^ 1.5')).toThrow('“2 ^ 1.5”: a power must be a whole number')
  })

  it.each([
    ['1 +', '“1 +”: the line ends too early at “the end”'],
    ['(1', '“(1”: expected “)” at “the end”'],
    ['a b', '“a b”: something is left over at “b”'],
    ['max(1)', '“max(1)”: “max” takes 2 inputs'],
    ['ceil(1, 2)', '“ceil(1, 2)”: “ceil” takes 1 inputs'],
    ['1 ? 2', '“1 ? 2”: something is left over at “?”'],
    ['? 2', '“? 2”: not arithmetic at “?”'],
    ['hop(1)', '“hop” is not one of ceil, floor'],
  ])('%s says what is wrong with it', (text, said) => expect(() => readLine(text)).toThrow(said))

  it('writes a rounding to a mark of money as cents, and to any other mark as it is', () => {
    const said = { cost: quantity('12.345', 'USD'), cent: quantity('0.01', 'USD'), gap: quantity('1/2', 'in') }
    const write = (text: string): string => writeLine(readLine(text), (name) => said[name as keyof typeof said])
    expect(write('round(cost, cent)')).toBe('to the cent ($12.345)')
    expect(write('round(gap, gap)')).toBe('to the nearest mark (1/2 in; 1/2 in)')
    expect(write('round(gap, 2)')).toBe('to the nearest mark (1/2 in; 2)')
    expect(write('round(gap, pi)')).toBe('to the nearest mark (1/2 in; π)')
    expect(write('weight(gap) + fahrenheit(gap)')).toBe('(1/2 in) + (1/2 in)')
    expect(write('-gap - -gap')).toBe('−1/2 in − (−1/2 in)')
    expect(write('pi ^ 4 * 2 ^ 3')).toBe('(π)^4 × 2³')
    expect(write('2 / (3 * 4) - (5 + 6)')).toBe('2 / (3 × 4) − (5 + 6)')
    expect(write('2 * 3 / 4 + 5 - 6')).toBe('2 × 3 / 4 + 5 − 6')
  })

  it('writes a list once for each of its values, beside what there is one of', () => {
    const said = { each: [quantity(4, 'in'), quantity(7, 'in')], one: [quantity(3, 'in')], gap: quantity(2, 'in') }
    const write = (text: string): string => writeLine(readLine(text), (name) => said[name as keyof typeof said])
    expect(write('each - gap')).toBe('4 in − 2 in; 7 in − 2 in')
    expect(write('one - gap')).toBe('3 in − 2 in')
    expect(write('sum(one + gap) * 2')).toBe('(3 in + 2 in) × 2')
    expect(write('sum(-each)')).toBe('(−4 in) + (−7 in)')
    expect(write('sum(each ^ 2 / gap)')).toBe('(4 in)² / 2 in + (7 in)² / 2 in')
    expect(write('sum(max(gap, each) * pi)')).toBe('max (2 in; 4 in) × π + max (2 in; 7 in) × π')
  })

  it('works two lists place by place, and one beside a list at each of its places', () => {
    const lists: Record<string, Amount | readonly Amount[]> = {
      x: [exact(4), exact(7)],
      y: [exact(1), exact(5)],
      z: exact(3),
    }
    const work = (text: string) =>
      workLine(
        readLine(text),
        (name) => lists[name] as Amount,
        () => {},
      )
    const numbers = (text: string): number[] => (work(text) as readonly Amount[]).map(toNumber)
    expect(numbers('x - y')).toEqual([3, 2])
    expect(numbers('x - z')).toEqual([1, 4])
    expect(numbers('z - x')).toEqual([-1, -4])
    expect(numbers('-x')).toEqual([-4, -7])
    expect(numbers('max(x, y * 4)')).toEqual([4, 20])
    expect(numbers('min(y, 1)')).toEqual([1, 1])
    expect(toNumber(work('sum(x * y)') as Amount)).toBe(39)
  })

  it('names what it uses once each, and what stands outside its sum', () => {
    expect(readLine('a + b * a - pi').names).toEqual(['a', 'b'])
    expect(readLine('a + b').besideSum).toBeNull()
    expect(readLine('ceil(a) + max(b, pi)').besideSum).toBeNull()
    expect(readLine('sum(a) + max(b, c) - abs(d)').besideSum).toEqual(['b', 'c', 'd'])
    expect(readLine('max(sum(a), b) / sum(c)').besideSum).toEqual(['b'])
    expect(readLine('pi').names).toEqual([])
    expect(readLine('sum(a * b) / c + pi').besideSum).toEqual(['c'])
    expect(readLine('sum(a) + sum(b) * a').besideSum).toEqual(['a'])
  })
})
