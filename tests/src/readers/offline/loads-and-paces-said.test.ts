// Loads against what a vehicle takes, money that is left, packs, paces and coats, as people say them. The figures are worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

const last = async (...said: string[]) => results((await talk(said)).at(-1))

describe('hauling', () => {
  // 1200 / 60 = 20 at once; 40 bags: 2; with 150 aboard 17: 3
  it('a payload, so many bags and the weight of one are told apart', async () => {
    const answers = await talk([
      'My pickup may haul 1200 lb. 40 bags of the 60 lb mix. how many trips',
      'my son rides along, he is 150 lbs',
    ])
    expect(answers.map((it) => results(it).trips)).toEqual(['2 trips', '3 trips'])
  })

  // 900 / 80 = 11 at once; 24 / 11 → 3
  it('the weight of a bag is none of the whole load', async () => {
    expect(
      await last('how many trips to the yard for 24 bags', '80 lb bags, the van can do about 900 lb'),
    ).toMatchObject({
      trips: '3 trips',
    })
  })

  // 450 − 210 = 240; / 20 = 12; 28 / 12 → 3
  it('how many go in one go, with people aboard', async () => {
    const answers = await talk([
      'Three of us in the estate car: me at 90 kg, herself at 70 kg and the lad at 50 kg. The book says it may carry 450 kg. How many 20 kg bags can we bring home in the one go?',
      'I need 28 of them, so how many runs is that?',
    ])
    expect(answers.map((it) => results(it).piecesAtOnce)).toEqual(['12 pieces', '12 pieces'])
    expect(results(answers[1])).toMatchObject({ trips: '3 trips' })
  })

  // 18 × π/4 × 100 × 6 × 1.15 / 1728 = 5.645 ft³; / 0.5 → 12 bags; / 5 → 3 trips
  it('bags of gravel, then trips of those bags', async () => {
    const answers = await talk([
      '18 holes 10 in wide, 6 in of gravel in each. how many cubic feet of gravel?',
      'they sell it in half cubic foot bags, how many bags should I bring home?',
      'My car takes only five of those bags at once. How many trips is that?',
    ])
    expect(results(answers[1])).toMatchObject({ looseBags: '12 bags' })
    expect(results(answers[2])).toMatchObject({ trips: '3 trips' })
  })

  // 18 × 20 + 25 × 12 = 660; − 600 = 60; 2 trips; with 20 posts 600: 1
  it('several kinds of things, over or under', async () => {
    const answers = await talk([
      'our trailer is good for 600 kg. 18 bags at 20 kg, 25 posts at 12 kg. over or under and by how much',
      'trips then',
      'what if it is 20 posts',
    ])
    expect(results(answers[0])).toMatchObject({ overPayload: '60 kg', mixedWeight: '660 kg' })
    expect(answers.slice(1).map((it) => results(it).mixedTrips)).toEqual(['2 trips', '1 trip'])
  })

  it('an overloaded trailer is asked for what is on it', async () => {
    const answers = await talk([
      'is my trailer overloaded? 30 posts on it',
      'posts are 18 kg each',
      'it may carry 500 kg',
    ])
    expect(asked(answers[0])).toEqual(['loadWeights'])
    expect(results(answers[2])).toMatchObject({ overPayload: '40 kg' }) // 540 − 500
  })
})

describe('money', () => {
  // 650 − 180 × 2.15 = 263; − 9 × 13.50 = 141.50; − 8 × 5.75 = 95.50
  it('what is left, less more things', async () => {
    const answers = await talk([
      'budget 650 bucks. 180 pickets at 2.15 ea. whats left',
      'minus 9 posts @ 13.50',
      'can i get 8 bags of concrete at 5.75 outta whats left',
    ])
    expect(answers.map((it) => results(it).budgetLeft)).toEqual(['$263.00', '$141.50', '$95.50'])
  })

  // 400 − 70 × 4.20 − 8 × 16 = −22
  it('another budget, another number of one thing', async () => {
    expect(
      await last(
        'I have €500 to spend. I need 60 pales at €4.20 and 8 posts at €16. How much will I have left?',
        'And if the budget were €400?',
        'make it 70 pales',
      ),
    ).toMatchObject({ budgetShort: '€22.00' })
  })

  // 19 / 6 → 4 × 21.50 = 86; 16 / 6 → 3
  it('packs with all told in one go, and those that need none', async () => {
    const answers = await talk(['19 posts. caps come 6 to a box 21.50 a box. cost?', 'oh wait 3 of them need no cap'])
    expect(answers.map((it) => results(it).packsCost)).toEqual(['$86.00', '$64.50'])
  })

  // 30 / 2 + 1 = 16; / 4 = 4; × 7.40
  it('a cap to each post that was counted', async () => {
    expect(
      await last(
        'posts every 2 m along 30 m, how many posts?',
        'caps are sold in packs of 4 at €7.40 a pack, I want one for each post. What do I spend on caps?',
      ),
    ).toMatchObject({ packsCost: '€29.60' })
  })

  // 5.50 × 16
  it('two prices of two lengths', async () => {
    expect(
      await last('1.8 m posts are 12.40 and the 2.4 m ones are 17.90. I need 16. how much more for the long ones'),
    ).toMatchObject({ moreForAll: '$88.00', moreForEach: '$5.50' })
  })

  it('before tax no rate is asked', async () => {
    const [, second] = await talk([
      'opening 84 in, pickets 3 1/2 in, gap 2 in, how many pickets?',
      'at $2.20 apiece what would they cost before tax?',
    ])
    expect(asked(second)).toEqual([])
    expect(results(second)).toMatchObject({ billTotal: '$33.00' }) // 15 × 2.20
  })
})

