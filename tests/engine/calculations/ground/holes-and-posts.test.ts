import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('gravel in the holes', () => {
  it.each(['12 in', '10 in'])('12 in of it leave no room for a post in a hole of %s', (holeDepth) => {
    const given = { posts: '4', holeDiameter: '10 in', stoneDepth: '12 in' }
    expect(runNamed('gravel-for-holes', { ...given, holeDepth }).said).toContain('no post is left in the ground')
    expect(runNamed('gravel-for-holes', { ...given, holeDepth: '13 in' }).said).not.toContain('no post')
  })

  // Reference book: 6 in gravel in 18 holes of 12 in: 7.069 ft³ compacted. Its 15 % is taken as loss (÷ 0.85 = 8.316 ft³);
  // here it is added (× 1.15 = 8.129 ft³), as the vocabulary says: how much more loose than tamped is bought.
  it('eighteen 12 in holes with 6 in of stone hold 7.069 ft³, bought as 8.129 ft³ loose', () => {
    expect(
      runNamed('gravel-for-holes', { posts: '18', holeDiameter: '12 in', stoneDepth: '6 in' }).shown,
    ).toMatchObject({ gravelInPlace: '7.069 ft³', gravel: '8.129 ft³', gravelLoad: '812.9 lb' })
  })

  // Reference book: a 5 gal pail brim full is 0.6684 ft³, 66.8 lb at 100 lb/ft³; two thirds of it 44.6 lb, under the 51 lb of the lifting equation.
  it('a bucket is carried two thirds full, so that it stays under what the lifting equation allows', () => {
    const { shown } = runNamed('gravel-for-holes', { posts: '11', holeDiameter: '10 in', stoneDepth: '6 in' })
    expect(shown.bucketLoad).toBe('44.56 lb')
    expect(
      runNamed('gravel-for-holes', { posts: '11', holeDiameter: '10 in', stoneDepth: '6 in', bucketFill: '100 %' })
        .shown.bucketLoad,
    ).toBe('66.84 lb')
  })

  // π/4 × 100 × 6 × 11 / 1728 = 2.9998 ft³; × 1.15 = 3.4497; / 0.44557 = 7.74 → 8 buckets, 4 trips
  it('eleven 10 in holes take 8 buckets in 4 trips', () => {
    expect(
      runNamed('gravel-for-holes', { posts: '11', holeDiameter: '10 in', stoneDepth: '6 in' }).shown,
    ).toMatchObject({ buckets: '8 buckets', trips: '4 trips' })
  })
})

