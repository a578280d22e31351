// The solver behind the engine's interface: what it says of models small enough to see through.
import { describe, expect, it } from 'vitest'
import type { Model } from '../../../engine/cutting/solver.ts'
import { runCalculation } from '../../../src/direct.ts'
import { cutSolver } from '../../../src/solver/highs.ts'

const loaded = await cutSolver()
if (!loaded) throw new Error('the solver could not be loaded')
const solver = loaded

/** 3 x + 2 y least, where x + y is 4 or more and x is 1 or more: x = 1, y = 3 come to 9. */
const small: Model = {
  costs: [3, 2],
  entries: [
    [
      [0, 1],
      [1, 1],
    ],
    [[0, 1]],
  ],
  rows: [{ least: 4 }, { least: 1 }],
  whole: false,
  nodeLimit: 0,
}

describe('the solver', () => {
  it('is loaded once, and says which version it is', async () => {
    expect(await cutSolver()).toBe(solver)
    expect(solver.name).toMatch(/^HiGHS \d+\.\d+\.\d+$/)
  })

  // One more of the first row costs 2 (a y), one more of the second 1 (an x for a y).
  it('gives values, the bound, and what one more of each row costs', () => {
    const { status, values, duals, bound } = solver.solve(small)
    expect(status).toBe('solved')
    expect(values.map((it) => Math.round(it * 1e6) / 1e6)).toEqual([1, 3])
    expect(duals.map((it) => Math.round(it * 1e6) / 1e6)).toEqual([2, 1])
    expect(bound).toBeCloseTo(9, 9)
  })

  // 2 x ≥ 3 in whole numbers: x = 2, where 1 1/2 would do.
  it('keeps to whole numbers where they are asked for', () => {
    const whole: Model = { costs: [1], entries: [[[0, 2]]], rows: [{ least: 3 }], whole: true, nodeLimit: 10 }
    expect(solver.solve(whole).values.map(Math.round)).toEqual([2])
    expect(solver.solve({ ...whole, whole: false }).values[0]).toBeCloseTo(1.5, 9)
  })

  it('says where nothing keeps every row', () => {
    expect(solver.solve({ ...small, rows: [{ least: 4 }, { least: 1, most: 0 }] }).status).not.toBe('solved')
    expect(solver.solve({ ...small, rows: [{ least: 4, most: 5 }, { least: 6 }] }).status).toBe('none')
  })

  it('gives up on what is no model, and works the next', async () => {
    expect(solver.solve({ ...small, entries: [[[7, 1]], [[0, 1]]] })).toMatchObject({ status: 'failed', values: [] })
    expect((await cutSolver())?.solve(small).status).toBe('solved')
  })

  it('serves a calculation that is run by itself', async () => {
    const call = await runCalculation('cut-plan', {
      pieceLengths: ['45 in', '30 in', '22 in'],
      pieceCounts: [12, 8, 20],
      stockLengths: ['8 ft', '10 ft'],
      stockPrices: ['$6.80', '$9.20'],
    })
    expect(call?.results.find((it) => it.word === 'cutCost')?.text).toBe('$93.20')
  })
})
