// This file is about what lets a gate down: a leaf pushed out of square, a post that leans, hinges that give. One line each.
//
//   racked leaf: the diagonals differ      leaning post: the leaf tips with it      hinges: the gap is wider at the top than below

export const sagLines = {
  latchDrop: [
    '(tieDiagonal ^ 2 - strutDiagonal ^ 2) / (4 * leafHeight)',
    'the two diagonals differ only because the leaf leans',
  ],
  leanAngle: ['atan(outOfPlumb / plumbOver)', 'how far out, over how high'],
  latchMove: ['leafWidth * sin(leanAngle)', 'the leaf tips by the same angle as its post'],
  hingeDrop: [
    'leafWidth * (hingeGapTop - hingeGapBottom) / hingeSpacing',
    'the leaf turns on its hinges: as far out at the top as it is let down at the latch, by the arms',
  ],
} as const
