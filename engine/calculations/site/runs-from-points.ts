// The runs of a fence from its corner points: how long each is, and the angle between it and the next.
//
//   3 ●─────────● 2      each corner by two measures from one stake:
//     │         │        so far across, and so far along
//   0 ●─────────● 1
import { calculation } from '../../calculation.ts'
import { about, add, type Amount, squareRoot, subtract, times, toNumber } from '../../quantities/amount.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { runEnds } from '../../words/bays.ts'
import { cornersInside, pointsAcross, pointsAlong } from '../../words/corner-points.ts'
import { fenceSides } from '../../words/fence-sides.ts'
import { yardPerimeter } from '../../words/survey.ts'

const mostPoints = 41

export const runsFromPoints = calculation({
  name: 'runs-from-points',
  title: 'Runs from corner points',
  answers: 'How long each run is between two corner points, and how long they are together.',
  needs: { pointsAcross, pointsAlong, runEnds },
  usually: {
    runEnds: {
      value: 'centres',
      because: 'nobody said that the last run comes back to the first point',
      from: 'decided here',
    },
  },
  gives: { yardPerimeter, fenceSides, cornersInside },
  headlines: ['yardPerimeter'],
  ofTheFence: true,
  locals: { across: 'length', along: 'length' },
  lines: {
    fenceSides: ['sqrt(across ^ 2 + along ^ 2)', 'from corner to corner, by the two measures they differ by'],
    yardPerimeter: ['sum(fenceSides)', 'all runs together'],
  },
  work({ runEnds }, { line, rows, put, tell, refuse, table, remark }) {
    const [xs, ys] = [rows('pointsAcross'), rows('pointsAlong')]
    if (xs.length !== ys.length)
      refuse('pointsAlong', `I have ${xs.length} measures across and ${ys.length} along. Give two for each corner.`)
    if (xs.length < 2) refuse('pointsAcross', 'One point makes no run. Give all the corners, in the order you walk.')
    if (xs.length > mostPoints)
      refuse(
        'pointsAcross',
        `That is ${show(quantity(xs.length, 'point'))}. Give at most ${show(quantity(mostPoints, 'point'))} at a time.`,
      )
    const isClosed = runEnds === 'loop'
    const ends = isClosed ? [...xs.keys()] : [...xs.keys()].slice(0, -1)
    const next = (i: number): number => (i + 1) % xs.length
    const apart = (of: readonly Quantity[]): Quantity[] =>
      ends.map((i) => ({
        ...(of[i] as Quantity),
        amount: subtract((of[next(i)] as Quantity).amount, (of[i] as Quantity).amount),
      }))
    const [dx, dy] = [put('across', apart(xs)), put('along', apart(ys))]
    for (const [i, it] of dx.entries())
      if (toNumber(it.amount) === 0 && toNumber((dy[i] as Quantity).amount) === 0)
        refuse('pointsAcross', `Corner ${i + 1} and corner ${next(i) + 1} are the same point. Check them.`)
    line('fenceSides')
    line('yardPerimeter')
    const corners = ends.slice(0, isClosed ? undefined : -1).map((i) => angleAt(dx, dy, i, next(i) % ends.length))
    tell('cornersInside', corners.length > 0 ? corners : [quantity(180, 'deg')])
    table({
      title: 'Run by run',
      columns: ['run', 'from', 'to', 'length', 'angle to the next'].map((label) => ({ label, unit: '' })),
      rows: rows('fenceSides').map((side, i) => [
        i + 1,
        i + 1,
        next(i) + 1,
        show(side),
        corners[i] ? show(corners[i] as Quantity) : '',
      ]),
    })
    remark('Points are as good as the measures behind them: check one diagonal on the ground before you dig.')
  },
  sources: [{ fact: 'a run between two points by Pythagoras', from: 'Derived here; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 60; 84; 60; 84 round; 288
    {
      ask: 'Corner points (0,0), (60,0), (60,84) and (0,84) ft, a closed yard: how long are the runs?',
      given: {
        pointsAcross: ['0 ft', '60 ft', '60 ft', '0 ft'],
        pointsAlong: ['0 ft', '0 ft', '84 ft', '84 ft'],
        runEnds: 'loop',
      },
      expect: { yardPerimeter: '288 ft' },
    },
    // 3-4-5: 15 m; then 9 m
    {
      ask: 'Corners at (0,0), (9,12) and (18,12) m: how long are the runs?',
      given: { pointsAcross: ['0 m', '9 m', '18 m'], pointsAlong: ['0 m', '12 m', '12 m'] },
      expect: { yardPerimeter: '24 m' },
    },
  ],
})

/** The angle between a run and the next, by the directions they lie in; less than half a turn. */
function angleAt(dx: readonly Quantity[], dy: readonly Quantity[], a: number, b: number): Quantity {
  const of = (list: readonly Quantity[], i: number): Amount => (list[i] as Quantity).amount
  const dot = add(times(of(dx, a), of(dx, b)), times(of(dy, a), of(dy, b)))
  const size = (i: number): Amount => squareRoot(add(times(of(dx, i), of(dx, i)), times(of(dy, i), of(dy, i))))
  const cosine = toNumber(dot) / (toNumber(size(a)) * toNumber(size(b)))
  // Between the run walked back and the next walked on.
  const turned = (Math.acos(Math.min(1, Math.max(-1, -cosine))) * 180) / Math.PI
  return quantity(about(turned, 1e-9), 'deg')
}
