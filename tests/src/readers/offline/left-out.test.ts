// What is left out in the midst of a talk, and changes that are spoken of and not understood. Each figure is worked beside it.
import { describe, expect, it } from 'vitest'
import { headlines, talk } from '../../talk.ts'

const last = async (...messages: string[]) => (await talk(messages)).at(-1)

// One third of the post above ground: 1.2 m / 2 = 600 mm; and the stone under it, 150 mm where nothing else is said.
const depth =
  'the fence is to be 1.2 metres out of the ground, how far down should the posts be going and how deep is the hole'

describe('what is left out', () => {
  it.each([
    'and without the stone?',
    'what if I left out the stones underneath altogether, how deep is the hole',
    'skip the gravel',
    'and without the scalpings',
    'no hardcore',
  ])('%s', async (said) => {
    expect(headlines(await last(depth, said))).toMatchObject({ holeDepth: '600 mm' })
  })

  it('is not what is left over, nor a limit', async () => {
    expect(headlines(await last(depth, 'no more than 100 mm of stone'))).not.toMatchObject({ holeDepth: '600 mm' })
  })
})

describe('a change that was not understood', () => {
  const bell =
    'belled holes, 10 posts 4x4, hole 10 in wide 48 in deep, bell 16 in across and 10 in high, bags of .75 cu ft. how many bags?'

  it.each(['and straight holes no bell?', 'add some for slop', 'and if the ground gives way on me'])(
    'is not answered by the figure that was: %s',
    async (said) => {
      const answer = await last(bell, said)
      expect(headlines(answer)).toEqual({})
      expect(answer?.declined?.why).toContain('Say the part and what it is now')
    },
  )

  it.each(['how many bags again?', 'how many bags was that'])(
    'the same question is answered again: %s',
    async (said) => {
      expect(headlines(await last(bell, said))).toMatchObject({ bags: '29 bags' })
    },
  )
})
