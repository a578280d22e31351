// This file is about the evidence for the calculations in frame/.
import { isQuantity, numberIn } from '../../../engine/quantities/quantity.ts'
import type { Ran } from '../../engine/run-named.ts'
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

/** Pieces sawn off one board until the next does not come out. */
function piecesFrom(board: number, piece: number, kerf: number): number {
  let [left, count] = [board, 0]
  while (left >= piece - 1e-9) {
    left -= piece + kerf
    count++
  }
  return count
}

/**
 * A rail pushed into a wall that leans away from it: where the wall meets its long edges is found by halving, and miter and bevel
 * are measured from those points as on the sawn piece, in degrees.
 */
function cutBySlicing(lean: number, plan: number, pitch: number): { miter: number; bevel: number } {
  type Spot = readonly [x: number, y: number, z: number]
  const turned = (a: number, b: number, degrees: number): [number, number] => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
    return [a * c - b * s, a * s + b * c]
  }
  /** A spot of the rail as it hangs: x along it, y through its thickness, z up its face. Its wall end is raised. */
  const hung = ([x, y, z]: Spot): Spot => {
    const [forward, up] = turned(x, z, pitch)
    return [forward, y, up]
  }
  /** How far a spot lies behind the face of the wall: the wall is turned to stand square and plumb, and the spot with it. */
  const behind = (spot: Spot): number => {
    const [forward, , up] = spot
    const [out] = turned(forward, spot[1], plan - 90)
    return turned(out, up, lean)[0]
  }
  /** Where the long edge of the rail that lies there meets the wall, along the rail. */
  const cutAt = (y: number, z: number): number => {
    let [near, far] = [-1e3, 1e3]
    for (let i = 0; i < 100; i++) {
      const middle = (near + far) / 2
      if (behind(hung([middle, y, z])) < 0) near = middle
      else far = middle
    }
    return near
  }
  const [thick, high] = [1.5, 3.5]
  const [bottom, top, back] = [cutAt(0, 0), cutAt(0, high), cutAt(thick, 0)]
  // On the face the cut runs from bottom to top; through the thickness it has run off so far, square to that line.
  const line = Math.hypot(top - bottom, high)
  const runOff = (Math.abs(back - bottom) * high) / line
  const degrees = (rise: number, run: number): number => (Math.atan2(rise, run) * 180) / Math.PI
  return { miter: degrees(Math.abs(top - bottom), high), bevel: degrees(runOff, thick) }
}

/**
 * Sag in the middle of a beam on two supports, by its own definition: the bending moment over E I is the curvature, and
 * curvature summed twice along the beam is the line it takes. Force a length, force in the middle; any units that agree.
 */
function sagBySteps(even: number, middle: number, span: number, bends: number): number {
  const steps = 20_000
  const dx = span / steps
  let [slope, drop] = [0, 0]
  const drops = [0]
  for (let i = 0; i < steps; i++) {
    const x = (i + 0.5) * dx
    const moment = (even * x * (span - x)) / 2 + (middle * Math.min(x, span - x)) / 2
    drop += slope * dx + ((moment / bends) * dx * dx) / 2
    slope += (moment / bends) * dx
    drops.push(drop)
  }
  // Turned so that both ends lie level.
  return (drops[steps] as number) / 2 - (drops[steps / 2] as number)
}

/** The second moment of area that a sag shows: I = P L³ / (48 E sag), in⁴. */
const momentFrom =
  (word: string) =>
  ({ outcome }: Ran): number => {
    const sag = outcome.ok ? outcome.values.get(word) : undefined
    if (!isQuantity(sag)) throw new Error(`no ${word}`)
    return (200 * 92.5 ** 3) / (48 * 900_000 * numberIn(sag, 'in'))
  }

/**
 * Rails stacked up from the ground with clear spaces between them, the spaces opened by halving until the stack, with what
 * reaches over the top rail, is as high as a picket stood on its foot. Gives the top edge of every rail.
 */
function stackedRails(
  picket: number,
  foot: number,
  over: number,
  under: number,
  rails: number,
  deep: number,
): number[] {
  const stack = (space: number): number[] => {
    const edges: number[] = []
    let at = foot + under
    for (let rail = 0; rail < rails; rail++) {
      at += deep
      edges.push(at)
      at += space
    }
    return edges
  }
  let [low, high] = [0, picket]
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2
    if ((stack(middle).at(-1) as number) + over < foot + picket) low = middle
    else high = middle
  }
  return stack(low)
}

const onEdge = { opening: '92 1/2 in', railDepth: '3 1/2 in', railThickness: '1 1/2 in' }
// 35.657143 lb/ft³ × 1 1/2 × 3 1/2 in is the book's 1.3 lb/ft of rail; half of 4 lb/ft of pickets hangs on each of two.
const bookRail = { woodStiffness: '1000000 psi', woodDensity: '35.6571428571 lb/ft3', hungWeight: '2 lb/ft' }