describe('post depth and post length', () => {
  // Printed rule (trade texts): a third of the whole buried is half of what is exposed. 6 ft: 36 in; whole 9 ft.
  it('a 6 ft fence buries 36 in by the rule, read the other way only 24 in', () => {
    const { shown, said } = runNamed('post-depth', { postAbove: '6 ft' })
    expect(shown).toMatchObject({
      depthByRule: '36 in',
      thirdOfAbove: '24 in',
      embedment: '36 in',
      holeDepth: '42 in',
      postLength: '9 ft',
    })
    expect(said).toContain(
      'A third of the whole post in the ground is half of what shows, 36 in; a third of what shows is only 24 in',
    )
    expect(said).toContain('does not count as depth')
  })

  it('the frost depth governs where it is deeper, and the answer says so', () => {
    const { shown, said } = runNamed('post-depth', { postAbove: '4 ft', frostDepth: '42 in' })
    expect(shown).toMatchObject({ embedment: '42 in', holeDepth: '48 in', postLength: '7 ft 6 in' })
    expect(said).toContain('The frost depth governs')
  })

  // 8 ft: a third is 32 in, which leaves 5 ft 4 in
  it('an 8 ft post stands 5 ft 4 in by the rule', () => {
    expect(runNamed('post-split', { postLength: '8 ft' }).shown).toMatchObject({
      thirdOfWhole: '32 in',
      aboveByRule: '5 ft 4 in',
    })
  })

  it('the two ways of the rule agree: what post-split buries is what post-depth asks for what it leaves', () => {
    for (const feet of [5, 6, 7, 8, 9, 10, 12]) {
      const split = runNamed('post-split', { postLength: `${feet} ft` })
      const back = runNamed('post-depth', { postAbove: split.shown.aboveByRule as string })
      expect(back.shown.embedment).toBe(split.shown.thirdOfWhole)
      expect(back.shown.postLength).toBe(`${feet} ft`)
    }
  })

  // 36 − 12 = 24 in of post against 36 in
  it('a foot of stone in a 3 ft hole leaves 2 ft of post, which falls short for a 6 ft fence', () => {
    const { shown, said } = runNamed('post-depth-check', { holeDepth: '3 ft', stoneDepth: '1 ft', postAbove: '6 ft' })
    expect(shown).toMatchObject({ embedment: '24 in', deepEnoughByRule: 'false' })
    expect(said).toContain('Dig 12 in deeper')
  })

  // 30 − 4 = 26 in of post against 36: 10 in short, which 4 in of stone cannot give
  it('less stone is offered only where there is so much of it', () => {
    const given = { postAbove: '6 ft', holeDepth: '30 in' }
    expect(runNamed('post-depth-check', { ...given, stoneDepth: '4 in' }).said).toMatch(/Dig 10 in deeper\. /)
    // 36 in of hole, 6 in of stone: 6 in short, and the stone is just that much.
    expect(runNamed('post-depth-check', { postAbove: '6 ft', holeDepth: '36 in', stoneDepth: '6 in' }).said).toContain(
      'Dig 6 in deeper, or use that much less stone.',
    )
  })

  // 6 ft − 42 in = 30 in of post: over the rule’s 21 in, short of the frost’s 36 in
  it('a post that meets the one-third rule and not the frost depth is not deep enough, bought or dug', () => {
    const bought = runNamed('post-as-bought', { postLength: '6 ft', postAbove: '42 in', frostDepth: '36 in' })
    expect(bought.shown).toMatchObject({ embedment: '30 in', depthByRule: '21 in', deepEnoughByRule: 'false' })
    expect(bought.said).toContain('by the frost depth, which is deeper than the 21 in of the one-third rule')
    expect(bought.said).toContain('The post is 6 in too short')
    const dug = { holeDepth: '30 in', postAbove: '42 in' }
    expect(runNamed('post-depth-check', dug).shown.deepEnoughByRule).toBe('true')
    const frost = runNamed('post-depth-check', { ...dug, frostDepth: '36 in' })
    expect(frost.shown.deepEnoughByRule).toBe('false')
    expect(frost.said).toContain('Dig 6 in deeper')
    // Frost alone can fail it, and alone passes nothing.
    const alone = (frostDepth: string) => runNamed('post-depth-check', { holeDepth: '30 in', frostDepth }).shown
    expect(alone('36 in').deepEnoughByRule).toBe('false')
    expect(alone('24 in').deepEnoughByRule).toBeUndefined()
  })

  it('the one-third rule governs where the frost depth is less', () => {
    const { shown, said } = runNamed('post-as-bought', { postLength: '8 ft', postAbove: '6 ft', frostDepth: '12 in' })
    expect(shown.deepEnoughByRule).toBe('false')
    expect(said).toContain(
      'against 36 in by the one-third rule, which is as deep as the frost depth of 12 in, or deeper',
    )
  })

  // A third of an 8 ft post is 32 in; the rule for 6 ft above ground asks 36 in, which an 8 ft post cannot give.
  it('a third of the whole post and the depth for a height have a word each', () => {
    expect(runNamed('post-split', { postLength: '8 ft' }).shown.thirdOfWhole).toBe('32 in')
    const { shown } = runNamed('post-as-bought', { postLength: '8 ft', postAbove: '6 ft' })
    expect(shown).toMatchObject({ depthByRule: '36 in' })
    expect(shown.thirdOfWhole).toBeUndefined()
  })

  // 30 − 6 = 24 in would meet 48/2; 4 in of concrete under the foot leaves 20
  it('concrete under the foot does not count as depth', () => {
    const given = { holeDepth: '30 in', stoneDepth: '6 in', postAbove: '4 ft' }
    expect(runNamed('post-depth-check', given).shown).toMatchObject({ embedment: '24 in', deepEnoughByRule: 'true' })
    expect(runNamed('post-depth-check', { ...given, concreteUnder: '4 in' }).shown).toMatchObject({
      embedment: '20 in',
      deepEnoughByRule: 'false',
    })
    expect(runNamed('post-depth-check', { ...given, concreteUnder: '24 in' }).said).toContain('no post is left')
    expect(
      runNamed('post-depth', { postAbove: '4 ft', stoneDepth: '6 in', concreteUnder: '4 in' }).shown,
    ).toMatchObject({ embedment: '24 in', holeDepth: '34 in' })
  })
})
