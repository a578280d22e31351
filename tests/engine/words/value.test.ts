import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import { isQuantity } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { parseValue } from '../../../engine/words/value.ts'
import type { Word } from '../../../engine/words/word.ts'
import { runNamed } from '../run-named.ts'

const holes = { posts: '4', holeDepth: '600 mm', bagYield: '9.36 L' }

// 4 in = 101.6 mm, 36 in = 914.4 mm
it('what would be usual is told in the unit of the value that is not', () => {
  const asked = (holeDiameter: string, system: 'imperial' | 'metric'): string =>
    runNamed('concrete-for-posts', { ...holes, holeDiameter }, { system }).said
  expect(asked('1500 mm', 'metric')).toContain(
    'I read the hole width as 1,500 mm. That is outside what I would expect: 101.6 mm to 914.4 mm.',
  )
  expect(asked('1.5 m', 'metric')).toContain('0.1016 m to 0.9144 m')
  expect(asked('60 in', 'imperial')).toContain('4 in to 36 in')
})

const valued = (name: string, text: string): string | undefined => {
  const value = parseValue(vocabulary.get(name) as Word, text, 'imperial')
  return isQuantity(value) ? show(value) : undefined
}

it('a noun that is no unit makes no measure of a number', () => {
  expect(valued('bagYield', '0.6 ft3')).toBe('0.6 ft³')
  expect(valued('bagYield', '3 bananas')).toBeUndefined()
  expect(valued('posts', '3 posts')).toBe('3 posts')
})

describe('a stick called by its size', () => {
  // Dressed sizes: PS 20, American Softwood Lumber Standard
  it.each([
    ['railDepth', '2x4', '3 1/2 in'],
    ['railThickness', '2x4', '1 1/2 in'],
    ['picketWidth', '1x4', '3 1/2 in'],
    ['picketThickness', '1x4', '3/4 in'],
    ['postWidth', '4x4', '3 1/2 in'],
    ['postName', '4x4', '4 in'],
    ['postWidth', '6x6 actual', '6 in'],
    ['holeDiameter', '4x4', undefined],
  ] as const)('%s of %s is %s', (word, text, shown) => expect(valued(word, text)).toBe(shown))
})

it('a range is no value: which end would be meant is not for us to choose', () => {
  expect(valued('holeDiameter', '10 to 12 in')).toBeUndefined()
})
