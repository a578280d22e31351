// Measuring the ground: laws and refusals. The figures against the outside are in tests/evidence/checks/survey.ts.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

const figure = (ran: ReturnType<typeof runNamed>, word: string, unit: string): number => {
  const value = ran.outcome.ok ? ran.outcome.values.get(word) : undefined
  if (!isQuantity(value)) throw new Error(ran.said)
  return numberIn(value, unit)
}

describe('a corner', () => {
  it('a square one needs no moving, and says so', () => {
    const ran = runNamed('square-corner', { legs: ['9 ft', '12 ft'], measuredDiagonal: '15 ft' })
    expect(ran.shown).toMatchObject({ cornerAngle: '90°', moveStake: '0 in' })
    expect(ran.said).toContain('which is what a square corner has')
  })

  it('an open one is moved in, a pinched one out', () => {
    expect(runNamed('square-corner', { legs: ['12 ft', '16 ft'], measuredDiagonal: '20 ft 3 in' }).said).toMatch(
      /open.*in toward the first side by 5/s,
    )
    expect(runNamed('square-corner', { legs: ['12 ft', '16 ft'], measuredDiagonal: '19 ft 9 in' }).said).toMatch(
      /pinched.*out from the first side by/s,
    )
  })

  it('the stake moved by that much makes the corner square', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: -80, max: 80 }),
        (a, b, off) => {
          const across = Math.hypot(a, b) * (1 + off / 1000)
          const ran = runNamed('square-corner', {
            legs: [`${a} ft`, `${b} ft`],
            measuredDiagonal: `${across.toFixed(6)} ft`,
          })
          const angle = figure(ran, 'cornerAngle', 'deg')
          const chord = 2 * b * Math.sin((Math.abs(angle - 90) * Math.PI) / 360)
          expect(figure(ran, 'moveStake', 'ft')).toBeCloseTo(chord, 6)
        },
      ),
    )
  })

  it('the biggest 3-4-5 fits both sides', () => {
    expect(runNamed('square-corner', { legs: ['20 ft', '13 ft'] }).said).toContain(
      '12 ft one way, 16 ft the other, 20 ft straight across',
    )
  })

  it('three lengths that make no triangle are refused with all three', () => {
    expect(runNamed('square-corner', { legs: ['3 ft', '4 ft'], measuredDiagonal: '8 ft' }).said).toContain(
      'Sides of 3 ft and 4 ft cannot have 8 ft across',
    )
  })

  it('one side alone is no corner', () => {
    expect(runNamed('square-corner', { legs: ['3 ft'] }).said).toContain('A corner has two sides, and I have 1 side')
  })
})

describe('a yard', () => {
  it('begun at another corner it has the same area', () => {
    const area = (order: readonly string[]) =>
      figure(runNamed('yard-closure', { sides: order, corners: ['90 deg', '90 deg', '90 deg'] }), 'yardArea', 'ft2')
    expect(area(['50 ft', '40 ft', '50 ft', '40 ft'])).toBe(area(['40 ft', '50 ft', '40 ft', '50 ft']))
  })

  it('four sides alone settle no area: a diagonal is asked for', () => {
    const ran = runNamed('yard-closure', { sides: ['60 ft', '40 ft', '60 ft', '40 ft'] })
    expect(ran.outcome.ok).toBe(false)
    expect(ran.said).toContain('missing yardDiagonal')
  })

  it('one that crosses itself is refused', () => {
    expect(
      runNamed('yard-closure', {
        sides: ['60 ft', '40 ft', '60 ft', '40 ft', '90 ft'],
        corners: ['30 deg', '30 deg', '30 deg', '30 deg'],
      }).said,
    ).toContain('crosses itself')
  })

  it('as many angles as corners, or it says how many it has', () => {
    expect(
      runNamed('yard-closure', { sides: ['60 ft', '40 ft', '60 ft', '40 ft'], corners: ['90 deg'] }).said,
    ).toContain('4 sides have as many corners, and I have 1 angle')
  })

  it('sides that make no triangle are refused', () => {
    expect(runNamed('yard-closure', { sides: ['10 ft', '20 ft', '40 ft'] }).said).toContain('make no triangle')
  })
})

describe('lengths and slopes', () => {
  it('3.25 ft on a plat is 3 ft 3 in on the tape', () => {
    expect(runNamed('tenths', { platLength: '3.25 ft' }).shown).toMatchObject({ onTape: '3 ft 3 in', tapeOff: '0 in' })
  })

  it('a rounded length is never off by more than half a sixteenth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500_000 }), (hundredths) => {
        expect(
          Math.abs(figure(runNamed('tenths', { platLength: `${hundredths / 100} ft` }), 'tapeOff', 'in')),
        ).toBeLessThanOrEqual(1 / 32)
      }),
    )
  })

  it('readings in another order fall the other way', () => {
    const given = (readings: readonly string[]) =>
      figure(runNamed('slope-from-levels', { levelReadings: readings, readingsApart: '8 ft' }), 'totalFall', 'in')
    expect(given(['4 in', '9 in', '15 in'])).toBe(-given(['15 in', '9 in', '4 in']))
  })

  it('one reading shows no fall', () => {
    expect(runNamed('slope-from-levels', { levelReadings: ['4 in'] }).said).toContain('One reading shows no fall')
  })
})
