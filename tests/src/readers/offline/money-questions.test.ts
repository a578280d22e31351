// Money as people ask about it: what a thousand is, what a price is for, and what no figure may be made of.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

const answers = (rows: readonly (readonly [string | readonly string[], Record<string, string>])[]) =>
  it.each(rows)('%s', async (said, expected) => {
    const all = await talk(typeof said === 'string' ? [said] : said)
    expect(results(all.at(-1))).toMatchObject(expected)
  })

describe('a price by the metre or the foot', () => {
  answers([
    // 1480 / 32; 2500 / 40; 1250 / 10; 4500 / 30
    ['1.480 € for 32 m of fence, what is that per metre', { costPerMetre: '€46.25' }],
    ['my fence of 32 m cost 1.480 €, cost per metre?', { costPerMetre: '€46.25' }],
    ['€2.500 for 40 m of fence, cost per metre', { costPerMetre: '€62.50' }],
    ['1 250 Kč for 10 m of fence, how much a metre', { costPerMetre: '125.00 Kč' }],
    ['30 m fence for 4 500 zł, cost per metre', { costPerMetre: '150.00 zł' }],
    // 28 × 145; 42 × 32; 31 × 140; 38 × 2.5
    ['fence costs 28 dollars a foot, how much for 145 ft', { measuredCost: '$4,060.00' }],
    ['the fence is $28/ft, I have 145 ft. What does it cost?', { measuredCost: '$4,060.00' }],
    ['145 ft of fence at 28 dollars a foot', { measuredCost: '$4,060.00' }],
    ['fencing at £42 a metre, I need 32 m, how much?', { measuredCost: '£1,344.00' }],
    ['$31 per linear foot, 140 ft, total?', { measuredCost: '$4,340.00' }],
    ['gravel €38 per m³, 2.5 m³', { measuredCost: '€95.00' }],
  ])

  it('a price that may be a thousand or not is asked about', async () => {
    const [answer] = await talk(['fence was $1.480 for 32 m, how much per metre'])
    expect(results(answer)).toEqual({})
    expect(asked(answer)).toEqual(['fenceCost'])
  })
})

describe('lumber by the thousand board feet', () => {
  answers([
    // 2 × 4 × 8 / 12 = 5 1/3; × 1.45 = 7.733
    ['lumber is $1450 per thousand board feet, what does one 2x4x8 cost', { woodPrice: '$7.73' }],
    // 2 × 6 × 16 / 12 = 16; × 1.20
    ['how much is a 2x6x16 at $1.20 a board foot', { woodPrice: '$19.20' }],
    // 2 × 4 × 10 / 12 = 6 2/3; × 35 × 0.98 = 228.67
    ['what do 35 2x4x10s cost at $980 per mbf', { woodPrice: '$228.67' }],
    // 1 × 6 × 8 / 12 = 4; × 10 × 0.90
    ['ten 1x6x8 boards, $900 per thousand board feet, price?', { woodPrice: '$36.00' }],
    // 20 × 6.48: the price of a rail, and of no board foot
    ['20 8 ft rails at $6.48 each cost?', { billTotal: '$129.60' }],
  ])
})

describe('tax', () => {
  answers([
    // 612.40 × 0.08875 = 54.3505
    ['8.875% sales tax on $612.40', { billTax: '$54.35', billTotal: '$666.75' }],
    ['$480 plus 8.25% tax', { billTax: '$39.60', billTotal: '$519.60' }],
    ['gst 10% on $2,200 how much', { billTax: '$220.00', billTotal: '$2,420.00' }],
    // 240 × 20 / 120
    ['how much vat is in £240 at 20%, vat included', { billTax: '£40.00', billNet: '£200.00' }],
    // 12 × 5.98 = 71.76; × 19 / 119 = 11.457
    ['12 bags at €5.98 each, VAT 19 % already included, what does it cost', { billTotal: '€71.76', billTax: '€11.46' }],
    // 8 × 14.25 = 114; × 1.2
    ["8 posts at £14.25 each, VAT 20% not included, what's the bill", { billTotal: '£136.80' }],
    // 160 × 2.85 = 456; × 1.08
    ['160 pickets at $2.85 plus tax 8%, total?', { billTotal: '$492.48' }],
  ])
})

