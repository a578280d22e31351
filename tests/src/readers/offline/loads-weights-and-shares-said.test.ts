// Money with amounts that are gone, riders weighed together, loads that come on top, wood by its density and at another moisture, dates that go on from a date. Worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

const last = async (...said: string[]) => results((await talk(said)).at(-1))

describe('money that is partly gone', () => {
  const first =
    'We have £540. The concrete came to £96.20 and the gate was £110. Palings are 2.85 each, how many can we buy?'
  // 540 − 206.20 = 333.80; / 2.85 = 117.1
  it('how many the rest buys', async () => {
    expect(await last(first)).toMatchObject({ affordablePieces: '117 pieces', spentFirst: '£206.20' })
  })
  // 140 × 2.85 = 399; + 206.20 − 540
  it('and what is lacking for more', async () => {
    expect(await last(first, 'if we need 140 how much more money would we have to find')).toMatchObject({
      budgetShort: '£65.20',
    })
  })
  it('things that somebody has are no money', async () => {
    expect(await last('i have 60 and need 75, am i short?')).toMatchObject({ piecesShort: '15 pieces' })
  })
})

describe('loads', () => {
  // 1000 − 240 = 760; / 60 = 12 at once; 40 / 12 → 4
  it('two who ride along, weighed together, and then one of them alone', async () => {
    const said = '40 bags, 60 lb. the truck takes 1000 lb and thats with me and my wife, 240 together. how many trips?'
    expect(await last(said)).toMatchObject({ payloadLeft: '760 lb', trips: '4 trips' })
    // 1000 − 160 = 840; / 60 = 14; 40 / 14 → 3
    expect(await last(said, 'she stays home so only me 160')).toMatchObject({ payloadLeft: '840 lb', trips: '3 trips' })
  })
  // 30 × 25 + 200 = 950; a lump of 200 and 12 bags, then 18 bags
  it('what comes on top, weighed whole', async () => {
    expect(
      await last('30 bags of 25 kg, the trailer takes 500 kg. How many trips?', 'plus 200 kg of rails as well'),
    ).toMatchObject({ mixedTrips: '2 trips', mixedWeight: '950 kg' })
  })
  // 100 × 20 × 1200 mm = 2.4 L; × 0.5 = 1.2 kg; × 60
  it('sticks by the density that was told', async () => {
    expect(await last('What do 60 palings weigh, 100 mm wide, 20 mm thick and 1200 long, at 500 kg/m3?')).toMatchObject(
      { sticksWeight: '72 kg' },
    )
  })
})

describe('wood that dries', () => {
  // 300 × 1.12
  it('what it weighs at another moisture', async () => {
    const said = 'A slice weighs 390 g wet and 300 g oven dry, what is its moisture?'
    expect(await last(said)).toMatchObject({ dryBasis: '30 %' })
    expect(await last(said, 'and what should it weigh at 12%?')).toMatchObject({ weightAimed: '336 g' })
  })
  // 4 × 0.05
  it('the gap that a share of the width opens', async () => {
    expect(
      await last('boards are 100 mm wide and will shrink 5 percent. nailed tight, how big are the gaps then?'),
    ).toMatchObject({ gapShrunk: '5 mm' })
  })
})

describe('days', () => {
  // 10 holes, 3 a nap: 4; Friday 5, Saturday 6, Monday 8, Tuesday 9 June 2026
  it('so many in a nap, one nap a day', async () => {
    expect(
      await last(
        'how many days to dig my holes',
        '10 holes, I manage 3 per nap, one nap a day',
        'I start friday june 5 2026, no work on sundays. what date am I done',
      ),
    ).toMatchObject({ lastDayOn: 'Tuesday 9 June 2026', daysInAll: '4 working days' })
  })
  // 8 June + 5 = 13; four days from there on: 13, 14, 15, 16
  it('work that begins on the date before', async () => {
    expect(
      await last(
        'Posts go in on Monday 8 June 2026 and the concrete waits five days. What date can I go on?',
        'Then there are four days of hanging pickets. What date is the last of them?',
      ),
    ).toMatchObject({ lastDayOn: 'Tuesday 16 June 2026' })
  })
})
