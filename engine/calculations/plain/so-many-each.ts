// So many to each section, bay or panel: how many in all.
//
//   ▤ ▤ │ ▤ ▤ │ ▤ ▤ │ ▤ ▤      4 sections, 2 to each
import { calculation } from '../../calculation.ts'
import { groups, piecesEach, piecesInAll } from '../../words/groups.ts'

export const soManyEach = calculation({
  name: 'so-many-each',
  title: 'So many to each',
  answers: 'How many pieces there are in all, where each section, bay or panel has so many.',
  needs: { groups, piecesEach },
  gives: { piecesInAll },
  headlines: ['piecesInAll'],
  plain: true,
  lines: { piecesInAll: ['groups * piecesEach', 'so many to each of them'] },
  work(_, { line }) {
    line('piecesInAll')
  },
  sources: [{ fact: 'so many to each, times how many', from: 'Arithmetic; needs no table.' }],
  cautions: [],
  examples: [
    // 12 × 2; × 5.10 is the bill of it
    {
      ask: '12 sections with 2 rails each at $5.10. What do the rails come to?',
      given: { groups: '12', piecesEach: '2' },
      expect: { piecesInAll: '24 pieces' },
    },
    // 9 × 3
    {
      ask: '9 bays, 3 rails in each, rails are £4.20 each. Total for the rails?',
      given: { groups: '9', piecesEach: '3' },
      expect: { piecesInAll: '27 pieces' },
    },
  ],
})
