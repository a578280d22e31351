// This file is about people told without a number. Common practice, no source: whoever speaks works too.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'

const people = (said: string): (string | number)[] =>
  readQuantities(said).flatMap((it) => (it.people ? [it.said, it.bare?.valueOf() ?? 0] : []))

describe('people at work', () => {
  it.each([
    ['me and my brother, 6 hours a day', ['me and my brother', 2]],
    ['it is me, my tools and a friend', []],
    ['Me & my older son', ['Me & my older son', 2]],
    ['me and my son and my daughter', ['me and my son and my daughter', 3]],
    ['my wife and I paint on Sundays', ['my wife and I', 2]],
    ['what if my husband helps?', ['my husband helps', 2]],
    ['and my son digs too', ['my son digs', 2]],
    ['with my wife too', ['my wife', 2]],
    ["my neighbour's fence is 40 ft", []],
    ['my wife won’t help', []],
    ['my brother in law says 3 ft', []],
    ['me and 2 mates', []],
    ['how many days on my own at 7 hours a day', ['on my own', 1]],
    ['what if I do it all by myself', ['by myself', 1]],
    ['just me, 4 hours', ['just me', 1]],
    ['Buddy helps', ['Buddy helps', 2]],
    ['just me and my son', ['me and my son', 2]],
    ['is it just me or is the gap odd', []],
    ['a gate on its own', []],
  ] as const)('%s', (said, expected) => {
    expect(people(said)).toEqual(expected)
  })
})
