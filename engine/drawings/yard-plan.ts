// This file is about the whole fence from above, to scale: runs as they turn at their corners, posts by their kind, gates, walls, a scale bar.
// Where north lies nobody said, so nothing points to it. The first run goes to the right, whatever way it goes in the yard.
import { numberIn, type Quantity, quantity, type System } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { dot, ink, line, part, plate, shape, sheet, spread, words } from './svg.ts'

export type PostSeen = 'corner' | 'gate' | 'end' | 'line'

export interface RunFromAbove {
  readonly name: string
  readonly length: string
  readonly posts: readonly { readonly number: number; readonly kind: PostSeen; readonly station: Quantity }[]
  /** Gates by the post that they begin at, counted from 0 along the run. */
  readonly gates: readonly { readonly after: number; readonly name: string }[]
  /** The angle inside the corner at its far end. */
  readonly corner: Quantity
  readonly meetsNext: boolean
  readonly walls: { readonly near: boolean; readonly far: boolean }
}

export interface YardPlan {
  readonly runs: readonly RunFromAbove[]
  readonly isClosed: boolean
  readonly system: System
  /** For whoever builds, posts are numbered; for an office the outside is dimensioned. */
  readonly isFor: 'building' | 'permit'
}

/** Wider than other drawings: it is made for paper, where it stands across the page. */
const width = 500
const [side, top] = [88, 56]
const mostHigh = 520
const small = 11
/** Numbers nearer to each other than this would run together. */
const leastApart = 24

type Point = readonly [x: number, y: number]
interface RunPlaced {
  readonly run: RunFromAbove
  readonly posts: readonly Point[]
  readonly along: Point
  /** To the left of the way one walks it: outside, where all corners turn right. */
  readonly out: Point
}

export function yardPlanDrawing(plan: YardPlan): string {
  const laid = laidOut(plan.runs)
  const all = laid.flatMap((it) => it.posts)
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)]
  const [left, high] = [Math.min(...xs), Math.min(...ys)]
  const [wide, deep] = [Math.max(...xs) - left, Math.max(...ys) - high]
  const scale = Math.min((width - 2 * side) / Math.max(wide, 1e-9), mostHigh / Math.max(deep, 1e-9))
  const from = (width - wide * scale) / 2
  const placed = laid.map((it) => ({
    ...it,
    posts: it.posts.map(([x, y]): Point => [from + (x - left) * scale, top + (y - high) * scale]),
  }))
  const bottom = top + deep * scale
  const labels = new Labels(placed)
  const parts = [
    ...placed.map(fencing),
    ...placed.flatMap(walls),
    ...placed.flatMap(({ run, posts, along }) =>
      run.posts.map(({ kind, number, station }, i) =>
        part(`${kind} post ${number}: ${show(station)} along ${run.name}`, postSign(kind, posts[i] as Point, along)),
      ),
    ),
    ...placed.flatMap((it) => gateNames(it, labels)),
    ...(plan.isFor === 'permit' ? placed.map(outsideOf) : []),
    ...(plan.isFor === 'building' ? postNumbers(placed, labels, false) : []),
    ...placed.map((it) => runName(it, labels, plan.isFor === 'permit')),
    ...(plan.isFor === 'building' ? postNumbers(placed, labels, true) : []),
    scaleBar(scale, bottom + 52, plan.system),
    ...legend(plan, bottom + 88),
  ]
  return sheet(
    {
      width,
      height: bottom + 102,
      title: 'The fence from above',
      description:
        `The fence from above, to scale: ${plan.runs.map(inWords).join('; ')}. ${plan.isClosed ? 'The last run ends at the first post.' : ''}`.trim(),
    },
    parts,
  )
}

/** Whether the last run comes back to the first post, as a fence that goes all round must. */
export function closes(runs: readonly RunFromAbove[]): boolean {
  const laid = laidOut(runs)
  const [first, last] = [laid[0]?.posts[0], laid.at(-1)?.posts.at(-1)]
  const longest = Math.max(...laid.flatMap((it) => it.posts.flat().map(Math.abs)), 1)
  return !first || !last || Math.hypot(first[0] - last[0], first[1] - last[1]) < longest / 500
}

