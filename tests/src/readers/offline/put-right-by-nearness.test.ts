// A number alone that puts something right, and bills whose numbers and prices do not stand side by side.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

describe('a correction', () => {
  const told = 'clear opening between two posts 1950, pickets 70 wide, gap near 40. how many pickets?'

  // 1950 = n × 60 + (n + 1) × gap: with 19, (1950 − 1140)/20 = 40.5
  it('is of the told size that is nearest by far', async () => {
    const answers = await talk([told, 'Sorry, they are 60. I held the tape wrong.'])
    expect(results(answers[1])).toMatchObject({ pickets: '19 pickets', gap: '40.5 mm' })
  })

  it('is of none where two are as near', async () => {
    const answers = await talk([told, 'Sorry, it is 54. I held the tape wrong.'])
    expect(results(answers[1])).not.toHaveProperty('pickets')
  })

  it('that speaks of what somebody had besides is no stock of pickets', async () => {
    const answers = await talk([told, 'Sorry, they are 60. I had my gloves on.'])
    expect(results(answers[1])).not.toHaveProperty('enoughPieces')
  })
})

describe('a bill', () => {
  it('takes no budget for a price of what stands behind it', async () => {
    const [only] = await talk([
      'We put £700 by, told her 900. 120 pickets at £2.10, 10 posts at £12 and £60 for stones. what do I pay out of the 700?',
    ])
    expect(results(only)).not.toHaveProperty('billTotal')
    expect(asked(only).length).toBeGreaterThan(0)
  })

  // 6 × 11 + 40 × 2 = 146
  it('takes all numbers first and all prices behind', async () => {
    const [only] = await talk(['6 posts at $11 and 40 pickets at $2: what do I pay in all?'])
    expect(results(only)).toMatchObject({ billTotal: '$146.00' })
  })
})
