// So much to spend, at a price by the foot or metre: how long a fence that makes, and what a longer one lacks.
//
//   $ $ $ $ $ $ $ $ $ $ $ $            the money
//   ├─┼─┼─┼─┼─┼─┼─┼─┼─┼─┼─┤ · · · ·    and the length that is wanted
import { calculation } from '../../calculation.ts'
import { exact, toNumber } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { unitNamed } from '../../quantities/units.ts'
import { affordableLength, budget, budgetLeft, budgetShort } from '../../words/budget.ts'
import { measuredCost, measurePrice, pricedBy, pricedLength } from '../../words/prices.ts'

export const budgetLength = calculation({
  name: 'budget-length',
  title: 'How long a fence the money makes',
  answers: 'How many feet or metres so much money pays for, and how much a given length lacks or leaves over.',
  needs: { budget, measurePrice, pricedBy, pricedLength },
  may: ['pricedLength'],
  gives: { affordableLength, measuredCost, budgetShort, budgetLeft },
  headlines: ['affordableLength'],
  together: {
    affordableLength: ['affordableLength', 'budgetShort', 'budgetLeft', 'measuredCost'],
    budgetShort: ['budgetShort', 'budgetLeft', 'measuredCost', 'affordableLength'],
  },
  plain: true,
  locals: { one: 'length', cent: 'money' },
  lines: {
    affordableLength: ['budget / measurePrice * one', 'so often its price goes into the money'],
    measuredCost: ['round(pricedLength / one * measurePrice, cent)', 'what that length costs, to the cent'],
    budgetShort: ['measuredCost - budget', 'what it costs, less what there is'],
    budgetLeft: ['budget - measuredCost', 'what there is, less what it costs'],
  },
  work({ budget: money, measurePrice: price, pricedBy: by }, { line, put, has, refuse, remark }) {
    if (unitNamed(by).kind !== 'length')
      refuse('pricedBy', 'A fence is priced by the foot, the metre or the yard here. Check what the price is for.')
    if (toNumber(price.amount) === 0)
      refuse('measurePrice', `A price of ${show(price)} buys any length. Check the price.`)
    put('one', quantity(1, by))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: price.unit })
    const unnamed = unnamedCurrency(price)
    if (unnamed) remark(unnamed)
    line('affordableLength', by === 'm' ? 'm' : 'ft')
    if (has('pricedLength')) line(less(money, line('measuredCost')) ? 'budgetShort' : 'budgetLeft')
    remark('It holds while the price has everything in it. A gate costs as much as many feet of fence.')
  },
  sources: [
    { fact: 'length = money ÷ price of one', from: 'Arithmetic; needs no table.' },
    { fact: 'a gate costs as much as many feet of fence', from: 'common practice, no source' },
  ],
  cautions: [],
  examples: [
    // 1800 / 24 = 75
    {
      ask: 'I have $1,800 to spend at $24 a foot, how long a fence can I do?',
      given: { budget: '$1,800', measurePrice: '$24', pricedBy: 'ft' },
      expect: { affordableLength: '75 ft' },
    },
    // 30 × 85 = 2550; − 2000
    {
      ask: 'My budget is £2,000 and it is £85 a metre for 30 m. How short am I?',
      given: { budget: '£2,000', measurePrice: '£85', pricedBy: 'm', pricedLength: '30 m' },
      expect: { budgetShort: '£550.00', measuredCost: '£2,550.00' },
    },
  ],
})
