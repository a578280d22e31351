// This file is about rails told without a number. Common practice, no source: between a top and a bottom rail there is one in the middle.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'

const rails = (said: string): (string | number)[] =>
  readQuantities(said).flatMap((it) => (it.rails ? [it.said, it.bare?.valueOf() ?? 0] : []))

describe('a rail in the middle', () => {
  it.each([
    ['where does the middle rail go', ['middle rail', 3]],
    ['top and bottom, and a centre rail', ['centre rail', 3]],
    ['add a third rail', ['third rail', 3]],
  ])('makes three: %s', (said, expected) => expect(rails(said)).toEqual(expected))

  it.each([
    'no middle rail',
    'without a middle rail',
    'do i need a third rail',
    'three rails, how high is the middle rail',
    'the middle of the rail',
  ])('does not where there is none, or they are counted: %s', (said) => expect(rails(said)).toEqual([]))
})
