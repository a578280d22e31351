// This file is about lines of text on a sheet: paragraphs, rows of a label with its figure, and what hangs on a sign.
import type { Paper } from './paper.ts'
import { broken, lineHeight, type Style, widthOf, write } from './type.ts'

interface Set {
  readonly text: Style
  readonly figure: Style
  readonly heading: Style
  /** From one line to the next. */
  readonly high: number
}

const setOn = ({ closeness: { letters } }: Paper): Set => ({
  text: { size: 12.5 * letters },
  figure: { size: 14 * letters, weight: 'bold' },
  heading: { size: 13 * letters, weight: 'bold' },
  high: lineHeight(12.5 * letters),
})

export function writeLines(paper: Paper, lines: readonly string[]): void {
  if (lines.length === 0) return
  paper.goOn()
  for (const line of lines) {
    if (/^[^•☐].{0,80}:$/.test(line)) headingOf(paper, line.slice(0, -1))
    else if (!row(paper, line)) paragraph(paper, line)
  }
  paper.y += 8
}

/** “Worked from:” alone on its line is a heading, and keeps what comes next beside it. */
function headingOf(paper: Paper, text: string): void {
  const { heading, high } = setOn(paper)
  paper.need(24 + 2 * high)
  paper.y += 8
  write(paper.doc, text, paper.left, paper.y, heading)
  paper.y += lineHeight(heading.size)
}

/** “label: figure”, the label left and the figure right, ruled under; not where the two do not fit side by side. */
function row(paper: Paper, line: string): boolean {
  const [, label, value] = /^([^:•☐]{1,70}): ([^:]{1,48})$/.exec(line) ?? []
  const { doc, left, right, width } = paper
  const { text, figure, high } = setOn(paper)
  if (!label || !value) return false
  const wide = widthOf(doc, value, figure)
  const labels = broken(doc, label, text, width - wide - 16)
  if (wide > width / 2 || labels.length > 2) return false
  const tall = Math.max(labels.length * high, lineHeight(figure.size)) + 6
  paper.need(tall)
  labels.forEach((it, i) => {
    write(doc, it, left, paper.y + 3 + i * high, text)
  })
  write(doc, value, right, paper.y + 2, figure, 'right')
  paper.y += tall
  doc.moveTo(left, paper.y).lineTo(right, paper.y).lineWidth(0.5).strokeColor('#777').stroke()
  return true
}

function paragraph(paper: Paper, line: string): void {
  const { text, high } = setOn(paper)
  const [sign, rest] = /^[•☐] /.test(line) ? [line.slice(0, 1), line.slice(2)] : ['', line]
  const hang = sign === '' ? 0 : widthOf(paper.doc, `${sign} `, text) + 4
  const lines = broken(paper.doc, rest, text, paper.width - hang)
  // Two lines at least stay together, at either end of a page.
  paper.need(Math.min(lines.length, 2) * high + 5)
  paper.y += 5
  lines.forEach((it, i) => {
    if (i > 0) paper.need(i === lines.length - 2 ? 2 * high : high)
    if (i === 0 && sign !== '') write(paper.doc, sign, paper.left, paper.y, text)
    write(paper.doc, it, paper.left + hang, paper.y, text)
    paper.y += high
  })
}
