// This file is about a machine for the holes: rented, bought, or done without.
import { word } from './word.ts'

export const rentADay = word<'money'>('rentADay', {
  kind: 'money',
  label: 'rent for one day',
  measure: 'With insurance, fuel and delivery, for each day begun.',
  ask: 'What does the machine cost to rent for a day, everything in?',
  called: {
    names: ['rent', 'rental', 'to rent', 'renting', 'hire', 'to hire', 'hiring', 'rents for', 'hires for'],
    things: ['rent', 'rental', 'hire'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '$0' },
})

export const machinePrice = word<'money'>('machinePrice', {
  kind: 'money',
  label: 'price of the machine',
  measure: 'New or second-hand, as you would pay it.',
  ask: 'What does the machine cost to buy?',
  called: {
    names: ['to buy', 'buy', 'buying', 'to purchase', 'buy one', 'buy it', 'price new'],
    things: ['purchase'],
    plainly: true,
  },
  possible: { least: '$0' },
})

export const machineResale = word<'money'>('machineResale', {
  kind: 'money',
  label: 'what it fetches afterwards',
  measure: 'What you would get for it when the holes are dug.',
  ask: 'For how much would you sell it afterwards?',
  called: {
    names: ['sell', 'sell it for', 'resale', 'get back', 'sells for', 'fetches'],
    things: ['resale'],
    plainly: true,
  },
  possible: { least: '$0' },
})

export const hourWorth = word<'money'>('hourWorth', {
  kind: 'money',
  label: 'what an hour of yours is worth',
  measure: 'What you would pay to be spared an hour of digging. Only you can say.',
  ask: 'What is an hour of your own time worth to you?',
  called: {
    names: ['my time', 'my time is worth', 'an hour', 'per hour', 'value my time at', 'an hour of mine', 'time at'],
    things: ['hour', 'time'],
    plainly: true,
  },
  possible: { above: '$0' },
})

export const machineHoleTime = word<'duration'>('machineHoleTime', {
  kind: 'duration',
  label: 'time for one hole with the machine',
  units: { imperial: 'min', metric: 'min' },
  measure: 'Moving it, clearing the bottom and roots counted in. The hire shop has an idea of your ground.',
  ask: 'How many minutes does a hole take with the machine?',
  called: {
    names: [
      'with the auger a hole takes',
      'with an auger a hole takes',
      'with the machine a hole takes',
      'the auger takes',
      'with the auger',
      'with an auger',
      'with the machine',
      'auger takes',
      'machine takes',
      'auger digs',
      'by machine',
    ],
    things: ['auger', 'machine'],
    plainly: true,
  },
  possible: { above: '0 h' },
  plausible: { from: '1 minute', to: '3 h' },
})

export const buyDays = word<'count'>('buyDays', {
  kind: 'count',
  noun: 'rented day',
  label: 'from which buying costs no more',
  whole: true,
  measure: 'The price, less what it fetches afterwards, counted in days of rent.',
  ask: 'After how many days does it pay to buy?',
  called: {
    names: ['days until buying pays'],
    asks: [
      'how many days to buy',
      'after how many days',
      'pay to buy',
      'pays to buy',
      'rent or buy',
      'buy or rent',
      'better to buy',
      'worth buying',
      'hire or buy',
    ],
  },
})

export const rentHoles = word<'count'>('rentHoles', {
  kind: 'count',
  noun: 'hole',
  label: 'from which a rented day pays',
  whole: true,
  measure: 'As many holes in one rented day as save you hours worth the rent.',
  ask: 'From how many holes does it pay to rent?',
  called: {
    names: ['holes until renting pays'],
    asks: [
      'from how many holes',
      'how many holes to rent',
      'pay to rent',
      'pays to rent',
      'pay to hire',
      'pays to hire',
      'break even holes',
    ],
  },
})

export const rentedDays = word<'count'>('rentedDays', {
  kind: 'count',
  noun: 'rented day',
  label: 'days of rent',
  whole: true,
  measure: 'Whole holes to a day, and every day begun is paid.',
  ask: 'For how many days must it be rented?',
  called: { names: ['days of rent'], asks: ['how many days to rent', 'how many days do i rent', 'how long to rent'] },
})

export const rentInAll = word<'money'>('rentInAll', {
  kind: 'money',
  label: 'rent in all',
  measure: 'Every day begun, paid.',
  ask: 'What is the rent in all?',
  called: { names: ['rent in all'], asks: ['how much is the rent', 'what is the rent', 'what does renting cost'] },
})

export const hoursSaved = word<'duration'>('hoursSaved', {
  kind: 'duration',
  label: 'digging that the machine saves',
  units: { imperial: 'h', metric: 'h' },
  measure: 'All holes by hand, less all holes with the machine.',
  ask: 'How many hours does the machine save?',
  called: {
    names: ['hours saved'],
    asks: ['how many hours does it save', 'how much time does it save', 'hours saved'],
  },
})

export const savedHourCost = word<'money'>('savedHourCost', {
  kind: 'money',
  label: 'for each hour saved',
  measure: 'The rent in all, shared by the hours it saves.',
  ask: 'What does each saved hour cost?',
  called: {
    names: ['cost of a saved hour'],
    asks: [
      'worth renting',
      'is it worth renting',
      'worth hiring',
      'rent or dig',
      'rent or dig by hand',
      'cost of each hour saved',
    ],
  },
})

export const cheapestDigging = word<'choice'>('cheapestDigging', {
  kind: 'choice',
  label: 'cheapest for these holes, your hours counted',
  measure: 'By what an hour of yours is worth to you.',
  ask: 'What is the cheapest way to dig them?',
  called: {
    names: ['cheapest way to dig'],
    asks: ['cheapest way to dig', 'rent buy or dig by hand', 'rent buy or dig'],
  },
  options: {
    'by hand': { label: 'by hand', called: [] },
    rented: { label: 'rented', called: [] },
    bought: { label: 'bought', called: [] },
    alike: { label: 'alike', called: [] },
  },
})
