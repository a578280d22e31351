// How high a fence is from each side where the ground steps down across it.
//
//        ┃ ─┬─ top
//   own  ┃  │ height on your side
//   ▔▔▔▔▔┃  │
//        ┃▁▁▁▁▁▁▁ other side, lower
import { calculation } from '../../calculation.ts'
import { gradeDrawing } from '../../drawings/grade.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  fenceHeight,
  gradeDifference,
  heightByRule,
  heightDatum,
  heightHolds,
  heightLimit,
  heightOtherSide,
} from '../../words/boundary.ts'

export const heightBothSides = calculation({
  name: 'height-both-sides',
  title: 'The height from each side',
  answers:
    'How high the fence is from the other side where the ground is lower there, and whether it keeps a limit by the side your rule measures from.',
  needs: { fenceHeight, gradeDifference, heightLimit, heightDatum },
  may: ['heightDatum', 'heightLimit'],
  onlyFor: { heightLimit: ['heightHolds'], heightDatum: ['heightHolds', 'heightByRule'] },
  gives: { heightOtherSide, heightByRule, heightHolds },
  headlines: ['heightOtherSide', 'heightHolds'],
  together: {
    heightHolds: ['heightHolds', 'heightByRule', 'heightOtherSide'],
    heightOtherSide: ['heightOtherSide', 'heightHolds'],
  },
  lines: {
    heightOtherSide: ['fenceHeight + gradeDifference', 'from the lower ground the same top stands higher'],
    ruleHigher: ['fenceHeight', 'your rule measures from the higher ground'],
    ruleLower: ['heightOtherSide', 'your rule measures from the lower ground'],
    ruleMean: ['fenceHeight + gradeDifference / 2', 'your rule measures from half way between'],
  },
  work({ heightLimit, heightDatum: datum, fenceHeight }, { line, has, tell, doubt, remark }) {
    const other = line('heightOtherSide')
    if (has('heightDatum')) {
      const height = tell(
        'heightByRule',
        line(datum === 'higher' ? 'ruleHigher' : datum === 'lower' ? 'ruleLower' : 'ruleMean'),
      )
      if (has('heightLimit')) {
        const holds = !less(heightLimit, height)
        tell('heightHolds', holds)
        remark(
          `Decided by: ${show(height)} as your rule measures it, against the limit of ${show(heightLimit)} that you gave. Post tops, caps and ornaments may count: ask.`,
        )
      }
      return
    }
    if (!has('heightLimit')) return
    // Without the side, only what holds or fails from both can be said.
    if (!less(heightLimit, other)) {
      tell('heightHolds', true)
      remark(
        `Decided by: ${show(other)} from the lower side, the greater of the two, against the limit of ${show(heightLimit)} that you gave.`,
      )
    } else if (less(heightLimit, fenceHeight)) {
      tell('heightHolds', false)
      remark(
        `Decided by: ${show(fenceHeight)} from the higher side, the lesser of the two, against the limit of ${show(heightLimit)} that you gave.`,
      )
    } else {
      tell('heightHolds', null)
      doubt(
        'missing',
        'heightDatum',
        `From the higher side it is ${show(fenceHeight)}, from the lower ${show(other)}, and the limit of ${show(heightLimit)} lies between.`,
        heightDatum.ask,
      )
    }
  },
  sources: [
    {
      fact: 'places measure a fence from the higher side, the lower side or half way between',
      from: 'common practice; only your own rule says which',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: gradeDrawing,
  examples: [
    // 48 + 14 = 62; half way 55
    {
      ask: 'My fence is 48 in tall on my side and the neighbor side is lower by 14 in. How high is it from the other side?',
      given: { fenceHeight: '48 in', gradeDifference: '14 in' },
      expect: { heightOtherSide: '62 in' },
    },
    // 1200 + 400/2 = 1400 > 1300
    {
      ask: 'Fence height 1200 mm, other side is lower by 400 mm, limit 1300 mm measured half way between: is it too tall?',
      given: { fenceHeight: '1200 mm', gradeDifference: '400 mm', heightLimit: '1300 mm', heightDatum: 'mean' },
      expect: {
        heightOtherSide: '1,600 mm',
        heightByRule: '1,400 mm',
        heightHolds: 'fails: higher than the limit you gave',
      },
    },
  ],
})
