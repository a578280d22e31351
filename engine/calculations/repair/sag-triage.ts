// Why a gate hangs low: three measurements, and how far each lets the latch end down.
//
//   ┃┌─────┐     diagonals that differ      the leaf is out of square
//   ┃│ ╲ ╱ │     the post out of plumb      the post leans, and the leaf with it
//   ┃│ ╱ ╲ │     gap at the hinge side,     the hinges give: wider at the top than at the bottom
//   ┃└─────┘     top against bottom
import { calculation } from '../../calculation.ts'
import { triageDrawing } from '../../drawings/sag-triage.ts'
import { compare } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { sagLines } from '../../sag.ts'
import { strutDiagonal, tieDiagonal } from '../../words/gate-sag.ts'
import { outOfPlumb, plumbOver } from '../../words/gate-swing.ts'
import { hingeSpacing } from '../../words/gate-weight.ts'
import { leafHeight, leafWidth } from '../../words/gates.ts'
import {
  hingeDrop,
  hingeGapBottom,
  hingeGapTop,
  hingesGive,
  leafRacked,
  postLeaning,
  sagCause,
} from '../../words/sag-triage.ts'

// Less than this at the latch no tape tells from nothing, the three measurements together.
const telling = quantity('1/8', 'in')

interface Part {
  readonly cause: 'leaf' | 'post' | 'hinges'
  readonly verdict: 'leafRacked' | 'postLeaning' | 'hingesGive'
  readonly label: string
  readonly by: string
  readonly drop: Quantity | undefined
  readonly ask: string
}

