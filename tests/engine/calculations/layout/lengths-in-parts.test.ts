// This file is about lengths of fences, posts and pickets from their parts.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('lengths from their parts', () => {
  // 60 ft / 8 = 7 ft 6 in; less 3 1/2 in = 86 1/2
  it('nine posts along 60 ft stand 7 ft 6 in apart', () => {
    const { shown } = runNamed('posts-given', { runLength: '60 ft', posts: '9', runEnds: 'centres' })
    expect(shown).toMatchObject({ bays: '8 bays', bayCentres: '7 ft 6 in', opening: '86 1/2 in' })
  })

  it('round a loop there are as many spaces as posts', () => {
    expect(runNamed('posts-given', { runLength: '80 ft', posts: '10', runEnds: 'loop' }).shown.bayCentres).toBe('8 ft')
  })

  it('one post stands apart from nothing', () => {
    expect(runNamed('posts-given', { runLength: '60 ft', posts: '1' }).said).toContain('Give two or more')
  })

  // 2 × (36 + 54) = 180; − 36 = 144; − 2 × 4 = 136
  it('a yard with a side closed, and its gates off', () => {
    const yard = { yardAcross: '36 ft', yardAlong: '54 ft', closedSides: ['36 ft'], gates: '2', gateOpening: '4 ft' }
    expect(runNamed('fence-round-yard', yard).shown).toMatchObject({ fenceAround: '144 ft', fenceAlone: '136 ft' })
  })

  it('a yard that is closed all round takes no fence', () => {
    const closed = { yardAcross: '10 ft', yardAlong: '20 ft', closedSides: ['40 ft', '20 ft'] }
    expect(runNamed('fence-round-yard', closed).said).toContain('as long as the yard all round')
  })

  // 36 + 2 + 24 = 62 against 60: 2 short, and 22 would be in the ground
  it('a post that is too short says by how much, and what it leaves', () => {
    const parts = { postAbove: '36 in', postOverFence: '2 in', embedment: '24 in', postBought: '5 ft' }
    const { shown, said } = runNamed('post-in-parts', parts)
    expect(shown).toMatchObject({ postLength: '5 ft 2 in', postIsLongEnough: 'false' })
    expect(said).toContain('2 in short')
    expect(said).toContain('22 in in the ground')
  })

  // 10 + 3 1/2 + 1 3/4
  it('a told face of the pickets stands for rail and picket', () => {
    const told = { setback: '10 in', picketFaceOut: '3 1/2 in', postWidth: '3 1/2 in' }
    expect(runNamed('post-line', told).shown.postLineOffset).toBe('15 1/4 in')
  })

  // 26/7 → 4 bays of 6 ft 6 in, 13/7 → 2 of 6 ft 6 in: 5 + 3 posts
  it('pieces that stand apart have end posts of their own', () => {
    const { shown } = runNamed('runs-apart', { piecesApart: ['26 ft', '13 ft'], widestBay: '7 ft' })
    expect(shown).toMatchObject({ posts: '8 posts', bays: '6 bays', bayCentres: '6 ft 6 in' })
  })

  // (15,000 − 30)/(150 − 30) = 124.75 → 125
  it('lapped palings cover their width less the lap', () => {
    const lapped = { runLength: '15 m', picketWidth: '150 mm', boardLap: '30 mm' }
    expect(runNamed('pickets-by-length', lapped).shown.picketsHung).toBe('125 pickets')
    expect(runNamed('pickets-by-length', { ...lapped, picketWidth: '90 mm', boardLap: '90 mm' }).said).toContain(
      'as wide as the',
    )
  })

  it('no more bays can be short than there are', () => {
    const short = { pickets: '12', bays: '3', shortBays: '4', shortBayPickets: '5' }
    expect(runNamed('picket-count', short).said).toContain('cannot be short of')
  })
})
