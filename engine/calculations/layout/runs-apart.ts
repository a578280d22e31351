// Pieces of fence that stand apart, a walk or a drive between them: each has end posts of its own.
//
//   ●────●────●   walk   ●────●────●
import { calculation } from '../../calculation.ts'
import { bayCentres, bays, widestBay } from '../../words/bays.ts'
import { type Quantity, less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { posts } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const piecesApart = word<'length'>('piecesApart', {
  kind: 'length',
  list: true,
  label: 'pieces of fence, each with its own end posts',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Each from the centre of its first post to that of its last.',
  ask: 'How long is each piece of fence?',
  called: { names: ['pieces apart'] },
  possible: { above: '0 ft' },
  plausible: { from: '2 ft', to: '3000 ft' },
})

export const runsApart = calculation({
  name: 'runs-apart',
  title: 'Pieces of fence that stand apart',
  answers: 'How many posts pieces of fence with end posts of their own take, and how far apart they stand in each.',
  needs: { piecesApart, widestBay },
  gives: { posts, bays, bayCentres },
  headlines: ['posts', 'bayCentres'],
  together: { posts: ['posts', 'bays', 'bayCentres'], bayCentres: ['bayCentres', 'posts'] },
  lines: {
    baysOfPieces: ['ceil(piecesApart / widestBay)', 'in each piece the fewest that keep every bay within your limit'],
    postsOfPieces: ['baysOfPieces + 1', 'one post more than bays in each'],
    bayOfPieces: ['piecesApart / baysOfPieces', 'shared equally in each'],
    baysInAll: ['sum(baysOfPieces)', 'all pieces'],
    postsInAll: ['sum(postsOfPieces)', 'all pieces'],
  },
  work(_, { line, rows, tell, remark, cite, system }) {
    line('baysOfPieces')
    line('postsOfPieces')
    line('bayOfPieces', system === 'metric' ? 'mm' : 'ft')
    const [pieces, counts, each] = [rows('piecesApart'), rows('baysOfPieces'), rows('bayOfPieces')]
    const widest = each.reduce((wide, it) => (less(wide, it) ? it : wide))
    tell('bayCentres', widest)
    tell('bays', { ...line('baysInAll'), kind: 'count', unit: 'bay' })
    tell('posts', { ...line('postsInAll'), kind: 'count', unit: 'post' })
    for (const [i, piece] of pieces.entries())
      remark(
        `The piece of ${show(piece)}: ${show({ ...(counts[i] as Quantity), kind: 'count', unit: 'bay' })} of ${cite(each[i] as Quantity, `bay of the piece of ${show(piece)}`)}, centre to centre.`,
      )
    if (pieces.length > 1) remark('The widest of these is shown as the bay.')
  },
  sources: [
    { fact: 'each piece has one post more than it has bays', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  examples: [
    // 20/8 = 2.5 → 3, 14/8 → 2; 4 + 3 = 7 posts; 80 in and 84 in
    {
      ask: '20 ft left of the walk and 14 ft right of it, own end posts, posts at most 8 ft apart: how many posts?',
      given: { piecesApart: ['20 ft', '14 ft'], widestBay: '8 ft' },
      expect: { bays: '5 bays', posts: '7 posts' },
    },
    // 9/1.8 = 5, 4/1.8 = 2.2 → 3; 6 + 4 = 10 posts
    {
      ask: '9 m left of the drive and 4 m right of it, posts at most 1.8 m apart: how many posts in all?',
      given: { piecesApart: ['9 m', '4 m'], widestBay: '1.8 m' },
      expect: { bays: '8 bays', posts: '10 posts' },
    },
  ],
})
