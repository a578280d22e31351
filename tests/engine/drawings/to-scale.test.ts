// That drawings are to scale: lengths and angles measured in the picture, held against sums done by hand.
import { describe, expect, it } from 'vitest'
import { boxes, dimensions, draw, type Line, linesIn, outlines, said, written } from './draw.ts'

type Point = readonly [number, number]

const degrees = (up: number, along: number): number => (Math.atan2(up, along) * 180) / Math.PI
/** The dimensions from top to bottom, and those from left to right, in the order they were drawn. */
const heights = (svg: string): Line[] => dimensions(svg).filter(([x1, , x2]) => x1 === x2)
const widths = (svg: string): Line[] => dimensions(svg).filter(([, y1, , y2]) => y1 === y2)
const tall = ([, y1, , y2]: Line): number => Math.abs(y2 - y1)
const wide = ([x1, , x2]: Line): number => Math.abs(x2 - x1)

describe('a pointed top', () => {
  // 70 / 2 / tan 30° = 60.62: the point is 0.866 of the width, and each slope stands 60° from a square cut.
  const svg = draw(
    'pointed-top',
    { picketWidth: '70 mm', pointAngle: '60 deg', picketLength: '1200 mm' },
    { system: 'metric' },
  )
  const [, shoulder, tip, other] = outlines(svg)[0] as [Point, Point, Point, Point]

  it('has its point and its width in one proportion, and the true angle', () => {
    expect((shoulder[1] - tip[1]) / (other[0] - shoulder[0])).toBeCloseTo(60.62 / 70, 3)
    expect(degrees(shoulder[1] - tip[1], tip[0] - shoulder[0])).toBeCloseTo(60, 1)
    expect(tip[0] - shoulder[0]).toBeCloseTo(other[0] - tip[0], 1)
  })

  it('shows rise, cut, width and shoulder, and says that the middle is left out', () => {
    expect(written(svg)).toEqual(
      expect.arrayContaining(['60.62 mm', '60°', '70 mm', '1,139 mm', 'between the two breaks the picket is left out']),
    )
    expect(said(svg)).toBe(
      'A picket 70 mm wide with a point of 60°: it rises 60.62 mm from the shoulders, and each slope is cut 60° from square. The shoulders are 1,139 mm up from the foot.',
    )
  })

  it('leaves the shoulder out when the length is not known', () => {
    const without = draw('pointed-top', { picketWidth: '70 mm', pointAngle: '60 deg' }, { system: 'metric' })
    expect(without).not.toContain('shoulder<')
    expect(said(without)).not.toContain('up from the foot')
  })
})

describe('caps from a board', () => {
  // (5 1/2 − 3 1/2) / 2 = 1 past each face; 17 blanks of 5 1/2 with 16 cuts of 1/8 take 95 1/2 of 96.
  const svg = draw('cap-blanks', {
    capSize: '5 1/2 in',
    stockLength: '8 ft',
    capCount: '27',
    postWidth: '3 1/2 in',
    kerf: '1/8 in',
  })
  const [post, cap, board, ...blanks] = boxes(svg) as [Line, Line, Line, ...Line[]]

  it('has cap, post and both overhangs in one proportion', () => {
    expect(cap[2] / post[2]).toBeCloseTo(5.5 / 3.5, 3)
    expect((post[0] - cap[0]) / cap[2]).toBeCloseTo(1 / 5.5, 3)
    expect((cap[0] + cap[2] - post[0] - post[2]) / cap[2]).toBeCloseTo(1 / 5.5, 3)
    expect(written(svg).filter((it) => it === '1 in')).toHaveLength(2)
  })

  it('has as many blanks on the board as come out of it, a cut between them, each square', () => {
    expect(blanks).toHaveLength(17)
    const [first, second] = blanks as [Line, Line]
    expect(first[2] / board[2]).toBeCloseTo(5.5 / 96, 3)
    expect((second[0] - first[0]) / board[2]).toBeCloseTo(5.625 / 96, 3)
    expect(first[2]).toBe(first[3])
    const last = blanks.at(-1) as Line
    expect((last[0] + last[2] - board[0]) / board[2]).toBeCloseTo(95.5 / 96, 3)
  })

  it('draws the cap alone when no board is known, and says so when blanks are too many to tell apart', () => {
    const alone = draw('cap-blanks', { capSize: '5 1/2 in', postWidth: '3 1/2 in' })
    expect(boxes(alone)).toHaveLength(2)
    // 1 in blanks from 16 ft: 171 of them, under 2 px each.
    const many = draw(
      'cap-blanks',
      { capSize: '1 in', stockLength: '16 ft', kerf: '1/8 in', postWidth: '1 in' },
      { confirmed: ['capSize', 'postWidth'] },
    )
    expect(boxes(many)).toHaveLength(3)
    expect(written(many).join()).toContain('too many to draw')
  })
})

