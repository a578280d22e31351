// This file is about the holes that posts go into: how much ground they take, round or square, and whether a post goes in.
//
//    ╭─────╮
//    │┌───┐│     a square post goes into a round hole corner to corner: its diagonal is √2 of its width
//    │└───┘│
//    ╰─────╯
import type { Tools } from './calculation.ts'
import { compare, exact, times } from './quantities/amount.ts'
import type { Quantity } from './quantities/quantity.ts'
import { show } from './quantities/show.ts'

/** The hole seen from above. Only the line of its own shape is worked; what it gives is `holeSection` to the lines that follow. */
export const sectionLines = {
  roundHole: ['pi * holeDiameter ^ 2 / 4', 'a round hole, seen from above'],
  squareHole: ['holeDiameter ^ 2', 'a square hole, seen from above'],
} as const

/** Works the section of the holes by their shape, and puts it as `holeSection`, an area. */
export function workSection(
  shape: string,
  { line, rows, put, remark }: Pick<Tools<never>, 'line' | 'rows' | 'put' | 'remark'>,
): void {
  const worked = shape === 'square' ? 'squareHole' : 'roundHole'
  const one = line(worked)
  const all = rows(worked)
  put('holeSection', all.length > 1 ? all : one)
  if (shape === 'square')
    remark('The holes are square, as you said: each is over a quarter bigger than a round one of the same width.')
}

/** Refuses a square post that does not go into the hole: by its diagonal into a round one, by its width into a square one. */
export function refuseUnfitPost(
  postWidth: Quantity,
  holeDiameter: Quantity,
  shape: string,
  refuse: (word: string, message: string) => never,
): void {
  const square = shape === 'square'
  const across = times(exact(square ? 1 : 2), times(postWidth.amount, postWidth.amount))
  if (compare(across, times(holeDiameter.amount, holeDiameter.amount)) !== -1)
    refuse(
      'holeDiameter',
      square
        ? `A ${show(postWidth)} post does not fit in a square hole of ${show(holeDiameter)}. Check both measurements.`
        : `A ${show(postWidth)} post does not fit in a ${show(holeDiameter)} hole, corner to corner. Check both measurements.`,
    )
}
