import { type Check, chosen, step } from '../check.ts'
import { decimalsWork, inDecimals, toTheCent } from '../decimals.ts'

const list = {
  itemCounts: ['12', '20', '3', '160'],
  unitPrices: ['$5.98', '$3.25', '$11.40', '$2.79'],
}
const lines = [12 * 598, 20 * 325, 3 * 1140, 160 * 279] // in cents
/** By hand on paper, as a till works: whole cents, every line rounded half up. */
const tillWithTax = (perMille: number): number =>
  lines.reduce((sum, line) => sum + line + Math.floor((line * perMille + 500) / 1000), 0) / 100

/** Counted hole by hole: the first number whose saving is worth the rent. */
function holesByCounting(rent: number, minutesSaved: number, anHour: number): number {
  let holes = 0
  for (let saved = 0; saved < rent; holes++) saved += (minutesSaved / 60) * anHour
  return holes
}

/** Sticks by the price of their wood: the sawn cubic inches, 1,728 to the cubic foot, twelve board feet to that. */
const byTheCubicFoot = (cubicInches: number, aThousand: number): number =>
  Math.round(((cubicInches / 1728) * 12 * aThousand) / 10) / 100

export const moneyChecks: readonly Check[] = [
  {
    calculation: 'board-foot-price',
    what: 'thirty-five 2x4s of 10 ft at $980 a thousand',
    kind: 'second derivation',
    source: 'by cubic feet of sawn wood, twelve board feet in each',
    given: {
      boardFootPrice: '$0.98',
      nominalThickness: '2 in',
      nominalWidth: '4 in',
      lumberLength: '10 ft',
      sticks: '35',
    },
    gives: 'woodPrice',
    unit: 'USD',
    expected: () => byTheCubicFoot(35 * 2 * 4 * 120, 980),
    tolerance: 1e-9,
  },
  {
    calculation: 'tax-on-amounts',
    what: '8.875 % on $612.40',
    kind: 'library',
    source: decimalsWork,
    given: { taxedAmounts: '$612.40', taxRate: '8.875 %', taxIncluded: 'added' },
    gives: 'billTotal',
    unit: 'USD',
    expected: () => inDecimals('612.40') + toTheCent('612.40 * 0.08875'),
    tolerance: 1e-9,
  },
  {
    calculation: 'tax-on-amounts',
    what: 'the tax within £120 at 20 %: a sixth',
    kind: 'second derivation',
    source: 'a sixth of the price, since 20/120 is one',
    given: { taxedAmounts: '£120', taxRate: '20 %', taxIncluded: 'included' },
    gives: 'billTax',
    unit: 'GBP',
    expected: () => 120 / 6,
    tolerance: 1e-9,
  },
  {
    calculation: 'bill',
    what: 'a list of four with 7.25 % tax on top, rounded at the foot',
    kind: 'library',
    source: decimalsWork,
    given: { ...list, taxRate: '7.25 %', taxIncluded: 'added' },
    gives: 'billTotal',
    unit: 'USD',
    expected: () => {
      const net = '12 * 5.98 + 20 * 3.25 + 3 * 11.40 + 160 * 2.79'
      return inDecimals(net) + toTheCent(`(${net}) * 0.0725`)
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'bill',
    what: 'the same with 10 % off the goods, and $65 of delivery that nothing comes off',
    kind: 'library',
    source: decimalsWork,
    given: { ...list, discount: '10 %', deliveryPrice: '$65', taxRate: '7.25 %', taxIncluded: 'added' },
    gives: 'billTotal',
    unit: 'USD',
    expected: () => {
      const goods = toTheCent('(12 * 5.98 + 20 * 3.25 + 3 * 11.40 + 160 * 2.79) * 0.9')
      return goods + 65 + toTheCent(`(${goods} + 65) * 0.0725`)
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'bill',
    what: 'the list with 7.5 %, rounded on every line, as a till adds in whole cents',
    kind: 'second derivation',
    source: 'whole cents on paper: each line’s tax rounded half up, then added; no fraction anywhere',
    given: { ...list, taxRate: '7.5 %', taxIncluded: 'added' },
    gives: 'byLineWithTax',
    unit: 'USD',
    got: step('byLineWithTax', 'USD'),
    expected: () => tillWithTax(75),
    tolerance: 1e-9,
  },
  ...(
    [
      ['£60', '20 %', 10],
      ['£24', '20 %', 4],
      ['£120', '20 %', 20],
      ['£117.50', '17.5 %', 17.5],
      ['£80', '5 %', 3.81],
    ] as const
  ).map(
    ([price, rate, tax]): Check => ({
      calculation: 'bill',
      what: `the tax within ${price} at ${rate}`,
      kind: 'published',
      source:
        'VAT fractions with their examples, http://itsrelative.co.uk/headlines/2014-06-11-vat-fraction , https://www.vatark.co.uk/vat/howto/whats-the-new-vat-fraction/ and https://accountingservicesforbusiness.co.uk/resources/information-articles/vat-rates-and-fractions',
      given: { itemCounts: '1', unitPrices: price, taxRate: rate, taxIncluded: 'included' },
      gives: 'billTax',
      unit: 'GBP',
      expected: tax,
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'bill',
    what: 'a discount of a third of a percent, to the cent',
    kind: 'library',
    source: decimalsWork,
    given: { itemCounts: ['7', '3'], unitPrices: ['€19.99', '€4.45'], discount: '3.3 %' },
    gives: 'billTotal',
    unit: 'EUR',
    expected: () => toTheCent('(7 * 19.99 + 3 * 4.45) * (1 - 0.033)'),
    tolerance: 1e-9,
  },
  {
    calculation: 'price-by-measure',
    what: '73 1/2 ft at C$1.85 a metre',
    kind: 'library',
    source: decimalsWork,
    given: { pricedLength: '73 1/2 ft', measurePrice: 'C$1.85', pricedBy: 'm' },
    gives: 'measuredCost',
    unit: 'CAD',
    expected: () => toTheCent('73.5 * 0.3048 * 1.85'),
    tolerance: 1e-9,
  },
  {
    calculation: 'price-by-measure',
    what: 'three yards of gravel at A$71 a cubic metre',
    kind: 'library',
    source: decimalsWork,
    given: { pricedVolume: '3 yd³', measurePrice: 'A$71', pricedBy: 'm3' },
    gives: 'measuredCost',
    unit: 'AUD',
    expected: () => toTheCent('3 * 0.9144^3 * 71'),
    tolerance: 1e-9,
  },
  {
    calculation: 'cost-of-length',
    what: 'by the foot',
    kind: 'library',
    source: decimalsWork,
    given: { fenceCost: 'NZ$6,417.35', runLength: '41.75 m' },
    system: 'metric',
    gives: 'costPerFoot',
    unit: 'NZD',
    expected: () => toTheCent('6417.35 / (41.75 / 0.3048)'),
    tolerance: 1e-9,
  },
  {
    calculation: 'cost-of-length',
    what: 'by the metre',
    kind: 'library',
    source: decimalsWork,
    given: { fenceCost: '$4,310', runLength: '118 ft' },
    gives: 'costPerMetre',
    unit: 'USD',
    expected: () => toTheCent('4310 / (118 * 0.3048)'),
    tolerance: 1e-9,
  },
  {
    calculation: 'compare-quotes',
    what: 'the cheapest of three by the foot, found by crosswise products of cents and inches',
    kind: 'second derivation',
    source: 'no division: price a × length b against price b × length a, in whole cents and inches, for every pair',
    given: { quotes: ['$4,200', '$3,900', '$4,640'], quoteLengths: ['121 ft', '112 ft 6 in', '133 ft 4 in'] },
    gives: 'cheapestQuote',
    unit: 'yes',
    got: chosen('cheapestQuote', 'second'),
    expected: () => {
      const all = [
        [420_000, 1452],
        [390_000, 1350],
        [464_000, 1600],
      ] as const
      return all.findIndex(([price, length]) => all.every(([other, long]) => price * long <= other * length)) === 1
        ? 1
        : 0
    },
    tolerance: 0,
  },
  {
    calculation: 'compare-quotes',
    what: 'the cheapest by the metre',
    kind: 'library',
    source: decimalsWork,
    given: { quotes: ['£3,150', '£3,392'], quoteLengths: ['29.6 m', '32 m'] },
    gives: 'cheapestPerMetre',
    unit: 'GBP',
    expected: () => toTheCent('3392 / 32'),
    tolerance: 1e-9,
  },
  {
    calculation: 'price-range',
    what: '12.5 % on $1,234.56',
    kind: 'library',
    source: decimalsWork,
    given: { basePrice: '$1,234.56', pricePercent: '12.5 %' },
    gives: 'priceMore',
    unit: 'USD',
    expected: () => toTheCent('1234.56 * 1.125'),
    tolerance: 1e-9,
  },
  {
    calculation: 'rent-buy-dig',
    what: 'holes that pay for a rented day, counted one by one',
    kind: 'second derivation',
    source: 'hole by hole: the worth of each saved minute is added until it reaches the rent',
    given: { rentADay: '$93', machineHoleTime: '12 minutes', holeTime: '47 minutes', hourWorth: '$18' },
    gives: 'rentHoles',
    unit: 'hole',
    expected: () => holesByCounting(93, 35, 18),
    tolerance: 0,
  },
  {
    calculation: 'rent-buy-dig',
    what: 'days of rent that cost as much as the machine, paid one by one',
    kind: 'second derivation',
    source: 'day by day: rent is paid until it reaches the price less what it fetches',
    given: { rentADay: '€61', machinePrice: '€499', machineResale: '€120' },
    gives: 'buyDays',
    unit: 'rented day',
    expected: () => {
      let days = 0
      for (let paid = 0; paid < 499 - 120; days++) paid += 61
      return days
    },
    tolerance: 0,
  },
  {
    calculation: 'rent-buy-dig',
    what: 'what each saved hour costs',
    kind: 'library',
    source: decimalsWork,
    given: { rentADay: '$85', posts: '40', machineHoleTime: '10 minutes', holeTime: '50 minutes', dayHours: '5 h' },
    gives: 'savedHourCost',
    unit: 'USD',
    // 30 holes fit a day, so two days of rent
    expected: () => toTheCent('2 * 85 / (40 * 40 / 60)'),
    tolerance: 1e-9,
  },
  {
    calculation: 'lengths-bill',
    what: 'posts and rails by the foot, cut up into feet and paid one by one in cents',
    kind: 'second derivation',
    source: 'second derivation: every foot of every stick is paid by itself',
    given: {
      lengthPrices: ['$1.15', '$2.40'],
      pricedBy: 'ft',
      soldCounts: ['12', '5'],
      soldLengths: ['8 ft', '10 ft'],
    },
    gives: 'measuredCost',
    unit: 'USD',
    expected: () => {
      let cents = 0
      for (let rail = 0; rail < 12; rail++) for (let foot = 0; foot < 8; foot++) cents += 115
      for (let post = 0; post < 5; post++) for (let foot = 0; foot < 10; foot++) cents += 240
      return cents / 100
    },
    tolerance: 0,
  },
  {
    calculation: 'lengths-bill',
    what: 'battens in metres at a price by the foot',
    kind: 'library',
    source: decimalsWork,
    given: { lengthPrices: '$1.85', pricedBy: 'ft', soldCounts: '7', soldLengths: '3.9 m' },
    gives: 'measuredCost',
    unit: 'USD',
    expected: () => toTheCent('7 * 3.9 / 0.3048 * 1.85'),
    tolerance: 1e-9,
  },
  {
    calculation: 'packs',
    what: '213 pickets, bundles of ten taken off the stack until there are enough',
    kind: 'second derivation',
    source: 'second derivation: bundle after bundle is opened and counted out',
    given: { piecesWanted: '213', piecesAPack: '10' },
    gives: 'packs',
    unit: 'pack',
    expected: () => {
      let [pickets, bundles] = [0, 0]
      while (pickets < 213) {
        pickets += 10
        bundles++
      }
      return bundles
    },
    tolerance: 0,
  },
  {
    calculation: 'packs',
    what: 'screws counted to the pound, in a box sold by the kilogram',
    kind: 'library',
    source: decimalsWork,
    given: { piecesWanted: '100', piecesAWeight: '75', countedBy: 'lb', packWeight: '2 kg' },
    gives: 'piecesInPack',
    unit: 'piece',
    expected: () => Math.floor(inDecimals('75 * 2 / 0.45359237')),
    tolerance: 0,
  },
  {
    calculation: 'quote-by-length',
    what: 'the length at which both cost the same, found by halving',
    kind: 'second derivation',
    source: 'second derivation: the line is made longer and shorter until both bills agree',
    given: { measurePrice: '$33', pricedBy: 'ft', pricedLength: '140 ft', quoteExtras: '$450', flatQuote: '$4900' },
    gives: 'evenLength',
    unit: 'in',
    expected: () => {
      let [low, high] = [0, 1000]
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2
        if (450 + middle * 33 < 4900) low = middle
        else high = middle
      }
      return low * 12
    },
    tolerance: 0.5,
  },
  {
    calculation: 'quote-by-length',
    what: 'a quote by the metre with a gate and the old fence away',
    kind: 'library',
    source: decimalsWork,
    given: { measurePrice: '£88', pricedBy: 'm', pricedLength: '118 ft', quoteExtras: ['£260', '£180'] },
    gives: 'quotedByMeasure',
    unit: 'GBP',
    expected: () => toTheCent('118 * 0.3048 * 88 + 260 + 180'),
    tolerance: 1e-9,
  },
  {
    calculation: 'bulk-order',
    what: '1.3 yd³ of gravel by the half yard, with delivery',
    kind: 'second derivation',
    source: 'second derivation: half yard after half yard is put on until it is enough',
    given: { bulkVolume: '1.3 yd3', bulkStep: '1/2 yd3', measurePrice: '$40', pricedBy: 'yd', deliveryPrice: '$70' },
    gives: 'bulkCost',
    unit: 'USD',
    expected: () => {
      let [halves, cost] = [0, 70]
      while (halves / 2 < 1.3) {
        halves++
        cost += 20
      }
      return cost
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'bulk-order',
    what: 'bags for 0.8 m³ of 9.36 L each',
    kind: 'library',
    source: decimalsWork,
    given: { bulkVolume: '0.8 m3', bagYield: '9.36 L', bagPriced: '£6.20' },
    gives: 'bagsInsteadCost',
    unit: 'GBP',
    expected: () => Math.ceil(inDecimals('800 / 9.36')) * 6.2,
    tolerance: 1e-9,
  },
  {
    calculation: 'rent-by-hour',
    what: 'twenty holes at four an hour, 30 an hour',
    kind: 'second derivation',
    source: 'second derivation: hole after hole is dug, and an hour paid whenever one begins',
    given: { hourRate: '$30', leastHours: '3 h', holesWanted: '20', holesAnHour: '4' },
    gives: 'rentByHours',
    unit: 'USD',
    expected: () => {
      let paid = 0
      for (let hole = 0; hole < 20; hole++) if (hole % 4 === 0) paid += 30
      return Math.max(paid, 3 * 30)
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'budget-length',
    what: 'what 30 m at £85 lack of £2,000',
    kind: 'library',
    source: decimalsWork,
    given: { budget: '£2000', measurePrice: '£85', pricedBy: 'm', pricedLength: '30 m' },
    gives: 'budgetShort',
    unit: 'GBP',
    expected: () => inDecimals('30 * 85 - 2000'),
    tolerance: 1e-9,
  },
  {
    calculation: 'budget-length',
    what: '$1,800 spent foot by foot at $24',
    kind: 'second derivation',
    source: 'second derivation: a foot is paid for as long as the money lasts',
    given: { budget: '$1800', measurePrice: '$24', pricedBy: 'ft' },
    gives: 'affordableLength',
    unit: 'ft',
    expected: () => {
      let [left, feet] = [1800, 0]
      while (left >= 24) {
        left -= 24
        feet++
      }
      return feet
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'budget-pieces',
    what: 'pickets bought one by one until the money is gone, all with 20 % on top',
    kind: 'second derivation',
    source: 'second derivation: in whole pence, one picket after another',
    given: {
      budget: '£500',
      itemCounts: ['8', '10'],
      unitPrices: ['£15.50', '£6.00'],
      pieceBought: '£2.05',
      taxRate: '20 %',
    },
    gives: 'affordablePieces',
    unit: 'piece',
    expected: () => {
      let [pence, pickets] = [50000 - (8 * 1550 + 10 * 600) * 1.2, 0]
      while (pence >= 246) {
        pence -= 246
        pickets++
      }
      return pickets
    },
    tolerance: 0,
  },
  {
    calculation: 'enough-pieces',
    what: 'taken away one by one',
    kind: 'second derivation',
    source: 'second derivation: each that is there is hung, and what stays open is counted',
    given: { piecesWanted: '61', piecesHad: '48' },
    gives: 'piecesShort',
    unit: 'piece',
    expected: () => Array.from({ length: 61 }).filter((_, i) => i >= 48).length,
    tolerance: 0,
  },
  {
    calculation: 'amount-against',
    what: '46.22 ft³ against a cubic yard of 27',
    kind: 'library',
    source: decimalsWork,
    given: { volumeHere: '46.22 ft3', volumeMark: '1 yd3' },
    gives: 'volumeApart',
    unit: 'ft3',
    expected: () => inDecimals('46.22 - 27'),
    tolerance: 1e-9,
  },
  {
    calculation: 'amount-and-share',
    what: 'a tenth on top of $2,400',
    kind: 'second derivation',
    source: 'second derivation: eleven tenths of it',
    given: { amountBefore: '$2400', shareOnTop: '10 %' },
    gives: 'amountWithShare',
    unit: 'USD',
    expected: () => (2400 / 10) * 11,
    tolerance: 1e-9,
  },
  {
    calculation: 'so-many-each',
    what: 'two rails laid into each of twelve sections',
    kind: 'second derivation',
    source: 'second derivation: added up section by section',
    given: { groups: '12', piecesEach: '2' },
    gives: 'piecesInAll',
    unit: 'piece',
    expected: () => Array.from({ length: 12 }).reduce<number>((sum) => sum + 2, 0),
    tolerance: 0,
  },
  {
    calculation: 'quote-by-length',
    what: '140 ft at $28 and two gates at $195',
    kind: 'library',
    source: decimalsWork,
    given: { measurePrice: '$28', pricedBy: 'ft', pricedLength: '140 ft', extraEach: '$195', extraCount: '2' },
    gives: 'quotedByMeasure',
    unit: 'USD',
    expected: () => inDecimals('140 * 28 + 2 * 195'),
    tolerance: 1e-9,
  },
  {
    calculation: 'tax-on-amounts',
    what: 'an amount that no tax comes on',
    kind: 'library',
    source: decimalsWork,
    given: {
      taxedAmounts: ['$800', '$100'],
      untaxedAmounts: '$40',
      settledAmounts: '$25',
      taxRate: '10 %',
      taxIncluded: 'added',
    },
    gives: 'billTotal',
    unit: 'USD',
    expected: () => inDecimals('900 * 1.1 + 40'),
    tolerance: 1e-9,
  },
]
