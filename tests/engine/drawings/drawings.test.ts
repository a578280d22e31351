import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runNamed } from '../run-named.ts'
import { draw, said, unworded, wellFormed } from './draw.ts'

describe('drawings', () => {
  it('the bay is to scale: pickets stand where the exact gap puts them', () => {
    const svg = draw('picket-spacing', { opening: '70 5/8 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' })
    const lefts = [...svg.matchAll(/<path d="M([\d.]+) 188L[\d.]+ [\d.]+L[\d.]+ 62L[\d.]+ [\d.]+L([\d.]+) 188Z"/g)].map(
      (it) => [Number(it[1]), Number(it[2])] as const,
    )
    expect(lefts).toHaveLength(12)
    const scale = (360 - 52) / (70.625 + 7)
    const pitch = (229 / 104 + 3.5) * scale
    lefts.forEach(([left, right], i) => {
      expect(Math.abs(left - (26 + 3.5 * scale + (229 / 104) * scale + i * pitch))).toBeLessThan(0.05)
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

  it('two kinds of post are drawn one under the other, each with its own hole, to one scale', () => {
    const svg = draw(
      'concrete-for-posts',
      { posts: ['4', '7'], holeDiameter: ['12 in', '10 in'], holeDepth: ['40 in', '30 in'], bagYield: '0.6 ft3' },
      { places: ['corner-posts', 'gate-posts'] },
    )
    expect(svg).toContain('corner posts')
    expect(svg).toContain('12 in wide')
    expect(svg).toContain('10 in wide')
    const holes = [...svg.matchAll(/H([\d.]+)V([\d.]+)H([\d.]+)V74/g)].map(([, left, bottom, right]) => ({
      wide: Number(right) - Number(left),
      deep: Number(bottom) - 74,
    }))
    expect(holes).toHaveLength(2)
    const [corner, gate] = holes as [{ wide: number; deep: number }, { wide: number; deep: number }]
    expect(corner.wide / gate.wide).toBeCloseTo(12 / 10, 3)
    expect(corner.deep / gate.deep).toBeCloseTo(40 / 30, 3)
    expect(corner.wide / corner.deep).toBeCloseTo(12 / 40, 3)
    expect(svg).toMatch(/viewBox="0 0 360 /)
  })

  it('are well formed, and hold no number that is none, whatever is drawn', () => {
    const length = (least: number, most: number) => fc.integer({ min: least, max: most }).map((it) => `${it}/8 in`)
    fc.assert(
      fc.property(length(160, 1500), length(8, 60), length(4, 40), (opening, picketWidth, widestGap) => {
        const { outcome } = runNamed('picket-spacing', { opening, picketWidth, widestGap })
        if (outcome.ok && outcome.drawing) {
          expect(wellFormed(outcome.drawing)).toBe(true)
          expect(unworded(outcome.drawing)).not.toMatch(/NaN|undefined|Infinity/)
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
          expect(unworded(outcome.drawing)).not.toMatch(/NaN|undefined|Infinity/)
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
            expect(unworded(outcome.drawing)).not.toMatch(/NaN|undefined|Infinity/)
          }
        },
      ),
      { numRuns: 150, seed: 4 },
    )
  })
})
