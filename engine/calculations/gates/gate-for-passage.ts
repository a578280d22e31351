// How wide a gate opening must be for what goes through it.
//
//   ┃◄ room ►┌──────────┐◄ room ►┃
//   ┃        │  mower   │        ┃      clear opening = the widest thing and the room on both sides of it
//   ┃        └──────────┘        ┃
import { calculation } from '../../calculation.ts'
import { gateOpening } from '../../words/bays.ts'
import { roomEachSide, widestThrough } from '../../words/passage.ts'

export const gateForPassage = calculation({
  name: 'gate-for-passage',
  title: 'A gate wide enough for what goes through it',
  answers: 'How wide the opening of a gate must be for a mower, a barrow or a trailer, with room on both sides.',
  needs: { widestThrough, roomEachSide },
  gives: { gateOpening },
  headlines: ['gateOpening'],
  joins: true,
  lines: {
    gateOpening: ['widestThrough + 2 * roomEachSide', 'room on the one side and on the other'],
  },
  work(_, { line, remark }) {
    line('gateOpening')
    remark(
      'Measure the thing where it is widest: the deck with its chute, the handles, the mirrors. Where it has to turn in the gate it needs more: mark the posts with two sticks and try it.',
    )
    remark(
      'That is clear between the posts. A leaf that stops square to the fence can stand in the way by its own thickness: hang it so that it opens further, or make the opening wider by that much.',
    )
  },
  sources: [
    {
      fact: 'clear opening = the widest thing + twice the room on each side',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'a leaf that opens square stands in the opening by its thickness', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 48 + 2 × 3 = 54
    {
      ask: 'The mower deck is 48 in wide and I want 3 in of room on each side. How wide must the gate opening be?',
      given: { widestThrough: '48 in', roomEachSide: '3 in' },
      expect: { gateOpening: '54 in' },
    },
    // 1250 + 2 × 100 = 1450
    {
      ask: 'A trailer 1250 mm wide must get through the gate, with 100 mm each side: how wide an opening?',
      given: { widestThrough: '1250 mm', roomEachSide: '100 mm' },
      expect: { gateOpening: '1,450 mm' },
    },
  ],
})
