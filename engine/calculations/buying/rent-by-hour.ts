// A machine by the hour: what it comes to, with the least that is charged, and whether a day is cheaper.
//
//   │1│2│3│4│5│▒     an hour begun is paid
//   ├───────┤        and no less than this
//   ├──── a day at its own rate ────┤
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { rentADay } from '../../words/hire.ts'
import {
  cheaperRent,
  holesAnHour,
  holesWanted,
  hourRate,
  hoursCharged,
  hoursWanted,
  leastHours,
  rentByHours,
  rentsApart,
} from '../../words/rent-by-hour.ts'

export const rentByHour = calculation({
  name: 'rent-by-hour',
  title: 'A machine rented by the hour',
  answers:
    'What a machine costs by the hour, for a time or for so many holes, with the least time charged, and whether a day rate is cheaper.',
  needs: { hourRate, leastHours, hoursWanted, holesWanted, holesAnHour, rentADay },
  may: ['leastHours', 'hoursWanted', 'holesWanted', 'holesAnHour', 'rentADay'],
  oneOf: [['hoursWanted', 'holesWanted']],
  gives: { rentByHours, hoursCharged, cheaperRent, rentsApart },
  headlines: ['rentByHours'],
  together: {
    rentByHours: ['rentByHours', 'hoursCharged', 'cheaperRent', 'rentsApart'],
    cheaperRent: ['cheaperRent', 'rentsApart', 'rentByHours', 'hoursCharged'],
  },
  plain: true,
  locals: { oneHour: 'duration', needed: 'duration', paid: 'duration', cent: 'money' },
  lines: {
    toDig: ['holesWanted / holesAnHour * oneHour', 'so many holes, so many an hour'],
    begun: ['ceil(needed / oneHour) * oneHour', 'an hour begun is paid'],
    hoursCharged: ['paid', 'what they charge for'],
    rentByHours: ['round(paid / oneHour * hourRate, cent)', 'the hours that are paid, at the rate of one'],
    rentsApart: ['abs(rentByHours - rentADay)', 'the dearer less the cheaper'],
  },
  work(given, { line, has, put, tell, need, rows, refuse, remark }) {
    put('oneHour', quantity(1, 'h'))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: given.hourRate.unit })
    if (!has('hoursWanted') && !has('holesAnHour')) need('holesAnHour')
    put('needed', has('hoursWanted') ? (rows('hoursWanted')[0] as Quantity) : line('toDig', 'h'))
    const begun = line('begun', 'h')
    const isLeast = has('leastHours') && less(begun, given.leastHours)
    put('paid', isLeast ? given.leastHours : begun)
    if (isLeast) remark(`They charge for ${show(given.leastHours)} at the least, so that is what you pay.`)
    line('hoursCharged', 'h')
    const byHours = line('rentByHours')
    const unnamed = unnamedCurrency(given.hourRate)
    if (unnamed) remark(unnamed)
    if (has('rentADay')) {
      if (less(quantity(24, 'h'), begun))
        refuse('rentADay', `It takes ${show(begun)}, more than one day. Say how many hours a day you have it.`)
      tell(
        'cheaperRent',
        equal(byHours, given.rentADay) ? 'both alike' : less(byHours, given.rentADay) ? 'by the hour' : 'by the day',
      )
      line('rentsApart')
      if (less(quantity(10, 'h'), begun))
        remark(`I took it that one day does it. ${show(begun)} is a long one: two days cost twice as much.`)
    }
    remark('The way there and back, fuel and cleaning may run on the clock: ask.')
  },
  sources: [
    { fact: 'an hour begun is paid', from: 'common practice, no source' },
    { fact: 'rates and the least time', from: 'As you gave them.' },
  ],
  cautions: [],
  examples: [
    // 20 / 4 = 5 h × 30 = 150
    {
      ask: 'The auger digs 4 holes an hour and I have 20 holes. Rental is $30 an hour with a 3 hour minimum. What do I pay?',
      given: { hourRate: '$30', leastHours: '3 h', holesWanted: '20', holesAnHour: '4' },
      expect: { rentByHours: '$150.00', hoursCharged: '5 hours' },
    },
    // 2 h are charged as 4: 4 × 25 = 100; 120 − 100
    {
      ask: 'An auger rents for £25 an hour, 4 hour minimum, or £120 a day. I need it 2 hours. Which is cheaper?',
      given: { hourRate: '£25', leastHours: '4 h', hoursWanted: '2 h', rentADay: '£120' },
      expect: { cheaperRent: 'by the hour', rentByHours: '£100.00', rentsApart: '£20.00' },
    },
  ],
})
