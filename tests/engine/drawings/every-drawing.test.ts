// What every drawing keeps to, whichever calculation it belongs to. Widths of words are estimated on the wide side, as in svg.ts.
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../engine/catalogue.ts'
import { spread } from '../../../engine/drawings/svg.ts'
import { isList, isQuantity, type System } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { runNamed } from '../run-named.ts'
import { boxes, byShapes, draw, linesIn, outlines, said, unworded, wellFormed, written } from './draw.ts'

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
  // Shallow, thin or low beside what it is drawn with: words keep out of the strokes of the ground and out of each other.
  ['strip-bed', { edgeRun: '15 m', edgeWidth: '2,000 mm', spoilDepth: '50 mm', baseDepth: '20 mm', sandDepth: '5 mm' }],
  ['strip-bed', { edgeRun: '50 ft', edgeWidth: '36 in', baseDepth: '1 in', sandDepth: '1/4 in' }],
  [
    'strip-bed',
    {
      edgeRun: '50 ft',
      edgeWidth: '15 13/20 in',
      spoilDepth: '15 13/20 in',
      baseDepth: '5 13/20 in',
      sandDepth: '1 in',
    },
  ],
  ['old-fence-out', { footingWidth: '60 in', footingDepth: '6 in', oldPostWidth: '3 1/2 in' }],
  ['old-fence-out', { footingWidth: '624.5 mm', footingDepth: '274.25 mm', oldPostWidth: '170.75 mm' }],
  ['gravel-for-holes', { posts: '18', holeDiameter: '36 in', stoneDepth: '1 in' }],
  ['gravel-for-holes', { posts: '10', holeDiameter: '21.25 mm', stoneDepth: '6 mm' }],
  ['post-depth', { postAbove: '1200 mm', frostDepth: '2,400 mm', stoneDepth: '20 mm', concreteUnder: '20 mm' }],
  ['post-depth-check', { holeDepth: '150 mm', stoneDepth: '100 mm', postAbove: '300 mm' }],
  [
    'concrete-for-posts',
    {
      posts: '4',
      holeDiameter: '36 in',
      holeDepth: '6 in',
      stoneDepth: '1 in',
      postWidth: '3 1/2 in',
      bagYield: '0.6 ft3',
    },
  ],
  [
    'concrete-for-posts',
    {
      posts: '4',
      holeDiameter: '300 mm',
      holeShape: 'square',
      holeDepth: '600 mm',
      postWidth: '250 mm',
      bagYield: '9 L',
    },
  ],
  [
    'brick-edge',
    {
      edgeRun: '30 ft',
      brickLies: 'end-to-end',
      brickLength: '7 5/8 in',
      brickWidth: '3 5/8 in',
      brickHeight: '2 1/4 in',
      brickRows: '20',
    },
  ],
  [
    'brick-edge',
    {
      edgeRun: '9 m',
      brickLies: 'edge-to-end',
      brickLength: '386.1 mm',
      brickWidth: '81.5 mm',
      brickHeight: '30.56 mm',
      brickJoint: '0 mm',
    },
  ],
  ['height-both-sides', { fenceHeight: '144 mm', gradeDifference: '2,790 mm' }],
  ['rail-heights', { picketLength: '8 ft 3 13/20 in', footGap: '1/4 in', overTop: '1/2 in', underBottom: '1/2 in' }],
  [
    'rail-heights',
    { picketLength: '2,400 mm', rails: '9', footGap: '0 mm', overTop: '0 mm', underBottom: '0 mm', railDepth: '20 mm' },
  ],
  ['site-mix', { concrete: '13.5 ft3', mixParts: '1 : 20 : 1', cementBagWeight: '94 lb' }],
  ['gate-sag', { tieDiagonal: '7 ft 3 13/20 in', strutDiagonal: '7 ft 2 3/64 in', leafHeight: '12 in' }],
  // Wide beside what it is drawn with: it stays on the sheet.
  [
    'hole-to-mark',
    { markDistance: '12 in', holeDiameter: '48 in', holeShape: 'square', zoneEachSide: '6 in', facilityWidth: '2 in' },
  ],
  [
    'hole-to-mark',
    { markDistance: '50 mm', holeDiameter: '1,200 mm', zoneEachSide: '1,000 mm', facilityWidth: '100 mm' },
  ],
  ['hole-to-mark', { markDistance: '30 m', holeDiameter: '300 mm', zoneEachSide: '500 mm', facilityWidth: '0 mm' }],
  [
    'post-line',
    { setback: '1/2 in', picketSide: 'inside', postWidth: '3 1/2 in', holeDiameter: '4 in', capOverhang: '9 in' },
  ],
  ['post-line', { setback: '20 in', picketSide: 'outside', postWidth: '13/64 in', holeDiameter: '50 29/32 in' }],
  ['leaning-wall-cut', { wallLean: '2 deg', planAngle: '12 deg' }],
  ['gate-post-lean', { outOfPlumb: '24 in', plumbOver: '48 in', leafWidth: '42 in' }],
  ['gate-post-lean', { outOfPlumb: '2 13/20 in', plumbOver: '7 ft 3 13/20 in', leafWidth: '7 ft 3 13/20 in' }],
  ['square-corner', { legs: ['300 mm', '400 mm'], measuredDiagonal: '690 mm' }],
  ['sight-triangle', { sightLegs: ['25 ft 3 13/20 in'], fenceAlong: ['24 ft', '3 in'] }],
  ['sight-triangle', { sightLegs: ['1 m', '79.1 m'], fenceAlong: ['1.2 m', '0.4 m'] }],
  ['bays-in-run', { runLength: '187 ft 3 13/20 in', widestBay: '7 ft 3 13/20 in', gates: '2', gateOpening: '15 in' }],
  ['pickets-touching-posts', { opening: '14 1/4 in', picketWidth: '5 13/16 in', widestGap: '4 15/16 in' }],
  ['rounded-top', { picketWidth: '70 mm', wantedRadius: '2,000 mm' }],
  ['clipped-corners', { picketWidth: '90 mm', clipAcross: '44 mm', clipDown: '400 mm' }],
  ['crowned-top', { holeDiameter: '19 5/64 in', crownRise: '14 61/64 in', postWidth: '6 1/2 in' }],
  // Points close to each other, close to the cold, or far out on the scale.
  ['concrete-wait', { braceWait: '4 h', bagTemperature: '73 F', cureTemperature: '180 F' }],
  ['concrete-wait', { braceWait: '4 h', bagTemperature: '73 F', cureTemperature: '69 F' }],
  ['concrete-wait', { braceWait: '4 h', bagTemperature: '73 F', cureTemperature: '37 F' }],
  ['concrete-wait', { railWait: '48 h', bagTemperature: '60 F', cureTemperature: '4.35 C' }],
  // Each side, section and place of rot, and rot that goes nearly through.
  ['rot-left', { postWidth: '3 1/2 in', rotDepth: '1/2 in', rotWhere: 'one' }],
  ['rot-left', { postWidth: '90 mm', rotDepth: '20 mm', rotWhere: 'opposite' }],
  ['rot-left', { postWidth: '5 1/2 in', rotDepth: '1 in', rotWhere: 'corner' }],
  ['rot-left', { postWidth: '3 1/2 in', rotDepth: '1 11/16 in', rotWhere: 'all' }],
  ['rot-left', { postWidth: '4 in', soundShell: '1 in', rotWhere: 'inside' }],
  ['rot-left', { postWidth: '100 mm', soundShell: '20 mm', rotWhere: 'inside', postSection: 'round' }],
  ['rot-left', { postWidth: '4 in', rotDepth: '1/2 in', rotWhere: 'all', postSection: 'round' }],
  ['yard-closure', { sides: ['30 ft', '40 ft', '50 ft'], yardDiagonal: '50 ft' }],
  ['yard-closure', { sides: ['60 ft', '40 ft', '60 ft', '40 ft'], corners: ['90 deg', '90 deg', '95 deg'] }],
  [
    'yard-closure',
    {
      sides: ['20 m', '10 m', '10 m', '10 m', '10 m', '20 m'],
      corners: ['90 deg', '90 deg', '270 deg', '90 deg', '90 deg', '90 deg'],
    },
  ],
  ['sight-triangle', { sightLegs: ['30 ft', '20 ft'], fenceAlong: ['10 ft', '5 ft'] }],
  ['post-lean', { outOfPlumb: '1/4 in', plumbOver: '48 in' }],
  ['post-lean', { outOfPlumb: '60 mm', plumbOver: '1,200 mm' }],
  ['paint-window', { firstHour: '9', hourTemperatures: ['60.5 F', '61.25 F'], hourHumidities: ['50 %', '50 %'] }],
  [
    'paint-window',
    {
      firstHour: '6',
      hourTemperatures: Array.from({ length: 24 }, (_, i) => `${6 + i} C`),
      hourHumidities: Array.from({ length: 24 }, (_, i) => `${95 - 2 * i} %`),
      rainChances: Array.from({ length: 24 }, (_, i) => `${i === 12 ? 60 : 5} %`),
    },
  ],
  ['slope-from-levels', { levelReadings: ['12 in', '20 in'], readingsApart: '10 ft' }],
  [
    'embedment-check',
    {
      sideForce: '120 lb',
      forceHeight: '2 ft',
      postSetIn: 'concrete',
      holeDiameter: '24 in',
      soilClass: 'clay',
      embedment: '6 in',
    },
  ],
  [
    'embedment-check',
    {
      sideForce: '3,000 N',
      forceHeight: '2,400 mm',
      postSetIn: 'earth',
      postWidth: '90 mm',
      soilClass: 'sand',
      embedment: '2,400 mm',
    },
  ],
  // More readings than have room beside each other, and pickets of an arch that are not known, or too many to draw.
  [
    'slope-from-levels',
    { levelReadings: Array.from({ length: 14 }, (_, i) => `${10 + ((i * 7) % 12)} in`), readingsApart: '4 ft' },
  ],
  ['arched-top', { opening: '94 1/2 in', archRise: '6 in', pickets: '15', picketWidth: '3 1/2 in' }],
  ['arched-top', { opening: '180 in', archRise: '9 in', pickets: '120', picketWidth: '1 in', shortestPicket: '36 in' }],
  ['arched-top', { opening: '180 in', archRise: '9 in', pickets: '121', picketWidth: '1 in', shortestPicket: '36 in' }],
  ['arched-top', { opening: '180 in', archRise: '9 in', pickets: '40', picketWidth: '3 in', curveBase: '12 in' }],
  ['arched-top', { opening: '180 in', archRise: '9 in', pickets: '41', picketWidth: '3 in', curveBase: '12 in' }],
  ['yard-closure', { sides: ['30 ft', '40 ft', '50 ft'] }],
]

