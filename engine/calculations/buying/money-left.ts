// So much money to spend, and what is bought with it: what is left, or how far over it goes, and how many of a thing to leave out then.
//
//   ├──────────── the money ────────────┤
//   ├─ lumber ─┼─ concrete ─┼─ tax ─┼───┤   what is left
//   ├─ posts ─┼─ rails ─┼─ pickets ─────────┼▯▯▯   over: so many fewer of these
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, zero } from '../../quantities/quantity.ts'
import {
  budget,
  budgetLeft,
  budgetShort,
  pieceDropped,
  piecesToDrop,
  spentAmounts,
  spentCounts,
  spentTogether,
  spentPrices,
  spentTax,
} from '../../words/budget.ts'

export const moneyLeft = calculation({
  name: 'money-left',
  title: 'What is left of the money',
  answers:
    'What is left of so much money after amounts and things that are bought with it, or how far over they go, and how many of one thing to leave out so that it does.',
  needs: { budget, spentAmounts, spentCounts, spentPrices, spentTax, pieceDropped },
  may: ['spentAmounts', 'spentCounts', 'spentPrices', 'spentTax', 'pieceDropped'],
  oneOf: [['spentAmounts', 'spentPrices']],
  gives: { budgetLeft, budgetShort, spentTogether, piecesToDrop },
  headlines: ['budgetLeft'],
  together: {
    budgetLeft: ['budgetLeft', 'budgetShort', 'spentTogether'],
    budgetShort: ['budgetShort', 'budgetLeft', 'spentTogether'],
    piecesToDrop: ['piecesToDrop', 'budgetShort', 'budgetLeft', 'spentTogether'],
  },
  plain: true,
  locals: { amounts: 'money', listed: 'money', withTax: 'number', cent: 'money' },
  lines: {
    taxed: ['1 + spentTax', 'the tax comes on all of it'],
    untaxed: ['1', 'as the prices are'],
    amountsTogether: ['sum(spentAmounts)', 'what each came to'],
    bought: ['sum(spentPrices * spentCounts)', 'each price times its number'],
    spentTogether: ['round((amounts + listed) * withTax, cent)', 'all that is spent, to the cent'],
    budgetLeft: ['budget - spentTogether', 'what there is, less what is spent'],
    budgetShort: ['spentTogether - budget', 'what is spent, less what there is'],
    piecesToDrop: ['ceil(budgetShort / (pieceDropped * withTax))', 'whole ones: the last may save more than is needed'],
  },
  work({ budget: money }, { line, put, has, rows, need, refuse, remark }) {
    put('cent', { kind: 'money', amount: exact('1/100'), unit: money.unit })
    put('withTax', line(has('spentTax') ? 'taxed' : 'untaxed'))
    if (has('spentPrices') && !has('spentCounts')) need('spentCounts')
    if (has('spentPrices') && rows('spentPrices').length !== rows('spentCounts').length)
      refuse('spentCounts', 'Give one number for each price, in the same order.')
    const none = zero('money', money.unit)
    put('amounts', has('spentAmounts') ? line('amountsTogether') : none)
    put('listed', has('spentPrices') ? line('bought') : none)
    const isOver = less(money, line('spentTogether'))
    const apart = line(isOver ? 'budgetShort' : 'budgetLeft')
    if (isOver && has('pieceDropped')) line('piecesToDrop')
    else if (isOver) remark('That is over: the money does not reach so far.')
    else if (equal(apart, none)) remark('It comes out even, with nothing left.')
    else if (has('pieceDropped')) remark('It is within the money: none has to be left out.')
    const unnamed = unnamedCurrency(money)
    if (unnamed) remark(unnamed)
    remark(
      has('spentTax')
        ? 'I put the tax on top of every amount.'
        : 'No tax is reckoned here: it is as much as the amounts hold.',
    )
  },
  sources: [
    { fact: 'left = money − what is spent', from: 'Arithmetic; needs no table.' },
    { fact: 'the rate of tax', from: 'As you gave it.' },
  ],
  cautions: [],
  examples: [
    // 540.20 + 96 = 636.20; 800 − 636.20
    {
      ask: 'I have $800 put by. The lumber was $540.20 and the concrete $96. What is left?',
      given: { budget: '$800', spentAmounts: ['$540.20', '$96'] },
      expect: { budgetLeft: '$163.80', spentTogether: '$636.20' },
    },
    // 12 × 15 = 180, 150 × 2.20 = 330: 510, 60 over 450
    {
      ask: 'My budget is £450. 12 posts at £15.00 each and 150 pickets at £2.20 each. Am I over, and how far?',
      given: { budget: '£450', spentCounts: ['12', '150'], spentPrices: ['£15.00', '£2.20'] },
      expect: { budgetShort: '£60.00', spentTogether: '£510.00' },
    },
  ],
})
