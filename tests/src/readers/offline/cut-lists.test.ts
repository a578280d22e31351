// Cut lists as people write them: each number with its length, each board with its price.
import { describe, expect, it } from 'vitest'
import { talk } from '../../talk.ts'

const lists: readonly (readonly [said: string, told: Readonly<Record<string, string>>])[] = [
  [
    'I need 12 pieces at 45 in, 8 at 30 in and 20 at 22 in, cut from 8 ft boards at $6.80 or 10 ft boards at $9.20. What do I buy?',
    {
      pieceLengths: '45 in; 30 in; 22 in',
      pieceCounts: '12 pieces; 8 pieces; 20 pieces',
      stockLengths: '8 ft; 10 ft',
      stockPrices: '$6.80; $9.20',
    },
  ],
  [
    'What do I buy for 6 pieces at 1750 mm and 10 at 1150 mm out of 3600 mm boards?',
    { pieceLengths: '1,750 mm; 1,150 mm', pieceCounts: '6 pieces; 10 pieces', stockLengths: '3,600 mm' },
  ],
  [
    'Cut list: 14 rails of 92 1/2 in, 6 at 45 in and 9 caps at 5 1/2 in from the offcuts. The yard sells 8, 12 and 16 ft boards, my blade takes 1/8 in.',
    {
      pieceLengths: '92 1/2 in; 45 in',
      pieceCounts: '14 pieces; 6 pieces',
      smallLengths: '5 1/2 in',
      smallCounts: '9 smaller pieces',
      stockLengths: '8 ft; 12 ft; 16 ft',
      kerf: '1/8 in',
    },
  ],
]

describe('a cut list', () => {
  it.each(lists)('%s', async (said, expected) => {
    const [answer] = await talk([said])
    const call = answer?.calls.find((it) => it.calculation === 'cut-plan')
    const got: Record<string, string> = {}
    for (const { word, text, role } of call?.inputs ?? [])
      if (role === 'said') got[word] = got[word] === undefined ? text : `${got[word]}; ${text}`
    expect(got).toEqual(expected)
  })
})
