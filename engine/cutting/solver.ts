// This file is about what the engine asks of a solver of linear and whole-number models. The engine holds none itself:
// one is handed in from outside, and must give the same answer on every machine: no clock, no chance, one thread.

/** Find the cheapest values, none below nought, that keep every row. */
export interface Model {
  readonly costs: readonly number[]
  /** For each value, the rows it counts in, and how much. */
  readonly entries: readonly (readonly (readonly [row: number, much: number])[])[]
  /** Values of which no more than so many may be taken; without it any number may. */
  readonly most?: readonly number[]
  readonly rows: readonly { readonly least?: number; readonly most?: number }[]
  /** Whole numbers only. */
  readonly whole: boolean
  /** Whole numbers known to keep every row, to begin from. */
  readonly start?: readonly number[]
  /** A whole-number search stops after so many nodes, with the best it has found. */
  readonly nodeLimit: number
}

/**
 * `solved`: this is the best there is. `stopped`: the limit came first; `values` may be empty. `none`: nothing keeps every row.
 * `failed`: the solver gave up, and nothing follows from it.
 */
export interface Solved {
  readonly status: 'solved' | 'stopped' | 'none' | 'failed'
  readonly values: readonly number[]
  /** What one more of each row would cost; for models that are not whole. */
  readonly duals: readonly number[]
  /** No values cost less than this. */
  readonly bound: number
  readonly nodes: number
}

/** What solves linear and whole-number models. The engine holds none: whoever runs it hands one in. */
export interface Solver {
  /** What it is and which version, since another may search another way. */
  readonly name: string
  solve(model: Model): Solved
}
