// A run that was measured in pieces, from one thing to the next: fence, gate, fence. How long it is in all, and where its gates start.
//
//   ●──── 12 ft ────●  gate  ●────── 24 ft ──────●
//   post centres    └ the gate’s own posts ┘     post centres
import { calculation } from '../../calculation.ts'
import { type Amount, add, exact } from '../../quantities/amount.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { runLength } from '../../words/bays.ts'
import { gateOpenings, gateStarts, runPieces } from '../../words/fence.ts'
import { postWidth } from '../../words/posts.ts'

export const runInPieces = calculation({
  name: 'run-in-pieces',
  title: 'A run from its pieces',
  answers: 'How long a run is that was measured piece by piece between its gates, and where each gate starts.',
  needs: { runPieces, gateOpenings, postWidth },
  gives: { runLength, gateStarts },
  headlines: ['runLength'],
  ofTheFence: true,
  locals: {},
  lines: {
    gateCentres: ['gateOpenings + postWidth', 'from gate post centre to gate post centre'],
    fenced: ['sum(runPieces)', 'the pieces of fence together'],
    gated: ['sum(gateCentres)', 'the gates with their posts'],
    runLength: ['fenced + gated', 'post centre to post centre, gates and all'],
  },
  work(_, { line, rows, tell, refuse, remark }) {
    const [pieces, gates] = [rows('runPieces'), rows('gateOpenings')]
    if (pieces.length !== gates.length + 1)
      refuse(
        'runPieces',
        `I have ${show(quantity(pieces.length, 'piece'))} of fence and ${show(quantity(gates.length, 'gate'))} between them. Give a length before each gate, and one after the last.`,
      )
    const spaces = line('gateCentres') && rows('gateCentres')
    line('fenced')
    line('gated')
    line('runLength')
    let at: Amount = exact(0)
    const starts = spaces.map((gate, i): Quantity => {
      const piece = pieces[i] as Quantity
      const start = add(at, piece.amount)
      at = add(start, gate.amount)
      return { ...piece, amount: start }
    })
    tell('gateStarts', starts)
    remark(
      'I took each piece from post centre to post centre, and each gate as the clear opening between its posts. If you measured otherwise, give me the whole run instead.',
    )
  },
  sources: [
    {
      fact: 'a run is as long as its pieces and the gates between them',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 12 + 24 ft = 432 in; 42 + 3 1/2 = 45 1/2 in; 477 1/2 in = 39 ft 9 1/2 in
    {
      ask: 'How long is the run in pieces: 12 ft, a 42 in gate, then 24 ft?',
      given: { runPieces: ['12 ft', '24 ft'], gateOpenings: ['42 in'], postWidth: '3 1/2 in' },
      expect: { runLength: '39 ft 9 1/2 in' },
    },
    // 5 + 4 + 3 m, and 1.0 + 0.09 and 3.0 + 0.09 m between: 16.18 m
    {
      ask: 'How long is the run in pieces of 5 m, 4 m and 3 m with gates of 1 m and 3 m between them, posts 90 mm?',
      given: { runPieces: ['5 m', '4 m', '3 m'], gateOpenings: ['1 m', '3 m'], postWidth: '90 mm' },
      expect: { runLength: '16.18 m' },
    },
  ],
})
