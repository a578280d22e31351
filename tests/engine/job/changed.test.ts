// What a word comes to by a change. Every figure is a sum of two that stand beside it.
import { describe, expect, it } from 'vitest'
import { type Decision, decide, newJob, readQuantities, show, valueAfter, vocabulary } from '../../../engine/index.ts'
import { quantity } from '../../../engine/quantities/quantity.ts'
import type { Word } from '../../../engine/words/word.ts'

const told = (word: string, amount: number | string, unit: string, at = 'yard'): Decision => ({
  word,
  at,
  value: quantity(amount, unit),
  turn: 0,
})
const job = decide(
  newJob,
  [told('holeDepth', 36, 'in'), told('holeDiameter', 12, 'in'), told('posts', 10, 'post'), told('runLength', 30, 'm')],
  [],
)
const changed = (word: string, said: string, of = job, at = 'yard'): string | undefined => {
  const [reading] = readQuantities(said)
  const value = reading && valueAfter(of, vocabulary.get(word) as Word, at, reading)
  return value && show(value)
}

describe('a change', () => {
  it('is made to what was decided', () => {
    expect(changed('holeDepth', '6 in deeper')).toBe('42 in')
    expect(changed('holeDiameter', '2 in narrower')).toBe('10 in')
    expect(changed('posts', '3 more posts')).toBe('13 posts')
    expect(changed('posts', 'one post fewer')).toBe('9 posts')
  })

  it('may be in other units', () => {
    expect(changed('holeDepth', 'a foot deeper')).toBe('48 in')
    expect(changed('runLength', '50 cm shorter')).toBe('29.5 m')
  })

  it('may be so many times', () => {
    expect(changed('holeDepth', 'half that depth')).toBe('18 in')
    expect(changed('posts', 'twice as many posts')).toBe('20 posts')
  })

  it('is made to what holds at the place, or above it', () => {
    const two = decide(job, [told('holeDepth', 42, 'in', 'gate-posts')], [])
    expect(changed('holeDepth', '6 in deeper', two, 'gate-posts')).toBe('48 in')
    expect(changed('holeDepth', '6 in deeper', two, 'corner-posts')).toBe('42 in')
  })

  it('is made to what was worked, where nobody decided it', () => {
    const worked = {
      word: 'pickets',
      at: 'yard',
      value: quantity(16, 'picket'),
      calculation: 'picket-spacing',
      ref: 'r1.pickets',
    }
    expect(changed('pickets', 'one picket less', { ...job, results: [worked] })).toBe('15 pickets')
  })

  it('is made to a usual value, where nothing else is known', () => {
    expect(changed('hingeGap', '1/8 in wider')).toBe('1/2 in')
  })

  it('is none of another kind, of what is not known, or where nothing would be left', () => {
    expect(changed('holeDepth', '3 lb more')).toBeUndefined()
    expect(changed('opening', '2 in wider')).toBeUndefined()
    expect(changed('holeDepth', '40 in shallower')).toBeUndefined()
    expect(changed('holeDepth', '36 in shallower')).toBeUndefined()
  })

  // The top rail lies 6 in under the tips: lowered by 2 it lies 8 in under them.
  it('makes more of what is measured down, where a thing is lowered', () => {
    const rails = decide(newJob, [told('overTop', 6, 'in'), told('underBottom', 8, 'in')], [])
    expect(changed('overTop', 'drop the top rail by 2 in', rails)).toBe('8 in')
    expect(changed('overTop', '2 in higher', rails)).toBe('4 in')
    expect(changed('underBottom', 'raise the bottom rail by 2 in', rails)).toBe('10 in')
  })

  it('is none of a word that is itself a difference', () => {
    expect(changed('oversize', '2 in wider')).toBeUndefined()
  })
})
