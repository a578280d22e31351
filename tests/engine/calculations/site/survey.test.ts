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

  // Walked by sines and cosines; two sides cross where each meets the line of the other between its own ends.
  it('crosses itself where two of its sides meet between their ends, and nowhere else', () => {
    const found = { crossed: 0, clear: 0 }
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 20, max: 90 }), { minLength: 5, maxLength: 6 }),
        fc.array(fc.integer({ min: 30, max: 250 }), { minLength: 5, maxLength: 5 }),
        (sides, turns) => {
          const angles = turns.slice(0, sides.length - 1)
          let heading = 0
          type At = readonly [number, number]
          const at: At[] = [[0, 0]]
          for (const [i, side] of sides.slice(0, -1).entries()) {
            const [x, y] = at.at(-1) as [number, number]
            at.push([x + side * Math.cos(heading), y + side * Math.sin(heading)])
            heading += Math.PI * (1 - (angles[i] as number) / 180)
          }
          type Ends = readonly [At, At, At, At]
          const along = (i: number, j: number): readonly [number, number] => {
            const [p, q, r, s] = [at[i], at[(i + 1) % at.length], at[j], at[(j + 1) % at.length]] as unknown as Ends
            const [a, b, c, d] = [q[0] - p[0], q[1] - p[1], s[0] - r[0], s[1] - r[1]]
            const [u, v, by] = [r[0] - p[0], r[1] - p[1], a * d - b * c]
            return [(u * d - v * c) / by, (u * b - v * a) / by]
          }
          const all = at.flatMap((_, i) =>
            at.flatMap((__, j) => (j > i + 1 && j - i < at.length - 1 ? [along(i, j)] : [])),
          )
          fc.pre(all.flat().every((it) => Math.abs(it) > 1e-4 && Math.abs(it - 1) > 1e-4))
          const isCrossed = all.some((each) => each.every((it) => it > 0 && it < 1))
          found[isCrossed ? 'crossed' : 'clear']++
          const given = { sides: sides.map((it) => `${it} ft`), corners: angles.map((it) => `${it} deg`) }
          const { said } = runNamed('yard-closure', given, { confirmed: Object.keys(given) })
          expect(said.includes('crosses itself')).toBe(isCrossed)
        },
      ),
      { numRuns: 150, seed: 12 },
    )
    expect(found.crossed).toBeGreaterThan(0)
    expect(found.clear).toBeGreaterThan(0)
  })

  // One more foot on a side of 60: the last side ends a foot off, one in 201.
  it('closes, or says by how much it does not, in the units of the job', () => {
    const corners = ['90 deg', '90 deg', '90 deg', '90 deg']
    const square = runNamed('yard-closure', { sides: ['60 ft', '40 ft', '60 ft', '40 ft'], corners })
    expect(square.shown).toMatchObject({ misclosure: '0 in', yardArea: '2,400 ft²' })
    expect(square.shown.closeRatio).toBeUndefined()
    expect(square.said).toContain('The sides close')
    const off = runNamed('yard-closure', { sides: ['61 ft', '40 ft', '60 ft', '40 ft'], corners })
    expect(off.shown).toMatchObject({ misclosure: '12 in', closeRatio: '201' })
    const metric = runNamed('yard-closure', { sides: ['20 m', '10 m', '20 m', '10 m'], corners }, { system: 'metric' })
    expect(metric.shown).toMatchObject({ misclosure: '0 mm', yardArea: '200 m²', yardPerimeter: '60 m' })
    const rows = metric.outcome.ok ? metric.outcome.tables[0]?.rows : undefined
    expect(rows).toHaveLength(4)
    expect(rows?.[2]).toEqual([3, '20 m', '10 m'])
  })

  it('as many angles as corners or one fewer: of all of them it knows what they must come to', () => {
    const sides = ['60 ft', '40 ft', '60 ft', '40 ft']
    const by = (corners: readonly string[]) => runNamed('yard-closure', { sides, corners }).said
    expect(by(['90 deg', '90 deg', '90 deg', '95 deg'])).toContain('add up to 360°, and yours add up to 365°')
    expect(by(['90 deg', '90 deg', '90 deg'])).not.toContain('add up to')
    expect(by(['90 deg', '90 deg'])).toContain('I have 2 angles')
  })

  // A triangle of 3, 4 and 5 is half of 3 by 4; one of 30, 40 and 70 is flat.
  it('of three sides has the area of its triangle, in the units of the job', () => {
    const area = (sides: readonly string[], system: 'imperial' | 'metric') =>
      runNamed('yard-closure', { sides }, { system })
    expect(area(['30 ft', '40 ft', '50 ft'], 'imperial').shown.yardArea).toBe('600 ft²')
    expect(area(['30 m', '40 m', '50 m'], 'metric').shown.yardArea).toBe('600 m²')
    expect(area(['50 m', '30 m', '40 m'], 'metric').shown.yardArea).toBe('600 m²')
    expect(area(['30 ft', '40 ft', '70 ft'], 'imperial').said).toContain('make no triangle')
    expect(area(['70 ft', '30 ft', '40 ft'], 'imperial').said).toContain('make no triangle')
  })

  it('has three sides at least, and forty at most', () => {
    expect(runNamed('yard-closure', { sides: ['30 ft', '40 ft'] }).said).toContain('I have 2 sides')
    const many = (count: number) =>
      runNamed('yard-closure', { sides: Array.from({ length: count }, () => '20 ft') }).said
    expect(many(41)).toContain('at most 40 sides')
    expect(many(40)).not.toContain('at most')
    expect(many(5)).toContain('missing corners')
    expect(many(4)).toContain('missing yardDiagonal')
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
