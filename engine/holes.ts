// This file is about whether a post goes into its hole.
//
//    ╭─────╮
//    │┌───┐│     a square post goes into a round hole corner to corner: its diagonal is √2 of its width
//    │└───┘│
//    ╰─────╯
import { compare, exact, times } from './quantities/amount.ts'
import type { Quantity } from './quantities/quantity.ts'
import { show } from './quantities/show.ts'

/** Refuses a square post whose diagonal is no less than the hole is wide. */
export function refuseUnfitPost(
  postWidth: Quantity,
  holeDiameter: Quantity,
  refuse: (word: string, message: string) => never,
): void {
  const diagonalSquared = times(exact(2), times(postWidth.amount, postWidth.amount))
  if (compare(diagonalSquared, times(holeDiameter.amount, holeDiameter.amount)) !== -1)
    refuse(
      'holeDiameter',
      `A ${show(postWidth)} post does not fit in a ${show(holeDiameter)} hole, corner to corner. Check both measurements.`,
    )
}
