// What every drawing keeps to, whichever calculation it belongs to. Widths of words are estimated on the wide side, as in svg.ts.
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../engine/catalogue.ts'
import { spread } from '../../../engine/drawings/svg.ts'
import { isList, isQuantity, type System } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { runNamed } from '../run-named.ts'
import { draw, said, unworded, wellFormed, written } from './draw.ts'

type Given = Readonly<Record<string, string | readonly string[]>>

const systemOf = (given: Given): System =>
  /\b(mm|cm|m|L|kg|C)\b/.test(Object.values(given).flat().join(' ')) ? 'metric' : 'imperial'

/** Inputs that once made words run into each other or off the sheet. */
const awkward: readonly (readonly [name: string, given: Given])[] = [
  ['concrete-for-posts', { posts: '1', holeDiameter: '300 mm', holeDepth: '600 mm', bagYield: '13 L' }],
  ['post-split', { postLength: '5,387 mm' }],
  ['post-as-bought', { postLength: '3,983 mm', postAbove: '3,083 mm' }],
  ['square-corner', { legs: ['6 ft', '243 ft 10 in'] }],
  ['yard-closure', { sides: ['5 ft', '120 ft 6 in', '4 ft', '120 ft'], yardDiagonal: '120 ft 7 in' }],
  ['slope-from-levels', { levelReadings: ['12 in', '124 in', '9 in', '80 in'], readingsApart: '10 ft' }],
  ['post-heights', { groundReadings: ['498 mm', '987 mm', '310 mm', '1,240 mm', '280 mm'], embedment: '600 mm' }],
  ['raked-run', { slope: '70 %', bayCentres: '36 in', postWidth: '5 1/2 in' }],
  ['bays-in-run', { runLength: '118 ft', widestBay: '5 ft 6 in', runEnds: 'loop' }],
  ['bays-in-run', { runLength: '40 ft', widestBay: '8 ft', gates: '1', gateOpening: '42 in' }],
  ['gate-brace', { insideWidth: '2,400 mm', insideHeight: '435 mm', braceWidth: '90 mm' }],
  ['ready-to-finish', { surfaceReading: '36 %', depthReading: '42 %' }],
  ['gate-sag', { strutDiagonal: '60 in', tieDiagonal: '69 1/2 in', leafHeight: '35 1/2 in' }],
  ['gate-swing', { leafWidth: '37 1/2 in', slope: '36 %', gateGapBelow: '5 3/8 in', leafThickness: '6 in' }],
  ['rail-heights', { picketLength: '2,409 mm', footGap: '4 mm', overTop: '26 mm', underBottom: '20 mm' }],
  ['pointed-top', { picketWidth: '3 1/2 in', pointAngle: '20 deg', picketLength: '42 in' }],
  ['crowned-top', { holeDiameter: '887 mm', crownRise: '12 mm', postWidth: '90 mm' }],
]

const ran = (name: string, given: Given) =>
  runNamed(name, given, { system: systemOf(given), confirmed: Object.keys(given) }).outcome

// A calculation may have nothing to draw for some of its examples, but not for all of them.
const drawable = catalogue.filter((calc) => calc.drawing)
const cases = [
  ...drawable.flatMap((calc) => calc.examples.map((it) => [calc.name, it.given, it.ask] as const)),
  ...awkward.map(([name, given]) => [name, given, JSON.stringify(given)] as const),
].flatMap(([name, given, ask]) => {
  const outcome = ran(name, given)
  return outcome.ok && outcome.drawing ? [{ name, outcome, svg: outcome.drawing, ask }] : []
})

