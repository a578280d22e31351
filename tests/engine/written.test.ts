// Calculations worked from inputs as people write them: texts, numbers and lists, and what cannot be read among them.
import { describe, expect, it } from 'vitest'
import type { Calculation } from '../../engine/calculation.ts'
import { calculationNamed } from '../../engine/catalogue.ts'
import { isQuantity } from '../../engine/quantities/quantity.ts'
import { show } from '../../engine/quantities/show.ts'
import { workWritten } from '../../engine/written.ts'

const work = (
  name: string,
  inputs: Readonly<Record<string, unknown>>,
  options: Parameters<typeof workWritten>[2] = {},
) => workWritten(calculationNamed(name) as Calculation, inputs, options)
const shown = (outcome: ReturnType<typeof work>, word: string): string | undefined => {
  const value = outcome.ok ? outcome.values.get(word) : undefined
  return isQuantity(value) ? show(value) : value === undefined ? undefined : String(value)
}
const problems = (outcome: ReturnType<typeof work>): string[] =>
  outcome.ok ? [] : outcome.problems.map((it) => `${it.code} ${it.word}`)

describe('inputs in writing', () => {
  const spacing = { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }

  // (93 + 2 1/2) / 6 = 15.9 → 16 pickets, and 37 left for 17 gaps
  it('are worked, a bare number in the unit of its word, and null and undefined are not given', () => {
    expect(shown(work('picket-spacing', spacing), 'gap')).toBe('2 3/17 in')
    expect(shown(work('picket-spacing', { ...spacing, opening: 93, wantedGap: null, sphere: undefined }), 'gap')).toBe(
      '2 3/17 in',
    )
  })

  it('make the results metric where any of them is', () => {
    const metric = { opening: '2400 mm', picketWidth: '70 mm', widestGap: '30 mm' }
    // 24 pickets: 2400 − 1680 = 720, by 25 gaps
    expect(shown(work('picket-spacing', metric), 'gap')).toBe('28.8 mm')
    expect(shown(work('yard-closure', { sides: ['60 ft', '40 ft', '50 ft'] }), 'yardPerimeter')).toBe('150 ft')
    expect(shown(work('yard-closure', { sides: ['60 m', '40 m', '50 m'] }), 'yardPerimeter')).toBe('150 m')
  })

  it('may be lists of texts and numbers, and of nothing else', () => {
    expect(shown(work('yard-closure', { sides: ['60 ft', 40, '50 ft'] }), 'yardPerimeter')).toBe('150 ft')
    expect(problems(work('yard-closure', { sides: ['60 ft', true, '50 ft'] }))).toEqual(['unreadable sides'])
    expect(problems(work('yard-closure', { sides: { length: '60 ft' } }))).toEqual(['unreadable sides'])
  })

  it('that cannot be read, or that are none, are each a problem, and nothing is worked', () => {
    expect(problems(work('picket-spacing', { ...spacing, opening: 'wide', colour: 'red', toString: '1' }))).toEqual([
      'unreadable opening',
      'unreadable colour',
      'unreadable toString',
    ])
    const outcome = work('picket-spacing', { ...spacing, opening: 'wide' })
    expect(outcome.ok ? undefined : outcome.problems[0]).toMatchObject({ ask: expect.stringContaining('?') })
  })

  it('odd ones are asked about until they are confirmed', () => {
    const odd = { ...spacing, opening: '8 in' }
    expect(problems(work('picket-spacing', odd))).toEqual(['implausible opening'])
    expect(work('picket-spacing', odd, { confirmed: ['opening'] }).ok).toBe(true)
  })

  it('give what hangs on no input that is left out, unless nothing else is left', () => {
    const air = { airNow: '21 C', humidityNow: '65 %' }
    expect(shown(work('dew-point', air), 'dewPoint')).toBe('14.18 °C')
    expect(shown(work('dew-point', { ...air, surfaceTemperature: '18 C' }), 'aboveDew')).toBeDefined()
  })
})
