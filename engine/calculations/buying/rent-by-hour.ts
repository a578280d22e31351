// A machine by the hour: what it comes to, with the least that is charged, and whether a day is cheaper.
//
//   │1│2│3│4│5│▒     an hour begun is paid
//   ├───────┤        and no less than this
//   ├──── a day at its own rate ────┤
//   ├ first hours ┤─┤─┤              or these together, and a rate for each past them
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { rentADay } from '../../words/hire.ts'
import {
  cheaperRent,
  firstHours,
  firstHoursPrice,
  holesAnHour,
  holesWanted,
  hourRate,
  hoursCharged,
  hoursWanted,
  leastHours,
  rentByBegunHours,
  rentByHours,
  rentsApart,
  timeAHole,
  timeBeside,
} from '../../words/rent-by-hour.ts'

export const rentByHour = calculation({
  name: 'rent-by-hour',
  title: 'A machine rented by the hour',
  answers:
    'What a machine costs by the hour, for a time or for so many holes, with the least time charged, and whether a day rate is cheaper.',
  needs: {
    hourRate,
    leastHours,
    firstHours,
    firstHoursPrice,
    hoursWanted,
    holesWanted,
    holesAnHour,
    timeAHole,
    timeBeside,
    rentADay,
  },
  may: [
    'leastHours',
    'firstHours',
    'firstHoursPrice',
    'hoursWanted',
    'holesWanted',
    'holesAnHour',
    'timeAHole',
    'timeBeside',
    'rentADay',
  ],
  oneOf: [['hoursWanted', 'holesWanted']],
  gives: { rentByHours, rentByBegunHours, hoursCharged, cheaperRent, rentsApart },
  headlines: ['rentByHours'],
  together: {
    rentByHours: ['rentByHours', 'rentByBegunHours', 'hoursCharged', 'cheaperRent', 'rentsApart'],
    cheaperRent: ['cheaperRent', 'rentsApart', 'rentByHours', 'hoursCharged'],
    rentsApart: ['rentsApart', 'cheaperRent', 'rentByHours', 'rentByBegunHours', 'hoursCharged'],
  },
  plain: true,
  locals: {
    oneHour: 'duration',
    noTime: 'duration',
    digging: 'duration',
    needed: 'duration',
    paid: 'duration',
    cent: 'money',
  },
  lines: {
    toDig: ['holesWanted / holesAnHour * oneHour', 'so many holes, so many an hour'],
    atEach: ['holesWanted * timeAHole', 'so many holes, so long for each'],
    withOther: ['digging + timeBeside', 'what else is on the clock'],
    begun: ['ceil(needed / oneHour) * oneHour', 'an hour begun is paid'],
    hoursCharged: ['paid', 'what they charge for'],
    rentByHours: ['round(paid / oneHour * hourRate, cent)', 'the hours that are paid, at the rate of one'],
    past: ['max(needed - firstHours, noTime)', 'past the first hours'],
    withFirst: [
      'round(firstHoursPrice + past / oneHour * hourRate, cent)',
      'the first hours, and the rate for the rest',
    ],
    pastBegun: ['ceil(past / oneHour) * oneHour', 'whole hours past the first'],
    rentByBegunHours: [
      'round(firstHoursPrice + ceil(past / oneHour) * hourRate, cent)',
      'an hour begun past the first paid whole',
    ],
    rentsApart: ['abs(rentByHours - rentADay)', 'the dearer less the cheaper'],
  },
  work(given, { line, has, put, tell, need, rows, refuse, remark }) {
    put('oneHour', quantity(1, 'h'))
    put('noTime', quantity(0, 'h'))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: given.hourRate.unit })
    if (!has('hoursWanted') && !has('holesAnHour') && !has('timeAHole')) need('holesAnHour')
    if (has('firstHours') !== has('firstHoursPrice')) need(has('firstHours') ? 'firstHoursPrice' : 'firstHours')
    put('digging', has('hoursWanted') ? (rows('hoursWanted')[0] as Quantity) : byHoles())
    put('needed', has('timeBeside') ? line('withOther', 'h') : (rows('digging')[0] as Quantity))
    const begun = line('begun', 'h')
    const byHours = has('firstHours') ? pastFirst() : byTheHour()
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

    function byHoles(): Quantity {
      return line(has('timeAHole') ? 'atEach' : 'toDig', 'h')
    }
    function byTheHour(): Quantity {
      const isLeast = has('leastHours') && less(begun, given.leastHours)
      put('paid', isLeast ? given.leastHours : begun)
      if (isLeast) remark(`They charge for ${show(given.leastHours)} at the least, so that is what you pay.`)
      line('hoursCharged', 'h')
      return line('rentByHours')
    }
    function pastFirst(): Quantity {
      const past = line('past', 'h')
      const rent = tell('rentByHours', line('withFirst'))
      const isBegun = !equal(past, line('pastBegun', 'h'))
      if (isBegun) {
        const dearer = line('rentByBegunHours')
        const isDearerThanDay = has('rentADay') && less(given.rentADay, dearer) && !less(given.rentADay, rent)
        if (isDearerThanDay) remark(`If an hour begun is charged whole it is ${show(dearer)}, and a day is cheaper.`)
      }
      remark('I took the time past the first hours as it is. Ask whether an hour begun is charged whole.')
      return rent
    }
  },
  sources: [
    { fact: 'an hour begun is paid', from: 'common practice, no source' },
    { fact: 'rates and the least time', from: 'As you gave them.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole', 'lifting'],
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
    // 60 + 2.5 × 16 = 100; begun hours: 60 + 3 × 16 = 108
    {
      ask: 'The auger is $60 for the first 3 hours and $16 an hour after that. We need it five and a half hours. What will the rent be?',
      given: { firstHours: '3 h', firstHoursPrice: '$60', hourRate: '$16', hoursWanted: '5.5 h' },
      expect: { rentByHours: '$100.00', rentByBegunHours: '$108.00' },
    },
  ],
})
