// How far ground of a known slope falls over a distance: slope-of-ground the other way round.
//
//   string ───────────────── level distance
//          ▔▔▔▔──__          fall = slope × level distance
//                  ▔▔▔──
import { calculation } from '../../calculation.ts'
import { alongGround, slopeAngle } from '../../words/heights.ts'
import { fall, levelDistance, slope } from '../../words/slopes.ts'

export const fallOfSlope = calculation({
  name: 'fall-of-slope',
  title: 'The fall of a slope',
  answers:
    'How far the ground falls over a level distance where its slope is known, the slope in degrees, and the length along the ground.',
  needs: { slope, levelDistance },
  onlyFor: { levelDistance: ['fall', 'alongGround'] },
  gives: { fall, slopeAngle, alongGround },
  headlines: ['fall'],
  together: { fall: ['fall', 'slopeAngle', 'alongGround'], alongGround: ['alongGround', 'fall'] },
  joins: true,
  lines: {
    slopeAngle: ['atan(slope)', 'the slope as an angle from level'],
    fall: ['slope * levelDistance', 'so much for each length of level distance'],
    alongGround: ['sqrt(levelDistance ^ 2 + fall ^ 2)', 'the ground is the long side of the triangle'],
  },
  work(_, { line, has, remark }) {
    line('slopeAngle')
    if (!has('levelDistance')) return
    line('fall')
    line('alongGround')
    remark('That holds where the ground falls evenly. Where it does not, measure down from a level string.')
  },
  sources: [{ fact: 'fall = slope × level distance', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // 12 % of 96 = 11.52; atan 0.12 = 6.8428°; √(96² + 11.52²) = 96.6887 in
    {
      ask: 'A slope of 12 %: how far does the ground fall in a level distance of 8 ft, and how many degrees is it?',
      given: { slope: '12 %', levelDistance: '8 ft' },
      expect: { fall: '11 13/25 in', slopeAngle: '6.843°', alongGround: '8 ft 0 11/16 in' },
    },
    // 1 in 20 is 5 %; of 12 m = 0.6 m; atan 0.05 = 2.8624°
    {
      ask: 'The ground slopes 1 in 20. What is the fall over 12 m, measured level?',
      given: { slope: '5 %', levelDistance: '12 m' },
      expect: { fall: '600 mm', slopeAngle: '2.862°', alongGround: '12.015 m' },
    },
  ],
})
