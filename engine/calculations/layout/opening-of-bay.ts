// The opening of one bay that was measured from post centre to post centre, as it was built.
//
//      ┃     ┃◄─ opening ─►┃     ┃
//         ◄──── centres ────►
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayCentres } from '../../words/bays.ts'
import { opening } from '../../words/pickets.ts'
import { postWidth } from '../../words/posts.ts'

export const openingOfBay = calculation({
  name: 'opening-of-bay',
  title: 'The opening of a bay as built',
  answers: 'The opening between two posts whose centres were measured.',
  needs: { bayCentres, postWidth },
  gives: { opening },
  headlines: ['opening'],
  joins: true,
  lines: { opening: ['bayCentres - postWidth', 'half a post at each end'] },
  work({ bayCentres, postWidth }, { line, refuse }) {
    if (!less(postWidth, bayCentres))
      refuse(
        'bayCentres',
        `Post centres ${show(bayCentres)} apart leave no opening between posts ${show(postWidth)} wide. Check the measurement.`,
      )
    line('opening')
  },
  sources: [
    {
      fact: 'between two posts is half a post less at each end than between their centres',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: [],
  examples: [
    // 7 ft 9 in = 93; − 3 1/2
    {
      ask: 'Post centres of a bay are 7 ft 9 in apart: its opening?',
      given: { bayCentres: '7 ft 9 in' },
      expect: { opening: '89 1/2 in' },
    },
    // 2400 − 90
    {
      ask: 'Posts of 90 mm with centres 2400 mm apart: how wide is the opening?',
      given: { bayCentres: '2400 mm', postWidth: '90 mm' },
      expect: { opening: '2,310 mm' },
    },
  ],
})