describe('time', () => {
  // 19 / 2 = 9.5 h → 5 evenings of 2; 19 / 5 = 3.8 → 2
  it('holes an hour, and somebody beside me', async () => {
    const answers = await talk([
      'I dig 2 holes an hour and get two hours of an evening for it. 19 holes in all. how many evenings?',
      'my brother comes too and does 3 an hour beside me',
    ])
    expect(answers.map((it) => results(it).diggingDays)).toEqual(['5 digging days', '2 digging days'])
  })

  // 120 / 15
  it('so much of it a day', async () => {
    expect(await last('how many days to put it up', '120 ft. 15 ft a day')).toMatchObject({
      daysAtPace: '8 working days',
    })
  })

  // Tuesday 6 May 2025 is the first of 8: 6–9, 12–15 May; three lost: 16, 19, 20
  it('days of work without weekends, then days lost', async () => {
    const answers = await talk(['start tue 6 may 2025. 8 days work, no weekends. last day', 'lost 3 days to rain. now'])
    expect(answers.map((it) => results(it).lastWorkDay)).toEqual(['Thursday 15 May 2025', 'Tuesday 20 May 2025'])
  })

  // 3 × 2 + 2 × 3 = 12; from 9 to 18: (9 + 3) / 5 → 2
  it('coats by the clock', async () => {
    const answers = await talk([
      'a coat takes 2 hr to put on, 3 hr dry before next. 3 coats. start 7 am. finish when',
      'what if we start at 9 am',
      'dew from 1800, nothing goes on after. how many coats are done that day',
    ])
    expect(results(answers[0])).toMatchObject({ coatsSpan: '12 hours' })
    expect(results(answers[2])).toMatchObject({ coatsDone: '2 coats' })
  })
})

describe('paint, wood and concrete', () => {
  // 20 × 1.5 × 2 / 10 × 1.1 = 6.6 L; 3 tins of 2.5 × 39
  it('what was asked for is told by length and height', async () => {
    const answers = await talk([
      'How much stain will I need for the fence?',
      '20 m long and 1.5 m high, the one side only, two coats and the tin says 10 m² to the litre.',
      "they're 2.5 l tins at $39 each, what will that cost?",
    ])
    expect(results(answers[1])).toMatchObject({ finishNeeded: '6.6 L', faceArea: '30 m²' })
    expect(results(answers[2])).toMatchObject({ finishCost: '$117.00' })
  })

  // 18 × 1.2 × 2 × 0.75 = 32.4; × 2 / 9 × 1.1 = 7.92
  it('only the part of the face that is wood', async () => {
    expect(
      await last(
        "Gaps are a quarter so I count three quarters of it. It's 18 m long and 1.2 m high, both sides, two coats, 9 square metres out of a litre. How many litres of stain?",
      ),
    ).toMatchObject({ finishNeeded: '7.92 L' })
  })

  // 120 × 0.002 × 10 = 2.4
  it('a width and a gap after shrinking at the rate told', async () => {
    const answers = await talk([
      'boards 120 wide at 26%. they shrink 0.2% of width per 1% moisture. width at 16%',
      'nailed up wet with 30 gap. gap after',
    ])
    expect(results(answers[0])).toMatchObject({ shrunkWidth: '117.6 mm' })
    expect(results(answers[1])).toMatchObject({ gapOpened: '32.4 mm' })
  })

  it('weeks where weeks are asked', async () => {
    const answers = await talk([
      'boards at 30% and drying 3 points a week, want 18%. how many weeks till I can stain?',
      'and if it lost 4 points a week?',
    ])
    expect(answers.map((it) => results(it).weeksAtRate)).toEqual(['4 weeks', '3 weeks'])
    expect(answers.flatMap(asked)).toEqual([])
  })

  // 40 / 2 + 1 = 21; × 30 / 10 = 63; × 20
  it('concrete told by the hole, and what the bags weigh', async () => {
    const answers = await talk([
      '40 m run, posts 2 m apart, each hole takes 30 litres and a 20 kg bag makes 10 litres. how many bags',
      'whats it all weigh',
    ])
    expect(results(answers[0])).toMatchObject({ bags: '63 bags' })
    expect(results(answers[1])).toMatchObject({ mixedWeight: '1,260 kg' })
  })
})
