// How long the painting takes, from an area and what one person paints in an hour.
//
//   each coat:  setting up + area ÷ area in an hour ÷ people + cleaning
import { calculation } from '../../calculation.ts'
import { quantity } from '../../quantities/quantity.ts'
import { finishArea } from '../../words/finish-area.ts'
import { coats } from '../../words/finish.ts'
import {
  areaAnHour,
  coatSetUp,
  paintDayHours,
  painters,
  paintingClock,
  paintingDays,
  paintingTime,
} from '../../words/painting.ts'

export const paintingByArea = calculation({
  name: 'painting-by-area',
  title: 'Hours of painting, by the area',
  answers:
    'How many hours of brushing, rolling or spraying an area takes at so much an hour, for all coats, by the clock with help, and on how many days.',
  needs: { finishArea, areaAnHour, coats, coatSetUp, painters, paintDayHours },
  onlyFor: {
    painters: ['paintingClock', 'paintingDays'],
    paintDayHours: ['paintingDays'],
  },
  gives: { paintingTime, paintingClock, paintingDays },
  headlines: ['paintingTime', 'paintingClock'],
  together: {
    paintingTime: ['paintingTime', 'paintingClock'],
    paintingClock: ['paintingClock', 'paintingTime'],
    paintingDays: ['paintingDays', 'paintingClock', 'paintingTime'],
  },
  called: ['square feet an hour', 'sq ft an hour', 'square metres an hour', 'sq m an hour'],
  locals: { oneHour: 'duration' },
  lines: {
    brushing: ['finishArea / areaAnHour * oneHour', 'one coat, at your pace'],
    paintingTime: ['coats * (brushing + coatSetUp)', 'every coat with its setting up and cleaning'],
    coatClock: ['brushing / painters + coatSetUp', 'one coat by the clock: brushing is shared, setting up is not'],
    paintingClock: ['coats * coatClock', 'all coats by the clock'],
    daysEach: ['ceil(coatClock / paintDayHours)', 'days for one coat; a day begun counts'],
    paintingDays: ['coats * daysEach', 'each coat begins on a day of its own, when the one before is dry'],
  },
  work(_given, { line, has, put, remark }) {
    put('oneHour', quantity(1, 'h'))
    line('brushing', 'h')
    line('paintingTime')
    if (has('painters')) {
      line('coatClock', 'h')
      line('paintingClock')
      if (has('paintDayHours')) {
        line('daysEach')
        line('paintingDays')
      }
    }
    remark(
      'The pace is of one person and one coat. Pickets have edges: an area that is only length times height hides half the work, so measure every face. Washing, sanding and waiting between coats are not in it.',
    )
  },
  sources: [
    {
      fact: 'hours = area ÷ area in an hour × coats, with setting up',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['weather', 'lead', 'fire', 'overhead-lines'],
  examples: [
    // 560/80 = 7 h; 2 × (7 + 3/4) = 15.5 h; by two 7/2 + 3/4 = 4.25, × 2 = 8.5 h
    {
      ask: 'How long to paint 560 square feet at 80 square feet an hour, 2 coats, 2 people?',
      given: { finishArea: '560 ft2', areaAnHour: '80 ft2', coats: '2', painters: '2' },
      expect: { paintingTime: '15.5 hours', paintingClock: '8.5 hours' },
    },
    // 48/6 = 8 h; 8 + 1/2 = 8.5 h; ⌈8.5/5⌉ = 2 days
    {
      ask: 'How many days to stain 48 m2 at 6 m2 per hour, 1 coat, 30 minutes setting up, 5 hours a day?',
      given: { finishArea: '48 m2', areaAnHour: '6 m2', coats: '1', coatSetUp: '30 min', paintDayHours: '5 h' },
      expect: { paintingDays: '2 painting days', paintingTime: '8.5 hours' },
    },
  ],
})
