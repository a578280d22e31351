// What so much of a thing costs that is sold by the foot, the metre, the yard or the pound.
//
//   60 ft  at  $1.85 a foot      60 of them
//   2 yd³  at  $38 a yard         2 of them: a yard of gravel is a cubic yard
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { type Kind, unitNamed } from '../../quantities/units.ts'
import {
  measuredCost,
  measurePrice,
  pricedArea,
  pricedBy,
  pricedLength,
  pricedMass,
  pricedVolume,
} from '../../words/prices.ts'

const bought = {
  length: ['pricedLength', 'timesLength', 'oneLength'],
  area: ['pricedArea', 'timesArea', 'oneArea'],
  volume: ['pricedVolume', 'timesVolume', 'oneVolume'],
  mass: ['pricedMass', 'timesMass', 'oneMass'],
} as const
const because = 'how many times what it is sold by goes into what you buy'

export const priceByMeasure = calculation({
  name: 'price-by-measure',
  title: 'What a length, an area, a volume or a weight costs',
  answers: 'What so many feet, square metres, yards or pounds cost at a price for one of them, to the cent.',
  needs: { measurePrice, pricedBy, pricedLength, pricedArea, pricedVolume, pricedMass },
  may: ['pricedLength', 'pricedArea', 'pricedVolume', 'pricedMass'],
  oneOf: [['pricedLength', 'pricedArea', 'pricedVolume', 'pricedMass']],
  gives: { measuredCost },
  headlines: ['measuredCost'],
  called: ['price of'],
  locals: {
    oneLength: 'length',
    oneArea: 'area',
    oneVolume: 'volume',
    oneMass: 'mass',
    many: 'number',
    cent: 'money',
  },
  lines: {
    timesLength: ['pricedLength / oneLength', because],
    timesArea: ['pricedArea / oneArea', because],
    timesVolume: ['pricedVolume / oneVolume', because],
    timesMass: ['pricedMass / oneMass', because],
    measuredCost: ['round(many * measurePrice, cent)', 'the price of one, that many times; half a cent goes up'],
  },
  work({ measurePrice: price, pricedBy: soldBy }, { line, has, put, refuse, rows, remark }) {
    const kinds = (Object.keys(bought) as (keyof typeof bought)[]).filter((kind) => has(bought[kind][0]))
    const much = kinds.map((kind) => rows(bought[kind][0])[0] as Quantity)
    if (kinds.length > 1)
      refuse(
        bought[kinds[1] as keyof typeof bought][0],
        `I have ${much.map(show).join(' and ')}, and one price. Give one thing at a time.`,
      )
    const [kind] = kinds as [keyof typeof bought]
    // A yard of gravel, soil or concrete is a cubic yard, and nobody says so.
    const unit = soldBy === 'yd' && kind === 'volume' ? 'yd3' : soldBy
    const label = pricedBy.options?.[unit]?.label ?? unit
    if (unitNamed(unit).kind !== kind)
      refuse(
        'pricedBy',
        `${show(much[0] as Quantity)} cannot be paid by the ${label}: one is ${named[kind]}, the other ${named[unitNamed(unit).kind] ?? 'something else'}. Check what it is sold by.`,
      )
    const [, times, one] = bought[kind]
    put(one, { ...quantity(1, unit) })
    put('many', line(times))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: price.unit })
    line('measuredCost')
    if (unit !== soldBy) remark('A yard of loose stuff is a cubic yard, so I took the price to be for that.')
    if (unit === 'gal') remark('I took US gallons. An imperial gallon is larger, and a different price.')
  },
  sources: [
    { fact: 'cost = how much / what it is sold by × price', from: 'Arithmetic; needs no table.' },
    { fact: 'a yard of loose stuff is a cubic yard', from: 'common practice, no source' },
  ],
  cautions: [],
  examples: [
    // 60 × 1.85 = 111.00
    {
      ask: 'What do 60 ft of rail at $1.85 a foot cost?',
      given: { pricedLength: '60 ft', measurePrice: '$1.85', pricedBy: 'ft' },
      expect: { measuredCost: '$111.00' },
    },
    // 2.5 × 42 = 105
    {
      ask: 'What does 2.5 m³ of gravel cost at £42 per cubic metre?',
      given: { pricedVolume: '2.5 m³', measurePrice: '£42', pricedBy: 'm3' },
      expect: { measuredCost: '£105.00' },
    },
    // 1 1/2 × 38 = 57
    {
      ask: 'What is the price of 1 1/2 cubic yards of gravel at $38 a yard?',
      given: { pricedVolume: '1 1/2 yd³', measurePrice: '$38', pricedBy: 'yd' },
      expect: { measuredCost: '$57.00' },
    },
  ],
})

const named: Readonly<Partial<Record<Kind, string>>> = {
  length: 'a length',
  area: 'an area',
  volume: 'a volume',
  mass: 'a weight',
}
