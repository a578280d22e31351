import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { numberIn, type Quantity } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

const inches = ({ outcome }: ReturnType<typeof runNamed>, name: string): number => {
  if (!outcome.ok) throw new Error('must be ok')
  return numberIn(outcome.values.get(name) as Quantity, 'in')
}

describe('bays of one width', () => {
  // 600 − (42 + 3 1/2) = 554 1/2; 5 × 96 = 480, rest 74 1/2; (74 1/2 + 96)/2 = 85 1/4
  it('a gate and a post beside it come off first', () => {
    const ran = runNamed('bay-patterns', { runLength: '50 ft', fixedBay: '8 ft', gates: '1', gateOpening: '42 in' })
    expect(ran.shown).toMatchObject({ wholeBays: '5 bays', oddBay: '74 1/2 in', endBays: '85 1/4 in' })
    expect(ran.said).toContain('gate may stand between any two bays')
  })

  it('a run that comes out even has no odd bay, and says so', () => {
    const ran = runNamed('bay-patterns', { runLength: '48 ft', fixedBay: '8 ft' })
    expect(ran.shown).toMatchObject({ wholeBays: '6 bays', oddBay: '0 in' })
    expect(ran.shown.endBays).toBeUndefined()
    expect(ran.said).toContain('nothing left over')
  })

  it('an odd bay that two posts fill is called what it is', () => {
    expect(runNamed('bay-patterns', { runLength: '48 ft 3 in', fixedBay: '8 ft' }).said).toContain(
      'no wider than a post',
    )
  })

  it('a closed loop and a run shorter than a bay are refused with what to do', () => {
    expect(runNamed('bay-patterns', { runLength: '48 ft', fixedBay: '8 ft', runEnds: 'loop' }).said).toContain(
      'each side',
    )
    expect(runNamed('bay-patterns', { runLength: '7 ft', fixedBay: '8 ft' }).said).toContain(
      'less than one bay of 8 ft',
    )
  })

  it('each of the three ways fills the run', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 4000 }), fc.integer({ min: 24, max: 99 }), (run, bay) => {
        const ran = runNamed('bay-patterns', { runLength: `${run} in`, fixedBay: `${bay} in` })
        const whole = Math.floor(run / bay)
        const odd = inches(ran, 'oddBay')
        expect(whole * bay + odd).toBeCloseTo(run, 9)
        if (odd === 0) return
        expect((whole - 1) * bay + 2 * inches(ran, 'endBays')).toBeCloseTo(run, 9)
        expect((whole + 1) * inches(ran, 'evenBay')).toBeCloseTo(run, 9)
        expect(inches(ran, 'evenBay')).toBeLessThan(bay)
      }),
      { numRuns: 200 },
    )
  })
})
