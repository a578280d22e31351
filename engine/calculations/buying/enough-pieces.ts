// What there is already against what is needed: enough, or so many more to get.
//
//   needed  ▯▯▯▯▯▯▯▯▯▯▯▯▯
//   there   ▮▮▮▮▮▮▮▮▮▮          3 to get
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { enoughPieces as enough, piecesBeyond, piecesHad, piecesShort } from '../../words/compared.ts'
import { piecesWanted } from '../../words/packs.ts'

export const enoughPieces = calculation({
  name: 'enough-pieces',
  title: 'What there is, against what is needed',
  answers: 'Whether the pieces that are there already are enough, how many more to get, or how many are left over.',
  needs: { piecesWanted, piecesHad },
  gives: { enoughPieces: enough, piecesShort, piecesBeyond },
  headlines: ['enoughPieces', 'piecesShort'],
  together: { enoughPieces: ['enoughPieces', 'piecesShort', 'piecesBeyond'] },
  plain: true,
  lines: {
    piecesShort: ['piecesWanted - piecesHad', 'what is needed, less what is there'],
    piecesBeyond: ['piecesHad - piecesWanted', 'what is there, less what is needed'],
  },
  work({ piecesWanted: wanted, piecesHad: had }, { line, tell, remark }) {
    const isShort = less(had, wanted)
    tell('enoughPieces', !isShort)
    line(isShort ? 'piecesShort' : 'piecesBeyond')
    remark(`Decided by: ${show(had)} there, and ${show(wanted)} needed.`)
    remark('Look them over first: I counted each of those you have as sound.')
  },
  sources: [{ fact: 'needed less had', from: 'Arithmetic; needs no table.' }],
  cautions: [],
  examples: [
    // 61 − 48
    {
      ask: 'I need 61 pickets and have 48 already, how many more do I need?',
      given: { piecesWanted: '61', piecesHad: '48' },
      expect: { enoughPieces: 'not enough', piecesShort: '13 pieces' },
    },
    // 30 − 26
    {
      ask: 'I need 26 bags and I already have 30. Are those enough?',
      given: { piecesWanted: '26', piecesHad: '30' },
      expect: { enoughPieces: 'enough', piecesBeyond: '4 pieces' },
    },
  ],
})
