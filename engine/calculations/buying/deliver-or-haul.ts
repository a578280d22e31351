// The delivery against your own trips: which costs less, your hours counted if you say what they are worth.
//
//   delivery ███████████████
//   trips    █████ █████ █████ ▒▒▒ ▒▒▒ ▒▒▒      fuel, and your hours
import { calculation } from '../../calculation.ts'
import { exact, toNumber } from '../../quantities/amount.ts'
import { equal, less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { cheaperHaul, haulSaves, ownHaulCost, ownHaulTime, tripCost, tripTime } from '../../words/delivery.ts'
import { trips } from '../../words/gravel.ts'
import { loadWeight, payload } from '../../words/hauling.ts'
import { hourWorth } from '../../words/hire.ts'
import { deliveryPrice, unweighedThings } from '../../words/take-off.ts'

export const deliverOrHaul = calculation({
  name: 'deliver-or-haul',
  title: 'Delivery or your own vehicle',
  answers:
    'Whether a delivery or so many trips with your own vehicle cost less, your hours counted if you say what they are worth, and how much is between them.',
  needs: { deliveryPrice, trips, loadWeight, unweighedThings, payload, tripCost, tripTime, hourWorth },
  may: ['trips', 'loadWeight', 'unweighedThings', 'payload', 'tripTime', 'hourWorth'],
  oneOf: [['trips', 'loadWeight']],
  gives: { cheaperHaul, haulSaves, ownHaulCost, ownHaulTime },
  headlines: ['cheaperHaul', 'haulSaves'],
  together: {
    cheaperHaul: ['cheaperHaul', 'ownHaulCost', 'haulSaves', 'ownHaulTime'],
    haulSaves: ['haulSaves', 'cheaperHaul', 'ownHaulCost'],
    ownHaulCost: ['ownHaulCost', 'ownHaulTime'],
  },
  locals: {
    oneHour: 'duration',
    cent: 'money',
    journeys: 'count',
    roadCost: 'money',
    dearer: 'money',
    cheaper: 'money',
  },
  lines: {
    loads: ['ceil(loadWeight / payload)', 'whole trips, none heavier than the vehicle takes'],
    roadCost: ['journeys * tripCost', 'every trip there and back'],
    ownHaulTime: ['journeys * tripTime', 'every trip, loading too'],
    ownHours: ['round(ownHaulTime / oneHour * hourWorth, cent)', 'your hours, at what they are worth to you'],
    withHours: ['roadCost + ownHours', 'the road and your hours'],
    onRoad: ['roadCost', 'the road alone'],
    haulSaves: ['dearer - cheaper', 'the dearer less the cheaper'],
  },
  work(given, { line, has, need, put, tell, doubt, remark }) {
    put('oneHour', quantity(1, 'h'))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: given.tripCost.unit })
    if (!has('trips') && !has('payload')) need('payload')
    const many = has('trips') ? given.trips : line('loads')
    put('journeys', { ...many, kind: 'count', unit: 'trip' })
    line('roadCost')
    if (has('tripTime')) line('ownHaulTime')
    const own = tell('ownHaulCost', countsHours() ? withHours() : line('onRoad'))
    const { deliveryPrice: delivery } = given
    const isOwn = less(own, delivery)
    tell('cheaperHaul', equal(own, delivery) ? 'both alike' : isOwn ? 'your own vehicle' : 'the delivery')
    put('dearer', isOwn ? delivery : own)
    put('cheaper', isOwn ? own : delivery)
    line('haulSaves')
    if (!countsHours())
      remark(
        has('tripTime')
          ? `Your ${show(given.tripTime)} a trip is not in the sum: say what an hour of yours is worth to you, and I count it.`
          : 'Your hours are not in it. Say how long a trip takes, and what an hour of yours is worth to you, and I count them.',
      )
    if (has('loadWeight') && has('unweighedThings') && toNumber(given.unweighedThings.amount) > 0)
      doubt(
        'missing',
        'loadWeight',
        `That is the least: ${show(given.unweighedThings)} in the take-off without a weight yet may take more trips. The take-off names them.`,
      )
    remark(
      'A delivery sets the load down where the lorry can stand: carrying it from there is yours either way. Your own vehicle must carry the weight on each trip, and the longest piece.',
    )

    function countsHours(): boolean {
      return has('tripTime') && has('hourWorth')
    }
    function withHours() {
      line('ownHours')
      return line('withHours')
    }
  },
  sources: [
    { fact: 'trips × what one costs, against the delivery', from: 'Arithmetic; needs no table.' },
    { fact: 'prices and hours', from: 'As you gave them.' },
  ],
  cautions: ['lifting'],
  examples: [
    // 3 × 14 = 42 < 79: 37 between
    {
      ask: 'Delivery is $79. I would make 3 trips and each trip costs $14 in gas. Is the delivery worth it?',
      given: { deliveryPrice: '$79', trips: '3', tripCost: '$14' },
      expect: { cheaperHaul: 'your own vehicle', ownHaulCost: '$42.00', haulSaves: '$37.00' },
    },
    // ⌈1900/700⌉ = 3; 3 × 6 = 18; 3 × 1.5 h = 4.5 h × 15 = 67.50; 85.50 > 45: 40.50
    {
      ask: 'Is it cheaper to have it delivered for £45? The load is 1900 kg, my trailer carries 700 kg, fuel is £6 a trip, a trip takes 90 minutes and my time is worth £15 an hour.',
      given: {
        deliveryPrice: '£45',
        loadWeight: '1900 kg',
        payload: '700 kg',
        tripCost: '£6',
        tripTime: '90 minutes',
        hourWorth: '£15',
      },
      expect: { cheaperHaul: 'the delivery', ownHaulCost: '£85.50', haulSaves: '£40.50', ownHaulTime: '4.5 hours' },
    },
  ],
})
