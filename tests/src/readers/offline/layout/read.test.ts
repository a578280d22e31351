// This file is about layouts that say outright what is asked: a number of posts, a yard with the house in it, parts of posts and pickets, a measure told anew.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../../talk.ts'

// 81/9 = 9 ft, 81/10 = 8 ft 1 1/5; 2 × (35 + 50) − 50 = 120, − 4 − 9 = 107; 60 + 4 + 26 = 90 in = 7 ft 6 in against 7 ft;
// 48 − 3 = 45, (120 + 1/8)/(45 + 1/8) = 2.66, 30/2; 14 × 9 + 2 × 5 = 136; 22 1/2 + 5 + 1 1/2 ft = 29 ft; 41 − 2 × 3 = 35 ft, /7 → 6 posts;
// 30/7 → 5 bays, 20/7 → 3: 6 + 4; 96/6 → 17 posts, 90/6 → 16; 20 m at 2.4 m leaves 800 mm, all alike 20,000/9;
// 900 − 2 × 8 = 884; (3600 − 2 × 12 − 20)/2 = 1,778
const cases: readonly (readonly [said: readonly string[], expected: Readonly<Record<string, string>>])[] = [
  [['I have 10 posts for a line of 81 ft, how far apart would they be?'], { bayCentres: '9 ft' }],
  [
    ['I have 10 posts for a line of 81 ft, how far apart would they be?', 'and with 11 posts?'],
    { bayCentres: '8 ft 1 1/5 in' },
  ],
  [['Yard is 35 by 50, the house takes one of the 50 sides. How many feet of fence?'], { fenceAround: '120 ft' }],
  [
    [
      'Yard is 35 by 50, the house takes one of the 50 sides. How many feet of fence?',
      'gates are 4 ft and 9 ft, so what is fence',
    ],
    { fenceAlone: '107 ft' },
  ],
  [
    ['Fence 5 ft high, posts 4 in above the pickets and 26 in in the ground, how long must the posts be?'],
    { postLength: '7 ft 6 in' },
  ],
  [
    [
      'Fence 5 ft high, posts 4 in above the pickets and 26 in in the ground, how long must the posts be?',
      'will 7 footers do?',
    ],
    { postIsLongEnough: 'too short' },
  ],
  // 42 + 4 + 28 = 74 in, over 6 ft; 1100 + 600 = 1700 mm, under 1.8 m
  [
    ['Fence 42 in tall, posts 4 in above the pickets and 28 in in the ground. Is a 6 ft post long enough?'],
    { postIsLongEnough: 'too short', postLength: '6 ft 2 in' },
  ],
  [
    ['fence is 1100 mm high and 600 mm in the ground, will 1.8 m posts do it?'],
    { postIsLongEnough: 'long enough', postLength: '1,700 mm' },
  ],
  [['fence 48 in overall, 3 in off the ground, what length are the pickets'], { picketLength: '45 in' }],
  [
    [
      'fence 48 in overall, 3 in off the ground, what length are the pickets',
      'how many from a 10 ft board',
      'i need 30 pickets, how many boards',
    ],
    { picketBoards: '15 boards' },
  ],
  [
    ['14 pickets a bay, 11 bays but two are short with only 5. How many pickets in all?'],
    { picketsHung: '136 pickets' },
  ],
  [
    [
      'Fence goes 18 in behind the path, the path is 5 ft wide and starts 22 ft 6 from the road. How far from the road is that?',
    ],
    { lengthSum: '29 ft' },
  ],
  [['The line is 41 ft and shrubs take 3 ft at each end. How long will the fence be?'], { runLength: '35 ft' }],
  [
    [
      'The line is 41 ft and shrubs take 3 ft at each end. How long will the fence be?',
      'posts at most 7 ft apart, how many posts?',
    ],
    { posts: '6 posts' },
  ],
  [
    [
      '30 ft left of the drive and 20 ft right of it',
      'each piece has its own end posts, at most 7 ft apart, how many posts',
    ],
    { posts: '10 posts' },
  ],
  [['Run of 96 ft, posts every 6 ft, how many posts?', 'oops, measured again, 90'], { posts: '16 posts' }],
  [['20 m run at 2400 centres, how many posts', 'how big is the odd one'], { oddBay: '800 mm' }],
  [
    ['Run of 20 m with whole bays of 2.4 m, what is left over?', 'and if they are all the same, how far apart?'],
    { evenBay: '2,222 2/9 mm' },
  ],
  [['gate goes in a 900 opening, 8 each side, how wide is the leaf'], { leafWidth: '884 mm' }],
  [['double gates in a 3600 opening, 12 each side, 20 in the middle. leaf width?'], { leafWidth: '1,778 mm' }],
  [['frost is at 40 in, 5 in of stone under the post, how deep do I dig'], { holeDepth: '45 in' }],
]

describe('a layout told outright', () => {
  it.each(cases)('%j', async (said, expected) => {
    expect(results((await talk(said)).at(-1))).toMatchObject(expected)
  })
})
