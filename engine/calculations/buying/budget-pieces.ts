// So much to spend: what must be bought comes off it first, and the rest buys so many of one thing.
//
//   ├──────────── the money ────────────┤
//   ├─ posts ─┼─ bags ─┼▯▯▯▯▯▯▯▯▯▯▯▯▯▯┼─┤   whole ones, and what is left
import { calculation } from '../../calculation.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { less, quantity, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { itemCounts, taxRate, unitPrices } from '../../words/bill.ts'
import { affordablePieces, budget, budgetLeft, pieceBought, spentAmounts, spentFirst } from '../../words/budget.ts'

export const budgetPieces = calculation({
  name: 'budget-pieces',
  title: 'How many the money buys',
  answers:
    'How many of a thing so much money buys, after other things that must be bought, with tax on top of all prices.',
  needs: { budget, pieceBought, itemCounts, unitPrices, spentAmounts, taxRate },
  may: ['itemCounts', 'unitPrices', 'spentAmounts', 'taxRate'],
  gives: { affordablePieces, budgetLeft, spentFirst },
  headlines: ['affordablePieces'],
  together: { affordablePieces: ['affordablePieces', 'budgetLeft', 'spentFirst'] },
  plain: true,
  locals: {
    taxed: 'number',
    untaxed: 'number',
    withTax: 'number',
    listed: 'money',
    amounts: 'money',
    others: 'money',
    rest: 'money',
  },
  lines: {
    taxed: ['1 + taxRate', 'the tax comes on every price'],
    untaxed: ['1', 'the prices as they are'],
    bought: ['sum(unitPrices * itemCounts)', 'each price times its number'],
    paid: ['sum(spentAmounts)', 'what each came to'],
    spentFirst: ['(listed + amounts) * withTax', 'what must be bought first'],
    rest: ['budget - others', 'what is left for them'],
    affordablePieces: ['floor(rest / (pieceBought * withTax))', 'whole ones'],
    budgetLeft: ['rest - affordablePieces * pieceBought * withTax', 'what then is left'],
  },
  work({ budget: money }, { line, put, has, rows, need, refuse, remark }) {
    put('withTax', line(has('taxRate') ? 'taxed' : 'untaxed'))
    if (has('unitPrices') && !has('itemCounts')) need('itemCounts')
    if (has('unitPrices') && rows('unitPrices').length !== rows('itemCounts').length)
      refuse('itemCounts', 'Give one number for each price of the other things, in the same order.')
    const none = zero('money', money.unit)
    put('listed', has('unitPrices') ? line('bought') : none)
    put('amounts', has('spentAmounts') ? line('paid') : none)
    const spent = put('others', has('unitPrices') || has('spentAmounts') ? line('spentFirst') : none)
    if (less(money, spent))
      refuse('budget', `The other things come to ${show(spent)} by themselves, more than the ${show(money)} there is.`)
    line('rest')
    const many = line('affordablePieces') as Quantity
    line('budgetLeft')
    const unnamed = unnamedCurrency(money)
    if (unnamed) remark(unnamed)
    remark(
      has('taxRate')
        ? 'I put the tax on top of every price.'
        : 'No tax is reckoned here: it is as much as the prices hold.',
    )
    if (less(many, quantity(1, 'piece'))) remark('The money does not buy one of them.')
  },
  sources: [
    { fact: 'whole pieces = what is left ÷ price of one, rounded down', from: 'Arithmetic; needs no table.' },
    { fact: 'the rate of tax', from: 'As you gave it.' },
  ],
  cautions: [],
  examples: [
    // 8 × 15.50 = 124; 10 × 6 = 60; 500 − 184 = 316; / 2.05 = 154.1…; 316 − 154 × 2.05 = 0.30
    {
      ask: 'I have £500 to spend. 8 posts at £15.50 each and 10 bags at £6.00 each first. The pickets are £2.05 each, how many pickets can I buy?',
      given: {
        budget: '£500',
        itemCounts: ['8', '10'],
        unitPrices: ['£15.50', '£6.00'],
        pieceBought: '£2.05',
      },
      expect: { affordablePieces: '154 pieces', budgetLeft: '£0.30', spentFirst: '£184.00' },
    },
    // 600 − 240.50 = 359.50; / 3.50 = 102.7…; 359.50 − 102 × 3.50
    {
      ask: 'I have $600 to spend. The posts and concrete cost $240.50, and pickets are $3.50 each. How many can I buy?',
      given: { budget: '$600', spentAmounts: ['$240.50'], pieceBought: '$3.50' },
      expect: { affordablePieces: '102 pieces', budgetLeft: '$2.50', spentFirst: '$240.50' },
    },
    // 200 / 3.20 = 62.5; 200 − 62 × 3.20
    {
      ask: 'I have $200 to spend and pickets are $3.20 each. How many can I buy?',
      given: { budget: '$200', pieceBought: '$3.20' },
      expect: { affordablePieces: '62 pieces', budgetLeft: '$1.60' },
    },
  ],
})
