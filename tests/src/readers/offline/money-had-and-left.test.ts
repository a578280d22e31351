// Money that somebody has, what is spent of it, saved up for it; packs, prices of one, rents with first hours, and amounts that go on one bill.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

const answers = (rows: readonly (readonly [readonly string[], Record<string, string>])[]) =>
  it.each(rows)('%j', async (said, expected) => {
    const all = await talk(said)
    expect(results(all.at(-1))).toMatchObject(expected)
  })

describe('what is left of the money', () => {
  const bill = 'our budget is £400: 8 posts at 16.50, 90 pickets at 3.20. are we over?'
  answers([
    // 455.30 + 84 = 539.30; 750 − 539.30
    [['we have 750 put by. lumber was 455.30 and gravel 84, how much is left?'], { budgetLeft: '$210.70' }],
    // 539.30 × 1.08 = 582.444 → 582.44; 750 − 582.44
    [
      ['we have 750 put by. lumber was 455.30 and gravel 84, how much is left?', 'then 8% tax on all of it'],
      { budgetLeft: '$167.56' },
    ],
    // 132 + 288 = 420; 20 / 3.20 = 6.25 → 7
    [[bill], { budgetShort: '£20.00' }],
    [[bill, 'how many pickets do we have to leave out?'], { piecesToDrop: '7 pieces' }],
    // 320 + 50.50 = 370.50, with 6 % 392.73; 500 − 392.73: the tax is in it, and comes on once
    [
      [
        'wood is $320 and concrete $50.50, with 6% tax added what does it come to?',
        "I've set aside $500, how much will be left over?",
      ],
      { budgetLeft: '$107.27' },
    ],
    // (500 − 140) / 45 = 8; 90 more: 270 / 45 = 6
    [
      ['I save 45 dollars a week, the fence costs 500 and I have 140 already. How many weeks?'],
      { savingTime: '8 weeks' },
    ],
    [
      [
        'I save 45 dollars a week, the fence costs 500 and I have 140 already. How many weeks?',
        'my uncle gave me another 90, how many now?',
      ],
      { savingTime: '6 weeks' },
    ],
  ])

  it('what the lumber costs is asked for', async () => {
    expect(asked((await talk(["what's left of my 600 once the wood is paid?"]))[0])).toContain('spentAmounts')
  })
})

describe('packs and prices of one', () => {
  const caps = 'caps are 3.50 each, or 18 dollars for a pack of 6. I have 14 posts. what do they cost in packs only?'
  answers([
    // 3 × 18, 18 − 14 = 4 over; 14 × 3.50
    [[caps], { packsCost: '$54.00', singlesCost: '$49.00' }],
    [[caps, 'how many would be left over?'], { piecesOver: '4 pieces' }],
    // 120 × 5 = 600 in tubs of 250: 3 × 9.20
    [
      ['screws come in tubs of 250 at 9.20 a tub. 120 pickets, five screws go in each one. what do they cost?'],
      { packsCost: '$27.60' },
    ],
    // 18 × 27.50 = 495; × 1.15
    [['what do 18 posts cost me', '27.50 each and gst on top', '15%'], { billTotal: '569.25' }],
    // 96 × 2.10 = 201.60 and not 10.00: 60 ft at 7.5 in are 96, 101 with spare; 101 × 2.10
    [
      ['60 ft of fence, pickets 3 1/2 in wide with 4 in gaps, how many pickets?', 'they are a dollar ten apiece'],
      { billTotal: '$111.10' },
    ],
    // 80 × 20 = 1600; + 150 + 7 × 6 = 1792; 90 ft: 1800 + 192
    [
      ['80 feet at $20 a foot', 'plus a gate at 150 dollars and 7 caps at $6 each, what is it now'],
      { billTotal: '$1,792.00' },
    ],
    [
      [
        '80 feet at $20 a foot',
        'plus a gate at 150 dollars and 7 caps at $6 each, what is it now',
        "no, it's 90 feet not 80",
      ],
      { billTotal: '$1,992.00' },
    ],
  ])

  it('the price of one is never taxed as the whole', async () => {
    const [answer] = await talk(["they're 45 cents each and the tax is 6 percent, what's the total?"])
    expect(asked(answer)).toContain('itemCounts')
    expect(answer?.figures.filter((it) => it.role === 'result')).toEqual([])
  })
})

describe('a rent', () => {
  const tiers =
    'the auger rents for 55 dollars for the first three hours and 15 an hour after that. we need it five hours. what will it cost?'
  answers([
    // 55 + 2 × 15; a day at 78 saves 7
    [[tiers], { rentByHours: '$85.00' }],
    [[tiers, 'they have a day rate at 78, how much would I save?'], { rentsApart: '$7.00' }],
    // 16 × 12 = 192 min and 20: 3 h 32 → 4 × 21
    [
      [
        'what will the auger rental come to for 16 holes?',
        "it's 21 dollars an hour. 12 minutes a hole, and 20 minutes to bring it back.",
      ],
      { rentByHours: '$84.00', hoursCharged: '4 hours' },
    ],
  ])
})
