// What lumber costs that is priced by the board foot, or by a thousand board feet.
//
//   a 2x4, 8 ft long:  2 × 4 × 8 / 12 = 5 1/3 board feet,  each at $1,450 / 1000 = $1.45
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { equal, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { boardFeetBought, boardFootPrice, woodPrice } from '../../words/prices.ts'
import { lumberLength, nominalThickness, nominalWidth, sticks } from '../../words/sticks.ts'

/** Nobody pays as much for a board foot; a price for a thousand was taken for one. */
const dearest = 100
/** Where a hundred of the currency is much money. */
const strong = new Set(['USD', 'CAD', 'AUD', 'NZD', 'GBP', 'EUR'])

export const boardFootPriceOf = calculation({
  name: 'board-foot-price',
  title: 'What lumber costs by the board foot',
  answers: 'What so many sticks, or so many board feet, cost at a price for a board foot or for a thousand of them.',
  needs: { boardFootPrice, boardFeetBought, nominalThickness, nominalWidth, lumberLength, sticks },
  may: ['boardFeetBought', 'nominalThickness', 'nominalWidth', 'lumberLength'],
  oneOf: [['nominalThickness', 'boardFeetBought']],
  gives: { woodPrice },
  headlines: ['woodPrice'],
  called: ['per thousand board feet', 'per board foot', 'a board foot', 'per mbf', 'thousand board feet'],
  locals: { inch: 'length', one: 'volume', cent: 'money', feet: 'number' },
  lines: {
    counted: ['max(nominalThickness, inch)', 'thinner than an inch counts as an inch'],
    feet: [
      'sticks * counted * nominalWidth * lumberLength / one',
      'a board foot is 144 cubic inches, by the size it is sold as',
    ],
    byStick: ['round(feet * boardFootPrice, cent)', 'its board feet, each at the price of one; half a cent goes up'],
    byFoot: ['round(boardFeetBought * boardFootPrice, cent)', 'so many at the price of one; half a cent goes up'],
  },
  work({ boardFootPrice: price, sticks: count }, { line, has, need, put, rows, tell, refuse, remark }) {
    put('cent', { kind: 'money', amount: exact('1/100'), unit: price.unit })
    if (strong.has(price.unit) && less(quantity(dearest, price.unit), price))
      refuse(
        'boardFootPrice',
        `${show(price)} for one board foot is more than wood costs. Say “per thousand board feet” if it is for a thousand.`,
      )
    if (has('boardFeetBought')) {
      tell('woodPrice', line('byFoot'))
      if (has('nominalThickness')) remark('I took the board feet that you gave, and left the size of the stick aside.')
      return
    }
    if (!has('nominalWidth')) need('nominalWidth')
    if (!has('lumberLength')) need('lumberLength')
    const [thick, wide] = [rows('nominalThickness')[0] as Quantity, rows('nominalWidth')[0] as Quantity]
    if (less(wide, thick))
      refuse('nominalWidth', 'The width is smaller than the thickness. The thinner side comes first in a name: 2x4.')
    const inch = put('inch', quantity(1, 'in'))
    put('one', quantity(144, 'in3'))
    line('counted')
    const feet = line('feet')
    tell('woodPrice', line('byStick'))
    if (less(thick, inch)) remark('It is thinner than an inch, and is counted as an inch: so boards are sold.')
    remark(
      `${show(price)} is for one board foot; ${show({ ...count, kind: 'count', unit: 'stick' })} ${equal(count, { ...count, amount: exact(1) }) ? 'is' : 'are'} ${show({ ...feet, kind: 'count', unit: 'board foot' })}. Tax and delivery are not in it.`,
    )
  },
  sources: [
    {
      fact: 'board feet = thickness × width × length / 12, in nominal inches, nominal inches and feet; under 1 in counts as 1',
      from: 'a navy training manual, http://www.tpub.com/engbas/6-3.htm',
    },
    { fact: 'MBF is a thousand board feet', from: 'common practice, no source' },
    { fact: 'no fence wood costs more than $100 a board foot', from: 'Decided here: a slip of a thousand is caught.' },
  ],
  cautions: [],
  examples: [
    // 2 × 4 × 8 / 12 = 5 1/3; × 1.45 = 7.7333…
    {
      ask: 'Lumber is $1,450 per thousand board feet. What does one 2x4x8 cost?',
      given: { boardFootPrice: '$1.45', nominalThickness: '2x4', nominalWidth: '2x4', lumberLength: '8 ft' },
      expect: { woodPrice: '$7.73' },
    },
    // 50 mm and 150 mm are 1.9685 and 5.9055 in, 2.4 m are 7.874 ft: 0.018 m³ / 0.002359737 = 7.6280 board feet; × 4 × 3.20 = 97.638
    {
      ask: 'What do 4 boards of 50x150, each 2.4 m long, cost at £3.20 a board foot?',
      given: {
        boardFootPrice: '£3.20',
        nominalThickness: '50x150',
        nominalWidth: '50x150',
        lumberLength: '2.4 m',
        sticks: '4',
      },
      expect: { woodPrice: '£97.64' },
    },
    // 120 × 0.89 = 106.80
    {
      ask: 'What do 120 board feet cost at $890 per MBF?',
      given: { boardFootPrice: '$0.89', boardFeetBought: '120' },
      expect: { woodPrice: '$106.80' },
    },
  ],
})
