import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { type Ran, runNamed } from '../../run-named.ts'

const yard = { concrete: '1 yd3', mixParts: '1 : 2 : 3' }

const litres = ({ outcome, said }: Ran, word: string): number => {
  const value = outcome.ok ? outcome.values.get(word) : undefined
  if (!isQuantity(value)) throw new Error(said)
  return numberIn(value, 'L')
}

describe('concrete mixed on site', () => {
  // 27 × 1.54 = 41.58 ft³ dry; / 6 = 6.93 ft³ a part; × 94 / 94 = 6.93 → 7 bags; sand 13.86, stone 20.79
  it('a yard at 1 : 2 : 3 takes 7 bags of 94 lb', () => {
    expect(runNamed('site-mix', yard).shown).toMatchObject({
      cementVolume: '6.93 ft³',
      cementBags: '7 bags',
      sandForMix: '13.86 ft³',
      stoneForMix: '20.79 ft³',
    })
  })

  it('tells the same cement in the bags of other countries', () => {
    const { outcome } = runNamed('site-mix', yard)
    if (!outcome.ok) throw new Error('must be ok')
    // 6.93 × 94 = 651.42 lb = 295.48 kg; / 20 = 14.8; / 25 = 11.8; / 40 = 7.4
    expect(outcome.tables[0]?.rows).toEqual([
      ['94 lb', 7],
      ['20 kg', 15],
      ['25 kg', 12],
      ['40 kg', 8],
    ])
  })

  it('the parts keep their proportion, and together they measure what the dry volume is', () => {
    fc.assert(
      fc.property(
        fc.tuple(...[1, 2, 3].map(() => fc.integer({ min: 1, max: 20 }))),
        fc.integer({ min: 1, max: 400 }),
        ([a, b, c], volume) => {
          const [cement, sand, stone] = [a as number, b as number, Math.max(a as number, c as number)]
          const ran = runNamed(
            'site-mix',
            { concrete: `${volume}/10 ft3`, mixParts: `${cement} : ${sand} : ${stone}` },
            { confirmed: ['mixParts', 'concrete'] },
          )
          const [one, two, three] = ['cementVolume', 'sandForMix', 'stoneForMix'].map((it) => litres(ran, it)) as [
            number,
            number,
            number,
          ]
          expect(two * cement).toBeCloseTo(one * sand, 6)
          expect(three * cement).toBeCloseTo(one * stone, 6)
          expect(one + two + three).toBeCloseTo((volume / 10) * 28.316846592 * 1.54, 6)
        },
      ),
      { numRuns: 100, seed: 8 },
    )
  })

  it('more concrete never takes fewer bags, and a richer mix never fewer either', () => {
    const bags = (concrete: string, mixParts: string): number =>
      Number((runNamed('site-mix', { concrete, mixParts }).shown.cementBags ?? '').split(' ')[0])
    for (let tenths = 5; tenths < 60; tenths++)
      expect(bags(`${tenths + 1}/10 yd3`, '1 : 2 : 4')).toBeGreaterThanOrEqual(bags(`${tenths}/10 yd3`, '1 : 2 : 4'))
    for (let sand = 2; sand < 9; sand++)
      expect(bags('1 yd3', `1 : ${sand} : 5`)).toBeGreaterThanOrEqual(bags('1 yd3', `1 : ${sand + 1} : 5`))
  })

  it('refuses a mix of other than three parts, and one with more cement than stone', () => {
    expect(runNamed('site-mix', { ...yard, mixParts: '1 : 6' }).said).toContain('I have 1 part, 6 parts')
    expect(runNamed('site-mix', { ...yard, mixParts: '3 : 2 : 1' }).said).toContain('Check the order')
  })
})

describe('ready-mix beside bags', () => {
  // 10.13 / 6.75 = 1.5 quarter yards → 2 → 0.5 yd³; 10.13 / 0.45 = 22.5 → 23 bags
  it('is ordered by whole steps, and the bags are told apart from it', () => {
    const { shown, said } = runNamed('bags-for-volume', { concrete: '10.13 ft3', bagYield: '0.45 ft3' })
    expect(shown).toMatchObject({ readyMix: '0.5 yd³', bagsForVolume: '23 bags' })
    expect(said).toContain('one or the other, each for all of it')
  })

  it('a volume that is a whole number of steps takes no step more', () => {
    expect(runNamed('bags-for-volume', { concrete: '20.25 ft3' }).shown.readyMix).toBe('0.75 yd³')
    expect(runNamed('bags-for-volume', { concrete: '1.2 m3' }, { system: 'metric' }).shown.readyMix).toBe('1.2 m³')
  })

  it('is never less than what is wanted, and never a step too much', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 20 }), (hundredths, twentieths) => {
        const [wanted, step] = [hundredths * 10, twentieths * 50]
        const ordered = litres(
          runNamed(
            'bags-for-volume',
            { concrete: `${wanted} L`, orderStep: `${step} L` },
            { system: 'metric', confirmed: ['concrete', 'orderStep'] },
          ),
          'readyMix',
        )
        expect(ordered).toBeGreaterThanOrEqual(wanted)
        expect(ordered).toBeLessThan(wanted + step)
      }),
      { numRuns: 100, seed: 9 },
    )
  })
})
