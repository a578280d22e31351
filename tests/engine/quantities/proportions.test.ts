// Proportions are read as their parts, and what only looks like one is not.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'

const parts = (text: string): string[] =>
  readQuantities(text)
    .filter((it) => it.proportion)
    .map((it) => it.bare?.toFraction() ?? '')

describe('proportions', () => {
  it.each([
    ['a 1:2:3 mix', ['1', '2', '3']],
    ['1 : 2 : 4', ['1', '2', '4']],
    ['1:1.5:3 concrete', ['1', '3/2', '3']],
    ['1:1½:3', ['1', '3/2', '3']],
    ['1 : 2 1/4 : 3', ['1', '9/4', '3']],
    ['a 1-2-3 mix', ['1', '2', '3']],
    ['a mix of 1-2-4', ['1', '2', '4']],
    ['mixed 1:2:4:1', ['1', '2', '4', '1']],
  ])('“%s” is in parts %j', (text, expected) => expect(parts(text)).toEqual(expected))

  it.each([
    'at 10:30',
    'at 10:30:15',
    'a slope of 1:12',
    'call 555-123-4567',
    'holes 10-12-14 in',
    'by 2026-10-05',
    '7-10 3/8',
    '1-2-3 posts',
  ])('“%s” holds none', (text) => expect(parts(text)).toEqual([]))

  it('each part stands where it was typed', () => {
    const text = 'so a 1 : 2 : 3 mix'
    for (const it of readQuantities(text)) expect(text.slice(it.start, it.end)).toBe(it.said)
  })
})
