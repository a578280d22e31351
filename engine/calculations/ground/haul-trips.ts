// Trips by payload, by the room in the bed, and by count: the most of them govern.
//
//   sticker in the door ├──────────────────────────────┤
//   people and tools    ├───┤
//   left for the load       ├─bag─┼─bag─┼─bag─┼─bag─┤      only whole bags go on
import { calculation } from '../../calculation.ts'
import { compare, exact, times, toNumber } from '../../quantities/amount.ts'
import { equal, less, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  bedVolume,
  eachTrip,
  hauledWeight,
  loadVolume,
  loadWeight,
  payload,
  payloadLeft,
  piecesAtOnce,
  piecesEachTrip,
  piecesToHaul,
  pieceWeight,
  tripsByCount,
  tripsByVolume,
  tripsByWeight,
  weightAboard,
} from '../../words/hauling.ts'
import { trips } from '../../words/gravel.ts'
import { unweighedThings } from '../../words/take-off.ts'

/** What is hauled, what one trip takes of it, the line, and how it is said. */
const ways = [
  ['loadWeight', 'payload', 'tripsByWeight', 'the weight'],
  ['loadVolume', 'bedVolume', 'tripsByVolume', 'the room in the bed'],
  ['piecesToHaul', 'piecesEachTrip', 'tripsByCount', 'the count'],
] as const

const capacities = { payload, bedVolume, piecesEachTrip }
/** What can be said before it is known how much there is to haul. */
const beforeTrips = ['piecesAtOnce', 'payloadLeft', 'hauledWeight'] as const

