// A quote by the foot or metre, with what comes on top, against a flat one for the whole fence.
//
//   by the foot   ╱ $33 a foot on top of $450
//   flat      ───╳──────── $4,900           they cross at one length: measure yours
//               ╱
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, quantity, zero } from '../../quantities/quantity.ts'
import { unitNamed } from '../../quantities/units.ts'
import {
  cheaperQuote,
  evenLength,
  extraCount,
  extraEach,
  flatQuote,
  quotedByMeasure,
  quoteExtras,
  quotesApart,
} from '../../words/flat-quote.ts'
import { measurePrice, pricedBy, pricedLength } from '../../words/prices.ts'

export const quoteByLength = calculation({
  name: 'quote-by-length',
  title: 'A quote by the foot against a flat one',
  answers:
    'What a quote by the foot or metre comes to with its extras, whether a flat quote is cheaper, by how much, and at what length they are the same.',
  needs: { measurePrice, pricedBy, pricedLength, quoteExtras, extraEach, extraCount, flatQuote },
  may: ['quoteExtras', 'extraEach', 'extraCount', 'flatQuote'],
  gives: { quotedByMeasure, cheaperQuote, quotesApart, evenLength },
  headlines: ['cheaperQuote', 'quotedByMeasure'],
  together: {
    cheaperQuote: ['cheaperQuote', 'quotedByMeasure', 'quotesApart', 'evenLength'],
    quotedByMeasure: ['quotedByMeasure', 'cheaperQuote', 'quotesApart', 'evenLength'],
    quotesApart: ['quotesApart', 'cheaperQuote', 'quotedByMeasure'],
  },
  called: ['a foot plus', 'a metre plus', 'tear out', 'flat quote', 'against a flat'],
  locals: { one: 'length', cent: 'money', extras: 'money', none: 'money' },
  lines: {
    added: ['sum(quoteExtras)', 'what comes on top'],
    addedEach: ['none + extraEach * extraCount', 'so many of them, each at its price, on top'],
    quotedByMeasure: [
      'round(pricedLength / one * measurePrice + extras, cent)',
      'by its length, and what comes on top',
    ],
    quotesApart: ['abs(flatQuote - quotedByMeasure)', 'the dearer less the cheaper'],
    evenLength: ['(flatQuote - extras) / measurePrice * one', 'where both come to the same'],
  },
  work(
    { measurePrice: price, pricedBy: soldBy, flatQuote: flat },
    { line, has, put, tell, need, wants, refuse, remark, rows },
  ) {
    if (unitNamed(soldBy).kind !== 'length')
      refuse(
        'pricedBy',
        `A fence is quoted by the foot, the metre or the yard, and the price is for one ${pricedBy.options?.[soldBy]?.label ?? soldBy}. Check what it is quoted by.`,
      )
    put('one', quantity(1, soldBy))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: price.unit })
    const unnamed = unnamedCurrency(price)
    if (unnamed) remark(unnamed)
    const plain = put('none', has('quoteExtras') ? line('added') : zero('money', price.unit))
    if (has('extraEach') && !has('extraCount')) need('extraCount')
    put('extras', has('extraEach') ? line('addedEach') : plain)
    const byMeasure = line('quotedByMeasure')
    if (has('flatQuote')) {
      tell(
        'cheaperQuote',
        equal(byMeasure, flat) ? 'both alike' : less(byMeasure, flat) ? 'by the foot or metre' : 'the flat quote',
      )
      line('quotesApart')
      if (less(rows('extras')[0] ?? flat, flat) && less(zero('money', price.unit), price)) line('evenLength')
      remark(
        `A price by the foot grows with the tape, a flat one does not: walk the line with a tape before you sign, and ask how it is settled if the length turns out otherwise.`,
      )
    } else if (wants('cheaperQuote') && !wants('quotedByMeasure')) need('flatQuote')
    else remark('Give me the flat quote too, and I say which is cheaper.')
    remark(
      'See that both hold the same: post depth and concrete, size and kind of wood, fasteners, gates, the old fence taken away, permit, tax, and who calls for the buried lines.',
    )
  },
  sources: [
    { fact: 'quote = length ÷ what it is quoted by × price + extras', from: 'Arithmetic; needs no table.' },
    { fact: 'both alike at (flat − extras) ÷ price', from: 'Derived here from the sketch; needs no table.' },
    { fact: 'what a quote should say', from: 'common practice, no source' },
  ],
  cautions: [],
  examples: [
    // 140 × 33 = 4620, + 450 = 5070; 5070 − 4900 = 170; (4900 − 450)/33 = 134.848… ft = 134 ft 10 2/11 in
    {
      ask: 'One quote is $33 a foot plus $450 tear out for 140 ft, the other is $4,900 flat. By the foot or flat, which is cheaper?',
      given: { measurePrice: '$33', pricedBy: 'ft', pricedLength: '140 ft', quoteExtras: '$450', flatQuote: '$4,900' },
      expect: {
        cheaperQuote: 'the flat quote',
        quotedByMeasure: '$5,070.00',
        quotesApart: '$170.00',
        evenLength: '134 ft 10 2/11 in',
      },
    },
    // 36 × 88 = 3168, + 260 + 180 = 3608; 3750 − 3608 = 142; (3750 − 440)/88 = 37.61 m
    {
      ask: 'They want £88 a metre plus £260 removal and £180 for the gate, 36 m of fence, against a flat quote of £3,750. Which is cheaper?',
      given: {
        measurePrice: '£88',
        pricedBy: 'm',
        pricedLength: '36 m',
        quoteExtras: ['£260', '£180'],
        flatQuote: '£3,750',
      },
      expect: { cheaperQuote: 'by the foot or metre', quotedByMeasure: '£3,608.00', quotesApart: '£142.00' },
    },
  ],
})
