// How steep the ground is, from its fall over a level distance.
//
//   string ───────────────── level distance
//          ▔▔▔▔──__          fall
//                  ▔▔▔──
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { alongGround, slopeAngle } from '../../words/heights.ts'
import { fall, levelDistance, slope } from '../../words/slopes.ts'

export const slopeOfGround = calculation({
  name: 'slope-of-ground',
  title: 'How steep the ground is',
  answers: 'The slope in percent and degrees from a fall over a level distance, and the length along the ground.',
  needs: { fall, levelDistance },
  gives: { slope, slopeAngle, alongGround },
  headlines: ['slope'],
  together: { slope: ['slope', 'slopeAngle', 'alongGround'], slopeAngle: ['slopeAngle', 'slope'] },
  lines: {
    slope: ['fall / levelDistance', 'so much fall for each length of level distance'],
    slopeAngle: ['atan(fall / levelDistance)', 'the same as an angle from level'],
    alongGround: ['sqrt(levelDistance ^ 2 + fall ^ 2)', 'the ground is the long side of the triangle'],
  },
  work({ levelDistance }, { line, remark }) {
    line('slope')
    line('slopeAngle')
    const along = line('alongGround')
    remark(
      `Bays are set out level: ${show(levelDistance)} by the string. A tape laid on the ground reads ${show(along)}.`,
    )
  },
  sources: [{ fact: 'slope = fall ÷ level distance', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 40/576 = 6.944 %; atan = 3.972°; √(576² + 40²) = 577.387 in = 48.1156 ft
    {
      ask: 'The ground falls 40 in over a level distance of 48 ft. How steep is it?',
      given: { fall: '40 in', levelDistance: '48 ft' },
      expect: { slope: '6.944 %', slopeAngle: '3.972°', alongGround: '48 ft 1 3/8 in' },
    },
    // 0.6/12 = 5 %
    {
      ask: 'What slope is a drop of 600 mm over a level distance of 12 m?',
      given: { fall: '600 mm', levelDistance: '12 m' },
      expect: { slope: '5 %', slopeAngle: '2.862°', alongGround: '12.015 m' },
    },
  ],
})
