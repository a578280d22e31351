// This file is about a drawing on paper: as wide as the page lets it be, never over the foot, its caption under it.
import type drawSvg from 'svg-to-pdfkit'
import type { Paper } from './paper.ts'
import { broken, lineHeight, write } from './type.ts'

export type Draw = typeof drawSvg

const caption = { size: 11.5 }
/** A drawing is made for so many units across, its letters 12 of them high. */
const usual = 360
/** At more than so many points a unit its letters are larger than the sheet's own. */
const largest = 1.35

export function placeDrawing(paper: Paper, draw: Draw, svg: string, words: string): void {
  const [wide, high] = sizeOf(svg)
  const under = words === '' ? [] : broken(paper.doc, words, caption, paper.widthWhen(false))
  const beside = under.length * lineHeight(caption.size) + 18
  const most = paper.heightWhen(false)
  const full = Math.min(paper.widthWhen(false) / wide, (most - beside) / high, Math.max(largest, usual / wide))
  paper.open()
  // Somewhat smaller on this page is better than a page more.
  const left = (paper.room - beside) / high
  const scale = left < full && left >= Math.min(full, usual / wide) ? left : full
  paper.need(high * scale + beside)
  const x = paper.left + (paper.width - wide * scale) / 2
  drawAt(paper, draw, svg, { x, y: paper.y, width: wide * scale, height: high * scale })
  paper.y += high * scale + 4
  for (const line of under) {
    write(paper.doc, line, paper.left + paper.width / 2, paper.y, caption, 'middle')
    paper.y += lineHeight(caption.size)
  }
  paper.y += 14
}

export interface Frame {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** The drawing set into exactly that frame; what it cannot draw is our mistake, and thrown. */
export function drawAt({ doc }: Paper, draw: Draw, svg: string, { x, y, width, height }: Frame): void {
  doc.save()
  draw(doc, svg, x, y, {
    width,
    height,
    preserveAspectRatio: 'xMinYMin meet',
    assumePt: true,
    fontCallback: (_, bold) => (bold ? 'bold' : 'plain'),
    warningCallback: (warning) => {
      throw new Error(`a drawing cannot be set on paper: ${warning}`)
    },
  })
  doc.restore()
}

/** How wide and high a drawing of ours is, by its viewBox. */
export function sizeOf(svg: string): [wide: number, high: number] {
  const [, wide, high] = /viewBox="[-\d.]+ [-\d.]+ ([\d.]+) ([\d.]+)"/.exec(svg) ?? []
  if (!Number(wide) || !Number(high)) throw new Error('a drawing has no viewBox with a width and a height')
  return [Number(wide), Number(high)]
}
