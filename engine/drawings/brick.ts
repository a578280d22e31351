// This file is about bricks along an edge: a stretch of it from above and cut across, to scale, as the bricks lie.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { brickLies } from '../words/brick-sizes.ts'
import { across, aside, box, down, earth, heading, line, sheet, spread, width } from './svg.ts'

/** By how a brick lies: the size along the edge, the one across the strip, and the one that is its depth. */
const turned: Readonly<Record<string, readonly [along: string, across: string, up: string]>> = {
  'end-to-end': ['brickLength', 'brickWidth', 'brickHeight'],
  across: ['brickWidth', 'brickLength', 'brickHeight'],
  'on-edge': ['brickHeight', 'brickLength', 'brickWidth'],
  'edge-to-end': ['brickLength', 'brickHeight', 'brickWidth'],
  'on-end': ['brickWidth', 'brickHeight', 'brickLength'],
}

const [left, top] = [40, 66]
const most = { rows: 6, bricks: 12, wide: width - 116, deep: 120 }

export function brickDrawing(seen: Seen): string | null {
  const [side, joint, rows, all] = ['brickSide', 'brickJoint', 'brickRows', 'bricks'].map((it) => seen.one(it)) as [
    Quantity,
    Quantity,
    Quantity,
    Quantity,
  ]
  const lies = seen.maybe('brickAlong') ? undefined : seen.option('brickLies')
  const [, acrossIt, upIt] = (lies && turned[lies]) || []
  const [deep, up] = [acrossIt, upIt].map((name) => (name ? seen.maybe(name) : undefined))
  const inches = (q: Quantity): number => numberIn(q, 'in')
  const [a, j] = [inches(side), inches(joint)]
  const allRows = Math.round(numberIn(rows, rows.unit))
  const many = Math.min(most.rows, allRows)
  // Where the size across is not given, the bricks are drawn as deep as they are long, and that is said.
  const d = deep ? inches(deep) : a
  const wide = Math.min(most.wide, deep ? width - left - 22 - spread(show(deep)) : most.wide)
  const scale = Math.min(wide / (3 * (a + j)), most.deep / (many * (d + j)), up ? most.deep / inches(up) : Infinity)
  const inRow = Math.max(1, Math.round(numberIn(all, all.unit) / numberIn(rows, rows.unit)))
  const shown = Math.min(inRow, most.bricks, Math.max(2, Math.floor(wide / ((a + j) * scale) + 1e-6)))
  const [stepX, stepY] = [(a + j) * scale, (d + j) * scale]
  const parts: string[] = []
  for (let row = 0; row < many; row++)
    for (let i = 0; i < shown; i++) parts.push(box(left + i * stepX, top + row * stepY, a * scale, d * scale, '#ddd'))
  let bottom = top + many * stepY - j * scale
  parts.push(across(left, left + a * scale, bottom + 20, show(side)))
  const end = left + shown * stepX - j * scale
  if (deep) parts.push(down(end + 12, top, top + d * scale, show(deep)))
  bottom += 30
  if (up) {
    const ground = bottom + 30
    const h = inches(up) * scale
    const strip = many * stepY - j * scale
    for (let row = 0; row < many; row++) parts.push(box(left + 60 + row * stepY, ground, d * scale, h, '#ddd'))
    parts.push(
      line(8, ground, left + 60, ground, 2),
      earth(12, left + 54, ground),
      line(left + 60 + strip, ground, width - 8, ground, 2),
      earth(left + 64 + strip, width - 8, ground),
      down(left + 60 + strip + 16, ground, ground + h, show(up), 'right', '', ground + 7),
      aside('the same, cut across the strip', ground - 10),
    )
    bottom = ground + Math.max(h, 20) + 10
  }
  const notes = [
    ...(allRows > many ? [`${many} of the ${show(rows)} are drawn`] : []),
    ...(deep ? [] : ['the depth of the bricks is not to scale']),
  ]
  for (const note of notes) {
    parts.push(aside(note, bottom + 10))
    bottom += 16
  }
  const label = lies ? (brickLies.options?.[lies]?.label ?? '') : ''
  parts.push(
    heading(`${show(all)}, ${show(joint)} between them`),
    aside(`from above${label ? `: ${label}` : ', a stretch of the edge'}`, 46),
  )
  return sheet(
    {
      width,
      height: bottom + 8,
      title: 'The edge from above',
      description: `${show(all)} in ${show(rows)}${label ? `, ${label}` : ''}, each ${show(side)} along the edge${deep ? `, ${show(deep)} across it` : ''}${up ? `, ${show(up)} from top to bottom` : ''}, with ${show(joint)} between them.`,
    },
    parts,
  )
}
