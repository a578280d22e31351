// This file is about the force coefficients of solid walls as a standard prints them: cells to hold the published fit against. For the tests only.
// ASCE 7-16, figure 29.3-1, cases A and B, as carried in CIRSOC 102-2025, figure 4.4-1; three transcriptions agree.

const runs = [0.05, 0.1, 0.2, 0.5, 1, 2, 4, 5, 10, 20, 30, 45] as const
const rows: readonly (readonly [boards: number, printed: readonly number[]])[] = [
  [1, [1.8, 1.7, 1.65, 1.55, 1.45, 1.4, 1.35, 1.35, 1.3, 1.3, 1.3, 1.3]],
  [0.9, [1.85, 1.75, 1.7, 1.6, 1.55, 1.5, 1.45, 1.45, 1.4, 1.4, 1.4, 1.4]],
  [0.7, [1.9, 1.85, 1.75, 1.7, 1.65, 1.6, 1.6, 1.55, 1.55, 1.55, 1.55, 1.55]],
  [0.5, [1.95, 1.85, 1.8, 1.75, 1.75, 1.7, 1.7, 1.7, 1.7, 1.7, 1.7, 1.75]],
  [0.3, [1.95, 1.9, 1.85, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.85, 1.85, 1.85]],
  [0.2, [1.95, 1.9, 1.85, 1.8, 1.8, 1.8, 1.8, 1.8, 1.85, 1.9, 1.9, 1.95]],
  [0.16, [1.95, 1.9, 1.85, 1.85, 1.8, 1.8, 1.85, 1.85, 1.85, 1.9, 1.9, 1.95]],
]

/** Height of the boards over that of the wall, length over height of the boards, and the coefficient printed. */
export const solidCoefficients = rows.flatMap(([boards, printed]) =>
  printed.map((coefficient, i) => ({ boards, run: runs[i] as number, printed: coefficient })),
)
