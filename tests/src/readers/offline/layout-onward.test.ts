// Layouts gone on with: posts of a told length, counts told anew, gates between post centres, arches at a place, and the unit an answer is asked for in. Each figure is worked beside it.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

const last = async (...messages: string[]): Promise<Record<string, string>> => results((await talk(messages)).at(-1))

describe('layouts gone on with', () => {
  it('leave what a post of given length has above the ground, by what was told and by no rule', async () => {
    // 84 − 28 = 56 in; 2,100 − 650 = 1,450; 650 + 120 = 770; 1,300 + 650 = 1,950
    expect(await last('I have 7 ft posts and I bury 28 in of each. How tall do they stand?')).toMatchObject({
      postAbove: '56 in',
    })
    const told = 'posts are 2100 long and 650 of it goes in the ground, how much shows'
    expect(await last(told)).toMatchObject({ postAbove: '1,450 mm' })
    expect(await last(told, 'how deep is the hole with 120 mm of gravel')).toMatchObject({ holeDepth: '770 mm' })
    expect(await last(told, 'I would rather have 1300 showing, same depth, what length of post')).toMatchObject({
      postLength: '1,950 mm',
    })
    // The rule still answers where nothing is told of the ground: 96/3
    expect(await last('How tall will an 8 ft post stand by the one-third rule?')).toMatchObject({
      thirdOfWhole: '32 in',
    })
  })

  it('give a length in the unit that is asked for, and leave sizes in their own', async () => {
    // 46 3/4 × 25.4 = 1,187.45; 96 − 78 = 18 in = 45.72 cm
    expect(
      await last('A gate opening of 48 in, hinge gap 1/2 in, latch gap 3/4 in: how wide is the leaf, in millimetres?'),
    ).toMatchObject({ leafWidth: '46 3/4 in', lengthConverted: '1,187.45 mm' })
    expect(
      await last(
        'Frost goes down 28 in, I go 6 in below that, and the posts stick up 44 in: how long?',
        'They only sell 8 ft posts, how many centimetres do I cut off?',
      ),
    ).toMatchObject({ lengthConverted: '45.72 cm' })
    const metric = await last('Opening 2300 mm, pickets 90 mm, gap 60 at most, all sizes in mm. What gap?')
    expect(metric.lengthConverted).toBeUndefined()
    const feet = await last('How many feet of fence for 6 bays of 8 ft?')
    expect(feet.lengthConverted).toBeUndefined()
  })

  it('take a bare number near the count for the count, and a small one for the gap', async () => {
    // 1,800 − 17 × 70 = 610; / 18 = 33 8/9
    const bay = 'opening 1800 clear, palings 70 wide, 40 gap. how many'
    expect(await last(bay, 'what about 17 of them')).toMatchObject({ gap: '33 8/9 mm' })
    // 94 − 14 × 3 1/2 = 45; / 15 = 3
    const inches = 'Opening 94 in, pickets 3 1/2 in, gap about 2 1/2. how many pickets'
    expect(await last(inches, 'make it 14')).toMatchObject({ gap: '3 in' })
    // 2 is no count here: (94 + 2) / 5 1/2 = 17.45
    expect(await last(inches, 'make it 2')).toMatchObject({ pickets: '17 pickets' })
    // 88 − 12 × 3 1/2 = 46; / 13 = 3 7/13
    expect(
      await last(
        'It is 88 in clear between the posts, pickets 3 1/2 wide, I want 12 of them with equal gaps. How big is the gap?',
      ),
    ).toMatchObject({ gap: '3 7/13 in' })
  })

  it('take a bare size in the unit that the talk has told its lengths in', async () => {
    // 16,800/2,400 = 7 bays
    expect(await last('fence 19200 long, 2400 bays. how many posts', 'nah sorry it is 16800')).toMatchObject({
      posts: '8 posts',
    })
  })

  it('lay a gate between post centres, and one leaf beside another', async () => {
    // (20 − 1.2)/2 = 9.4; / 4 = 2.35
    expect(
      await last(
        'A run of 20 m with a gate 1.2 m centre to centre of its posts in the middle, the same each side, bays 2.4 m at most. How wide is each bay?',
      ),
    ).toMatchObject({ bayCentres: '2,350 mm', baysEachHalf: '4 bays' })
    // 144 − 2 × 1/2 − 1 − 48 = 94
    expect(
      await last(
        'double gate, opening 144 in between the posts, 1/2 in at each hinge side and 1 in where they meet. how wide is each leaf',
        'what if one leaf is 48 in and the other is the rest',
      ),
    ).toMatchObject({ leafWidth: '94 in' })
  })

  it('tell how far apart hinges are, and the angle of a brace from corner to corner', async () => {
    // 48 − 6 − 8; atan(48/42) = 48.81°
    expect(
      await last(
        'My gate is 48 in tall, one hinge 6 in from the top and the other 8 in from the bottom, how far apart are the hinges?',
      ),
    ).toMatchObject({ lengthDifference: '34 in' })
    expect(
      await last('A gate 42 in wide and 48 in high has a diagonal brace, what angle is it to the bottom rail?'),
    ).toMatchObject({ diagonalSteep: '48.81°' })
  })

  it('find a place on an arch, over its ends and by its heights', async () => {
    // (96²/4 + 6²)/12 = 195; √(195² − 24²) − 189 = 4.517
    const arch = 'Arched panel 8 ft between posts, the end ones 36 in and the middle picket 42. What radius?'
    expect(await last(arch)).toMatchObject({ archRadius: '195 in' })
    expect(await last(arch, 'how far above the ends is it 2 ft from the post?')).toMatchObject({
      curveOffEnds: '4.517 in',
    })
  })

  it('work a fall from an incline, a line less what stands in it, and a post line from its face', async () => {
    // 30,000/20; 90 − 14 − 4; 450 + 90/2
    expect(await last('Ground falls at 1 in 20 over 30 m, what is the total drop?')).toMatchObject({
      fall: '1,500 mm',
    })
    expect(
      await last(
        'The frontage is 90 ft, the driveway takes 14 ft and the front walk takes 4 ft. How many feet of fence is left to build?',
      ),
    ).toMatchObject({ runLength: '72 ft' })
    expect(
      await last('front side of the posts is 450 in from the boundary, posts 90 square, where do the centres go'),
    ).toMatchObject({ postLineOffset: '495 mm' })
  })

  it('count the concrete of a strip, and leave holes to themselves', async () => {
    // 1 × 1/3 × 60 = 20
    expect(await last('A concrete edging 12 in wide and 4 in deep along 60 ft: how many cubic feet?')).toMatchObject({
      stripConcrete: '20 ft³',
    })
  })
})