const inWords = ({ name, length, posts, gates }: RunFromAbove): string =>
  `${name}, ${length}, posts ${posts[0]?.number} to ${posts.at(-1)?.number}${gates.length > 0 ? `, with ${gates.map((it) => it.name).join(' and ')}` : ''}`

/** Each run from where the one before ends, in inches; those that do not meet stand one under the other. */
function laidOut(runs: readonly RunFromAbove[]): RunPlaced[] {
  let chains: RunPlaced[][] = []
  let [at, turned]: [Point, number] = [[0, 0], 0]
  for (const [i, run] of runs.entries()) {
    if (i === 0 || !runs[i - 1]?.meetsNext) {
      chains = [...chains, []]
      at = [0, 0]
      turned = 0
    }
    const along: Point = [Math.cos(turned), Math.sin(turned)]
    const first = numberIn((run.posts[0] as RunFromAbove['posts'][number]).station, 'in')
    const posts = run.posts.map(({ station }): Point => {
      const far = numberIn(station, 'in') - first
      return [at[0] + far * along[0], at[1] + far * along[1]]
    })
    chains.at(-1)?.push({ run, posts, along, out: [along[1], -along[0]] })
    at = posts.at(-1) as Point
    turned += Math.PI - (numberIn(run.corner, 'deg') * Math.PI) / 180
  }
  const size = Math.max(
    ...chains.map((chain) => {
      const xs = chain.flatMap((it) => it.posts.map(([x]) => x))
      return Math.max(...xs) - Math.min(...xs)
    }),
    1,
  )
  let under = 0
  return chains.flatMap((chain) => {
    const all = chain.flatMap((it) => it.posts)
    const [x, y] = [Math.min(...all.map((it) => it[0])), Math.min(...all.map((it) => it[1]))]
    const down = under
    under += Math.max(...all.map((it) => it[1])) - y + size * 0.3
    return chain.map((it) => ({ ...it, posts: it.posts.map(([px, py]): Point => [px - x, py - y + down]) }))
  })
}

/** Bays as a thick line, gates as two thin ones. */
function fencing({ run, posts, along, out }: RunPlaced): string {
  return posts
    .slice(0, -1)
    .map(([x, y], i) => {
      const [toX, toY] = posts[i + 1] as Point
      if (!run.gates.some((it) => it.after === i)) return line(x, y, toX, toY, 3)
      const [fx, fy] = [x + 5 * along[0], y + 5 * along[1]]
      const [tx, ty] = [toX - 5 * along[0], toY - 5 * along[1]]
      return [-2, 2]
        .map((off) => line(fx + off * out[0], fy + off * out[1], tx + off * out[0], ty + off * out[1], 0.9))
        .join('')
    })
    .join('')
}

/** A wall that a run begins or ends at: a grey block across its end. */
function walls({ run, posts, along, out }: RunPlaced): string[] {
  const block = ([x, y]: Point, way: number): string => {
    const [near, far, half] = [7, 15, 20]
    const corner = (forth: number, across: number): Point => [
      x + way * forth * along[0] + across * out[0],
      y + way * forth * along[1] + across * out[1],
    ]
    return shape([corner(near, half), corner(far, half), corner(far, -half), corner(near, -half)], '#bbb')
  }
  return [
    ...(run.walls.near ? [block(posts[0] as Point, -1)] : []),
    ...(run.walls.far ? [block(posts.at(-1) as Point, 1)] : []),
  ]
}

function postSign(kind: PostSeen, [x, y]: Point, along: Point): string {
  const square = (half: number, fill: string): string => {
    const [ax, ay] = [along[0] * half, along[1] * half]
    return shape(
      [
        [x - ax - ay, y - ay + ax],
        [x + ax - ay, y + ay + ax],
        [x + ax + ay, y + ay - ax],
        [x - ax + ay, y - ay - ax],
      ],
      fill,
      1.3,
    )
  }
  switch (kind) {
    case 'corner':
      return square(5, ink)
    case 'end':
      return square(5, '#fff')
    case 'gate':
      return shape(
        [
          [x, y - 7],
          [x + 6.5, y + 5],
          [x - 6.5, y + 5],
        ],
        '#fff',
        1.6,
      )
    case 'line':
      return dot(x, y, 2.8, '#fff')
    default:
      return kind satisfies never
  }
}

