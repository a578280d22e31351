// Sentences that were shown once are guarded again by an audit, with each figure's text taken for its slot.
import { describe, expect, it } from 'vitest'
import { wouldNotPass } from '../../../src/guard/slots-of.ts'
import { talk } from '../talk.ts'

const said = 'Four posts in holes 12 in wide and 24 in deep, 80 lb bags. How many bags?'

describe('sentences that were shown', () => {
  // (π/4 × 144 − 12.25) × 24 / 1728 × 4 = 5.60 ft³; / 0.6 = 9.34 → 10
  it.each([
    ['Buy 10 bags together. Fill the holes to the ground.', 0],
    ['1. Buy 10 bags.\n2. Stack them on a pallet.', 0],
    ['Buy 11 bags together.', 1],
    ['Buy ten bags together.', 1],
    ['Buy 10 bags together.\nBuy 110 bags together.', 1],
    ['Buy about 10 bags.', 1],
    ['Your gates are 10 bags.', 1],
    ['Nobody checks the lines.', 1],
  ])('%s: %i not let through', async (prose, refused) => {
    const [card] = await talk([said])
    expect(card && wouldNotPass(prose, card, said)).toHaveLength(refused)
  })
})
