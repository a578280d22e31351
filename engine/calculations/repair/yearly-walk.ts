// What to look at each year along a fence, with the days: the walk, a short look half a year on, and next year's walk.
//
//   this year's walk ──── half a year ──── next year's walk
import { calculation } from '../../calculation.ts'
import { daysAfter, yearsAfter } from '../../quantities/calendar.ts'
import { show } from '../../quantities/show.ts'
import { posts } from '../../words/posts.ts'
import { halfWalk, nextWalk, walkDate, walkEach, walkTime } from '../../words/repair-work.ts'

// Half of a year, as days are counted.
const halfYear = 182

export const yearlyWalk = calculation({
  name: 'yearly-walk',
  title: 'Next year’s list: what to check along the fence, and when',
  answers: 'The list of checks for the yearly walk along a fence, with the days for them, and how long the walk takes.',
  needs: { walkDate, posts, walkEach },
  may: ['posts'],
  onlyFor: { walkEach: ['walkTime'] },
  gives: { nextWalk, halfWalk, walkTime },
  headlines: ['nextWalk', 'halfWalk'],
  together: { nextWalk: ['nextWalk', 'halfWalk', 'walkTime'] },
  lines: { walkTime: ['sum(posts) * walkEach', 'every post, one after the other'] },
  work({ walkDate }, { line, has, tell, refuse, remark, table }) {
    const next = yearsAfter(walkDate, 1)
    if (!next)
      return refuse(
        'walkDate',
        `I know the calendar up to 2199 only, so there is no walk a year after ${show(walkDate)}. Check the day.`,
      )
    const half = daysAfter(walkDate, halfYear)
    tell('halfWalk', half)
    tell('nextWalk', next)
    if (has('posts') && has('walkEach')) line('walkTime')
    const [now, then, again] = [show(walkDate), show(half), show(next)]
    table({
      title: 'The fence’s list: check, and write a number and a day beside each post',
      columns: [
        { label: 'day', unit: 'date' },
        { label: 'look at', unit: '' },
        { label: 'what to do', unit: '' },
      ],
      rows: [
        [now, 'each post, plumb', 'level on two faces; write down how far out, over what height'],
        [now, 'each post at the ground', 'screwdriver in, and a hand below the ground: how deep, on which face'],
        [now, 'soil, mulch, leaves', 'clear them off the wood; nothing banked against pickets'],
        [now, 'rails and pickets', 'loose screws, splits, soft ends; tighten, or longer screws'],
        [now, 'gates', 'both diagonals, gap at the hinge side top and bottom, latch, hinges'],
        [now, 'caps and end grain', 'loose caps, open ends: seal'],
        [now, 'finish', 'a few drops on the sunny side: do they soak in? Flaking, bare, grey?'],
        [then, 'gates and latches', 'swing, latch, screws; oil'],
        [then, 'posts that leaned', 'read again, same face, same height'],
        ['after each storm', 'the whole line', 'look along it; posts that moved, limbs, wires'],
        [again, 'all of it again', 'the same post numbers, beside last year’s'],
      ],
    })
    remark(
      `The days are counted from your walk on ${show(walkDate)}: half a year, and a year. Where the ground freezes, walk after the thaw; where clay dries out, at the end of the dry season: that is when posts have moved.`,
    )
    remark(
      'Number the posts once, from the same end, and keep the numbers: two readings of the same post tell more than any one.',
    )
  },
  sources: [{ fact: 'what is looked at, and twice a year', from: 'common practice, no source' }],
  cautions: ['lead', 'overhead-lines', 'utilities', 'lot-line', 'local-code'],
  examples: [
    // 182 days after 12 April 2026 is 11 October 2026; 26 posts × 4 min = 104 min = 1.733 h
    {
      ask: 'I walk the fence on 12 April 2026 and have 26 posts. What do I check each year?',
      given: { walkDate: '2026-04-12', posts: '26' },
      expect: { nextWalk: 'Monday 12 April 2027', halfWalk: 'Sunday 11 October 2026', walkTime: '1.733 hours' },
    },
    {
      ask: 'Yearly check: we inspected on 2026-09-01, when is the next walk?',
      given: { walkDate: '2026-09-01' },
      expect: { nextWalk: 'Wednesday 1 September 2027', halfWalk: 'Tuesday 2 March 2027' },
    },
  ],
})
