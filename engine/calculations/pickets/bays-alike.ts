// Bays of different widths made to look alike: in each the count whose gap comes nearest to one common gap.
import type Fraction from 'fraction.js'
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { exactly, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { alike, gapsDiffer, openings, seenFrom } from '../../words/bays-alike.ts'
import { picketWidth, wantedGap } from '../../words/pickets.ts'

const mostBays = 60
const mostInBay = 400

export const baysAlike = calculation({
  name: 'bays-alike',
  title: 'Bays of different widths that look alike',
  answers:
    'How many pickets go in each of several bays of different widths so that their gaps differ least, and whether the difference would be seen.',
  needs: { openings, picketWidth, wantedGap, seenFrom },
  gives: { gapsDiffer, alike },
  headlines: ['alike', 'gapsDiffer'],
  together: { gapsDiffer: ['alike', 'gapsDiffer'], alike: ['alike', 'gapsDiffer'] },
  called: ['look alike', 'look the same', 'bays alike', 'bays of different', 'different bays'],
  locals: { widest: 'length', narrowest: 'length' },
  lines: { gapsDiffer: ['widest - narrowest', 'over all bays'] },
  work({ picketWidth, wantedGap, seenFrom }, { line, rows, put, tell, refuse, remark, table, system }) {
    const spaces = rows('openings')
    if (spaces.length < 2) refuse('openings', 'One bay is alike to itself. Give two or more openings.')
    if (spaces.length > mostBays)
      refuse(
        'openings',
        `That is ${show(quantity(spaces.length, 'bay'))}. Give at most ${show(quantity(mostBays, 'bay'))} at a time.`,
      )
    const width = exactly(picketWidth)
    const bays = spaces.map((space) => {
      if (less(space, picketWidth))
        refuse(
          'openings',
          `A ${show(picketWidth)} picket does not fit an opening of ${show(space)}. Check both measurements.`,
        )
      const most = Math.floor(exactly(space).div(width).valueOf())
      if (most > mostInBay)
        refuse(
          'openings',
          `${show(picketWidth)} pickets in an opening of ${show(space)} are more than one bay can hold. Check both units.`,
        )
      return nearestTo(exactly(wantedGap), exactly(space), width, most)
    })
    const best = closest(bays, exactly(wantedGap))
    const chosen = spaces.map((space, i) => ({ space, ...(best[i] as Option) }))
    const asGap = (gap: Fraction): Quantity => ({ ...picketWidth, amount: gap })
    const gaps = chosen.map((it) => it.gap)
    put('widest', asGap(gaps.reduce((a, b) => (a.compare(b) < 0 ? b : a))))
    put('narrowest', asGap(gaps.reduce((a, b) => (a.compare(b) < 0 ? a : b))))
    const differ = line('gapsDiffer')
    const hidden = less(differ, seenFrom)
    tell('alike', hidden)
    const unit = system === 'metric' ? 'mm' : 'in'
    table({
      title: 'Bay by bay',
      columns: [
        { label: 'bay', unit: '' },
        { label: 'opening', unit },
        { label: 'pickets', unit: '' },
        { label: 'gap', unit },
      ],
      rows: chosen.map((it, i) => [i + 1, show(it.space), it.count, show(asGap(it.gap))]),
    })
    remark(
      `Decided by: gaps that differ by ${show(differ)}, against ${show(seenFrom)} that would be seen.${hidden ? '' : ' Make the bays more alike, or put the odd one where a gate or the house hides it.'}`,
    )
    remark(
      `In each bay I looked at the counts whose gaps come nearest to ${show(wantedGap)} from both sides, and took those that lie closest together. No gap here is checked against a limit: a pool or a dog has one.`,
    )
  },
  sources: [
    { fact: 'gap = (opening − pickets × width) / (pickets + 1) in each bay', from: 'Derived here; needs no table.' },
  ],
  cautions: ['tools'],
  examples: [
    // 93: 16 → 37/17 = 2.1765; 70 5/8: 12 → 2.2019; 84: 14 → 2.3333; they differ by 8/51 = 0.157, less than with 15, 11 and 13 (0.219)
    {
      ask: 'Openings of 93 in, 70 5/8 in and 84 in with 3 1/2 in pickets and gaps of about 2 1/2 in: how do I make the bays look alike?',
      given: { openings: ['93 in', '70 5/8 in', '84 in'], picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' },
      expect: { gapsDiffer: '8/51 in', alike: 'the difference would be seen' },
    },
    // 2400: 22 → (2400 − 1540)/23 = 37.391; 1800: 16 → (1800 − 1120)/17 = 40; 17 → 610/18 = 33.889 ; 23 → 790/24 = 32.917
    // 32.917 and 33.889 differ by 0.972; 37.391 and 40 by 2.609; nearest to each other near 35: 23 and 17
    {
      ask: 'Two different bays, openings 2400 mm and 1800 mm, 70 mm pickets, gap about 35 mm. How do I make them look the same?',
      given: { openings: ['2400 mm', '1800 mm'], picketWidth: '70 mm', wantedGap: '35 mm' },
      expect: { gapsDiffer: '35/36 mm', alike: 'the difference would hardly be seen' },
    },
  ],
})

interface Option {
  readonly count: number
  readonly gap: Fraction
}

const gapOf = (space: Fraction, width: Fraction, count: number): Fraction => space.sub(width.mul(count)).div(count + 1)

/** The two counts whose gaps come nearest to the gap wanted. Every picket more makes the gap smaller, so they stand next to the place where it passes the gap wanted. */
function nearestTo(wanted: Fraction, space: Fraction, width: Fraction, most: number): Option[] {
  const passes = Math.floor(space.sub(wanted).div(width.add(wanted)).valueOf())
  return [passes - 1, passes, passes + 1, passes + 2]
    .map((count) => Math.max(1, Math.min(most, count)))
    .filter((count, i, all) => all.indexOf(count) === i)
    .map((count) => ({ count, gap: gapOf(space, width, count) }))
    .sort((a, b) => a.gap.sub(wanted).abs().compare(b.gap.sub(wanted).abs()))
    .slice(0, 2)
}

/**
 * One option a bay, so that the spread of the gaps is the least. Every gap among
 * them is tried as the lowest of the spread: each bay then takes its nearest gap from there up, so no pattern of them is left out.
 */
function closest(near: readonly (readonly Option[])[], wanted: Fraction): Option[] {
  const floors = near.flat().map((it) => it.gap)
  let best: { picks: Option[]; spread: Fraction; off: Fraction } | undefined
  for (const floor of floors) {
    const picks = near.map(
      (options) => options.filter((it) => it.gap.compare(floor) >= 0).sort((a, b) => a.gap.compare(b.gap))[0],
    )
    if (picks.some((it) => it === undefined)) continue
    const all = picks as Option[]
    const gaps = all.map((it) => it.gap)
    const spread = gaps
      .reduce((a, b) => (a.compare(b) < 0 ? b : a))
      .sub(gaps.reduce((a, b) => (a.compare(b) < 0 ? a : b)))
    const off = gaps.reduce((sum, it) => sum.add(it.sub(wanted).abs()), exact(0))
    if (!best || spread.compare(best.spread) < 0 || (spread.equals(best.spread) && off.compare(best.off) < 0))
      best = { picks: all, spread, off }
  }
  if (!best) throw new Error('every bay has an option')
  return best.picks
}
