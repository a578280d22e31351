// This file is about the solver that is handed to the engine: HiGHS, compiled to WebAssembly, behind the engine's own interface.
// It is told to stop by nodes and never by the clock, so that a plan is the same on every machine.
import type { Highs, ModelData } from 'highs'
import type { Model, Solved, Solver } from '../../engine/index.ts'

let loading: Promise<Solver> | undefined

/** The solver, loaded on first use and kept. Where it cannot be loaded, nothing: plans are then made without it, and say so. */
export async function cutSolver(): Promise<Solver | undefined> {
  loading ??= import('highs').then(({ default: load }) => load()).then(solverWith)
  try {
    return await loading
  } catch {
    loading = undefined
    return undefined
  }
}

const nothing = { status: 'failed' as const, values: [], duals: [], bound: Number.NEGATIVE_INFINITY, nodes: 0 }

function solverWith(highs: Highs): Solver {
  let isBroken = false
  return {
    name: `HiGHS ${highs.version.major}.${highs.version.minor}.${highs.version.patch}`,
    solve(model) {
      if (isBroken) return nothing
      try {
        return solve(highs, model)
      } catch {
        // A fault inside may have left its memory in disorder: this one is asked nothing more, and the next plan gets a fresh one.
        isBroken = true
        loading = undefined
        return nothing
      }
    },
  }
}

function solve(highs: Highs, model: Model): Solved {
  return highs.withModel(dataOf(highs, model), (it) => {
    it.options.set({ output_flag: false, random_seed: 0, ...(model.whole ? searchOptions(model) : lineOptions) })
    if (model.start) it.setSolution({ colValue: [...model.start] })
    it.run()
    const status = it.getModelStatus()
    const { modelStatus } = highs.constants
    const nodes = model.whole ? Number(it.info.get('mip_node_count')) : 0
    if (status === modelStatus.infeasible)
      return { ...nothing, status: 'none' as const, bound: Number.POSITIVE_INFINITY, nodes }
    const isSolved = status === modelStatus.optimal
    if (!isSolved && status !== modelStatus.solutionLimit) return { ...nothing, nodes }
    const { colValue, rowDual } = it.getSolution()
    const values = [...colValue]
    return {
      status: isSolved ? ('solved' as const) : ('stopped' as const),
      values: values.length === model.costs.length && isWithin(model, values) ? values : [],
      duals: model.whole ? [] : [...rowDual],
      bound: model.whole ? Number(it.info.get('mip_dual_bound')) : it.getObjectiveValue(),
      nodes,
    }
  })
}

// The costs are whole numbers, so half a one between the best and the bound is no gap.
const searchOptions = (model: Model) => ({
  mip_max_nodes: model.nodeLimit,
  mip_rel_gap: 0,
  mip_abs_gap: 0.5,
})
const lineOptions = { solver: 'simplex' }

function dataOf(highs: Highs, { costs, entries, most, rows, whole }: Model): ModelData {
  const starts = [0]
  for (const it of entries) starts.push((starts.at(-1) as number) + it.length)
  const { integer } = highs.constants.variableType
  return {
    numCols: costs.length,
    numRows: rows.length,
    colCost: [...costs],
    colLower: costs.map(() => 0),
    colUpper: costs.map((_, i) => most?.[i] ?? highs.infinity),
    rowLower: rows.map((it) => it.least ?? -highs.infinity),
    rowUpper: rows.map((it) => it.most ?? highs.infinity),
    matrix: {
      format: 'csc',
      numRows: rows.length,
      numCols: costs.length,
      starts,
      indices: entries.flatMap((it) => it.map(([row]) => row)),
      values: entries.flatMap((it) => it.map(([, much]) => much)),
    },
    ...(whole ? { integrality: costs.map(() => integer) } : {}),
  }
}

/** Whether these values keep every row: a search that was stopped may hold none that do. */
function isWithin({ entries, rows }: Model, values: readonly number[]): boolean {
  const sums = rows.map(() => 0)
  for (const [i, it] of entries.entries())
    for (const [row, much] of it) sums[row] = (sums[row] as number) + much * (values[i] as number)
  const slack = 1e-5
  return rows.every(
    ({ least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY }, row) =>
      (sums[row] as number) >= least - slack && (sums[row] as number) <= most + slack,
  )
}
