// This file is about the plan of a run: posts at their centres, bays between them, gates as openings, laid out in strips that can be read on a phone.
import type { Seen } from '../calculation.ts'
import { show } from '../quantities/show.ts'
import { box, line, sheet, spread, words } from './svg.ts'

const width = 460
const margin = 30
const perStrip = 6 // posts; more would crowd their stations
const stripHeight = 104
const mostStrips = 4

interface Post {
  readonly number: number
  readonly isGate: boolean
  readonly station: string
  /** Exactly, in the table's own unit: only proportions are drawn. */
  readonly place: number
}

export function runDrawing(seen: Seen): string | null {
  const table = seen.tables.find((it) => it.title === 'Post centres')
  if (!table) return null
  const posts: Post[] = table.rows.map(([number, kind, station, place]) => ({
    number: Number(number),
    isGate: kind === 'gate post',
    station: String(station),
    place: Number(place),
  }))
  const ends = seen.option('runEnds')
  const bay = seen.one('bayCentres')
  const strips: Post[][] = []
  for (let from = 0; from < posts.length - 1; from += perStrip - 1) strips.push(posts.slice(from, from + perStrip))
  const hidden = strips.length > mostStrips ? strips.splice(mostStrips - 1, strips.length - mostStrips) : []
  const parts: string[] = []
  let y = 34
  strips.forEach((strip, i) => {
    if (hidden.length > 0 && i === mostStrips - 1) {
      parts.push(
        words(
          width / 2,
          y + 14,
          `… and so on: ${hidden.reduce((sum, it) => sum + it.length - 1, 0)} posts more at the same spacing …`,
          'middle',
          12,
        ),
      )
      y += 40
    }
    parts.push(...stripOf(strip, y, i === 0, posts, ends))
    y += stripHeight
  })
  parts.push(words(margin, 18, `bays ${show(bay)} centre to centre`, 'start', 13, true))
  if (ends === 'loop') parts.push(words(width - margin, 18, 'the last bay ends at post 1', 'end', 11))
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
): string[] {
  const [first, last] = [strip[0] as Post, strip.at(-1) as Post]
  const length = Math.max(1, last.place - first.place)
  const scale = (width - 2 * margin) / length
  const x = (post: Post): number => margin + (post.place - first.place) * scale
  const parts: string[] = []
  strip.forEach((post, i) => {
    const next = strip[i + 1]
    const here = x(post)
    if (next) {
      const there = x(next)
      if (post.isGate && next.isGate && isGateBetween(post, next, posts)) {
        const swing = Math.min(there - here, 34)
        parts.push(
          `<path d="M${there} ${y + 40 - swing}A${swing} ${swing} 0 0 0 ${there - swing} ${y + 40}" fill="none" stroke="#6b6b6b" stroke-dasharray="3 2"/>`,
          line(there, y + 40, there, y + 40 - swing, 1.5),
          words((here + there) / 2, y + 56, 'gate', 'middle', 11),
        )
      } else parts.push(line(here, y + 40, there, y + 40, 3))
    }
    parts.push(box(here - 5, y + 35, 10, 10, post.isGate ? '#111' : '#fff', 1.5))
    parts.push(words(here, y + 28, String(post.number), 'middle', 12, true))
    // Stations are staggered, so that neighbours never run into one another.
    const half = spread(post.station, 11) / 2 + 3
    parts.push(
      words(Math.min(Math.max(here, half), width - half), y + (i % 2 === 0 ? 70 : 86), post.station, 'middle', 11),
      line(here, y + 46, here, y + (i % 2 === 0 ? 59 : 75), 0.5, '#6b6b6b'),
    )
  })
  if (isFirst && ends === 'walls') parts.push(box(4, y + 18, 10, 44, '#bbb'), words(4, y + 14, 'wall', 'start', 11))
  if (last === posts.at(-1) && ends === 'walls') parts.push(box(width - 14, y + 18, 10, 44, '#bbb'))
  return parts
}

/** Two gate posts side by side hold a gate between them, unless a bay stands there: gate posts come in pairs along the run. */
function isGateBetween(post: Post, next: Post, posts: readonly Post[]): boolean {
  const order = posts.filter((it) => it.isGate && it.number <= post.number).length
  return order % 2 === 1 && next.number === post.number + 1
}
