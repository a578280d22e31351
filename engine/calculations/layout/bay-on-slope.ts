// One bay on a slope that is told by its fall over a level distance.
//
//   ●╲_            bay along the slope
//   │   ╲_  │ drop of one bay
//   └──────●┘
//      bay, level
import { calculation } from '../../calculation.ts'
import { bayCentres } from '../../words/bays.ts'
import { fall, levelDistance } from '../../words/slopes.ts'
import { dropPerBay, rakedBay } from '../../words/sloping-fence.ts'

export const bayOnSlopeOf = calculation({
  name: 'bay-on-slope',
  title: 'One bay on a slope',
  answers: 'How long one bay is along a slope, and how much the ground drops in it.',
  needs: { fall, levelDistance, bayCentres },
  gives: { rakedBay, dropPerBay },
  headlines: ['rakedBay', 'dropPerBay'],
  together: { rakedBay: ['rakedBay', 'dropPerBay'], dropPerBay: ['dropPerBay', 'rakedBay'] },
  lines: {
    dropPerBay: ['fall * bayCentres / levelDistance', 'the share of the fall that one bay has'],
    rakedBay: ['sqrt(bayCentres ^ 2 + dropPerBay ^ 2)', 'the bay on the level and its drop, in a square corner'],
  },
  work(_, { line, remark }) {
    line('dropPerBay')
    line('rakedBay')
    remark(
      'From post centre to post centre, on ground that slopes evenly. A rail between the posts is a post’s width shorter on the level.',
    )
  },
  sources: [{ fact: 'c² = a² + b² in a square corner', from: 'Plane geometry (Euclid, Elements, I.47).' }],
  cautions: ['utilities', 'lot-line', 'local-code', 'tools'],
  examples: [
    // 20/480 × 96 = 4 in; √(96² + 4²) = √9232
    {
      ask: 'The ground falls 20 in over 40 ft. For a bay of 8 ft on the level, how long is the sloping rail?',
      given: { fall: '20 in', levelDistance: '40 ft', bayCentres: '8 ft' },
      expect: { dropPerBay: '4 in', rakedBay: '96.08 in' },
    },
    // 300/9000 × 1800 = 60; √(1800² + 60²) = 1801.0
    {
      ask: 'The ground drops 300 mm over 9 m, panels 1.8 m wide: how much does the ground drop in each panel?',
      given: { fall: '300 mm', levelDistance: '9 m', bayCentres: '1.8 m' },
      expect: { dropPerBay: '60 mm', rakedBay: '1,801 mm' },
    },
  ],
})
