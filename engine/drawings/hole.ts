// This file is about the section of a hole: ground, stone, post, and concrete where there is any. One section for each kind of post, to scale.
import type { Seen } from '../calculation.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import {
  across,
  aside,
  box,
  broken,
  column,
  dot,
  down,
  earth,
  grey,
  heading,
  line,
  type Part,
  scattered,
  sheet,
  spread,
  width,
  words,
} from './svg.ts'

const ground = 74
const underEarth = ground + 7 // no words stand in the strokes of the ground

export function holeDrawing(seen: Seen): string | null {
  const holes = seen.places.slice(0, 4).map((place, row) => sizesOf(seen, place, row))
  // One under the other, and all to one scale, so that they can be held against each other on a narrow screen.
  const room = { wide: 108, deep: holes.length > 1 ? 130 : 210 }
  const scale = Math.min(...holes.map((it) => Math.min(room.deep / it.shown, room.wide / it.wide)))
  const sections = holes.map((it) => sectionOf(it, scale, holes.length > 1))
  const heights = sections.map((it) => it.bottom)
  const whole = heights.reduce((sum, it) => sum + it, 0)
  const free = [...new Set(holes.flatMap(notToScale))]
  return sheet(
    {
      width,
      height: whole + (free.length > 0 ? 14 : 0),
      title: holes.length > 1 ? 'The holes, cut through' : 'The hole, cut through',
      description: sections.map((it) => it.words).join(' '),
    },
    [
      ...sections.map(
        ({ parts }, i) =>
          `<g transform="translate(0 ${heights.slice(0, i).reduce((sum, it) => sum + it, 0)})">${parts.join('')}</g>`,
      ),
      free.length > 0 ? aside(`${free.join(' and ')} ${free.length > 1 ? 'are' : 'is'} not to scale`, whole + 4) : '',
    ],
  )
}

/** What nobody said of a hole, and is drawn all the same. */
const notToScale = ({ onlyStone, diameter, post }: Hole): string[] => [
  ...(onlyStone ? ['the depth of the hole'] : []),
  ...(diameter || post ? [] : ['the width of hole and post']),
  ...(diameter && !post ? ['the width of the post'] : []),
  ...(post && !diameter ? ['the width of the hole'] : []),
]

type Hole = ReturnType<typeof sizesOf>

/** What is known of one hole, and in inches what is drawn of it. */
function sizesOf(seen: Seen, place: string, row: number) {
  const pick = (name: string): Quantity | undefined => {
    if (!seen.maybe(name)) return undefined
    const rows = seen.rows(name)
    return rows[row] ?? rows[0]
  }
  const inches = (q: Quantity | undefined): number | undefined => (q ? numberIn(q, 'in') : undefined)
  const [stone, planted, diameter, post, top, above, holeDepth, under] = [
    'stoneDepth',
    'embedment',
    'holeDiameter',
    'postWidth',
    'concreteBelowGrade',
    'postAbove',
    'holeDepth',
    'concreteUnder',
  ].map(pick)
  const buried = planted ?? pick('thirdOfWhole')
  const stoneIn = inches(stone) ?? 0
  const underIn = inches(under) ?? 0
  const depth = inches(holeDepth) ?? (inches(buried) ?? 0) + stoneIn + underIn
  // Where no width is given the hole is drawn at the trade's three times the post, and no width is written.
  const postIn = inches(post) ?? Math.min(3.5, (inches(diameter) ?? 12) / 2.5)
  const wide = inches(diameter) ?? Math.max(postIn * 3, depth / 4)
  const onlyStone = depth === stoneIn && !buried
  return {
    name: seen.places.length > 1 ? `${place.replace(/-posts/g, '').replace(/\+/g, ' and ')} posts` : '',
    stone,
    buried,
    diameter,
    post,
    top,
    above,
    holeDepth,
    under,
    isSquare: seen.option('holeShape') === 'square',
    stoneIn,
    underIn,
    postIn,
    wide,
    topIn: inches(top) ?? 0,
    onlyStone,
    shown: onlyStone ? depth * 2 : depth,
  }
}

