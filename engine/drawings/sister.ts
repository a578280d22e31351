// This file is about a sister post beside a rotten one, from the front and to scale: in the ground, past the rot, along sound wood.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, column, dot, down, earth, heading, line, scattered, sheet, width, words } from './svg.ts'

const [middle, top, thick] = [168, 56, 20]

export function sisterDrawing(seen: Seen): string | null {
  const length = seen.maybe('sisterLength')
  if (!length) return null
  const [above, rot, lap, buried] = [
    seen.one('postAbove'),
    seen.one('rotHeight'),
    seen.one('sisterLap'),
    seen.one('depthByRule'),
  ]
  const [a, r, l, b] = [above, rot, lap, buried].map((it) => numberIn(it, 'in')) as [number, number, number, number]
  const scale = 230 / (Math.max(a, r + l) + b)
  const ground = top + Math.max(a, r + l) * scale
  const [postTop, rotTop, lapTop, foot] = [
    ground - a * scale,
    ground - r * scale,
    ground - (r + l) * scale,
    ground + b * scale,
  ]
  const fits = a >= r + l
  const parts = [
    earth(10, middle + thick + 8, ground),
    // The old post: sound above, rotten from there down.
    box(middle - thick, postTop, thick, foot - 14 - postTop, '#ddd', 1.2),
    box(middle - thick, rotTop, thick, Math.max(2, foot - 14 - rotTop), '#eee', 0.75),
  ]
  for (const [u, v] of scattered(160)) {
    const y = rotTop + 2 + v * Math.max(0, foot - 18 - rotTop)
    parts.push(dot(middle - thick + 2 + u * (thick - 4), y, 1.2, '#333'))
  }
  parts.push(
    box(middle, lapTop, thick, foot - lapTop, fits ? '#aaa' : '#fff', 1.5),
    ...(fits ? [0.25, 0.75] : []).map((share) => {
      const y = lapTop + share * (rotTop - lapTop)
      return line(middle - thick - 6, y, middle + thick + 6, y, 2.5)
    }),
    line(8, ground, middle + thick + 10, ground, 2),
    down(middle - thick - 22, postTop, ground, show(above), 'left', 'above ground'),
    column(
      middle + thick + 18,
      [
        { y1: lapTop, y2: rotTop, figure: show(lap), name: fits ? 'lap, bolted' : 'lap' },
        { y1: rotTop, y2: ground, figure: show(rot), name: 'past the rot' },
        { y1: ground, y2: foot, figure: show(buried), name: 'in the ground' },
      ].filter((it) => it.y2 - it.y1 > 0.5),
      'right',
      top - 12,
    ),
    words(middle - thick - 14, foot - 6, 'rotten', 'end', 11),
    heading(fits ? `sister post ${show(length)}` : 'too little sound wood for the lap: replace the post'),
    aside('widths not to scale; the rot below ground is drawn to guess', foot + 24),
  )
  return sheet(
    {
      width,
      height: foot + 34,
      title: 'A sister post beside a rotten one',
      description: `${fits ? '' : 'There is too little sound wood for it, but so it would be: '}A sister post ${show(length)} long: ${show(buried)} in the ground, ${show(rot)} past the rot, and a lap of ${show(lap)} bolted to sound wood of a post ${show(above)} above ground.`,
    },
    parts,
  )
}