type Box = readonly [left: number, top: number, right: number, bottom: number]

/** Where words stand, so that none runs into another, into a post or over a run. */
class Labels {
  private readonly taken: Box[] = []
  constructor(runs: readonly RunPlaced[]) {
    for (const { posts } of runs) {
      for (const [x, y] of posts) this.taken.push([x - 6, y - 6, x + 6, y + 6])
      const [[x, y], [toX, toY]] = [posts[0] as Point, posts.at(-1) as Point]
      const steps = Math.max(1, Math.ceil(Math.hypot(toX - x, toY - y) / 6))
      for (let i = 0; i <= steps; i++) {
        const [px, py] = [x + ((toX - x) * i) / steps, y + ((toY - y) * i) / steps]
        this.taken.push([px - 3, py - 3, px + 3, py + 3])
      }
    }
  }

  /** Writes lines at the first of those middles where they are free; nothing where there is none, unless they must stand. */
  write(lines: readonly string[], middles: readonly Point[], size: number, must = false): string {
    const half = Math.max(...lines.map((it) => spread(it, size))) / 2 + 1
    const high = (lines.length * (size + 4)) / 2
    const boxAt = ([x, y]: Point): Box => [x - half, y - high + 1, x + half, y + high - 1]
    const onPaper = middles.map(([x, y]): Point => [Math.max(half + 2, Math.min(width - half - 2, x)), y])
    const free = onPaper.find((it) => this.isFree(boxAt(it))) ?? (must ? onPaper[0] : undefined)
    if (!free) return ''
    this.taken.push(boxAt(free))
    return lines
      .map((it, i) => plate(free[0], free[1] - high + (i + 0.5) * (size + 4) + size * 0.36, it, size))
      .join('')
  }

  private isFree([left, high, right, low]: Box): boolean {
    return !this.taken.some((it) => it[0] < right && it[2] > left && it[1] < low && it[3] > high)
  }
}

/** So far from a place to the side of a run that lines of that size clear it. */
const beside = ([x, y]: Point, [ox, oy]: Point, far: number, lines: readonly string[], size: number): Point => {
  const wide = Math.max(...lines.map((it) => spread(it, size)))
  const reach = far + (Math.abs(ox) * wide) / 2 + (Math.abs(oy) * lines.length * (size + 4)) / 2
  return [x + ox * reach, y + oy * reach]
}

/** Corners, gates and ends have their numbers before all else; of the line posts every few. */
function postNumbers(runs: readonly RunPlaced[], labels: Labels, ofTheLine: boolean): string[] {
  const all = runs.flatMap(({ run, posts, out }) =>
    run.posts.map((post, i) => {
      const near = posts[i + 1] ?? posts[i - 1]
      const [x, y] = posts[i] as Point
      const apart = near ? Math.hypot(near[0] - x, near[1] - y) : leastApart
      return { post, at: [x, y] as Point, out, apart }
    }),
  )
  const line = all.filter((it) => it.post.kind === 'line')
  const apart = Math.min(...line.map((it) => it.apart), Number.POSITIVE_INFINITY)
  const every = [1, 2, 5, 10, 20, 50].find((it) => it * apart >= leastApart) ?? 100
  const written = new Set<number>()
  const write = ({ post, at, out }: (typeof all)[number]): string => {
    if (written.has(post.number)) return ''
    const text = [String(post.number)]
    const inward: Point = [-out[0], -out[1]]
    const both: Point = [out[0] + out[1], out[1] - out[0]]
    const drawn = labels.write(
      text,
      [5, 10, 16].flatMap((far) => [inward, out, both].map((way) => beside(at, way, far, text, 12))),
      12,
      !ofTheLine && post.kind !== 'gate',
    )
    if (drawn) written.add(post.number)
    return drawn
  }
  const wanted = all.filter(({ post }) =>
    ofTheLine ? post.kind === 'line' && post.number % every === 0 : post.kind !== 'line',
  )
  return wanted.map(write)
}

