// A yard from its sides: how well they close, how long it is round, and its area.
//
//   ┌─────── 3 ──────┐          walk round: each side in turn, turning at each corner by its inside angle;
//   4                2          the end should meet the start, and what is missing is the misclosure
//   └─────── 1 ──────┘
//   Without angles a triangle is settled by its sides, and four sides by one diagonal more. Four sides alone settle no area.
import { calculation } from '../../calculation.ts'
import { yardDrawing } from '../../drawings/yard.ts'
import {
  about,
  type Amount,
  absolute,
  add,
  compare,
  exact,
  isExact,
  negative,
  over,
  squareRoot,
  subtract,
  times,
  toNumber,
} from '../../quantities/amount.ts'
import { equal, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { closeRatio, corners, misclosure, sides, yardArea, yardDiagonal, yardPerimeter } from '../../words/survey.ts'

const mostSides = 40
type Point = readonly [x: Amount, y: Amount]

export const yardClosure = calculation({
  name: 'yard-closure',
  title: 'A yard from its sides',
  answers:
    'The area of a yard and its length all round, from its sides with their inside angles or a diagonal, and how well the measures close.',
  needs: { sides, corners, yardDiagonal },
  may: ['corners', 'yardDiagonal'],
  gives: { yardArea, yardPerimeter, misclosure, closeRatio },
  headlines: ['yardArea', 'yardPerimeter'],
  together: {
    yardArea: ['yardArea', 'yardPerimeter', 'misclosure', 'closeRatio'],
    misclosure: ['misclosure', 'closeRatio', 'yardPerimeter', 'yardArea'],
  },
  locals: { a: 'length', b: 'length', c: 'length', d: 'length', cut: 'length' },
  lines: {
    yardPerimeter: ['sum(sides)', 'all sides together'],
    half: ['(a + b + cut) / 2', 'half way round the first triangle'],
    firstTriangle: [
      'sqrt(half * (half - a) * (half - b) * (half - cut))',
      'Heron’s rule for a triangle from its sides',
    ],
    otherHalf: ['(c + d + cut) / 2', 'half way round the second triangle'],
    secondTriangle: ['sqrt(otherHalf * (otherHalf - c) * (otherHalf - d) * (otherHalf - cut))', 'and the same again'],
    fourSides: ['firstTriangle + secondTriangle', 'the diagonal cuts the yard in two'],
  },
  work(_given, { line, has, rows, put, tell, need, refuse, doubt, remark, table, cite, system }) {
    const lengths = rows('sides')
    if (lengths.length < 3)
      refuse(
        'sides',
        `A yard has three sides or more, and I have ${show(quantity(lengths.length, 'side'))}. Go round it one way and give them all, in order.`,
      )
    if (lengths.length > mostSides)
      refuse(
        'sides',
        `That is ${show(quantity(lengths.length, 'side'))}. I draw yards of at most ${show(quantity(mostSides, 'side'))}.`,
      )
    const total = line('yardPerimeter')
    if (has('corners')) {
      const angles = rows('corners')
      if (angles.length !== lengths.length && angles.length !== lengths.length - 1)
        refuse(
          'corners',
          `${show(quantity(lengths.length, 'side'))} have as many corners, and I have ${show(quantity(angles.length, 'angle'))}. Give them in the same order, the first between the first and the second side.`,
        )
      const due = quantity(180 * (lengths.length - 2), 'deg')
      const turned = { ...due, amount: angles.reduce<Amount>((sum, it) => add(sum, it.amount), exact(0)) }
      if (angles.length === lengths.length && !equal(turned, due))
        doubt(
          'contradictory',
          'corners',
          `The inside angles of ${show(quantity(lengths.length, 'side'))} add up to ${cite(due, 'all inside angles')}, and yours add up to ${cite(turned, 'your angles')}. I drew by the sides and all angles but the last. Measure the angles again.`,
        )
      const points = walk(lengths, angles)
      if (crosses(points.slice(0, -1)))
        refuse(
          'corners',
          'With those sides and angles the yard crosses itself. Check the order, and that each angle is measured inside the yard.',
        )
      const [x, y] = points.at(-1) as Point
      const off: Quantity = quantityOf(
        squareRoot(add(times(x, x), times(y, y))),
        'length',
        system === 'metric' ? 'mm' : 'in',
      )
      tell('misclosure', off)
      tell('yardArea', areaOf(points.slice(0, -1), system))
      const lost = compare(off.amount, exact(0)) === 1 && toNumber(off.amount) > 1e-9
      if (lost) {
        const ratio = over(total.amount, off.amount)
        tell('closeRatio', { kind: 'number', amount: ratio, unit: 'ratio' })
        remark(
          `Drawn from the first corner, the last side ends ${show(off)} from where the first began: one in ${cite({ kind: 'number', amount: ratio, unit: 'ratio' }, 'one in')} of the ${show(total)} measured. Careful tape work does better than one in a few hundred; if yours does not, measure the longest side and the oddest corner again.`,
        )
      } else remark('The sides close: the last one ends where the first began.')
      table(cornersTable(points.slice(0, -1), system))
      return
    }
    if (lengths.length === 3 || (lengths.length === 4 && has('yardDiagonal'))) {
      const [a, b, c, d] = lengths as [Quantity, Quantity, Quantity, Quantity?]
      const cut = lengths.length === 3 ? c : (rows('yardDiagonal')[0] as Quantity)
      isTriangle(a, b, cut, d ? 'yardDiagonal' : 'sides', refuse)
      put('a', a)
      put('b', b)
      put('cut', cut)
      line('half')
      const first = line('firstTriangle')
      if (!d) {
        tell('yardArea', { ...first, kind: 'area', unit: system === 'metric' ? 'm2' : 'ft2' })
        return
      }
      isTriangle(c, d, cut, 'yardDiagonal', refuse)
      put('c', c)
      put('d', d)
      line('otherHalf')
      line('secondTriangle')
      tell('yardArea', { ...line('fourSides'), kind: 'area', unit: system === 'metric' ? 'm2' : 'ft2' })
      remark(
        'I took the diagonal as running inside the yard, with a triangle on either side of it. If a corner points inward so that the diagonal runs outside, the area is less: give me the inside angles instead.',
      )
      return
    }
    remark('Four sides or more do not settle an area by themselves: the corners can still move.')
    need(lengths.length === 4 ? 'yardDiagonal' : 'corners')
  },
  sources: [
    {
      fact: 'area = |Σ(x·y′ − x′·y)| / 2 over the corners in order',
      from: 'Plane geometry (the surveyor’s formula); needs no table.',
    },
    { fact: 'the inside angles of n sides add up to (n − 2) × 180°', from: 'Plane geometry (Euclid, Elements, I.32).' },
    { fact: 'a triangle’s area from its sides', from: 'Heron’s formula; plane geometry.' },
    { fact: 'tape work round a yard closes to one in a few hundred or better', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: yardDrawing,
  examples: [
    // 60 × 40 with square corners = 2400; round 200; it closes
    {
      ask: 'What is the area of my yard with sides of 60 ft, 40 ft, 60 ft and 40 ft and inside angles of 90, 90, 90 and 90 degrees?',
      given: { sides: ['60 ft', '40 ft', '60 ft', '40 ft'], corners: ['90 deg', '90 deg', '90 deg', '90 deg'] },
      expect: { yardArea: '2,400 ft²', yardPerimeter: '200 ft', misclosure: '0 in' },
    },
    // 3-4-5 triangles: 30 × 40 / 2 twice = 1200
    {
      ask: 'A yard with sides of 30 m, 40 m, 30 m and 40 m and a diagonal of 50 m: what area?',
      given: { sides: ['30 m', '40 m', '30 m', '40 m'], yardDiagonal: '50 m' },
      expect: { yardArea: '1,200 m²', yardPerimeter: '140 m' },
    },
  ],
})

const quantityOf = (amount: Amount, kind: 'length' | 'area', unit: string): Quantity => ({ kind, amount, unit })

/** The corners, walking round from the start with the first side along x; the last one should be the start again. */
function walk(lengths: readonly Quantity[], angles: readonly Quantity[]): Point[] {
  const points: Point[] = [[exact(0), exact(0)]]
  let heading: Amount = exact(0)
  lengths.forEach((side, i) => {
    const [x, y] = points[i] as Point
    const [cos, sin] = direction(heading)
    points.push([add(x, times(side.amount, cos)), add(y, times(side.amount, sin))])
    const inside = angles[i]
    if (inside) heading = add(heading, subtract(exact(180), inside.amount))
  })
  return points
}

/** Cosine and sine of a heading in degrees; quarter turns are exact. */
function direction(heading: Amount): Point {
  if (isExact(heading) && heading.mod(90).equals(0)) {
    const quarter = ((Number(heading.div(90).valueOf()) % 4) + 4) % 4
    return [exact([1, 0, -1, 0][quarter] as number), exact([0, 1, 0, -1][quarter] as number)]
  }
  const radians = (toNumber(heading) * Math.PI) / 180
  return [about(Math.cos(radians), 1e-15), about(Math.sin(radians), 1e-15)]
}

function areaOf(points: readonly Point[], system: 'imperial' | 'metric'): Quantity {
  const twice = points.reduce<Amount>((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length] as Point
    return add(sum, add(times(x, v), negative(times(u, y))))
  }, exact(0))
  return quantityOf(absolute(over(twice, exact(2))), 'area', system === 'metric' ? 'm2' : 'ft2')
}

/** Whether two sides that do not meet cut each other. */
function crosses(points: readonly Point[]): boolean {
  const at = points.map(([x, y]) => [toNumber(x), toNumber(y)] as const)
  const turn = (a: number, b: number, c: number): number => {
    const [p, q, r] = [a, b, c].map((i) => at[i % at.length] as readonly [number, number]) as [
      readonly [number, number],
      readonly [number, number],
      readonly [number, number],
    ]
    return Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]))
  }
  const n = at.length
  for (let i = 0; i < n; i++)
    for (let j = i + 2; j < n; j++) {
      // The last side and the first share a corner, which is no turn from either.
      if (turn(i, i + 1, j) * turn(i, i + 1, j + 1) < 0 && turn(j, j + 1, i) * turn(j, j + 1, i + 1) < 0) return true
    }
  return false
}

