// Four corners at once: a rectangle is square when its two diagonals are alike.
//
//   ┌────────────┐          push the far side along by x:
//   │╲          ╱│          long² = (side + x)² + depth², short² = (side − x)² + depth²
//   │  ╲      ╱  │          so long² − short² = 4 × side × x, whatever the depth is
//   └────────────┘
import { calculation } from '../../calculation.ts'
import { equal, less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { diagonals, diagonalsApart, pushCorner, pushedSide } from '../../words/survey.ts'

export const rectangleDiagonals = calculation({
  name: 'rectangle-diagonals',
  title: 'Four corners by their two diagonals',
  answers: 'Whether a rectangle is square by its two diagonals, and how far to push the far side along to make it so.',
  needs: { diagonals, pushedSide },
  onlyFor: { pushedSide: ['pushCorner'] },
  gives: { diagonalsApart, pushCorner },
  headlines: ['diagonalsApart', 'pushCorner'],
  together: { diagonalsApart: ['diagonalsApart', 'pushCorner'], pushCorner: ['pushCorner', 'diagonalsApart'] },
  locals: { diagonalOne: 'length', diagonalTwo: 'length' },
  called: ['both diagonals', 'two diagonals', 'diagonals are', 'one diagonal', 'other diagonal'],
  lines: {
    diagonalsApart: ['abs(diagonalOne - diagonalTwo)', 'alike, and the corners are square'],
    pushCorner: [
      'abs(diagonalOne ^ 2 - diagonalTwo ^ 2) / (4 * pushedSide)',
      'both far corners together, along their side',
    ],
  },
  work({ pushedSide }, { line, has, rows, put, refuse, remark }) {
    const [diagonalOne, diagonalTwo, more] = rows('diagonals')
    if (!diagonalOne || !diagonalTwo || more)
      return refuse(
        'diagonals',
        `A rectangle has two diagonals, and I have ${show(quantity(rows('diagonals').length, 'diagonal'))}. Give both.`,
      )
    put('diagonalOne', diagonalOne)
    put('diagonalTwo', diagonalTwo)
    const apart = line('diagonalsApart')
    if (!has('pushedSide')) return
    if (!less(pushedSide, diagonalOne) && !less(pushedSide, diagonalTwo))
      refuse(
        'pushedSide',
        `A side of ${show(pushedSide)} cannot have diagonals of ${show(diagonalOne)} and ${show(diagonalTwo)}: at least one must be longer. Measure the three again.`,
      )
    const push = line('pushCorner')
    if (!less(push, pushedSide))
      refuse(
        'diagonals',
        `Diagonals of ${show(diagonalOne)} and ${show(diagonalTwo)} do not belong to a side of ${show(pushedSide)}. Measure them again.`,
      )
    const [long, short] = less(diagonalOne, diagonalTwo) ? [diagonalTwo, diagonalOne] : [diagonalOne, diagonalTwo]
    remark(
      equal(diagonalOne, diagonalTwo)
        ? 'The diagonals are alike. The corners are square if the opposite sides are alike too: measure all four.'
        : `They differ by ${show(apart)}. Push both corners of the far side along that side by ${show(push)}, in the direction from the far end of the longer diagonal, ${show(long)}, to the far end of the shorter, ${show(short)}. Then measure both again.`,
    )
  },
  sources: [
    {
      fact: 'long² − short² = 4 × side × push, for a rectangle pushed along its side',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 73² − 71² = 288; / (4 × 60) = 1.2 ft
    {
      ask: 'Are the corners square? The first side is 60 ft, one diagonal 73 ft, the other diagonal 71 ft.',
      given: { pushedSide: '60 ft', diagonals: ['73 ft', '71 ft'] },
      expect: { diagonalsApart: '24 in', pushCorner: '14 2/5 in' },
    },
    // 10.05² − 9.95² = 2; / (4 × 8) = 0.0625 m
    {
      ask: 'Rectangle with a first side of 8 m, diagonals are 10.05 m and the other 9.95 m: how far do I push?',
      given: { pushedSide: '8 m', diagonals: ['10.05 m', '9.95 m'] },
      expect: { diagonalsApart: '100 mm', pushCorner: '62.5 mm' },
    },
  ],
})
