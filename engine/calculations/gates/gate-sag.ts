// How far a gate has dropped, from its two diagonals.
//
//   h┌──────────┐l        square: both diagonals alike
//    │╲        ╱│         sagged: the one from the top hinge to the bottom latch has grown, the other has shrunk
//    │  ╲    ╱  │
//    │    ╳     │         tie² − strut² = 4 × height × drop, whatever the width is
//   h└──────────┘l
import { calculation } from '../../calculation.ts'
import { gateSagDrawing } from '../../drawings/gate-sag.ts'
import { less, type Quantity, zero } from '../../quantities/quantity.ts'
import { absolute, compare, negative } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import { sagLines } from '../../sag.ts'
import { latchDrop, squareDiagonal, strutDiagonal, takeUp, tieDiagonal } from '../../words/gate-sag.ts'
import { leafHeight } from '../../words/gates.ts'

export const gateSag = calculation({
  name: 'gate-sag',
  title: 'How far a gate has sagged',
  answers:
    'How far the latch side of a gate has dropped, and how much a cable must be taken up to bring it square, from the two diagonals.',
  needs: { strutDiagonal, tieDiagonal, leafHeight },
  gives: { latchDrop, takeUp, squareDiagonal },
  headlines: ['latchDrop', 'takeUp'],
  together: {
    latchDrop: ['latchDrop', 'takeUp', 'squareDiagonal'],
    takeUp: ['takeUp', 'latchDrop', 'squareDiagonal'],
    squareDiagonal: ['squareDiagonal', 'takeUp'],
  },
  lines: {
    latchDrop: sagLines.latchDrop,
    squareDiagonal: ['sqrt((tieDiagonal ^ 2 + strutDiagonal ^ 2) / 2)', 'square again, both diagonals are alike'],
    takeUp: ['tieDiagonal - squareDiagonal', 'the cable runs along the diagonal that has grown'],
  },
  work({ tieDiagonal, strutDiagonal, leafHeight }, { line, refuse, remark }) {
    if (!less(leafHeight, tieDiagonal) || !less(leafHeight, strutDiagonal))
      refuse(
        'leafHeight',
        `A leaf ${show(leafHeight)} tall cannot have diagonals of ${show(tieDiagonal)} and ${show(strutDiagonal)}: they must be longer than it is tall. Measure the three again.`,
      )
    const drop = line('latchDrop')
    const amount: Quantity = { ...drop, amount: absolute(drop.amount) }
    if (compare(amount.amount, leafHeight.amount) !== -1)
      refuse(
        'tieDiagonal',
        `Those diagonals, ${show(tieDiagonal)} and ${show(strutDiagonal)}, would lean a leaf ${show(leafHeight)} tall right over. Measure them again, corner to corner.`,
      )
    line('squareDiagonal')
    const pull = line('takeUp')
    if (less(drop, zero('length', 'in'))) {
      const loosen: Quantity = { ...pull, amount: negative(pull.amount) }
      remark(
        `The latch side stands ${show(amount)} higher than square. It has not sagged: a cable, if there is one, is ${show(loosen)} too tight. Are the two diagonals named the right way round?`,
      )
    } else if (less(zero('length', 'in'), drop))
      remark(
        'Lift the latch end on a block before you tighten anything, then take the cable up, or set a brace from the bottom hinge to the top latch. See first that the post is plumb: a leaning post looks like a sagging gate.',
      )
    else remark('Both diagonals are alike: the leaf is square. If it drags, look at the post and the hinges.')
  },
  sources: [
    {
      fact: 'the difference of the squares of the diagonals is four times height times drop',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['tools', 'lifting'],
  drawing: gateSagDrawing,
  examples: [
    // A leaf 42 in wide and 40 tall with a drop of 1 in: tie² = 42² + 41² − 1 … with rails of constant length 42: 42² + 40² + 2·40·1 = 3444, strut² = 3284.
    // √3444 = 58.69, √3284 = 57.31. With 58 11/16 and 57 5/16: (3444.22 − 3284.72)/160 = 0.9969; square √3364.47 = 58.0041; take-up 0.6834
    {
      ask: 'Gate is 40 in tall, diagonal top hinge to bottom latch 58 11/16 in, bottom hinge to top latch 57 5/16 in. How much has it sagged, and how much take-up?',
      given: { tieDiagonal: '58 11/16 in', strutDiagonal: '57 5/16 in', leafHeight: '40 in' },
      expect: { latchDrop: '319/320 in', takeUp: '0.6834 in' },
    },
    // (1530² − 1510²)/(4 × 1000) = 60800/4000 = 15.2
    {
      ask: 'A gate 1000 mm high: top hinge to bottom latch 1530 mm, bottom hinge to top latch 1510 mm. How far has it dropped?',
      given: { tieDiagonal: '1530 mm', strutDiagonal: '1510 mm', leafHeight: '1000 mm' },
      expect: { latchDrop: '15.2 mm', takeUp: '9.967 mm' },
    },
  ],
})
