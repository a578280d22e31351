// What is left of the money, once everything on the list is bought.
//
//   ├────────────── the money ──────────────┤
//   ├─ pickets ──┼─ posts ─┼─ bags ─┼─ left ─┤
import { calculation } from '../../calculation.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { itemCounts, taxRate, unitPrices } from '../../words/bill.ts'
import { budget, budgetLeft, budgetShort } from '../../words/budget.ts'
import { word } from '../../words/word.ts'

const spentInAll = word<'money'>('spentInAll', {
  kind: 'money',
  label: 'what it all comes to',
  measure: 'Each number times its price, added up.',
  ask: 'What does it all come to?',
  called: {},
})

const moneyReaches = word<'verdict'>('moneyReaches', {
  kind: 'verdict',
  label: 'the money for all of it',
  measure: 'What there is to spend, against what it comes to.',
  ask: 'Is the money enough?',
  called: {},
  says: { yes: 'enough', no: 'not enough', unknown: 'cannot say whether it is enough' },
})

export const budgetLeftOver = calculation({
  name: 'budget-left',
  title: 'What is left of the money',
  answers: 'What is left of so much money, or lacking, when so many of each thing are bought at its price.',
  needs: { budget, itemCounts, unitPrices, taxRate },
  may: ['taxRate'],
  gives: { budgetLeft, budgetShort, moneyReaches, spentInAll },
  headlines: ['budgetLeft', 'budgetShort'],
  together: {
    budgetLeft: ['budgetLeft', 'budgetShort', 'moneyReaches', 'spentInAll'],
    moneyReaches: ['moneyReaches', 'budgetLeft', 'budgetShort', 'spentInAll'],
  },
  plain: true,
  locals: { spent: 'money' },
  lines: {
    spentUntaxed: ['sum(unitPrices * itemCounts)', 'each number times its price, added up'],
    spentTaxed: ['sum(unitPrices * itemCounts) * (1 + taxRate)', 'the tax comes on every price'],
    budgetLeft: ['budget - spent', 'what there is, less what is bought'],
    budgetShort: ['spent - budget', 'what is bought, less what there is'],
  },
  work({ budget: money }, { line, put, tell, has, rows, refuse, remark }) {
    if (rows('unitPrices').length !== rows('itemCounts').length)
      refuse('itemCounts', 'Give one number for each price, in the same order.')
    const spent = put('spent', tell('spentInAll', line(has('taxRate') ? 'spentTaxed' : 'spentUntaxed'))) as Quantity
    const isShort = less(money, spent)
    line(isShort ? 'budgetShort' : 'budgetLeft')
    tell('moneyReaches', !isShort)
    remark(`Decided by: ${show(money)} to spend, and ${show(spent)} for all of it.`)
    const unnamed = unnamedCurrency(money)
    if (unnamed) remark(unnamed)
    remark(
      has('taxRate')
        ? 'I put the tax on top of every price.'
        : 'No tax is reckoned here: it is as much as the prices hold.',
    )
  },
  sources: [
    { fact: 'left = money less number × price, added up', from: 'Arithmetic; needs no table.' },
    { fact: 'the rate of tax', from: 'As you gave it.' },
  ],
  cautions: [],
  examples: [
    // 150 × 2.40 = 360; 700 − 360
    {
      ask: 'My budget is $700. 150 pickets at $2.40 each, what is left?',
      given: { budget: '$700', itemCounts: '150', unitPrices: '$2.40' },
      expect: { budgetLeft: '$340.00', spentInAll: '$360.00', moneyReaches: 'enough' },
    },
    // 20 × 15 = 300; 30 × 7 = 210; 510 − 480
    {
      ask: 'I have £480 to spend. 20 posts at £15 each and 30 bags at £7 each: is that enough?',
      given: { budget: '£480', itemCounts: ['20', '30'], unitPrices: ['£15', '£7'] },
      expect: { budgetShort: '£30.00', spentInAll: '£510.00', moneyReaches: 'not enough' },
    },
  ],
})
