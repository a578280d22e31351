// The contrast of every pair of colours that can meet on the page, computed here from the style sheets by the formula of WCAG 2.2
// (relative luminance and contrast ratio): words at least 4.5 : 1 (1.4.3), lines, edges and the ring of the focus at least 3 : 1 (1.4.11).
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../engine/catalogue.ts'
import { grey, ink } from '../../../engine/drawings/svg.ts'
import { runNamed, systemOf } from '../../engine/run-named.ts'

const folder = join(import.meta.dirname, '../../../src/web/page/styles')
const sheets = new Map(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]))
const papers = sheets.get('papers.css') as string

type Paper = ReadonlyMap<string, string>
/** The colours of the block that begins with those words. */
function coloursOf(selector: string): Paper {
  const block = papers.slice(papers.indexOf(selector)).split('}')[0] ?? ''
  return new Map([...block.matchAll(/--([\w-]+): (#[0-9a-f]{3,6});/g)].map((it) => [it[1] as string, it[2] as string]))
}
const day = coloursOf('[data-paper="day"] {')
const night = coloursOf('[data-paper="night"] {')

const channels = (hex: string): number[] =>
  (hex.length === 4 ? [...hex.slice(1)].map((it) => it + it) : (hex.slice(1).match(/../g) ?? [])).map(
    (it) => Number.parseInt(it, 16) / 255,
  )
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = channels(hex).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
function contrast(a: string, b: string): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (light + 0.05) / (dark + 0.05)
}

const named = (paper: Paper, name: string): string => {
  const colour = paper.get(name)
  if (!colour) throw new Error(`papers.css has no --${name}`)
  return colour
}
/** Pairs that fall short, in words. */
const short = (paper: Paper, on: readonly string[], under: readonly string[], least: number): string[] =>
  on.flatMap((a) =>
    under.flatMap((b) => {
      const ratio = contrast(named(paper, a), named(paper, b))
      return ratio >= least ? [] : [`${a} on ${b}: ${ratio.toFixed(2)}`]
    }),
  )

describe('the contrast of the page', () => {
  it('is computed as WCAG computes it', () => {
    // Known pairs: black on white is 21 : 1; #767676 is the lightest grey that reaches 4.5 : 1 on white.
    expect(contrast('#000', '#fff')).toBeCloseTo(21, 5)
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5)
  })

  it('is of two papers, and the device lays the same night as the hand', () => {
    expect([...day.keys()]).toEqual([...night.keys()])
    expect(coloursOf(':root:not([data-paper="day"]) {')).toEqual(night)
  })

  it('uses no colour that is not of the paper, but under sketches, which are ink on white, and in print', () => {
    for (const [name, text] of sheets)
      if (!['papers.css', 'sketch.css', 'print.css', 'shared.css'].includes(name))
        expect(`${name}: ${[...text.matchAll(/#[0-9a-f]{3,8}\b(?=[;, )])/g)].join()}`).toBe(`${name}: `)
    const texts = [...sheets.values()].flatMap((it) =>
      [...it.matchAll(/[^-]color: var\(--([\w-]+)\)/g)].map(([, c]) => c),
    )
    expect([...new Set(texts)].sort()).toEqual(['faint', 'ink', 'margin', 'paper', 'pencil'])
  })

  for (const [name, paper] of [
    ['day', day],
    ['night', night],
  ] as const)
    it(`on ${name} paper every word reaches 4.5 : 1 and every line and focus ring 3 : 1, wherever it may stand`, () => {
      const grounds = ['paper', 'box', 'care', 'sheet']
      expect(short(paper, ['ink', 'faint', 'pencil'], grounds, 4.5)).toEqual([])
      expect(short(paper, ['paper'], ['ink'], 4.5)).toEqual([])
      // The sign before a fold is a word; the margin colour else is the focus, the dots under a figure and edges.
      expect(short(paper, ['margin'], ['paper', 'sheet'], 4.5)).toEqual([])
      expect(short(paper, ['margin', 'faint', 'ink'], grounds, 3)).toEqual([])
      expect(short(paper, ['care-edge'], ['paper', 'care'], 3)).toEqual([])
      // The ring stands two pixels off a filled button: beside it is paper.
      expect(short(paper, ['margin'], ['ink'], 1.5)).toEqual([])
    })

  it('of a sketch: its buttons, what is asked in it, and every stroke and word that the engine draws', () => {
    const own = [...(sheets.get('sketch.css') as string).matchAll(/(?<=: |solid )(#[0-9a-f]{3,6})\b/g)].map(
      (it) => it[1] as string,
    )
    expect(own).toContain('#a84a22')
    for (const colour of own)
      if (colour !== '#fff') expect(contrast(colour, '#fff'), colour).toBeGreaterThanOrEqual(4.5)

    const drawn = catalogue.flatMap(({ name, examples }) =>
      examples.slice(0, 1).flatMap(({ given }) => {
        const { outcome } = runNamed(name, given, { system: systemOf(given) })
        return outcome.ok && outcome.drawing ? [outcome.drawing] : []
      }),
    )
    expect(drawn.length).toBeGreaterThan(40)
    const all = drawn.join('')
    const of = (what: RegExp): string[] => [...new Set([...all.matchAll(what)].map((it) => it[1] as string))]
    const strokes = of(/stroke="(#[0-9a-f]+)"/g)
    for (const stroke of strokes) expect(contrast(stroke, '#fff'), `stroke ${stroke}`).toBeGreaterThanOrEqual(3)
    const words = of(/<text[^>]*? fill="(#[0-9a-f]+)"/g)
    // Black words stand on white and on the lighter greys that shapes are filled with; the few white ones on ink, the few grey ones on white.
    const light = of(/<(?:rect|path|circle)[^>]*? fill="(#[0-9a-f]+)"/g).filter((it) => luminance(it) > 0.2)
    expect(light.length).toBeGreaterThan(4)
    const grounds = new Map([
      [ink, light],
      ['#fff', [ink]],
      [grey, ['#fff']],
    ])
    for (const word of words)
      for (const ground of grounds.get(word) ?? light)
        expect(contrast(word, ground), `words ${word} on ${ground}`).toBeGreaterThanOrEqual(4.5)
  })
})