export const sagTriage = calculation({
  name: 'sag-triage',
  title: 'Why a gate hangs low: leaf, hinges or post',
  answers:
    'Which of three lets a gate down, the leaf, the hinges or the post, from its diagonals, the plumb of the post and the gap at the hinge side, and how far each does.',
  needs: {
    leafWidth,
    tieDiagonal,
    strutDiagonal,
    leafHeight,
    outOfPlumb,
    plumbOver,
    hingeGapTop,
    hingeGapBottom,
    hingeSpacing,
  },
  may: [
    'leafWidth',
    'tieDiagonal',
    'strutDiagonal',
    'leafHeight',
    'outOfPlumb',
    'plumbOver',
    'hingeGapTop',
    'hingeGapBottom',
    'hingeSpacing',
  ],
  oneOf: [['tieDiagonal', 'outOfPlumb', 'hingeGapTop']],
  gives: { sagCause, leafRacked, postLeaning, hingesGive, hingeDrop },
  headlines: ['sagCause'],
  together: {
    sagCause: ['sagCause', 'leafRacked', 'postLeaning', 'hingesGive', 'hingeDrop'],
    leafRacked: ['leafRacked', 'sagCause'],
    postLeaning: ['postLeaning', 'sagCause'],
    hingesGive: ['hingesGive', 'hingeDrop', 'sagCause'],
  },
  locals: { leanAngle: 'angle', latchDrop: 'length', latchMove: 'length' },
  lines: {
    latchDrop: sagLines.latchDrop,
    leanAngle: sagLines.leanAngle,
    latchMove: sagLines.latchMove,
    hingeDrop: sagLines.hingeDrop,
  },
  work(given, { line, has, tell, refuse, doubt, remark, cite, table, system }) {
    const known = (...names: Parameters<typeof has>[0][]): boolean => names.every((it) => has(it))
    if (known('tieDiagonal', 'strutDiagonal', 'leafHeight')) {
      if (!less(given.leafHeight, given.tieDiagonal) || !less(given.leafHeight, given.strutDiagonal))
        refuse(
          'leafHeight',
          `A leaf ${show(given.leafHeight)} tall cannot have diagonals of ${show(given.tieDiagonal)} and ${show(given.strutDiagonal)}: they must be longer than it is tall. Measure the three again.`,
        )
    }
    const racked = known('tieDiagonal', 'strutDiagonal', 'leafHeight') ? line('latchDrop') : undefined
    if (known('outOfPlumb', 'plumbOver', 'leafWidth')) line('leanAngle')
    const leaned = known('outOfPlumb', 'plumbOver', 'leafWidth') ? line('latchMove') : undefined
    const hinged = known('hingeGapTop', 'hingeGapBottom', 'hingeSpacing', 'leafWidth') ? line('hingeDrop') : undefined
    const parts: readonly Part[] = [
      {
        cause: 'leaf',
        verdict: 'leafRacked',
        label: 'the leaf is out of square',
        by: 'its diagonals',
        drop: racked,
        ask: askFor(['tieDiagonal', 'strutDiagonal', 'leafHeight']),
      },
      {
        cause: 'post',
        verdict: 'postLeaning',
        label: 'the post leans toward the opening',
        by: 'its plumb reading',
        drop: leaned,
        ask: askFor(['outOfPlumb', 'plumbOver', 'leafWidth']),
      },
      {
        cause: 'hinges',
        verdict: 'hingesGive',
        label: 'the hinges give',
        by: 'the gap at the hinge side',
        drop: hinged,
        ask: askFor(['hingeGapTop', 'hingeGapBottom', 'hingeSpacing', 'leafWidth']),
      },
    ]
    const limit: Quantity = { ...telling, unit: system === 'metric' ? 'mm' : 'in' }
    const told = cite(limit, 'drop that a tape can tell')
    for (const { verdict, drop, label, by } of parts) {
      const order = drop ? compare(drop.amount, limit.amount) : null
      tell(verdict, drop && order !== null ? order === 1 : null)
      if (drop) remark(`By ${by}, ${label}: ${show(drop)} down at the latch. A tape tells ${told}.`)
    }
    const open = parts.filter((it) => !it.drop)
    const worst = parts.reduce<Part | undefined>(
      (most, it) => (it.drop && less(limit, it.drop) && (!most?.drop || less(most.drop, it.drop)) ? it : most),
      undefined,
    )
    if (open.length > 0) {
      tell('sagCause', 'unsure')
      for (const it of open)
        doubt('missing', wordOf(it), `Not measured yet, so I cannot say whether ${it.label}.`, it.ask)
      remark(
        worst
          ? `So far ${worst.label} most, by ${show(worst.drop as Quantity)}. Another may do more: measure all three before you mend one.`
          : 'So far none of it lets the gate down. Measure the rest.',
      )
    } else {
      tell('sagCause', worst?.cause ?? 'none')
      remark(
        worst
          ? `Decided by the largest drop at the latch: ${worst.label}, ${show(worst.drop as Quantity)} down.`
          : `Decided by the drops at the latch: none of the three is over ${told}. Look at the ground under the gate and at the latch post.`,
      )
    }
    table({
      title: 'What lets the latch end down',
      columns: [
        { label: 'whether', unit: '' },
        { label: 'by', unit: '' },
        { label: 'down at the latch', unit: '' },
      ],
      rows: parts.map(({ label, by, drop }) => [label, by, drop ? show(drop) : 'not measured']),
    })
    remark(
      'Mend in this order: post, hinges, leaf. A plumb post first, since the others are measured from it: block the leaf up, set the post straight or brace it; then longer screws or through bolts for the hinges; then a brace from the bottom hinge up to the top latch, or a cable the other way. A lean away from the opening lifts the gate instead.',
    )
  },
  sources: [
    { fact: 'the drop of each: diagonals, lean and hinge gap', from: 'Derived here from the sketch; needs no table.' },
    { fact: 'post, then hinges, then leaf', from: 'common practice, no source' },
    {
      fact: 'a tape tells about an eighth of an inch at the latch, the measurements together',
      from: 'common practice, no source',
    },
  ],
  cautions: ['structure', 'lifting', 'tools', 'open-hole'],
  drawing: triageDrawing,
  examples: [
    // (58.6875² − 57.3125²)/(4 × 40) = 159.5/160 = 0.9969; 42 sin(atan(0.25/48)) = 0.2187; 42 × (1/2 − 3/8)/30 = 0.175
    {
      ask: 'Why does the gate sag? Leaf 42 in wide and 40 in tall, diagonal top hinge to bottom latch 58 11/16 in, bottom hinge to top latch 57 5/16 in, post out of plumb 1/4 in over 48 in, hinges 30 in apart, gap at the top hinge 1/2 in, gap at the bottom hinge 3/8 in.',
      given: {
        leafWidth: '42 in',
        leafHeight: '40 in',
        tieDiagonal: '58 11/16 in',
        strutDiagonal: '57 5/16 in',
        outOfPlumb: '1/4 in',
        plumbOver: '48 in',
        hingeSpacing: '30 in',
        hingeGapTop: '1/2 in',
        hingeGapBottom: '3/8 in',
      },
      expect: {
        sagCause: 'leaf',
        leafRacked: 'the leaf is out of square',
        postLeaning: 'the post leans',
        hingesGive: 'the hinges give',
        hingeDrop: '7/40 in',
      },
    },
    // 900 × (14 − 6)/700 = 10.286 mm; the others not measured
    {
      ask: 'What lets the gate down: leaf 900 mm wide, hinges 700 mm apart, gap at the top hinge 14 mm and gap at the bottom hinge 6 mm?',
      given: { leafWidth: '900 mm', hingeSpacing: '700 mm', hingeGapTop: '14 mm', hingeGapBottom: '6 mm' },
      expect: { sagCause: 'unsure', hingesGive: 'the hinges give', hingeDrop: '10 2/7 mm' },
    },
  ],
})

const words = {
  tieDiagonal,
  strutDiagonal,
  leafHeight,
  outOfPlumb,
  plumbOver,
  leafWidth,
  hingeGapTop,
  hingeGapBottom,
  hingeSpacing,
}
const askFor = (names: readonly (keyof typeof words)[]): string => names.map((it) => words[it].ask).join(' ')
const wordOf = ({ cause }: Part): string =>
  cause === 'leaf' ? 'tieDiagonal' : cause === 'post' ? 'outOfPlumb' : 'hingeGapTop'
