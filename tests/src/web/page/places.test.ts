// The page and the engine call a place by the same words.
import { expect, it } from 'vitest'
import { placeLabel, postKinds, together, yard } from '../../../../engine/places.ts'
import { placeInWords } from '../../../../src/web/page/places.ts'

const kinds = Object.keys(postKinds)

it('every kind of post, any two together and all of them are said as the engine says them', () => {
  const pairs = kinds.flatMap((one) => kinds.map((other) => together([one, other])))
  for (const place of [...kinds, ...pairs, together(kinds)]) expect(placeInWords(place)).toBe(placeLabel(place))
  expect(placeInWords('corner-posts+gate-posts')).toBe('corner and gate posts')
})

it('the whole yard goes without saying', () => {
  expect(placeInWords(yard)).toBe('')
  expect(placeLabel(yard)).toBe('')
})
