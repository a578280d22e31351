// Messages about rails, rows of pickets, lots, posts, slopes and hinges in which every size stands beside what it is. Each figure is worked beside it.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

const last = async (...messages: string[]): Promise<Record<string, string>> => results((await talk(messages)).at(-1))

describe('rails', () => {
  it('between posts on centre are cut to what is clear between them', async () => {
    // 7 ft = 84; − 3 1/2 = 80 1/2; − 2 × 1/8 = 80 1/4; 2 × 9 = 18
    const first =
      'Posts on 7 ft centers, 4x4 posts, 2 rails per bay, 9 bays. How long do I cut the rails that go between?'
    expect(await last(first)).toMatchObject({ railCut: '80 1/4 in', railsInAll: '18 rails' })
    // 72 − 3 1/2 − 1/4
    expect(
      await last(
        'The centers of my posts are 6 feet apart, they are 4x4s, and the rails go between. How long is each rail?',
      ),
    ).toMatchObject({ railCut: '68 1/4 in' })
  })

  it('are counted by their bays, and a stick that nothing names is no rail’s', async () => {
    // 3 × 12
    expect(await last('12 bays, three rails a bay. how many rails')).toMatchObject({ railsInAll: '36 rails' })
    // Two are usual, and said so; then 3 × 7.
    expect(await last('How many rails for a fence of seven bays?')).toMatchObject({ railsInAll: '14 rails' })
    expect(await last('How many rails for a fence of seven bays?', 'three to each bay')).toMatchObject({
      railsInAll: '21 rails',
    })
  })

  it('come two out of a board that is cut in half', async () => {
    // 3 × 10 = 30; 96 − 3 1/2 − 1/4 = 92 1/4, two of 16 ft: 15
    expect(
      await last('I cut 16 ft boards in half for the rails, 10 bays, 3 rails to each bay, bays 8 ft. How many boards?'),
    ).toMatchObject({ railBoards: '15 boards' })
  })

  it('across the front of the posts are no rails between them', async () => {
    const [turn] = await talk([
      'Rails across the front of the posts, 2.4 m centres, 6 bays, 2 rails, 4.8 m boards. How many?',
    ])
    expect(turn?.calls.map((it) => it.calculation)).not.toContain('rails-between-posts')
  })
})

describe('pickets', () => {
  it('in a row have one gap fewer than they are, and with a gap at both ends one more', async () => {
    // 25 × 5 1/2 + 24 × 1/2 = 149 1/2 in; + 1 = 150 1/2
    const first = 'How long is a row of 25 boards, each 5 1/2 in wide, with a 1/2 in gap between?'
    expect(await last(first)).toMatchObject({ picketRow: '12 ft 5 1/2 in' })
    expect(await last(first, 'and with a gap at each end?')).toMatchObject({ picketRowGaps: '12 ft 6 1/2 in' })
  })

  it('of a given number share what is clear between posts on centre, and so does another number', async () => {
    // 96 − 3 1/2 = 92 1/2; − 15 × 3 1/2 = 40; / 16 = 2 1/2. 92 1/2 − 49 = 43 1/2; / 15 = 2 9/10
    const first = 'posts 8 ft on center, posts 3 1/2 in, 15 pickets 3 1/2 wide. what gap'
    expect(await last(first)).toMatchObject({ gap: '2 1/2 in' })
    expect(await last(first, 'try 14')).toMatchObject({ gap: '2 9/10 in' })
  })

  it('along a run in bare millimetres', async () => {
    // 24,000 / (65 + 55) = 200
    expect(await last('how many palings for a 24000 run, 65 wide palings, 55 gaps')).toMatchObject({
      picketsHung: '200 pickets',
    })
  })

  it('of a length that no opening has are those of a run', async () => {
    // 30 ft = 360; / (3 1/2 + 2 1/2) = 60
    expect(await last('How many pickets do I need?', '30 ft, pickets 3 1/2 in, 2 1/2 in gap')).toMatchObject({
      picketsHung: '60 pickets',
    })
  })
})

describe('lots and runs', () => {
  it('what is kept off both lines is taken off twice', async () => {
    // 90 − 2 × 3 = 84; / 8 = 10.5 → 11
    expect(
      await last(
        'Our lot is 90 feet across. I have to stay 3 feet off the property line on both sides. With posts at most 8 feet apart, how many bays?',
      ),
    ).toMatchObject({ runLength: '84 ft', bays: '11 bays', posts: '12 posts' })
  })

  it('a gate in the middle leaves as much fence on either side, here or behind the run', async () => {
    // 576 − 48 − 3 1/2 = 524 1/2; half 262 1/4; / 96 → 3; posts 2 × 4
    expect(
      await last(
        'The run is 48 ft, bays no more than 8 ft. A 4 ft gate goes in the middle with equal fence on both sides. How many posts?',
      ),
    ).toMatchObject({ posts: '8 posts', baysEachHalf: '3 bays' })
    expect(
      await last(
        'A run of 48 ft with bays of at most 8 ft: how many posts?',
        'Now a gate of 4 ft right in the middle of it. How many posts?',
      ),
    ).toMatchObject({ posts: '8 posts' })
  })
})

