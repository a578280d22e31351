// How long the painting takes, at the pace of your own first picket.
//
//   each coat:  setting up + pickets × time + rails × time + posts × time + cleaning
//   shared out among all who hold a brush; the time between coats is not in it
import { calculation } from '../../calculation.ts'
import { zero } from '../../quantities/quantity.ts'
import { coats } from '../../words/finish.ts'
import {
  coatSetUp,
  paintDayHours,
  painters,
  paintingClock,
  paintingDays,
  paintingTime,
  picketTime,
  postTime,
  railTime,
} from '../../words/painting.ts'
import { railsInAll } from '../../words/framing.ts'
import { picketsHung } from '../../words/picket-count.ts'
import { posts } from '../../words/posts.ts'

export const paintingHours = calculation({
  name: 'painting-hours',
  title: 'Hours of painting',
  answers:
    'How many hours of brushing all coats are, by the clock with help, and on how many days, at rates that you can change.',
  needs: { picketsHung, picketTime, railsInAll, railTime, posts, postTime, coats, coatSetUp, painters, paintDayHours },
  may: ['picketsHung', 'railsInAll', 'posts'],
  oneOf: [['picketsHung', 'railsInAll', 'posts']],
  onlyFor: {
    painters: ['paintingClock', 'paintingDays'],
    paintDayHours: ['paintingDays'],
  },
  gives: { paintingTime, paintingClock, paintingDays },
  headlines: ['paintingTime', 'paintingDays'],
  together: {
    paintingTime: ['paintingTime', 'paintingClock'],
    paintingDays: ['paintingDays', 'paintingClock', 'paintingTime'],
  },
  locals: { onPickets: 'duration', onRails: 'duration', onPosts: 'duration' },
  lines: {
    onPickets: ['picketsHung * picketTime', 'the pickets, one coat'],
    onRails: ['railsInAll * railTime', 'the rails, one coat'],
    onPosts: ['sum(posts * postTime)', 'the posts, one coat'],
    brushing: ['onPickets + onRails + onPosts', 'one coat, brush in hand'],
    paintingTime: ['coats * (brushing + coatSetUp)', 'every coat with its setting up and cleaning'],
    coatClock: ['brushing / painters + coatSetUp', 'one coat by the clock: brushing is shared, setting up is not'],
    paintingClock: ['coats * coatClock', 'all coats by the clock'],
    daysEach: ['ceil(coatClock / paintDayHours)', 'days for one coat; a day begun counts'],
    paintingDays: ['coats * daysEach', 'each coat begins on a day of its own, when the one before is dry'],
  },
  work(_given, { line, has, put, remark, assumed }) {
    for (const [name, of] of [
      ['onPickets', 'picketsHung'],
      ['onRails', 'railsInAll'],
      ['onPosts', 'posts'],
    ] as const)
      if (has(of)) line(name, 'h')
      else put(name, zero('duration', 'min'))
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
    const paces = (['picketTime', 'railTime', 'postTime'] as const).filter(assumed)
    if (paces.length > 0)
      remark('The paces are only the usual ones: time your own first picket, rail and post, and give me those.')
    remark(
      'That is with a brush. Washing, sanding, covering plants and waiting between coats are not in it. A sprayer is faster on the pickets and slower on everything round them: masks, sheets and overspray.',
    )
  },
  sources: [
    {
      fact: 'hours = pieces × time for one × coats, with setting up',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'the usual paces', from: 'common practice, no source: your own first picket knows better' },
  ],
  cautions: ['weather', 'lead', 'fire', 'overhead-lines'],
  examples: [
    // one coat: 60 × 5 + 16 × 8 + 9 × 8 = 500 min, + 45; × 2 = 1090 min
    {
      ask: 'How long will it take to paint 60 pickets, 16 rails and 9 posts with 2 coats?',
      given: { picketsHung: '60', railsInAll: '16', posts: '9', coats: '2' },
      expect: { paintingTime: '18.17 hours' },
    },
    // 120 × 4 = 480 min; by two 240 + 30 = 270 min = 4.5 h each coat; 2 coats 9 h; ⌈4.5/5⌉ = 1 day each
    {
      ask: 'How many days to paint 120 pickets at 4 minutes per picket, 2 coats, 2 painters, 30 minutes setting up, 5 hours a day?',
      given: {
        picketsHung: '120',
        picketTime: '4 min',
        coats: '2',
        painters: '2',
        coatSetUp: '30 min',
        paintDayHours: '5 h',
      },
      expect: { paintingDays: '2 painting days', paintingClock: '9 hours', paintingTime: '17 hours' },
    },
  ],
})
