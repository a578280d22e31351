// This file is about prices: by the foot or the yard, of a whole fence, of quotes beside each other, more or less so many percent.
import { word } from './word.ts'

// ── by the foot, the yard, the pound ──

export const measurePrice = word<'money'>('measurePrice', {
  kind: 'money',
  label: 'price for one measure',
  per: 'measure',
  measure: 'For one foot, one metre, one yard, one pound: whatever it is sold by.',
  ask: 'What does one foot, metre, yard or pound of it cost?',
  called: {
    names: [
      'foot',
      'metre',
      'yard',
      'square foot',
      'square metre',
      'cubic foot',
      'cubic yard',
      'cubic metre',
      'gallon',
      'litre',
      'pound',
      'kilo',
      'ton',
      'tonne',
    ].flatMap((it) => [`a ${it}`, `per ${it}`]),
    plainly: true,
    byDefault: true,
  },
  possible: { least: '$0' },
})

const by = (label: string, ...names: readonly string[]) => ({
  label,
  called: names.flatMap((name) => [`a ${name}`, `per ${name}`, `each ${name}`, `for one ${name}`, `by the ${name}`]),
})

// “5.90 the metre”; the yard is where it is bought.
const withThe = ({ label, called }: ReturnType<typeof by>) => ({ label, called: [...called, `the ${label}`] })

export const pricedBy = word<'choice'>('pricedBy', {
  kind: 'choice',
  label: 'what it is sold by',
  measure: 'The measure that the price is for.',
  ask: 'Is the price for a foot, a metre, a yard, a square foot, a cubic yard, a pound, or what?',
  called: { names: ['sold by'] },
  options: {
    ft: withThe(by('foot', 'foot', 'ft', 'running foot', 'lineal foot', 'linear foot')),
    m: withThe(by('metre', 'meter', 'm', 'running meter', 'lineal meter', 'linear meter')),
    yd: by('yard', 'yard', 'yd'),
    ft2: by('square foot', 'square foot', 'sq ft', 'sq foot'),
    m2: by('square metre', 'square meter', 'sq m'),
    ft3: by('cubic foot', 'cubic foot', 'cu ft'),
    yd3: by('cubic yard', 'cubic yard', 'cu yd', 'cube'),
    m3: by('cubic metre', 'cubic meter', 'cu m'),
    gal: by('US gallon', 'gallon', 'gal'),
    L: by('litre', 'liter', 'l'),
    lb: by('pound', 'pound', 'lb'),
    kg: by('kilogram', 'kilogram', 'kilo', 'kg'),
    ton: by('ton', 'ton'),
    tonne: by('tonne', 'tonne'),
  },
})

const much = <K extends 'length' | 'area' | 'volume' | 'mass'>(
  name: string,
  kind: K,
  label: string,
  ask: string,
  units: { imperial: string; metric: string },
) =>
  word<K>(name, {
    kind,
    label,
    units,
    measure: 'As much of it as you buy.',
    ask,
    called: { byDefault: true },
  })

export const pricedLength = much('pricedLength', 'length', 'length bought', 'What length do you buy?', {
  imperial: 'ft',
  metric: 'm',
})
export const pricedArea = much('pricedArea', 'area', 'area bought', 'What area do you buy?', {
  imperial: 'ft2',
  metric: 'm2',
})
export const pricedVolume = much('pricedVolume', 'volume', 'volume bought', 'What volume do you buy?', {
  imperial: 'yd3',
  metric: 'm3',
})
export const pricedMass = much('pricedMass', 'mass', 'weight bought', 'What weight do you buy?', {
  imperial: 'lb',
  metric: 'kg',
})

export const measuredCost = word<'money'>('measuredCost', {
  kind: 'money',
  label: 'what it costs',
  measure: 'The price of one, as many times as it goes in, to the cent.',
  ask: 'What does it cost?',
  called: {
    names: ['cost of it', 'price of it'],
    asks: [
      'what does it cost',
      'how much does it cost',
      'what will it cost',
      'how much will it cost',
      'what do they cost',
      'how much is it',
      'how much is that',
      'what is that',
      'what does it come to',
      'total cost',
    ],
  },
})

// ── by the board foot ──

