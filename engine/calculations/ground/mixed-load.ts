// A load of several kinds of things, each so many of so much, against what the vehicle takes.
//
//   12 bags × 25 kg  ▤▤▤▤▤▤▤▤▤▤▤▤┐
//    9 posts × 11 kg ▯▯▯▯▯▯▯▯▯   ├── all of it
//   ├──────── the vehicle ───────┤ over it, or room left
import { calculation } from '../../calculation.ts'
import { quantity, less, numberIn, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { payload, weightAboard } from '../../words/hauling.ts'
import { word } from '../../words/word.ts'

const loadCounts = word<'count'>('loadCounts', {
  kind: 'count',
  noun: 'piece',
  list: true,
  label: 'how many of each that is loaded',
  whole: true,
  measure: 'Kind by kind, in the order of their weights.',
  ask: 'How many of each are loaded?',
  called: {},
  possible: { least: '1' },
  plausible: { from: '1', to: '5000' },
})

const loadWeights = word<'mass'>('loadWeights', {
  kind: 'mass',
  list: true,
  label: 'weight of one, kind by kind',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'It is printed on a bag; weigh one post or board.',
  ask: 'What does one of each weigh?',
  called: {},
  possible: { above: '0 lb' },
  plausible: { from: '0.5 lb', to: '2000 lb' },
})

const looseWeights = word<'mass'>('looseWeights', {
  kind: 'mass',
  list: true,
  label: 'weighed whole, on top',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'What is no number of pieces: a box of screws, the iron parts.',
  ask: 'What else is there that is weighed whole?',
  called: {},
  possible: { above: '0 lb' },
})

const massOf = (name: string, label: string, measure: string) =>
  word<'mass'>(name, {
    kind: 'mass',
    label,
    units: { imperial: 'lb', metric: 'kg' },
    measure,
    ask: `${label}?`,
    called: {},
  })
const mixedWeight = massOf('mixedWeight', 'all that is loaded', 'Each number times its weight, added up.')
const overPayload = massOf('overPayload', 'more than the vehicle takes', 'All of it, less what the vehicle takes.')
const roomForMore = massOf('roomForMore', 'what could still be loaded', 'What the vehicle takes, less all of it.')

const loadFits = word<'verdict'>('loadFits', {
  kind: 'verdict',
  label: 'the load in one go',
  measure: 'All of it against what the vehicle takes.',
  ask: 'Is it overloaded?',
  called: {},
  says: { yes: 'within what it takes', no: 'over what it takes', unknown: 'cannot say whether it is too much' },
})

const mixedTrips = word<'count'>('mixedTrips', {
  kind: 'count',
  noun: 'trip',
  label: 'trips for all of it',
  whole: true,
  measure: 'Whole pieces, none of the trips heavier than the vehicle takes.',
  ask: 'How many trips is that?',
  called: {},
})

export const mixedLoad = calculation({
  name: 'mixed-load',
  title: 'A load of several kinds',
  answers:
    'What bags, posts and boards weigh together, by how much that is over or under what the vehicle takes, and how many trips.',
  needs: { loadCounts, loadWeights, looseWeights, payload, weightAboard },
  may: ['looseWeights', 'payload', 'weightAboard'],
  gives: { mixedWeight, loadFits, overPayload, roomForMore, mixedTrips },
  headlines: ['mixedWeight'],
  together: {
    loadFits: ['loadFits', 'overPayload', 'roomForMore', 'mixedWeight'],
    mixedTrips: ['mixedTrips', 'mixedWeight'],
  },
  locals: { takes: 'mass', leastTrips: 'count', withLoose: 'mass', counted: 'mass' },
  lines: {
    mixedWeight: ['sum(loadCounts * loadWeights)', 'so many of so much each, added up'],
    counted: ['sum(loadCounts * loadWeights)', 'so many of so much each, added up'],
    withLoose: ['counted + sum(looseWeights)', 'and what is weighed whole'],
    left: ['payload - sum(weightAboard)', 'people and tools aboard come off it'],
    overPayload: ['mixedWeight - takes', 'so much must stay behind'],
    roomForMore: ['takes - mixedWeight', 'so much could still go on'],
    leastTrips: ['ceil(mixedWeight / takes)', 'whole trips, none heavier than the vehicle takes'],
  },
  work({ payload: limit }, { line, put, rows, has, need, wants, tell, refuse, remark }) {
    const [counts, weights] = [rows('loadCounts'), rows('loadWeights')]
    if (counts.length !== weights.length)
      refuse('loadWeights', 'Give one weight for each number of things, in the same order.')
    if (has('looseWeights')) line('counted')
    const all = (has('looseWeights') ? tell('mixedWeight', line('withLoose')) : line('mixedWeight')) as Quantity
    if (!has('payload')) {
      if (wants('mixedWeight') && !wants('loadFits') && !wants('mixedTrips')) return
      need('payload')
    }
    const takes = put('takes', has('weightAboard') ? line('left') : limit) as Quantity
    if (!less(zero('mass', takes.unit), takes))
      refuse('weightAboard', `The people aboard weigh as much as the ${show(limit)} it takes, or more. Check both.`)
    const heavy = weights.find((it) => less(takes, it))
    if (heavy) refuse('loadWeights', `One piece of ${show(heavy)} is heavier than the ${show(takes)} it takes.`)
    const loose = has('looseWeights') ? rows('looseWeights') : []
    const tooMuch = loose.find((it) => less(takes, it))
    if (tooMuch)
      refuse(
        'looseWeights',
        `${show(tooMuch)}, weighed whole, is more than the ${show(takes)} it takes. Say how many pieces that is, and what one weighs.`,
      )
    const isOver = less(takes, all)
    tell('loadFits', !isOver)
    remark(`Decided by: ${show(all)} to load, and ${show(takes)} that it takes.`)
    line(isOver ? 'overPayload' : 'roomForMore')
    const least = line('leastTrips', 'trip') as Quantity
    const packed = tripsPacked(
      [...counts.map((it) => numberIn(it, it.unit)), ...loose.map(() => 1)],
      [...weights, ...loose].map((it) => numberIn(it, takes.unit)),
      numberIn(takes, takes.unit),
    )
    tell('mixedTrips', quantity(packed, 'trip'))
    if (packed > numberIn(least, least.unit))
      remark(
        `By weight alone ${show(least)} would do. I counted whole pieces, the heaviest first, each onto the first trip that has room.`,
      )
    remark(
      `The ${show(limit)} must be what it may carry${has('weightAboard') ? '' : ' beside its own weight and the people'}: a trailer’s own weight, and what its tongue puts on the car, are not in it.`,
    )
  },
  sources: [
    { fact: 'number × weight of one, added up, against what the vehicle takes', from: 'Derived here; needs no table.' },
  ],
  cautions: ['lifting'],
  examples: [
    // 12 × 25 = 300; 9 × 11 = 99; 399 − 350 = 49; 399 / 350 → 2
    {
      ask: 'My trailer is good for 350 kg. 12 bags at 25 kg and 9 posts at 11 kg: over or under, and by how much?',
      given: { loadCounts: ['12', '9'], loadWeights: ['25 kg', '11 kg'], payload: '350 kg' },
      expect: { mixedWeight: '399 kg', loadFits: 'over what it takes', overPayload: '49 kg', mixedTrips: '2 trips' },
    },
    // 10 × 50 = 500; 20 × 12 = 240; 740; 1000 − 180 = 820; 820 − 740 = 80
    {
      ask: 'The truck can carry 1000 lb and I weigh 180 lb. Is it overloaded with 10 bags of 50 lb and 20 posts of 12 lb?',
      given: { loadCounts: ['10', '20'], loadWeights: ['50 lb', '12 lb'], payload: '1000 lb', weightAboard: '180 lb' },
      expect: { mixedWeight: '740 lb', loadFits: 'within what it takes', roomForMore: '80 lb', mixedTrips: '1 trip' },
    },
  ],
})

/** How many trips it comes to in whole pieces, the heaviest first, each into the first trip that has room. */
function tripsPacked(counts: readonly number[], weights: readonly number[], takes: number): number {
  const room: number[] = []
  const kinds = weights.map((weight, i) => ({ weight, many: Math.min(counts[i] as number, 5000) }))
  for (const { weight, many } of kinds.sort((a, b) => b.weight - a.weight)) {
    let left = many
    for (let i = 0; i < room.length && left > 0; i++) {
      const fits = Math.min(left, Math.floor((room[i] as number) / weight + 1e-9))
      room[i] = (room[i] as number) - fits * weight
      left -= fits
    }
    const each = Math.max(1, Math.floor(takes / weight + 1e-9))
    while (left > 0) {
      const fits = Math.min(left, each)
      room.push(takes - fits * weight)
      left -= fits
    }
  }
  return room.length
}
