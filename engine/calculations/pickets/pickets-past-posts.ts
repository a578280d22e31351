// Pickets that run past the posts, the same number to every bay, so that the pattern repeats.
//
//      ●             ●             ●      post centres
//   █   █   █   █   █   █   █   █   █     pitch = bay ÷ whole number of pickets
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { mostPickets } from '../../running-marks.ts'
import { bayCentres } from '../../words/bays.ts'
import { picketsEachBay, pitch } from '../../words/picket-patterns.ts'
import { gap, picketWidth, tapeGap, tapeMark, widestGap } from '../../words/pickets.ts'

export const picketsPastPosts = calculation({
  name: 'pickets-past-posts',
  title: 'Pickets that run past the posts',
  answers: 'How many pickets go to each bay when they run past the posts in one unbroken row, and their gap.',
  needs: { bayCentres, picketWidth, widestGap, tapeMark },
  gives: { picketsEachBay, pitch, gap, tapeGap },
  headlines: ['picketsEachBay', 'tapeGap'],
  together: {
    picketsEachBay: ['picketsEachBay', 'tapeGap', 'pitch'],
    tapeGap: ['tapeGap', 'picketsEachBay', 'pitch'],
    gap: ['gap', 'tapeGap', 'picketsEachBay'],
    pitch: ['pitch', 'picketsEachBay', 'tapeGap'],
  },
  called: ['past the posts', 'over the posts', 'in front of the posts', 'continuous', 'unbroken row', 'run past'],
  lines: {
    picketsEachBay: [
      'ceil(bayCentres / (picketWidth + widestGap))',
      'the fewest that keep every gap within your limit',
    ],
    pitch: ['bayCentres / picketsEachBay', 'post centre to post centre, shared equally'],
    gap: ['pitch - picketWidth', 'what the picket leaves of its pitch'],
    tapeGap: ['round(gap, tapeMark)', 'the nearest mark on a tape'],
  },
  work({ bayCentres, picketWidth, widestGap }, { line, refuse, remark }) {
    if (less(bayCentres, picketWidth))
      refuse(
        'bayCentres',
        `A bay of ${show(bayCentres)} is narrower than a ${show(picketWidth)} picket. Check both measurements.`,
      )
    const count = line('picketsEachBay')
    if (compare(count.amount, mostPickets) === 1)
      refuse('bayCentres', `${show(count)} are more than one bay can hold. Check both units.`)
    const step = line('pitch')
    const left = line('gap')
    if (compare(left.amount, exact(0)) === -1)
      refuse(
        'widestGap',
        `${show(count)} of ${show(picketWidth)} do not fit a bay of ${show(bayCentres)}, and one fewer would leave a gap over ${show(widestGap)}. Allow a wider gap.`,
      )
    line('tapeGap')
    remark(
      `Put the middle of one picket, or the middle of one gap, on the centre of the first post, and every post after it looks the same. Mark the row every ${show(step)} from one end; do not step a spacer along.`,
    )
    remark('At the far end one picket more closes the row.')
  },
  sources: [
    { fact: 'pitch = bay ÷ pickets; gap = pitch − width', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  examples: [
    // 96/6 = 16; 96/16 = 6; 2 1/2
    {
      ask: 'Pickets run past the posts. Bays are 8 ft centre to centre, 3 1/2 in pickets, gaps no wider than 2 1/2 in. How many pickets past the posts to each bay?',
      given: { bayCentres: '8 ft', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
      expect: { picketsEachBay: '16 pickets', pitch: '6 in', gap: '2 1/2 in', tapeGap: '2 1/2 in' },
    },
    // 2000/100 = 20; 100 − 70
    {
      ask: 'Continuous pickets over the posts, bays 2 m centre to centre, 70 mm pickets, gap at most 30 mm: what gap?',
      given: { bayCentres: '2000 mm', picketWidth: '70 mm', widestGap: '30 mm' },
      expect: { picketsEachBay: '20 pickets', pitch: '100 mm', gap: '30 mm' },
    },
  ],
})
