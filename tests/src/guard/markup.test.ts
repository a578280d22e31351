// What may be shown, as another reader of Markdown takes it: marked's lexer finds paragraphs, lists, plain tables, bold and italic, and nothing else.
import fc from 'fast-check'
import { marked, type Token } from 'marked'
import { expect, it } from 'vitest'
import { passProse } from '../../../src/guard/prose.ts'
import { refs } from './refs.ts'
import { harmless } from './sentences.ts'

const plain = new Set('space paragraph text list list_item table strong em escape'.split(' '))

const kindsIn = (tokens: readonly Token[]): string[] =>
  tokens.flatMap((token) => {
    const inner = 'tokens' in token && token.tokens ? kindsIn(token.tokens) : []
    const items = token.type === 'list' ? kindsIn((token as { items: Token[] }).items) : []
    const cells =
      token.type === 'table'
        ? [token.header, ...token.rows].flat().flatMap((it: { tokens: Token[] }) => kindsIn(it.tokens))
        : []
    return [token.type, ...inner, ...items, ...cells]
  })

const marks = [
  ['', ''],
  ['**', '**'],
  ['*', '*'],
  ['__', '__'],
  ['_', '_'],
  ['~~', '~~'],
  ['`', '`'],
  ['```\n', '\n```'],
  ['    ', ''],
  ['> ', ''],
  ['# ', ''],
  ['- ', ''],
  ['- [ ] ', ''],
  ['1. ', ''],
  ['[', '](http://a.b)'],
  ['![', '](a.png)'],
  ['[', ']: http://a.b'],
  ['<', '>'],
  ['<b>', '</b>'],
  ['<!-- ', ' -->'],
  ['<script>', '</script>'],
  ['&lt;b&gt;', '&lt;/b&gt;'],
  ['', '\n---'],
  ['', '\n==='],
  ['', '\n***'],
  ['| ', ' |\n|---|'],
  ['', '  \n'],
  ['\\', ''],
  ['$', '$'],
  ['http://', '.com'],
  ['', '[^a]'],
] as const

it('holds nothing but what the guard lets through, however marks are set around sentences', () => {
  const piece = fc
    .tuple(fc.constantFrom(...harmless.slice(0, 60)), fc.constantFrom(...marks), fc.constantFrom(...marks))
    .map(([text, [a, b], [c, d]]) => `${a}${c}${text}${d}${b}`)
  const text = fc.tuple(fc.array(piece, { minLength: 1, maxLength: 4 }), fc.constantFrom('\n', '\n\n', ' '))
  let shownAny = 0
  fc.assert(
    fc.property(text, ([pieces, between]) => {
      const { shown } = passProse(pieces.join(between), refs, '')
      if (shown !== '') shownAny++
      expect(kindsIn(marked.lexer(shown)).filter((it) => !plain.has(it))).toEqual([])
    }),
    { numRuns: 1500, seed: 7 },
  )
  expect(shownAny).toBeGreaterThan(100)
})
