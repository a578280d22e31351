// One run of a fence with several: its bays, its gates where they are wanted, and where every post stands.
//
//   ◆────●────●──  gate  ──●────●────▌      ◆ a corner post, measured to its centre
//   0  where the tape is held                ▌ a post against a wall, half a post inside the measure
//
// Between two gates, and between a gate and an end, the bays are equal. Gates whose place nobody gave stand where two bays meet.
import { calculation, type Tools } from '../../calculation.ts'
import { runDrawing } from '../../drawings/run.ts'
import { measureFromStart, postCentres, postTable, type Space } from '../../post-centres.ts'
import { type Amount, add, exact, over, subtract, toNumber } from '../../quantities/amount.ts'
import { holdsMoreThan, less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bays, runLength, widestBay } from '../../words/bays.ts'
import { openings } from '../../words/bays-alike.ts'
import { bayRow, farEnd, gateOpenings, gatePlace, gateStarts, nearEnd, postStations } from '../../words/fence.ts'
import { tapeMark } from '../../words/pickets.ts'
import { posts, postWidth } from '../../words/posts.ts'

const mostBays = 500

export const runSetOut = calculation({
  name: 'run-set-out',
  title: 'One run set out, with its gates',
  answers:
    'How many bays a run of the fence has on each side of its gates, how wide each is, and where every post stands.',
  needs: { runLength, widestBay, nearEnd, farEnd, gateOpenings, gateStarts, gatePlace, postWidth, tapeMark },
  may: ['gateOpenings', 'gateStarts', 'gatePlace'],
  gives: { bays, posts, bayRow, openings, postStations },
  headlines: ['bays', 'posts'],
  together: { bays: ['bays', 'posts'], posts: ['posts', 'bays'] },
  ofTheFence: true,
  locals: { clearEnds: 'number', stretches: 'length', bayOf: 'length', gateCount: 'number' },
  lines: {
    centresRun: [
      'runLength - clearEnds * postWidth / 2',
      'from the first post’s centre to the last; at a wall or an outside face half a post stands inside the measure',
    ],
    gateCentres: ['gateOpenings + postWidth', 'from gate post centre to gate post centre'],
    fenced: ['centresRun - sum(gateCentres)', 'what is left to fill with bays'],
    eachSide: ['fenced / 2', 'as much on each side of a gate in the middle'],
    baysOf: ['ceil(stretches / widestBay)', 'the fewest that keep every bay within your limit'],
    bayOf: ['stretches / baysOf', 'shared equally'],
    openingOf: ['bayOf - postWidth', 'between post faces: what the pickets fill'],
    bays: ['sum(baysOf)', 'all of the run'],
    posts: ['bays + gateCount + 1', 'one more than the spaces between them, both ends counted'],
  },
  work(given, tools) {
    const { line, has, rows, put, tell, refuse, remark, doubt } = tools
    const { runLength, widestBay, postWidth } = given
    if (!less(postWidth, widestBay))
      refuse(
        'widestBay',
        `Posts ${show(postWidth)} wide leave nothing between them at ${show(widestBay)} centres. Check both measurements.`,
      )
    if (holdsMoreThan(mostBays, widestBay, runLength))
      refuse(
        'runLength',
        `A run of ${show(runLength)} with bays of ${show(widestBay)} has more bays than I can set out at once. Check both units, or give the run in parts.`,
      )
    const clear = [given.nearEnd, given.farEnd].filter((it) => it !== 'post').length
    put('clearEnds', quantity(clear, 'ratio'))
    const run = line('centresRun')
    if (!less(zero('length', 'in'), run))
      refuse('runLength', `A run of ${show(runLength)} is no longer than a post is wide. Check the length.`)
    const gates = has('gateOpenings') ? rows('gateOpenings').length : 0
    put('gateCount', quantity(gates, 'ratio'))
    if (gates > 0) line('gateCentres')
    const isMiddle = given.gatePlace === 'middle' && gates === 1
    const spaces = has('gateStarts')
      ? besideGates(tools, given.nearEnd, run)
      : isMiddle
        ? inTheMiddle(tools, run)
        : evenly(tools, run)
    tell('bays', { ...line('bays'), kind: 'count', unit: 'bay' })
    tell('posts', { ...line('posts'), kind: 'count', unit: 'post' })
    const unit = tools.system === 'metric' ? 'mm' : 'in'
    const bayWidths = spaces.filter((it) => it.what === 'bay').map((it): Quantity => ({ ...it.length, unit }))
    if (bayWidths.length === 0)
      refuse('runLength', 'The gates fill the whole run, so there is no bay. Check the measurements.')
    for (const bay of bayWidths)
      if (!less(postWidth, bay))
        refuse(
          gates > 0 ? 'gateStarts' : 'widestBay',
          `That leaves a bay of ${show(bay)} centre to centre, and ${show(postWidth)} posts leave nothing of it. Check the measurements, or move the gate.`,
        )
    tell('bayRow', bayWidths)
    tell(
      'openings',
      bayWidths.map((it): Quantity => ({ ...it, amount: subtract(it.amount, postWidth.amount) })),
    )
    const first = given.nearEnd === 'post' ? exact(0) : over(postWidth.amount, exact(2))
    const centres = postCentres(first, spaces, false, tools.system)
    tell('postStations', centres)
    tools.table(postTable(centres, spaces, given.tapeMark, tools.system))
    remark(measureFromStart('the start of the run'))
    if (gates > 0 && !has('gateStarts') && !isMiddle)
      if (gates >= bayWidths.length)
        doubt(
          'contradictory',
          'gateStarts',
          `${show(quantity(bayWidths.length, 'bay'))} ${bayWidths.length === 1 ? 'has' : 'have'} too few joints for ${show(quantity(gates, 'gate'))} between bays, so a gate stands at an end of the run or shares its post with another gate. Check that it may, or say where each gate starts.`,
        )
      else
        remark(
          'The place of the gate was not given, so it stands where two bays meet; any such place keeps the bays equal. Tell me how far along it starts if it must be elsewhere.',
        )
  },
  sources: [
    {
      fact: 'a run has one post more than it has spaces, both ends counted',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  drawing: runDrawing,
  examples: [
    // 700 − 3 1/2 = 696 1/2; gate 45 1/2; 651/96 = 6.78 → 7 bays of 93; 7 + 1 + 1 posts
    {
      ask: 'Set out the run: 700 in from a wall at one end to a wall, posts at most 8 ft apart, one gate.',
      given: { runLength: '700 in', widestBay: '8 ft', nearEnd: 'wall', farEnd: 'wall', gateOpenings: ['42 in'] },
      expect: { bays: '7 bays', posts: '9 posts' },
    },
    // 12 000 − 45 = 11 955; gates take 1 090 and 3 090; 3 000 → 2 bays, 7 000 − 4 090 = 2 910 → 2,
    // 11 955 − 10 090 = 1 865 → 1; 5 bays + 2 gates + 1 posts
    {
      ask: 'Set out the run of 12 m that ends at a wall, posts at most 2.4 m apart, two gates at 3 m and 7 m.',
      given: {
        runLength: '12 m',
        widestBay: '2.4 m',
        farEnd: 'wall',
        gateOpenings: ['1000 mm', '3000 mm'],
        gateStarts: ['3 m', '7 m'],
        postWidth: '90 mm',
      },
      expect: { bays: '5 bays', posts: '8 posts' },
    },
  ],
})

type Own = Tools<typeof runSetOut.needs>

const whole = (q: Quantity): number => Math.round(toNumber(q.amount))

/** Bays alike over the whole run; gates stand where bays meet, spread as evenly as may be. */
function evenly({ line, put, rows, worked, refuse }: Own, run: Quantity): Space[] {
  const fenced = worked('gateCentres') ? line('fenced') : run
  if (!less(zero('length', 'in'), fenced))
    refuse(
      'gateOpenings',
      `The gates with their posts take all of the ${show(run)} there is between end posts. Check the measurements.`,
    )
  put('stretches', [fenced])
  line('baysOf')
  line('bayOf')
  line('openingOf')
  const [count, bay] = [rows('baysOf')[0], rows('bayOf')[0]] as [Quantity, Quantity]
  const spaces: Space[] = Array.from({ length: whole(count) }, () => ({ length: bay, what: 'bay' }))
  const gates = worked('gateCentres') ? rows('gateCentres') : []
  const bays = spaces.length
  for (let g = gates.length; g >= 1; g--)
    spaces.splice(Math.round((g * bays) / (gates.length + 1)), 0, { length: gates[g - 1] as Quantity, what: 'gate' })
  return spaces
}

/** One gate with as much fence on each side of it. */
function inTheMiddle({ line, put, rows, refuse }: Own, run: Quantity): Space[] {
  if (!less(zero('length', 'in'), line('fenced')))
    refuse(
      'gateOpenings',
      `The gate with its posts takes all of the ${show(run)} there is between end posts. Check the measurements.`,
    )
  put('stretches', [line('eachSide'), line('eachSide')])
  line('baysOf')
  line('bayOf')
  line('openingOf')
  const half = Array.from(
    { length: whole(rows('baysOf')[0] as Quantity) },
    (): Space => ({ length: rows('bayOf')[0] as Quantity, what: 'bay' }),
  )
  return [...half, { length: rows('gateCentres')[0] as Quantity, what: 'gate' }, ...half]
}

/** Each gate where it was wanted, and equal bays in each stretch between. */
function besideGates({ line, put, rows, need, refuse, has }: Own, from: string, run: Quantity): Space[] {
  if (!has('gateOpenings')) need('gateOpenings')
  const [starts, takes] = [rows('gateStarts'), rows('gateCentres')]
  if (starts.length !== takes.length)
    refuse(
      'gateStarts',
      `I have ${show(quantity(takes.length, 'gate'))} in this run, and the places of ${show(quantity(starts.length, 'gate'))}. Say for each gate how far along it starts.`,
    )
  // The tape was held half a post before the first post's centre, where that stands at a wall or was measured outside.
  const half = from === 'post' ? exact(0) : over((rows('postWidth')[0] as Quantity).amount, exact(2))
  let at: Amount = exact(0)
  const all: Quantity[] = []
  for (const [i, start] of starts.entries()) {
    const begins = subtract(start.amount, half)
    const stretch: Quantity = { ...start, amount: subtract(begins, at) }
    if (less(stretch, zero('length', 'in')))
      refuse(
        'gateStarts',
        `Gate ${i + 1} cannot start at ${show(start)}: ${i === 0 ? 'half of the first post takes more' : 'the gate before it is not past yet'}. Check the measurements, and give the gates in the order you meet them.`,
      )
    all.push(stretch)
    at = add(begins, (takes[i] as Quantity).amount)
  }
  const last: Quantity = { ...run, amount: subtract(run.amount, at) }
  if (less(last, zero('length', 'in')))
    refuse(
      'gateStarts',
      `The last gate starts at ${show(starts.at(-1) as Quantity)} and runs past the end of the ${show(run)} between end posts. Check the measurements.`,
    )
  all.push(last)
  const filled = all.filter((it) => less(zero('length', 'in'), it))
  if (filled.length === 0)
    refuse('runLength', 'The gates fill the whole run, so there is no bay. Check the measurements.')
  put('stretches', filled)
  line('baysOf')
  line('bayOf')
  line('openingOf')
  const [counts, bays] = [rows('baysOf'), rows('bayOf')]
  return all.flatMap((stretch, i): Space[] => {
    const which = filled.indexOf(stretch)
    const gate: Space[] = i < takes.length ? [{ length: takes[i] as Quantity, what: 'gate' }] : []
    if (which < 0) return gate
    const length = bays[which] as Quantity
    return [
      ...Array.from({ length: whole(counts[which] as Quantity) }, (): Space => ({ length, what: 'bay' })),
      ...gate,
    ]
  })
}
