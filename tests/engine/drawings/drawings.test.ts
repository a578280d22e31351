import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runNamed } from '../run-named.ts'

const draw = (
  name: string,
  given: Record<string, string | string[]>,
  options: Parameters<typeof runNamed>[2] = {},
): string => {
  const { outcome, said } = runNamed(name, given, options)
  if (!outcome.ok || outcome.drawing === null) throw new Error(said)
  return outcome.drawing
}
/** Every start tag has its end, in order; nothing stands outside the one root. */
function wellFormed(svg: string): boolean {
  const open: string[] = []
  const tags = /<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g
  let rest = ''
  let last = 0
  for (const tag of svg.matchAll(tags)) {
    rest += svg.slice(last, tag.index)
    last = tag.index + tag[0].length
    if (tag[1]) {
      if (open.pop() !== tag[2]) return false
    } else if (!tag[4]) open.push(tag[2] as string)
    if (open.length === 0 && last < svg.length) return false
  }
  return open.length === 0 && last === svg.length && !/[<>]/.test(rest) && !/&(?!amp;|lt;|gt;|quot;)/.test(rest)
}
const numbersOf = (svg: string): string => svg.replace(/<(title|desc|text)[^>]*>[^<]*<\/\1>/g, '')

describe('drawings', () => {
  it('the bay is to scale: pickets stand where the exact gap puts them', () => {
    const svg = draw('picket-spacing', { opening: '70 5/8 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' })
    const lefts = [...svg.matchAll(/<path d="M([\d.]+) 188L[\d.]+ [\d.]+L[\d.]+ 62L[\d.]+ [\d.]+L([\d.]+) 188Z"/g)].map(
      (it) => [Number(it[1]), Number(it[2])] as const,
    )
    expect(lefts).toHaveLength(12)
    const scale = (460 - 68) / (70.625 + 7)
    const pitch = (229 / 104 + 3.5) * scale
    lefts.forEach(([left, right], i) => {
      expect(Math.abs(left - (34 + 3.5 * scale + (229 / 104) * scale + i * pitch))).toBeLessThan(0.05)
      expect(Math.abs(right - left - 3.5 * scale)).toBeLessThan(0.05)
    })
  })

  it('the hole is to scale: width, stone and depth in one proportion', () => {
    const svg = draw('concrete-for-posts', {
      posts: '1',
      holeDiameter: '10 in',
      holeDepth: '30 in',
      stoneDepth: '6 in',
      bagYield: '0.45 ft3',
    })
    const [, left, bottom, right] = /H([\d.]+)V([\d.]+)H([\d.]+)V74/.exec(svg) ?? []
    expect((Number(right) - Number(left)) / (Number(bottom) - 74)).toBeCloseTo(10 / 30, 2)
  })

  it('say in words what they show, with the figures', () => {
    const said = (svg: string): string => /<desc>(.*?)<\/desc>/.exec(svg)?.[1] ?? ''
    expect(said(draw('picket-spacing', { opening: '70 5/8 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }))).toBe(
      'A bay with an opening of 70 5/8 in: 12 pickets, each 3 1/2 in wide, with a gap of 2 3/16 in by the tape between them and at each post.',
    )
    expect(
      said(
        draw('concrete-for-posts', {
          posts: '1',
          holeDiameter: '10 in',
          holeDepth: '30 in',
          stoneDepth: '6 in',
          bagYield: '0.45 ft3',
        }),
      ),
    ).toBe('a hole 30 in deep, 10 in wide, 6 in of stone in the bottom, 24 in of the post in the ground.')
    expect(said(draw('ready-to-finish', { surfaceReading: '14 %', depthReading: '20 %' }))).toContain(
      'a reading at depth of 20 %',
    )
    expect(said(draw('bays-in-run', { runLength: '48 ft', widestBay: '8 ft' }))).toContain('7 posts, 6 bays of 8 ft')
  })

  it('two kinds of post are drawn side by side, each with its own hole', () => {
    const svg = draw(
      'concrete-for-posts',
      { posts: ['4', '7'], holeDiameter: ['12 in', '10 in'], holeDepth: '30 in', bagYield: '0.6 ft3' },
      { places: ['corner-posts', 'gate-posts'] },
    )
    expect(svg).toContain('corner posts')
    expect(svg).toContain('12 in wide')
    expect(svg).toContain('10 in wide')
  })

  it('are well formed, and hold no number that is none, whatever is drawn', () => {
    const length = (least: number, most: number) => fc.integer({ min: least, max: most }).map((it) => `${it}/8 in`)
    fc.assert(
      fc.property(length(160, 1500), length(8, 60), length(4, 40), (opening, picketWidth, widestGap) => {
        const { outcome } = runNamed('picket-spacing', { opening, picketWidth, widestGap })
        if (outcome.ok && outcome.drawing) {
          expect(wellFormed(outcome.drawing)).toBe(true)
          expect(numbersOf(outcome.drawing)).not.toMatch(/NaN|undefined|Infinity/)
        }
      }),
      { numRuns: 150, seed: 4 },
    )
    fc.assert(
      fc.property(length(70, 280), length(100, 700), length(0, 90), (holeDiameter, holeDepth, stoneDepth) => {
        const { outcome } = runNamed('concrete-for-posts', {
          posts: '3',
          holeDiameter,
          holeDepth,
          stoneDepth,
          bagYield: '0.6 ft3',
        })
        if (outcome.ok && outcome.drawing) {
          expect(wellFormed(outcome.drawing)).toBe(true)
          expect(numbersOf(outcome.drawing)).not.toMatch(/NaN|undefined|Infinity/)
        }
      }),
      { numRuns: 150, seed: 4 },
    )
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 900 }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom('centres', 'walls', 'loop'),
        (feet, gates, runEnds) => {
          const { outcome } = runNamed('bays-in-run', {
            runLength: `${feet} ft`,
            widestBay: '8 ft',
            gates: String(gates),
            runEnds,
            ...(gates > 0 ? { gateOpening: '42 in' } : {}),
          })
          if (outcome.ok && outcome.drawing) {
            expect(wellFormed(outcome.drawing)).toBe(true)
            expect(numbersOf(outcome.drawing)).not.toMatch(/NaN|undefined|Infinity/)
          }
        },
      ),
      { numRuns: 150, seed: 4 },
    )
  })
})