describe('a crown', () => {
  const svg = draw('crowned-top', { holeDiameter: '12 in', crownRise: '1 in', postWidth: '3 1/2 in' })
  const [, rim, crest, , otherRim] = outlines(svg)[0] as [Point, Point, Point, Point, Point]

  it('rises from the rim to the post in the proportion of the hole', () => {
    const hole = otherRim[0] - rim[0]
    expect((rim[1] - crest[1]) / hole).toBeCloseTo(1 / 12, 3)
    expect((crest[0] - rim[0]) / hole).toBeCloseTo(4.25 / 12, 3)
    const [post] = boxes(svg) as [Line]
    expect(post[2] / hole).toBeCloseTo(3.5 / 12, 3)
  })

  it('shows the rise, the hole, the post and the concrete', () => {
    expect(written(svg)).toEqual(['1 in', 'post 3 1/2 in', 'hole 12 in', '0.02427 ft³ of concrete in the crown'])
  })
})

describe('a gate that swings', () => {
  // 8 % of 42 = 3.36: more than the 2 in under it.
  const given = { leafWidth: '42 in', slope: '8 %', gateGapBelow: '2 in', leafThickness: '1 1/2 in' }
  const svg = draw('gate-swing', given)

  it('has the rise of the ground, the gap and the leaf in one proportion', () => {
    const [rise, gap] = heights(svg) as [Line, Line]
    const [leaf] = widths(svg) as [Line]
    expect(tall(rise) / wide(leaf)).toBeCloseTo(3.36 / 42, 2)
    expect(tall(gap) / wide(leaf)).toBeCloseTo(2 / 42, 2)
    expect(written(svg)).toEqual(
      expect.arrayContaining(['3 9/25 in', '2 in', 'leaf 42 in', 'open, the leaf drags on the ground']),
    )
  })

  it('has the leaf and its thickness in one proportion from above, with the arc of the far corner', () => {
    const turning = boxes(svg).at(-2) as Line // the last one is the leaf standing open
    expect(turning[3] / turning[2]).toBeCloseTo(1.5 / 42, 3)
    // √(42² + 1.5²) = 42.0268
    const radius = Number(/A([\d.]+) /.exec(svg)?.[1])
    expect(radius / turning[2]).toBeCloseTo(42.0268 / 42, 3)
    expect(written(svg)).toContain('its edge needs 0.02678 in past the shut leaf')
  })

  it('says what it does not know: without a gap the leaf just touches, without a slope it only turns', () => {
    const touching = draw('gate-swing', { leafWidth: '42 in', slope: '8 %' }, { wanted: ['swingRise'] })
    expect(written(touching)).toContain('the leaf is drawn where it just touches')
    expect(said(touching)).not.toMatch(/drags|clears/)
    const turning = draw('gate-swing', { leafWidth: '42 in' }, { wanted: ['edgeRoom'] })
    expect(written(turning).join(' ')).not.toContain('open')
  })

  it('says in the drawing what the verdict says', () => {
    const clear = draw('gate-swing', { ...given, gateGapBelow: '4 in' })
    expect(written(clear)).toContain('open, the leaf clears the ground')
    const even = draw('gate-swing', { ...given, gateGapBelow: '3.36 in' })
    expect(written(even)).toContain('open, the leaf drags on the ground')
  })
})

