// This file is about the blocks of a reply as lines: headings, words, lists of figures, steps of a sum, tables.
import type { Token, Tokens } from 'marked'
import { inColumns, type Row, tableLines } from './figure-columns.ts'
import { cells, padEnd, unstyled, wrap, wrapSum } from './lines.ts'

export interface Pen {
  readonly columns: number
  readonly bold: (text: string) => string
  readonly faint: (text: string) => string
}

/** What the lines of a block are: figures to be set in columns, the steps of a sum, or words. */
export type Kind = 'answer' | 'read' | 'working' | 'words'

/** The lines of a block, an empty one after them. */
export function block(token: Token, pen: Pen, kind: Kind): string[] {
  switch (token.type) {
    case 'heading':
      return heading(plainOf(token as Tokens.Heading), pen)
    case 'paragraph':
    case 'text':
      return [
        ...inline(token as Tokens.Paragraph, pen)
          .split('\n')
          .flatMap((it) => wrap(it, pen.columns)),
        '',
      ]
    case 'list':
      return [...list(token as Tokens.List, pen, kind), '']
    case 'table': {
      const { header, rows } = token as Tokens.Table
      return [
        ...tableLines(
          header.map(plainOf),
          rows.map((row) => row.map(plainOf)),
          pen.columns,
        ),
        '',
      ]
    }
    case 'hr':
      return [pen.faint('─'.repeat(pen.columns)), '']
    case 'blockquote':
      return (token as Tokens.Blockquote).tokens
        .flatMap((it) => block(it, { ...pen, columns: pen.columns - 2 }, kind))
        .map((it) => `  ${it}`.trimEnd())
    case 'space':
      return []
    default:
      return 'raw' in token
        ? [
            ...token.raw
              .trim()
              .split('\n')
              .flatMap((it) => wrap(it, pen.columns)),
            '',
          ]
        : []
  }
}

/** `── Working ─────────`: a rule finds the section again in a long reply. */
export function heading(title: string, pen: Pen): string[] {
  const [line = '', ...more] = wrap(title, pen.columns - 6)
  const rest = Math.max(0, pen.columns - cells(line) - 4)
  return [
    `${pen.faint('──')} ${pen.bold(line)} ${pen.faint('─'.repeat(rest))}`,
    ...more.map((it) => `   ${pen.bold(it)}`),
  ]
}

function list(token: Tokens.List, pen: Pen, kind: Kind): string[] {
  const texts = token.items.map((item) => item.tokens.map((it) => inline(it as Tokens.Text, pen)).join('\n'))
  if (kind === 'working') return texts.flatMap((text) => step(text, pen))
  const rows = kind === 'answer' ? texts.map(rowOf) : []
  if (rows.length > 0 && rows.every((it) => it !== undefined)) return inColumns(rows as Row[], pen.columns)
  if (kind === 'read') return readings(texts, pen)
  return texts.flatMap((text, i) => {
    const sign = token.ordered ? `${Number(token.start || 1) + i}.` : '-'
    const hang = ' '.repeat(sign.length + 3)
    return text
      .split('\n')
      .flatMap((line, k) => wrap(k === 0 ? `  ${sign} ${line.trim()}` : `${hang}${line.trim()}`, pen.columns, hang))
  })
}

/** “Gap by the tape: 2 3/16 in” is a label and its figure; a sentence is not. */
function rowOf(text: string): Row | undefined {
  const [, label, figure] = /^([^:\n]{1,72}:) ([^\n]{1,60})$/.exec(text) ?? []
  return label && figure && cells(figure) <= 40 ? { label, figure } : undefined
}

/** “93” → opening: 93 in. What was said stands in a column of its own where none of it is long. */
function readings(texts: readonly string[], pen: Pen): string[] {
  const parts = texts.map((it) => /^(.*) → ([^→]*)$/.exec(it))
  const said = Math.max(...parts.map((it) => cells(it?.[1] ?? '')))
  const isShort = parts.every((it) => it !== null) && said <= pen.columns / 3
  return texts.flatMap((text, i) => {
    if (!isShort) return wrap(`  - ${text}`, pen.columns, '    ')
    const lines = wrap(parts[i]?.[2] ?? '', pen.columns - said - 5)
    return lines.map(
      (line, k) => `  ${k === 0 ? `${padEnd(parts[i]?.[1] ?? '', said)} → ` : ' '.repeat(said + 3)}${line}`,
    )
  })
}

/**
 * A step of a sum, its equals signs under one another:
 *
 *   - The wood is taken out, and what is left is shared equally:
 *       gap = (opening - pickets * picketWidth) / (pickets + 1)
 *           = (93 in − 16 × 3 1/2 in) / (16 + 1)
 *           = 2 3/17 in
 */
function step(text: string, pen: Pen): string[] {
  const [because = '', ...told] = text.split('\n').map((it) => it.trim())
  // A sum that is only taken over is its own result: said once is enough.
  const sums = told.filter((it, i) => i === 0 || unstyled(it) !== unstyled(told[i + 1] ?? ''))
  const name = cells(/^[A-Za-z]\w*(?= = )/.exec(sums[0] ?? '')?.[0] ?? '')
  const indent = name > 0 && name + 1 <= pen.columns / 3.5 ? name + 1 : 0
  return [
    ...wrap(`  - ${because}`, pen.columns, '    '),
    ...sums.flatMap((sum, i) => {
      const start = ' '.repeat(6 + (i === 0 ? 0 : indent))
      const lines = wrapSum(`${start}${sum}`, pen.columns, ' '.repeat(6 + indent + 2))
      return i === 0 ? lines.map((it) => it.replace(/\S.*/, pen.faint)) : lines
    }),
  ]
}

const same = (text: string): string => text
export const plainOf = (token: { readonly tokens?: Token[]; readonly text?: string }): string =>
  inline(token, { columns: 0, bold: same, faint: same })

export function inline(token: { readonly tokens?: Token[]; readonly text?: string }, pen: Pen): string {
  if (!token.tokens) return decode(token.text ?? '')
  return token.tokens
    .map((it) => {
      if (it.type === 'strong') return pen.bold(inline(it as Tokens.Strong, { ...pen, bold: same }))
      if (it.type === 'br') return '\n'
      return 'tokens' in it && it.tokens
        ? inline(it as Tokens.Generic, pen)
        : decode('text' in it ? String(it.text) : it.raw)
    })
    .join('')
}

const decode = (text: string): string =>
  text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, '’')
    .replace(/&amp;/g, '&')
