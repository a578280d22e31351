// Equal bays in one run, no wider than a given spacing, with gates as openings.
//
//   ●────────●────────●   gate   ●────────●
//   ◄─ bay ─►                               posts stand at the ends of bays; a gate stands between two of them
//
// A gate takes its opening and one post width between post centres. Unless its place is given, it goes where two bays meet.
// A place that is given counts from where the tape was held: from a wall or an outside face, the first post's centre is half a post further.
import { calculation } from '../../calculation.ts'
import { runDrawing } from '../../drawings/run.ts'
import { compare, isExact, over, subtract, times, exact, toNumber, type Amount } from '../../quantities/amount.ts'
import { holdsMoreThan, less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { measureFromStart, postCentres, postTable, type Space } from '../../post-centres.ts'
import { bayCentres, bays, gateOpening, gates, gateStart, runEnds, runLength, widestBay } from '../../words/bays.ts'
import { opening, tapeMark } from '../../words/pickets.ts'
import { posts, postWidth } from '../../words/posts.ts'

export const baysInRun = calculation({
  name: 'bays-in-run',
  title: 'Equal bays in one run',
  answers:
    'How many equal bays a run divides into, how far apart the posts stand, how many posts, and where each post goes.',
  needs: { runLength, widestBay, runEnds, gates, gateOpening, gateStart, postWidth, tapeMark },
  may: ['gates', 'gateStart', 'gateOpening'],
  gives: { bays, bayCentres, opening, posts },
  headlines: ['bays', 'bayCentres', 'posts'],
  together: {
    bayCentres: ['bays', 'bayCentres', 'posts'],
    bays: ['bays', 'bayCentres', 'posts'],
    posts: ['posts', 'bays'],
  },
  joins: true,
  locals: { centresRun: 'length', before: 'length' },
  lines: {
    centresOpen: ['runLength', 'measured between the centres of the end posts'],
    centresClear: ['runLength - postWidth', 'half a post stands at each end, so the centres are one post width closer'],
    gateCentres: ['gateOpening + postWidth', 'from gate post centre to gate post centre'],
    fenced: ['centresRun - gates * gateCentres', 'what is left to fill with bays'],
    bays: ['ceil(fenced / widestBay)', 'the fewest that keep every bay within your limit'],
    bayCentres: ['fenced / bays', 'shared equally'],
    opening: ['bayCentres - postWidth', 'between post faces: what the pickets fill'],
    postsOpen: ['bays + gates + 1', 'one more than the spaces between them'],
    postsLoop: ['bays + gates', 'the last space ends at the first post'],
    beforeOpen: ['gateStart', 'from the centre of the first post to that of the gate post'],
    beforeClear: ['gateStart - postWidth / 2', 'the tape was held half a post before the centre of the first post'],
    after: ['centresRun - before - gateCentres', 'from the gate to the last post'],
    baysBefore: ['ceil(before / widestBay)', 'the fewest on the near side of the gate'],
    baysAfter: ['ceil(after / widestBay)', 'the fewest on the far side of the gate'],
    bayBefore: ['before / baysBefore', 'shared equally on the near side'],
    bayAfter: ['after / baysAfter', 'shared equally on the far side'],
    baysBoth: ['baysBefore + baysAfter', 'both sides of the gate together'],
    postsSplit: ['baysBoth + gates + 1', 'one more than the spaces between them'],
  },
  work({ runEnds, gateStart, runLength, widestBay, postWidth }, tools) {
    const { line, has, rows, tell, need, refuse, remark, doubt } = tools
    const none = zero('length', 'in')
    const gates = has('gates')
      ? (rows('gates')[0] as Quantity)
      : tools.put('gates', quantity(has('gateOpening') ? 1 : 0, 'gate'))
    if (!has('gates'))
      remark(
        has('gateOpening')
          ? 'You gave one gate opening, so I took one gate.'
          : 'You did not mention a gate in this run, so I took none.',
      )
    const gateCount = Math.round(toNumber(gates.amount))
    if (gateCount === 0 && has('gateOpening'))
      doubt(
        'contradictory',
        'gates',
        `You gave a gate opening of ${show(rows('gateOpening')[0] as Quantity)} and said that there is no gate. I reckoned without one.`,
        'How many gates are in the run?',
      )
    if (gateCount > 0 && !has('gateOpening')) need('gateOpening')
    if (!less(postWidth, widestBay))
      refuse(
        'widestBay',
        `Posts ${show(postWidth)} wide leave nothing between them at ${show(widestBay)} centres. Check both measurements.`,
      )

    const clear = runEnds === 'walls' || runEnds === 'outside'
    if (holdsMoreThan(mostBays, widestBay, runLength))
      refuse(
        'runLength',
        `A run of ${show(runLength)} with bays of ${show(widestBay)} has more bays than I can set out at once. Check both units, or give the run in parts.`,
      )
    const between = tools.put('centresRun', line(clear ? 'centresClear' : 'centresOpen'))
    if (!less(none, between))
      refuse('runLength', `A run of ${show(runLength)} is no longer than a post is wide. Check the length.`)
    const gateTakes = gateCount > 0 ? line('gateCentres') : tools.put('gateCentres', none)

    if (has('gateStart')) {
      if (gateCount !== 1)
        refuse(
          'gateStart',
          `A place for the gate goes with one gate, and you have ${gateCount}. Give each part of the run on its own.`,
        )
      if (runEnds === 'loop')
        refuse('gateStart', 'In a closed loop, start at a gate post and leave the place of the gate out.')
      const before = tools.put('before', line(clear ? 'beforeClear' : 'beforeOpen'))
      if (less(before, none))
        refuse(
          'gateStart',
          `The first gate post’s centre cannot stand ${show(gateStart)} from ${startOf(runEnds)}: half of a ${show(postWidth)} post takes more. Check both measurements.`,
        )
      const after = line('after')
      if (less(after, none))
        refuse(
          'gateStart',
          `A gate that starts at ${show(gateStart)} and takes ${show(gateTakes)} runs past the end of the ${show(between)} between end posts. Check the three measurements.`,
        )
      for (const [length, count, each, side] of [
        [before, 'baysBefore', 'bayBefore', 'before'],
        [after, 'baysAfter', 'bayAfter', 'after'],
      ] as const) {
        line(count)
        if (!less(none, length)) continue
        const bay = line(each)
        if (!less(postWidth, bay))
          refuse(
            'gateStart',
            `That leaves a bay of ${show({ ...bay, unit: exactUnit(tools.system) })} centre to centre ${side} the gate, and ${show(postWidth)} posts leave nothing of it. Put the gate against the end post, or further from it.`,
          )
      }
      tell('bays', { ...line('baysBoth'), kind: 'count', unit: 'bay' })
      const [near, other] = ['bayBefore', 'bayAfter'].map((name) => (tools.worked(name) ? rows(name)[0] : undefined))
      const wider = near && other ? (less(near, other) ? other : near) : (near ?? other)
      if (!wider) refuse('runLength', 'The gate fills the whole run, so there is no bay. Check the measurements.')
      tell('bayCentres', { ...(wider as Quantity), unit: tools.system === 'metric' ? 'mm' : 'ft' })
      line('opening')
      if (near && other)
        remark(
          `On the near side the bays are ${tools.cite({ ...near, unit: bayUnit(tools.system) }, 'bay before the gate')}, on the far side ${tools.cite({ ...other, unit: bayUnit(tools.system) }, 'bay after the gate')}, centre to centre. The wider is shown as the bay.`,
        )
      tell('posts', { ...line('postsSplit'), kind: 'count', unit: 'post' })
      stations(
        tools,
        [
          ...repeat(rows('baysBefore')[0], near, 'bay'),
          { length: gateTakes, what: 'gate' as const },
          ...repeat(rows('baysAfter')[0], other, 'bay'),
        ],
        runEnds,
      )
      return
    }

    const fenced = line('fenced')
    if (!less(none, fenced))
      refuse(
        'runLength',
        `The gates take ${show({ ...gateTakes, amount: times(gateTakes.amount, gates.amount) })} between post centres, which is all of the ${show(between)} there is. Check the measurements.`,
      )
    const count = line('bays')
    const each = line('bayCentres')
    if (!less(postWidth, each))
      refuse(
        'widestBay',
        `Bays of ${show(each)} leave nothing between ${show(postWidth)} posts. Check the measurements.`,
      )
    line('opening')
    tell('posts', { ...line(runEnds === 'loop' ? 'postsLoop' : 'postsOpen'), kind: 'count', unit: 'post' })
    const spaces: Space[] = repeat(count, each, 'bay')
    // Gates are put where bays meet, spread as evenly as may be: it keeps every bay equal. Any other joint does as well.
    const bayCount = spaces.length
    for (let g = gateCount; g >= 1; g--)
      spaces.splice(Math.round((g * bayCount) / (gateCount + 1)), 0, { length: gateTakes, what: 'gate' })
    stations(tools, spaces, runEnds)
    if (gateCount >= bayCount)
      doubt(
        'contradictory',
        'gates',
        `${show(count)} ${bayCount === 1 ? 'has' : 'have'} too few joints for ${show(gates)} between bays, so a gate stands at an end of the run or shares its post with another gate. Check that it may, or give each part of the run on its own.`,
      )
    else if (gateCount > 0)
      remark(
        'The place of the gate was not given, so it stands where two bays meet; any such place keeps the bays equal. Tell me where it starts if it must be elsewhere.',
      )
    if (runEnds === 'loop')
      doubt(
        'contradictory',
        'runLength',
        'Equal bays around a loop seldom put a post on every corner. Ask for each side on its own if the yard has corners; a corner post then counts for both sides.',
      )
    if (isExact(fenced.amount) && isExact(widestBay.amount) && fenced.amount.div(widestBay.amount).d === 1n)
      remark('The run divides exactly by your limit, so no bay is to spare.')
    const fewer = subtract(count.amount, exact(1))
    if (compare(fewer, exact(0)) === 1)
      remark(
        `One bay fewer would make them ${tools.cite({ ...each, amount: over(fenced.amount, fewer) }, 'bay, with one bay fewer')}, which is over your limit of ${show(widestBay)}.`,
      )
  },
  sources: [
    {
      fact: 'an open run has one post more than it has spaces; a closed loop has as many',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  drawing: runDrawing,
  examples: [
    {
      // 100/8 = 12.5 → 13; 100 ft/13 = 92 4/13 in = 7 ft 8 4/13 in; less 3 1/2; 13 + 1
      ask: 'A run of 100 ft between post centers, posts no more than 8 ft apart: how many bays and posts?',
      given: { runLength: '100 ft', widestBay: '8 ft', runEnds: 'centres' },
      expect: { bays: '13 bays', bayCentres: '7 ft 8 4/13 in', opening: '88 21/26 in', posts: '14 posts' },
    },
    {
      // 8.4 ÷ 1.2 = 7 exactly, where floating point says 7.000000000000001
      ask: 'Run 8.4 m, posts at most 1.2 m apart: how many bays?',
      given: { runLength: '8.4 m', widestBay: '1.2 m', runEnds: 'centres', postWidth: '100 mm' },
      expect: { bays: '7 bays', bayCentres: '1,200 mm', opening: '1,100 mm', posts: '8 posts' },
    },
    {
      // between walls: 60 ft = 720 − 3.5 = 716.5; gate 42 + 3.5 = 45.5; 671/96 = 6.99 → 7; 671/7 = 95 6/7; posts 7 + 1 + 1
      ask: 'Between two walls 60 ft apart, one 42 in gate, bays of at most 8 ft: how many posts?',
      given: { runLength: '60 ft', widestBay: '8 ft', runEnds: 'walls', gates: '1', gateOpening: '42 in' },
      expect: { bays: '7 bays', bayCentres: '7 ft 11 6/7 in', posts: '9 posts' },
    },
    {
      // a loop: 200/8 = 25 bays, 25 posts
      ask: 'A closed loop of 200 ft with posts at most 8 ft apart: how many posts?',
      given: { runLength: '200 ft', widestBay: '8 ft', runEnds: 'loop' },
      expect: { bays: '25 bays', bayCentres: '8 ft', posts: '25 posts' },
    },
  ],
})

const mostBays = 500

type Tools = Parameters<typeof baysInRun.work>[1]

const exactUnit = (system: 'imperial' | 'metric'): string => (system === 'metric' ? 'mm' : 'in')
const bayUnit = (system: 'imperial' | 'metric'): string => (system === 'metric' ? 'mm' : 'ft')

const repeat = (count: Quantity | undefined, length: Quantity | undefined, what: Space['what']): Space[] =>
  count && length ? Array.from({ length: Math.round(toNumber(count.amount)) }, () => ({ length, what })) : []

/** Where the tape is held at the start of the run. */
const startOf = (ends: string): string =>
  ends === 'walls'
    ? 'the wall'
    : ends === 'outside'
      ? 'the outside face of the first post'
      : 'the centre of the first post'

/** Every post, measured from the first (or from the wall, when there is one). */
function stations(tools: Tools, spaces: readonly Space[], ends: string): void {
  const { rows, system, table, remark } = tools
  const first: Amount =
    ends === 'walls' || ends === 'outside' ? over((rows('postWidth')[0] as Quantity).amount, exact(2)) : exact(0)
  const centres = postCentres(first, spaces, ends === 'loop', system)
  table(postTable(centres, spaces, rows('tapeMark')[0] as Quantity, system))
  remark(measureFromStart(startOf(ends)))
}
