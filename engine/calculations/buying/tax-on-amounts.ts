// Tax on an amount, or on several together: on top of them, or held in them already.
//
//   $612.40            × 8.875 %                     on top
//   │ net │ tax │      tax = all of it × rate / (1 + rate)     held in it
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  billNet,
  billTax,
  billTotal,
  discount,
  settledAmounts,
  taxedAmounts,
  taxIncluded,
  taxRate,
  untaxedAmounts,
} from '../../words/bill.ts'

const mostLines = 200

export const taxOnAmounts = calculation({
  name: 'tax-on-amounts',
  title: 'Tax on an amount of money',
  answers:
    'What tax comes on an amount or several, or is held in them already, with a discount off first, to the cent.',
  needs: { taxedAmounts, taxRate, taxIncluded, discount, untaxedAmounts, settledAmounts },
  may: ['discount', 'untaxedAmounts', 'settledAmounts'],
  gives: { billTotal, billTax, billNet },
  headlines: ['billTotal', 'billTax'],
  together: {
    billTotal: ['billTotal', 'billTax', 'billNet'],
    billTax: ['billTax', 'billTotal', 'billNet'],
    billNet: ['billNet', 'billTax', 'billTotal'],
  },
  locals: { cent: 'money', afterDiscount: 'money', apart: 'money' },
  lines: {
    together: ['sum(taxedAmounts)', 'all of them added up'],
    discounted: ['round(together * (1 - discount), cent)', 'the discount comes off first; half a cent goes up'],
    undiscounted: ['round(together, cent)', 'to the cent; half a cent goes up'],
    billTax: ['round(afterDiscount * taxRate, cent)', 'the tax comes on top, to the cent; half a cent goes up'],
    notTaxed: ['sum(untaxedAmounts)', 'no tax comes on these'],
    billTotal: ['afterDiscount + billTax + apart', 'what you pay'],
    withUntaxed: ['afterDiscount + apart', 'what you pay'],
    taxWithin: [
      'round(afterDiscount * taxRate / (1 + taxRate), cent)',
      'what is paid is the net price and the tax on it, so the tax is this part of it',
    ],
    billNet: ['afterDiscount - taxWithin', 'the tax taken out'],
  },
  work({ taxIncluded: how }, { line, has, put, tell, rows, refuse, remark }) {
    const all = rows('taxedAmounts')
    if (all.length > mostLines)
      refuse('taxedAmounts', `That is ${show(quantity(all.length, 'amount'))}. I take at most ${mostLines} at once.`)
    put('cent', { kind: 'money', amount: exact('1/100'), unit: (all[0] as Quantity).unit })
    line('together')
    const foot = put('afterDiscount', line(has('discount') ? 'discounted' : 'undiscounted'))
    put('apart', has('untaxedAmounts') ? line('notTaxed') : zero('money', (all[0] as Quantity).unit))
    if (how === 'added') {
      tell('billNet', foot)
      line('billTax')
      line('billTotal')
      remark('I took the tax to come on top. If the price holds it already, say “included”.')
    } else {
      tell('billTotal', has('untaxedAmounts') ? line('withUntaxed') : foot)
      tell('billTax', line('taxWithin'))
      line('billNet')
      remark('I took the price to hold the tax already, as you said; it is shown apart.')
    }
    if (has('settledAmounts')) remark('What is paid already is left out.')
  },
  sources: [
    { fact: 'tax within a price = price × rate / (1 + rate)', from: 'Derived here: price = net + net × rate.' },
    {
      fact: 'half a cent goes up',
      from: 'Decided here, as most tills do. Where a law or a shop rounds otherwise, theirs holds.',
    },
    { fact: 'the rate of tax, and whether the price holds it', from: 'As you gave them.' },
  ],
  cautions: [],
  examples: [
    // 612.40 × 0.08875 = 54.3505 → 54.35; 666.75
    {
      ask: 'How much is 8.875 % sales tax on $612.40?',
      given: { taxedAmounts: '$612.40', taxRate: '8.875 %', taxIncluded: 'added' },
      expect: { billTax: '$54.35', billTotal: '$666.75', billNet: '$612.40' },
    },
    // 1190 × 0.19 / 1.19 = 190
    {
      ask: 'The bill is 1.190,00 €, VAT 19 % already included. How much VAT is it?',
      given: { taxedAmounts: '€1190', taxRate: '19 %', taxIncluded: 'included' },
      expect: { billTax: '€190.00', billTotal: '€1,190.00', billNet: '€1,000.00' },
    },
    // 2140 + 186 + 95 = 2421; × 1.2 = 2905.20
    {
      ask: 'Materials £2,140, concrete £186, hire £95, plus VAT at 20 %: what do I pay?',
      given: { taxedAmounts: ['£2140', '£186', '£95'], taxRate: '20 %', taxIncluded: 'added' },
      expect: { billTotal: '£2,905.20', billTax: '£484.20', billNet: '£2,421.00' },
    },
  ],
})