function isTriangle(
  a: Quantity,
  b: Quantity,
  c: Quantity,
  word: 'sides' | 'yardDiagonal',
  refuse: (word: string, message: string) => never,
): void {
  const longest = [a, b, c].reduce((most, it) => (compare(most.amount, it.amount) === -1 ? it : most))
  const others = [a, b, c].filter((it) => it !== longest).reduce<Amount>((sum, it) => add(sum, it.amount), exact(0))
  if (compare(longest.amount, others) === -1) return
  refuse(
    word,
    word === 'sides'
      ? `Sides of ${show(a)}, ${show(b)} and ${show(c)} make no triangle: the longest must be less than the other two together. Measure them again.`
      : `A diagonal of ${show(c)} does not close a triangle with sides of ${show(a)} and ${show(b)}: it must be less than both together and more than their difference. Measure the three again.`,
  )
}

function cornersTable(points: readonly Point[], system: 'imperial' | 'metric') {
  const unit = system === 'metric' ? 'm' : 'ft'
  const text = (amount: Amount): string => show(quantityOf(amount, 'length', unit))
  return {
    title: 'Corners, from the first one, with the first side straight ahead',
    columns: [
      { label: 'corner', unit: '' },
      { label: 'along', unit },
      { label: 'across', unit },
    ],
    rows: points.map(([x, y], i) => [i + 1, text(x), text(y)]),
  }
}
