// This file is about figures one under another: labels to the left, whole numbers ending in one column, fractions and units after it.
//
//   Post in the ground:     30 in
//   Concrete in one hole:    1.151 ft³
import { cells, padEnd, wrap } from './lines.ts'

export interface Row {
  readonly label: string
  readonly figure: string
}

/** Where the room is too small to set them side by side, each figure follows its label. */
export function inColumns(rows: readonly Row[], columns: number): string[] {
  const figures = aligned(rows.map((it) => it.figure))
  const longest = Math.max(...rows.map((it) => cells(it.label)))
  const widest = Math.max(...figures.map(cells))
  const room = Math.min(longest, columns - 4 - widest)
  if (room < Math.min(longest, 16)) return rows.flatMap((it) => wrap(`  ${it.label} ${it.figure}`, columns, '    '))
  return rows.flatMap(({ label }, i) => {
    const lines = wrap(label, room, ' ')
    const last = padEnd(lines.at(-1) ?? '', room)
    return [...lines.slice(0, -1), `${last}  ${figures[i]}`].map((it) => `  ${it}`.trimEnd())
  })
}

const whole = /^(?:about |at least |at most |up to )?[-−+~]?(?:[$£€] ?)?[\d,]+(?=$|[^\d,])/

/** Figures with their whole numbers ending in one column; what is no figure starts where the first of them does. */
export function aligned(figures: readonly string[]): string[] {
  const wides = figures.map((it) => cells(whole.exec(it)?.[0] ?? ''))
  const widest = Math.max(0, ...wides)
  return figures.map((it, i) => (wides[i] === 0 ? it : ' '.repeat(widest - (wides[i] as number)) + it))
}

/** A table no wider than the terminal: its text breaks into lines, and where even that is too wide each row is told by itself. */
export function tableLines(head: readonly string[], body: readonly (readonly string[])[], columns: number): string[] {
  const set = head.map((label, i) => {
    const told = body.map((row) => row[i] ?? '')
    const isFigures = told.every((it) => it === '' || /^[-−+$£€]?[\d,.]/.test(it)) && told.some((it) => it !== '')
    const isShort = isFigures && told.every((it) => cells(it) <= 24)
    const shown = isShort ? aligned(told) : told
    const most = Math.max(...shown.map(cells), 0)
    return {
      label,
      shown,
      isShort,
      most,
      least: Math.max(isShort ? most : Math.min(most, 14), ...label.split(/\s+/).map(cells)),
    }
  })
  const between = 3
  const spare = columns - 2 - between * (set.length - 1) - set.reduce((sum, it) => sum + it.least, 0)
  if (spare < 0) return inRecords(head, body, columns)
  const wides = shareOut(
    set.map((it) => ({ least: it.least, most: Math.max(it.most, cells(it.label)) })),
    spare,
  )
  const line = (row: readonly string[]): string[] => {
    const parts = row.map((it, i) => wrap(it, wides[i] as number))
    const high = Math.max(...parts.map((it) => it.length))
    return Array.from({ length: high }, (_, k) =>
      `  ${parts.map((it, i) => padEnd(it[k] ?? '', wides[i] as number)).join(' '.repeat(between))}`.trimEnd(),
    )
  }
  // A column of figures stands under the end of its label.
  const placed = set.map(({ shown, isShort, most }, i) =>
    shown.map((it) => (isShort ? ' '.repeat(Math.max(0, (wides[i] as number) - most)) + it : it)),
  )
  const heads = set.map(({ label, isShort }, i) => ({ lines: wrap(label, wides[i] as number), isShort }))
  const high = Math.max(...heads.map((it) => it.lines.length))
  const headLines = Array.from({ length: high }, (_, k) =>
    `  ${heads
      .map(({ lines, isShort }, i) => {
        const text = lines[k - high + lines.length] ?? ''
        return isShort
          ? ' '.repeat(Math.max(0, (wides[i] as number) - cells(text))) + text
          : padEnd(text, wides[i] as number)
      })
      .join(' '.repeat(between))}`.trimEnd(),
  )
  const rule = `  ${wides.map((it) => '─'.repeat(it)).join(' '.repeat(between))}`
  return [...headLines, rule, ...body.flatMap((_, r) => line(placed.map((it) => it[r] ?? '')))]
}

/** Each column its least, and the spare room to those that want more, a column at a time. */
function shareOut(wants: readonly { readonly least: number; readonly most: number }[], spare: number): number[] {
  const wides = wants.map((it) => it.least)
  for (let left = spare; left > 0; ) {
    const open = wides.flatMap((wide, i) => (wide < (wants[i]?.most ?? 0) ? [i] : []))
    if (open.length === 0) break
    for (const i of open) if (left-- > 0) wides[i] = (wides[i] as number) + 1
  }
  return wides
}

const inRecords = (head: readonly string[], body: readonly (readonly string[])[], columns: number): string[] =>
  body.flatMap((row, i) => [
    ...(i > 0 ? [''] : []),
    ...inColumns(
      head.map((label, k) => ({ label: `${label}:`, figure: row[k] ?? '' })),
      columns,
    ),
  ])
