// Bays kept at one width, and three ways to place what is left over.
//
//   ●━━━━━━●━━━━━━●━━━━━━●━━●      whole bays and an odd last one
//   ●━━━━●━━━━━━●━━━━━━●━━━━●      whole bays and two ends that match
//   ●━━━━━●━━━━━●━━━━━●━━━━━●      all alike
import { calculation } from '../../calculation.ts'
import { bayPatternsDrawing } from '../../drawings/bay-patterns.ts'
import { compare, exact, roundTo, subtract, times, toNumber } from '../../quantities/amount.ts'
import { exactly, holdsMoreThan, less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { endBays, evenBay, fixedBay, oddBay, wholeBays } from '../../words/bay-patterns.ts'
import { gateOpening, gates, runEnds, runLength } from '../../words/bays.ts'
import { tapeMark } from '../../words/pickets.ts'
import { postWidth } from '../../words/posts.ts'

export const bayPatterns = calculation({
  name: 'bay-patterns',
  title: 'Whole bays, and what is left over',
  answers:
    'How many bays of a fixed width fit a run, how wide the odd last one is, how wide two matching end bays would be, and how wide all would be if they were alike.',
  needs: { runLength, fixedBay, runEnds, gates, gateOpening, postWidth, tapeMark },
  may: ['gates', 'gateOpening'],
  gives: { wholeBays, oddBay, endBays, evenBay },
  headlines: ['wholeBays', 'oddBay', 'endBays', 'evenBay'],
  together: {
    wholeBays: ['wholeBays', 'oddBay', 'endBays', 'evenBay'],
    oddBay: ['wholeBays', 'oddBay', 'endBays', 'evenBay'],
    endBays: ['endBays', 'wholeBays', 'oddBay', 'evenBay'],
  },
  called: [
    'whole bays',
    'full bays',
    'fixed bays',
    'odd last bay',
    'short bay',
    'last bay',
    'leftover bay',
    'end bays',
    'ends match',
    'full panels',
  ],
  locals: { centresRun: 'length' },
  lines: {
    centresOpen: ['runLength', 'measured between the centres of the end posts'],
    centresClear: ['runLength - postWidth', 'half a post stands at each end, so the centres are one post width closer'],
    gateCentres: ['gateOpening + postWidth', 'from gate post centre to gate post centre'],
    fenced: ['centresRun - gates * gateCentres', 'what is left to fill with bays'],
    wholeBays: ['floor(fenced / fixedBay)', 'as many as fit whole'],
    oddBay: ['fenced - wholeBays * fixedBay', 'what is left after them'],
    endBays: ['(oddBay + fixedBay) / 2', 'the odd one and one whole bay, shared between the two ends'],
    evenBay: ['fenced / (wholeBays + 1)', 'one bay more than the whole ones, all alike'],
  },
  work({ runLength, fixedBay, runEnds, postWidth, tapeMark, gates: toldGates }, tools) {
    const { line, has, put, need, refuse, remark, table } = tools
    const none = zero('length', 'in')
    const gates = has('gates') ? toldGates : put('gates', quantity(has('gateOpening') ? 1 : 0, 'gate'))
    const gateCount = Math.round(toNumber(gates.amount))
    if (gateCount > 0 && !has('gateOpening')) need('gateOpening')
    if (runEnds === 'loop')
      refuse('runEnds', 'A closed loop has no end where an odd bay could go. Give each side of the yard on its own.')
    if (!less(postWidth, fixedBay))
      refuse(
        'fixedBay',
        `Posts ${show(postWidth)} wide leave nothing between them at ${show(fixedBay)} centres. Check both measurements.`,
      )
    if (holdsMoreThan(mostBays, fixedBay, runLength))
      refuse(
        'runLength',
        `A run of ${show(runLength)} with bays of ${show(fixedBay)} has more bays than I can set out at once. Check both units, or give the run in parts.`,
      )
    put('centresRun', line(runEnds === 'centres' ? 'centresOpen' : 'centresClear'))
    if (gateCount > 0) line('gateCentres')
    else put('gateCentres', none)
    const fenced = line('fenced')
    if (less(fenced, fixedBay))
      refuse(
        'fixedBay',
        `Between the end posts ${gateCount > 0 ? 'and beside the gates ' : ''}there is ${show({ ...fenced, unit: fixedBay.unit })} to fill, less than one bay of ${show(fixedBay)}. Check the measurements.`,
      )
    const whole = line('wholeBays')
    const odd = line('oddBay')
    if (!less(none, odd)) {
      remark(`The run divides into ${show(whole)} of ${show(fixedBay)} with nothing left over, so no bay is odd.`)
      return
    }
    const end = line('endBays')
    const even = line('evenBay')
    const tape = (q: Quantity): string => show({ ...q, amount: roundTo(q.amount, exactly(tapeMark)) })
    const bays = Math.round(toNumber(whole.amount))
    const rowsOf = (way: string, what: string, narrowest: Quantity) => [
      way,
      what,
      bays + 1 + gateCount + 1,
      tape({ ...narrowest, amount: subtract(narrowest.amount, postWidth.amount) }),
    ]
    table({
      title: 'Three ways to place what is left over',
      columns: [
        { label: 'way', unit: '' },
        { label: 'bays, centre to centre, by the tape', unit: '' },
        { label: 'posts', unit: '' },
        { label: 'narrowest opening', unit: '' },
      ],
      rows: [
        rowsOf('an odd last bay', `${bays} of ${show(fixedBay)}, one of ${tape(odd)}`, odd),
        rowsOf(
          'ends that match',
          bays > 1
            ? `one of ${tape(end)}, ${bays - 1} of ${show(fixedBay)}, one of ${tape(end)}`
            : `two of ${tape(end)}`,
          end,
        ),
        rowsOf('all alike', `${bays + 1} of ${tape(even)}`, even),
      ],
    })
    if (!less(postWidth, odd))
      remark(
        `The odd bay of ${show(odd)} is no wider than a post, so its two posts would touch. Take one of the other two ways.`,
      )
    else if (compare(times(odd.amount, exact(2)), fixedBay.amount) === -1)
      remark(
        'An odd bay of less than half a bay looks like a slip. Put it where a gate, a shrub or the house hides it, or take ends that match.',
      )
    remark(
      'All three take as many posts. Whole bays save cutting when rails or panels come ready; bays all alike need one picket gap and one story stick.',
    )
    if (gateCount > 0) remark('A gate may stand between any two bays; where it stands changes none of these widths.')
  },
  sources: [
    {
      fact: 'odd bay = run − whole bays; matching ends share it with one whole bay',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  drawing: bayPatternsDrawing,
  examples: [
    // 100/8 = 12 rest 4 ft; (4 + 8)/2 = 6 ft; 100/13 = 92 4/13 in
    {
      ask: 'A run of 100 ft with full bays of 8 ft: how wide is the odd last bay, and how wide would matching end bays be?',
      given: { runLength: '100 ft', fixedBay: '8 ft' },
      expect: { wholeBays: '12 bays', oddBay: '48 in', endBays: '72 in', evenBay: '92 4/13 in' },
    },
    // between walls: 20,000 − 90 = 19,910; 8 × 2,400 = 19,200, rest 710; (710 + 2,400)/2 = 1,555; 19,910/9 = 2,212 2/9
    {
      ask: 'Between two walls 20 m apart, standard bays of 2.4 m centre to centre: how wide is the odd bay?',
      given: { runLength: '20 m', fixedBay: '2.4 m', runEnds: 'walls' },
      expect: { wholeBays: '8 bays', oddBay: '710 mm', endBays: '1,555 mm', evenBay: '2,212 2/9 mm' },
    },
  ],
})

const mostBays = 500