describe('gates that are mended and braced', () => {
  it('the bottom hinge is packed out by the drop for its height', async () => {
    // 3/4 × 26 / 40 = 39/80; 12 × 500 / 900 = 6 2/3
    expect(
      await last(
        "The gate hangs 3/4 in low at the latch, it's 40 in wide and the hinges are 26 in apart. What thickness of shim behind the bottom hinge?",
      ),
    ).toMatchObject({ hingePacking: '39/80 in' })
    expect(
      await last('the latch end of my 900 gate has sunk 12, hinges 500 apart, how much packing at the bottom hinge'),
    ).toMatchObject({ hingePacking: '6 2/3 mm' })
  })

  it('a brace from outer corner to outer corner is the diagonal of the leaf', async () => {
    // √(42² + 40²) = 58
    expect(
      await last('My gate is 42 in wide and 40 in tall. How long is a brace from corner to corner?'),
    ).toMatchObject({
      leafDiagonal: '58 in',
    })
  })

  it('a gap each side answers the opening that was asked for', async () => {
    // 1200 − 2 × 20
    expect(await last('what width of gate leaf?', '1200 between posts, 20 each side')).toMatchObject({
      leafWidth: '1,160 mm',
    })
  })
})

describe('a slope by its fall', () => {
  it('has a length, an angle, and posts further apart along it', async () => {
    // √(7200² + 2100²) = 7500; atan(2100/7200) = 16.26°; 2400 × 7500/7200 = 2500
    const first = 'drops 2100 in 7200 level. how long along the slope'
    expect(await last(first)).toMatchObject({ alongGround: '7.5 m' })
    expect(await last(first, 'and the angle')).toMatchObject({ slopeAngle: '16.26°' })
    expect(await last(first, 'posts 2400 on centre, how far apart along the slope')).toMatchObject({
      rakedBay: '2,500 mm',
    })
  })
})

describe('posts', () => {
  it('by what shows and what is in the ground, and out of the lengths that are sold', async () => {
    // 900 + 1350 = 2250; of 2400: 150
    const first = 'fence posts 900 in the ground and 1350 above. How long must the posts be?'
    expect(await last(first)).toMatchObject({ postLength: '2,250 mm' })
    expect(await last(first, 'shop sells 1.8, 2.4 and 2.7 m. which do i buy and how much is cut off')).toMatchObject({
      postToBuy: '2,400 mm',
      postOffcut: '150 mm',
    })
    const off = 'how much do I saw off?'
    expect(asked((await talk([first, off])).at(-1))).toEqual(['stockLengths'])
    expect(await last(first, off, '1.8 m and 2.7 m')).toMatchObject({ postOffcut: '450 mm' })
  })

  it('beside pickets, a little below their tops', async () => {
    // 48 + 3 − 2 + 30 = 79 in
    expect(
      await last(
        'pickets 48 in long, 3 in off the ground, posts end 2 in below the picket tops, 30 in in the ground. how long are the posts',
      ),
    ).toMatchObject({ postLength: '6 ft 7 in' })
  })
})

describe('holes', () => {
  it('a foot across beside a post whose size stands in brackets', async () => {
    // (π × 6² − 5.5²) × 30 = 2485.4 in³ = 1.4383 ft³; × 9 = 12.945 ft³ = 0.4794 yd³; and 10 % more 0.5274
    const first =
      'I dug 9 holes, each 30 inches deep and a foot across. A 6x6 post (5 1/2 in square) stands in each. How many cubic yards of concrete?'
    expect(await last(first)).toMatchObject({ concrete: '0.4794 yd³' })
    expect(await last(first, 'and 10 percent extra for waste?')).toMatchObject({ concrete: '14.24 ft³' })
  })
})

it('a corner’s angle is the whole of it, and how far it is out what it lacks', async () => {
  // cos = (9 + 16 − 26.01)/24 = −0.04208: 92.41°
  const first = 'My corner stakes: 3 m on one leg and 4 m on the other. What should the diagonal be for square?'
  expect(await last(first, 'the tape reads 5.1 m. what angle is the corner')).toMatchObject({ cornerAngle: '92.41°' })
})
