// Trips by payload.
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import { eachTrip, haulTrips as trips, loadWeight, payload } from '../../words/hauling.ts'

export const haulTrips = calculation({
  name: 'haul-trips',
  title: 'Trips with your own vehicle',
  answers: 'How many trips a load takes by the payload of your vehicle, and how much goes on each.',
  needs: { loadWeight, payload },
  gives: { haulTrips: trips, eachTrip },
  headlines: ['haulTrips'],
  together: { haulTrips: ['haulTrips', 'eachTrip'] },
  called: ['payload', 'my truck', 'my trailer', 'pickup'],
  lines: {
    haulTrips: ['ceil(loadWeight / payload)', 'whole trips'],
    eachTrip: ['loadWeight / haulTrips', 'shared evenly'],
  },
  work({ payload }, { line, remark }) {
    const many = line('haulTrips')
    line('eachTrip')
    remark(
      `The ${show(payload)} must be what is left after people and tools; a trailer’s tongue counts too. The bed may be full before it is heavy, or too heavy long before it is full: stone is.`,
    )
    if (compare(many.amount, exact(4)) === 1) remark('For that many trips ask what a delivery costs.')
  },
  sources: [{ fact: 'trips = load ÷ payload, rounded up', from: 'Derived here; needs no table.' }],
  cautions: ['lifting'],
  examples: [
    {
      ask: 'A load of 2400 lb to haul with a truck payload of 1500 lb: how many trips?',
      given: { loadWeight: '2400 lb', payload: '1500 lb' },
      expect: { haulTrips: '2 trips', eachTrip: '1,200 lb' },
    },
    {
      ask: 'My trailer carries 750 kg and I have 1800 kg to haul. How many loads?',
      given: { loadWeight: '1800 kg', payload: '750 kg' },
      expect: { haulTrips: '3 trips', eachTrip: '600 kg' },
    },
  ],
})
