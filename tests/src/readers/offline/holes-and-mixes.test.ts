// Square holes, hung posts, mixes by parts and ready-mix, as people speak of them. The figures are worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('a square hole is worked as a square', () => {
  // (144 − 12.25) × 30 = 3952.5 in³ = 2.2873 ft³
  it.each([
    'how much concrete in one of 5 holes 12 in square and 30 in deep with 4x4 posts, per hole',
    'how much concrete per hole: 5 posts, 12 in square holes 30 in deep, 4x4 posts',
    'Square holes, 12 inches wide, 30 inches deep, 5 posts 3 1/2 in square. How much concrete per hole?',
    'How much concrete in each hole? The holes are 12 in square, 30 in deep, 5 4x4 posts.',
  ])('%s', async (said) => {
    expect(results((await talk([said]))[0])).toMatchObject({ concretePerHole: '2.287 ft³' })
  })

  // (90,000 − 8100) × 600 = 49.14 L
  it.each(['6 posts of 90 mm, 300 mm square holes 600 deep, how much concrete per hole?'])('%s', async (said) => {
    expect(results((await talk([said]))[0])).toMatchObject({ concretePerHole: '49.14 L' })
  })

  // (78.5398 − 12.25) × 30 = 1.1509 ft³: the posts are square, the holes are not.
  it.each([
    '4 posts 3 1/2 in square in 10 in holes 30 in deep, how much concrete per hole?',
    'Holes 10 in wide and 30 in deep, 4 posts 3 1/2 in square: how much concrete per hole?',
    'how much concrete per hole for 4 square posts of 3 1/2 in, round holes 10 in across 30 in deep',
  ])('%s', async (said) => {
    expect(results((await talk([said]))[0])).toMatchObject({ concretePerHole: '1.151 ft³' })
  })

  it('what is asked again with the other shape is worked again', async () => {
    const answers = await talk([
      '11 posts, 10 in holes 30 in deep with 6 in of gravel, 60 lb bags. How many bags?',
      'and if the holes are square?',
      'no, round holes',
    ])
    expect(answers.map((it) => results(it).bags)).toEqual(['23 bags', '30 bags', '23 bags'])
  })
})

describe('a hung post', () => {
  // 78.5398 × 30 − 12.25 × 26 = 2037.7 in³ = 1.1792 ft³
  it.each([
    'how much concrete per hole: 4 posts, holes 10 in wide and 30 in deep, 4 in of concrete under the post, 4x4s',
    '4 4x4 posts hung 4 in off the bottom of holes 10 in wide and 30 in deep: how much concrete per hole?',
  ])('%s', async (said) => {
    expect(results((await talk([said]))[0])).toMatchObject({ concretePerHole: '1.179 ft³', embedment: '26 in' })
  })
})

describe('a mix by parts', () => {
  // 13.5 × 1.54 / 6 = 3.465 ft³ of cement; a bag of 94 lb is one
  it.each([
    'How much cement, sand and gravel for half a yard of concrete, 1-2-3 mix?',
    'how many bags of cement for half a yard of concrete mixed 1:2:3',
    'I mix my own, 1 : 2 : 3, and need half a yard of concrete. How many bags of cement?',
    'One part cement, two parts sand and three parts gravel for half a yard of concrete: how many bags?',
  ])('%s', async (said) => {
    expect(results((await talk([said]))[0])).toMatchObject({ cementBags: '4 bags', sandForMix: '6.93 ft³' })
  })

  it('takes its volume from the holes that were spoken of', async () => {
    const answers = await talk([
      '11 posts, 10 in holes 30 in deep with 6 in of gravel, 60 lb bags. How many bags?',
      'and if I mix it myself 1:2:3, how many bags of cement?',
      'how much ready mix would that be?',
    ])
    // 10.1276 × 1.54 / 6 = 2.5994 → 3 bags; 10.1276 / 6.75 = 1.5004 → 2 quarter yards
    expect(results(answers[1])).toMatchObject({ cementBags: '3 bags', cementVolume: '2.599 ft³' })
    expect(results(answers[2])).toMatchObject({ readyMix: '0.5 yd³', bagsForVolume: '23 bags' })
  })

  it('bags of cement without parts are still the bags of mix that people mean', async () => {
    // π/4 × 144 − 12.25 = 100.85 × 36 = 2.101 ft³; × 10 / 0.6 = 35.02 → 36
    const [answer] = await talk(['how many bags of cement for 10 posts, holes 12 in wide and 3 ft deep, 80 lb bags'])
    expect(results(answer)).toMatchObject({ bags: '36 bags' })
  })
})
