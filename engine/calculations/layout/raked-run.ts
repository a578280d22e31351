// A fence that follows the slope: posts and pickets plumb, rails parallel to the ground.
//
//   ┃▔▔▔──__┃            rail: between plumb faces, longer than the opening by 1 / cos of the slope
//   ┃       ┃▔▔▔──__┃    ends cut plumb: over from square by the slope's angle
//   ▔▔▔──__ ┃       ┃    gaps between pickets are measured level, and do not change
import { calculation } from '../../calculation.ts'
import { rakeDrawing } from '../../drawings/slope.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayCentres } from '../../words/bays.ts'
import { picketWidth, wantedGap } from '../../words/pickets.ts'
import { postWidth } from '../../words/posts.ts'
import { railDepth } from '../../words/rails.ts'
import { slope } from '../../words/slopes.ts'
import { totalFall } from '../../words/heights.ts'
import {
  bottomBevel,
  dropPerBay,
  pitchAlongRail,
  plumbCut,
  rakedBay,
  rakedBlank,
  rakedRail,
  slopeBays,
} from '../../words/sloping-fence.ts'

export const rakedRun = calculation({
  name: 'raked-run',
  title: 'A fence that follows the slope',
  answers:
    'How long the rails are along a slope, at which angle their ends are cut, how pickets are marked along them and how their feet are cut.',
  needs: { slope, bayCentres, postWidth, railDepth, picketWidth, wantedGap, slopeBays },
  may: ['picketWidth', 'wantedGap', 'slopeBays'],
  onlyFor: {
    slopeBays: ['totalFall'],
    picketWidth: ['pitchAlongRail', 'bottomBevel'],
    wantedGap: ['pitchAlongRail'],
  },
  gives: { rakedRail, rakedBlank, rakedBay, plumbCut, dropPerBay, totalFall, pitchAlongRail, bottomBevel },
  headlines: ['rakedRail', 'plumbCut'],
  together: {
    rakedRail: ['rakedRail', 'rakedBay', 'rakedBlank', 'plumbCut', 'dropPerBay'],
    plumbCut: ['plumbCut', 'rakedRail', 'rakedBlank'],
    dropPerBay: ['dropPerBay', 'rakedRail'],
  },
  called: [
    'follow the slope',
    'follows the slope',
    'raked',
    'racked',
    'rake',
    'follow the ground',
    'parallel to the ground',
  ],
  locals: { slopeTurn: 'angle' },
  lines: {
    dropPerBay: ['slope * bayCentres', 'from post centre to post centre'],
    totalFall: ['dropPerBay * slopeBays', 'over so many bays'],
    opening: ['bayCentres - postWidth', 'between post faces, measured level'],
    slopeTurn: ['atan(slope)', 'the slope as an angle'],
    rakedRail: ['opening / cos(slopeTurn)', 'the rail is the long side of the triangle'],
    rakedBlank: ['rakedRail + railDepth * tan(slopeTurn)', 'plumb cuts set one edge off against the other'],
    rakedBay: ['bayCentres / cos(slopeTurn)', 'the same from post centre to post centre'],
    plumbCut: ['slopeTurn', 'a plumb cut across a sloping rail'],
    pitchAlongRail: ['(picketWidth + wantedGap) / cos(slopeTurn)', 'level pitch, laid along the rail'],
    bottomBevel: ['picketWidth * slope', 'over the width of one picket'],
  },
  work({ bayCentres, postWidth }, { line, has, refuse, remark }) {
    if (!less(postWidth, bayCentres))
      refuse(
        'bayCentres',
        `Bays of ${show(bayCentres)} leave nothing between ${show(postWidth)} posts. Check both measurements.`,
      )
    line('dropPerBay')
    line('opening')
    line('slopeTurn')
    for (const name of ['rakedRail', 'rakedBlank', 'rakedBay', 'plumbCut']) line(name)
    if (has('slopeBays')) line('totalFall')
    if (has('picketWidth')) {
      line('bottomBevel')
      if (has('wantedGap')) line('pitchAlongRail')
    }
    remark(
      'Posts and pickets stand plumb; only the rails slope. Mark the pickets level, or by the longer pitch along the rail: the gaps stay as they are on the flat.',
    )
  },
  sources: [
    {
      fact: 'rail = opening ÷ cos of the slope; plumb cuts are over from square by the same angle',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'tools'],
  drawing: rakeDrawing,
  examples: [
    // 10 % of 96 = 9.6; 92.5 × √1.01 = 92.9613; atan 0.1 = 5.7106°; + 3.5 × 0.1 = 0.35 → 93.3113; 6 × √1.01 = 6.0299; 3.5 × 0.1
    {
      ask: 'How long are the raked rails on a slope of 10 % with bays of 8 ft, centre to centre, 3 1/2 in pickets and gaps of about 2 1/2 in?',
      given: {
        slope: '10 %',
        bayCentres: '8 ft',
        postWidth: '3 1/2 in',
        picketWidth: '3 1/2 in',
        wantedGap: '2 1/2 in',
      },
      expect: {
        rakedRail: '92.96 in',
        rakedBlank: '93.31 in',
        plumbCut: '5.711°',
        dropPerBay: '9 3/5 in',
        pitchAlongRail: '6.03 in',
        bottomBevel: '7/20 in',
      },
    },
    // 5 % of 2400 = 120; 2310 × √1.0025 = 2312.89
    {
      ask: 'Fence follows the slope of 5 %, bays 2.4 m centre to centre, 90 mm posts: how long is the rail on the slope?',
      given: { slope: '5 %', bayCentres: '2400 mm', postWidth: '90 mm' },
      expect: { rakedRail: '2,313 mm', plumbCut: '2.862°', dropPerBay: '120 mm' },
    },
  ],
})
