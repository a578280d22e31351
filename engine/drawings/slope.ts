// This file is about fences on a slope from the side: stepped, raked, and posts under a string. Heights and lengths to one scale where they fit, else it says so.
import type { Seen } from '../calculation.ts'
import { over } from '../quantities/amount.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, heading, ledDown, line, mostParts, part, shape, sheet, width, words } from './svg.ts'

const side = 24
const fenceShown = 42 // inches of fence above the ground; the height is no part of these sums

/** Level bays going down with the ground. */
export function slopeDrawing(seen: Seen): string | null {
  const distance = seen.maybe('levelDistance')
  if (!distance) return null
  const [fall, step, bays] = ['fall', 'stepEach', 'slopeBays'].map((it) => seen.one(it)) as [
    Quantity,
    Quantity,
    Quantity,
  ]
  const many = Math.min(12, Math.round(numberIn(bays, bays.unit)))
  const all = Math.round(numberIn(bays, bays.unit))
  const level: Quantity = { ...distance, amount: over(distance.amount, bays.amount) }
  const run = (numberIn(distance, 'in') * many) / all
  const drop = (numberIn(fall, 'in') * many) / all
  const across1 = (width - 2 * side) / run
  const high = Math.min(across1 * 3, 190 / (drop + fenceShown))
  const top = 52
  const x = (i: number): number => side + (i * run * across1) / many
  const fenceTop = (i: number): number => top + (i * drop * high) / many
  const ground = (i: number): number => fenceTop(i) + fenceShown * high
  const parts: string[] = [line(x(0) - 14, ground(0), x(many) + 14, ground(many), 2)]
  for (let i = 0; i < many; i++) {
    // A level bay stands on the higher ground at its start; below its far end the ground has fallen by a step.
    const lower = i === 0 ? '' : `, its top ${show(step)} lower than the one before`
    parts.push(
      part(
        `bay ${i + 1} of ${all}: ${show(level)} level${lower}`,
        shape(
          [
            [x(i), fenceTop(i)],
            [x(i + 1), fenceTop(i)],
            [x(i + 1), ground(i) - 3],
            [x(i), ground(i) - 3],
          ],
          '#f2f2f2',
          1,
        ),
      ),
    )
  }
  for (let i = 0; i <= many; i++) parts.push(line(x(i), fenceTop(Math.max(0, i - 1)) - 5, x(i), ground(i) + 8, 3))
  parts.push(heading(`${show(bays)}, a step of ${show(step)} at each post`))
  const bottom = ground(many) + 24
  if (all === many) parts.push(across(x(0), x(many), bottom, `${show(distance)} level`))
  const note = [
    all > many ? `the first ${many} bays` : '',
    Math.abs(high / across1 - 1) > 0.01 ? 'heights drawn larger than lengths' : '',
  ]
    .filter((it) => it !== '')
    .join('; ')
  if (note) parts.push(aside(note, bottom + 22))
  return sheet(
    {
      width,
      height: bottom + 34,
      title: 'Stepping down the slope',
      description: `${show(bays)} over ${show(distance)} level, stepping down ${show(step)} at each post; the ground falls ${show(fall)} in all.`,
    },
    parts,
  )
}

/** One bay whose rails follow the ground. */
export function rakeDrawing(seen: Seen): string | null {
  const [bay, drop, rail, cut, depth, post] = [
    'bayCentres',
    'dropPerBay',
    'rakedRail',
    'plumbCut',
    'railDepth',
    'postWidth',
  ].map((it) => seen.one(it)) as [Quantity, Quantity, Quantity, Quantity, Quantity, Quantity]
  const [b, d, t, p] = [bay, drop, depth, post].map((it) => numberIn(it, 'in')) as [number, number, number, number]
  const scale = Math.min((width - 50) / (b + p), 210 / (d + fenceShown))
  const left = (width - (b + p) * scale) / 2
  const top = 58
  const y = (at: number, up: number): number => top + (fenceShown - up + (d * at) / b) * scale
  const [from, to] = [p / 2, b - p / 2]
  const x = (at: number): number => left + (at + p / 2) * scale
  const parts = [line(x(-p / 2) - 10, y(-p / 2, 0), x(b + p / 2) + 10, y(b + p / 2, 0), 2)]
  for (const at of [0, b])
    parts.push(
      shape(
        [
          [x(at - p / 2), y(at, fenceShown)],
          [x(at + p / 2), y(at, fenceShown)],
          [x(at + p / 2), y(at + p / 2, 0) + 6],
          [x(at - p / 2), y(at - p / 2, 0) + 6],
        ],
        '#ccc',
      ),
    )
  for (const up of [fenceShown - 6, 10])
    parts.push(
      shape(
        [
          [x(from), y(from, up)],
          [x(to), y(to, up)],
          [x(to), y(to, up) + t * scale],
          [x(from), y(from, up) + t * scale],
        ],
        '#eee',
        1.2,
      ),
    )
  const bottom = y(b, 0) + 30
  parts.push(
    across(x(0), x(b), bottom, `${show(bay)} level`),
    heading(`drop in a bay: ${show(drop)}`),
    words(width / 2, bottom + 24, `rail ${show(rail)} along its edge`),
    words(width / 2, bottom + 42, `ends ${show(cut)} from square`),
  )
  return sheet(
    {
      width,
      height: bottom + 54,
      title: 'One bay that follows the slope',
      description: `A bay of ${show(bay)} measured level drops ${show(drop)}. Its rails are ${show(rail)} along the edge, their ends cut ${show(cut)} from square.`,
    },
    parts,
  )
}

/** Posts under a string, each with its height above ground. */
export function stringDrawing(seen: Seen): string | null {
  const heights = seen.rows('groundReadings')
  const ups = heights.map((it) => numberIn(it, 'in'))
  const most = Math.max(...ups)
  const step = heights.length > 1 ? (width - 2 * side - 20) / (heights.length - 1) : 0
  const [string, tall] = [52, 130]
  const every = Math.ceil(heights.length / 12)
  const at = ups.map((up, i) => [side + 10 + i * step, string + (up / most) * tall] as const)
  const parts = [
    line(side - 8, string, width - side + 8, string, 1.5, '#111', '8 4'),
    heading(`string over ${heights.length === 1 ? 'one post' : 'the posts'}: cut each one at it`),
  ]
  if (at.length > 1)
    parts.push(
      `<path d="M${at.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}" fill="none" stroke="#111" stroke-width="2"/>`,
    )
  for (const [i, [x, y]] of at.entries()) {
    const drawn = line(x, string - 10, x, y + 14, heights.length > 40 ? 1.5 : 4, '#888')
    const says = `post ${i + 1} of ${at.length}: the string is ${show(heights[i] as Quantity)} above the ground`
    parts.push(at.length > mostParts ? drawn : part(says, drawn))
  }
  const labels = ledDown(
    at.flatMap(([x, y], i) =>
      i % every === 0 || i === at.length - 1 ? [{ x, from: y + 14, text: show(heights[i] as Quantity) }] : [],
    ),
    string + tall + 34,
  )
  parts.push(labels.drawn, aside('the posts’ distances are not to scale', labels.lowest + 22))
  return sheet(
    {
      width,
      height: labels.lowest + 32,
      title: 'Posts under a string',
      description: `The string stands above the ground at the posts, in order: ${heights.map(show).join(', ')}.`,
    },
    parts,
  )
}
