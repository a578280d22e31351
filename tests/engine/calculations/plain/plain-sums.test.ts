// Sums of any trade: exact, of one kind, in the unit that was said or asked for.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact } from '../../../../engine/quantities/amount.ts'
import { isQuantity, quantity } from '../../../../engine/quantities/quantity.ts'
import { show } from '../../../../engine/quantities/show.ts'
import { runNamed } from '../../run-named.ts'

const shown = (name: string, given: Record<string, string | string[]>, wanted?: string[]) =>
  runNamed(name, given, wanted ? { wanted } : {}).shown

describe('converting', () => {
  it.each([
    ['convert-length', { lengthGiven: '8 ft', lengthUnit: 'mm' }, { lengthConverted: '2,438.4 mm' }],
    ['convert-length', { lengthGiven: '2438.4 mm', lengthUnit: 'ft' }, { lengthConverted: '8 ft' }],
    ['convert-length', { lengthGiven: '1 yd', lengthUnit: 'cm' }, { lengthConverted: '91.44 cm' }],
    ['convert-temperature', { temperatureGiven: '-40 °C', temperatureUnit: 'F' }, { temperatureConverted: '−40 °F' }],
    // 5 °F more is 2.8 °C more, and not −15 °C
    [
      'convert-temperature-difference',
      { differenceGiven: '5 dF', differenceUnit: 'dC' },
      { differenceConverted: '2.778 °C difference' },
    ],
  ] as const)('%s %j', (name, given, expected) => {
    expect(shown(name, { ...given })).toEqual(expected)
  })

  it('what was rounded to be shown is written out in full where it ends', () => {
    expect(runNamed('convert-area', { areaGiven: '120 ft²', areaUnit: 'm2' }).said).toContain('In full: 11.1483648 m².')
    expect(runNamed('convert-mass', { massGiven: '80 lb', massUnit: 'kg' }).said).toContain('In full: 36.2873896 kg.')
  })

  it('there and back is the same to the last digit', () => {
    const units = ['in', 'ft', 'yd', 'mm', 'cm', 'm']
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.constantFrom(1, 2, 4, 8, 16, 32),
        fc.constantFrom(...units),
        fc.constantFrom(...units),
        (top, bottom, from, to) => {
          const q = quantity(exact(top).div(bottom), from)
          const { outcome } = runNamed('convert-length', { lengthGiven: `${top}/${bottom} ${from}`, lengthUnit: to })
          const value = outcome.ok ? outcome.values.get('lengthConverted') : undefined
          expect(isQuantity(value) && value.unit === to && value.amount.valueOf() === q.amount.valueOf(), show(q)).toBe(
            true,
          )
        },
      ),
      { numRuns: 300, seed: 9 },
    )
  })
})

describe('adding, taking away, multiplying, sharing', () => {
  it('a sum is told in the largest unit that was said', () => {
    expect(shown('lengths-together', { lengths: ['7 ft 3 1/2 in', '9 in'] }, ['lengthSum'])).toEqual({
      lengthSum: '8 ft 0 1/2 in',
    })
    expect(shown('lengths-together', { lengths: ['93 in', '3 1/2 in'] }, ['lengthSum'])).toEqual({
      lengthSum: '96 1/2 in',
    })
    expect(shown('lengths-together', { lengths: ['350 mm', '2.4 m'] }, ['lengthSum'])).toEqual({ lengthSum: '2.75 m' })
  })

  it('or in the unit that is asked for', () => {
    expect(shown('lengths-together', { lengths: ['7 ft', '9 in'], lengthUnit: 'mm' }, ['lengthSum'])).toEqual({
      lengthSum: '2,362.2 mm',
    })
  })

  it('the smaller is taken from the larger, and that is said', () => {
    const { shown: got, said } = runNamed(
      'lengths-together',
      { lengths: ['3 1/2 in', '93 in'] },
      { wanted: ['lengthDifference'] },
    )
    expect(got.lengthDifference).toBe('89 1/2 in')
    expect(said).toContain('I took 3 1/2 in from 93 in, the larger.')
  })

  it('more taken away than there is, is refused with both', () => {
    const { outcome, said } = runNamed(
      'lengths-together',
      { lengths: ['10 ft', '6 ft', '5 ft'] },
      { wanted: ['lengthDifference'] },
    )
    expect(outcome.ok).toBe(false)
    expect(said).toContain('the largest, 10 ft, and they come to 11 ft')
  })

  it('one alone is refused, with what to check', () => {
    const { outcome, said } = runNamed('masses-together', { masses: '80 lb' }, { wanted: ['massSum'] })
    expect(outcome.ok).toBe(false)
    expect(said).toContain('I have 80 lb, and nothing of its kind beside it. Only weights go with weights')
  })

  // 93 / 5 1/2 = 16.909…: 16 times 88, 5 over
  it('how often one goes into the other, and what is left over', () => {
    expect(
      runNamed('lengths-together', { lengths: ['93 in', '5 1/2 in'] }, { wanted: ['lengthRatio'] }).said,
    ).toContain('5 1/2 in goes into 93 in 16 times, and 5 in is left over.')
  })

  it('only what is wanted is worked', () => {
    const { outcome } = runNamed('lengths-together', { lengths: ['8 ft', '2 ft'] }, { wanted: ['lengthSum'] })
    expect(outcome.ok && outcome.steps.map((it) => it.gives)).toEqual(['lengthSum'])
  })

  it('ten times ten cents are a dollar', () => {
    expect(shown('money-together', { amounts: Array.from({ length: 10 }, () => '$0.10') }, ['moneySum'])).toEqual({
      moneySum: '$1.00',
    })
  })

  it('sum, less one, is the other again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 9999 }), (a, b) => {
        const [one, two] = [`${a}/16 in`, `${b}/10 mm`]
        const sum = runNamed('lengths-together', { lengths: [one, two] }, { wanted: ['lengthSum'] }).outcome
        const total = sum.ok ? sum.values.get('lengthSum') : undefined
        if (!isQuantity(total)) throw new Error('no sum')
        expect(total.amount.valueOf()).toBeCloseTo(a / 16 + b / 254, 12)
      }),
      { numRuns: 200, seed: 2 },
    )
  })
})
