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

type Point = readonly [x: number, y: number]
/** Where two circles meet: about one point with one reach, about another with another. */
function meeting([px, py]: Point, near: number, [qx, qy]: Point, far: number): Point[] {
  const apart = Math.hypot(qx - px, qy - py)
  const along = (near ** 2 - far ** 2 + apart ** 2) / (2 * apart)
  const beside = Math.sqrt(Math.max(0, near ** 2 - along ** 2))
  const [ux, uy] = [(qx - px) / apart, (qy - py) / apart]
  return [1, -1].map((side) => [px + along * ux - side * beside * uy, py + along * uy + side * beside * ux])
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

  // By coordinates: corner at (0, 0), first mark at (a, 0). The far stake stands where the taped lengths meet, and is moved as it is told.
  it('the stake moved by that much, its distance from the corner kept, stands square', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: -80, max: 80 }),
        (a, b, off) => {
          const across = Number((Math.hypot(a, b) * (1 + off / 1000)).toFixed(6))
          // Three lengths that make no triangle are refused, and tested for themselves.
          fc.pre(across > Math.abs(a - b) && across < a + b)
          const ran = runNamed('square-corner', { legs: [`${a} ft`, `${b} ft`], measuredDiagonal: `${across} ft` })
          const [stake] = meeting([0, 0], b, [a, 0], across)
          const places = meeting([0, 0], b, stake as Point, figure(ran, 'moveStake', 'ft'))
          // Moved the right way it comes nearer to square: an open stake along the first side, a pinched one against it.
          const alongFirst = [...places].sort((one, other) => other[0] - one[0])
          const moved = ran.said.includes('stands open') ? alongFirst[0] : alongFirst.at(-1)
          // A tape shows nothing under half of its sixteenth.
          const within = figure(ran, 'moveStake', 'ft') === 0 ? 1 / 32 / 12 : 1e-6
          const taped = moved ? Math.hypot(moved[0] - a, moved[1]) : across
          expect(Math.abs(taped - Math.hypot(a, b))).toBeLessThanOrEqual(within + 1e-9)
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

describe('a square corner by the tape', () => {
  // √(10² + 10²) = 14.1421 ft = 14 ft 1.7056 in: the nearest sixteenth is 14 ft 1 11/16 in, 0.018 in less
  it('the nearest mark on the tape is square: nothing to move', () => {
    const legs = ['10 ft', '10 ft']
    const near = runNamed('square-corner', { legs, measuredDiagonal: '14 ft 1 11/16 in' })
    expect(near.shown).toMatchObject({ cornerAngle: '90°', outOfSquare: '0°', moveStake: '0 in' })
    expect(near.said).toContain('what a square corner has, as near as a tape with marks of 1/16 in shows')
    expect(near.said).not.toContain('pinched')
    // The next mark down is 0.081 in off, and the tape shows that.
    expect(runNamed('square-corner', { legs, measuredDiagonal: '14 ft 1 5/8 in' }).said).toContain('pinched')
    expect(runNamed('square-corner', { legs, measuredDiagonal: '14 ft 1 3/4 in' }).said).toContain('open')
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

  it('a diagonal that closes no triangle is refused by its own name', () => {
    const sides = ['30 m', '40 m', '30 m', '40 m']
    expect(runNamed('yard-closure', { sides, yardDiagonal: '80 m' }, { system: 'metric' }).said).toContain(
      'impossible yardDiagonal: A diagonal of 80 m does not close a triangle with sides of 30 m and 40 m',
    )
  })

  // 10, 10 and 16 ft: 8 × 6 = 48 ft²; 20, 20 and 16 ft: 8 × √336 = 146.64; a yard that holds the diagonal has both, a dart the difference.
  it('four sides with a diagonal are taken with the diagonal inside, and it says so', () => {
    const { shown, said } = runNamed('yard-closure', {
      sides: ['10 ft', '10 ft', '20 ft', '20 ft'],
      yardDiagonal: '16 ft',
    })
    expect(shown.yardArea).toBe('194.6 ft²')
    expect(said).toContain('I took the diagonal as running inside the yard')
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
