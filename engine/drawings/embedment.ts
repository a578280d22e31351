// This file is about a post that is pushed sideways: its depth by the trade's rule and by the code's formula, side by side and to one scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, broken, down, earth, heading, line, sheet, shape, width, words } from './svg.ts'

const [left, right, top] = [92, 250, 72]

export function embedmentDrawing(seen: Seen): string | null {
  const [depth, rule] = [seen.maybe('codeDepth'), seen.maybe('depthByRule')]
  if (!depth) return null
  const [force, arm, wide] = [seen.one('sideForce'), seen.one('forceHeight'), seen.one('bearingWidth')]
  const above = seen.maybe('postAbove')
  const inConcrete = seen.option('postSetIn') === 'concrete'
  const collar = inConcrete ? (seen.maybe('holeDiameter') ?? wide) : undefined
  const [d, h, a] = [numberIn(depth, 'in'), numberIn(above ?? arm, 'in'), numberIn(arm, 'in')]
  // A post whose height nobody told goes on above.
  const tall = Math.max(h, a * 1.25)
  const deepest = Math.max(d, rule ? numberIn(rule, 'in') : 0)
  const scale = Math.min(230 / (tall + deepest), collar ? 90 / numberIn(collar, 'in') : 1e9)
  const ground = top + tall * scale
  const half = Math.max(3, (numberIn(seen.one('postWidth'), 'in') * scale) / 2)
  /** One post in its hole. */
  const post = (x: number, inGround: number): string[] => [
    ...(collar
      ? [
          box(
            x - (numberIn(collar, 'in') * scale) / 2,
            ground,
            numberIn(collar, 'in') * scale,
            inGround * scale,
            '#eee',
            1,
          ),
        ]
      : []),
    box(x - half, ground - tall * scale, 2 * half, (tall + inGround) * scale, '#bbb', 1.2),
    ...(above ? [] : [broken(x - half, x + half, ground - tall * scale)]),
  ]
  const gap = (collar ? (numberIn(collar, 'in') * scale) / 2 : half) + 10
  const push = ground - a * scale
  const parts = [
    earth(10, width - 10, ground),
    ...(rule
      ? [
          ...post(left, numberIn(rule, 'in')),
          down(left + gap, ground, ground + numberIn(rule, 'in') * scale, show(rule), 'right', '', ground + 9),
          words(left, top - 24, 'trade’s rule', 'middle', 11),
          words(left, top - 10, 'no wind, no soil', 'middle', 11),
        ]
      : []),
    ...post(right, d),
    down(right + gap, ground, ground + d * scale, show(depth), 'right', '', ground + 9),
    down(right + gap, push, ground, show(arm), 'right'),
    words(right, top - 24, 'code’s formula', 'middle', 11),
    words(right, top - 10, 'this push, this soil', 'middle', 11),
    line(right - half - 58, push, right - half - 9, push, 3),
    shape(
      [
        [right - half - 9, push - 5],
        [right - half - 1, push],
        [right - half - 9, push + 5],
      ],
      '#111',
      0.5,
    ),
    words(right - half - 12, push - 8, show(force), 'end'),
    line(8, ground, width - 8, ground, 2),
  ]
  const bottom = ground + deepest * scale
  parts.push(
    heading(`depth by the formula ${show(depth)}`),
    aside(`pushes on the soil with a width of ${show(wide)}`, bottom + 24),
    aside('a check, not a design; frost is not in it', bottom + 41),
  )
  return sheet(
    {
      width,
      height: bottom + 52,
      title: 'Depth of a post: the rule and the check',
      description: `A post pushed with ${show(force)}, ${show(arm)} above the ground. The code’s formula asks for ${show(depth)} in the ground${rule ? `; the trade’s rule, which knows no wind and no soil, says ${show(rule)}` : ''}.`,
    },
    parts,
  )
}
