// This file is about questions as builders put them: run-on, half said, going on from what was said before.
// A second person worked every figure by hand from the question alone; the sums that are not plain stand beside them.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

// 31.5 m between walls: 31,400 between centres, less 1,200 for the gate, / 2,300 → 14 bays; 63 ft 4 in: 760 / 72 → 11 bays of 69 1/11, openings 65 13/22, (65 13/22 − 2) / 4 3/4 → 14, × 11 = 154, × 1.07 → 165;
// bags of 60 lb make 0.45 ft³, of 80 lb 0.6 ft³: 4 × 1.7508 + 18 × 0.9974 = 25.0 → 56; 15 × 2.1010 = 31.5 → 53; 8 × 1.1508 + 2 × 4.1521 = 17.5 → 30; 18 × 1.1508 + 4 × 3.4438 = 34.5 → 58;
// gate of 900 mm between 90 mm posts takes 990: side 3 has (15,000 − 990) / 2,000 → 8 bays; 8 + 5 + 8 + 5 and the gate: 27; (91 1/4 − 2 1/2 n) / n ≤ 2 → 21
const cases: readonly (readonly [said: string | readonly string[], expected: Readonly<Record<string, string>>])[] = [
  [
    'Pickets 2 1/2 in wide in a 70 in opening, no gap over 2 in: how many pickets?',
    { pickets: '16 pickets', gap: '1 13/17 in' },
  ],
  ['2400 mm opening, 70 mm pickets, no gap over 28 mm: how many?', { pickets: '25 pickets' }],
  [
    ['Pickets 2 1/2 in wide in a 70 in opening, gap at most 2 in: how many pickets?', 'and if I use 3 1/2 in ones?'],
    { pickets: '13 pickets' },
  ],
  [
    ['Pickets 2 1/2 in wide in a 70 in opening, gap at most 2 in: how many pickets?', 'and in a 66 in opening?'],
    { pickets: '15 pickets' },
  ],
  [
    [
      'Pickets 3 1/2 in wide in a 70 in opening, gap at most 2 in: how many pickets?',
      'how many if no gap over 1 1/2 in?',
    ],
    { pickets: '14 pickets' },
  ],
  [
    'Fence is 31.5 m between two brick walls, one gate of 1.1 m, posts 100 mm square, no bay over 2.3 m. How many posts do I buy?',
    { posts: '16 posts' },
  ],
  [
    [
      'A fence between two walls 31.5 m apart, one gate of 1.1 m, posts 100 mm square, no bay over 2.3 m. How many posts?',
      'And pickets 65 mm wide, gap 40 mm at the most, how many in each bay?',
    ],
    { pickets: '20 pickets' },
  ],
  [
    [
      'Run of 63 ft 4 in, centre to centre of the end posts, bays no wider than 6 ft.',
      'Pickets are 2 3/4 in, gaps no more than 2 in. How many in a bay?',
      'So how many pickets for the whole run?',
    ],
    { picketsHung: '154 pickets' },
  ],
  [
    [
      'Run of 63 ft 4 in, centre to centre of the end posts, bays no wider than 6 ft. How many bays?',
      'Pickets are 2 3/4 in, gaps no more than 2 in. How many pickets in a bay?',
      'How many pickets in total?',
    ],
    { picketsHung: '154 pickets' },
  ],
  [
    [
      'Run of 63 ft 4 in, bays no wider than 6 ft. How many bays?',
      'Pickets are 2 3/4 in, gaps no more than 2 in. How many pickets in a bay?',
      'How many pickets for the whole fence?',
      'with 7 % for waste',
    ],
    { picketsToBuy: '165 pickets' },
  ],
  [
    [
      '4 corner posts, holes 12 in wide and 36 in deep, 6 in gravel, 4x4 posts. How many 60 lb bags?',
      'And 18 line posts in 10 in holes 30 in deep with 4 in of gravel?',
      'How many bags together?',
    ],
    { bags: '56 bags' },
  ],
  [
    [
      '4 corner posts, holes 12 in wide and 36 in deep, 6 in gravel, 4x4 posts. How many 60 lb bags?',
      'And 18 line posts in 10 in holes 30 in deep with 4 in of gravel?',
      'How many bags in all for both?',
    ],
    { bags: '56 bags' },
  ],
  [
    [
      '6 gate and corner posts, 6x6, holes 18 in wide 42 in deep with 6 in of stone, 80 lb bags. How many bags?',
      'The 15 line posts are 4x4 in 12 in holes, same depth. How many bags for them?',
    ],
    { bags: '53 bags' },
  ],
  [
    '8 line posts 4x4 in 10 in holes 30 in deep and 2 gate posts 6x6 in 16 in holes 42 in deep, 80 lb bags: how many bags?',
    { bags: '30 bags' },
  ],
  [['Run 84 ft, bays at most 8 ft. How many bays?', 'Actually make that 7 ft at most.'], { bays: '12 bays' }],
  [
    [
      'Run of 22 m, posts 100 mm, bays at most 2.4 m. How many bays?',
      '90 mm pickets, gap at most 30 mm, how many per bay?',
    ],
    { pickets: '18 pickets' },
  ],
  [
    [
      'Run of 22 m, posts 100 mm, bays at most 2.4 m. How many bays?',
      '90 mm pickets, gap at most 30 mm, how many pickets per bay?',
      'What if the pickets stand tight against the posts?',
    ],
    { pickets: '18 pickets' },
  ],
  [
    'A closed yard with sides 15 m, 9 m, 15 m, 9 m, posts at most 2 m, one gate of 900 mm in side 3, posts 90 mm. How many posts?',
    { posts: '27 posts' },
  ],
  [
    'Sides of the fence 15 m, 9 m, 15 m and 9 m, a closed yard, posts at most 2 m apart, 90 mm posts, one gate with an opening of 900 mm, gate in side 3. How many posts?',
    { posts: '27 posts' },
  ],
  [
    'A fence with 3 sides 40 ft, 40 ft, 40 ft, posts max 8 ft: how many posts, corners counted once?',
    { posts: '16 posts' },
  ],
  ['Fence has four sides: 40, 30, 40 and 30 ft. Posts at most 8 ft. How many posts?', { posts: '18 posts' }],
  ['Opening 91 1/4 in, pickets 2 1/2 in, half gaps at the ends, max gap 2 in. How many?', { pickets: '21 pickets' }],
  [
    '48 in pickets, 3 in off the ground, top rail 8 in below the tips, bottom rail 6 in above the picket bottoms. How high are the rails?',
    { topRailAt: '43 in', bottomRailAt: '12 1/2 in' },
  ],
  ['1x4 pickets, 92 1/2 in between posts, gap at most 2 1/2 in. How many?', { pickets: '15 pickets' }],
  ['Double gate opening 3 m, 10 mm hinge gaps and 15 mm in the middle: leaf width?', { leafWidth: '1,482.5 mm' }],
  [
    "Three bays, 85 in, 77 in and 62 in clear, pickets 2 3/4 in, I'd like about 2 in gaps. How do I keep them looking the same?",
    { gapsDiffer: '47/646 in' },
  ],
  [
    'Hole centre 900 mm from the paint, hole 350 mm wide, zone 450 mm each side, 50 mm pipe. do I dig by hand?',
    { outsideZone: 'outside this mark’s zone', edgeToZone: '250 mm' },
  ],
  [
    'Checking square: I measure 9 feet down one side, 12 feet down the other and 14 ft 10 1/2 across. Am I out, and which way?',
    { cornerAngle: '89.01°' },
  ],
  ['A rectangle 24 ft by 32 ft: how long is each diagonal?', { squareAcross: '40 ft' }],
  ['Rectangle yard 24 by 32 feet. What should both diagonals come to?', { squareAcross: '40 ft' }],
  [
    'Outside of end post to outside of end post is 18.6 m, posts 90 mm, bays at most 1.5 m: how many bays and how wide is each opening?',
    { bays: '13 bays' },
  ],
  [
    "Bays of 7 ft 6 in and there's a boulder so a post must shift 8 inches. What do the two bays become?",
    { longerBay: '98 in', shorterBay: '82 in' },
  ],
  [
    'Curve of radius 25 ft, 44 ft along the arc, bays no more than 6 ft. How long is each straight bay and how many?',
    { chords: '8 bays' },
  ],
  [
    "Slope is 12 percent and I'm racking the panels, posts 8 ft on centre, 4x4 posts. How long are the rails?",
    { rakedRail: '93.16 in' },
  ],
  [
    'Raked fence, slope 15 %, bays 2 m centre to centre, 90 mm posts, 70 mm pickets, gaps about 40 mm: rail length?',
    { rakedRail: '1,931 mm' },
  ],
  ['Run of 100 ft with 8 ft full bays: how wide is the odd bay at the end?', { oddBay: '48 in' }],
  ['How many 60 lb bags for 22 round holes 10 in wide and 30 in deep?', { bags: '57 bags' }],
  [
    'Post is 125 x 125 mm, hole 400 mm square, 700 mm deep, 100 mm of stone, 9 posts, 20 kg bags: how many?',
    { bags: '84 bags' },
  ],
  [
    'Line posts: 18, in 10 in holes 30 in deep. Gate posts: 4, in 14 in holes 42 in deep. 4x4 posts, 80 lb bags. How many bags in all?',
    { bags: '58 bags' },
  ],
  [
    '9 bays of 17 pickets, 2 gates with 8 pickets each, 8 percent spare. How many pickets do I order?',
    { picketsToBuy: '183 pickets' },
  ],
  [
    '1x6 boards board on board lapping 1 in each side in a 90 in opening. How many boards?',
    { bothLayers: '21 boards' },
  ],
  ['1x6 pickets touching with no gap, 92 1/2 in opening. How many boards?', { boards: '17 boards' }],
  ['how many brackets at 4 screws each for 12 bays with 2 rails?', { brackets: '48 brackets' }],
  [
    "Gate 1.1 m wide weighing 38 kg, hinges 800 mm apart. What's the pull on the upper hinge?",
    { hingePull: '256.2 N' },
  ],
  ['Caps 5 1/4 in square from 6 ft boards, 23 posts: how many boards?', { capBoards: '2 boards' }],
  // 6 bays of 92 1/2 in; (92 1/2 − 2 1/4) / 5 3/4 → 16; 96 hang, × 1.05 → 101
  [
    'How many pickets should I buy for a 48 ft run with posts no more than 8 ft apart, 3 1/2 in pickets and gaps of at most 2 1/4 in?',
    { picketsToBuy: '101 pickets', picketsHung: '96 pickets' },
  ],
]

describe('as builders ask', () => {
  it.each(cases.map(([said, expected]) => [[said].flat().join(' / '), said, expected] as const))(
    '%s',
    async (_, said, expected) => {
      const answers = await talk([said].flat())
      expect(results(answers.at(-1))).toMatchObject(expected)
    },
  )
})
