// This file is about published cutting problems, as their authors print them, and the three small ones of our reference book.
import Fraction from 'fraction.js'
import type { CutProblem } from '../../../engine/cutting/problem.ts'

/** One stock, no saw cut, no price: the plain problem of the literature. */
export const plainProblem = (
  stock: number,
  pieces: readonly (readonly [length: number, count: number])[],
): CutProblem => ({
  pieces: pieces.map(([length, count]) => ({ length: new Fraction(length), count })),
  stocks: [{ length: new Fraction(stock) }],
  kerf: new Fraction(0),
  endTrim: new Fraction(0),
  leastOffcut: new Fraction(0),
})

/**
 * Falkenauer_u120_00: 120 pieces from sticks of 150; 48 sticks are the fewest (E. Falkenauer, 1996, named from memory).
 * From github.com/rafaelmartinelli/BPPLib.jl, commit 2b30a398, test/data/bpp/Falkenauer_u120_00.txt, and its Bounds.txt; licence MIT.
 */
export const u120 = plainProblem(150, [
  [98, 3],
  [96, 2],
  [94, 1],
  [93, 2],
  [92, 1],
  [91, 2],
  [90, 1],
  [87, 1],
  [86, 1],
  [85, 2],
  [84, 5],
  [83, 2],
  [82, 2],
  [81, 1],
  [80, 3],
  [79, 2],
  [78, 4],
  [76, 1],
  [74, 2],
  [73, 4],
  [72, 1],
  [71, 1],
  [70, 3],
  [69, 3],
  [67, 1],
  [66, 1],
  [64, 1],
  [62, 2],
  [60, 2],
  [59, 1],
  [58, 3],
  [57, 4],
  [55, 3],
  [50, 1],
  [49, 3],
  [47, 1],
  [46, 2],
  [45, 2],
  [44, 2],
  [43, 4],
  [42, 5],
  [41, 3],
  [39, 2],
  [38, 3],
  [37, 1],
  [36, 3],
  [35, 1],
  [33, 3],
  [32, 2],
  [30, 3],
  [29, 1],
  [28, 1],
  [27, 2],
  [26, 1],
  [25, 2],
  [24, 1],
  [23, 2],
  [20, 1],
])

/** Without repeats, so that a reader can try them with a pencil; the fewest sticks of 96 by going through all. */
export const byHand = [
  {
    problem: plainProblem(
      96,
      [45, 42, 36, 27, 21, 14].map((it) => [it, 1]),
    ),
    fewest: 2,
    firstFit: 3,
  },
  {
    problem: plainProblem(
      96,
      [51, 50, 39, 38, 30, 21, 19, 14, 13].map((it) => [it, 1]),
    ),
    fewest: 3,
    firstFit: 4,
  },
  {
    problem: plainProblem(
      96,
      [55, 52, 44, 39, 38, 31, 28].map((it) => [it, 1]),
    ),
    fewest: 4,
    firstFit: 4,
  },
] as const
