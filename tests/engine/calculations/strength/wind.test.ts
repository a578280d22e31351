import { describe, expect, it } from 'vitest'
import { calculationNamed } from '../../../../engine/catalogue.ts'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { solidCoefficients } from '../../../evidence/solid-coefficients.ts'
import { type Inputs, runNamed } from '../../run-named.ts'

const picketBay = {
  windSpeed: '115 mph',
  exposure: 'b',
  postAbove: '4 ft',
  bayCentres: '6 ft',
  picketWidth: '3 1/2 in',
  wantedGap: '2 1/2 in',
}
const solidBay = { windSpeed: '115 mph', exposure: 'b', postAbove: '6 ft', bayCentres: '8 ft', runLength: '120 ft' }

/** What a step of the working gave, as a plain number. */
function stepOf(name: string, given: Inputs, step: string, unit: string): number {
  const { outcome, said } = runNamed(name, given, { confirmed: Object.keys(given) })
  const value = outcome.ok ? outcome.steps.find((it) => it.gives === step)?.value : undefined
  if (!isQuantity(value)) throw new Error(`no ${step}: ${said}`)
  return numberIn(value, unit)
}

describe('the wind on an open fence', () => {
  it('counts the rails where they show between the pickets', () => {
    // 14 ft² of pickets and 2 × 3 1/2 in × 6 ft × 0.41667 = 1.4583 ft² of rail
    expect(stepOf('wind-open-fence', picketBay, 'solidArea', 'ft2')).toBeCloseTo(15.4583, 4)
    expect(stepOf('wind-open-fence', { ...picketBay, rails: '3' }, 'solidArea', 'ft2')).toBeCloseTo(16.1875, 4)
  })

  it('goes with the square of the speed: half as much again in speed is two and a quarter times the force', () => {
    const [slow, fast] = ['100 mph', '150 mph'].map((windSpeed) =>
      stepOf('wind-open-fence', { ...picketBay, windSpeed }, 'speedPressure', 'lb/ft2'),
    ) as [number, number]
    expect(fast / slow).toBeCloseTo(2.25, 9)
  })

  // 1/(1 + 9) = 10 % of pickets and no more: 1.8; with the rails of a low fence more.
  it.each([
    ['1 in', '10 in', '1.8'],
    ['1/2 in', '8 in', '1.8'],
    ['3 1/2 in', '2 1/2 in', '1.6'],
  ])('pickets of %s with gaps of %s have the factor %s', (picketWidth, wantedGap, factor) => {
    const { said } = runNamed(
      'wind-open-fence',
      { ...picketBay, picketWidth, wantedGap },
      { confirmed: ['picketWidth', 'wantedGap'] },
    )
    expect(said).toContain(`factor ${factor}`)
  })

  it('sends a fence that is over 70 % solid to the solid one, and only that', () => {
    expect(runNamed('wind-open-fence', { ...picketBay, wantedGap: '1 in' }).said).toContain('counts as a solid fence')
    expect(runNamed('wind-open-fence', { ...picketBay, wantedGap: '2 in' }).outcome.ok).toBe(true)
  })

  it('asks for the speed, and takes none for granted', () => {
    const { said } = runNamed('wind-open-fence', { ...picketBay, windSpeed: '115 mph' }, { wanted: ['sideForce'] })
    expect(said).toContain('I look up no wind map')
    const { windSpeed: _, ...without } = picketBay
    expect(runNamed('wind-open-fence', without, { wanted: ['sideForce'] }).said).toContain('I need the wind speed')
  })

  it('is for fences up to 15 ft: above it there is more wind than its factors have', () => {
    const tall = { ...picketBay, postAbove: '16 ft' }
    expect(runNamed('wind-open-fence', tall, { confirmed: ['postAbove'] }).said).toContain('is one for an engineer')
  })

  it('never goes under 16 lb/ft² on the wood, and says when that governs', () => {
    const { shown, said } = runNamed('wind-open-fence', { ...picketBay, windSpeed: '80 mph' })
    expect(shown.windPressure).toBe('16 lb/ft²')
    expect(said).toContain('least pressure governs')
    expect(runNamed('wind-open-fence', picketBay).said).not.toContain('least pressure governs')
  })
})

describe('the wind on a solid fence', () => {
  it('has the printed coefficient in all 84 cells', () => {
    const wrong = solidCoefficients.filter(({ boards, run, printed }) => {
      const high = 10 * boards
      const given = {
        ...solidBay,
        postAbove: '10 ft',
        footGap: `${(10 - high).toFixed(6)} ft`,
        runLength: `${(run * high).toFixed(6)} ft`,
      }
      return Math.abs(stepOf('wind-solid-fence', given, 'roundedFactor', 'ratio') - printed) > 1e-9
    })
    expect(wrong).toEqual([])
  })

  it('is pushed over its middle only where the boards reach the ground', () => {
    // 0.55 × 72 = 39.6 in; 3 + 69/2 = 37.5 in
    expect(stepOf('wind-solid-fence', solidBay, 'forceOverMiddle', 'in')).toBeCloseTo(39.6, 9)
    expect(stepOf('wind-solid-fence', { ...solidBay, footGap: '3 in' }, 'forceHeight', 'in')).toBeCloseTo(37.5, 9)
  })

  it('takes the coefficient that an engineer gives for an end bay, and needs no length then', () => {
    // 16.4034 × 0.85 × 3.252 × 48 × 0.6 = 1305.8
    const { runLength: _, ...bay } = solidBay
    const { shown } = runNamed('wind-solid-fence', { ...bay, givenFactor: '3.252' })
    expect(shown.sideForce).toBe('1,306 lbf')
  })

  it('says that the ends get more, and gives no figure for them', () => {
    expect(runNamed('wind-solid-fence', solidBay).said).toContain('about two and a half times as much')
  })

  it('is no fence of 70 % or less', () => {
    expect(runNamed('wind-solid-fence', { ...solidBay, seenShare: '70 %' }).said).toContain('is an open one')
    expect(runNamed('wind-solid-fence', { ...solidBay, seenShare: '71 %' }).outcome.ok).toBe(true)
  })
})

describe('a force', () => {
  it('may be told in pounds or kilograms: each pushes with what it weighs', () => {
    const inEach = (givenForce: string) =>
      runNamed('post-strength', { sideForce: givenForce, forceHeight: '2 ft', postWidth: '3 1/2 in' }).shown.postStress
    expect(inEach('120 lb')).toBe(inEach('120 lbf'))
    // 54.431084 kg × 9.80665 m/s² = 533.786 N
    expect(inEach('54.4310844 kg')).toBe(inEach('533.7866 N'))
  })
})

describe('every check of strength', () => {
  const checks = [
    'wind-open-fence',
    'wind-solid-fence',
    'wind-from-pressure',
    'embedment-check',
    'post-strength',
    'rail-strength',
  ]

  it.each(checks)('%s carries the caution, and says that it is a check and no design', (name) => {
    const calc = calculationNamed(name)
    expect(calc?.cautions).toContain('structure')
    for (const example of calc?.examples ?? []) {
      const metric = /\b(mm|m|N|kPa|MPa)\b/.test(Object.values(example.given).join(' '))
      const { said } = runNamed(name, example.given as Inputs, { system: metric ? 'metric' : 'imperial' })
      expect(said).toMatch(/a check[^.]*, not a design/i)
      expect(said).toMatch(/engineer|building office/)
      expect(said).not.toMatch(/meets (the )?code|up to code|safe/)
    }
  })
})
