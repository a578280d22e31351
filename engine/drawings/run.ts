// This file is about the plan of a run: posts at their centres, bays between them, gates as openings, laid out in strips that can be read on a phone.
import type { Seen } from '../calculation.ts'
import { less } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, box, heading, ledDown, line, part, plate, sheet, spread, width, words } from './svg.ts'

const margin = 30
const perStrip = 5 // posts; more would crowd their stations
const stripHeight = 108
const mostStrips = 4

interface Post {
  readonly number: number
  readonly isGate: boolean
  readonly gateFollows: boolean
  readonly station: string
  /** Exactly, in the table's own unit: only proportions are drawn. */
  readonly place: number
}

export function runDrawing(seen: Seen): string | null {
  const table = seen.tables.find((it) => it.title === 'Post centres')
  if (!table) return null
  const posts: Post[] = table.rows.map(([number, kind, station, place]) => ({
    number: Number(number),
    isGate: String(kind).startsWith('gate post'),
    gateFollows: kind === 'gate post, then the gate',
    station: String(station),
    place: Number(place),
  }))
  const ends = seen.option('runEnds')
  // In a run with gates at their places the bays differ: the widest is named.
  const bay = seen.maybe('bayCentres') ?? seen.rows('bayRow').reduce((a, b) => (less(a, b) ? b : a))
  const strips: Post[][] = []
  for (let from = 0; from < posts.length - 1; from += perStrip - 1) strips.push(posts.slice(from, from + perStrip))
  const hidden = strips.length > mostStrips ? strips.splice(mostStrips - 1, strips.length - mostStrips) : []
  const parts: string[] = []
  let y = ends === 'loop' ? 50 : 34
  // One scale for every strip: a last strip with fewer bays is shorter on the sheet as well.
  const longest = Math.max(...strips.map((it) => (it.at(-1) as Post).place - (it[0] as Post).place), 1)
  strips.forEach((strip, i) => {
    if (hidden.length > 0 && i === mostStrips - 1) {
      parts.push(
        aside(
          `… and so on: ${hidden.reduce((sum, it) => sum + it.length - 1, 0)} posts more at the same spacing …`,
          y + 14,
        ),
      )
      y += 40
    }
    parts.push(...stripOf(strip, y, i === 0, posts, ends, (width - 2 * margin) / longest))
    y += stripHeight
  })
  parts.push(heading(`bays ${show(bay)} centre to centre`, 18))
  if (ends === 'loop') parts.push(aside('the last bay ends at post 1', 36))
  const gates = posts.filter((post) => post.isGate).length
  return sheet(
    {
      width,
      height: y + 4,
      title: 'The run from above',
      description: `A run with ${posts.length} posts, ${show(seen.one('bays'))} of ${show(bay)} centre to centre${gates > 0 ? ', with gate posts shown dark' : ''}. Stations are measured from the start.`,
    },
    parts,
  )
}

function stripOf(
  strip: readonly Post[],
  y: number,
  isFirst: boolean,
  posts: readonly Post[],
  ends: string | undefined,
  scale: number,
): string[] {
  const [first, last] = [strip[0] as Post, strip.at(-1) as Post]
  const x = (post: Post): number => margin + (post.place - first.place) * scale
  const parts: string[] = []
  const gates: string[] = []
  strip.forEach((post, i) => {
    const next = strip[i + 1]
    const here = x(post)
    let raised = 0
    const before = strip[i - 1]
    if (before?.gateFollows) {
      // The leaf hangs on this post and stands open: the post's number goes over it.
      const swing = Math.max(4, Math.min(here - x(before) - 10, 26))
      raised = swing
      parts.push(
        `<path d="M${here} ${y + 40 - swing}A${swing} ${swing} 0 0 0 ${here - swing} ${y + 40}" fill="none" stroke="#6b6b6b" stroke-dasharray="3 2"/>`,
        line(here, y + 40, here, y + 40 - swing, 1.5),
      )
      gates.push(plate((x(before) + here) / 2, y + 58, 'gate', 11))
    }
    if (next && !post.gateFollows) parts.push(line(here, y + 40, x(next), y + 40, 3))
    parts.push(
      part(
        `${post.isGate ? 'gate post' : 'post'} ${post.number} of ${posts.length}: centre at ${post.station} from the start`,
        box(here - 5, y + 35, 10, 10, post.isGate ? '#111' : '#fff', 1.5),
      ),
    )
    // Over a leaf, and over the number of a post that stands too near.
    const isNear = before && here - x(before) < spread(`${before.number}${post.number}`, 12, true) / 2 + 2
    const up = raised > 8 ? 36 - raised : isNear ? 16 : 28
    parts.push(words(here, y + up, String(post.number), 'middle', 12, true))
  })
  const stations = ledDown(
    strip.map((post) => ({ x: x(post), from: y + 46, text: post.station })),
    y + 72,
  )
  parts.push(stations.drawn, ...gates)
  if (isFirst && ends === 'walls') parts.push(box(4, y + 18, 10, 40, '#bbb'), words(4, y + 14, 'wall', 'start', 11))
  if (last === posts.at(-1) && ends === 'walls') parts.push(box(x(last) + 16, y + 18, 10, 40, '#bbb'))
  return parts
}