describe('a gate that has sagged', () => {
  // tie² = 42² + 40² + 2 × 40 × 10 = 4164, strut² = 2564: a drop of 10 in is large enough to be drawn as it is.
  const svg = draw('gate-sag', { tieDiagonal: '64.529 in', strutDiagonal: '50.636 in', leafHeight: '40 in' })

  it('has both diagonals in their proportion, the longer one solid and running down to the latch', () => {
    const [tie, strut] = linesIn(svg) as [Line, Line]
    expect(tie[3]).toBeGreaterThan(tie[1])
    expect(strut[3]).toBeLessThan(strut[1])
    const [long, short] = [tie, strut].map(([x1, y1, x2, y2]) => Math.hypot(x2 - x1, y2 - y1)) as [number, number]
    expect(long / short).toBeCloseTo(64.529 / 50.636, 3)
    expect(svg).not.toContain('times as large')
  })

  it('draws a small sag larger, by a whole number that it tells', () => {
    const small = draw('gate-sag', { tieDiagonal: '58 11/16 in', strutDiagonal: '57 5/16 in', leafHeight: '40 in' })
    const times = Number(/the sag is drawn (\d+) times as large/.exec(small)?.[1])
    const [leaf] = outlines(small) as [Point[]]
    const [hinge, foot, , latch] = leaf as [Point, Point, Point, Point]
    expect(times).toBeGreaterThan(1)
    // 319/320 in of drop beside 40 in of height.
    expect((latch[1] - hinge[1]) / times / (foot[1] - hinge[1])).toBeCloseTo(319 / 320 / 40, 3)
    expect(written(small)).toEqual(
      expect.arrayContaining([
        'latch side 319/320 in down',
        'top hinge to bottom latch 58 11/16 in, longer',
        'bottom hinge to top latch 57 5/16 in',
        'both 58 in when square: take the cable up 0.6834 in',
      ]),
    )
  })

  it('tells a latch that stands too high, and one that stands square', () => {
    const high = draw('gate-sag', { tieDiagonal: '57 5/16 in', strutDiagonal: '58 11/16 in', leafHeight: '40 in' })
    const [hinge, , , latch] = (outlines(high) as [Point[]])[0] as [Point, Point, Point, Point]
    expect(latch[1]).toBeLessThan(hinge[1])
    expect(written(high)).toContain('latch side 319/320 in too high')
    expect(high).not.toContain('take the cable up')
    const square = draw('gate-sag', { tieDiagonal: '58 in', strutDiagonal: '58 in', leafHeight: '40 in' })
    expect(written(square)).toContain('both diagonals alike: square')
    expect(square).not.toContain('times as large')
  })
})

describe('a post that leans', () => {
  it('stands at its true angle where that can be seen, and the leaf tips by the same', () => {
    // atan(8/48) = 9.462°; 42 × sin = 6.905
    const svg = draw('gate-post-lean', { outOfPlumb: '8 in', plumbOver: '48 in', leafWidth: '42 in' })
    const [post, leaf] = outlines(svg) as [Point[], Point[]]
    const [foot, top] = post as [Point, Point]
    expect(degrees(top[0] - foot[0], foot[1] - top[1])).toBeCloseTo(9.462, 1)
    const [, hung, tipped] = leaf as [Point, Point, Point]
    expect(degrees(tipped[1] - hung[1], tipped[0] - hung[0])).toBeCloseTo(9.462, 1)
    const [over, fall] = heights(svg) as [Line, Line]
    expect(tall(fall) / tall(over)).toBeCloseTo(6.905 / 48, 2)
    expect(svg).not.toContain('times as large')
  })

  it('is drawn leaning more where the lean is small, by a whole number that it tells', () => {
    const svg = draw('gate-post-lean', { outOfPlumb: '1 in', plumbOver: '48 in', leafWidth: '42 in' })
    const times = Number(/the lean is drawn (\d+) times as large/.exec(svg)?.[1])
    expect(times).toBe(6)
    const [foot, top] = (outlines(svg) as [Point[]])[0] as [Point, Point]
    expect(degrees(top[0] - foot[0], foot[1] - top[1]) / times).toBeCloseTo(1.1935, 2)
    expect(written(svg)).toEqual(
      expect.arrayContaining([
        '1 in',
        '48 in',
        '0.8748 in',
        'leaf 42 in',
        'lean 1.193°: the latch end falls 0.8748 in',
      ]),
    )
  })

  it('is drawn alone without a leaf, and upright when it is plumb', () => {
    const alone = draw('gate-post-lean', { outOfPlumb: '1 in', plumbOver: '48 in' }, { wanted: ['leanAngle'] })
    expect(outlines(alone)).toHaveLength(1)
    const plumb = draw('gate-post-lean', { outOfPlumb: '0 in', plumbOver: '48 in', leafWidth: '42 in' })
    const [foot, top] = (outlines(plumb) as [Point[]])[0] as [Point, Point]
    expect(top[0]).toBe(foot[0])
    expect(plumb).not.toContain('times as large')
  })
})

