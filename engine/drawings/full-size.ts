// This file is about what is printed at its true size: one unit of these drawings is one millimetre on paper.
import { chainFor, type Curve, heightAt } from '../curves.ts'
import { type Amount, toNumber } from '../quantities/amount.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { grey, ink, spread } from './svg.ts'

export interface FullSize {
  readonly svg: string
  /** Millimetres. */
  readonly wide: number
  readonly high: number
  /** From where to where along it words stand, in millimetres: no cut goes through them. */
  readonly words: readonly (readonly [from: number, to: number])[]
}

/** Where a picket begins: its number, how far along, and that as it is read on a tape. */
export interface StripMark {
  readonly number: number
  readonly at: Quantity
  readonly text: string
}

const stripHigh = 36
const rim = 0.4

/**
 * A strip of paper as long as the opening: a line at the left edge of each picket, the picket’s side of it marked.
 *
 *   ║ ┃✕ 1          ┃✕ 2              ║      ┃ lay the picket’s left edge here, its wood on the side of the cross
 *   ║ ┃  2 3/16     ┃  7 7/8          ║
 */
export function stripFullSize(
  opening: Quantity,
  picketWidth: Quantity,
  marks: readonly StripMark[],
  name: string,
): FullSize {
  const wide = numberIn(opening, 'mm')
  const picket = numberIn(picketWidth, 'mm')
  const room = picket - 12
  const size = (of: string, most: number): number => Math.max(2.2, Math.min(most, room / spread(of, 1)))
  const words = marks.map(({ number, at, text }): [number, number] => {
    const x = numberIn(at, 'mm')
    const numbered = 10 + spread(String(number), size(String(number), 7), true)
    return [x - 0.5, x + Math.max(numbered, 2.5 + spread(text, size(text, 6)))]
  })
  const parts = marks.flatMap(({ number, at, text }) => {
    const x = numberIn(at, 'mm')
    return [
      `<rect x="${mm(x)}" y="6" width="${mm(picket)}" height="${stripHigh - 12}" fill="none" stroke="${grey}" stroke-width="0.25" stroke-dasharray="2 2"/>`,
      stroke(x, 0, x, stripHigh, 0.5),
      stroke(x + 2.5, 9, x + 7.5, 14, 0.5),
      stroke(x + 2.5, 14, x + 7.5, 9, 0.5),
      label(x + 10, 14.4, String(number), size(String(number), 7), true),
      label(x + 2.5, 25, text, size(text, 6)),
    ]
  })
  const [starts, ends] = ['post face, start here', 'other post face']
  const named = (marks[0] ? numberIn(marks[0].at, 'mm') : 0) + 2.5
  parts.push(
    `<rect x="${rim / 2}" y="${rim / 2}" width="${mm(wide - rim)}" height="${stripHigh - rim}" fill="none" stroke="${ink}" stroke-width="${rim}"/>`,
    stroke(0.5, 0, 0.5, stripHigh, 1),
    stroke(wide - 0.5, 0, wide - 0.5, stripHigh, 1),
    label(2.5, 4.4, starts, 3.2),
    label(named, stripHigh - 1.8, name, 3.2),
    end(wide - 2.5, stripHigh - 1.8, ends, 3.2),
  )
  return sheetOf(
    wide,
    stripHigh,
    `A story stick for ${name}: ${marks.length} marks, each the left edge of a picket.`,
    parts,
    [
      ...words,
      [0, 2.5 + spread(starts, 3.2)],
      [named, named + spread(name, 3.2)],
      [wide - 2.5 - spread(ends, 3.2), wide],
    ],
  )
}

export interface ArchSeen {
  readonly opening: Quantity
  readonly rise: Quantity
  readonly curve: Curve
  readonly dips: boolean
  /** The circle's radius, where it is one. */
  readonly radius: Quantity | undefined
}

/** Paper under the curve: the template’s own margin is marked on the board. */
const under = 8

/** Half of an arch, from the post to the middle of the bay: turned over, it is the other half. */
export function halfArchFullSize({ opening, rise, curve, dips, radius }: ArchSeen): FullSize {
  const [chord, up] = [numberIn(opening, 'mm'), numberIn(rise, 'mm')]
  const size: Amount = radius?.amount ?? (curve === 'chain' ? chainFor(opening.amount, rise.amount) : rise.amount)
  const inches = (x: number): number =>
    toNumber(heightAt(curve, { value: x, error: 0 }, opening.amount, rise.amount, size))
  const [wide, high] = [chord / 2, up + under + 2]
  const over = (x: number): number => {
    const y = inches((x - chord / 2) / 25.4) * 25.4
    return dips ? up - y : y
  }
  const steps = Math.max(40, Math.ceil(wide / 5))
  const points = Array.from({ length: steps + 1 }, (_, i) => {
    const x = (i / steps) * wide
    return `${mm(x)} ${mm(high - under - over(x))}`
  })
  const starts = `${dips ? 'level with the lowest place of the curve' : 'level with the ends of the curve'} · post face at this end`
  const ends = 'middle of the bay: turn over here'
  return sheetOf(
    wide,
    high,
    'Half of the arch, from the post face to the middle of the bay.',
    [
      `<path d="M${points.join('L')}V${mm(high)}H0Z" fill="none" stroke="${ink}" stroke-width="0.5" stroke-linejoin="round"/>`,
      `<path d="M0 ${mm(high - under)}H${mm(wide)}" fill="none" stroke="${ink}" stroke-width="0.25" stroke-dasharray="4 3"/>`,
      label(3, high - 2, starts, 4),
      end(wide - 3, high - 2, ends, 4),
    ],
    [
      [0, 3 + spread(starts, 4)],
      [wide - 3 - spread(ends, 4), wide],
    ],
  )
}

const mm = (x: number): string => String(Math.round(x * 1000) / 1000)
const stroke = (x1: number, y1: number, x2: number, y2: number, weight: number): string =>
  `<line x1="${mm(x1)}" y1="${mm(y1)}" x2="${mm(x2)}" y2="${mm(y2)}" stroke="${ink}" stroke-width="${weight}"/>`
const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')
const label = (x: number, y: number, text: string, size: number, bold = false, anchor = 'start'): string =>
  `<text x="${mm(x)}" y="${mm(y)}" text-anchor="${anchor}" font-size="${mm(size)}" fill="${ink}"${bold ? ' font-weight="700"' : ''}>${escaped(text)}</text>`
const end = (x: number, y: number, text: string, size: number): string => label(x, y, text, size, false, 'end')

const sheetOf = (
  wide: number,
  high: number,
  description: string,
  parts: readonly string[],
  words: FullSize['words'],
): FullSize => ({
  wide,
  high,
  words,
  svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${mm(wide)} ${mm(high)}" role="img" font-family="sans-serif"><title>True size</title><desc>${escaped(description)}</desc><rect width="${mm(wide)}" height="${mm(high)}" fill="#fff"/>${parts.join('')}</svg>`,
})
