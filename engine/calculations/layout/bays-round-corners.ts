// Bays and posts of a fence that goes round corners: every corner post stands for two sides and is counted once.
//
//   ●━━━━●━━━━◆        ● post   ◆ corner post, the end of one side and the start of the next
//             ┃
//             ●        open: one post more than there are bays; closed: as many
//             ┃
//   ●━━━━●━━━━◆
//
// A gate takes its opening and one post width out of its side, from post centre to post centre, and adds one post.
import { calculation } from '../../calculation.ts'
import { roundTo, subtract, toNumber } from '../../quantities/amount.ts'
import { exactly, holdsMoreThan, less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bays, gateOpening, gates, runEnds, widestBay } from '../../words/bays.ts'
import { cornersShared, fenceSides, gateSides } from '../../words/fence-sides.ts'
import { tapeMark } from '../../words/pickets.ts'
import { posts, postWidth } from '../../words/posts.ts'

const mostSides = 40
const mostBays = 500
const mostGates = 40

export const baysRoundCorners = calculation({
  name: 'bays-round-corners',
  title: 'Bays and posts round corners',
  answers:
    'How many bays and posts a fence with several sides takes when the sides share their corner posts, and how wide the bays of each side are.',
  needs: { fenceSides, widestBay, runEnds, gates, gateOpening, gateSides, postWidth, tapeMark },
  may: ['gates', 'gateOpening', 'gateSides'],
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
  locals: { centreSides: 'length', gatesOfSides: 'number' },
  lines: {
    halfPost: ['postWidth / 2', 'at each wall half a post stands inside the measure'],
    gateCentres: ['gateOpening + postWidth', 'from gate post centre to gate post centre'],
    fencedSides: ['centreSides - gatesOfSides * gateCentres', 'what is left of each side to fill with bays'],
    baysOfSides: ['ceil(fencedSides / widestBay)', 'on each side the fewest that keep every bay within your limit'],
    bayOfSides: ['fencedSides / baysOfSides', 'shared equally on each side'],
    bays: ['sum(baysOfSides)', 'all sides together'],
    gatesInAll: ['sum(gatesOfSides)', 'all sides together'],
    postsOpen: [
      'bays + gatesInAll + 1',
      'one more than the spaces between them: at a corner the last post of a side is the first of the next',
    ],
    postsClosed: ['bays + gatesInAll', 'the last space ends at the first post'],
  },
  work(
    { widestBay, runEnds, postWidth, tapeMark },
    { line, rows, has, put, tell, need, refuse, remark, table, system },
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
    const gatesOf = gatesOfSides()
    put(
      'gatesOfSides',
      gatesOf.map((count) => quantity(count, 'ratio')),
    )
    const gateCount = gatesOf.reduce((sum, count) => sum + count, 0)
    const gateTakes = gateCount > 0 ? line('gateCentres') : put('gateCentres', zero('length', 'in'))
    line('fencedSides')
    for (const [i, fenced] of rows('fencedSides').entries())
      if (!less(postWidth, fenced))
        refuse(
          'fenceSides',
          `On side ${i + 1}, ${show(centres[i] as Quantity)} between corner centres, ${show(quantity(gatesOf[i] as number, 'gate'))} of ${show(gateTakes)} between post centres ${gatesOf[i] === 1 ? 'leaves' : 'leave'} no room for a bay of more than a post’s width. Check the side and the gate’s opening.`,
        )
    line('baysOfSides')
    line('bayOfSides')
    line('bays')
    line('gatesInAll')
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
        ...(gateCount > 0 ? [{ label: 'gates', unit: '' }] : []),
        { label: 'bay, centre to centre, by the tape', unit },
        { label: 'posts between its ends', unit: '' },
      ],
      rows: sides.map((side, i) => {
        const count = Math.round(toNumber((counts[i] as Quantity).amount))
        const width = widths[i] as Quantity
        return [
          i + 1,
          show(side),
          count,
          ...(gateCount > 0 ? [gatesOf[i] as number] : []),
          show({ ...width, unit, amount: roundTo(width.amount, exactly(tapeMark)) }),
          count + (gatesOf[i] as number) - 1,
        ]
      }),
    })
    remark(
      `Of them ${show(corners)} stand${toNumber(corners.amount) === 1 ? 's' : ''} at corners, counted once though each serves two sides. Set the corner posts first, then divide the sides between them.`,
    )
    if (gateCount > 0)
      remark(
        'Each gate stands where two bays of its side meet, or beside a corner post where the side has one bay. Ask for that side on its own to get every post’s place.',
      )

    /** How many gates each side has. */
    function gatesOfSides(): number[] {
      const named = has('gateSides') ? rows('gateSides').map((it) => Math.round(toNumber(it.amount))) : []
      const count = has('gates') ? Math.round(toNumber((rows('gates')[0] as Quantity).amount)) : named.length
      if (count === 0 && !has('gateOpening') && named.length === 0) {
        remark('You did not mention a gate, so I took none.')
        return sides.map(() => 0)
      }
      if (count === 0 && has('gates')) {
        if (named.length > 0 || has('gateOpening'))
          refuse('gates', 'You speak of a gate and say that there is none. How many gates are there?')
        return sides.map(() => 0)
      }
      if (!has('gateOpening')) need('gateOpening')
      if (named.length === 0) need('gateSides')
      if (named.length !== 1 && named.length !== count)
        refuse(
          'gateSides',
          `You have ${show(quantity(count, 'gate'))} and named ${show(quantity(named.length, 'side'))}. Give one side for each gate, the same side twice where two gates are in it.`,
        )
      const beyond = named.find((it) => it > sides.length)
      if (beyond !== undefined)
        refuse('gateSides', `There is no side ${beyond}: you gave ${show(quantity(sides.length, 'side'))}.`)
      const each =
        named.length === 1 ? Array.from({ length: Math.min(count, mostGates + 1) }, () => named[0] as number) : named
      if (each.length > mostGates)
        refuse(
          'gates',
          `That is ${show(quantity(count, 'gate'))}. Give at most ${show(quantity(mostGates, 'gate'))} at a time.`,
        )
      return sides.map((_, i) => each.filter((it) => it === i + 1).length)
    }
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
    // Gate: 42 + 3 1/2 = 45 1/2 in; side 2: 720 − 45 1/2 = 674 1/2; / 96 = 7.03 → 8 bays; 5 + 8 + 5 = 18; + 1 gate + 1 = 20
    {
      ask: 'Fence on three sides, 40 ft, 60 ft and 40 ft, posts at most 8 ft apart, and one gate with an opening of 42 in, gate in side 2. How many posts with the corner posts shared?',
      given: {
        fenceSides: ['40 ft', '60 ft', '40 ft'],
        widestBay: '8 ft',
        gates: '1',
        gateOpening: '42 in',
        gateSides: '2',
      },
      expect: { posts: '20 posts', bays: '18 bays', cornersShared: '2 posts' },
    },
  ],
})
