// This file is about the field pack on paper: its sheets set on pages, the same bytes for the same pack and day.
import type { Block, FieldPack } from '../../engine/index.ts'
import { type Draw, placeDrawing } from './paper/drawing.ts'
import { writeLines } from './paper/lines.ts'
import { Paper } from './paper/paper.ts'
import { writeTable } from './paper/table.ts'
import { placeFullSize } from './paper/tiles.ts'
import { loadFonts } from './paper/type.ts'

export interface Printing {
  /** The day that is printed on every page, as 2026-11-26. */
  readonly date: string
  /** One line of caution at the foot of every page. */
  readonly caution: string
}

export async function fieldPackPdf(pack: FieldPack, { date, caution }: Printing): Promise<Uint8Array> {
  // Read in when a pack is wanted: a start does not wait for them.
  const [{ default: Document }, { default: draw }] = await Promise.all([import('pdfkit'), import('svg-to-pdfkit')])
  const day = new Date(`${date}T00:00:00Z`)
  const doc = new Document({
    autoFirstPage: false,
    bufferPages: true,
    // The fonts that every reader has lack our signs. None of them is opened.
    font: '',
    lang: 'en',
    displayTitle: true,
    // The day alone: with the time of day no two prints of one plan would be alike.
    info: { Title: `${pack.title}, ${pack.version}`, Creator: 'Plumbpost', Producer: 'Plumbpost', CreationDate: day },
  })
  const pieces: Uint8Array[] = []
  doc.on('data', (piece: Uint8Array) => pieces.push(piece))
  const ended = new Promise<void>((resolve, reject) => {
    doc.on('end', resolve)
    doc.on('error', reject)
  })
  loadFonts(doc)
  const paper = new Paper(doc, pack.paper, pack.title, { date: inWords(day), version: pack.version, caution })
  for (const { title, blocks } of pack.sheets) {
    paper.beginSheet(title)
    for (const block of blocks) place(paper, draw, block)
    paper.endSheet()
  }
  paper.finish()
  doc.end()
  await ended
  return Buffer.concat(pieces)
}

function place(paper: Paper, draw: Draw, block: Block): void {
  switch (block.kind) {
    case 'lines':
      writeLines(paper, block.lines)
      break
    case 'table':
      writeTable(paper, block.table, block.blanks)
      break
    case 'drawing':
      placeDrawing(paper, draw, block.svg, block.caption)
      break
    case 'full-size':
      placeFullSize(paper, draw, block)
      break
    default:
      throw new Error(`no way to print ${JSON.stringify(block satisfies never)}`)
  }
}

/** 26 November 2026: a month in words cannot be taken for a day. */
const inWords = (day: Date): string =>
  day.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' })
