// How a gate pulls at its hinges and its post.
//
//   ┃◄── R ─ hinge ┌────────┐      The leaf's weight W acts in its middle, half its width from the hinges.
//   ┃              │   W↓   │      It wants to turn about the bottom hinge: R × spacing = W × width / 2.
//   ┃─── R ► hinge └────────┘      The top hinge is pulled away from the post, the bottom one pushed against it.
import { calculation } from '../../calculation.ts'
import {
  gateForce,
  hangingWeight,
  hingePull,
  hingePullHung,
  hingeSpacing,
  leafWeight,
  postCouple,
} from '../../words/gate-weight.ts'
import { leafWidth } from '../../words/gates.ts'

export const gatePull = calculation({
  name: 'gate-pull',
  title: 'How a gate pulls at its hinges and post',
  answers:
    'How hard a gate pulls at its top hinge, with and without somebody on it, and the turning force on its post.',
  needs: { leafWeight, leafWidth, hingeSpacing, hangingWeight },
  may: ['hangingWeight'],
  onlyFor: { hingeSpacing: ['hingePull', 'hingePullHung'], hangingWeight: ['hingePullHung'] },
  gives: { hingePull, hingePullHung, gateForce, postCouple },
  headlines: ['hingePull', 'postCouple'],
  together: {
    hingePull: ['hingePull', 'hingePullHung', 'gateForce', 'postCouple'],
    gateForce: ['gateForce', 'hingePull'],
  },
  lines: {
    gateForce: ['weight(leafWeight)', 'straight down; either hinge may have to carry all of it'],
    postCouple: ['gateForce * leafWidth / 2', 'the weight acts in the middle of the leaf'],
    hingePull: [
      'postCouple / hingeSpacing',
      'two hinges hold that turning force: the further apart, the less each is pulled',
    ],
    hungForce: ['weight(hangingWeight)', 'whoever hangs on the latch end'],
    hingePullHung: [
      'hingePull + hungForce * leafWidth / hingeSpacing',
      'at the latch end a weight pulls with the whole width of the leaf',
    ],
  },
  work(_given, { line, has, worked, remark }) {
    line('gateForce')
    line('postCouple')
    if (has('hingeSpacing')) {
      line('hingePull')
      if (has('hangingWeight')) {
        line('hungForce')
        line('hingePullHung')
      }
    }
    remark(
      'The top hinge is pulled off the post, so its screws or bolts must hold in pull; the bottom one is pushed on. Choose hinges by the maker’s rating, each for the whole weight.',
    )
    if (worked('hingePull')) remark('Hinges set further apart pull less: twice as far apart, half the pull.')
  },
  sources: [
    { fact: 'pull × hinge spacing = weight × half the width', from: 'Statics; derived here from the sketch.' },
    {
      fact: 'a pound weighs a pound-force, and a kilogram 9.80665 N, at standard gravity',
      from: 'standard gravity as the CGPM of 1901 set it; from memory, to be confirmed',
    },
  ],
  cautions: ['structure', 'lifting'],
  examples: [
    // 60 × 42 / (2 × 30) = 42; + 200 × 42/30 = 280 → 322; couple 60 × 21 = 1260 lbf-in = 105 lbf-ft
    {
      ask: 'My gate weighs 60 lb, it is 42 in wide and the hinges are 30 in apart. How hard does it pull on the top hinge if a child of 200 lb swings on it?',
      given: { leafWeight: '60 lb', leafWidth: '42 in', hingeSpacing: '30 in', hangingWeight: '200 lb' },
      expect: { hingePull: '42 lbf', hingePullHung: '322 lbf', gateForce: '60 lbf', postCouple: '105 lbf-ft' },
    },
    // 62.6 × 9.80665 = 613.9 N; × 0.85 = 521.8 N-m; / 1.3 = 401.4 N
    {
      ask: 'Gate 62.6 kg, 1.7 m wide, hinges 1.3 m apart: pull on the top hinge?',
      given: { leafWeight: '62.6 kg', leafWidth: '1.7 m', hingeSpacing: '1.3 m' },
      expect: { gateForce: '613.9 N', postCouple: '521.8 N-m', hingePull: '401.4 N' },
    },
  ],
})
