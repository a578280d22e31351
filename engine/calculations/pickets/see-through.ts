// How much of the fence is open: straight on, and from the angle at which one picket hides behind the next.
//
//   │█│  │█│  │█│      open = gap ÷ (gap + picket)
//     ╲   at an angle the thickness of the picket eats up the gap: gone when tan = gap ÷ thickness
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { blindAngle, openShare, solidShare } from '../../words/see-through.ts'
import { picketThickness, picketWidth, wantedGap } from '../../words/pickets.ts'

export const seeThrough = calculation({
  name: 'see-through',
  title: 'How much you see through',
  answers:
    'The share of the fence that is open and that is solid, straight on, and from which angle nothing is seen through.',
  needs: { picketWidth, wantedGap, picketThickness },
  gives: { openShare, solidShare, blindAngle },
  headlines: ['openShare', 'solidShare'],
  together: {
    openShare: ['openShare', 'solidShare', 'blindAngle'],
    solidShare: ['solidShare', 'openShare'],
    blindAngle: ['blindAngle', 'openShare'],
  },
  called: ['see through', 'see-through', 'percent open', 'percent solid'],
  lines: {
    openShare: ['wantedGap / (wantedGap + picketWidth)', 'the gap’s share of one gap and one picket'],
    solidShare: ['picketWidth / (wantedGap + picketWidth)', 'the picket’s share'],
    blindAngle: ['atan(wantedGap / picketThickness)', 'from there the edge of one picket hides the gap'],
  },
  work({ wantedGap }, { line, remark }) {
    line('openShare')
    line('solidShare')
    line('blindAngle')
    remark(
      compare(wantedGap.amount, exact(0)) === 0
        ? 'Without gaps nothing is open.'
        : 'Rails are not counted; they add a little. Wind reckons with the solid share, and so do some rules for front yards.',
    )
  },
  sources: [{ fact: 'open share = gap ÷ (gap + picket)', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // 2.5/6 = 41.667 %; atan(2.5/0.75) = 73.30°
    {
      ask: 'How see through is a fence with 3 1/2 in pickets and a gap of 2 1/2 in?',
      given: { picketWidth: '3 1/2 in', wantedGap: '2 1/2 in', picketThickness: '3/4 in' },
      expect: { openShare: '41.67 %', solidShare: '58.33 %', blindAngle: '73.3°' },
    },
    // 30/100
    {
      ask: 'What percent open is 70 mm pickets with 30 mm gaps?',
      given: { picketWidth: '70 mm', wantedGap: '30 mm' },
      expect: { openShare: '30 %', solidShare: '70 %' },
    },
  ],
})
