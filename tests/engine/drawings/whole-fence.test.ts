// Drawings of the whole fence and those at true size: lengths and angles measured in the picture, held against sums done by hand.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { baySideDrawing } from '../../../engine/drawings/bay-side.ts'
import { halfArchFullSize, stripFullSize } from '../../../engine/drawings/full-size.ts'
import { stacked } from '../../../engine/drawings/stacked.ts'
import { closes, type RunFromAbove, yardPlanDrawing } from '../../../engine/drawings/yard-plan.ts'
import { quantity } from '../../../engine/quantities/quantity.ts'
import { dimensions, draw, linesIn, said, wellFormed, written } from './draw.ts'

const feet = (it: number) => quantity(it, 'ft')
/** A run with a post at each station; its first and last are corners. */
const run = (
  name: string,
  stations: readonly number[],
  from: number,
  more: Partial<RunFromAbove> = {},
): RunFromAbove => ({
  name,
  length: `${stations.at(-1)} ft`,
  posts: stations.map((it, i) => ({
    number: from + i,
    kind: i === 0 || i === stations.length - 1 ? 'corner' : 'line',
    station: feet(it),
  })),
  gates: [],
  corner: quantity(90, 'deg'),
  meetsNext: true,
  walls: { near: false, far: false },
  ...more,
})
const square = [
  run('front run', [0, 10, 20, 30], 1),
  run('right run', [0, 10, 20], 4),
  run('back run', [0, 10, 20, 30], 6),
  run('left run', [0, 10, 20], 9),
]
const drawn = (runs: readonly RunFromAbove[], isFor: 'building' | 'permit' = 'building', isClosed = true): string =>
  yardPlanDrawing({ runs, isClosed, system: 'imperial', isFor })
/** The bays, which are the only lines so thick. */
const bays = (svg: string) =>
  [...svg.matchAll(/<line x1="(.*?)" y1="(.*?)" x2="(.*?)" y2="(.*?)" stroke="#111" stroke-width="3"/g)].map(
    (it) => it.slice(1, 5).map(Number) as [number, number, number, number],
  )
const long = ([x1, y1, x2, y2]: readonly [number, number, number, number]): number => Math.hypot(x2 - x1, y2 - y1)

