// This file is about the sheets for the yard that sells the wood: what the fence takes, and how boards are cut.
import { yard } from '../../places.ts'
import type { Block, Sheet } from '../sheets.ts'
import { remarksOf, type Site, workedAt } from './site.ts'

export function takeOffSheet(site: Site): Sheet | undefined {
  const node = workedAt(site, 'takeOffLines', yard)
  if (!node) return undefined
  const odd = node.outcome.doubts.filter((it) => it.code !== 'missing').map((it) => `• ${it.message}`)
  const open = node.outcome.doubts.filter((it) => it.ask).map((it) => `☐ ${it.ask}`)
  return {
    title: 'Shopping list',
    blocks: [
      ...node.outcome.tables.map((table): Block => ({ kind: 'table', table: filledOnly(table), blanks: ['bought'] })),
      {
        kind: 'lines',
        lines: [
          ...remarksOf([node]),
          ...odd,
          ...(open.length > 0 ? ['Not in the list until it is known:', ...open] : []),
        ],
      },
    ],
  }
}

/** A column in which nothing stands takes the room of those that are read. */
function filledOnly<
  T extends { readonly columns: readonly unknown[]; readonly rows: readonly (readonly (number | string)[])[] },
>(table: T): T {
  const kept = table.columns.map((_, i) => table.rows.some((row) => row[i] !== ''))
  return {
    ...table,
    columns: table.columns.filter((_, i) => kept[i]),
    rows: table.rows.map((row) => row.filter((_, i) => kept[i])),
  }
}

/** The cut plan, once a part of the plan gives it (`boardsToCut` at the yard): its tables and its drawing as they are. */
export function cutPlanSheet(site: Site): Sheet | undefined {
  const node = workedAt(site, 'boardsToCut', yard)
  if (!node) return undefined
  const { tables, drawing } = node.outcome
  return {
    title: 'Cut plan',
    blocks: [
      ...tables.map((table): Block => ({ kind: 'table', table, blanks: ['cut'] })),
      ...(drawing ? [{ kind: 'drawing', svg: drawing, caption: 'Boards as they are cut.' } satisfies Block] : []),
      { kind: 'lines', lines: remarksOf([node]) },
    ],
  }
}
