// This file is about holding a figure back: what was worked waits, and says why, and asks.
import type { Problem, Worked } from '../engine/index.ts'

/** The same with that problem in place of its figures; what has none is as it was. */
export const heldBack = (worked: Worked, problem: Problem): Worked =>
  worked.outcome.ok
    ? { ...worked, outcome: { ok: false, given: worked.outcome.given, problems: [problem], cited: [] } }
    : worked