describe('rails at their heights', () => {
  // 50 + 1100 − 150 = 1000; 50 + 150 + 90 = 290; 710 / 2 = 355
  const svg = draw(
    'rail-heights',
    {
      picketLength: '1100 mm',
      rails: '3',
      footGap: '50 mm',
      overTop: '150 mm',
      underBottom: '150 mm',
      railDepth: '90 mm',
    },
    { system: 'metric' },
  )

  it('has every height from the ground in one proportion', () => {
    const rails = boxes(svg).slice(0, 3)
    const [top, bottom, over, apart, under, foot] = heights(svg).map(tall) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ]
    const scale = top / 1000
    expect(bottom / scale).toBeCloseTo(290, 0)
    expect(over / scale).toBeCloseTo(150, 0)
    expect(apart / scale).toBeCloseTo(355, 0)
    expect(under / scale).toBeCloseTo(150, 0)
    expect(foot / scale).toBeCloseTo(50, 0)
    const ground = (heights(svg)[0] as Line)[3]
    expect(rails.map(([, y]) => Math.round((ground - y) / scale))).toEqual([1000, 645, 290])
    expect(rails.map(([, , , deep]) => Math.round(deep / scale))).toEqual([90, 90, 90])
  })

  it('shows the calculation’s own heights', () => {
    expect(written(svg)).toEqual(
      expect.arrayContaining([
        '1,000 mm',
        '290 mm',
        '355 mm',
        '150 mm',
        '50 mm off the ground',
        '3 rails 90 mm deep, pickets 1,100 mm long',
      ]),
    )
  })
})

describe('a rail against a leaning wall', () => {
  it('has miter and bevel at their true angles, the long point at the top edge', () => {
    const svg = draw('leaning-wall-cut', { wallLean: '8 deg', planAngle: '60 deg' })
    const rails = outlines(svg).filter((_, i) => i % 2 === 1) as [Point[], Point[]]
    const [miter, bevel] = rails.map(([, long, short]) => {
      const [x1, y1] = long as Point
      const [x2, y2] = short as Point
      return degrees(x1 - x2, y2 - y1)
    })
    expect(miter).toBeCloseTo(9.218, 1)
    expect(bevel).toBeCloseTo(29.68, 1)
    expect(written(svg)).toEqual(expect.arrayContaining(['miter 9.218°, bevel 29.68°', '9.218°', '29.68°', 'top edge']))
  })

  it('stays on its sheet with a cut that runs far', () => {
    const svg = draw('leaning-wall-cut', { wallLean: '60 deg', planAngle: '40 deg' }, { confirmed: ['wallLean'] })
    for (const [x, y] of outlines(svg).flat()) {
      expect(x).toBeGreaterThanOrEqual(0)
      expect(x).toBeLessThanOrEqual(360)
      expect(y).toBeGreaterThanOrEqual(0)
      expect(y).toBeLessThanOrEqual(274)
    }
  })
})

describe('a screw through a picket', () => {
  // 3/4 + 6 × 0.164 = 1.734 long, 0.164 thick, through 3/4 and 1 1/2.
  it('has its length and its thickness in the proportion of the wood', () => {
    const svg = draw('screw-length', {
      picketThickness: '3/4 in',
      railThickness: '1 1/2 in',
      screwDiameter: '0.164 in',
    })
    const [picket] = boxes(svg) as [Line]
    const [screw] = outlines(svg) as [Point[]]
    const xs = screw.map(([x]) => x)
    expect((Math.max(...xs) - Math.min(...xs)) / picket[2]).toBeCloseTo(1.734 / 0.75, 2)
    const [, shank, , , , under] = screw as [Point, Point, Point, Point, Point, Point]
    expect((under[1] - shank[1]) / picket[2]).toBeCloseTo(0.164 / 0.75, 2)
  })
})

