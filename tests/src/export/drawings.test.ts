// Every drawing that the engine makes can be set on paper: nothing in it that the printer would leave out, every word of it printed.
import { describe, expect, it } from 'vitest'
import { catalogue, type FieldPack } from '../../../engine/index.ts'
import { fieldPackPdf } from '../../../src/export/pdf.ts'
import { runNamed, systemOf } from '../../engine/run-named.ts'
import { readPdf } from './read-pdf.ts'

const drawings = catalogue
  .filter((it) => it.drawing)
  .flatMap(({ name, examples }) =>
    examples.slice(0, 2).flatMap(({ given }) => {
      const { outcome } = runNamed(name, given, { system: systemOf(given) })
      return outcome.ok && outcome.drawing ? [{ name, svg: outcome.drawing }] : []
    }),
  )

const wordsOf = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, it]) =>
    (it as string)
      .replace(/&lt;/g, '<')
      .replace(/&gt;/g, '>')
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, '&'),
  )

describe('the drawings on paper', () => {
  it('are all there, one to a sheet, with all their words', async () => {
    expect(drawings.length).toBeGreaterThan(60)
    const pack: FieldPack = {
      title: 'Drawings',
      version: 'turn 1',
      paper: 'letter',
      sheets: drawings.map(({ name, svg }) => ({ title: name, blocks: [{ kind: 'drawing', svg, caption: '' }] })),
      calendar: [],
    }
    const pages = await readPdf(await fieldPackPdf(pack, { date: '2026-11-26', caution: 'Call first.' }))
    expect(pages).toHaveLength(drawings.length)
    const plain = (text: string): string => text.replace(/\s+/g, '')
    for (const [i, { name, svg }] of drawings.entries()) {
      const page = plain(pages[i]?.text ?? '')
      for (const words of wordsOf(svg)) expect(page, name).toContain(plain(words))
    }
  })

  it('use black, white and grey only, so that any printer prints them', () => {
    for (const { name, svg } of drawings)
      for (const [, colour] of svg.matchAll(/(?:fill|stroke)="([^"]+)"/g))
        expect(`${name} ${colour}`).toMatch(/ (none|#(.)\2\2|#(..)\3\3)$/)
  })
})
