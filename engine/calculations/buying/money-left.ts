// So much money to spend, and what is bought with it: what is left, or how far over it goes, and how many of a thing to leave out then.
//
//   ├──────────── the money ────────────┤
//   ├─ lumber ─┼─ concrete ─┼─ tax ─┼───┤   what is left
//   ├─ posts ─┼─ rails ─┼─ pickets ─────────┼▯▯▯   over: so many fewer of these
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  budget,
  budgetLeft,
  budgetShort,
  moneyReaches,
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
  gives: { budgetLeft, budgetShort, moneyReaches, spentTogether, piecesToDrop },
  headlines: ['budgetLeft'],
  together: {
    budgetLeft: ['budgetLeft', 'budgetShort', 'moneyReaches', 'spentTogether'],
    budgetShort: ['budgetShort', 'budgetLeft', 'spentTogether'],
    moneyReaches: ['moneyReaches', 'budgetLeft', 'budgetShort', 'spentTogether'],
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
  work({ budget: money, pieceDropped: price }, { line, put, tell, has, rows, need, refuse, remark }) {
    put('cent', { kind: 'money', amount: exact('1/100'), unit: money.unit })
    put('withTax', line(has('spentTax') ? 'taxed' : 'untaxed'))
    if (has('spentPrices') && !has('spentCounts')) need('spentCounts')
    if (has('spentPrices') && rows('spentPrices').length !== rows('spentCounts').length)
      refuse('spentCounts', 'Give one number for each price, in the same order.')
    const none = zero('money', money.unit)
    put('amounts', has('spentAmounts') ? line('amountsTogether') : none)
    put('listed', has('spentPrices') ? line('bought') : none)
    const spent = line('spentTogether')
    const isOver = less(money, spent)
    tell('moneyReaches', !isOver)
    remark(`Decided by: ${show(money)} to spend, and ${show(spent)} for all of it.`)
    const apart = line(isOver ? 'budgetShort' : 'budgetLeft')
    if (isOver && has('pieceDropped')) dropped()
    else if (isOver) remark('That is over: the money does not reach so far.')
    else if (equal(apart, none)) remark('It comes out even, with nothing left.')
    else if (has('pieceDropped')) remark('It is within the money: none has to be left out.')
    const unnamed = unnamedCurrency(money)
    if (unnamed) remark(unnamed)
    remark(
      has('spentTax')
        ? 'I put the tax on top of every amount.'
        : 'I added no tax. If the prices are without it, give me the rate.',
    )

    function dropped(): void {
      const many = line('piecesToDrop')
      const at = has('spentPrices') ? rows('spentPrices').findIndex((it) => equal(it, price)) : -1
      const bought = at < 0 ? undefined : rows('spentCounts')[at]
      if (bought && less(bought, { ...many, unit: bought.unit }))
        remark(`You buy only ${show(bought)} at that price: leaving all of them out is not enough by itself.`)
    }
  },
  sources: [
    { fact: 'left = money − what is spent', from: 'Arithmetic; needs no table.' },
    { fact: 'the rate of tax', from: 'As you gave it.' },
  ],
  cautions: [],
  examples: [
    // 20 × 15 = 300; 30 × 7 = 210; 510 − 480
    {
      ask: 'I have £480 to spend. 20 posts at £15 each and 30 bags at £7 each: is that enough?',
      given: { budget: '£480', spentCounts: ['20', '30'], spentPrices: ['£15', '£7'] },
      expect: { moneyReaches: 'not enough', budgetShort: '£30.00', spentTogether: '£510.00' },
    },
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
