// This file is about the field pack on paper: its sheets set on pages, the same bytes for the same pack and day.
import type { Block, FieldPack } from '../../engine/index.ts'
import { type Draw, placeDrawing } from './paper/drawing.ts'
import { writeLines } from './paper/lines.ts'
import { asUsual, type Closeness, Paper } from './paper/paper.ts'
import { isTurned, writeTable } from './paper/table.ts'
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
  // The day alone: with the time of day no two prints of one plan would be alike.
  const info = {
    Title: `${pack.title}, ${pack.version}`,
    Creator: 'Plumbpost',
    Producer: 'Plumbpost',
    CreationDate: day,
  }
  const blank = (): { doc: PDFKit.PDFDocument; paper: Paper } => {
    // The fonts that every reader has lack our signs. None of them is opened.
    const doc = new Document({
      autoFirstPage: false,
      bufferPages: true,
      font: '',
      lang: 'en',
      displayTitle: true,
      info,
    })
    loadFonts(doc)
    return {
      doc,
      paper: new Paper(doc, pack.paper, pack.title, { date: inWords(day), version: pack.version, caution }),
    }
  }
  const { doc, paper } = blank()
  const tried = blank().paper
  const pieces: Uint8Array[] = []
  doc.on('data', (piece: Uint8Array) => pieces.push(piece))
  const ended = new Promise<void>((resolve, reject) => {
    doc.on('end', resolve)
    doc.on('error', reject)
  })
  for (const sheet of pack.sheets) {
    paper.closeness = closenessOf(sheet, tried, draw)
    setSheet(paper, draw, sheet)
  }
  paper.finish()
  doc.end()
  await ended
  return Buffer.concat(pieces)
}

type Sheet = FieldPack['sheets'][number]

/** Letters of 12.5 points go down to 11, the least that can be read at arm's length. */
const closer: readonly Closeness[] = [
  { letters: 0.94, rows: 0.75 },
  { letters: 0.88, rows: 0.5 },
]
/** A last page that is written on so far is worth its paper. */
const worthPaper = 0.3

/** Set closer where that saves a last page with next to nothing on it. It is tried on paper that is thrown away. */
function closenessOf(sheet: Sheet, tried: Paper, draw: Draw): Closeness {
  // What has its true size gives no room.
  if (sheet.blocks.some((it) => it.kind === 'full-size')) return asUsual
  const pagesWhen = (closeness: Closeness): number => {
    const before = tried.pageCount
    tried.closeness = closeness
    setSheet(tried, draw, sheet)
    return tried.pageCount - before
  }
  const usual = pagesWhen(asUsual)
  if (usual === 1 || tried.filled > worthPaper) return asUsual
  return closer.find((it) => pagesWhen(it) < usual) ?? asUsual
}

function setSheet(paper: Paper, draw: Draw, { title, blocks }: Sheet): void {
  paper.beginSheet(title)
  const table = blocks.find((it) => it.kind !== 'lines')
  if (blocks[0]?.kind === 'lines' && table?.kind === 'table' && table.table.rows.length > 0)
    paper.open(isTurned(paper, table.table, table.blanks))
  for (const block of blocks) place(paper, draw, block)
  paper.endSheet()
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
