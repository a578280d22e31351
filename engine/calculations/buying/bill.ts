// What a list of things comes to, with discount and tax, to the cent.
//
//   12 × $5.98      71.76
//   20 × $3.25      65.00      rounded once, at the foot of the bill;
//    3 × $11.40     34.20      or on every line, as some tills do: then the foot may differ by a cent or two
//   ───────────────────────
//   discount, tax, to pay
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  amountCarried,
  amountsBeside,
  billBefore,
  billNet,
  billTax,
  billTotal,
  billTotalByLine,
  discount,
  itemCounts,
  taxIncluded,
  taxRate,
  unitPrices,
} from '../../words/bill.ts'
import { deliveryPrice } from '../../words/take-off.ts'

const mostLines = 200
const toTheCent = 'to the cent; half a cent goes up'

export const bill = calculation({
  name: 'bill',
  title: 'What the things on a list come to',
  answers: 'What so many of each at its price come to, with a discount off and tax on top or taken out, to the cent.',
  needs: { unitPrices, itemCounts, amountCarried, amountsBeside, discount, deliveryPrice, taxRate, taxIncluded },
  may: ['amountCarried', 'amountsBeside', 'discount', 'deliveryPrice', 'taxRate', 'taxIncluded'],
  gives: { billTotal, billBefore, billNet, billTax, billTotalByLine },
  headlines: ['billTotal'],
  together: { billTax: ['billTax', 'billTotal', 'billNet'], billNet: ['billNet', 'billTax', 'billTotal'] },
  called: ['price of', 'receipt', 'invoice'],
  locals: {
    cent: 'money',
    carried: 'money',
    goods: 'money',
    afterDiscount: 'money',
    eachLine: 'money',
    byLine: 'money',
    atFoot: 'money',
  },
  lines: {
    billBefore: ['sum(unitPrices * itemCounts)', 'each price times its number, added up'],
    listed: ['sum(unitPrices * itemCounts)', 'each price times its number, added up'],
    withCarried: ['listed + carried', 'and what was worked before'],
    withBeside: ['listed + carried + sum(amountsBeside)', 'and the other amounts'],
    discounted: ['round(billBefore * (1 - discount), cent)', `the discount comes off the whole bill, ${toTheCent}`],
    undiscounted: ['round(billBefore, cent)', toTheCent],
    delivered: ['goods + deliveryPrice', 'the delivery on top; no discount comes off it'],
    billTax: ['round(afterDiscount * taxRate, cent)', `the tax comes on top, ${toTheCent}`],
    taxWithin: [
      'round(afterDiscount * taxRate / (1 + taxRate), cent)',
      'what is paid is the net price and the tax on it, so the tax is this part of it',
    ],
    billNet: ['afterDiscount - taxWithin', 'the tax taken out'],
    billTotal: ['afterDiscount + billTax', 'what you pay'],
    linesDiscounted: ['round(unitPrices * itemCounts * (1 - discount), cent)', 'the same, rounded on every line'],
    linesUndiscounted: ['round(unitPrices * itemCounts, cent)', 'the same, rounded on every line'],
    taxOfEach: ['round(eachLine * taxRate, cent)', 'the tax of each line, rounded there'],
    byLineWithTax: ['sum(eachLine + taxOfEach)', 'added up after rounding'],
    byLineAlone: ['sum(eachLine)', 'added up after rounding'],
    apart: ['abs(byLine - atFoot)', 'what the two ways of rounding differ by'],
  },
  work(given, { line, has, need, put, tell, rows, refuse, remark, table }) {
    const how = has('taxRate') || has('taxIncluded') ? given.taxIncluded : undefined
    const [prices, counts] = [rows('unitPrices'), rows('itemCounts')]
    if (prices.length !== counts.length)
      refuse(
        'itemCounts',
        `I have ${show(quantity(prices.length, 'price'))} and ${show(quantity(counts.length, 'number'))} of things. Give one number for each price, in the same order.`,
      )
    if (prices.length > mostLines)
      refuse(
        'unitPrices',
        `That is ${show(quantity(prices.length, 'line'))}. I take at most ${show(quantity(mostLines, 'line'))} at once: add up two bills.`,
      )
    if (has('taxRate') && !has('taxIncluded')) need('taxIncluded')
    if (has('taxIncluded') && !has('taxRate')) need('taxRate')
    const currency = (prices[0] as Quantity).unit
    put('cent', { kind: 'money', amount: exact('1/100'), unit: currency })
    const unnamed = unnamedCurrency(prices[0] as Quantity)
    if (unnamed) remark(unnamed)
    const isMore = has('amountsBeside') || has('amountCarried')
    if (isMore) {
      put('carried', has('amountCarried') ? given.amountCarried : zero('money', currency))
      line('listed')
      tell('billBefore', line(has('amountsBeside') ? 'withBeside' : 'withCarried'))
    } else line('billBefore')
    const goods = put('goods', line(has('discount') ? 'discounted' : 'undiscounted'))
    const foot = put('afterDiscount', has('deliveryPrice') ? line('delivered') : goods)
    const isWithin = has('taxRate') && how === 'included'
    const isAdded = has('taxRate') && how === 'added'
    if (isAdded) {
      tell('billNet', foot)
      line('billTax')
      line('billTotal')
    } else {
      tell('billTotal', foot)
      if (isWithin) {
        tell('billTax', line('taxWithin'))
        line('billNet')
      }
    }
    const others = [
      ...(has('amountCarried') ? [given.amountCarried] : []),
      ...(has('amountsBeside') ? rows('amountsBeside') : []),
    ]
    const total = isAdded ? (rows('billTotal')[0] as Quantity) : foot
    if (prices.length > 1) {
      line(has('discount') ? 'linesDiscounted' : 'linesUndiscounted')
      put('eachLine', rows(has('discount') ? 'linesDiscounted' : 'linesUndiscounted'))
      // A delivery, another amount, and the tax on them, stand on no line of their own.
      if (!has('deliveryPrice') && !isMore) roundedByLine()
      table({
        title: 'The bill',
        columns: [
          { label: 'number', unit: '' },
          { label: 'price of one', unit: '' },
          { label: has('discount') ? 'line, discount off' : 'line', unit: '' },
        ],
        rows: [
          ...rows('eachLine').map((it, i) => [
            show({ ...(counts[i] as Quantity), kind: 'number', unit: 'ratio' }),
            show(prices[i] as Quantity),
            show(it),
          ]),
          ...others.map((it) => ['', 'beside it', show(it)]),
        ],
      })
    }
    if (isMore && (has('discount') || isAdded))
      remark(
        `The ${[has('discount') && 'discount', isAdded && 'tax'].filter(Boolean).join(' and the ')} I put on the other amounts too, not on the listed things alone.`,
      )
    if (isWithin) remark('I took the prices to hold the tax already, as you said; it is shown apart.')
    if (!has('taxRate')) remark('No tax is reckoned here: it is as much as the prices hold.')
    if (has('deliveryPrice') && isAdded)
      remark('I put the tax on the delivery too. Not every place taxes it: the invoice holds.')
    if (has('deliveryPrice') && has('discount')) remark('I took the discount off the goods, and not off the delivery.')

    function roundedByLine(): void {
      if (isAdded) line('taxOfEach')
      const byLine = line(isAdded ? 'byLineWithTax' : 'byLineAlone')
      if (equal(byLine, total)) {
        remark('Rounded on every line, it comes to the same.')
        return
      }
      tell('billTotalByLine', byLine)
      put('byLine', byLine)
      put('atFoot', total)
      remark(
        `Rounded on every line it comes to ${show(byLine)}, ${show(line('apart'))} ${less(total, byLine) ? 'more' : 'less'}. Shops round one way or the other: their receipt holds.`,
      )
    }
  },
  sources: [
    { fact: 'price × number, added up', from: 'Arithmetic; needs no table.' },
    { fact: 'tax within a price = price × rate / (1 + rate)', from: 'Derived here: price = net + net × rate.' },
    {
      fact: 'half a cent goes up',
      from: 'Decided here, as most tills do. Where a law or a shop rounds otherwise, theirs holds.',
    },
    { fact: 'the rate of tax, and whether the prices hold it', from: 'As you gave them.' },
  ],
  cautions: [],
  examples: [
    // 71.76 + 65.00 + 34.20 = 170.96; × 7 % = 11.9672 → 11.97. By line 5.02 + 4.55 + 2.39 = 11.96
    {
      ask: 'What do 12 bags at $5.98, 20 pickets at $3.25 and 3 boxes of screws at $11.40 come to with 7 % sales tax?',
      given: {
        itemCounts: ['12', '20', '3'],
        unitPrices: ['$5.98', '$3.25', '$11.40'],
        taxRate: '7 %',
        taxIncluded: 'added',
      },
      expect: { billTotal: '$182.93', billBefore: '$170.96', billTax: '$11.97', billTotalByLine: '$182.92' },
    },
    // 65.88 + 114.00 = 179.88; × 0.9 = 161.892 → 161.89; / 6 = 26.98166… → 26.98; 161.89 − 26.98 = 134.91
    {
      ask: 'What do 12 bags at £5.49 and 8 posts at £14.25 cost with 10 % discount, 20 % VAT included in the prices?',
      given: {
        itemCounts: ['12', '8'],
        unitPrices: ['£5.49', '£14.25'],
        discount: '10 %',
        taxRate: '20 %',
        taxIncluded: 'included',
      },
      expect: { billTotal: '£161.89', billBefore: '£179.88', billTax: '£26.98', billNet: '£134.91' },
    },
    // 18 × 14.50 = 261.00; + 40 = 301.00; × 0.2 = 60.20; 361.20
    {
      ask: '18 posts at £14.50 each, delivery £40, plus VAT at 20 %: what does it all cost?',
      given: {
        itemCounts: '18',
        unitPrices: '£14.50',
        deliveryPrice: '£40',
        taxRate: '20 %',
        taxIncluded: 'added',
      },
      expect: { billTotal: '£361.20', billTax: '£60.20', billNet: '£301.00' },
    },
    // 12 × 5.98 = 71.76
    {
      ask: 'What is the price of 12 bags at $5.98 each?',
      given: { itemCounts: '12', unitPrices: '$5.98' },
      expect: { billTotal: '$71.76' },
    },
  ],
})
