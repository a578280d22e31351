// A slope told in degrees, as the percent that everything else is worked with.
//
//      level ─────────── 1
//            ▔▔──__  angle
//                  ▔▔──  tan(angle)
import { calculation } from '../../calculation.ts'
import { slopeAngle } from '../../words/heights.ts'
import { slope } from '../../words/slopes.ts'

export const slopeFromAngle = calculation({
  name: 'slope-from-angle',
  title: 'A slope told in degrees',
  answers: 'How many percent a slope has that was told or read off in degrees.',
  needs: { slopeAngle },
  gives: { slope },
  headlines: ['slope'],
  joins: true,
  lines: { slope: ['tan(slopeAngle)', 'the fall for each length of level distance'] },
  work(_, { line, remark }) {
    line('slope')
    remark(
      'Percent and degrees are two scales: a slope of 45 degrees falls as far as it is long, which is all of a hundred percent.',
    )
  },
  sources: [{ fact: 'slope = tangent of its angle from level', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // tan 8° = 0.140541
    {
      ask: 'The slope is 8 degrees: how many percent is that?',
      given: { slopeAngle: '8 deg' },
      expect: { slope: '14.1 %' },
    },
    // tan 3.5° = 0.0611626
    {
      ask: 'My level reads 3.5 degrees on the ground. What is the slope in percent?',
      given: { slopeAngle: '3.5 deg' },
      expect: { slope: '6.1 %' },
    },
  ],
})