describe('a run from above', () => {
  it('has its strips to one scale: a last strip with fewer bays is shorter', () => {
    // 100 ft in 13 bays: three strips of four bays, and one of one.
    const svg = draw('bays-in-run', { runLength: '100 ft', widestBay: '8 ft' })
    const bays = linesIn(svg)
      .filter(([, y1, , y2]) => y1 === y2)
      .map(wide)
      .filter((it) => it > 20)
    expect(bays).toHaveLength(13)
    for (const bay of bays) expect(bay).toBeCloseTo(75, 1)
  })
})

describe('a corner that is not square', () => {
  it('stays on its sheet when it leans far out, with the true angle between its sides', () => {
    // 6² + 4² − 2 × 6 × 4 × cos 150° = 93.57: the diagonal is 9.673 ft.
    const svg = draw(
      'square-corner',
      { legs: ['6 ft', '4 ft'], measuredDiagonal: '9.673 ft' },
      { confirmed: ['measuredDiagonal'] },
    )
    const lines = linesIn(svg)
    for (const [x1, , x2] of lines) {
      expect(Math.min(x1, x2)).toBeGreaterThanOrEqual(0)
      expect(Math.max(x1, x2)).toBeLessThanOrEqual(360)
    }
    const [, , leg] = lines as [Line, Line, Line]
    expect(degrees(leg[1] - leg[3], leg[2] - leg[0])).toBeCloseTo(150, 0)
  })
})

describe('a hole beside a mark', () => {
  it('is whole on its sheet where it is larger than its distance, in proportion to the zone', () => {
    // 48 √2 = 67.88 from corner to corner; the zone is 2 × 6 + 2 = 14 wide.
    const given = { markDistance: '12 in', holeDiameter: '48 in', zoneEachSide: '6 in', facilityWidth: '2 in' }
    const svg = draw('hole-to-mark', { ...given, holeShape: 'square' }, { confirmed: Object.keys(given) })
    const [hole] = outlines(svg) as [Point[]]
    const [left, top, right, bottom] = hole as [Point, Point, Point, Point]
    const [zone, line] = boxes(svg) as [Line, Line]
    expect((right[0] - left[0]) / zone[2]).toBeCloseTo(67.88 / 14, 2)
    expect(bottom[1] - top[1]).toBeCloseTo(right[0] - left[0], 1)
    expect((top[0] - line[0] - line[2] / 2) / zone[2]).toBeCloseTo(12 / 14, 2)
    expect(left[0]).toBeGreaterThan(0)
    expect(written(svg).join()).not.toContain('larger')
  })

  it('says when hole and line are drawn larger than they are', () => {
    const svg = draw(
      'hole-to-mark',
      { markDistance: '30 m', holeDiameter: '300 mm', zoneEachSide: '500 mm', facilityWidth: '0 mm' },
      { system: 'metric', confirmed: ['markDistance'] },
    )
    expect(written(svg)).toContain('the hole and the buried line are drawn larger than they are')
  })
})

describe('a hole of which not all is known', () => {
  it('says what is not to scale', () => {
    const said = (name: string, given: Record<string, string>) => written(draw(name, given)).at(-1)
    expect(said('post-split', { postLength: '8 ft', stoneDepth: '6 in' })).toBe(
      'the width of hole and post is not to scale',
    )
    expect(said('gravel-for-holes', { posts: '18', holeDiameter: '12 in', stoneDepth: '6 in' })).toBe(
      'the depth of the hole and the width of the post are not to scale',
    )
  })
})

// A trench of 75 in is drawn 150 high: two to the inch. Half a dot of height is too thin for a layer of its own, anything more is not.
describe('a layer of the bed', () => {
  it.each([
    ['4 in', '1/4 in', 1],
    ['4 in', '3/8 in', 2],
    ['1/4 in', '4 in', 1],
    ['3/8 in', '4 in', 2],
  ])('base %s and sand %s are %d boxes', (baseDepth, sandDepth, count) => {
    const given = { edgeRun: '50 ft', edgeWidth: '50 in', spoilDepth: '75 in', baseDepth, sandDepth }
    const svg = draw('strip-bed', given, { confirmed: Object.keys(given) })
    expect(boxes(svg)).toHaveLength(count)
  })
})
