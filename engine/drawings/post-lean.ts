// This file is about a hinge post that leans toward the opening, and the leaf that tips with it.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, bend, down, heading, line, shape, sheet, spread, timesLarger, width } from './svg.ts'

type Point = readonly [number, number]

export function postLeanDrawing(seen: Seen): string | null {
  const [out, over, lean] = [seen.one('outOfPlumb'), seen.one('plumbOver'), seen.one('leanAngle')]
  const [leaf, move] = [seen.maybe('leafWidth'), seen.maybe('latchMove')]
  const [h, w] = [numberIn(over, 'in'), leaf && move ? numberIn(leaf, 'in') : 0]
  const larger = timesLarger(numberIn(lean, 'deg'), 6, 20)
  const degrees = numberIn(lean, 'deg') * larger
  const turn = (degrees * Math.PI) / 180
  const thick = 14
  const footX = w > 0 ? Math.max(86, spread(show(over), 9) + 28) : 160
  // Beside the post and its leaf, however far it leans, there is room for the fall of the latch end.
  const room = width - footX - thick - 32 - spread(move ? show(move) : '', 9)
  const scale = Math.min(170 / h, w > 0 ? Math.min(140 / w, room / (w + h * Math.tan(turn))) : 170 / h)
  const tall = h * scale
  // Beside a leaf that is many times as long the post would be a dot: then the figures are enough.
  if (tall < 24) return null
  const foot: Point = [footX, 84 + tall]
  const away = tall * Math.tan(turn)
  /** A point so far across the post and so far up along it. */
  const on = (across: number, up: number): Point => [
    foot[0] + across * Math.cos(turn) + up * Math.sin(turn),
    foot[1] + across * Math.sin(turn) - up * Math.cos(turn),
  ]
  const whole = tall / Math.cos(turn)
  const top = foot[1] - tall
  const parts = [
    shape([on(0, 0), on(0, whole), on(thick, whole), on(thick, 0)], '#bbb', 1.2),
    line(foot[0], foot[1], foot[0], top - 22, 1, '#111', '6 4'),
    line(foot[0] + away, top, foot[0] + away, top - 22, 0.5),
    across(foot[0], foot[0] + away, top - 18, show(out), 0),
    down(foot[0] - 16, top, foot[1], show(over), 'left'),
    bend(foot[0], foot[1], tall * 0.55, 90, 90 - degrees),
  ]
  let [lowest, groundEnd] = [foot[1], width - 8]
  if (leaf && move) {
    const wide = w * scale
    // The leaf hangs as low as leaves it clear of the ground where it tips; its height is no part of the sum.
    const low = Math.min(0.7 * whole, Math.max(0.2 * whole, (thick + wide) * Math.tan(turn) + 10))
    const corners = [on(thick + 2, low), on(thick + 2, 0.9 * whole), on(thick + 2 + wide, 0.9 * whole)] as const
    const latch = on(thick + 2 + wide, low)
    const [hung, tipped] = [corners[1], corners[2]]
    parts.push(
      shape([...corners, latch], '#f4f4f4', 1.2),
      line(hung[0], hung[1], hung[0] + wide + 24, hung[1], 0.75, '#111', '5 4'),
      line(tipped[0], tipped[1], hung[0] + wide + 24, tipped[1], 0.5),
      down(hung[0] + wide + 20, hung[1], tipped[1], show(move), 'right', 'down'),
    )
    // A long leaf that tips far hangs down past the ground: its figures stand clear of that line.
    if (tipped[1] > foot[1] - 24) groundEnd = Math.min(groundEnd, hung[0] + wide + 14)
    lowest = Math.max(lowest, latch[1])
    const bottom = lowest + 24
    parts.push(across(corners[0][0], corners[0][0] + wide, bottom, `leaf ${show(leaf)}`))
    lowest = bottom
  }
  parts.push(
    line(8, foot[1], groundEnd, foot[1], 2),
    heading(move ? `lean ${show(lean)}: the latch end falls ${show(move)}` : `the post leans ${show(lean)}`),
    aside('leaning toward the opening', 42),
  )
  const told = [
    larger > 1 ? `the lean is drawn ${larger} times as large as it is` : '',
    move ? 'the height of the leaf is not to scale' : '',
  ].filter((it) => it !== '')
  parts.push(...told.map((it, i) => aside(it, lowest + 22 + 17 * i)))
  return sheet(
    {
      width,
      height: lowest + 16 + 17 * told.length,
      title: 'A leaning hinge post',
      description: `A post that is ${show(out)} out of plumb over ${show(over)} leans ${show(lean)}.${leaf && move ? ` When it leans toward the opening, the latch end of a leaf ${show(leaf)} wide falls by ${show(move)}.` : ''}`,
    },
    parts,
  )
}
