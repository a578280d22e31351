// This file is about an outcome in words, line by line, as tests keep it.
import { createHash } from 'node:crypto'
import type { Block, FieldPack } from '../../engine/job/sheets.ts'
import type { Outcome, Table } from '../../engine/outcome.ts'
import { isList, isQuantity, type Value } from '../../engine/quantities/quantity.ts'
import { show } from '../../engine/quantities/show.ts'
import { byShapes, said, written } from './drawings/draw.ts'

export const shown = (value: Value): string =>
  isQuantity(value) ? show(value) : isList(value) ? value.map(show).join('; ') : String(value)

export const tableInWords = ({ title, columns, rows }: Table): string[] => [
  `table: ${title}`,
  columns.map(({ label, unit }) => (unit ? `${label} (${unit})` : label)).join(' | '),
  ...rows.map((row) => row.join(' | ')),
]

export function inWords(outcome: Outcome): string[] {
  const given = [...outcome.given].map(([word, { value, role }]) => `${role} ${word}: ${shown(value)}`)
  if (!outcome.ok)
    return [...given, ...outcome.problems.map((it) => `${it.code} ${it.word}: ${it.message} ${it.ask ?? ''}`)]
  return [
    ...given,
    ...outcome.steps.map((it) => `${it.formula} = ${it.substituted} = ${it.result}, ${it.because}`),
    ...[...outcome.values].map(([word, value]) => `${word}: ${shown(value)}`),
    ...outcome.doubts.map((it) => `doubt: ${it.message}`),
    ...outcome.remarks.map((it) => `remark: ${it}`),
    ...outcome.cited.map((it) => `cited: ${it.label}: ${show(it.value)}`),
    ...outcome.tables.flatMap(tableInWords),
  ]
}

/** What a drawing says it shows, and the words on it; that there is none is said too. */
export const drawnInWords = (outcome: Outcome): string => {
  const drawing = outcome.ok ? outcome.drawing : null
  return drawing === null ? 'no drawing' : `drawn: ${said(drawing)} ${written(drawing).join(' | ')}`
}

/** What is said without the arithmetic of each step, and of a drawing its words and what its shapes come to: for outcomes that are kept in great number. */
export const saidInShort = (outcome: Outcome): string[] => [
  ...inWords(outcome.ok ? { ...outcome, steps: [] } : outcome),
  ...(outcome.ok && outcome.drawing ? [drawnInWords(outcome), shapesOf(outcome.drawing)] : []),
]

/** What the shapes of a drawing come to: it tells that one moved, and not which. */
export const shapesOf = (svg: string): string => `shapes: ${createHash('sha256').update(svg).digest('hex').slice(0, 8)}`

function blockInWords(block: Block): string[] {
  if (block.kind === 'lines') return [...block.lines]
  if (block.kind === 'table') return [...tableInWords(block.table), ...(block.blanks ?? [])]
  return [block.caption, byShapes(block.svg)]
}

/** Sheet by sheet, then the calendar. */
export const packInWords = ({ sheets, calendar }: FieldPack): string[] => [
  ...sheets.flatMap(({ title, blocks }) => [`# ${title}`, ...blocks.flatMap(blockInWords)]),
  ...calendar.map(({ what, first, last, note }) => `${first} to ${last}: ${what}. ${note}`),
]