const ran = (name: string, given: Given, system: System) =>
  runNamed(name, given, { system, confirmed: Object.keys(given) }).outcome

// A calculation may have nothing to draw for some of its examples, but not for all of them.
const drawable = catalogue.filter((calc) => calc.drawing)
const asked = [
  ...drawable.flatMap((calc) => calc.examples.map((it) => [calc.name, it.given, it.ask] as const)),
  ...awkward.map(([name, given]) => [name, given, JSON.stringify(given)] as const),
]
const drawnFor = (systemOfJob: (given: Given) => System) =>
  asked.flatMap(([name, given, ask]) => {
    const outcome = ran(name, given, systemOfJob(given))
    return outcome.ok && outcome.drawing ? [{ name, outcome, svg: outcome.drawing, ask }] : []
  })
const cases = drawnFor(systemOf)
/** Told in feet and inches, in a job that is measured in metric units. */
const toldInInches = asked.filter(([, given]) => systemOf(given) === 'imperial').map(([, , ask]) => ask)
const inMetricJobs = drawnFor(() => 'metric').filter(({ ask }) => toldInInches.includes(ask))

describe.each([...cases, ...inMetricJobs.map((it) => ({ ...it, ask: `${it.ask} In metric.` }))])(
  '$name',
  ({ svg, ask }) => {
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
      expect(crossed(svg)).toEqual([])
      for (const [x, y] of ends(svg)) {
        expect(x, 'a line runs off the side').toBeGreaterThanOrEqual(-0.5)
        expect(x, 'a line runs off the side').toBeLessThanOrEqual(wide + 0.5)
        expect(y, 'a line runs off the top').toBeGreaterThanOrEqual(-0.5)
      }
    })
  },
)

