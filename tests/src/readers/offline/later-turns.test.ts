// What a later turn says stands beside what was said before, unless it puts it out of date.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('what a later turn leaves standing', () => {
  it.each([
    ['surface 20 %, can I paint?', 'depth 12 %'],
    ['The surface reads 20 %, can I paint?', 'At depth it reads 12 %'],
    ['At the surface the meter says 20 %, can I paint?', 'and the core reads 12 %'],
  ])('a reading at the surface and one at depth are both kept, and the wetter decides: %s', async (first, second) => {
    const [, answer] = await talk([first, second])
    expect(results(answer).dryEnough).toBe('not dry enough')
    expect(JSON.stringify(answer)).toContain('20 % at the surface')
  })

  it('a reading with no depth said gives way to one at depth', async () => {
    const [, answer] = await talk(['The meter reads 20 %, can I paint?', 'at depth it is 12 %'])
    expect(results(answer).dryEnough).toBe('dry enough')
  })

  it('the yield printed on the bag leaves its weight, so that the load is still told', async () => {
    const [, answer] = await talk([
      'Concrete for 10 holes 10 in wide and 30 in deep, 4x4 posts, 80 lb bags: how many bags?',
      'The bag yields 0.55 ft3. What do the bags weigh?',
    ])
    // π × 25 × 30 − 3 1/2² × 30 = 1988.7 in³ = 1.1509 ft³; × 10 / 0.55 = 20.9 → 21 bags of 80 lb
    expect(results(answer).bagsLoad).toBe('1,680 lb')
  })

  it('another weight puts the yield of the old bag out of date', async () => {
    const [, , answer] = await talk([
      'Concrete for 10 holes 10 in wide and 30 in deep, 4x4 posts, 80 lb bags: how many bags?',
      'The bag yields 0.55 ft3',
      'What if I take 60 lb bags?',
    ])
    // 60 / 133 1/3 = 0.45; 11.509 / 0.45 = 25.6 → 26
    expect(results(answer).bags).toBe('26 bags')
  })

  it('a ball rule and a widest gap are both kept', async () => {
    const [, wider] = await talk([
      'How many 3 1/2 in pickets in a 93 in opening if a 4 in ball must not pass?',
      'gaps no wider than 5 in',
    ])
    expect(results(wider).pickets).toBe('12 pickets')
    const [, ball] = await talk([
      'How many 3 1/2 in pickets in a 93 in opening with gaps no wider than 2 1/2 in?',
      'and a 4 in ball must not pass',
    ])
    expect(results(ball).pickets).toBe('16 pickets')
  })

  it.each(['do not undo anything', "don't undo that"])('what is denied is not done: %s', async (said) => {
    const answers = await talk([
      'Holes 10 in wide and 30 in deep, 4x4 posts, bags make 0.6 cu ft, 8 posts: how many bags?',
      'holes 12 in wide',
      said,
      'how many bags?',
    ])
    // π × 36 × 30 − 3 1/2² × 30 = 3025.4 in³ = 1.7508 ft³; × 8 / 0.6 = 23.3 → 24
    expect(results(answers.at(-1)).bags).toBe('24 bags')
  })

  it.each([
    ['what about 12 in holes?', '35 bags'],
    ['and with 12 inch holes?', '35 bags'],
    // π × 25 × 22 − 3 1/2² × 22 = 1458.4 in³ = 0.8440 ft³; × 11 / 0.45 = 20.6
    ['8 inches of gravel instead', '21 bags'],
  ])('sizes told anew ask the same as before, at the same place: %s', async (said, bags) => {
    const answers = await talk([
      'How many 60 lb bags for 11 corner and gate posts? Holes 10 in wide, 30 in deep, 6 in of gravel.',
      said,
    ])
    const figure = answers.at(-1)?.figures.find((it) => it.headline)
    // π × 36 × 24 − 3 1/2² × 24 = 2420.3 in³ = 1.4006 ft³; × 11 / 0.45 = 34.2
    expect([figure?.word, figure?.at, figure?.text]).toEqual(['bags', 'corner-posts+gate-posts', bags])
  })

  it('what is told of the posts that were asked about is told of them', async () => {
    const answers = await talk([
      'how many bags for the corner posts?',
      '4 posts',
      '10 in wide and 30 in deep',
      '60 lb bags',
    ])
    expect(answers[1]?.asks.map((it) => it.word)).not.toContain('posts')
    const figure = answers.at(-1)?.figures.find((it) => it.headline)
    // π × 25 × 30 − 3 1/2² × 30 = 1988.7 in³ = 1.1509 ft³; × 4 / 0.45 = 10.2
    expect([figure?.word, figure?.at, figure?.text]).toEqual(['bags', 'corner-posts', '11 bags'])
  })

  it('two words ask for another result of the same sum', async () => {
    const [, answer] = await talk([
      'How many 60 lb bags for 11 posts, holes 10 in wide, 30 in deep, 6 in of gravel?',
      'per hole',
    ])
    // π × 25 × 24 − 3 1/2² × 24 = 1591.0 in³ = 0.9207 ft³; / 0.45 = 2.05
    expect(results(answer).bagsPerHole).toBe('3 bags')
  })

  it('two words that cannot be taken are not called off the trade', async () => {
    const [, answer] = await talk(['23 posts 4x4x8 of wet fir, what do they weigh?', 'per stick'])
    expect(answer?.declined?.why ?? '').not.toContain('outside what I know')
  })

  it('a reading that was asked for is one, though nothing names it', async () => {
    const [, answer] = await talk(['is this dry enough to finish?', '14 at depth, can says 15'])
    expect(results(answer).dryEnough).toBe('dry enough')
  })

  it('who asks what spacing is told the spacing first', async () => {
    const [answer] = await talk([
      'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps of at most 2 1/2 in?',
    ])
    const leads = answer?.figures.filter((it) => it.headline).map((it) => it.text)
    // 70 5/8 − 12 × 3 1/2 = 28 5/8; shared by 13 gaps = 2 21/104 in
    expect(leads).toEqual(['2 3/16 in', '12 pickets', '2 21/104 in'])
  })
})
