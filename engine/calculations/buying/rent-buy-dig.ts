// A machine for the holes: rented, bought, or done without. Where one becomes cheaper than the next.
//
//   cost │        hand ╱            by hand every hole costs its minutes;
//        │    ┌──────╱── rent       rented, a day is paid however few the holes;
//        │────┘    ╱                bought, the price is paid once
//        └──────╱──────── holes
import { calculation } from '../../calculation.ts'
import { breakEvenDrawing } from '../../drawings/break-even.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { equal, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dayHours, holeTime } from '../../words/digging.ts'
import {
  buyDays,
  cheapestDigging,
  hoursSaved,
  hourWorth,
  machineHoleTime,
  machinePrice,
  machineResale,
  rentADay,
  rentedDays,
  rentHoles,
  rentInAll,
  savedHourCost,
} from '../../words/hire.ts'
import { posts } from '../../words/posts.ts'

const byHoles = ['rentedDays', 'rentInAll', 'hoursSaved', 'savedHourCost', 'cheapestDigging']

export const rentBuyDig = calculation({
  name: 'rent-buy-dig',
  title: 'Rent a machine, buy one, or dig by hand',
  answers:
    'From how many holes a rented day pays, after how many days of rent buying would, and what each spared hour of digging costs.',
  needs: { rentADay, machinePrice, machineResale, holeTime, machineHoleTime, hourWorth, posts, dayHours },
  may: ['machineResale'],
  onlyFor: {
    machinePrice: ['buyDays'],
    holeTime: ['rentHoles', 'hoursSaved', 'savedHourCost', 'cheapestDigging'],
    machineHoleTime: ['rentHoles', ...byHoles],
    hourWorth: ['rentHoles', 'cheapestDigging'],
    posts: byHoles,
    dayHours: byHoles,
  },
  gives: { rentHoles, buyDays, rentedDays, rentInAll, hoursSaved, savedHourCost, cheapestDigging },
  headlines: ['savedHourCost', 'rentHoles', 'buyDays'],
  together: {
    savedHourCost: ['savedHourCost', 'hoursSaved', 'rentInAll', 'rentedDays'],
    cheapestDigging: ['cheapestDigging', 'savedHourCost', 'rentInAll'],
    rentInAll: ['rentInAll', 'rentedDays'],
  },
  called: ['renting an auger', 'rent an auger', 'hiring an auger', 'hire an auger', 'auger rental', 'auger hire'],
  locals: {
    oneHour: 'duration',
    cent: 'money',
    nothing: 'money',
    byHand: 'money',
    rented: 'money',
    bought: 'money',
    outlay: 'money',
  },
  lines: {
    outlay: ['machinePrice - machineResale', 'what it costs you in the end'],
    outlayWhole: ['machinePrice', 'kept, or not to be sold'],
    buyDays: ['ceil(outlay / rentADay)', 'so many days of rent cost as much'],
    savedEach: ['holeTime - machineHoleTime', 'what the machine spares you at every hole'],
    savedWorth: ['savedEach / oneHour * hourWorth', 'and what that is worth to you'],
    rentHoles: ['ceil(rentADay / savedWorth)', 'so many holes spare you as much as a day’s rent'],
    holesInADay: ['floor(dayHours / machineHoleTime)', 'whole holes that fit a rented day'],
    rentedDays: ['ceil(sum(posts) / holesInADay)', 'a day begun is paid'],
    rentInAll: ['rentedDays * rentADay', 'for all the holes'],
    handTime: ['sum(posts * holeTime)', 'all the holes by hand'],
    machineTime: ['sum(posts * machineHoleTime)', 'all the holes with the machine'],
    hoursSaved: ['handTime - machineTime', 'what it spares you in all'],
    savedHourCost: ['round(rentInAll / (hoursSaved / oneHour), cent)', 'the rent, shared by the hours it spares'],
    byHand: ['round(handTime / oneHour * hourWorth, cent)', 'your hours, at what they are worth to you'],
    rented: ['round(rentInAll + machineTime / oneHour * hourWorth, cent)', 'the rent and your hours with it'],
    bought: ['round(outlay + machineTime / oneHour * hourWorth, cent)', 'its price and your hours with it'],
  },
  work(given, { line, has, put, tell, rows, eachPlace, refuse, remark, table }) {
    const { rentADay: rent } = given
    put('oneHour', quantity(1, 'h'))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: rent.unit })
    if (has('machinePrice')) {
      if (has('machineResale') && less(given.machinePrice, given.machineResale))
        refuse(
          'machineResale',
          `A machine bought for ${show(given.machinePrice)} will not fetch ${show(given.machineResale)}. Check both.`,
        )
      put('outlay', line(has('machineResale') ? 'outlay' : 'outlayWhole'))
      line('buyDays')
      if (!has('machineResale'))
        remark('I took it that you keep the machine. Say what you would sell it for, if you would.')
    }
    const compares = has('holeTime') && has('machineHoleTime')
    if (compares)
      eachPlace(['holeTime', 'machineHoleTime'], (byHand, withIt) => {
        if (!less(withIt, byHand))
          refuse(
            'machineHoleTime',
            `A hole takes ${show(withIt)} with the machine and ${show(byHand)} by hand, so the machine spares you nothing. Check both times.`,
          )
      })
    if (compares && has('hourWorth')) {
      line('savedEach', 'min')
      line('savedWorth')
      const least = line('rentHoles')
      if (has('dayHours') && rows('machineHoleTime').length === 1) {
        const most = line('holesInADay')
        if (less({ ...most, kind: 'count', unit: 'hole' }, least))
          remark(
            `Only ${show({ ...most, kind: 'count', unit: 'hole' })} fit a day of ${show(given.dayHours)}, so at these figures no rented day pays for itself.`,
          )
      }
    }
    if (has('posts') && has('machineHoleTime') && has('dayHours')) {
      if (rows('machineHoleTime').some((it) => less(given.dayHours, it)))
        refuse(
          'machineHoleTime',
          `A hole takes ${show(given.machineHoleTime)} with the machine, longer than your day of ${show(given.dayHours)}. Check both.`,
        )
      line('holesInADay')
      line('rentedDays')
      line('rentInAll')
      if (compares) forTheseHoles()
    }
    remark(
      'A machine does not dig through a marked zone, roots as thick as an arm, or rock: those holes stay yours, and the rent runs on.',
    )
    remark(
      'Rent it when the ticket holds and every hole is staked. Delivery, deposit and cleaning are part of the rent.',
    )

    function forTheseHoles(): void {
      line('handTime', 'h')
      line('machineTime', 'h')
      line('hoursSaved')
      line('savedHourCost')
      if (!has('hourWorth')) {
        remark('If an hour of digging is worth more than that to you, rent; if not, dig.')
        return
      }
      const ways: [string, Quantity][] = [
        ['by hand', line('byHand')],
        ['rented', line('rented')],
        ...(has('machinePrice') ? [['bought', line('bought')] as [string, Quantity]] : []),
      ]
      const least = ways.reduce((a, b) => (compare(b[1].amount, a[1].amount) === -1 ? b : a))
      tell('cheapestDigging', ways.filter(([, it]) => equal(it, least[1])).length > 1 ? 'alike' : least[0])
      table({
        title: 'The ways, your hours counted',
        columns: [
          { label: 'way', unit: '' },
          { label: 'digging', unit: '' },
          { label: 'in all', unit: '' },
        ],
        rows: ways.map(([way, cost]) => [
          way,
          show(rows(way === 'by hand' ? 'handTime' : 'machineTime')[0] as Quantity),
          show(cost),
        ]),
      })
    }
  },
  sources: [
    { fact: 'where two costs meet', from: 'Arithmetic; needs no table.' },
    {
      fact: 'times and prices',
      from: 'As you gave them: no figure from a book would know your ground or your hire shop.',
    },
    { fact: 'what a machine does not dig', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole', 'tools', 'lifting'],
  drawing: breakEvenDrawing,
  examples: [
    // 50 − 10 = 40 min; × $20/h = 13.333; 85/13.333 = 6.375 → 7
    {
      ask: 'Renting an auger costs $85 a day and with the auger a hole takes 10 minutes. By hand a hole takes me 50 minutes and my time is worth $20 an hour. From how many holes does it pay to rent?',
      given: { rentADay: '$85', machineHoleTime: '10 min', holeTime: '50 min', hourWorth: '$20' },
      expect: { rentHoles: '7 holes' },
    },
    // (420 − 150)/60 = 4.5 → 5
    {
      ask: 'An auger is €420 to buy or €60 a day to rent, and I could sell it for €150. After how many days does it pay to buy?',
      given: { machinePrice: '€420', rentADay: '€60', machineResale: '€150' },
      expect: { buyDays: '5 rented days' },
    },
    // 6 h / 10 min = 36 holes a day: 1 day; 18 × 50 min = 15 h, 18 × 10 min = 3 h; 85/12 = 7.0833
    {
      ask: 'Is it worth renting an auger at $85 a day for 18 holes? With the auger a hole takes 10 minutes, by hand a hole takes me 50 minutes, and I work 6 hours a day.',
      given: { rentADay: '$85', posts: '18', machineHoleTime: '10 min', holeTime: '50 min', dayHours: '6 h' },
      expect: { savedHourCost: '$7.08', hoursSaved: '12 hours', rentInAll: '$85.00', rentedDays: '1 rented day' },
    },
  ],
})