interface Text {
  readonly text: string
  readonly size: number
  readonly left: number
  readonly right: number
  readonly y: number
  readonly isOnWhite: boolean
}

/** The words with where they stand; those in a group that is moved are moved with it. */
function textsIn(svg: string): Text[] {
  let moved = 0
  const texts: Text[] = []
  for (const it of svg.matchAll(
    /<g transform="translate\(\S+ ([\d.]+)\)">|(<rect[^>]* fill="#fff"\/>)?<text x="(.*?)" y="(.*?)" text-anchor="(.*?)" font-size="(.*?)"[^>]*?( font-weight="700")?>([^<]*)</g,
  )) {
    if (it[1] !== undefined) {
      moved = Number(it[1])
      continue
    }
    const [x, size, text] = [Number(it[3]), Number(it[6]), it[8] ?? '']
    const wide = spread(text.replace(/&[a-z]+;/g, '"'), size, Boolean(it[7]))
    const left = x - (it[5] === 'start' ? 0 : it[5] === 'middle' ? wide / 2 : wide)
    texts.push({ text, size, left, right: left + wide, y: Number(it[4]) + moved, isOnWhite: Boolean(it[2]) })
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

/** Where plain lines, outlines and boxes end. */
const ends = (svg: string): (readonly [number, number])[] => [
  ...linesIn(svg).flatMap(([x1, y1, x2, y2]) => [[x1, y1] as const, [x2, y2] as const]),
  ...boxes(svg).flatMap(([x, y, wide, high]) => [[x, y] as const, [x + wide, y + high] as const]),
  ...outlines(svg).flat(),
]

/** Words that a plain line goes through, but for those on a white ground. As widths are estimated too wide, the ends of words may be touched. */
const crossed = (svg: string): string[] =>
  // Each group has places of its own.
  svg.split('<g transform').flatMap((section) => {
    const along = linesIn(section).flatMap(([x1, y1, x2, y2]) =>
      Array.from({ length: 101 }, (_, i) => [x1 + (i / 100) * (x2 - x1), y1 + (i / 100) * (y2 - y1)] as const),
    )
    return textsIn(section)
      .filter(({ isOnWhite, size, left, right, y }) => {
        const slack = (right - left) * 0.14
        return (
          !isOnWhite &&
          along.some(([u, v]) => u > left + slack && u < right - slack && v > y - size * 0.65 && v < y - 1)
        )
      })
      .map(({ text }) => `a line goes through “${text}”`)
  })

/** Lengths, areas, volumes and angles in a text, as they are shown. */
const figuresIn = (text: string): string[] =>
  text.match(/−?\d[\d,./ ]*(?: ?(?:in|ft|mm|m|ft²|m²|ft³|L)\b(?: \d[\d/ ]* in)?|°)/g) ?? []

describe('the drawings', () => {
  it.each(awkward.map(([name, given], i) => [`${i + 1}-${name}`, name, given] as const))(
    'of awkward inputs are as they were last drawn: %s',
    async (file, name, given) => {
      const { drawing } = ran(name, given, systemOf(given)) as { readonly drawing: string }
      await expect(byShapes(drawing)).toMatchFileSnapshot(`../as-worked/awkward/${file}.svg`)
    },
  )

  it('are there for the awkward inputs, and for every calculation that has one', () => {
    expect(drawable.map((it) => it.name).filter((name) => !cases.some((it) => it.name === name))).toEqual([])
    for (const [name, given] of awkward)
      expect(
        cases.some((it) => it.name === name && it.ask === JSON.stringify(given)),
        name,
      ).toBe(true)
  })

  it('are in metric units alone where the job is, whatever it was told in', () => {
    expect(inMetricJobs.length).toBeGreaterThan(100)
    const inches = inMetricJobs.flatMap(({ name, svg }) =>
      [...svg.matchAll(/<(?:text|title|desc)[^>]*>([^<]*)</g)]
        .filter(([, words = '']) =>
          /[\d′″] ?(in|ft|yd|in²|ft²|ft³|yd³|gal|lb|lbf|psi|lb\/ft²|°F)(?![\w²³-])/.test(words),
        )
        .map(([, words]) => `${name}: ${words}`),
    )
    expect(inches).toEqual([])
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
      // "Narrower by …": the word says what the sign does.
      const told = new Set(texts.flatMap((it) => figuresIn(String(it).replace('−', ''))))
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
