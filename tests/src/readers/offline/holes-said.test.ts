// Two kinds of holes in one message, holes filled as if no post stood in them, gravel and its bags. The figures are worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('two kinds of holes', () => {
  it('are told each for itself, and asked for together', async () => {
    // 6 × (π/4 × 81 − 12.25) × 28 = 8629.6 in³; 2 × (π/4 × 144 − 30.25) × 28 = 4639.4; together 13,269 in³ = 7.679 ft³; / 0.6 → 13
    const answers = await talk([
      '6 line posts in 9 in holes and 2 corner posts in 12 in holes, all 28 in deep. 4x4 for the line posts, 6x6 for the corner posts. how much concrete in total?',
      'how many 80 lb bags is that?',
    ])
    expect(results(answers[0])).toMatchObject({ concrete: '7.679 ft³' })
    expect(results(answers[1])).toMatchObject({ bags: '13 bags' })
  })
})

describe('posts that are forgotten', () => {
  // π/4 × 0.0625 × 0.7 × 18 = 0.6185 m³
  it.each([
    '18 holes 250 dia 700 deep, forget the posts. how many cubes of concrete?',
    '18 holes 250 mm wide and 700 mm deep, not counting the posts, how much concrete in cubic metres?',
  ])('%s', async (said) => {
    expect(results((await talk([said]))[0])).toMatchObject({ concreteFilled: '0.6185 m³' })
  })

  it('the truck is ordered by its steps', async () => {
    // 0.6185 × 1.05 = 0.6494; steps of 0.25: 0.75
    const answers = await talk([
      '18 holes 250 dia 700 deep, forget the posts. how many cubes of concrete?',
      'add 5 % waste. the plant sells lots of 0.25, what do I order?',
    ])
    expect(results(answers[1])).toMatchObject({ orderFilled: '0.75 m³' })
  })
})

describe('gravel is no concrete', () => {
  it('is asked for behind the bags', async () => {
    // π/4 × 0.0625 × 0.12 × 8 = 47.12 L; × 1.15 = 54.19
    const answers = await talk([
      'How many 20 kg bags for 8 holes 250 mm wide and 700 mm deep with 120 mm of gravel, 90 mm posts?',
      'and how many litres of gravel is that in all?',
    ])
    expect(results(answers[1])).toMatchObject({ gravel: '54.19 L' })
  })

  it('comes in bags of its own', async () => {
    // π/4 × 1 × 1/3 × 12 = 3.1416 ft³; × 1.15 = 3.613; / 0.5 → 8
    const answers = await talk([
      'how many cubic feet of gravel for 12 holes 12 in wide with 4 in of gravel in each?',
      'they sell it in bags of half a cubic foot',
    ])
    expect(results(answers[1])).toMatchObject({ looseBags: '8 bags' })
  })
})
