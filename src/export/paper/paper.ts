// This file is about pages: where a sheet's content may stand, when a new page begins, and what is said on top and at the foot of each.
import { broken, lineHeight, oneLine, type Style, widthOf, write } from './type.ts'

export interface Foot {
  /** The day of printing, as it is written. */
  readonly date: string
  readonly version: string
  /** One line that stands on every page. */
  readonly caution: string
}

interface Page {
  readonly sheet: number
  readonly landscape: boolean
}

/** How close a sheet is set: shares of the usual size of letters in lines, and of the usual room about the rows of a table. */
export interface Closeness {
  readonly letters: number
  readonly rows: number
}
export const asUsual: Closeness = { letters: 1, rows: 1 }

/** From the edge of the paper: printers leave up to a quarter of an inch blank, and a hole punch wants more. */
const margin = 40
const sizes = { letter: [612, 792], a4: [595.28, 841.89] } as const
const head = 50
const title = { size: 18, weight: 'bold' } satisfies Style
const small = { size: 10.5 } satisfies Style
const warnings = [10.5, 10, 9.5].map((size) => ({ size, weight: 'bold' }) satisfies Style)

/** Paper that fills from the top. Lengths are points, 72 to the inch. */
export class Paper {
  /** Where the next part begins. */
  y = 0
  closeness = asUsual
  private readonly pages: Page[] = []
  private readonly titles: string[] = []
  private readonly cautions = new Map<boolean, { lines: readonly string[]; style: Style }>()
  private isOpen = false
  private isClosed = false

  constructor(
    readonly doc: PDFKit.PDFDocument,
    private readonly size: 'letter' | 'a4',
    private readonly name: string,
    private readonly foot: Foot,
  ) {}

  get left(): number {
    return margin
  }
  get right(): number {
    return this.left + this.width
  }
  get width(): number {
    return this.widthWhen(this.isLandscape)
  }
  get top(): number {
    return margin + head
  }
  get bottom(): number {
    return this.top + this.heightWhen(this.isLandscape)
  }
  get room(): number {
    return this.bottom - this.y
  }
  get isLandscape(): boolean {
    return this.pages.at(-1)?.landscape ?? false
  }
  get pageCount(): number {
    return this.pages.length
  }
  /** How much of the page that lies open is written on, from 0 to 1. */
  get filled(): number {
    return (this.y - this.top) / (this.bottom - this.top)
  }
  get isFresh(): boolean {
    return this.y === this.top
  }

  /** What stands between the margins, and between head and foot, of an upright page or one on its side. */
  widthWhen(landscape: boolean): number {
    return sizes[this.size][landscape ? 1 : 0] - 2 * margin
  }
  heightWhen(landscape: boolean): number {
    return sizes[this.size][landscape ? 0 : 1] - 2 * margin - head - this.footHeight(landscape)
  }

  /** The next part is the first of a sheet, which begins on a page of its own. */
  beginSheet(title: string): void {
    this.titles.push(title)
    this.isOpen = false
  }

  /** A sheet with nothing on it is a page all the same, so that the count is true. */
  endSheet(): void {
    if (this.pages.at(-1)?.sheet !== this.titles.length - 1) this.newPage(false)
  }

  /** Nothing more is written on this page. */
  close(): void {
    this.isClosed = true
  }

  /** A page of that sort lies open to be written on. */
  open(landscape = false): void {
    if (!this.isOpen || this.isClosed || this.isLandscape !== landscape) this.newPage(landscape)
  }

  /** Whatever page lies open; else a new upright one. */
  goOn(): void {
    if (!this.isOpen || this.isClosed) this.newPage(false)
  }

  newPage(landscape = this.isLandscape): void {
    const [width, height] = sizes[this.size]
    this.doc.addPage({ size: landscape ? [height, width] : [width, height], margin: 0 })
    this.pages.push({ sheet: this.titles.length - 1, landscape })
    if (!this.isOpen) this.doc.outline.addItem(this.titles.at(-1) as string)
    this.isOpen = true
    this.isClosed = false
    this.y = this.top
  }

  /** A new page where less than that is left on this one. */
  need(height: number): void {
    if (this.room < height && !this.isFresh) this.newPage()
  }

  /** What stands on every page can be written only when all pages are there to be counted. */
  finish(): void {
    const counts = this.titles.map((_, i) => this.pages.filter((it) => it.sheet === i).length)
    const seen = this.titles.map(() => 0)
    for (const [i, { sheet, landscape }] of this.pages.entries()) {
      this.doc.switchToPage(i)
      seen[sheet] = (seen[sheet] as number) + 1
      const pages = counts[sheet] as number
      this.writeHead(landscape, sheet, pages > 1 ? ` · page ${seen[sheet]} of ${pages}` : '')
      this.writeFoot(landscape)
    }
  }

  private writeHead(landscape: boolean, sheet: number, page: string): void {
    const { doc, left } = this
    const width = this.widthWhen(landscape)
    const right = left + width
    const text = this.titles[sheet] as string
    const size = [18, 16, 14].find((it) => widthOf(doc, text, { ...title, size: it }) <= width) ?? 12.5
    const style = { ...title, size }
    write(doc, oneLine(doc, text, style, width), left, margin + (18 - size), style)
    const count = `sheet ${sheet + 1} of ${this.titles.length}${page}`
    write(doc, count, right, margin + 25, small, 'right')
    const room = width - widthOf(doc, count, small) - 20
    write(doc, oneLine(doc, this.name, small, room), left, margin + 25, small)
    this.rule(width, margin + head - 8)
  }

  private writeFoot(landscape: boolean): void {
    const { doc, left } = this
    const { date, version } = this.foot
    const width = this.widthWhen(landscape)
    const right = left + width
    let y = this.top + this.heightWhen(landscape) + 8
    this.rule(width, y - 3)
    const { lines, style } = this.caution(landscape)
    for (const line of lines) {
      write(doc, line, left, y, style)
      y += lineHeight(style.size)
    }
    write(doc, date, right, y + 2, small, 'right')
    const room = width - widthOf(doc, date, small) - 20
    write(doc, oneLine(doc, `plan as of ${version}`, small, room), left, y + 2, small)
  }

  /** In two lines where it can be, on all pages of one sort alike. */
  private caution(landscape: boolean): { lines: readonly string[]; style: Style } {
    const known = this.cautions.get(landscape)
    if (known) return known
    const ways = warnings.map((style) => ({
      lines: broken(this.doc, this.foot.caution, style, this.widthWhen(landscape)),
      style,
    }))
    const chosen = ways.find((it) => it.lines.length <= 2) ?? (ways.at(-1) as (typeof ways)[number])
    this.cautions.set(landscape, chosen)
    return chosen
  }

  private footHeight(landscape: boolean): number {
    const { lines, style } = this.caution(landscape)
    return 8 + lines.length * lineHeight(style.size) + 2 + lineHeight(small.size)
  }

  private rule(width: number, y: number): void {
    this.doc
      .moveTo(this.left, y)
      .lineTo(this.left + width, y)
      .lineWidth(1.2)
      .strokeColor('#000')
      .undash()
      .stroke()
  }
}
