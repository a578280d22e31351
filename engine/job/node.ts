// This file is about what a plan of a whole fence is: parts worked at places, and where each value came from.
import type { Solver } from '../cutting/solver.ts'
import type { Outcome } from '../outcome.ts'
import type { Value } from '../quantities/quantity.ts'
import type { Fence } from './fence.ts'
import type { Decision, Job } from './job.ts'
import type { Post, RunLaid, Stretch } from './laid-out.ts'
import type { Part } from './parts.ts'

/** Where a value came from: told, worked by a part, standing in the fence as it is laid out, or taken as usual. */
export type Origin =
  | { readonly from: 'told'; readonly decision: Decision }
  | { readonly from: 'worked'; readonly word: string; readonly node: Node }
  | { readonly from: 'fence'; readonly nodes: readonly Node[] }

/** One part as it was worked at one place. */
export interface Node {
  readonly part: Part
  readonly at: string
  readonly places: readonly string[]
  readonly outcome: Outcome
  /** What each need came from; those taken as usual are left out. */
  readonly origins: ReadonlyMap<string, Origin>
}

/** Outcomes by what went into them. Handed from plan to plan, so that a change works only what hangs on it. */
export interface Memo {
  readonly outcomes: Map<string, Outcome>
  /** What had to be worked, in order. */
  readonly ran: string[]
  /** The solver that is handed in, for what can only be proved with one. */
  readonly solver?: Solver
}
/** An empty memo, with the solver that plans may use. */
export const newMemo = (solver?: Solver): Memo => ({ outcomes: new Map(), ran: [], ...(solver ? { solver } : {}) })

export interface Plan {
  readonly job: Job
  readonly fence: Fence
  /** The part that gives a word at that very place, worked; nothing where none does. */
  node(word: string, at: string): Node | undefined
  /** The parts that answer for a word: at the place, or at the places within it. What they lack is among their problems. */
  answer(word: string, at: string): Node[]
  /** The value of a word as a part gives it, at the place or above. */
  worked(word: string, at: string): { readonly value: Value; readonly node: Node } | undefined
  /** Runs that could be set out, in order. */
  readonly runs: readonly RunLaid[]
  /** Empty until every run is set out. */
  readonly posts: readonly Post[]
  readonly stretches: readonly Stretch[]
}
