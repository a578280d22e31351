// This file is about a table on paper: columns as wide as what stands in them, its heading again on each page, figures to the right.
// It is set as large as it fits; where it fits no upright page, the page is turned.
import type { Table } from '../../../engine/index.ts'
import { headOf } from '../heading.ts'
import type { Paper } from './paper.ts'
import { broken, lineHeight, widthOf, write } from './type.ts'

interface Column {
  readonly head: string
  readonly cells: readonly string[]
  readonly isFigure: boolean
  /** To be written in by hand. */
  readonly isBlank: boolean
}

interface Setting {
  readonly landscape: boolean
  readonly size: number
  readonly widths: readonly number[]
}

const large = [14, 13, 12, 11]
/** Under 11 points a person outside cannot read it at arm's length: smaller only where nothing else is left. */
const crowded = [12, 11]
const smallest = [10, 9, 8]
const between = 14
const widestBlank = 90
/** A title stands in so many lines at most. */
const mostTitle = 3
const titled = { size: 13, weight: 'bold' } as const

export function writeTable(paper: Paper, table: Table, blanks: readonly string[] = []): void {
  if (table.rows.length === 0) return
  const columns = columnsOf(table, blanks)
  const set = bestSetting(paper, table.title, columns)
  paper.open(set.landscape)
  draw(paper, table.title, columns, set)
}

/** Whether the page is turned for it: what stands before it on its sheet is written on the same page. */
export const isTurned = (paper: Paper, table: Table, blanks: readonly string[] = []): boolean =>
  bestSetting(paper, table.title, columnsOf(table, blanks)).landscape

const bestSetting = (paper: Paper, title: string, columns: readonly Column[]): Setting =>
  setting(paper, columns, false, large, true) ?? fewerPages(paper, title, columns) ?? cutWords(paper, columns)

/** Upright or on its side, its longer cells in several lines: whichever takes fewer pages. */
function fewerPages(paper: Paper, title: string, columns: readonly Column[]): Setting | undefined {
  const upright = setting(paper, columns, false, crowded, false)
  const turned = setting(paper, columns, true, [...crowded, ...smallest], false)
  return upright && turned && pagesOf(paper, title, columns, upright) <= pagesOf(paper, title, columns, turned)
    ? upright
    : turned
}

const cutWords = (paper: Paper, columns: readonly Column[]): Setting => ({
  landscape: true,
  size: 8,
  widths: columns.map(() => freeFor(paper, columns, true) / columns.length),
})

/** What is left for letters: between columns there is room, and behind a last one that is written in by hand its edge. */
const freeFor = (paper: Paper, columns: readonly Column[], landscape: boolean): number =>
  paper.widthWhen(landscape) - between * (columns.length - 1) - (columns.at(-1)?.isBlank ? between / 2 : 0)

/** Numbers as they are shown: to three places, with a true minus sign. */
const shown = (cell: number | string): string =>
  typeof cell === 'number' ? String(Math.round(cell * 1000) / 1000).replace('-', '−') : cell

function columnsOf(table: Table, blanks: readonly string[]): Column[] {
  const filled = table.columns.map(({ label, unit }, i): Column => {
    const raw = table.rows.map((row) => row[i] ?? '')
    const isNumber = raw.some((it) => typeof it === 'number')
    const said = raw.filter((it) => it !== '')
    return {
      head: isNumber ? headOf({ label, unit }) : label,
      cells: raw.map(shown),
      isFigure: said.length > 0 && said.every((it) => typeof it === 'number' || /^[−+-]?[\d¼½¾][^:]{0,20}$/.test(it)),
      isBlank: false,
    }
  })
  return [
    ...filled,
    ...blanks.map((head): Column => ({ head, cells: table.rows.map(() => ''), isFigure: false, isBlank: true })),
  ]
}

/** The largest letters in which no word has to be cut, or, loose, in which no cell needs a second line. */
function setting(
  paper: Paper,
  columns: readonly Column[],
  landscape: boolean,
  sizes: readonly number[],
  loose: boolean,
): Setting | undefined {
  const free = freeFor(paper, columns, landscape)
  for (const size of sizes) {
    const [least, usual] = [measured(paper, columns, size, false), measured(paper, columns, size, true)]
    const [needed, wanted] = [sum(least), sum(usual)]
    if (wanted <= free) return { landscape, size, widths: spreadOut(columns, usual, free - wanted) }
    if (loose || needed > free) continue
    const share = (free - needed) / (wanted - needed)
    return { landscape, size, widths: least.map((it, i) => it + share * ((usual[i] as number) - it)) }
  }
  return undefined
}

/** How wide each column must be so that no word is cut, or, whole, so that no cell wraps. A heading may always wrap. */
const measured = (paper: Paper, columns: readonly Column[], size: number, whole: boolean): number[] =>
  columns.map(({ head, cells, isFigure, isBlank }) => {
    const words = (text: string): string[] => (whole || isFigure ? [text] : text.split(/\s+/))
    const heading = { size: headSize(size), weight: 'bold' } as const
    return Math.max(
      isBlank ? 56 : 24,
      ...head.split(/\s+/).map((it) => widthOf(paper.doc, it, heading) + 1),
      // A heading in two lines is no trouble; one in four is.
      whole ? Math.min(widthOf(paper.doc, head, heading) * 0.6, 80) : 0,
      ...[...new Set(cells)].flatMap(words).map((it) => widthOf(paper.doc, it, { size }) + 1),
    )
  })

