// Trips by payload, by the room in the bed, and by count: the most of them govern.
import { calculation } from '../../calculation.ts'
import { compare, exact, toNumber } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  bedVolume,
  eachTrip,
  loadVolume,
  loadWeight,
  payload,
  piecesEachTrip,
  piecesToHaul,
  tripsByCount,
  tripsByVolume,
  tripsByWeight,
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

export const haulTrips = calculation({
  name: 'haul-trips',
  title: 'Trips with your own vehicle',
  answers:
    'How many trips a load takes by the payload of your vehicle, by the room in its bed, or by how many pieces go at once, which of them governs, and how much goes on each.',
  needs: { loadWeight, unweighedThings, payload, loadVolume, bedVolume, piecesToHaul, piecesEachTrip },
  may: ['loadWeight', 'unweighedThings', 'payload', 'loadVolume', 'bedVolume', 'piecesToHaul', 'piecesEachTrip'],
  oneOf: [['loadWeight', 'loadVolume', 'piecesToHaul']],
  gives: { trips, tripsByWeight, tripsByVolume, tripsByCount, eachTrip },
  headlines: ['trips'],
  together: { trips: ['trips', 'tripsByWeight', 'tripsByVolume', 'tripsByCount', 'eachTrip'] },
  called: ['payload', 'my truck', 'my trailer', 'pickup'],
  locals: { most: 'count' },
  lines: {
    tripsByWeight: ['ceil(loadWeight / payload)', 'whole trips, none heavier than the vehicle takes'],
    tripsByVolume: ['ceil(loadVolume / bedVolume)', 'whole trips, none fuller than the bed'],
    tripsByCount: ['ceil(piecesToHaul / piecesEachTrip)', 'whole trips, so many pieces at once'],
    trips: ['most', 'what asks for the most trips governs'],
    eachTrip: ['loadWeight / trips', 'shared evenly'],
  },
  work(given, { line, has, put, need, doubt, remark }) {
    const worked = ways.flatMap(([load, room, name, said]) =>
      has(load) && has(room) ? [{ name, said, many: line(name) }] : [],
    )
    const half = ways.find(([load, room]) => has(load) !== has(room) && has(load))
    const [first] = worked
    if (!first) return need(half ? half[1] : 'loadWeight')
    const governs = worked.reduce((most, it) => (less(most.many, it.many) ? it : most), first)
    put('most', governs.many as Quantity)
    const many = line('trips')
    if (has('loadWeight')) line('eachTrip')
    if (worked.length > 1)
      remark(
        `Decided by: ${governs.said}, ${show(governs.many)}. ${worked
          .filter((it) => it !== governs)
          .map((it) => `By ${it.said} it would be ${show(it.many)}.`)
          .join(' ')}`,
      )
    for (const [load, room] of ways)
      if (has(load) && !has(room))
        doubt('missing', room, `Without the ${capacities[room].label} that is not counted.`, capacities[room].ask)
    if (has('loadWeight') && has('unweighedThings') && toNumber(given.unweighedThings.amount) > 0)
      doubt(
        'missing',
        'loadWeight',
        `That is the least: ${show(given.unweighedThings)} in the take-off without a weight yet may take more trips. The take-off names them.`,
      )
    if (has('payload'))
      remark(
        `The ${show(given.payload)} must be what is left after people and tools; a trailer’s tongue counts too. The bed may be full before it is heavy, or too heavy long before it is full: stone is.`,
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
  ],
})
