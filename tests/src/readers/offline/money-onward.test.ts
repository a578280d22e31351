// What comes after an answer is of that answer: the price of each, packs of them, tax on it, another amount beside it, what there is already.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

const answers = (rows: readonly (readonly [readonly string[], Record<string, string>])[]) =>
  it.each(rows)('%j', async (said, expected) => {
    const all = await talk(said)
    expect(results(all.at(-1))).toMatchObject(expected)
  })

// 60 ft at 3 1/2 + 2 1/2 in: 720 / 6 = 120, and 126 with 5 % spare.
const pickets = '60 ft of fence, pickets 3 1/2 in wide with 2 1/2 in gaps, how many pickets?'
// A 10 in hole of 30 in takes 2 bags of 80 lb; eight of them 16.
const bags = [
  'round holes 10 in wide, 30 in deep, 4x4 posts, how many 80 lb bags per hole',
  'there are 8 posts. how many bags in all',
]

describe('the price of each, told after they were counted', () => {
  answers([
    // 126 × 3.10
    [[pickets, 'theyre 3.10 each, what do they come to'], { billTotal: '390.60' }],
    [[pickets, 'they cost $3.10 a piece'], { billTotal: '$390.60' }],
    // 120 × 1.15 = 138; × 3.10
    [[pickets, 'at 3.10 each with fifteen percent over for bad ones, what do they cost'], { billTotal: '427.80' }],
    // 16 × 5.25 = 84, and not the 2 to a hole
    [[...bags, 'bags are 5.25 each, whats the damage'], { billTotal: '84.00' }],
    // × 1.08
    [[...bags, 'a bag is 5.25 plus 8 tax, total?'], { billTotal: '90.72' }],
    [[...bags, 'bags are 5.25 each, whats the damage', 'and with tax at 8'], { billTotal: '90.72' }],
  ])

  it('what was taken for “they” is said', async () => {
    const all = await talk([...bags, 'bags are 5.25 each, whats the damage'])
    expect(all.at(-1)?.reply).toContain('16 bags')
  })

  // 16 × 0.4 more is no price: a mark that it is held against.
  it('“is that over 80” tells no price', async () => {
    const all = await talk([...bags, 'bags are 5.25 each', 'is that over 80?'])
    expect(results(all.at(-1))).toMatchObject({ comparison: 'more than that', moneyApart: '4.00' })
  })
})

describe('packs, what there is already, and trips', () => {
  answers([
    // 126 / 9 = 14
    [[pickets, 'they are sold in bundles of 9'], { packs: '14 packs', piecesOver: '0 pieces' }],
    // 14 × 25.50
    [[pickets, 'they are sold in bundles of 9', 'a bundle is 25.50'], { billTotal: '357.00' }],
    // 120 hang on the fence; 120 − 95
    [
      [pickets, 'my neighbour left me 95 of them, how many more?'],
      { enoughPieces: 'not enough', piecesShort: '25 pieces' },
    ],
    [[...bags, 'we already have 20, is that enough?'], { enoughPieces: 'enough', piecesBeyond: '4 pieces' }],
    // 16 × 80 = 1,280; 900 / 80 = 11 a trip
    [[...bags, 'the pickup takes 900 lb, how many trips?'], { trips: '2 trips', hauledWeight: '1,280 lb' }],
    // 50 / (60 − …): (720 − 100 × 3.5) / 101 = 3.663… in
    [[pickets, 'what gap would make 100 of them do?'], { tapeGap: '3 11/16 in' }],
  ])
})

describe('so much more on top, and another amount beside it', () => {
  answers([
    // 140 × 28 = 3920; + 2 × 195 = 4310; × 1.06
    [['140 ft of fence at $28 a foot, plus $195 for each of the 2 gates, price?'], { quotedByMeasure: '$4,310.00' }],
    [
      ['140 ft of fence at $28 a foot, plus $195 for each of the 2 gates, price?', 'add 6 % tax'],
      { billTotal: '$4,568.60' },
    ],
    // 4310 × 1.05
    [
      ['140 ft of fence at $28 a foot, plus $195 for each of the 2 gates, price?', 'and 5 % contingency on top'],
      { amountWithShare: '$4,525.50' },
    ],
    // (800 + 100) × 1.1 = 990; + 40
    [
      [
        'timber $800 and screws $100, 10 % sales tax on both, delivery $40 is not taxed. the $25 permit is paid already. what do i pay?',
      ],
      { billTotal: '$1,030.00', billTax: '$90.00' },
    ],
    // π/4 × 1² × 3 = 2.356 ft³, less 3.5² / 144 × 3 = 0.2552: 2.101 × 20 = 42.02
    [
      ['20 holes 12 in wide, 3 ft deep, 4x4 posts. is that a yard of concrete?'],
      { comparison: 'more than that', volumeAsMark: '1.556 yd³' },
    ],
    // 60 × 1 × 1/4 = 15 ft³
    [['gravel strip 60 ft long, 12 in wide, 3 in deep. how many yards'], { stripStone: '0.5556 yd³' }],
    [
      ['gravel strip 60 ft long, 12 in wide, 3 in deep. how much gravel', 'is that more than half a yard?'],
      { comparison: 'more than that' },
    ],
  ])
})

