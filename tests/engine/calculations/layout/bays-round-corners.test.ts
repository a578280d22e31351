import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const fence = (fenceSides: string[], more: Record<string, string> = {}, confirmed: string[] = []) =>
  runNamed('bays-round-corners', { fenceSides, widestBay: '8 ft', ...more }, { confirmed })

describe('bays round corners', () => {
  // 24, 32, 24 ft at 8 ft: 3 + 4 + 3 bays; posts set out one by one: 4 + 4 + 3, the two corners not set twice
  it('a corner post is set once', () => {
    expect(fence(['24 ft', '32 ft', '24 ft']).shown).toMatchObject({
      bays: '10 bays',
      posts: '11 posts',
      cornersShared: '2 posts',
    })
  })

  it('a closed fence has as many posts as bays', () => {
    expect(fence(['24 ft', '32 ft', '24 ft', '32 ft'], { runEnds: 'loop' }).shown).toMatchObject({
      bays: '14 bays',
      posts: '14 posts',
      cornersShared: '4 posts',
    })
  })

  // Half of 3 1/2 in comes off at each house wall: 24 ft 1 3/4 in leaves 24 ft, three bays and not four.
  it('from house wall back to house wall, half a post comes off at each wall and none at the corners', () => {
    const ran = fence(['24 ft 1 3/4 in', '16 ft', '24 ft 1 3/4 in'], { runEnds: 'walls' })
    expect(ran.shown).toMatchObject({ bays: '8 bays', posts: '9 posts' })
  })

  // 24 ft and 16 ft between centres, each with half a post more at both ends.
  it('outside to outside, a post comes off every side', () => {
    expect(fence(['24 ft 3 1/2 in', '16 ft 3 1/2 in'], { runEnds: 'outside' }).shown).toMatchObject({ bays: '5 bays' })
  })

  // A gate of 44 1/2 in takes 4 ft: 32 − 4 = 28 ft, 4 bays of 7 ft; 3 + 4 bays, a gate and one: 9 posts
  it('a gate takes its opening and a post out of its side, and adds its post', () => {
    const gate = { gates: '1', gateOpening: '44 1/2 in' }
    expect(fence(['24 ft', '32 ft'], { ...gate, gateSides: '2' }).shown).toMatchObject({
      bays: '7 bays',
      posts: '9 posts',
      cornersShared: '1 post',
    })
    expect(fence(['24 ft', '32 ft'], { gates: '1' }).said).toContain('gate opening')
    expect(fence(['24 ft', '32 ft'], gate).said).toContain('counted up to each gate')
    expect(fence(['24 ft', '32 ft'], { ...gate, gateSides: '3' }).said).toContain('There is no side 3')
    expect(fence(['24 ft', '4 ft'], { ...gate, gateSides: '2' }).said).toContain('no room for a bay')
  })

  it('several gates have their sides named one by one, or all in one', () => {
    const two = { gates: '2', gateOpening: '44 1/2 in' }
    const named = (gateSides: string[]) =>
      runNamed('bays-round-corners', { fenceSides: ['24 ft', '32 ft'], widestBay: '8 ft', ...two, gateSides })
    // one in each: 20 ft → 3 bays, 28 ft → 4; both in the second: 3 bays, and 24 ft → 3
    expect(named(['1', '2']).shown).toMatchObject({ bays: '7 bays', posts: '10 posts' })
    expect(named(['2']).shown).toMatchObject({ bays: '6 bays', posts: '9 posts' })
    expect(named(['1', '2', '2']).said).toContain('Give one side for each gate')
  })

  it('one side has no corner, two close no yard, and a side must be longer than a post', () => {
    expect(fence(['24 ft']).said).toContain('24 ft goes round no corner')
    expect(fence(['24 ft', '32 ft'], { runEnds: 'loop' }).said).toContain('Two sides close no yard')
    expect(fence(['24 ft', '3 in'], {}, ['fenceSides']).said).toContain('no longer than a 3 1/2 in post')
  })
})
