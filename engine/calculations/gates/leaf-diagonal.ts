// The diagonal of a leaf: what both of its diagonals are when it is square.
//
//   ┌─────────┐
//   │       ╱ │ leaf height
//   │    ╱    │
//   │ ╱       │
//   └─────────┘
//    leaf width
import { calculation } from '../../calculation.ts'
import { leafDiagonal } from '../../words/gate-parts.ts'
import { leafHeight, leafWidth } from '../../words/gates.ts'
import { word } from '../../words/word.ts'

const diagonalSteep = word<'angle'>('diagonalSteep', {
  kind: 'angle',
  label: 'diagonal, up from the bottom rail',
  measure: 'Between the bottom of the leaf and its diagonal.',
  ask: 'How steep is the diagonal?',
  called: { names: ['angle of the diagonal'] },
})

export const leafDiagonalOf = calculation({
  name: 'leaf-diagonal',
  title: 'A gate from corner to corner',
  answers: 'How long the leaf of a gate is from corner to corner when it is square, from its outside width and height.',
  needs: { leafWidth, leafHeight },
  gives: { leafDiagonal, diagonalSteep },
  headlines: ['leafDiagonal'],
  together: { diagonalSteep: ['diagonalSteep', 'leafDiagonal'] },
  lines: {
    leafDiagonal: ['sqrt(leafWidth ^ 2 + leafHeight ^ 2)', 'the two sides squared and added, and the root of that'],
    diagonalSteep: ['atan(leafHeight / leafWidth)', 'as steep as so much up over so much along'],
  },
  work(_given, { line, remark }) {
    line('leafDiagonal')
    line('diagonalSteep')
    remark(
      'Measure both diagonals, outer corner to outer corner. Push the longer one in until they are alike, and fix the brace then. A brace fitted into the frame is shorter than this.',
    )
  },
  sources: [{ fact: 'c² = a² + b² in a square corner', from: 'Plane geometry (Euclid, Elements, I.47).' }],
  cautions: ['tools'],
  examples: [
    // 36² + 48² = 1296 + 2304 = 3600, √3600 = 60
    {
      ask: 'A gate is 36 in wide and 48 in tall: what is the diagonal of the gate?',
      given: { leafWidth: '36 in', leafHeight: '48 in' },
      expect: { leafDiagonal: '60 in' },
    },
    // 990² + 1200² = 980,100 + 1,440,000; √2,420,100 = 1555.67
    {
      ask: 'Gate 990 mm wide, 1200 mm high: how long is the gate corner to corner?',
      given: { leafWidth: '990 mm', leafHeight: '1200 mm' },
      expect: { leafDiagonal: '1,556 mm' },
    },
  ],
})