function sectionOf(
  hole: Hole,
  scale: number,
  isOneOfMany: boolean,
): { parts: string[]; words: string; bottom: number } {
  const { stone, buried, diameter, post, top, above, holeDepth, under, isSquare } = hole
  const { stoneIn, underIn, postIn, wide, topIn, shown } = hole
  const middle = width / 2
  const [left, right, bottom] = [middle - (wide * scale) / 2, middle + (wide * scale) / 2, ground + shown * scale]
  const stoneTop = bottom - stoneIn * scale
  // A post that is hung in the concrete has its foot above the stone.
  const foot = stoneTop - underIn * scale
  const parts: string[] = []
  parts.push(
    `<path d="M8 ${ground}H${left}V${bottom}H${right}V${ground}H${width - 8}" fill="none" stroke="#111" stroke-width="2"/>`,
    earth(12, left - 4, ground),
    earth(right + 6, width - 8, ground),
  )
  if ((top && post) || underIn > 0) {
    const from = top && post ? ground + topIn * scale : foot
    for (const [u, v] of scattered(70)) {
      const [x, y] = [left + u * (right - left), from + v * Math.max(0, stoneTop - from)]
      if (Math.abs(x - middle) > (postIn * scale) / 2 + 2 || y > foot + 2) parts.push(dot(x, y, 0.7, grey))
    }
    if (top && post) parts.push(line(left, from, right, from, 1))
  }
  if (stoneIn > 0) {
    parts.push(box(left, stoneTop, right - left, bottom - stoneTop, '#eee', 0.75))
    // Stones that are drawn stay inside their layer, however thin it is.
    const size = Math.min(3.2, (bottom - stoneTop) / 2 - 0.5)
    if (size > 1)
      for (const [u, v] of scattered(26))
        parts.push(
          dot(left + 5 + u * (right - left - 10), stoneTop + size + v * (bottom - stoneTop - 2 * size), size, '#fff'),
        )
  }
  const half = (postIn * scale) / 2
  parts.push(box(middle - half, 34, half * 2, foot - 34, '#cfcfcf', 1.5))
  // The post goes on above: a break line says so.
  parts.push(broken(middle - half, middle + half, 34))
  const said: string[] = []
  // Under the words beside a hole that is hardly deep, too.
  const widthAt = Math.max(bottom + 30, ground + 50)
  if (holeDepth) {
    parts.push(down(right + 22, ground, bottom, show(holeDepth), 'right', 'deep', underEarth))
    said.push(`a hole ${show(holeDepth)} deep`)
  }
  if (diameter) {
    const wideOr = isSquare ? 'square' : 'wide'
    parts.push(across(left, right, widthAt, `${show(diameter)} ${wideOr}`))
    said.push(`${show(diameter)} ${wideOr}`)
    if (isSquare) parts.push(fromAbove(postIn / wide, post !== undefined))
  }
  // From the bottom up they are told, from the top down they stand in their column.
  const layers: Part[] = []
  if (stone && stoneIn > 0) {
    layers.unshift({ y1: stoneTop, y2: bottom, figure: show(stone), name: 'stone' })
    said.push(`${show(stone)} of stone in the bottom`)
  }
  if (under && underIn > 0) {
    layers.unshift({ y1: foot, y2: stoneTop, figure: show(under), name: 'concrete' })
    said.push(`${show(under)} of concrete under the foot of the post`)
  }
  if (buried) {
    layers.unshift({ y1: ground, y2: foot, figure: show(buried), name: 'in the ground' })
    said.push(`${show(buried)} of the post in the ground`)
  }
  parts.push(column(left - 14, layers, 'left', underEarth))
  // Left of the post where the plan of the hole has taken the room at the right.
  const besidePost = (text: string, y: number): string => {
    const isLeft = isSquare && middle + half + 10 + spread(text, 11) > width - 60
    return isLeft ? words(middle - half - 10, y, text, 'end', 11) : words(middle + half + 10, y, text, 'start', 11)
  }
  if (post && (top || !above)) parts.push(besidePost(`post ${show(post)}`, 52))
  else if (above) parts.push(besidePost(show(above), 46), besidePost('above ground', 60))
  if (above) said.push(`${show(above)} above it`)
  if (isOneOfMany) parts.push(heading(hole.name, 16))
  return {
    parts,
    bottom: diameter ? widthAt + 16 : bottom + 28,
    words: `${isOneOfMany ? `${hole.name}: ` : ''}${said.join(', ')}.`,
  }
}

/** A square hole cut through looks like a round one: a small plan beside it tells them apart. */
function fromAbove(post: number, hasPost: boolean): string {
  const [side, x, y] = [36, width - 54, ground - 42]
  const inner = side * post
  return [
    box(x, y, side, side, '#fff', 1.5),
    hasPost ? box(x + (side - inner) / 2, y + (side - inner) / 2, inner, inner, '#cfcfcf') : '',
    words(x + side / 2, y - 6, 'from above', 'middle', 11),
  ].join('')
}
