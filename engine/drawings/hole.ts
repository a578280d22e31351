// This file is about the section of a hole: ground, stone, post, and concrete where there is any. One section for each kind of post, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, box, dot, down, grey, line, scattered, sheet, words } from './svg.ts'

const column = 320
const ground = 74

export function holeDrawing(seen: Seen): string | null {
  const sections = seen.places.slice(0, 4).map((place, i) => sectionOf(seen, place, i))
  const many = sections.length
  return sheet(
    {
      width: column * many,
      height: Math.max(...sections.map((it) => it.bottom)) + 46,
      title: many > 1 ? 'The holes, cut through' : 'The hole, cut through',
      description: sections.map((it) => it.words).join(' '),
    },
    sections.map((it, i) => `<g transform="translate(${i * column} 0)">${it.parts.join('')}</g>`),
  )
}

function sectionOf(seen: Seen, place: string, row: number): { parts: string[]; words: string; bottom: number } {
  const pick = (name: string): Quantity | undefined => {
    if (!seen.maybe(name)) return undefined
    const rows = seen.rows(name)
    return rows[row] ?? rows[0]
  }
  const inches = (q: Quantity | undefined): number | undefined => (q ? numberIn(q, 'in') : undefined)
  const [stone, planted, diameter, post, top, above] = [
    'stoneDepth',
    'embedment',
    'holeDiameter',
    'postWidth',
    'concreteBelowGrade',
    'postAbove',
  ].map(pick)
  const buried = planted ?? pick('thirdOfWhole')
  const stoneIn = inches(stone) ?? 0
  const depth = inches(pick('holeDepth')) ?? (inches(buried) ?? 0) + stoneIn
  // Where no width is given the hole is drawn at the trade's three times the post, and no width is written.
  const postIn = inches(post) ?? 3.5
  const wide = inches(diameter) ?? Math.max(postIn * 3, depth / 4)
  const room = { wide: 108, deep: 210 }
  const onlyStone = depth === stoneIn && !buried
  const shown = onlyStone ? depth * 2 : depth
  const scale = Math.min(room.deep / shown, room.wide / wide)
  const middle = 160
  const [left, right, bottom] = [middle - (wide * scale) / 2, middle + (wide * scale) / 2, ground + shown * scale]
  const stoneTop = bottom - stoneIn * scale
  const parts: string[] = []
  parts.push(
    `<path d="M8 ${ground}H${left}V${bottom}H${right}V${ground}H${column - 8}" fill="none" stroke="#111" stroke-width="2"/>`,
  )
  for (let x = 12; x < column - 12; x += 9)
    if (x < left - 8 || x > right + 2) parts.push(line(x, ground + 7, x + 6, ground + 1, 0.75, grey))
  if (top && post) {
    const from = ground + (inches(top) ?? 0) * scale
    for (const [u, v] of scattered(70)) {
      const [x, y] = [left + u * (right - left), from + v * Math.max(0, stoneTop - from)]
      if (Math.abs(x - middle) > (postIn * scale) / 2 + 2) parts.push(dot(x, y, 0.7, grey))
    }
    parts.push(line(left, from, right, from, 1))
  }
  if (stoneIn > 0) {
    parts.push(box(left, stoneTop, right - left, bottom - stoneTop, '#eee', 0.75))
    for (const [u, v] of scattered(26))
      parts.push(
        dot(left + 5 + u * (right - left - 10), stoneTop + 4 + v * Math.max(1, bottom - stoneTop - 8), 3.2, '#fff'),
      )
  }
  const half = (postIn * scale) / 2
  parts.push(box(middle - half, 34, half * 2, stoneTop - 34, '#cfcfcf', 1.5))
  // The post goes on above: a break line says so.
  parts.push(
    `<path d="M${middle - half - 5} 36l${half / 2 + 3} -5l${half / 2 + 2} 8l${half + 5} -6" fill="none" stroke="#111" stroke-width="1.2"/>`,
  )
  const said: string[] = []
  const holeDepth = pick('holeDepth')
  if (holeDepth) {
    parts.push(down(right + 22, ground, bottom, `${show(holeDepth)} deep`))
    said.push(`a hole ${show(holeDepth)} deep`)
  }
  if (diameter) {
    parts.push(across(left, right, bottom + 30, `${show(diameter)} wide`, column))
    said.push(`${show(diameter)} wide`)
  }
  if (stone && stoneIn > 0) {
    parts.push(
      down(left - 14, stoneTop, bottom, `${show(stone)}`, 'left'),
      words(left - 21, (stoneTop + bottom) / 2 + 17, 'stone', 'end', 11),
    )
    said.push(`${show(stone)} of stone in the bottom`)
  }
  if (buried) {
    parts.push(
      down(left - 14, ground, stoneTop, show(buried), 'left'),
      words(left - 21, (ground + stoneTop) / 2 + 17, 'in the ground', 'end', 11),
    )
    said.push(`${show(buried)} of the post in the ground`)
  }
  if (post && (top || !above)) {
    parts.push(words(middle + half + 8, 50, `post ${show(post)}`, 'start', 11))
  }
  if (above) {
    parts.push(words(middle + half + 8, 50, `${show(above)} above ground`, 'start', 11))
    said.push(`${show(above)} above it`)
  }
  if (place && seen.places.length > 1)
    parts.push(words(middle, 16, `${place.replace(/-posts/g, '').replace(/\+/g, ' and ')} posts`, 'middle', 13, true))
  return {
    parts,
    bottom,
    words: `${seen.places.length > 1 ? `${place.replace(/-posts/g, '').replace(/\+/g, ' and ')} posts: ` : ''}${said.join(', ')}.`,
  }
}
