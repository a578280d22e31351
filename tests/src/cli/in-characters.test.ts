import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../engine/index.ts'
import { inCharacters } from '../../../src/cli/drawn/in-characters.ts'
import { draw, written } from '../../engine/drawings/draw.ts'
import { runNamed, systemOf } from '../../engine/run-named.ts'

const drawings = catalogue
  .filter((it) => it.drawing)
  .flatMap(({ name, examples }) =>
    examples.flatMap(({ given }) => {
      const { outcome } = runNamed(name, given, { system: systemOf(given) })
      return outcome.ok && outcome.drawing ? [{ name, svg: outcome.drawing }] : []
    }),
  )
const plain = (text: string): string =>
  text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&')

describe('a drawing in characters', () => {
  it('keeps every word of it, and its lines within the terminal', () => {
    expect(drawings.length).toBeGreaterThan(100)
    for (const columns of [58, 78, 118]) {
      const left = new Set<string>()
      for (const { name, svg } of drawings) {
        const lines = inCharacters(svg, columns)
        if (!lines) left.add(name)
        for (const line of lines ?? []) expect([...line].length, name).toBeLessThanOrEqual(columns)
        for (const words of written(svg).map(plain))
          if (lines && [...words].length <= 56) expect(lines.join('\n'), `${name} in ${columns}`).toContain(words)
      }
      // Boards of 90 mm with 20 mm between them, a whole bay in a third of the sheet: no cell is left for the gap.
      if (columns >= 78) expect([...left]).toEqual(['wind-open-fence'])
      else expect(left.size).toBeLessThan(5)
    }
  })

  it('shows as many pickets as there are, alike, with a gap beside each', () => {
    for (const columns of [58, 78, 118])
      for (const opening of ['93 in', '70 5/8 in', '88 in', '2400 mm']) {
        const isMetric = opening.endsWith('mm')
        const given = isMetric
          ? { opening, picketWidth: '70 mm', widestGap: '30 mm' }
          : { opening, picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }
        const svg = draw('picket-spacing', given, { system: isMetric ? 'metric' : 'imperial' })
        const count = Number(/(\d+) pickets/.exec(svg)?.[1])
        const lines = inCharacters(svg, columns)
        // 24 pickets want two cells each: a narrow terminal has not so many.
        if (!lines && columns < 60 && count >= 24) continue
        if (!lines) throw new Error(`${opening} is not drawn in ${columns} columns`)
        const foot = lines[lines.findIndex((it) => it.startsWith('╶')) - 1] as string
        const bay = /[░│]+( .*? )[░│]+$/.exec(foot)?.[1] ?? ''
        const pickets = bay.trim().split(/ +/)
        expect(pickets, `${opening} in ${columns}:\n${foot}`).toHaveLength(count)
        expect(new Set(pickets).size, foot).toBe(1)
      }
  })

  it('draws the section of a hole: ground, post, stone, and its sizes beside it', () => {
    const svg = draw('post-depth', { postAbove: '4 ft', stoneDepth: '6 in' })
    expect(inCharacters(svg, 78)?.join('\n')).toBe(
      `
                               ≈≈≈≈≈≈≈≈
                                │░░░░│ 4 ft
                                │░░░░│ above ground
                                │░░░░│
╶───────────────────────┬──┐    │░░░░│    ┌───┬──────────────────────╴
  // / / / // / / / // /│/ │    │░░░░│    │ //│/ / / // / / / // / /
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                  24 in │  │    │░░░░│    │   │
          in the ground │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │ 30 in
                        │  │    │░░░░│    │   │ deep
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        │  │    │░░░░│    │   │
                        ┼  ├────┴────┴────┤   │
                   6 in │  │oo  o  oo oo  │   │
                        │  │ oo o  oo oo  │   │
                  stone │  │ o  oo oo oo  │   │
                        ┴  └──────────────┘   ┴

              the width of hole and post is not to scale`.slice(1),
    )
  })

  it('runs the brace of a gate from the bottom at the hinges up to the top at the latch', () => {
    const svg = draw('gate-brace', { insideWidth: '36 in', insideHeight: '30 in', braceWidth: '3 1/2 in' })
    const lines = inCharacters(svg, 78) ?? []
    const braced = lines.filter((it) => it.includes('░░'))
    expect(braced.length).toBeGreaterThan(8)
    const starts = braced.map((it) => it.indexOf('░'))
    expect(starts).toEqual([...starts].sort((a, b) => b - a))
    const [hinge, latch] = ['hinge', 'latch'].map((word) => lines.find((it) => it.includes(word))?.indexOf(word) ?? -1)
    expect(hinge).toBeLessThan(starts.at(-1) as number)
    expect(latch).toBeGreaterThan(starts[0] as number)
  })

  it('is left out where the terminal is too narrow, where a word would be lost, and where it holds what is not known', () => {
    const svg = draw('post-depth', { postAbove: '4 ft' })
    expect(inCharacters(svg, 55)).toBeUndefined()
    expect(
      inCharacters(svg.replace('</svg>', `<text x="180" y="50" font-size="12">${'a'.repeat(300)}</text></svg>`), 78),
    ).toBeUndefined()
    expect(inCharacters(svg.replace('</svg>', '<ellipse cx="1" cy="1" rx="1" ry="1"/></svg>'), 78)).toBeUndefined()
    expect(inCharacters('<svg></svg>', 78)).toBeUndefined()
  })
})