describe.each(cases)('$name', ({ svg, ask }) => {
  it(`can be read on a phone: ${ask}`, () => {
    expect(wellFormed(svg)).toBe(true)
    expect(said(svg).length).toBeGreaterThan(20)
    const wide = Number(/viewBox="0 0 ([\d.]+) /.exec(svg)?.[1])
    const texts = textsIn(svg)
    for (const text of texts) {
      // On a screen 320 px across words stand 9 px high at the least, and 7 where a long line had to be set smaller.
      expect((text.size * 320) / wide, text.text).toBeGreaterThanOrEqual(text.size < 11 ? 7 : 9)
      expect(text.left, `“${text.text}” runs off the left side`).toBeGreaterThanOrEqual(0)
      expect(text.right, `“${text.text}” runs off the right side`).toBeLessThanOrEqual(wide)
    }
    expect(overlaps(texts)).toEqual([])
  })
})

interface Text {
  readonly text: string
  readonly size: number
  readonly left: number
  readonly right: number
  readonly y: number
}

/** The words with where they stand; those in a group that is moved are moved with it. */
function textsIn(svg: string): Text[] {
  let moved = 0
  const texts: Text[] = []
  for (const it of svg.matchAll(
    /<g transform="translate\(\S+ ([\d.]+)\)">|<text x="(.*?)" y="(.*?)" text-anchor="(.*?)" font-size="(.*?)"[^>]*?( font-weight="700")?>([^<]*)</g,
  )) {
    if (it[1] !== undefined) {
      moved = Number(it[1])
      continue
    }
    const [x, size, text] = [Number(it[2]), Number(it[5]), it[7] ?? '']
    const wide = spread(text.replace(/&[a-z]+;/g, '"'), size, Boolean(it[6]))
    const left = x - (it[4] === 'start' ? 0 : it[4] === 'middle' ? wide / 2 : wide)
    texts.push({ text, size, left, right: left + wide, y: Number(it[3]) + moved })
  }
  return texts
}

const overlaps = (texts: readonly Text[]): string[] =>
  texts.flatMap((a, i) =>
    texts
      .slice(i + 1)
      .filter(
        (b) =>
          Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
          Math.min(a.y, b.y) > Math.max(a.y - a.size, b.y - b.size) + 2,
      )
      .map((b) => `“${a.text}” on “${b.text}”`),
  )

/** Lengths, areas, volumes and angles in a text, as they are shown. */
const figuresIn = (text: string): string[] =>
  text.match(/−?\d[\d,./ ]*(?: ?(?:in|ft|mm|m|ft²|m²|ft³|L)\b(?: \d[\d/ ]* in)?|°)/g) ?? []

describe('the drawings', () => {
  it('are there for the awkward inputs, and for every calculation that has one', () => {
    expect(drawable.map((it) => it.name).filter((name) => !cases.some((it) => it.name === name))).toEqual([])
    for (const [name, given] of awkward)
      expect(
        cases.some((it) => it.name === name && it.ask === JSON.stringify(given)),
        name,
      ).toBe(true)
  })

  it('show no length and no angle that the calculation did not give or was not given', () => {
    const strange = cases.flatMap(({ name, outcome, svg }) => {
      const own = [...[...outcome.given.values()].map((it) => it.value), ...outcome.values.values()]
        .flatMap((it) => (isQuantity(it) ? [it] : isList(it) ? it : []))
        .map(show)
      const texts = [
        ...own,
        ...outcome.steps.map((it) => it.result),
        ...outcome.tables.flatMap((it) => it.rows.flat()),
        ...outcome.cited.map((it) => show(it.value)),
      ]
      const told = new Set(texts.flatMap((it) => figuresIn(String(it))))
      return written(svg)
        .flatMap(figuresIn)
        .filter((figure) => !told.has(figure))
        .map((figure) => `${name}: ${figure}`)
    })
    expect(strange).toEqual([])
  })

  it.each<[string, Given, Given]>([
    [
      'pointed-top',
      { picketWidth: '3 1/2 in', pointAngle: '70 deg', picketLength: '42 in' },
      { picketWidth: '88.9 mm', pointAngle: '70 deg', picketLength: '1066.8 mm' },
    ],
    [
      'cap-blanks',
      { capSize: '5 1/2 in', stockLength: '8 ft', capCount: '27', postWidth: '3 1/2 in', kerf: '1/8 in' },
      { capSize: '139.7 mm', stockLength: '2438.4 mm', capCount: '27', postWidth: '88.9 mm', kerf: '3.175 mm' },
    ],
    [
      'crowned-top',
      { holeDiameter: '12 in', crownRise: '1 in', postWidth: '3 1/2 in' },
      { holeDiameter: '304.8 mm', crownRise: '25.4 mm', postWidth: '88.9 mm' },
    ],
    [
      'gate-swing',
      { leafWidth: '42 in', slope: '8 %', gateGapBelow: '2 in', leafThickness: '1 1/2 in' },
      { leafWidth: '1066.8 mm', slope: '8 %', gateGapBelow: '50.8 mm', leafThickness: '38.1 mm' },
    ],
    [
      'gate-sag',
      { tieDiagonal: '59 in', strutDiagonal: '57 in', leafHeight: '40 in' },
      { tieDiagonal: '1498.6 mm', strutDiagonal: '1447.8 mm', leafHeight: '1016 mm' },
    ],
    [
      'gate-post-lean',
      { outOfPlumb: '1 in', plumbOver: '48 in', leafWidth: '42 in' },
      { outOfPlumb: '25.4 mm', plumbOver: '1219.2 mm', leafWidth: '1066.8 mm' },
    ],
    [
      'rail-heights',
      { picketLength: '42 in', footGap: '2 in', overTop: '6 in', underBottom: '6 in', railDepth: '3 1/2 in' },
      {
        picketLength: '1066.8 mm',
        footGap: '50.8 mm',
        overTop: '152.4 mm',
        underBottom: '152.4 mm',
        railDepth: '88.9 mm',
      },
    ],
    [
      'picket-spacing',
      { opening: '70 5/8 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
      { opening: '1793.875 mm', picketWidth: '88.9 mm', widestGap: '63.5 mm' },
    ],
    [
      'belled-hole',
      { holeDiameter: '8 in', holeDepth: '36 in', bellWidth: '14 in', bellHeight: '12 in', postWidth: '3 1/2 in' },
      {
        holeDiameter: '203.2 mm',
        holeDepth: '914.4 mm',
        bellWidth: '355.6 mm',
        bellHeight: '304.8 mm',
        postWidth: '88.9 mm',
      },
    ],
  ])('%s has the same lengths in inches and in millimetres', (name, inches, millimetres) => {
    const [one, other] = [draw(name, inches), draw(name, millimetres, { system: 'metric' })]
    expect(unworded(other)).toBe(unworded(one))
    expect(written(other)).not.toEqual(written(one))
  })
})