function gateNames({ run, posts, out }: RunPlaced, labels: Labels): string[] {
  return run.gates.map(({ after, name }) => {
    const [[x, y], [toX, toY]] = [posts[after] as Point, posts[after + 1] as Point]
    const middle: Point = [(x + toX) / 2, (y + toY) / 2]
    const inward: Point = [-out[0], -out[1]]
    return labels.write(
      [name],
      [18, 32, 46].flatMap((far) => [inward, out].map((way) => beside(middle, way, far, [name], small))),
      small,
      true,
    )
  })
}

/** Outside its run, in the middle of it or as near as there is room. */
function runName({ run, posts, out }: RunPlaced, labels: Labels, isDimensioned: boolean): string {
  const [[x, y], [toX, toY]] = [posts[0] as Point, posts.at(-1) as Point]
  const isUpright = Math.abs(out[0]) > Math.abs(out[1])
  const lines = isUpright ? [run.name, run.length] : [`${run.name}, ${run.length}`]
  const fars = isDimensioned ? [18, 30, 42] : [10, 22, 34, 46]
  return labels.write(
    lines,
    fars.flatMap((far) =>
      [0.5, 0.4, 0.6, 0.3, 0.7].map((share) =>
        beside([x + share * (toX - x), y + share * (toY - y)], out, far, lines, 12),
      ),
    ),
    12,
    true,
  )
}

/** A dimension along the outside of a run, from its first post's centre to its last. */
function outsideOf({ posts, out }: RunPlaced): string {
  const ends = [posts[0], posts.at(-1)].map((it): Point => {
    const [x, y] = it as Point
    return [x + 15 * out[0], y + 15 * out[1]]
  }) as [Point, Point]
  const [[x1, y1], [x2, y2]] = ends
  return [line(x1, y1, x2, y2), ...ends.map(([x, y]) => line(x - 3, y + 3, x + 3, y - 3, 1.5))].join('')
}

const bars: Readonly<Record<System, readonly Quantity[]>> = {
  imperial: [1, 2, 5, 10, 20, 50, 100, 200, 500].map((it) => quantity(it, 'ft')),
  metric: ['1/2', 1, 2, 5, 10, 20, 50, 100, 200].map((it) => quantity(it, 'm')),
}

function scaleBar(scale: number, y: number, system: System): string {
  const fitting = bars[system].filter((it) => numberIn(it, 'in') * scale <= 130)
  const bar = (fitting.at(-1) ?? bars[system][0]) as Quantity
  const long = numberIn(bar, 'in') * scale
  const x = side
  return [
    `<rect x="${x}" y="${y - 5}" width="${(long / 2).toFixed(2)}" height="5" fill="${ink}"/>`,
    line(x, y - 5, x + long, y - 5, 0.9),
    line(x, y, x + long, y, 0.9),
    ...[0, 0.5, 1].map((it) => line(x + it * long, y - 8, x + it * long, y + 3, 0.9)),
    words(x + long + 8, y + 2, `${show(bar)}, to scale`, 'start', small),
  ].join('')
}

const signs: readonly (readonly [PostSeen, string])[] = [
  ['corner', 'corner post'],
  ['gate', 'gate post'],
  ['end', 'end post'],
  ['line', 'line post'],
]

function legend({ runs }: YardPlan, y: number): string[] {
  const kinds = signs.filter(([kind]) => runs.some((it) => it.posts.some((post) => post.kind === kind)))
  const hasWall = runs.some((it) => it.walls.near || it.walls.far)
  let x = 24
  const parts: string[] = []
  const put = (sign: string, text: string): void => {
    parts.push(sign, words(x + 12, y + 4, text, 'start', small))
    x += 26 + spread(text, small)
  }
  for (const [kind, text] of kinds) put(postSign(kind, [x, y], [1, 0]), text)
  if (runs.some((it) => it.gates.length > 0))
    put(line(x - 8, y - 2, x + 8, y - 2, 0.9) + line(x - 8, y + 2, x + 8, y + 2, 0.9), 'gate')
  if (hasWall)
    put(
      shape(
        [
          [x - 4, y - 7],
          [x + 4, y - 7],
          [x + 4, y + 7],
          [x - 4, y + 7],
        ],
        '#bbb',
      ),
      'wall',
    )
  return parts
}
