// This file is about letters on paper: which font, how wide a text stands in it, and where its lines break.
import { createRequire } from 'node:module'

type Weight = 'plain' | 'bold'
type Doc = PDFKit.PDFDocument

const require = createRequire(import.meta.url)

/** It has every sign we write (′ ″ ⁄ − → ≤ ², fractions), is narrow enough for tables, and may be embedded. */
export function loadFonts(doc: Doc): void {
  doc.registerFont('plain', require.resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf'))
  doc.registerFont('bold', require.resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf'))
}

export const lineHeight = (size: number): number => Math.round(size * 1.28 * 10) / 10

export interface Style {
  readonly size: number
  readonly weight?: Weight
}

export function widthOf(doc: Doc, text: string, { size, weight = 'plain' }: Style): number {
  return text === '' ? 0 : doc.font(weight, size).widthOfString(text)
}

/** One line, its top at y. It is written where it is told, whether it fits or not. */
export function write(
  doc: Doc,
  text: string,
  x: number,
  y: number,
  { size, weight = 'plain' }: Style,
  align: 'left' | 'middle' | 'right' = 'left',
): void {
  if (text === '') return
  const wide = align === 'left' ? 0 : widthOf(doc, text, { size, weight })
  const start = align === 'left' ? x : align === 'right' ? x - wide : x - wide / 2
  doc.font(weight, size).fillColor('#000').text(text, start, y, { lineBreak: false })
}

/** The text in lines that fit the width. A word that is longer than a line is cut where it must be. */
export function broken(doc: Doc, text: string, style: Style, width: number): string[] {
  const fits = (it: string): boolean => widthOf(doc, it, style) <= width
  const lines: string[] = []
  for (const paragraph of text.split('\n')) {
    let line = ''
    for (let word of paragraph.split(/[ \t]+/)) {
      const longer = line === '' ? word : `${line} ${word}`
      if (fits(longer)) {
        line = longer
        continue
      }
      if (line !== '') lines.push(line)
      while (!fits(word)) {
        const signs = [...word]
        let most = 1
        while (most < signs.length && fits(signs.slice(0, most + 1).join(''))) most++
        if (most >= signs.length) break
        lines.push(signs.slice(0, most).join(''))
        word = signs.slice(most).join('')
      }
      line = word
    }
    lines.push(line)
  }
  return lines
}

/** The text cut to one line that fits, with … where something is left off. */
export function oneLine(doc: Doc, text: string, style: Style, width: number): string {
  if (widthOf(doc, text, style) <= width) return text
  const signs = [...text]
  while (signs.length > 1 && widthOf(doc, `${signs.join('').trimEnd()}…`, style) > width) signs.pop()
  return `${signs.join('').trimEnd()}…`
}
