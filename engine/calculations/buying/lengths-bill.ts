// So many pieces, so long each, at a price for the foot or the metre.
//
//   3 × 3.60 m   10.8 m        ×  5.90 a metre    63.72
//   2 × 4.80 m    9.6 m        ×  5.90            56.64
//   ────────────────────────────────────────────
//                20.4 m                          120.36
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { unitNamed } from '../../quantities/units.ts'
import { lengthBought, lengthPrices, soldCounts, soldLengths } from '../../words/lengths-priced.ts'
import { measuredCost, pricedBy } from '../../words/prices.ts'

const mostLines = 200

export const lengthsBill = calculation({
  name: 'lengths-bill',
  title: 'Timber priced by the foot or the metre',
  answers:
    'What so many pieces of so much length each cost at a price for the foot or the metre, line by line, to the cent.',
  needs: { lengthPrices, pricedBy, soldCounts, soldLengths },
  gives: { measuredCost, lengthBought },
  headlines: ['measuredCost'],
  together: { measuredCost: ['measuredCost', 'lengthBought'] },
  called: ['the metre', 'the foot', 'per lineal metre', 'per lineal foot'],
  locals: { one: 'length', cent: 'money' },
  lines: {
    lengthBought: ['sum(soldCounts * soldLengths)', 'every piece, end to end'],
    eachLine: ['soldCounts * soldLengths / one * lengthPrices', 'so many, so long each, at the price of one'],
    measuredCost: ['round(sum(soldCounts * soldLengths / one * lengthPrices), cent)', 'added up; half a cent goes up'],
  },
  work({ pricedBy: soldBy }, { line, rows, put, refuse, remark, table }) {
    const counts = rows('soldCounts')
    if (counts.length > mostLines)
      refuse(
        'soldCounts',
        `That is ${show(quantity(counts.length, 'line'))}. I take at most ${show(quantity(mostLines, 'line'))} at once: add up two bills.`,
      )
    if (unitNamed(soldBy).kind !== 'length')
      refuse(
        'pricedBy',
        `Pieces of so much length each are paid by the foot, the metre or the yard, and the price is for one ${pricedBy.options?.[soldBy]?.label ?? soldBy}. Check what it is sold by.`,
      )
    for (const [name, noun] of [
      ['soldLengths', 'length'],
      ['lengthPrices', 'price'],
    ] as const) {
      const values = rows(name)
      if (values.length !== 1 && values.length !== counts.length)
        refuse(
          name,
          `I have ${show(quantity(counts.length, 'number'))} of pieces and ${show(quantity(values.length, noun))}. Give one ${noun} for each number, in the same order, or one for all.`,
        )
      put(
        name,
        counts.map((_, i) => values[i % values.length] as Quantity),
      )
    }
    const [prices, lengths] = [rows('lengthPrices'), rows('soldLengths')]
    const [first] = prices as [Quantity]
    put('one', quantity(1, soldBy))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: first.unit })
    const unnamed = unnamedCurrency(first)
    if (unnamed) remark(unnamed)
    line('lengthBought')
    line('measuredCost')
    line('eachLine')
    if (counts.length > 1)
      table({
        title: 'The bill',
        columns: [
          { label: 'number', unit: '' },
          { label: 'length of one', unit: '' },
          { label: `price of a ${pricedBy.options?.[soldBy]?.label}`, unit: '' },
          { label: 'line', unit: '' },
        ],
        rows: rows('eachLine').map((it, i) => [
          show({ ...(counts[i] as Quantity), kind: 'number', unit: 'ratio' }),
          show(lengths[i] as Quantity),
          show(prices[i] as Quantity),
          show(it),
        ]),
      })
    remark(
      'No tax is reckoned here: it is as much as the prices hold. You pay for whole pieces, whatever the saw leaves.',
    )
  },
  sources: [
    { fact: 'cost = pieces × length of one ÷ what it is sold by × price', from: 'Arithmetic; needs no table.' },
  ],
  cautions: [],
  examples: [
    // 3 × 3.6 + 2 × 4.8 = 10.8 + 9.6 = 20.4 m; × 5.90 = 120.36
    {
      ask: 'What do 3 boards of 3.60 m each and 2 boards of 4.80 m each cost at €5.90 a metre?',
      given: { lengthPrices: '€5.90', pricedBy: 'm', soldCounts: ['3', '2'], soldLengths: ['3.60 m', '4.80 m'] },
      expect: { measuredCost: '€120.36', lengthBought: '20.4 m' },
    },
    // 12 × 8 × 1.15 = 110.40; 5 × 10 × 2.40 = 120
    {
      ask: 'What do 12 rails of 8 ft at $1.15 a foot and 5 posts of 10 ft at $2.40 a foot cost?',
      given: {
        lengthPrices: ['$1.15', '$2.40'],
        pricedBy: 'ft',
        soldCounts: ['12', '5'],
        soldLengths: ['8 ft', '10 ft'],
      },
      expect: { measuredCost: '$230.40', lengthBought: '146 ft' },
    },
  ],
})
