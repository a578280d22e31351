// This file is about figures and tables for a spreadsheet: one section under the other, each with its heading, all rows equally long.
// Where a column holds sizes as people read them (“7' 10 3/8"”), a column of plain numbers in one unit stands beside it, to add up.
import {
  type FieldPack,
  isoDate,
  numberIn,
  placeLabel,
  type Quantity,
  readQuantities,
  type Table,
} from '../../engine/index.ts'
import type { Figure, Turn } from '../answer.ts'
import { jobSheet } from '../sheet.ts'
import { headOf } from './heading.ts'
import { standingCalls } from './standing.ts'

type Cell = string | number
type Row = readonly Cell[]

export interface Spreadsheet {
  readonly title: string
  readonly caution: string
}

export async function spreadsheet(
  turns: readonly Turn[],
  pack: FieldPack,
  { title, caution }: Spreadsheet,
): Promise<string> {
  const { stringify } = await import('csv-stringify/sync')
  const sections: Row[][] = [
    [
      [pack.title, title],
      ['Plan', pack.version],
      ['Take care', caution],
    ],
    figureRows(turns),
    ...pack.sheets.flatMap((sheet) =>
      sheet.blocks.flatMap((block) => (block.kind === 'table' ? [tableRows(sheet.title, block.table)] : [])),
    ),
  ]
  const rows = sections.filter((it) => it.length > 0).flatMap((it, i) => (i === 0 ? it : [[], ...it]))
  const longest = Math.max(...rows.map((it) => it.length))
  return stringify(
    rows.map((row) => [...row, ...Array.from({ length: longest - row.length }, () => '')]),
    // With its mark in front Excel takes the text for what it is, UTF-8. A cell that begins like a formula is text.
    { bom: true, escape_formulas: true, record_delimiter: 'windows' },
  )
}

/** What was said and taken as usual, then what was worked in every answer that stands. */
function figureRows(turns: readonly Turn[]): Row[] {
  const known = jobSheet(turns).filter((it) => it.from !== 'worked')
  const rows = [
    ...known.map(({ figure, from }) => rowOf(figure, from === 'said' ? 'you said' : 'taken as usual', '')),
    ...standingCalls(turns).flatMap((call) => call.results.map((it) => rowOf(it, 'worked', call.title))),
  ]
  return rows.length === 0
    ? []
    : [['Figures'], ['what', 'where', 'value', 'unit', 'as written', 'whose', 'worked in'], ...rows]
}

const rowOf = ({ label, at, value, unit, text }: Figure, whose: string, title: string): Row => [
  label,
  placeLabel(at),
  typeof value === 'number' ? plain(value) : unit === 'verdict' ? '' : (value as string),
  unit === 'verdict' || unit === 'choice' ? '' : unit,
  text,
  whose,
  title,
]

function tableRows(sheet: string, table: Table): Row[] {
  const columns = table.columns.flatMap((column, i): Row[] => {
    const cells = table.rows.map((row) => plainCell(row[i] ?? '', column.unit))
    const sizes = sizesIn(cells, column.unit)
    return [
      [headOf(column), ...cells],
      ...(sizes ? [[`${column.label.replace(/ \([^)]*\)$/, '')} (${sizes.unit}, decimal)`, ...sizes.values]] : []),
    ]
  })
  return [
    [`${sheet}: ${table.title}`],
    ...[-1, ...table.rows.keys()].map((row) => columns.map((it) => it[row + 1] ?? '')),
  ]
}

/** A number that was written out is a number again, with the minus that a spreadsheet knows; a day is written as they all read it. */
function plainCell(cell: Cell, unit: string): Cell {
  if (typeof cell === 'number') return plain(cell)
  if (unit === 'date') {
    const day = readQuantities(cell)[0]?.quantity
    return day?.kind === 'date' ? isoDate(day) : cell
  }
  return /^[−-]?\d+(\.\d+)?$/.test(cell) ? Number(cell.replace('−', '-')) : cell
}

/** A spreadsheet counts in binary: what it cannot hold is left off where nobody measures it. */
const plain = (value: number): number => Number(value.toPrecision(12))

/** The same sizes as numbers in one unit, that of most of them; nothing where all are numbers, or a cell is no size or one of another kind. */
function sizesIn(cells: readonly Cell[], usual: string): { unit: string; values: Cell[] } | undefined {
  if (cells.every((it) => typeof it === 'number' || it === '')) return undefined
  const sizes = cells.map((it) => sizeIn(String(it), usual))
  const known = sizes.filter((it) => it !== undefined)
  const kind = known[0]?.kind
  if (!kind || known.some((it) => it.kind !== kind) || cells.some((it, i) => it !== '' && !sizes[i])) return undefined
  const units = known.map((it) => it.unit)
  const unit = units.reduce((best, it) => (count(units, it) > count(units, best) ? it : best))
  return { unit, values: sizes.map((it) => (it ? plain(numberIn(it, unit)) : '')) }
}

const count = (all: readonly string[], one: string): number => all.filter((it) => it === one).length

/** The size that a cell says, and nothing beside it: with its unit, or in the unit of its column. */
function sizeIn(text: string, usual: string): Quantity | undefined {
  for (const whole of [text, `${text} ${usual}`]) {
    const [read, ...more] = readQuantities(whole)
    const isAll =
      read && more.length === 0 && read.said.trim() === whole.trim() && !read.high && read.rivals.length === 0
    if (isAll && read.quantity && read.quantity.kind !== 'date') return read.quantity
  }
  return undefined
}
