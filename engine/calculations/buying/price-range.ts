// A price with so many percent more, and with so many less.
//
//   less ◄──── price ────► more
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { basePrice, priceLess, priceMore, pricePercent } from '../../words/prices.ts'

export const priceRange = calculation({
  name: 'price-range',
  title: 'A price, more or less so many percent',
  answers: 'What a price comes to with a percentage put on, and with it taken off, to the cent.',
  needs: { basePrice, pricePercent },
  gives: { priceMore, priceLess },
  headlines: ['priceMore', 'priceLess'],
  together: { priceMore: ['priceMore', 'priceLess'], priceLess: ['priceLess', 'priceMore'] },
  plain: true,
  locals: { cent: 'money' },
  lines: {
    priceMore: ['round(basePrice * (1 + pricePercent), cent)', 'the whole and so much of it on top, to the cent'],
    priceLess: ['round(basePrice * (1 - pricePercent), cent)', 'the whole without so much of it, to the cent'],
  },
  work({ basePrice: price, pricePercent: percent }, { line, put, remark }) {
    put('cent', { kind: 'money', amount: exact('1/100'), unit: price.unit })
    line('priceMore')
    if ((percent.amount.valueOf() as number) <= 1) line('priceLess')
    remark(
      'Taking a percentage off and putting the same one on again does not lead back: the second is reckoned on a smaller price.',
    )
  },
  sources: [{ fact: 'price × (1 ± percentage)', from: 'Arithmetic; needs no table.' }],
  cautions: [],
  examples: [
    // 3200 × 1.1 = 3520; × 0.9 = 2880
    {
      ask: 'What is $3,200 plus 10 %?',
      given: { basePrice: '$3,200', pricePercent: '10 %' },
      expect: { priceMore: '$3,520.00', priceLess: '$2,880.00' },
    },
    // 1450 × 0.92 = 1334; × 1.08 = 1566
    {
      ask: 'The wood is about £1,450 give or take 8 %. From what to what?',
      given: { basePrice: '£1,450', pricePercent: '8 %' },
      expect: { priceLess: '£1,334.00', priceMore: '£1,566.00' },
    },
  ],
})