describe('totals', () => {
  answers([
    ['materials $2,140, concrete $186, hire $95: total', { moneySum: '$2,421.00' }],
    ['labour £800, timber £1,240 and skip £210. what is the total?', { moneySum: '£2,250.00' }],
    ['posts 380, rails 290, pickets 610, what is the total', { numberSum: '1,280' }],
    ['posts 380, rails 290, pickets 610 - whats the total', { numberSum: '1,280' }],
    ['12 bags at 89 Kč', { billTotal: '1,068.00 Kč' }],
    ['12 pickets at 18,50 € each, what does it cost', { billTotal: '€222.00' }],
  ])

  it('a price without its currency is a price, and that it has none is said', async () => {
    for (const said of [
      '160 pickets at 2.85',
      '160 pickets @ 2.85 each',
      '160 pickets at 2.85, what do they come to?',
    ]) {
      const [answer] = await talk([said])
      // 160 × 2.85
      expect(results(answer)).toMatchObject({ billTotal: '456.00' })
      expect(answer?.reply).toContain('You named no currency')
    }
  })
})

describe('quotes', () => {
  answers([
    // 4200 / 120 = 35; 3900 / 110 = 35.45
    ['4200 for 120 ft, 3900 for 110 ft: which is cheaper', { cheapestQuote: 'first', cheapestPerFoot: '35.00' }],
    ['$3,900 for 110 ft or $4,200 for 120 ft, which is the better deal?', { cheapestQuote: 'second' }],
    ['£3,150 for 30 m vs £3,392 for 32 m, which is cheaper', { cheapestQuote: 'first', cheapestPerMetre: '£105.00' }],
  ])
})

describe('a bill, line by line', () => {
  answers([
    // 14 × 16.75 + 96 × 2.35 = 460.10
    ['14 posts at 16.75 and 96 slats at 2.35, what do I owe', { billTotal: '460.10' }],
    ['£3.20 a pale, £14 a post. 120 and 11 of them, what does that come to?', { billTotal: '£538.00' }],
    ['rails $7.20 each, need 24, and 12 8 ft posts at $15, total?', { billTotal: '$352.80' }],
    // 460.10 × 1.06 = 487.706
    ['14 posts at 16.75 and 96 slats at 2.35. tax 6. total?', { billTotal: '487.71' }],
    // 14 × 16.75 + 80 × 2.35 = 422.50
    [['14 posts at 16.75 and 96 slats at 2.35, what do I owe', 'only 80 slats'], { billTotal: '422.50' }],
    [['14 posts at 16.75 and 96 slats at 2.35, what do I owe', '16 less slats'], { billTotal: '422.50' }],
    // 460.10 + 4 × 9.99
    [['14 posts at 16.75 and 96 slats at 2.35, cost?', 'and 4 boxes of screws at 9.99'], { billTotal: '500.06' }],
    // 14 × 17.50 + 96 × 2.35
    [['14 posts at 16.75 and 96 slats at 2.35, cost?', 'posts are 17.50 now'], { billTotal: '470.60' }],
    [['14 posts at 16.75 and 96 slats at 2.35, cost?', 'forget the posts'], { billTotal: '225.60' }],
    [['14 posts at 16.75 and 96 slats at 2.35, cost?', 'plus $40 delivery'], { billTotal: '$500.10' }],
    [['14 posts at £16.75, cost?', 'plus vat', '20'], { billTotal: '£281.40' }],
    // 640 × 1.2
    ['put 20 % vat on 640', { billTax: '128.00', billTotal: '768.00' }],
  ])

  it('posts at a spacing are no line of one', async () => {
    const [answer] = await talk(['14 posts at 2.40 and 13 bays at 2.40, what length?'])
    expect(results(answer)).not.toHaveProperty('billTotal')
  })
})
