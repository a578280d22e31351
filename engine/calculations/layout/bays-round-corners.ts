// Bays and posts of a fence that goes round corners: every corner post stands for two sides and is counted once.
//
//   ●━━━━●━━━━◆        ● post   ◆ corner post, the end of one side and the start of the next
//             ┃
//             ●        open: one post more than there are bays; closed: as many
//             ┃
//   ●━━━━●━━━━◆
import { calculation } from '../../calculation.ts'
import { roundTo, subtract, toNumber } from '../../quantities/amount.ts'
import { exactly, holdsMoreThan, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bays, gates, runEnds, widestBay } from '../../words/bays.ts'
import { cornersShared, fenceSides } from '../../words/fence-sides.ts'
import { tapeMark } from '../../words/pickets.ts'
import { posts, postWidth } from '../../words/posts.ts'

const mostSides = 40
const mostBays = 500

export const baysRoundCorners = calculation({
  name: 'bays-round-corners',
  title: 'Bays and posts round corners',
  answers:
    'How many bays and posts a fence with several sides takes when the sides share their corner posts, and how wide the bays of each side are.',
  needs: { fenceSides, widestBay, runEnds, gates, postWidth, tapeMark },
  may: ['gates'],
  gives: { posts, bays, cornersShared },
  headlines: ['posts'],
  together: {
    posts: ['posts', 'cornersShared', 'bays'],
    bays: ['bays', 'posts', 'cornersShared'],
    cornersShared: ['cornersShared', 'posts', 'bays'],
  },
  called: [
    'corner posts shared',
    'share the corner posts',
    'share corner posts',
    'three sides',
    'four sides of',
    'each side',
    'round the corner',
    'around the corner',
    'round corners',
    'l shape',
    'u shape',
    'l-shaped',
    'u-shaped',
  ],
  locals: { centreSides: 'length' },
  lines: {
    halfPost: ['postWidth / 2', 'at each wall half a post stands inside the measure'],
    baysOfSides: ['ceil(centreSides / widestBay)', 'on each side the fewest that keep every bay within your limit'],
    bayOfSides: ['centreSides / baysOfSides', 'shared equally on each side'],
    bays: ['sum(baysOfSides)', 'all sides together'],
    postsOpen: [
      'bays + 1',
      'one more than there are bays: at a corner the last post of a side is the first of the next',
    ],
    postsClosed: ['bays', 'the last bay ends at the first post'],
  },
  work(
    { widestBay, runEnds, postWidth, tapeMark, gates },
    { line, rows, has, put, tell, refuse, doubt, remark, table, system },
  ) {
    const sides = rows('fenceSides')
    if (sides.length < 2)
      refuse(
        'fenceSides',
        `One side of ${show(sides[0] as Quantity)} goes round no corner. Give all the sides, in order.`,
      )
    if (sides.length > mostSides)
      refuse(
        'fenceSides',
        `That is ${show(quantity(sides.length, 'side'))}. Give at most ${show(quantity(mostSides, 'side'))} at a time.`,
      )
    if (runEnds === 'loop' && sides.length < 3)
      refuse('fenceSides', 'Two sides close no yard. Give all the sides round it, in order.')
    if (!less(postWidth, widestBay))
      refuse(
        'widestBay',
        `Posts ${show(postWidth)} wide leave nothing between them at ${show(widestBay)} centres. Check both measurements.`,
      )
    const half = runEnds === 'walls' ? line('halfPost') : undefined
    const centres = sides.map((side, i) => {
      const isFree = i === 0 || i === sides.length - 1
      // Outside to outside, every side holds half a post at both its ends; between walls only the two free ends do.
      const posts = runEnds === 'outside' ? postWidth : isFree ? half : undefined
      const centre: Quantity = posts ? { ...side, amount: subtract(side.amount, posts.amount) } : side
      if (!less(postWidth, centre))
        refuse(
          'fenceSides',
          `A side of ${show(side)} is no longer than a ${show(postWidth)} post is wide. Check that measurement.`,
        )
      if (holdsMoreThan(mostBays, widestBay, centre))
        refuse(
          'fenceSides',
          `A side of ${show(side)} with bays of ${show(widestBay)} has more bays than I can set out at once. Check both units.`,
        )
      return centre
    })
    put('centreSides', centres)
    line('baysOfSides')
    line('bayOfSides')
    line('bays')
    tell('posts', { ...line(runEnds === 'loop' ? 'postsClosed' : 'postsOpen'), kind: 'count', unit: 'post' })
    const corners = quantity(runEnds === 'loop' ? sides.length : sides.length - 1, 'post')
    tell('cornersShared', corners)
    const unit = system === 'metric' ? 'mm' : 'in'
    const [counts, widths] = [rows('baysOfSides'), rows('bayOfSides')]
    table({
      title: 'Side by side',
      columns: [
        { label: 'side', unit: '' },
        { label: 'length', unit: '' },
        { label: 'bays', unit: '' },
        { label: `bay, centre to centre, by the tape`, unit },
        { label: 'posts between its ends', unit: '' },
      ],
      rows: sides.map((side, i) => {
        const count = Math.round(toNumber((counts[i] as Quantity).amount))
        const width = widths[i] as Quantity
        return [
          i + 1,
          show(side),
          count,
          show({ ...width, unit, amount: roundTo(width.amount, exactly(tapeMark)) }),
          count - 1,
        ]
      }),
    })
    remark(
      `Of them ${show(corners)} stand${toNumber(corners.amount) === 1 ? 's' : ''} at corners, counted once though each serves two sides. Set the corner posts first, then divide the sides between them.`,
    )
    if (has('gates') && toNumber(gates.amount) > 0)
      doubt(
        'contradictory',
        'gates',
        'No gate is in this count: a gate takes its opening and a post out of one side and adds its own post. Ask for that side on its own, with the gate, and take the others from here.',
      )
  },
  sources: [
    {
      fact: 'an open fence has one post more than it has bays, a closed one as many, however many corners it goes round',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  examples: [
    // 40/8 = 5; 60/8 = 7.5 → 8; 40/8 = 5; 18 bays, 19 posts, 2 corners
    {
      ask: 'A fence on three sides, 40 ft, 60 ft and 40 ft, posts at most 8 ft apart: how many posts, with the corner posts shared?',
      given: { fenceSides: ['40 ft', '60 ft', '40 ft'], widestBay: '8 ft' },
      expect: { posts: '19 posts', bays: '18 bays', cornersShared: '2 posts' },
    },
    // 20/2.4 = 8.33 → 9; 12/2.4 = 5; twice: 28 bays, 28 posts
    {
      ask: 'Closed yard, sides of the fence 20 m, 12 m, 20 m and 12 m, posts no more than 2.4 m apart. How many posts with each side set out evenly?',
      given: { fenceSides: ['20 m', '12 m', '20 m', '12 m'], widestBay: '2.4 m', runEnds: 'loop' },
      expect: { posts: '28 posts', bays: '28 bays', cornersShared: '4 posts' },
    },
  ],
})
