// Who rides along, what one piece weighs, and what a trailer holds, as people say it. The figures are worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('who rides along weighs no bag', () => {
  it('comes off the payload when it is told later', async () => {
    // 1200 / 60 = 20 at once, 50 bags: 3 trips; (1200 − 170) / 60 = 17: 3 trips
    const answers = await talk([
      '50 bags of 60 lb concrete, my pickup payload is 1200 lb. how many trips?',
      "and I'm 170 lb myself",
    ])
    expect(answers.map((it) => results(it).piecesAtOnce)).toEqual(['20 pieces', '17 pieces'])
    expect(results(answers[1])).toMatchObject({ trips: '3 trips', payloadLeft: '1,030 lb' })
  })

  it('stays at home, and only the driver is left', async () => {
    // 500 − 90 − 70 = 340; / 20 = 17; without her 410 / 20 = 20; 61 / 20 = 3.05 → 4
    const answers = await talk([
      'My van may carry 500 kg. I weigh 90 kg and my partner 70 kg. How many 20 kg bags can we take in one trip?',
      'and if she stays at home?',
      'there are 61 bags, how many trips with me alone?',
    ])
    expect(answers.map((it) => results(it).piecesAtOnce)).toEqual(['17 pieces', '20 pieces', '20 pieces'])
    expect(results(answers[2])).toMatchObject({ trips: '4 trips' })
  })

  it('a load of so much is the whole of it, and no one piece', async () => {
    // 2100 / 1400 = 1.5 → 2
    const [answer] = await talk(['A load of 2100 lb to haul, and the payload of the truck is 1400 lb: how many trips?'])
    expect(results(answer)).toMatchObject({ trips: '2 trips' })
  })

  it('a limit of the barrow is none of the truck', async () => {
    // 30 / 2 = 15 by the barrow; (1000 − 200) / 80 = 10 at once: 3
    const answers = await talk([
      '30 bags of 80 lb concrete in a wheelbarrow, 2 bags at a time. How many trips?',
      "my truck's payload is 1,000 lb and I weigh 200 lb, how many truck trips for those 30 bags?",
    ])
    expect(answers.map((it) => results(it).trips)).toEqual(['15 trips', '3 trips'])
  })
})

describe('the loads of what was named', () => {
  // π/4 × 1 × 3 × 16 = 37.70 ft³; × 1.3 = 49.01 = 1.815 yd³; / 1.25 → 2
  it.each([
    '16 holes 12 in across and 36 in deep, the soil swells 30 percent, my trailer holds a yard and a quarter. how many trailer loads?',
    'soil out of 16 holes 12 in wide 36 in deep swelling 30 %, the skip takes 1.25 yards, how many loads?',
  ])('%s', async (said) => {
    expect(results((await talk([said]))[0])).toMatchObject({ vesselLoads: '2 loads', soilOut: '1.815 yd³' })
  })

  it('are asked for, and never those of a usual barrow', async () => {
    const [first, second] = await talk([
      'soil from 10 holes 300 mm wide and 700 mm deep: how many ute loads is that?',
      'it holds 0.4 of a cube',
    ])
    expect(first?.asks.map((it) => it.word)).toEqual(['loadSize'])
    expect(results(first)).not.toHaveProperty('barrows')
    // π/4 × 0.09 × 0.7 × 10 = 0.4948; × 1.25 = 0.6185; / 0.4 → 2
    expect(results(second)).toMatchObject({ vesselLoads: '2 loads' })
  })

  it('the soil is weighed as it lay, or as it lies on the heap', async () => {
    // 0.4948 × 1700 = 841.2 kg; loose 0.6185 × 1300 = 804.1 kg
    const answers = await talk([
      'soil from 10 holes 300 mm wide and 700 mm deep, how much is it?',
      'it is 1.7 t a cube in the ground, what does it weigh?',
      'no, 1.3 tonnes a loose cube. what does it weigh?',
    ])
    expect(results(answers[1])).toMatchObject({ spoilWeight: '841.2 kg' })
    expect(results(answers[2])).toMatchObject({ spoilWeight: '804.1 kg' })
  })
})