export const frameChecks: readonly Check[] = [
  ...(
    [
      ['edge', 'ownSag', 0.0543],
      ['edge', 'longSag', 0.1087],
      ['flat', 'ownSag', 0.2959],
      ['flat', 'longSag', 0.5918],
    ] as const
  ).map(
    ([railLies, gives, expected]): Check => ({
      calculation: 'rail-sag',
      what: `${gives} of a cedar rail with its pickets, ${railLies === 'edge' ? 'on edge' : 'laid flat'}`,
      kind: 'reference',
      source: 'Reference book, lumber structure (E of cedar and the creep factor from memory)',
      reference: 'lum-05',
      given: { ...onEdge, ...bookRail, railLies },
      gives,
      unit: 'in',
      expected,
      tolerance: 0.00005,
    }),
  ),
  ...(
    [
      ['leanSag', 0.684],
      ['pushBow', 3.722],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'rail-sag',
      what: `${gives} under 200 lb in the middle; the stresses of that example are not worked here`,
      kind: 'reference',
      source: 'Reference book, lumber structure',
      reference: 'lum-06',
      given: { ...onEdge, woodStiffness: '1000000 psi', leanWeight: '200 lb' },
      gives,
      unit: 'in',
      expected,
      tolerance: 0.0005,
    }),
  ),
  ...(
    [
      ['leanSag', 'on edge', 5.3594],
      ['pushBow', 'sideways', 0.9844],
    ] as const
  ).map(
    ([gives, how, expected]): Check => ({
      calculation: 'rail-sag',
      what: `second moment of area, ${how}, back from ${gives}`,
      kind: 'reference',
      source: 'Reference book, lumber structure (geometry)',
      reference: 'lum-01',
      given: { ...onEdge, woodStiffness: '1000000 psi', leanWeight: '200 lb' },
      gives,
      unit: 'in4',
      got: momentFrom(gives),
      expected,
      tolerance: 0.00005,
    }),
  ),
  ...(
    [
      ['ownSag', 3, 0],
      ['leanSag', 0, 80 * 9.80665],
    ] as const
  ).map(
    ([gives, evenKilos, middle]): Check => ({
      calculation: 'rail-sag',
      what: `${gives} of a 45 by 90 mm rail over 2.4 m, in newtons and millimetres`,
      kind: 'second derivation',
      source: 'second derivation: the curvature summed twice along the rail in twenty thousand steps',
      given: {
        opening: '2400 mm',
        railDepth: '90 mm',
        railThickness: '45 mm',
        woodStiffness: '10000 N/mm2',
        woodDensity: '500 kg/m3',
        hungWeight: `${evenKilos} kg/m`,
        leanWeight: '80 kg',
      },
      system: 'metric',
      gives,
      unit: 'mm',
      // 500 kg/m³ × 0.045 × 0.09 m = 2.025 kg/m of rail
      expected: () =>
        sagBySteps(
          gives === 'ownSag' ? ((2.025 + evenKilos) * 9.80665) / 1000 : 0,
          middle,
          2400,
          9000 * 45 * (90 ** 3 / 12),
        ),
      tolerance: 1e-5,
    }),
  ),
  {
    calculation: 'rail-sag',
    what: 'a rail by itself, in pounds and inches',
    kind: 'library',
    source: mathjsWorks,
    given: { ...onEdge, woodStiffness: '1400000 psi', woodDensity: '36 lb/ft3' },
    gives: 'ownSag',
    unit: 'in',
    expected: () =>
      byMathjs(
        '5 / 384 * (36 lbf/ft^3 * 3.5 inch * 1.5 inch) * (92.5 inch)^4 / (0.9 * 1400000 psi * 1.5 inch * (3.5 inch)^3 / 12)',
        'inch',
      ),
    tolerance: 1e-9,
  },
  {
    calculation: 'rail-sag',
    what: 'wet clear Douglas-fir sags within a tenth of what the design value of No. 2 gives when wet',
    kind: 'handbook',
    source:
      'National Design Specification for Wood Construction 2018, Supplement, Douglas fir-larch No. 2: E 1.6 million psi, × 0.9 wet',
    given: { ...onEdge, species: 'douglas-fir', leanWeight: '200 lb' },
    gives: 'leanSag',
    unit: 'in',
    // 200 × 92.5³ / (48 × 0.9 × 1,600,000 × 5.359375)
    expected: (200 * 92.5 ** 3) / (48 * 0.9 * 1_600_000 * 5.359375),
    tolerance: 0.043,
  },
  {
    calculation: 'rails-between-posts',
    what: 'rails sawn from a 12 ft board one after the other',
    kind: 'second derivation',
    source: 'second derivation: pieces and saw cuts taken off the board until the next does not come out',
    given: { opening: '46 in', fitAllowance: '1/8 in', bays: '9', stockLength: '12 ft', kerf: '1/8 in' },
    gives: 'railsPerBoard',
    unit: 'rail',
    expected: () => piecesFrom(144, 45.75, 0.125),
    tolerance: 0,
  },
  {
    calculation: 'rails-between-posts',
    what: 'a 12 ft board gives three 36 in pieces with a saw cut, not four',
    kind: 'second derivation',
    source: 'second derivation: as above; the reference book’s cut-count says the same',
    given: { opening: '36 1/4 in', fitAllowance: '1/8 in', bays: '4', stockLength: '144 in', kerf: '1/8 in' },
    gives: 'railsPerBoard',
    unit: 'rail',
    expected: () => piecesFrom(144, 36, 0.125),
    tolerance: 0,
  },
  {
    calculation: 'rails-across-faces',
    what: 'boards laid along a run of 13 bays, joints on posts only',
    kind: 'second derivation',
    source: 'second derivation: each board laid to the furthest post it reaches, until the run is covered',
    given: { bayCentres: '7 1/2 ft', bays: '13', rails: '2', stockLength: '16 ft' },
    gives: 'faceBoards',
    unit: 'board',
    expected: () => {
      let [post, boards] = [0, 0]
      while (post < 13) {
        let reach = post
        while (reach < 13 && (reach + 1 - post) * 7.5 <= 16) reach++
        post = reach
        boards++
      }
      return boards * 2
    },
    tolerance: 0,
  },
  ...(
    [
      [12, 2, '6 ft', 6, 12],
      [12, 3, '6 ft', 6, 20],
      [14, 5, '4 ft', 4, 16],
      [13, 2, '8 ft', 8, 16],
    ] as const
  ).map(
    ([bays, rails, bayCentres, centres, stock]): Check => ({
      calculation: 'rails-across-faces',
      what: `boards for ${bays} bays and ${rails} rows whose joints are shifted`,
      kind: 'second derivation',
      source:
        'second derivation: every row laid board by board, each next one beginning with a board one bay shorter until it would have none',
      given: { bayCentres, bays: String(bays), rails: String(rails), stockLength: `${stock} ft` },
      gives: 'faceBoards',
      unit: 'board',
      expected: () => {
        let boards = 0
        const reach = Math.floor(stock / centres)
        for (let row = 0; row < rails; row++) {
          let [post, next] = [0, reach - (row % reach)]
          while (post < bays) {
            post = Math.min(bays, post + next)
            next = reach
            boards++
          }
        }
        return boards
      },
      tolerance: 0,
    }),
  ),
  {
    calculation: 'rails-across-faces',
    what: 'the first board, from the outer side of the end post to the middle of the post two bays on',
    kind: 'library',
    source: mathjsWorks,
    given: { bayCentres: '7 1/2 ft', bays: '13', rails: '2', stockLength: '16 ft', postWidth: '3 1/2 in' },
    gives: 'endBoard',
    unit: 'in',
    expected: () => byMathjs('3.5 inch / 2 + 2 * 7.5 ft', 'inch'),
    tolerance: 1e-9,
  },
  {
    calculation: 'rail-heights',
    what: 'the top of the upper rail above the ground',
    kind: 'library',
    source: mathjsWorks,
    given: { picketLength: '42 in', footGap: '2 in', overTop: '5 in', underBottom: '7 in', railDepth: '3 1/2 in' },
    gives: 'topRailAt',
    unit: 'in',
    expected: () => byMathjs('2 inch + 3.5 ft - 5 inch', 'inch'),
    tolerance: 1e-9,
  },
  ...(
    [
      [46.5, 2.25, 5.75, 7.125, 2, 3.5, 'in'],
      [68, 1.5, 6.25, 8, 3, 3.5, 'in'],
      [71.625, 2, 4.5, 6, 4, 5.5, 'in'],
      [1180, 55, 140, 165, 2, 88, 'mm'],
      [1795, 50, 155, 170, 3, 90, 'mm'],
    ] as const
  ).flatMap(([picket, foot, over, under, count, deep, unit]): Check[] => {
    const edges = () => stackedRails(picket, foot, over, under, count, deep)
    return (
      [
        ['topRailAt', () => edges().at(-1) as number],
        ['bottomRailAt', () => edges()[0] as number],
        ['railsApart', () => (edges()[1] as number) - (edges()[0] as number)],
      ] as const
    ).map(
      ([gives, expected]): Check => ({
        calculation: 'rail-heights',
        what: `${gives} of ${count} rails of ${deep} ${unit} on pickets of ${picket} ${unit}`,
        kind: 'second derivation',
        source:
          'second derivation: the rails stacked from the ground, the spaces between them opened by halving until the stack is as high as the picket',
        given: {
          picketLength: `${picket} ${unit}`,
          footGap: `${foot} ${unit}`,
          overTop: `${over} ${unit}`,
          underBottom: `${under} ${unit}`,
          rails: String(count),
          railDepth: `${deep} ${unit}`,
        },
        system: unit === 'mm' ? 'metric' : 'imperial',
        gives,
        unit,
        expected,
        tolerance: 1e-9,
      }),
    )
  }),
  {
    calculation: 'rail-brackets',
    what: 'brackets counted bay by bay, end by end',
    kind: 'second derivation',
    source: 'second derivation: counted one by one',
    given: { bays: '7', rails: '3' },
    gives: 'brackets',
    unit: 'bracket',
    expected: () => {
      let count = 0
      for (let bay = 0; bay < 7; bay++)
        for (let rail = 0; rail < 3; rail++) for (const _end of ['left', 'right']) count++
      return count
    },
    tolerance: 0,
  },
  ...(
    [
      ['screws', 240],
      ['screwsToBuy', 264],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'picket-screws',
      what: `${gives} for 60 pickets on two rails`,
      kind: 'reference',
      source: 'Reference book, fasteners (common practice)',
      reference: 'screw-count',
      given: { picketsHung: '60', rails: '2', screwsEachJoint: '2', screwSpare: '10 %' },
      gives,
      unit: 'screw',
      expected,
      tolerance: 0,
    }),
  ),
  {
    calculation: 'picket-screws',
    what: 'boxes opened one after the other',
    kind: 'second derivation',
    source: 'second derivation: screws taken out crossing by crossing, a new box whenever one is empty',
    given: { picketsHung: '215', rails: '3', screwsEachJoint: '2', screwSpare: '0 %', boxCount: '144' },
    gives: 'screwBoxes',
    unit: 'box',
    expected: () => {
      let [left, boxes] = [0, 0]
      for (let i = 0; i < 215 * 3 * 2; i++) {
        if (left === 0) {
          boxes++
          left = 144
        }
        left--
      }
      return boxes
    },
    tolerance: 0,
  },
  ...(
    [
      ['leastScrew', 1.734],
      ['fullScrew', 2.39],
      ['mostScrew', 2.25],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'screw-length',
      what: `${gives} for a 3/4 in picket on a 1 1/2 in rail`,
      kind: 'reference',
      source: 'Reference book, fasteners (from memory, NDS)',
      reference: 'screw-length',
      given: { picketThickness: '3/4 in', railThickness: '1 1/2 in', screwDiameter: '0.164 in' },
      gives,
      unit: 'in',
      expected,
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'screw-length',
    what: 'the longest that stays in, grown by thirty-seconds',
    kind: 'second derivation',
    source: 'second derivation: the screw made longer by thirty-seconds until its point would stand out of the rail',
    given: { picketThickness: '3/4 in', railThickness: '1 1/2 in' },
    gives: 'mostScrew',
    unit: 'in',
    expected: () => {
      let length = 1
      while (length + 1 / 32 <= 0.75 + 1.5) length += 1 / 32
      return length
    },
    tolerance: 0,
  },
  ...(
    [
      [10, 90, 0],
      [8, 60, 0],
      [12, 75, 6],
      [5, 45, 10],
      [5, 90, -20],
      [6, 70, -12],
    ] as const
  ).flatMap(([lean, plan, pitch]): Check[] => {
    const shared = {
      calculation: 'leaning-wall-cut',
      kind: 'second derivation',
      source:
        'second derivation: the rail turned and pushed into the wall, its long edges cut by halving, the angles measured on the cut',
      given: {
        wallLean: `${lean} deg`,
        planAngle: `${plan} deg`,
        railPitch: `${Math.abs(pitch)} deg`,
        railGoes: pitch < 0 ? 'down' : 'up',
      },
      unit: 'deg',
      tolerance: 1e-9,
    } as const
    const what = `a wall that leans ${lean}°, met at ${plan}°, by a rail that ${pitch < 0 ? 'falls' : 'rises'} ${Math.abs(pitch)}°`
    return [
      {
        ...shared,
        what: `miter: ${what}`,
        gives: 'wallMiter',
        expected: () => cutBySlicing(lean, plan, pitch).miter,
      },
      {
        ...shared,
        what: `bevel: ${what}`,
        gives: 'wallBevel',
        expected: () => cutBySlicing(lean, plan, pitch).bevel,
      },
    ]
  }),
]