describe('a budget, a load, a rent', () => {
  answers([
    // 1200 / 16; 90 × 16 = 1440
    [
      ['i have 1200 to spend and it works out at 16 a foot. how long a fence can i build'],
      { affordableLength: '75 ft' },
    ],
    [
      [
        'i have 1200 to spend and it works out at 16 a foot. how long a fence can i build',
        'it should be 90 ft, how short am i',
      ],
      { budgetShort: '240.00' },
    ],
    // 300 − 6 × 20 = 180; / 2.40 = 75; × 1.2: 300 − 144 = 156; / 2.88 = 54.2
    [
      ['My budget is £300. Six posts at £20 each first. Pickets are £2.40 each. How many pickets can I buy?'],
      { affordablePieces: '75 pieces' },
    ],
    [
      [
        'My budget is £300. Six posts at £20 each first. Pickets are £2.40 each. How many pickets can I buy?',
        'those are without VAT at 20 %',
      ],
      { affordablePieces: '54 pieces' },
    ],
    // 15 ft³ = 0.556 yd³ → 1 yd³ by half yards: 38 + 50
    [
      [
        'gravel strip 60 ft long, 12 in wide, 3 in deep. how much gravel',
        'its 38 a yard and 50 delivery, only sold by the half yard',
      ],
      { orderedVolume: '1 yd³', bulkCost: '88.00' },
    ],
    // 42.02 ft³ = 1.556 yd³, charged as 2: 320; 42.02 / 0.6 = 70.04 → 71 × 5 = 355
    [
      [
        '20 holes 12 in wide, 3 ft deep, 4x4 posts. how much concrete',
        'a truck is 160 a yd with a 2 yd minimum, or 80 lb bags at 5.00. which is cheaper?',
      ],
      { cheaperSupply: 'the load', bulkCost: '320.00', bagsInsteadCost: '355.00' },
    ],
    // 18 / 6 = 3 h, charged as 4: 100; a day 95
    [
      ['the auger digs 6 holes an hour and i have 18 holes. it rents at 25 an hour, 4 hour minimum. cost?'],
      { rentByHours: '$100.00' },
    ],
    [
      [
        'the auger digs 6 holes an hour and i have 18 holes. it rents at 25 an hour, 4 hour minimum. cost?',
        'a day is 95',
      ],
      { cheaperRent: 'by the day', rentsApart: '$5.00' },
    ],
  ])
})

describe('a sum and its price in one message', () => {
  answers([
    // 11 × 3 = 33; × 6.20
    [
      ['11 panels with 3 rails each, rails are $6.20. total for the rails?'],
      { piecesInAll: '33 pieces', billTotal: '$204.60' },
    ],
    // 11 × 2 = 22; × 6.20
    [
      ['11 panels with 3 rails each, rails are $6.20. total for the rails?', 'what if 2 rails'],
      { piecesInAll: '22 pieces', billTotal: '$136.40' },
    ],
    // 12 × 10 = 120 pickets; × 2 × 2 = 480; × 1.1 = 528; / 100 → 6; × 9.50
    [
      [
        'each 8 ft panel takes 12 pickets on 2 rails, 2 screws per crossing, there are 10 panels. how many boxes of 100, and what do they cost at $9.50 a box?',
      ],
      { screwBoxes: '6 boxes', billTotal: '$57.00' },
    ],
    // × 1.05 = 504; 6 boxes still
    [
      [
        'each 8 ft panel takes 12 pickets on 2 rails, 2 screws per crossing, there are 10 panels. how many boxes of 100, and what do they cost at $9.50 a box?',
        'make it 30 % spare screws',
      ],
      { screwsToBuy: '624 screws', screwBoxes: '7 boxes', billTotal: '$66.50' },
    ],
    // (456 + 2) / 7.5 = 61.07…
    [
      ['A friend gave us 50 pickets, 5 1/2 in wide. The front is 38 ft, we like a 2 in gap. Do we have enough?'],
      { enoughPieces: 'not enough', piecesShort: '11 pieces' },
    ],
  ])
})