export const boardFootPrice = word<'money'>('boardFootPrice', {
  kind: 'money',
  per: 'board foot',
  label: 'price of a board foot',
  measure: 'A price for a thousand board feet is a thousand times as much: $1,450 a thousand is $1.45.',
  ask: 'What does a board foot cost, or a thousand of them?',
  called: {
    names: ['per board foot', 'a board foot', 'per thousand board feet', 'per mbf'],
    things: ['lumber', 'timber', 'wood', 'board foot'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '$0' },
})

export const boardFeetBought = word<'count'>('boardFeetBought', {
  kind: 'count',
  noun: 'board foot',
  label: 'board feet bought',
  measure: 'By the size it is sold as.',
  ask: 'How many board feet do you buy?',
  called: { things: ['board foot', 'board feet', 'bf', 'bd ft'] },
  possible: { above: '0' },
})

export const woodPrice = word<'money'>('woodPrice', {
  kind: 'money',
  label: 'what the wood costs',
  measure: 'Its board feet at the price of one, to the cent.',
  ask: 'What does the wood cost?',
  called: {
    names: ['price of the wood', 'cost of the wood', 'cost of the lumber'],
    asks: [
      'what does one cost',
      'how much is one',
      'what does a stick cost',
      'what does a board cost',
      'how much does one board cost',
      'what is one worth',
      'what does the lumber cost',
      'how much for the lumber',
      'how much does the lumber cost',
      'how much does the wood cost',
    ],
  },
})

// ── a fence by the foot ──

export const fenceCost = word<'money'>('fenceCost', {
  kind: 'money',
  label: 'what the fence costs in all',
  measure: 'Everything that you want in the figure: wood, concrete, gates, finish, hire.',
  ask: 'What does the fence cost in all?',
  called: {
    names: ['fence cost', 'fence costs', 'cost in all', 'paid', 'spent', 'for the whole fence'],
    things: ['fence'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '$0' },
})

export const costPerFoot = word<'money'>('costPerFoot', {
  kind: 'money',
  label: 'for each foot of fence',
  measure: 'All of the cost shared by all of the length.',
  ask: 'What does it cost per foot?',
  called: {
    names: ['cost per foot'],
    asks: [
      'cost per foot',
      'per running foot',
      'that per foot',
      'that a foot',
      'it per foot',
      'feet per foot',
      'how much per foot',
      'how much a foot',
      'price per foot',
      'what is that per foot',
      'cost a foot',
    ],
  },
})

export const costPerMetre = word<'money'>('costPerMetre', {
  kind: 'money',
  label: 'for each metre of fence',
  measure: 'All of the cost shared by all of the length.',
  ask: 'What does it cost per metre?',
  called: {
    names: ['cost per metre'],
    asks: [
      'per running metre',
      'per running meter',
      'that per metre',
      'that per meter',
      'that a metre',
      'that a meter',
      'metres per metre',
      'm per metre',
      'cost per metre',
      'how much per metre',
      'how much a metre',
      'price per metre',
      'what is that per metre',
      'cost a metre',
    ],
  },
})

// ── quotes ──

export const quotes = word<'money'>('quotes', {
  kind: 'money',
  list: true,
  label: 'quotes, in order',
  measure: 'The whole price of each, with the same things in it: gates, old fence away, tax.',
  ask: 'What is each quote, in order?',
  called: {
    names: ['quote', 'quotes', 'bid', 'bids', 'estimate', 'estimates', 'offer', 'offers'],
    things: ['quote', 'bid', 'estimate', 'offer'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '$0' },
})

export const quoteLengths = word<'length'>('quoteLengths', {
  kind: 'length',
  list: true,
  label: 'length that each quote is for',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'As each of them measured it; one length when it is the same for all.',
  ask: 'How long is the fence in each quote, in the same order? One length if it is the same for all.',
  called: { byDefault: true },
  possible: { above: '0 ft' },
  plausible: { from: '6 ft', to: '3000 ft' },
})

const which = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const

export const cheapestQuote = word<'choice'>('cheapestQuote', {
  kind: 'choice',
  label: 'cheapest for its length',
  measure: 'The quote with the lowest price for each foot or metre.',
  ask: 'Which quote is the cheapest?',
  called: {
    names: ['cheapest quote'],
    asks: [
      'which is cheapest',
      'which is cheaper',
      'which quote',
      'cheapest per foot',
      'cheaper per foot',
      'which is the better price',
      'better deal',
      'better value',
      'better buy',
      'better offer',
      'best price',
      'best deal',
      'best value',
      'compare these quotes',
    ],
  },
  options: {
    ...Object.fromEntries(which.map((it) => [it, { label: it, called: [] }])),
    alike: { label: 'alike', called: [] },
  },
})

export const cheapestPerFoot = word<'money'>('cheapestPerFoot', {
  kind: 'money',
  label: 'the cheapest, for each foot',
  measure: 'Its price shared by its length.',
  ask: 'What is the cheapest per foot?',
  called: { names: ['cheapest for each foot'] },
})

export const cheapestPerMetre = word<'money'>('cheapestPerMetre', {
  kind: 'money',
  label: 'the cheapest, for each metre',
  measure: 'Its price shared by its length.',
  ask: 'What is the cheapest per metre?',
  called: { names: ['cheapest for each metre'] },
})

export const quoteSpread = word<'percent'>('quoteSpread', {
  kind: 'percent',
  label: 'by which the dearest is dearer',
  measure: 'For the same length, as a share of the cheapest.',
  ask: 'By how much is the dearest dearer?',
  called: { names: ['spread of the quotes'], asks: ['how much dearer', 'how much more expensive'] },
})

// ── more or less so many percent ──

export const basePrice = word<'money'>('basePrice', {
  kind: 'money',
  label: 'price to begin with',
  measure: 'Before the percentage.',
  ask: 'What is the price to begin with?',
  called: { byDefault: true },
  possible: { least: '$0' },
})

export const pricePercent = word<'percent'>('pricePercent', {
  kind: 'percent',
  label: 'more or less by',
  measure: 'Of the price.',
  ask: 'By how many percent is it more or less?',
  called: {
    names: ['give or take', 'plus or minus', 'markup'],
    things: ['markup', 'margin', 'contingency'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '0 %', most: '1000 %' },
  plausible: { from: '0 %', to: '100 %' },
})

export const priceMore = word<'money'>('priceMore', {
  kind: 'money',
  label: 'with that much more',
  measure: 'The price and the percentage of it, to the cent.',
  ask: 'What is the price with that much more?',
  called: {
    names: ['higher price'],
    asks: ['plus', 'more', 'add', 'on top', 'up by', 'give or take', 'plus or minus', 'more or less'],
  },
})

export const priceLess = word<'money'>('priceLess', {
  kind: 'money',
  label: 'with that much less',
  measure: 'The price less the percentage of it, to the cent.',
  ask: 'What is the price with that much less?',
  called: { names: ['lower price'], asks: ['less', 'minus', 'off', 'take off', 'down by'] },
})
