// Words that are one slip of the finger apart, and words that are not.
import { describe, expect, it } from 'vitest'
import { meantBySlip, oneSlip } from '../../../engine/quantities/slips.ts'

describe('one slip', () => {
  it.each([
    ['picket', 'picket'],
    ['picket', 'pickat'],
    ['picket', 'picke'],
    ['picket', 'icket'],
    ['picket', 'pickets'],
    ['picket', 'pickket'],
    ['picket', 'pikcet'],
    ['picket', 'pickte'],
    ['ab', 'ba'],
    ['a', ''],
  ])('parts “%s” and “%s”, whichever way round', (a, b) => {
    expect([oneSlip(a, b), oneSlip(b, a)]).toEqual([true, true])
  })

  // Two letters, two places apart, a letter swapped with one that is not there, or one that is swapped and changed.
  it.each([
    ['picket', 'packat'],
    ['picket', 'pick'],
    ['picket', 'pickeds'],
    ['ab', 'ca'],
    ['ab', 'bc'],
    ['abc', 'bad'],
    ['abc', 'cba'],
    ['picket', 'ockets'],
    ['', 'ab'],
  ])('does not part “%s” and “%s”', (a, b) => {
    expect([oneSlip(a, b), oneSlip(b, a)]).toEqual([false, false])
  })

  it('is what trying every slip gives', () => {
    const letters = ['a', 'b', 'c']
    const longer = (some: readonly string[]): string[] => some.flatMap((it) => letters.map((x) => it + x))
    const words = ['', ...longer(['']), ...longer(longer([''])), ...longer(longer(longer([''])))]
    const slipsOf = (word: string): Set<string> => {
      const places = [...word, ''].map((_, i) => [word.slice(0, i), word.slice(i)] as const)
      return new Set([
        word,
        ...places.flatMap(([head, tail]) => [
          head + tail.slice(1),
          ...letters.flatMap((x) => [head + x + tail, ...(tail === '' ? [] : [head + x + tail.slice(1)])]),
          ...(tail.length > 1 ? [`${head}${tail[1]}${tail[0]}${tail.slice(2)}`] : []),
        ]),
      ])
    }
    for (const a of words) {
      const near = slipsOf(a)
      expect(words.filter((b) => oneSlip(a, b))).toEqual(words.filter((b) => near.has(b)))
    }
  })
})

it('is forgiven in a word of five letters, and in none that means something itself', () => {
  const known = [
    ['inches', 'in'],
    ['litre', 'L'],
    ['feet', 'ft'],
  ] as const
  expect(meantBySlip('inchs', known)).toBe('in')
  expect(meantBySlip('litr', known)).toBeUndefined()
  expect(meantBySlip('litrr', known)).toBe('L')
  expect(meantBySlip('liter', known)).toBe('L')
  expect(meantBySlip('liner', known)).toBeUndefined()
  expect(meantBySlip('trenches', known)).toBeUndefined()
})
