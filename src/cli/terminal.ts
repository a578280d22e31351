// This file is about an answer in the terminal: the same words as everywhere, wrapped and aligned, with its drawing in characters.
// Colour is only an extra: without it every sign is the same.
import { marked, type Token, type Tokens } from 'marked'
import type { Answer } from '../answer.ts'
import { block, heading, inline, type Pen, plainOf } from './blocks.ts'
import { drawings, type Drawn } from './drawings.ts'
import { harmless, wrap } from './lines.ts'

export interface Look {
  readonly colour: boolean
  readonly width: number
}

/** Lines of words longer than this are hard to read, however wide the terminal is. */
const widest = 100
/** What is not a terminal, or does not say how wide it is, gets lines as long as this. */
const usual = 80
const narrowest = 24

/** How to write to an output: colour only on a terminal that can show it and whose owner has not asked for none. */
export function lookFor(
  output: { readonly isTTY?: boolean; readonly columns?: number },
  env: Readonly<Record<string, string | undefined>>,
): Look {
  const isTerminal = output.isTTY === true
  return {
    colour: isTerminal && !env.NO_COLOR && env.TERM !== 'dumb',
    width: isTerminal && output.columns ? Math.max(narrowest, output.columns) : usual,
  }
}

/** What was asked, then the answer with its drawing, then how it was worked; of a long reply, the answer once more at its end. */
export function inTerminal(
  said: string,
  answer: Pick<Answer, 'reply'> & { readonly calls?: readonly Drawn[]; readonly asks?: Answer['asks'] },
  look: Look,
): string {
  const pen = penFor(look)
  const tokens = marked.lexer(harmless(answer.reply))
  const end = tokens.findIndex((it) => it.type === 'heading')
  const [first, others] = end < 0 ? [tokens, []] : [tokens.slice(0, end), tokens.slice(end)]
  const lines = [
    ...wrap(`> ${harmless(said).replace(/\s+/g, ' ').trim()}`, pen.columns, '  ').map(pen.bold),
    '',
    ...first.flatMap((it) => block(it, pen, 'answer')),
    ...drawings(answer.calls ?? [], look.width, pen),
    ...sections(others, pen),
  ]
  if (lines.length > longReply) lines.push(...onceMore(first, answer.asks ?? [], pen))
  return mended(lines).join('\n')
}

/** A model's sentences, for a card that is told already. */
export function wordsInTerminal(markdown: string, look: Look): string {
  const pen = penFor(look)
  return mended(marked.lexer(harmless(markdown)).flatMap((it) => block(it, pen, 'words'))).join('\n')
}

function penFor({ colour, width }: Look): Pen {
  const styled = (on: number) => (text: string) => (colour && text !== '' ? `\u001b[${on}m${text}\u001b[22m` : text)
  return { columns: Math.min(width, widest), bold: styled(1), faint: styled(2) }
}

/** Above so many lines the answer has left the top of a common terminal when the last line is written. */
const longReply = 24

function sections(tokens: readonly Token[], pen: Pen): string[] {
  let title = ''
  return tokens.flatMap((it) => {
    if (it.type === 'heading') title = plainOf(it as Tokens.Heading)
    return block(it, pen, title === 'Working' ? 'working' : title === 'How I read it' ? 'read' : 'words')
  })
}

/** What answers, in the words that it was first said in, and what is still asked: by now both have gone off the top of the screen. */
function onceMore(first: readonly Token[], asks: Answer['asks'], pen: Pen): string[] {
  const answers = first.filter((it) => it.type === 'paragraph' && (it as Tokens.Paragraph).tokens[0]?.type === 'strong')
  if (answers.length === 0 || answers.length + asks.length > mostOnceMore) return []
  return [
    ...heading('In short', pen),
    ...answers.flatMap((it) => wrap(inline(it as Tokens.Paragraph, pen), pen.columns)),
    ...asks.flatMap((it) => wrap(`Still to be told: ${it.question}`, pen.columns, '  ')),
    '',
  ]
}

/** More is no longer short. */
const mostOnceMore = 6

/** Bold that goes on over the end of a line is ended there and begun anew: a pager shows each line by itself. */
function mended(lines: readonly string[]): string[] {
  let on = ''
  return lines.map((line) => {
    const start = on
    // biome-ignore lint/suspicious/noControlCharactersInRegex: our own escapes
    for (const [style, number] of line.matchAll(/\u001b\[(\d+)m/g)) on = number === '22' ? '' : style
    return `${start}${line}${on === '' ? '' : '\u001b[22m'}`
  })
}