describe('the yard from above', () => {
  it('is to scale, each run turned by its corner to the right, and comes back to its first post', () => {
    const all = bays(drawn(square))
    expect(all).toHaveLength(10)
    for (const it of all) expect(long(it)).toBeCloseTo(long(all[0] as never), 1)
    // To the right, then down the sheet, then back.
    expect((all[0] as number[])[2]).toBeGreaterThan((all[0] as number[])[0] as number)
    expect((all[3] as number[])[3]).toBeGreaterThan((all[3] as number[])[1] as number)
    expect(all.at(-1)?.slice(2)).toEqual(all[0]?.slice(0, 2))
  })

  // Inside angles of 120°: each run is 60° further round than the one before.
  it('turns by what is left of a half turn', () => {
    const hexagon = ['a', 'b', 'c', 'd', 'e', 'f'].map((it, i) =>
      run(it, [0, 10], i + 1, { corner: quantity(120, 'deg') }),
    )
    const all = bays(drawn(hexagon))
    const degrees = all.map(([x1, y1, x2, y2]) => Math.round((Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI))
    expect(degrees.map((it) => (it + 360) % 360)).toEqual([0, 60, 120, 180, 240, 300])
    expect(closes(hexagon)).toBe(true)
    expect(closes(hexagon.slice(0, 5))).toBe(false)
  })

  it('has a scale bar as long as the fence is drawn', () => {
    const svg = drawn(square)
    const [, feetLong] = /(\d+) ft, to scale/.exec(svg) ?? []
    const ten = long(bays(svg)[0] as never)
    const bar = linesIn(svg).filter(
      ([x1, y1, x2, y2]) => y1 === y2 && Math.abs(x2 - x1 - (Number(feetLong) / 10) * ten) < 0.1,
    )
    expect(bar.length).toBeGreaterThanOrEqual(2)
  })

  it('numbers corners and gate posts always, draws a gate as two thin lines and a wall as a block', () => {
    const svg = drawn(
      [
        run('front run', [0, 8, 16, 19.8, 28], 1, {
          gates: [{ after: 2, name: 'gate 1, 42 in' }],
          walls: { near: true, far: false },
          meetsNext: false,
        }),
      ],
      'building',
      false,
    )
    expect(written(svg)).toEqual(
      expect.arrayContaining(['1', '5', 'gate 1, 42 in', 'front run, 28 ft', 'wall', 'gate']),
    )
    expect(bays(svg)).toHaveLength(3)
    expect(svg).toContain('fill="#bbb"')
    expect(said(svg)).toBe('The fence from above, to scale: front run, 28 ft, posts 1 to 5, with gate 1, 42 in.')
  })

  it('is dimensioned outside for a permit desk, and has no numbers of posts', () => {
    const svg = drawn(square, 'permit')
    expect(dimensions(svg)).toHaveLength(4)
    expect(dimensions(svg).map(long)).toEqual(
      [30, 20, 30, 20].map((it) => expect.closeTo((it / 10) * long(bays(svg)[0] as never), 0)),
    )
    expect(written(svg)).not.toContain('1')
  })

  it('draws runs that do not meet one under the other', () => {
    const apart = drawn(
      [run('front run', [0, 10], 1, { meetsNext: false }), run('back run', [0, 10], 3, { meetsNext: false })],
      'building',
      false,
    )
    const [first, second] = bays(apart)
    expect(second?.[1]).toBeGreaterThan((first?.[1] ?? 0) + 20)
  })

  it('is well formed, and no word runs into another or off the sheet, whatever the runs are', () => {
    const anyRun = fc.record({
      stations: fc.integer({ min: 1, max: 14 }),
      each: fc.integer({ min: 4, max: 10 }),
      angle: fc.constantFrom(45, 60, 90, 120, 135, 180),
      meets: fc.boolean(),
      gate: fc.boolean(),
    })
    fc.assert(
      fc.property(fc.array(anyRun, { minLength: 1, maxLength: 6 }), (all) => {
        let number = 1
        const runs = all.map(({ stations, each, angle, meets, gate }, i): RunFromAbove => {
          const made = run(
            `run ${i + 1}`,
            Array.from({ length: stations + 1 }, (_, k) => k * each),
            number,
            {
              corner: quantity(angle, 'deg'),
              meetsNext: meets && i + 1 < all.length,
              gates: gate ? [{ after: 0, name: 'gate 1, 42 in' }] : [],
            },
          )
          number += stations + (made.meetsNext ? 0 : 1)
          return made
        })
        const svg = drawn(runs, 'building', false)
        expect(wellFormed(svg)).toBe(true)
        expect(svg).not.toMatch(/NaN|undefined/)
        for (const [, x, , text] of svg.matchAll(
          /<text x="([\d.-]+)" y="([\d.-]+)" text-anchor="middle"[^>]*>([^<]*)</g,
        )) {
          expect(Number(x) - (text?.length ?? 0) * 3).toBeGreaterThan(-4)
          expect(Number(x) + (text?.length ?? 0) * 3).toBeLessThan(504)
        }
      }),
      { numRuns: 60, seed: 3 },
    )
  })
})

describe('a bay from outside', () => {
  const bay = {
    centres: quantity(96, 'in'),
    opening: quantity('92 1/2', 'in'),
    postAbove: feet(4),
    pickets: quantity(15, 'picket'),
    picketWidth: quantity('3 1/2', 'in'),
    gap: quantity('2 1/2', 'in'),
    picketLength: quantity(42, 'in'),
    footGap: quantity(2, 'in'),
    isTight: false,
  }

  // 96 in across, 48 in up, pickets 42 in: one scale for all.
  it('has heights and widths in one proportion', () => {
    const [across, up, picket] = dimensions(baySideDrawing(bay)).map(long)
    expect((across as number) / (up as number)).toBeCloseTo(96 / 48, 2)
    expect((picket as number) / (up as number)).toBeCloseTo(42 / 48, 2)
  })

  it('draws no pickets of a length that nobody gave, and says so', () => {
    const svg = baySideDrawing({ ...bay, picketLength: undefined })
    expect(dimensions(svg)).toHaveLength(2)
    expect(written(svg).join(' ')).toContain('pickets are not drawn')
    expect(wellFormed(svg)).toBe(true)
  })
})

describe('at true size', () => {
  it('a strip is as long as the opening in millimetres, with a line where each picket begins', () => {
    const marks = [
      { number: 1, at: quantity('2 1/2', 'in'), text: '2 1/2 in' },
      { number: 2, at: quantity('8 1/2', 'in'), text: '8 1/2 in' },
    ]
    const strip = stripFullSize(quantity('14 1/2', 'in'), quantity('3 1/2', 'in'), marks, 'stick A')
    expect(strip.wide).toBeCloseTo(14.5 * 25.4, 9)
    const lines = linesIn(strip.svg).filter(([x1, y1, x2, y2]) => x1 === x2 && y2 - y1 === strip.high)
    expect(lines.map(([x]) => x)).toEqual(expect.arrayContaining([63.5, 215.9]))
    expect(written(strip.svg)).toEqual(expect.arrayContaining(['1', '2 1/2 in', '8 1/2 in', 'stick A']))
    expect(wellFormed(strip.svg)).toBe(true)
  })

  // A circle over 1800 with a rise of 200: at the middle 200 over its ends, a quarter along √(2125² − 450²) − 1925 = 151.8.
  it('half an arch rises as the curve does', () => {
    const arch = {
      opening: quantity(1800, 'mm'),
      rise: quantity(200, 'mm'),
      curve: 'circle' as const,
      radius: quantity(2125, 'mm'),
    }
    const up = (svg: string, high: number): { x: number; y: number }[] =>
      (/<path d="M([\d. L]+)V/.exec(svg)?.[1] ?? '')
        .split('L')
        .map((it) => it.split(' ').map(Number))
        .map(([x = 0, y = 0]) => ({ x, y: high - 8 - y }))
    const rising = halfArchFullSize({ ...arch, dips: false })
    expect(rising.wide).toBe(900)
    const points = up(rising.svg, rising.high)
    expect(points[0]?.y).toBeCloseTo(0, 2)
    expect(points.at(-1)?.y).toBeCloseTo(200, 2)
    expect(points.find((it) => it.x === 450)?.y).toBeCloseTo(151.8, 1)
    const dipping = halfArchFullSize({ ...arch, dips: true })
    expect(up(dipping.svg, dipping.high)[0]?.y).toBeCloseTo(200, 2)
    expect(wellFormed(rising.svg) && wellFormed(dipping.svg)).toBe(true)
  })
})

it('drawings one under the other keep their lines and words', () => {
  const svg = draw('picket-spacing', { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' })
  const both = stacked([
    { svg, under: 'front run' },
    { svg, under: 'back run' },
  ])
  expect(wellFormed(both)).toBe(true)
  expect(linesIn(both)).toHaveLength(2 * linesIn(svg).length)
  expect(written(both)).toEqual([...written(svg), 'front run', ...written(svg), 'back run'])
})

it('a narrow drawing stands in the middle of the widest, each under the one before and its words', () => {
  const blank = (wide: number, high: number): string =>
    `<svg viewBox="0 0 ${wide} ${high}"><rect width="${wide}" height="${high}"/></svg>`
  const both = stacked([
    { svg: blank(500, 100), under: 'wide' },
    { svg: blank(200, 50), under: 'narrow' },
  ])
  // (500 − 200) / 2 = 150 from the left; 100 and 26 for the words from the top; 26 more under the last.
  expect([...both.matchAll(/translate\((.*?)\)/g)].map((it) => it[1])).toEqual(['0 0', '150 126'])
  expect(both).toContain('viewBox="0 0 500 202"')
  expect(() => stacked([{ svg: blank(0, 100), under: '' }])).toThrow('no viewBox')
  expect(() => stacked([{ svg: '<svg></svg>', under: '' }])).toThrow('no viewBox')
})

// The last bay is a twentieth of the others: posts 10 and 11 stand too close for a number each, so of all line posts only some are numbered.
it('numbers of line posts thin out by the narrowest bay beyond any of them', () => {
  const numbers = (stations: readonly number[]): number[] =>
    written(drawn([run('front run', stations, 1, { meetsNext: false })], 'building', false))
      .filter((it) => /^\d+$/.test(it))
      .map(Number)
      .sort((a, b) => a - b)
  const alike = Array.from({ length: 11 }, (_, i) => 8 * i)
  expect(numbers(alike)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11])
  expect(numbers([...alike.slice(0, -1), 72.4])).not.toContain(2)
  expect(numbers([...alike.slice(0, -1), 72.4])).toContain(1)
})
