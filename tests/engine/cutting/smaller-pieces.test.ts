// Smaller pieces out of what is left.
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { planCuts } from '../../../engine/cutting/plan.ts'
import { offered } from '../../../engine/cutting/smaller-pieces.ts'
import { plainProblem } from './published.ts'

const problem = { ...plainProblem(96, [[80, 2]]), kerf: new Fraction(1, 8) }
const planned = planCuts(problem, undefined)
if (!planned.ok) throw new Error(planned.why)
const offer = (pieces: readonly (readonly [length: number, count: number])[]) =>
  offered(
    problem,
    planned.plan,
    pieces.map(([length, count]) => ({ length: new Fraction(length), count })),
  )

// 96 − 80 − 1/8 = 15 7/8 left, twice. 2 × 5.5 + 1/8 = 11 1/8 fits; a third needs 16 3/4.
describe('two offcuts of 15 7/8 in', () => {
  it('give four caps of 5 1/2 in, two from each', () => {
    expect(offer([[5.5, 4]])).toMatchObject({ fit: 4, wanted: 4, from: [{ times: 2 }] })
  })

  it('give four of five caps', () => expect(offer([[5.5, 5]])).toMatchObject({ fit: 4, wanted: 5 }))

  it('give one flush block of 15 7/8 in each, and none of 16 in', () => {
    expect(offer([[15.875, 2]]).fit).toBe(2)
    expect(offer([[16, 2]])).toEqual({ fit: 0, wanted: 2, from: [] })
  })

  // 4 × 3.5 + 3/8 = 14 3/8: four to an offcut; the long block goes without.
  it('give the shortest first where not all go in', () => {
    const { fit, from } = offer([
      [3.5, 8],
      [15, 1],
    ])
    expect(fit).toBe(8)
    expect(from.flatMap((it) => it.pieces).every((it) => it.equals(3.5))).toBe(true)
  })
})