export const haulTrips = calculation({
  name: 'haul-trips',
  title: 'Trips with your own vehicle',
  answers:
    'How many trips a load takes by the payload of your vehicle, whole bags at a time and people taken off it, by the room in its bed, or by how many pieces go at once, which of them governs, and how much goes on each.',
  needs: {
    loadWeight,
    unweighedThings,
    payload,
    weightAboard,
    loadVolume,
    bedVolume,
    piecesToHaul,
    pieceWeight,
    piecesEachTrip,
  },
  may: [
    'loadWeight',
    'unweighedThings',
    'payload',
    'weightAboard',
    'loadVolume',
    'bedVolume',
    'piecesToHaul',
    'pieceWeight',
    'piecesEachTrip',
  ],
  oneOf: [['loadWeight', 'loadVolume', 'piecesToHaul', 'pieceWeight', 'weightAboard']],
  gives: {
    trips,
    tripsByWeight,
    tripsByVolume,
    tripsByCount,
    piecesAtOnce,
    eachTrip,
    hauledWeight,
    payloadLeft,
  },
  headlines: ['trips'],
  together: {
    trips: [
      'trips',
      'tripsByWeight',
      'tripsByVolume',
      'tripsByCount',
      'piecesAtOnce',
      'eachTrip',
      'hauledWeight',
      'payloadLeft',
    ],
    piecesAtOnce: ['piecesAtOnce', 'payloadLeft'],
  },
  called: ['payload', 'my truck', 'my trailer', 'pickup'],
  locals: { most: 'count', canCarry: 'mass', tripsByPieces: 'count' },
  lines: {
    hauledWeight: ['piecesToHaul * pieceWeight', 'so many pieces of so much each'],
    payloadLeft: ['payload - sum(weightAboard)', 'people and tools aboard come off the payload'],
    piecesAtOnce: ['floor(canCarry / pieceWeight)', 'whole pieces: no bag is cut in two to fill up the payload'],
    tripsByWeight: ['ceil(loadWeight / canCarry)', 'whole trips, none heavier than the vehicle takes'],
    tripsByPieces: ['ceil(piecesToHaul / piecesAtOnce)', 'whole trips, none heavier than the vehicle takes'],
    tripsByVolume: ['ceil(loadVolume / bedVolume)', 'whole trips, none fuller than the bed'],
    tripsByCount: ['ceil(piecesToHaul / piecesEachTrip)', 'whole trips, so many pieces at once'],
    trips: ['most', 'what asks for the most trips governs'],
    eachTrip: ['loadWeight / trips', 'shared evenly'],
    piecesOfEach: ['ceil(piecesToHaul / trips)', 'shared as evenly as whole pieces go'],
    weightOfEach: ['piecesOfEach * pieceWeight', 'the fullest of the trips'],
  },
  work(given, { line, has, put, tell, need, wants, worked: isWorked, refuse, doubt, remark }) {
    const isByPiece = has('piecesToHaul') && has('pieceWeight')
    if (isByPiece) line('hauledWeight')
    if (has('payload')) {
      const { payload: sticker, pieceWeight: one } = given
      const left = put('canCarry', has('weightAboard') ? line('payloadLeft') : sticker)
      if (!less(zero('mass', left.unit), left))
        refuse(
          'weightAboard',
          `The people and tools aboard weigh as much as the payload of ${show(sticker)}, or more: nothing is left for a load. Check both, or ride with fewer.`,
        )
      if (has('pieceWeight')) {
        if (less(left, one))
          refuse(
            'pieceWeight',
            `One piece of ${show(one)} is heavier than the ${show(left)} that the vehicle takes. Have it delivered, or split it.`,
          )
        line('piecesAtOnce')
      }
    }
    const worked = ways.flatMap(([load, room, name, said]) => {
      if (load === 'loadWeight' && isByPiece)
        return has(room) ? [{ name, said, many: tell(name, line('tripsByPieces', 'trip')) }] : []
      return has(load) && has(room) ? [{ name, said, many: line(name) }] : []
    })
    const half = ways.find(([load, room]) => has(load) !== has(room) && has(load))
    const [first] = worked
    if (!first) {
      if (!wants('trips') && beforeTrips.some((name) => wants(name) && isWorked(name))) return
      if (!has('payload') && (has('pieceWeight') || has('weightAboard'))) need('payload')
      if (has('pieceWeight')) need('piecesToHaul')
      // “How many trips for 30 bags?”: what a vehicle takes is rarely known in bags.
      if (has('piecesToHaul') && !has('loadWeight')) {
        if (!has('payload')) need('payload')
        need('pieceWeight')
      }
      return need(half ? half[1] : 'loadWeight')
    }
    const governs = worked.reduce((most, it) => (less(most.many, it.many) ? it : most), first)
    put('most', governs.many as Quantity)
    const many = line('trips')
    if (isByPiece) {
      line('piecesOfEach')
      tell('eachTrip', line('weightOfEach'))
    } else if (has('loadWeight')) line('eachTrip')
    if (worked.length > 1)
      remark(
        `Decided by: ${governs.said}, ${show(governs.many)}. ${worked
          .filter((it) => it !== governs)
          .map((it) => `By ${it.said} it would be ${show(it.many)}.`)
          .join(' ')}`,
      )
    for (const [load, room] of ways)
      if (has(load) && !has(room) && !(isByPiece && room === 'piecesEachTrip' && has('payload')))
        doubt('missing', room, `Without the ${capacities[room].label} that is not counted.`, capacities[room].ask)
    if (isByPiece && has('loadWeight') && !equal(weightOf(given), given.loadWeight))
      doubt(
        'contradictory',
        'loadWeight',
        `You gave me pieces of ${show(given.pieceWeight)} and ${show(given.loadWeight)} in all, which is not the same. I counted the pieces alone.`,
      )
    if (!isByPiece && has('loadWeight') && has('unweighedThings') && toNumber(given.unweighedThings.amount) > 0)
      doubt(
        'missing',
        'loadWeight',
        `That is the least: ${show(given.unweighedThings)} in the take-off without a weight yet may take more trips. The take-off names them.`,
      )
    if (has('payload'))
      remark(
        `${has('weightAboard') ? `All who ride along must be in what came off the ${show(given.payload)}` : `The ${show(given.payload)} must be what is left after people and tools`}; a trailer’s tongue counts too. The bed may be full before it is heavy, or too heavy long before it is full: stone is.`,
      )
    else
      remark(
        'No weight is counted in that. Stone, wet soil and bags of mix are too heavy long before the bed is full: tell me the weight and the payload.',
      )
    if (compare(many.amount, exact(4)) === 1) remark('For that many trips ask what a delivery costs.')
  },
  sources: [
    {
      fact: 'trips = load ÷ what one trip takes, rounded up; the most of them governs',
      from: 'Derived here; needs no table.',
    },
    {
      fact: 'of pieces only whole ones go on a trip; people and tools aboard come off the payload',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['lifting'],
  examples: [
    // 2400/1500 = 1.6 → 2
    {
      ask: 'A load of 2400 lb to haul with a truck payload of 1500 lb: how many trips?',
      given: { loadWeight: '2400 lb', payload: '1500 lb' },
      expect: { trips: '2 trips', eachTrip: '1,200 lb' },
    },
    {
      ask: 'My trailer carries 750 kg and I have 1800 kg to haul. How many loads?',
      given: { loadWeight: '1800 kg', payload: '750 kg' },
      expect: { trips: '3 trips', eachTrip: '600 kg' },
    },
    // 2400/1500 → 2; 4/1.5 → 3, and that governs; 2400/3
    {
      ask: 'A load of 2400 lb of mulch, 4 yd3 loose, with a truck payload of 1500 lb and a truck bed of 1.5 yd3: how many trips?',
      given: { loadWeight: '2400 lb', payload: '1500 lb', loadVolume: '4 yd3', bedVolume: '1.5 yd3' },
      expect: { trips: '3 trips', tripsByWeight: '2 trips', tripsByVolume: '3 trips', eachTrip: '800 lb' },
    },
    // 46/12 → 4
    {
      ask: 'How many trips with my truck for 46 bags, 12 bags each trip?',
      given: { piecesToHaul: '46', piecesEachTrip: '12' },
      expect: { trips: '4 trips' },
    },
    // 34 × 80 = 2720; 1480 − 190 = 1290; 1290/80 = 16.125 → 16; 34/16 = 2.125 → 3; ⌈34/3⌉ = 12, × 80 = 960
    {
      ask: 'How many trips to haul 34 bags weighing 80 lb each, payload sticker 1480 lb, driver weighs 190 lb?',
      given: { piecesToHaul: '34', pieceWeight: '80 lb', payload: '1480 lb', weightAboard: '190 lb' },
      expect: {
        trips: '3 trips',
        piecesAtOnce: '16 pieces',
        eachTrip: '960 lb',
        hauledWeight: '2,720 lb',
        payloadLeft: '1,290 lb',
      },
    },
    // 620 − 82 − 61 = 477; 477/55 = 8.67 → 8; 25/8 → 4, where 1375/477 = 2.9 would have been 3; ⌈25/4⌉ = 7, × 55
    {
      ask: 'My trailer is rated for 620 kg, I weigh 82 kg and my wife weighs 61 kg. How many trips for 25 blocks of 55 kg each?',
      given: { piecesToHaul: '25', pieceWeight: '55 kg', payload: '620 kg', weightAboard: ['82 kg', '61 kg'] },
      expect: { trips: '4 trips', piecesAtOnce: '8 pieces', eachTrip: '385 kg', payloadLeft: '477 kg' },
    },
  ],
})

const weightOf = ({ piecesToHaul: many, pieceWeight: one }: { piecesToHaul: Quantity; pieceWeight: Quantity }) => ({
  ...one,
  amount: times(many.amount, one.amount),
})
