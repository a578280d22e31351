// This file is about an answer in the terminal: the same words as everywhere, wrapped and aligned; colour only as an extra.
import { marked, type Token, type Tokens } from 'marked'
import type { Answer } from '../answer.ts'

export interface Look {
  readonly colour: boolean
  readonly width: number
}

/** What was asked, then the reply, without markup. */
export function inTerminal(said: string, answer: Pick<Answer, 'reply'>, look: Look): string {
  const bold = (text: string): string => (look.colour ? `\u001b[1m${text}\u001b[22m` : text)
  const blocks = marked
    .lexer(answer.reply)
    .map((token) => block(token, look, bold))
    .filter((it) => it !== '')
  return [wrap(`> ${said.replace(/\s+/g, ' ').trim()}`, look.width, '  '), '', ...blocks].join('\n')
}

function block(token: Token, look: Look, bold: (text: string) => string): string {
  switch (token.type) {
    case 'heading':
      return `${bold(inline(token as Tokens.Heading, bold).toUpperCase())}`
    case 'paragraph':
      return `${wrap(inline(token as Tokens.Paragraph, bold), look.width, '')}\n`
    case 'list':
      return `${(token as Tokens.List).items.map((item) => item.tokens.map((it) => wrapLines(inline(it as Tokens.Text, bold), look.width)).join('\n')).join('\n')}\n`
    case 'table':
      return `${table(token as Tokens.Table, bold)}\n`
    case 'space':
      return ''
    default:
      return 'raw' in token ? token.raw.trim() : ''
  }
}

function inline(token: { readonly tokens?: Token[]; readonly text?: string }, bold: (text: string) => string): string {
  if (!token.tokens) return decode(token.text ?? '')
  return token.tokens
    .map((it) => {
      if (it.type === 'strong') return bold(inline(it as Tokens.Strong, (text) => text))
      if (it.type === 'br') return '\n'
      return 'tokens' in it && it.tokens
        ? inline(it as Tokens.Generic, bold)
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

// biome-ignore lint/suspicious/noControlCharactersInRegex: the escape that makes text bold takes no room on the screen
const width = (text: string): number => [...text.replace(/\u001b\[\d+m/g, '')].length

function wrapLines(text: string, columns: number): string {
  return text
    .split('\n')
    .map((line, i) => wrap(`${i === 0 ? '  - ' : '      '}${line.trim()}`, columns, i === 0 ? '    ' : '        '))
    .join('\n')
}

function wrap(text: string, columns: number, hang: string): string {
  const lead = text.match(/^\s*/)?.[0] ?? ''
  let line = lead
  const lines: string[] = []
  for (const word of text.trim().split(/\s+/)) {
    const longer = line.trim() === '' ? `${line}${word}` : `${line} ${word}`
    if (width(longer) > columns && line.trim() !== '') {
      lines.push(line)
      line = `${hang}${word}`
    } else line = longer
  }
  return [...lines, line].join('\n')
}

function table(token: Tokens.Table, bold: (text: string) => string): string {
  const rows = [token.header, ...token.rows].map((row) => row.map((cell) => inline(cell, bold)))
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => width(row[column] ?? ''))))
  return rows
    .map(
      (row) =>
        `  ${row.map((cell, column) => ' '.repeat(Math.max(0, (widths[column] ?? 0) - width(cell))) + cell).join('   ')}`,
    )
    .join('\n')
}
