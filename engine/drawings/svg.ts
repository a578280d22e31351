// This file is about the little that all drawings share: a white sheet, ink, one grey, text that is escaped, dimension lines with ticks.
// Ink on white reads the same by day, in the dark scheme and in print; nothing depends on colour.

export const ink = '#111'
export const grey = '#6b6b6b'
export const letter = 12
/** Every sheet is this wide: on a phone, 320 px across, its smallest letters are then still some 10 px high. */
export const width = 360

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
const at = (x: number): string => String(Math.round(x * 100) / 100)

export interface Sheet {
  readonly width: number
  readonly height: number
  readonly title: string
  readonly description: string
}

/** A whole drawing. It scales to what holds it; the description is its text alternative. */
export const sheet = ({ width, height, title, description }: Sheet, parts: readonly string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${at(width)} ${at(height)}" role="img" font-family="sans-serif" font-size="${letter}"><title>${escaped(title)}</title><desc>${escaped(description)}</desc><rect width="${at(width)}" height="${at(height)}" fill="#fff"/>${parts.join('')}</svg>`

/**
 * A picket, a post, a mark that tells what it is, where a reader lets it be asked: “picket 5 of 16: left edge at 24 7/8 in”.
 * What comes before the colon names it. On paper nothing of it is seen.
 */
export const part = (says: string, drawn: string): string => `<g><title>${escaped(says)}</title>${drawn}</g>`

/** Of more parts than these nobody asks each: they are drawn, and tell nothing. */
export const mostParts = 150

export const line = (x1: number, y1: number, x2: number, y2: number, weight = 1, colour = ink, dash = ''): string =>
  `<line x1="${at(x1)}" y1="${at(y1)}" x2="${at(x2)}" y2="${at(y2)}" stroke="${colour}" stroke-width="${weight}"${dash ? ` stroke-dasharray="${dash}"` : ''}/>`

export const box = (x: number, y: number, width: number, height: number, fill = 'none', weight = 1): string =>
  `<rect x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" fill="${fill}" stroke="${ink}" stroke-width="${weight}"/>`

export const shape = (points: readonly (readonly [number, number])[], fill = 'none', weight = 1): string =>
  `<path d="M${points.map(([x, y]) => `${at(x)} ${at(y)}`).join('L')}Z" fill="${fill}" stroke="${ink}" stroke-width="${weight}" stroke-linejoin="round"/>`

export const dot = (x: number, y: number, radius: number, fill = ink): string =>
  `<circle cx="${at(x)}" cy="${at(y)}" r="${at(radius)}" fill="${fill}" stroke="${ink}" stroke-width="0.75"/>`

export const words = (
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  size = letter,
  bold = false,
): string =>
  `<text x="${at(x)}" y="${at(y)}" text-anchor="${anchor}" font-size="${size}" fill="${ink}"${bold ? ' font-weight="700"' : ''}>${escaped(text)}</text>`

/** About how wide a text stands in the widest of the usual fonts, for keeping labels apart: no font is measured here. */
export function spread(text: string, size = letter, bold = false): number {
  let ems = 0
  for (const sign of text) ems += /[ .,:;/ijlfrtI’()°²³]/.test(sign) ? 0.37 : /[mwMW%−…→]/.test(sign) ? 0.95 : 0.63
  return ems * size * (bold ? 1.12 : 1)
}

/** Where a text has to be put to stand wholly on the sheet: there, or as near to it as it goes. */
export function onSheet(x: number, text: string, anchor: 'start' | 'middle' | 'end' = 'middle', size = letter): number {
  const wide = spread(text, size)
  const before = anchor === 'start' ? 0 : anchor === 'middle' ? wide / 2 : wide
  return Math.max(Math.min(x, width - 3 - (wide - before)), 3 + before)
}

/** A size of letters in which a text fits the sheet from side to side. */
const fitting = (text: string, size: number, bold = false): number =>
  Math.max(8, Math.min(size, Math.floor((2 * (width - 12)) / spread(text, 1, bold)) / 2))

/** What the drawing says first, in bold at the top. */
export const heading = (text: string, y = 22): string =>
  words(width / 2, y, text, 'middle', fitting(text, 13, true), true)

/** A line of smaller words over or under the drawing: what is not to scale, what is left out. */
export const aside = (text: string, y: number): string => words(width / 2, y, text, 'middle', fitting(text, 11))

/** Words on a white ground, for where lines have to pass behind them. */
export const plate = (
  x: number,
  y: number,
  text: string,
  size = letter,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): string => {
  const half = spread(text, size) / 2 + 2
  const middle = anchor === 'middle' ? x : anchor === 'start' ? x + half - 2 : x - half + 2
  return `<rect x="${at(middle - half)}" y="${at(y - size)}" width="${at(2 * half)}" height="${at(size + 4)}" fill="#fff"/>${words(x, y, text, anchor, size)}`
}

const tick = (x: number, y: number): string => line(x - 3, y + 3, x + 3, y - 3, 1.5)

/**
 * A dimension from left to right, its text above it; where it is too short for its text, the text stands beside it.
 * Where lines are about that come near the text, it is on a white ground.
 */
export function across(x1: number, x2: number, y: number, text: string, limit = width, isOnPlate = false): string {
  const write = (x: number, y: number, anchor: 'start' | 'middle' | 'end'): string =>
    isOnPlate ? plate(x, y, text, letter, anchor) : words(x, y, text, anchor)
  const room = x2 - x1
  const wide = spread(text)
  const parts = [line(x1, y, x2, y), tick(x1, y), tick(x2, y)]
  if (wide <= room - 4) parts.push(write((x1 + x2) / 2, y - 5, 'middle'))
  else if (x2 + 6 + wide <= limit) parts.push(write(x2 + 6, y + 4, 'start'))
  else if (x1 - 6 - wide >= 0) parts.push(write(x1 - 6, y + 4, 'end'))
  else parts.push(write(onSheet((x1 + x2) / 2, text), y - 5, 'middle'))
  return parts.join('')
}

/** A dimension from top to bottom, its text to the right (or left), with smaller words under it; either may be left out. The words stand no higher than `least`. */
export function down(
  x: number,
  y1: number,
  y2: number,
  text: string,
  side: Side = 'right',
  under = '',
  least = Number.NEGATIVE_INFINITY,
): string {
  const high = under ? 26 : 14
  return ruled(x, y1, y2) + beside(x, Math.max((y1 + y2 - high) / 2, least), text, side, under)
}

type Side = 'left' | 'right'

/** One of several dimensions in a column. */
export interface Part {
  readonly y1: number
  readonly y2: number
  readonly figure: string
  readonly name: string
}

/**
 * Dimensions one under the other, from the top. Each has its figure and its name beside it, on one line where it is thin;
 * what is too thin even for that has its words as near as they go without running into others, between `least` and `most`, and led to it.
 */
export function column(
  x: number,
  parts: readonly Part[],
  side: Side,
  least: number,
  most = Number.POSITIVE_INFINITY,
): string {
  const room = side === 'right' ? width - x - 10 : x - 10
  const labels = parts.map(({ y1, y2, figure, name }) => {
    const isTall = name !== '' && y2 - y1 >= 28
    const both = name === '' ? figure : `${figure}, ${name}`
    return {
      text: isTall || spread(both, 9) > room - 9 ? figure : both,
      under: isTall ? name : '',
      high: isTall ? 26 : 14,
      middle: (y1 + y2) / 2,
      top: 0,
    }
  })
  let edge = least
  for (const it of labels) {
    it.top = Math.max(it.middle - it.high / 2, edge)
    edge = it.top + it.high
  }
  edge = most
  for (const it of labels.toReversed()) {
    it.top = Math.min(it.top, edge - it.high)
    edge = it.top
  }
  const out = side === 'right' ? 1 : -1
  const drawn = labels.map(({ text, under, high, middle, top }, i) => {
    const { y1, y2 } = parts[i] as Part
    const isMoved = Math.abs(top + high / 2 - middle) > 6
    const leader = isMoved ? line(x + 2 * out, middle, x + 14 * out, top + high / 2, 0.5, grey) : ''
    return ruled(x, y1, y2) + leader + beside(isMoved ? x + 9 * out : x, top, text, side, under)
  })
  return drawn.join('')
}

const ruled = (x: number, y1: number, y2: number): string => line(x, y1, x, y2) + tick(x, y1) + tick(x, y2)

/** The words beside a dimension, from so far up; where they are too long for the sheet they are set smaller. */
function beside(x: number, top: number, text: string, side: Side, under: string): string {
  const [start, anchor] = side === 'right' ? [x + 7, 'start' as const] : [x - 7, 'end' as const]
  const room = side === 'right' ? width - 3 - start : start - 3
  const write = (it: string, y: number, usual: number): string => {
    const size = Math.max(9, Math.min(usual, Math.floor((2 * room) / spread(it, 1)) / 2))
    return words(onSheet(start, it, anchor, size), y, it, anchor, size)
  }
  return (text ? write(text, top + (under ? 12 : 11), letter) : '') + (under ? write(under, top + 25, 11) : '')
}

/** The angle between two directions, in degrees turned left from the right hand: an arc round the point where they meet. */
export function bend(x: number, y: number, radius: number, from: number, to: number): string {
  const end = (degrees: number): string => {
    const turn = (degrees * Math.PI) / 180
    return `${at(x + radius * Math.cos(turn))} ${at(y - radius * Math.sin(turn))}`
  }
  return `<path d="M${end(from)}A${at(radius)} ${at(radius)} 0 0 ${to > from ? 0 : 1} ${end(to)}" fill="none" stroke="${ink}" stroke-width="1.2"/>`
}

/** How many times larger than it is a small lean is drawn, so that it can be seen; whoever draws it so says so. */
export const timesLarger = (size: number, seen: number, most: number): number =>
  size <= 0 ? 1 : Math.max(1, Math.min(Math.ceil(seen / size), Math.floor(most / size), 40))

/** The zigzag where something goes on that is not drawn. */
export function broken(x1: number, x2: number, y: number): string {
  const [middle, step] = [(x1 + x2) / 2, Math.min(4, (x2 - x1) / 6)]
  return `<path d="M${at(x1 - 5)} ${at(y)}H${at(middle - 2 * step)}l${at(step)} -6l${at(2 * step)} 12l${at(step)} -6H${at(x2 + 5)}" fill="none" stroke="${ink}" stroke-width="1.2"/>`
}

/** Strokes under a line of ground, from left to right. */
export function earth(x1: number, x2: number, y: number): string {
  const strokes: string[] = []
  for (let x = x1; x + 6 <= x2; x += 9) strokes.push(line(x, y + 7, x + 6, y + 1, 0.75, grey))
  return strokes.join('')
}

interface Led {
  readonly x: number
  /** Where its leader starts, above. */
  readonly from: number
  readonly text: string
}

/** Labels under the places they belong to, each on its leader; one that would run into its neighbour goes a row down. Tells where the lowest row is. */
export function ledDown(places: readonly Led[], y: number): { drawn: string; lowest: number } {
  const ends: number[] = []
  const labels = places.map(({ x, from, text }) => {
    const middle = onSheet(x, text, 'middle', 11)
    const half = spread(text, 11) / 2 + 3
    let row = ends.findIndex((end) => end <= middle - half)
    if (row < 0) row = Math.min(ends.length, 3)
    ends[row] = middle + half
    return { x, from, text, middle, y: y + row * 15 }
  })
  const leaders = labels.map((it) => line(it.x, it.from, it.x, it.y - 10, 0.5, grey, '2 2'))
  const plates = labels.map((it) => plate(it.middle, it.y, it.text, 11))
  return { drawn: [...leaders, ...plates].join(''), lowest: y + Math.max(0, ends.length - 1) * 15 }
}

/** Places from a seed that is always the same: for stone and speckle, so that a drawing never differs from itself. */
export function* scattered(count: number): Generator<readonly [number, number]> {
  for (let i = 1; i <= count; i++) yield [(i * 0.754877666) % 1, (i * 0.569840296) % 1]
}
