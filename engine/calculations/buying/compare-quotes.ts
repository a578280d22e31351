// Quotes beside each other, each for the length it was given for.
//
//   first    $4,200   120 ft   $35.00 a foot
//   second   $3,900   105 ft   $37.14 a foot      the cheaper bill may be the dearer fence
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  cheapestPerFoot,
  cheapestPerMetre,
  cheapestQuote,
  quoteLengths,
  quotes,
  quoteSpread,
} from '../../words/prices.ts'

const names = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const

export const compareQuotes = calculation({
  name: 'compare-quotes',
  title: 'Quotes compared by the length they are for',
  answers: 'Which of some quotes is the cheapest for its length, and what each comes to by the foot and the metre.',
  needs: { quotes, quoteLengths },
  gives: { cheapestQuote, cheapestPerFoot, cheapestPerMetre, quoteSpread },
  headlines: ['cheapestQuote'],
  together: { cheapestQuote: ['cheapestQuote', 'cheapestPerFoot', 'cheapestPerMetre', 'quoteSpread'] },
  called: ['two quotes', 'three quotes', 'quotes', 'which quote'],
  locals: {
    oneFoot: 'length',
    oneMetre: 'length',
    cent: 'money',
    lowest: 'money',
    highest: 'money',
    quoteSpread: 'percent',
  },
  lines: {
    perFoot: ['quotes / (quoteLengths / oneFoot)', 'each price shared by its own feet'],
    perMetre: ['quotes / (quoteLengths / oneMetre)', 'and by its own metres'],
    cheapestPerFoot: ['round(lowest, cent)', 'the lowest of them, to the cent'],
    cheapestPerMetre: ['round(lowest / (oneFoot / oneMetre), cent)', 'the same by the metre'],
    quoteSpread: ['(highest - lowest) / lowest', 'how much dearer the dearest is, for the same length'],
  },
  work(_given, { line, rows, put, tell, refuse, remark, table }) {
    const [prices, lengths] = [rows('quotes'), rows('quoteLengths')]
    if (prices.length < 2)
      refuse('quotes', `I have one quote, ${show(prices[0] as Quantity)}. Give two or more to compare.`)
    if (prices.length > names.length)
      refuse(
        'quotes',
        `That is ${show(quantity(prices.length, 'quote'))}. I compare at most ${show(quantity(names.length, 'quote'))}.`,
      )
    if (lengths.length !== 1 && lengths.length !== prices.length)
      refuse(
        'quoteLengths',
        `I have ${show(quantity(prices.length, 'quote'))} and ${show(quantity(lengths.length, 'length'))}. Give the length of each in the same order, or one for all.`,
      )
    if (lengths.length === 1)
      put(
        'quoteLengths',
        prices.map(() => lengths[0] as Quantity),
      )
    put('oneFoot', quantity(1, 'ft'))
    put('oneMetre', quantity(1, 'm'))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: (prices[0] as Quantity).unit })
    const unnamed = unnamedCurrency(prices[0] as Quantity)
    if (unnamed) remark(unnamed)
    line('perFoot')
    line('perMetre')
    const each = rows('perFoot')
    const lowest = each.reduce((least, it) => (compare(it.amount, least.amount) === -1 ? it : least))
    const highest = each.reduce((most, it) => (compare(it.amount, most.amount) === 1 ? it : most))
    const alike = each.filter((it) => equal(it, lowest)).length
    put('lowest', lowest)
    put('highest', highest)
    tell('cheapestQuote', alike > 1 ? 'alike' : (names[each.indexOf(lowest)] as string))
    line('cheapestPerFoot')
    line('cheapestPerMetre')
    line('quoteSpread')
    table({
      title: 'The quotes',
      columns: [
        { label: 'quote', unit: '' },
        { label: 'price', unit: '' },
        { label: 'length', unit: '' },
        { label: 'a foot', unit: '' },
        { label: 'a metre', unit: '' },
      ],
      rows: prices.map((price, i) => [
        names[i] as string,
        show(price),
        show((lengths.length === 1 ? lengths[0] : lengths[i]) as Quantity),
        show(each[i] as Quantity),
        show(rows('perMetre')[i] as Quantity),
      ]),
    })
    if (lengths.length === 1) remark(`I took ${show(lengths[0] as Quantity)} as the length in every quote.`)
    if (lengths.length > 1 && lengths.some((it) => !equal(it, lengths[0] as Quantity)))
      remark(
        'They measured different lengths. Walk the line with a tape before you believe any of them: a price by the foot is only as good as the feet.',
      )
    remark(
      'Before the lowest is the best, see that all of them hold the same: post depth and concrete, size and kind of wood, fasteners, gates, the old fence taken away, permit, tax, and who calls for the buried lines.',
    )
  },
  sources: [
    { fact: 'price for one = price / length', from: 'Arithmetic; needs no table.' },
    { fact: 'what a quote should say', from: 'common practice, no source' },
  ],
  cautions: [],
  examples: [
    // 4200/120 = 35; 3900/105 = 37.142857…; 4640/130 = 35.6923…; 37.142857/35 − 1 = 6.12 %
    {
      ask: 'I have three quotes: $4,200 for 120 ft, $3,900 for 105 ft and $4,640 for 130 ft. Which is cheapest per foot?',
      given: { quotes: ['$4,200', '$3,900', '$4,640'], quoteLengths: ['120 ft', '105 ft', '130 ft'] },
      expect: { cheapestQuote: 'first', cheapestPerFoot: '$35.00', quoteSpread: '6.122 %' },
    },
    // 3150/30 = 105; 3392/32 = 106; × 0.3048 = 32.004
    {
      ask: 'Two quotes: £3,150 for 30 m and £3,392 for 32 m of fence. Which is cheaper per metre?',
      given: { quotes: ['£3,150', '£3,392'], quoteLengths: ['30 m', '32 m'] },
      expect: { cheapestQuote: 'first', cheapestPerMetre: '£105.00', cheapestPerFoot: '£32.00' },
    },
  ],
})
