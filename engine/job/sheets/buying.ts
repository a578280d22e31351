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

/** What is cut from boards, and the word that its cut plan gives; a plan of everything together, should there be one, last. */
const cutFrom = [
  ['Posts', 'postBoards'],
  ['Rails', 'railSticks'],
  ['Pickets', 'picketSticks'],
  ['Boards', 'boardsToCut'],
] as const
/** What is written in on site beside each table; a table that is none of these is for the desk. */
const cutTables: Readonly<Record<string, readonly string[]>> = {
  'What to buy': ['bought'],
  'Stick by stick': ['cut'],
  'Smaller pieces from the offcuts': [],
}

/** What the saw has to know of treated wood and of ground that is never quite even. */
const cutEnds = '• Treated wood: brush every cut end with end-cut preservative before you assemble.'
const beside: Readonly<Record<string, readonly string[]>> = {
  Posts: [
    '• These are least lengths. A post that is alone on its stick is set whole, and cut to the string line once it stands.',
    '• The end as bought goes in the ground, the cut end up.',
    cutEnds,
  ],
  Rails: [cutEnds],
}

/** The cut plans that the parts of the fence give, each as it came out: its tables, its drawing, what is to be said. */
export function cutPlanSheet(site: Site): Sheet | undefined {
  const plans = cutFrom.flatMap(([what, word]) => {
    const node = workedAt(site, word, yard)
    return node ? [{ what, node }] : []
  })
  if (plans.length === 0) return undefined
  return {
    title: 'Cut plan',
    blocks: plans.flatMap(({ what, node }): Block[] => [
      ...node.outcome.tables
        .filter((it) => cutTables[it.title])
        .map(
          (table): Block => ({
            kind: 'table',
            table: { ...table, title: `${what}: ${table.title.toLowerCase()}` },
            blanks: cutTables[table.title] ?? [],
          }),
        ),
      ...(node.outcome.drawing ? [{ kind: 'drawing', svg: node.outcome.drawing, caption: what } satisfies Block] : []),
      { kind: 'lines', lines: [...(beside[what] ?? []), ...remarksOf([node])] },
    ]),
  }
}