/** Room that is left goes to the columns that are written in by hand, and a little to the others. */
function spreadOut(columns: readonly Column[], widths: readonly number[], spare: number): number[] {
  const blanks = columns.filter((it) => it.isBlank).length
  const forBlanks = blanks > 0 ? Math.min(spare / blanks, widestBlank) : 0
  const forAll = Math.min((spare - forBlanks * blanks) / columns.length, 24)
  return widths.map((it, i) => it + forAll + (columns[i]?.isBlank ? forBlanks : 0))
}

const headSize = (size: number): number => Math.max(Math.min(size - 1, 12), 8)
const sum = (all: readonly number[]): number => all.reduce((so, it) => so + it, 0)

interface Laid {
  readonly pad: number
  readonly high: number
  readonly heading: { readonly size: number; readonly weight: 'bold' }
  readonly heads: readonly (readonly string[])[]
  readonly headHigh: number
  /** Title and heading together. */
  readonly topHigh: number
  /** Every row as the lines of its cells. */
  readonly rows: readonly (readonly (readonly string[])[])[]
  tall(row: readonly (readonly string[])[]): number
}

function laidOut(paper: Paper, title: string, columns: readonly Column[], { landscape, size, widths }: Setting): Laid {
  const { doc } = paper
  const pad = size * 0.36 * paper.closeness.rows
  const high = lineHeight(size)
  const heading = { size: headSize(size), weight: 'bold' } as const
  const heads = columns.map((it, i) => broken(doc, it.head, heading, widths[i] as number))
  const headHigh = Math.max(...heads.map((it) => it.length)) * lineHeight(heading.size) + 8
  const titleHigh = titleLines(paper, continued(title), landscape).length * lineHeight(titled.size) + 7
  const most = Math.floor((paper.heightWhen(landscape) - titleHigh - headHigh - 2 * pad) / high)
  const rows = (columns[0] as Column).cells.flatMap((_, row) =>
    pieces(
      columns.map((it, i) => broken(doc, it.cells[row] as string, { size }, widths[i] as number)),
      most,
    ),
  )
  return {
    pad,
    high,
    heading,
    heads,
    headHigh,
    topHigh: titleHigh + headHigh,
    rows,
    tall: (row) => Math.max(...row.map((it) => it.length)) * high + 2 * pad,
  }
}

function pagesOf(paper: Paper, title: string, columns: readonly Column[], set: Setting): number {
  const { rows, tall, topHigh } = laidOut(paper, title, columns, set)
  return Math.ceil(sum(rows.map(tall)) / (paper.heightWhen(set.landscape) - topHigh))
}

function draw(paper: Paper, title: string, columns: readonly Column[], set: Setting): void {
  const { doc } = paper
  const { size, widths } = set
  const { pad, high, heading, heads, headHigh, topHigh, rows, tall } = laidOut(paper, title, columns, set)
  const starts = widths.map((_, i) => paper.left + sum(widths.slice(0, i)) + between * i)
  const end = (starts.at(-1) as number) + (widths.at(-1) as number)

  let top = 0
  const begin = (text: string): void => {
    for (const line of titleLines(paper, text, set.landscape)) {
      write(doc, line, paper.left, paper.y + 2, titled)
      paper.y += lineHeight(titled.size)
    }
    paper.y += 7
    heads.forEach((lines, i) => {
      lines.forEach((it, n) => {
        const y = paper.y + headHigh - 6 - (lines.length - n) * lineHeight(heading.size)
        put(it, i, y, heading)
      })
    })
    paper.y += headHigh
    top = paper.y
    rule(paper.y, 1.2)
  }
  const finish = (): void => {
    for (const [i, it] of columns.entries()) {
      if (!it.isBlank) continue
      for (const x of [
        (starts[i] as number) - between / 2,
        (starts[i] as number) + (widths[i] as number) + between / 2,
      ])
        doc.moveTo(x, top).lineTo(x, paper.y).lineWidth(0.5).strokeColor('#777').stroke()
    }
  }
  const put = (text: string, i: number, y: number, style: Parameters<typeof write>[4]): void => {
    const isRight = columns[i]?.isFigure ?? false
    const x = (starts[i] as number) + (isRight ? (widths[i] as number) : 0)
    write(doc, text, x, y, style, isRight ? 'right' : 'left')
  }
  const rule = (y: number, weight: number): void => {
    const last = columns.at(-1)?.isBlank ? between / 2 : 0
    doc
      .moveTo(paper.left, y)
      .lineTo(end + last, y)
      .lineWidth(weight)
      .strokeColor(weight > 1 ? '#000' : '#777')
      .stroke()
  }

  // The title is never left alone at the foot of a page: two rows stay with it.
  paper.need(topHigh + sum(rows.slice(0, 2).map(tall)))
  begin(title)
  for (const row of rows) {
    if (paper.room < tall(row)) {
      finish()
      paper.newPage()
      begin(continued(title))
    }
    row.forEach((lines, i) => {
      lines.forEach((it, n) => {
        put(it, i, paper.y + pad + n * high, { size })
      })
    })
    paper.y += tall(row)
    rule(paper.y, 0.5)
  }
  finish()
  paper.y += 14
}

const continued = (title: string): string => `${title}, continued`

const titleLines = (paper: Paper, title: string, landscape: boolean): string[] =>
  broken(paper.doc, title, titled, paper.widthWhen(landscape)).slice(0, mostTitle)

/** A row that is taller than a page goes on in the next. */
function pieces(row: readonly (readonly string[])[], most: number): (readonly string[])[][] {
  const parts = Math.ceil(Math.max(...row.map((it) => it.length)) / Math.max(most, 1))
  return Array.from({ length: Math.max(parts, 1) }, (_, i) => row.map((it) => it.slice(i * most, (i + 1) * most)))
}
