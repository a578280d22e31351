// Pickets with as many gaps as there are pickets: half a gap at each post, or one picket tight against one post only.
//
//   ┃ █  █  █  █ ┃      half a gap at each post: the pattern runs on past the post at the same rhythm
//   ┃█  █  █  █  ┃      tight against one post, a whole gap at the other
//
//   opening = pickets × (width + gap), either way; only where the first picket stands differs
import { calculation } from '../../calculation.ts'
import { asManyGapsDrawing } from '../../drawings/bay.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { exactly, less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { evenMarks, markFromOneEnd, marksTable, mostPickets } from '../../running-marks.ts'
import { gapsAtPosts, halfAtEachPost, postGap, tightToOnePost } from '../../words/picket-patterns.ts'
import { gap, lastGap, opening, pickets, picketWidth, tapeGap, tapeMark, widestGap } from '../../words/pickets.ts'

export const asManyGaps = calculation({
  name: 'as-many-gaps',
  title: 'Pickets with half a gap at each post, or tight against one post only',
  answers:
    'How many pickets fill an opening with half a gap at each post, or with a picket tight against one post only, and the one gap that makes them come out even.',
  needs: { opening, picketWidth, widestGap, gapsAtPosts, tapeMark },
  gives: { pickets, gap, tapeGap, postGap, lastGap },
  headlines: ['pickets', 'tapeGap'],
  together: {
    pickets: ['pickets', 'tapeGap', 'postGap'],
    tapeGap: ['pickets', 'tapeGap', 'postGap'],
    gap: ['gap', 'tapeGap', 'postGap', 'pickets'],
    postGap: ['postGap', 'tapeGap', 'pickets'],
  },
  called: [...halfAtEachPost, ...tightToOnePost],
  locals: { first: 'length' },
  lines: {
    pickets: [
      'ceil(opening / (picketWidth + widestGap))',
      'every picket has one gap to itself: the fewest that keep every gap within your limit',
    ],
    gap: ['opening / pickets - picketWidth', 'the opening shared by the pickets, each with its gap'],
    tapeGap: ['round(gap, tapeMark)', 'the nearest mark on a tape'],
    halfGap: ['gap / 2', 'half of it stands at each post'],
    lastGap: [
      'opening - first - pickets * picketWidth - (pickets - 1) * tapeGap',
      'what would be left at the far post if you stepped the tape gap along from the first mark',
    ],
  },
  work(given, { line, put, tell, refuse, remark, table, system }) {
    const { opening, picketWidth, widestGap, gapsAtPosts, tapeMark } = given
    if (less(opening, picketWidth))
      refuse(
        'opening',
        `A ${show(picketWidth)} picket does not fit a ${show(opening)} opening. Check both measurements.`,
      )
    const count = line('pickets')
    if (compare(count.amount, mostPickets) === 1)
      refuse('opening', `${show(count)} are more than one bay can hold. Check both units, or give one bay at a time.`)
    const between = line('gap')
    if (compare(between.amount, exact(0)) === -1)
      refuse(
        'widestGap',
        `${show(count)} of ${show(picketWidth)} are more wood than a ${show(opening)} opening holds, and one fewer would leave a gap over ${show(widestGap)}. Allow a wider gap, or use narrower pickets.`,
      )
    line('tapeGap')
    const half = gapsAtPosts === 'half'
    const start = half ? exactly(line('halfGap')) : exact(0)
    tell('postGap', half ? { ...between, amount: start } : between)
    const pitch = exactly(between).add(exactly(picketWidth))
    const marks = evenMarks(start, pitch, exactly(count), exactly(tapeMark))
    put('first', { ...between, amount: marks[0]?.at ?? start })
    line('lastGap')
    table(marksTable(marks, system, half ? undefined : 'the post that has a picket against it'))
    remark(
      half
        ? `Half a gap, ${show({ ...between, amount: start })}, stands on each side of every post, so the pattern runs on from bay to bay. ${markFromOneEnd}`
        : `The first picket stands hard against its post, and a whole gap is left at the other. ${markFromOneEnd}`,
    )
  },
  sources: [{ fact: 'opening = pickets × (width + gap)', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['tools'],
  drawing: asManyGapsDrawing,
  examples: [
    // 92 1/2 / 6 = 15.4 → 16; 92 1/2 / 16 = 5 25/32; − 3 1/2 = 2 9/32; half 1 9/64; first mark 1 1/8;
    // 92 1/2 − 1 1/8 − 56 − 15 × 2 5/16 = 11/16
    {
      ask: 'How many 3 1/2 in pickets in a 92 1/2 in opening with half a gap at each post and gaps no wider than 2 1/2 in?',
      given: { opening: '92 1/2 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in', gapsAtPosts: 'half' },
      expect: {
        pickets: '16 pickets',
        gap: '2 9/32 in',
        postGap: '1 9/64 in',
        tapeGap: '2 5/16 in',
        lastGap: '11/16 in',
      },
    },
    // 88 1/2 / 6 1/2 = 13.6 → 14; 88 1/2 / 14 − 3 1/2 = 2 23/28; 88 1/2 − 49 − 13 × 2 13/16 = 2 15/16
    {
      ask: 'Opening 88 1/2 in, 3 1/2 in pickets, a picket tight against the left post only, gaps at most 3 in: how many pickets?',
      given: { opening: '88 1/2 in', picketWidth: '3 1/2 in', widestGap: '3 in', gapsAtPosts: 'one' },
      expect: { pickets: '14 pickets', gap: '2 23/28 in', tapeGap: '2 13/16 in', lastGap: '2 15/16 in' },
    },
    // 2400 / 100 = 24; 2400 / 24 − 70 = 30; half 15
    {
      ask: 'Half gaps at the posts: opening 2400 mm, 70 mm pickets, gaps at most 30 mm. How many pickets?',
      given: { opening: '2400 mm', picketWidth: '70 mm', widestGap: '30 mm', gapsAtPosts: 'half' },
      expect: { pickets: '24 pickets', gap: '30 mm', postGap: '15 mm' },
    },
  ],
})
