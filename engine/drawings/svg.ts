// This file is about the little that all drawings share: a white sheet, ink, one grey, text that is escaped, dimension lines with ticks.
// Ink on white reads the same by day, in the dark scheme and in print; nothing depends on colour.

export const ink = '#111'
export const grey = '#6b6b6b'
export const letter = 12

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

/** About how wide a text stands, for keeping labels apart: no font is measured here. */
export const spread = (text: string, size = letter): number => text.length * size * 0.56

const tick = (x: number, y: number): string => line(x - 3, y + 3, x + 3, y - 3, 1.5)

/** A dimension from left to right, its text above it; where it is too short for its text, the text stands to the right. */
export function across(x1: number, x2: number, y: number, text: string, limit: number): string {
  const room = x2 - x1
  const wide = spread(text)
  const parts = [line(x1, y, x2, y), tick(x1, y), tick(x2, y)]
  if (wide <= room - 4) parts.push(words((x1 + x2) / 2, y - 5, text))
  else if (x2 + 6 + wide <= limit) parts.push(words(x2 + 6, y + 4, text, 'start'))
  else parts.push(words(x1 - 6, y + 4, text, 'end'))
  return parts.join('')
}

/** A dimension from top to bottom, its text to the right (or left). */
export function down(x: number, y1: number, y2: number, text: string, side: 'left' | 'right' = 'right'): string {
  return [
    line(x, y1, x, y2),
    tick(x, y1),
    tick(x, y2),
    words(side === 'right' ? x + 7 : x - 7, (y1 + y2) / 2 + 4, text, side === 'right' ? 'start' : 'end'),
  ].join('')
}

/** Places from a seed that is always the same: for stone and speckle, so that a drawing never differs from itself. */
export function* scattered(count: number): Generator<readonly [number, number]> {
  for (let i = 1; i <= count; i++) yield [(i * 0.754877666) % 1, (i * 0.569840296) % 1]
}
