// Pickets in one bay, with the same gap everywhere, against the posts too.
//
//   post ┃ gap ▯ gap ▯ gap ▯ gap ┃ post
//        ┃◄────── opening ──────►┃          opening = pickets × width + (pickets + 1) × gap
//
import { calculation } from '../../calculation.ts'
import { bayDrawing } from '../../drawings/bay.ts'
import type Fraction from 'fraction.js'
import { exact } from '../../quantities/amount.ts'
import { equal, exactly, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { markFromOneEnd, marksTable, mostPickets, runningMarks } from '../../running-marks.ts'
import {
  gap,
  gapOneFewer,
  gapOneMore,
  lastGap,
  opening,
  pickets,
  picketWidth,
  sphere,
  tapeGap,
  tapeMark,
  wantedGap,
  widestGap,
} from '../../words/pickets.ts'

const fewest = 'ceil((opening - widestGap) / (picketWidth + widestGap))'

export const picketSpacing = calculation({
  name: 'picket-spacing',
  title: 'Pickets in one bay, with equal gaps',
  answers: 'How many pickets fill the opening between two posts, and the one gap that makes them come out even.',
  needs: { opening, picketWidth, widestGap, wantedGap, sphere, tapeMark },
  may: ['widestGap', 'wantedGap', 'sphere'],
  oneOf: [['widestGap', 'wantedGap', 'sphere']],
  gives: { pickets, gap, tapeGap, lastGap, gapOneFewer, gapOneMore },
  headlines: ['pickets', 'tapeGap'],
  joins: true,
  together: { tapeGap: ['pickets', 'tapeGap'], gap: ['tapeGap', 'pickets', 'gap'] },
  lines: {
    pickets: [fewest, 'the fewest that keep every gap within your limit'],
    picketsForLimit: [fewest, 'the fewest that keep every gap within your limit; what else you gave may take more'],
    nearest: ['(opening - wantedGap) / (picketWidth + wantedGap)', 'how many would give just the gap you would like'],
    gap: [
      '(opening - pickets * picketWidth) / (pickets + 1)',
      'the wood is taken out, and what is left is shared equally',
    ],
    tapeGap: ['round(gap, tapeMark)', 'the nearest mark on a tape'],
    lastGap: [
      'opening - pickets * picketWidth - pickets * tapeGap',
      'what would be left at the far post if you stepped the tape gap along',
    ],
    gapOneFewer: ['(opening - (pickets - 1) * picketWidth) / pickets', 'the next count down, for comparison'],
    gapOneMore: ['(opening - (pickets + 1) * picketWidth) / (pickets + 2)', 'the next count up, for comparison'],
  },
  work(given, { line, tell, refuse, remark, table, has, doubt, cite, system }) {
    const { opening, picketWidth, tapeMark } = given
    if (less(opening, picketWidth))
      refuse(
        'opening',
        `A ${show(picketWidth)} picket does not fit a ${show(opening)} opening. Check both measurements.`,
      )
    const width = exactly(picketWidth)
    const space = exactly(opening)
    const mark = exactly(tapeMark)
    const gapOf = (count: Fraction): Quantity => ({ ...opening, amount: space.sub(count.mul(width)).div(count.add(1)) })
    const most = space.div(width).floor()
    if (most.compare(mostPickets) > 0)
      refuse(
        'opening',
        `${show(picketWidth)} pickets in a ${show(opening)} opening would be more than ${cite(quantity(mostPickets, 'picket'), 'the most in one bay')}. Check both units, or give one bay at a time.`,
      )

    // Each thing given asks for so many pickets; the greatest number keeps them all.
    const alone = (['widestGap', 'wantedGap', 'sphere'] as const).filter(has).length === 1
    let count = exact(1)
    let governs = ''
    const take = (asked: Fraction, what: string): void => {
      if (governs && asked.compare(count) <= 0) return
      count = asked
      governs = what
    }
    if (has('wantedGap')) {
      const just = exactly(line('nearest'))
      const asked = nearestCount(just, most, exactly(given.wantedGap), (n) => exactly(gapOf(n)))
      take(asked, `the gap you would like, ${show(given.wantedGap)}`)
      if (alone)
        remark(
          `I took ${show(given.wantedGap)} as the gap you would like, and chose the count whose gap comes nearest to it, wider or narrower. If no gap may be wider than that, say “at most”.`,
        )
    }
    if (has('widestGap')) {
      const asked = exactly(line(alone ? 'pickets' : 'picketsForLimit'))
      if (asked.compare(most) > 0)
        refuse('widestGap', neighbours(given.widestGap, most, gapOf, picketWidth, opening, 'keeps', cite))
      if (alone && asked.equals(0))
        refuse(
          'widestGap',
          `The ${show(opening)} opening is no wider than the ${show(given.widestGap)} gap you allow, so it takes no picket. Check both measurements.`,
        )
      take(asked, `the widest gap you allow, ${show(given.widestGap)}`)
    }
    if (has('sphere')) {
      const asked = fewestThatStop(space, width, exactly(given.sphere), mark, most, count)
      if (asked.compare(most) > 0)
        refuse('sphere', neighbours(given.sphere, most, gapOf, picketWidth, opening, 'stops', cite))
      take(asked, `the ${show(given.sphere)} ball`)
      if (has('widestGap') && !less(given.widestGap, given.sphere))
        doubt(
          'contradictory',
          'widestGap',
          `A gap of ${show(given.widestGap)} would let a ${show(given.sphere)} ball touch through. I kept every gap under the ball.`,
        )
      remark(
        `Every gap, as marked on the tape, is less than ${show(given.sphere)}: a gap of exactly that size would let the ball through.`,
      )
    }
    if (!alone) remark(`What governs is ${governs}: it asks for the most pickets of what you gave.`)
    if (!alone || !has('widestGap')) tell('pickets', quantity(count, 'picket'))
    line('gap')
    line('tapeGap')
    line('lastGap')
    if (count.compare(1) > 0) line('gapOneFewer')
    if (count.compare(most) < 0) line('gapOneMore')

    table(marksTable(runningMarks(space, width, count, mark), system))
    remark(
      'I took a gap against each post too. If a picket stands against each post, or the pickets run past the posts, say so: the count changes.',
    )
    remark(markFromOneEnd)
  },
  sources: [
    { fact: 'opening = pickets × width + (pickets + 1) × gap', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  drawing: bayDrawing,
  examples: [
    {
      // 16 × 3 1/2 = 56; 93 − 56 = 37; 37/17 = 2 3/17; 37 − 16 × 2 3/16 = 2
      ask: 'How many 3 1/2 in pickets go in a 93 in opening with gaps no wider than 2 1/2 in?',
      given: { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
      expect: { pickets: '16 pickets', gap: '2 3/17 in', tapeGap: '2 3/16 in', lastGap: '2 in' },
    },
    {
      // 12 × 3 1/2 = 42; 70 5/8 − 42 = 28 5/8; shared by 13 gaps = 229/104 = 2 21/104
      ask: 'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps of at most 2 1/2 in?',
      given: { opening: '70 5/8 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
      expect: { gap: '2 21/104 in', tapeGap: '2 3/16 in', pickets: '12 pickets' },
    },
    {
      // 24 × 70 = 1680; 2400 − 1680 = 720; 720/25 = 28.8
      ask: 'An opening of 2400 mm, 70 mm pickets, no gap over 30 mm: how many pickets?',
      given: { opening: '2400 mm', picketWidth: '70 mm', widestGap: '30 mm' },
      expect: { pickets: '24 pickets', gap: '28.8 mm', tapeGap: '29 mm' },
    },
  ],
})

/** The gaps that the rounded marks leave, the two against the posts included. */
function markedGaps(space: Fraction, width: Fraction, count: Fraction, mark: Fraction): Fraction[] {
  const edges = runningMarks(space, width, count, mark).map(({ at }) => at)
  const starts = [...edges, space]
  return starts.map((start, i) => (i === 0 ? start : start.sub(edges[i - 1] as Fraction).sub(width)))
}

// Up to so many pickets every count is tried; beyond, one more in a thousand is no loss.
const fewToTry = 500

/** The fewest pickets, from so many on, whose gaps, as marked, all stop the ball. One more than fit when none does. */
function fewestThatStop(
  space: Fraction,
  width: Fraction,
  ball: Fraction,
  mark: Fraction,
  most: Fraction,
  from: Fraction,
): Fraction {
  // gap < ball needs pickets > (space − ball) / (width + ball); rounding to marks may need one more.
  let count = space.sub(ball).div(width.add(ball)).floor().add(1)
  if (count.compare(from) < 0) count = from
  // Rounding to marks widens a gap by less than one mark, so a count whose exact gap is a mark narrower always does.
  const narrower = ball.sub(mark)
  const sure = narrower.compare(0) > 0 ? space.sub(narrower).div(width.add(narrower)).ceil() : most.add(1)
  if (count.compare(fewToTry) > 0) return sure.compare(count) > 0 ? sure : count
  while (
    count.compare(most) <= 0 &&
    count.compare(sure) < 0 &&
    markedGaps(space, width, count, mark).some((g) => g.compare(ball) >= 0)
  )
    count = count.add(1)
  return count
}

/** The whole count, of the two beside `just`, whose gap is nearest to the one wanted. */
function nearestCount(
  just: Fraction,
  most: Fraction,
  wanted: Fraction,
  gapOf: (count: Fraction) => Fraction,
): Fraction {
  const candidates = [just.floor(), just.ceil()]
    .map((n) => (n.compare(1) < 0 ? exact(1) : n))
    .filter((n) => n.compare(most) <= 0)
  const distance = (n: Fraction): Fraction => gapOf(n).sub(wanted).abs()
  return candidates.reduce((best, n) => (distance(n).compare(distance(best)) < 0 ? n : best), candidates[0] ?? most)
}

/** What to say when no count keeps the limit: both neighbours, with what each would leave. */
function neighbours(
  limit: Quantity,
  most: Fraction,
  gapOf: (count: Fraction) => Quantity,
  width: Quantity,
  opening: Quantity,
  verb: 'keeps' | 'stops',
  cite: (q: Quantity, label: string) => string,
): string {
  const widest = gapOf(most)
  const wood: Quantity = { ...width, amount: exactly(width).mul(most.add(1)) }
  const over: Quantity = { ...opening, amount: exactly(wood).sub(exactly(opening)) }
  const [count, next] = [
    cite(quantity(most, 'picket'), 'the most that fit'),
    cite(quantity(most.add(1), 'picket'), 'one more'),
  ]
  return (
    `No number of ${show(width)} pickets ${verb === 'keeps' ? `keeps every gap within ${show(limit)}` : `stops a ${show(limit)} ball`} in a ${show(opening)} opening. ` +
    `${count} ${most.equals(1) ? 'leaves' : 'leave'} gaps of ${cite(widest, 'gap with the most that fit')}, which is too wide${equal(widest, limit) ? ' by a hair' : ''}. ${next} ${most.equals(0) ? 'does not fit: it is' : 'do not fit: they are'} ${cite(wood, 'wood of one more')} of wood, ${cite(over, 'what it overshoots')} more than the opening. ` +
    // A ball that a rule names is not to be had wider.
    `${verb === 'keeps' ? 'Allow a wider gap, or use' : 'Use'} narrower pickets, or trim the two at the posts.`
  )
}
