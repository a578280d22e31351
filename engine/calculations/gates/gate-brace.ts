// The brace of a gate: how long, cut at which angle, and which way it runs.
//
//   ┌──────────────┐
//   ▌           ▗▞▘│ ◄── top latch corner
//   ▌        ▗▞▘   │     The brace is pressed together: it carries the latch end down to the bottom hinge.
//   ▌     ▗▞▘      │     A timber brace the other way round only hangs on its screws.
//   ▌▗▞▘           │
//   └──────────────┘
//   ▲ bottom hinge corner
//
// The naive diagonal is wrong by the width of the stock: the brace's lower edge starts in one corner, its upper edge ends in
// the other. With inside width a, inside height b and stock t, the edges fit when a·sin θ − b·cos θ = t.
import { calculation } from '../../calculation.ts'
import { braceDrawing } from '../../drawings/gate.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  braceForce,
  pointedEdge,
  pointedLength,
  braceAngle,
  braceCut,
  braceEdge,
  braceLength,
  braceWidth,
  insideHeight,
  insideWidth,
} from '../../words/gate-braces.ts'
import { leafWeight } from '../../words/gate-weight.ts'

// Flatter than this a brace pushes more sideways than up.
const flattest = quantity(45, 'deg')

export const gateBrace = calculation({
  name: 'gate-brace',
  title: 'A brace for a gate that does not sag',
  answers:
    'How long the brace of a gate is, the angle of its cuts and which way it runs: fitted into the frame, or with pointed ends in the corners.',
  needs: { insideWidth, insideHeight, braceWidth, leafWeight },
  may: ['leafWeight'],
  onlyFor: { leafWeight: ['braceForce'] },
  gives: { braceLength, braceCut, braceAngle, braceEdge, pointedLength, pointedEdge, braceForce },
  headlines: ['braceLength', 'braceCut'],
  together: {
    braceLength: ['braceLength', 'braceCut', 'braceAngle', 'braceEdge'],
    braceCut: ['braceCut', 'braceLength', 'braceAngle'],
    braceAngle: ['braceAngle', 'braceLength', 'braceCut'],
  },
  locals: { diagonalAngle: 'angle' },
  lines: {
    diagonal: ['sqrt(insideWidth ^ 2 + insideHeight ^ 2)', 'corner to corner, as if the brace had no width'],
    diagonalAngle: ['atan(insideHeight / insideWidth)', 'the angle of that diagonal'],
    braceAngle: [
      'diagonalAngle + asin(braceWidth / diagonal)',
      'a brace with a width stands a little steeper than the diagonal',
    ],
    braceCut: ['90 - braceAngle', 'both ends lie along a rail, so they are cut alike'],
    braceEdge: ['insideHeight / sin(braceAngle)', 'each long edge reaches from rail to rail'],
    braceLength: ['braceEdge + braceWidth / tan(braceAngle)', 'and the bevel adds its run at one end'],
    pointedLength: ['diagonal', 'with pointed ends in the corners, tip to tip'],
    pointedEdge: ['diagonal - braceWidth / sin(2 * diagonalAngle)', 'each edge of it, between the points’ shoulders'],
    braceForce: ['weight(leafWeight) / 2 / sin(diagonalAngle)', 'half the leaf’s weight stands on the brace'],
  },
  work({ insideWidth, insideHeight, braceWidth }, { line, has, refuse, remark, cite }) {
    if (!less(braceWidth, insideWidth) || !less(braceWidth, insideHeight))
      refuse(
        'braceWidth',
        `A brace ${show(braceWidth)} wide does not lie across a frame ${show(insideWidth)} by ${show(insideHeight)} inside. Check the three.`,
      )
    line('diagonal')
    line('diagonalAngle')
    const angle = line('braceAngle')
    for (const name of ['braceCut', 'braceEdge', 'braceLength', 'pointedLength', 'pointedEdge']) line(name)
    if (has('leafWeight')) line('braceForce')
    remark(
      'Run it from the bottom corner at the hinges up to the top corner at the latch. Wood works when it is pressed together. A cable runs the other way, from the top hinge down to the bottom latch.',
    )
    remark(
      'Check it against the frame before you cut: lay the stock across the two corners and mark it from the frame itself.',
    )
    if (less(angle, flattest))
      remark(
        `It stands at ${show(angle)}, flatter than ${cite(flattest, 'flattest good brace')}: it holds less. A narrower leaf, two leaves, or a second brace hold better.`,
      )
  },
  sources: [
    {
      fact: 'a·sin θ − b·cos θ = t for a brace of width t between two corners',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'a brace stands at 45° or steeper', from: 'trade rule, no source' },
    {
      fact: 'a timber brace rises from the bottom hinge to the top latch; a cable falls from the top hinge to the bottom latch',
      from: 'common practice, no source',
    },
  ],
  cautions: ['structure', 'tools'],
  drawing: braceDrawing,
  examples: [
    // θ = atan(30/36) + asin(3.5/46.8615) = 39.8056 + 4.2833 = 44.0889°; 30/sin θ = 43.1175; + 3.5/tan θ = 3.6131 → 46.7306; 90 − θ = 45.9111
    {
      ask: 'The gate frame is 36 in wide and 30 in high inside and the brace is 3 1/2 in wide. How long a brace, and what angle do I cut?',
      given: { insideWidth: '36 in', insideHeight: '30 in', braceWidth: '3 1/2 in' },
      expect: { braceLength: '46.73 in', braceCut: '45.91°', braceAngle: '44.09°', braceEdge: '43.12 in' },
    },
    // θ = atan(1000/800) + asin(90/1280.62) = 51.3402 + 4.0299 = 55.3701°; 1000/sin θ = 1215.3; + 90/tan θ = 62.2 → 1277.5
    {
      ask: 'Inside the frame 800 mm wide and 1000 mm high, brace 90 mm wide: length of the brace?',
      given: { insideWidth: '800 mm', insideHeight: '1000 mm', braceWidth: '90 mm' },
      expect: { braceLength: '1,277 mm', braceAngle: '55.37°' },
    },
  ],
})
