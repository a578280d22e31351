// Amounts by which something is to change, in the ways that people say them. Common practice, no source.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'

const changes = (said: string): string[] =>
  readQuantities(said).map((it) => (it.change ? `${it.said} ${it.change.way}` : it.said))

describe('what is said to change by so much', () => {
  it.each([
    ['make the holes 2 in wider', '2 in more'],
    ['6 inches shorter please', '6 inches less'],
    ['the run is 3 m longer than i said', '3 m more'],
    ['two more posts', 'two more'],
    ['and 3 posts more', '3 more'],
    ['one gate post fewer', 'one less'],
    ['another 4 bays', '4 more'],
    ['an extra 4 posts on the corner', '4 more'],
    ['deepen the holes by 6 in', '6 in more'],
    ['widen them an inch', 'an inch more'],
    ['shorten up the bays 2 ft', '2 ft less'],
    ['take 150 mm off the depth', '150 mm less'],
    ['knock off 3', '3 less'],
    ['200 off the opening', '200 less'],
    ['plus 4 bays', '4 more'],
    ['a bit less, by 10 mm', '10 mm less'],
    ['1/8 more at the latch', '1/8 more'],
    ['drop the top rail by 2 in', '2 in less'],
    ['what if they are 50 mm wider too', '50 mm more'],
  ])('%s', (said, expected) => {
    expect(changes(said)).toEqual([expected])
  })

  it.each([
    ['half that gap', 'half times'],
    ['twice as many posts', 'twice times'],
    ['double the posts', 'double times'],
  ])('%s', (said, expected) => {
    expect(changes(said)).toEqual([expected])
  })

  it.each([
    ['now deepen the holes by 6 in', 'deepen the holes by 6 in'],
    ['make it 2 in wider please', '2 in wider'],
    ['so widen them an inch', 'widen them an inch'],
    ['and 3 posts more', '3 posts more'],
    ['one gate post fewer now', 'one gate post fewer'],
    ['and 3 more posts', '3 more'],
    ['then another 4 bays', 'another 4'],
    ['an extra 4 posts on the corner', 'extra 4'],
    ['and plus 4 bays', 'plus 4'],
    ['now add 3 posts', 'add 3'],
    ['now drop 2 pickets', 'drop 2'],
    ['please take 2 in off the gap', 'take 2 in off'],
    ['please take off 2 in', 'take off 2 in'],
    ['please take 2 in away', 'take 2 in away'],
    ['that is 200 off the opening', '200 off'],
    ['now half that gap', 'half'],
  ])('knows by which words it was said: “%s” by “%s”', (said, words) => {
    const [reading] = readQuantities(said)
    expect(said.slice(reading?.change?.start, reading?.change?.end)).toBe(words)
  })
})

describe('what is no change', () => {
  it.each([
    'make the holes 14 in wide',
    '2 in wider than the posts',
    'no more than 4 in',
    '4 or more',
    '1/8 or less',
    '10 % extra for waste',
    '2 more questions',
    'rails at 7 in lower and 36 in upper',
    'the bottom rail is 7 in off the ground',
    '2 shorter posts',
    'a gate post needs half the fence',
    '5 more posts at $28.75',
    '$3,450 less 12 percent',
    'shorten the bays to 6 ft',
    'holes 12 in by 36 in',
  ])('%s', (said) => {
    expect(readQuantities(said).filter((it) => it.change)).toEqual([])
  })
})
