// This file is about what a row of pickets, a gate in the middle, a packed hinge and a post bought refuse, and the laws that they keep.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../run-named.ts'

describe('pickets end to end', () => {
  // One picket has no gap beside it, and two with a gap at both ends.
  it('one picket alone is as long as it is wide', () => {
    const one = { picketsHung: '1', picketWidth: '3 1/2 in', wantedGap: '2 in' }
    expect(runNamed('pickets-end-to-end', one).shown).toMatchObject({
      picketRow: '3 1/2 in',
      picketRowGaps: '7 1/2 in',
    })
  })
})

describe('a gate in the middle of a run', () => {
  const run = { runLength: '30 ft', gateOpening: '44 1/2 in', widestBay: '6 ft', runEnds: 'centres' }
  // 360 − 44 1/2 − 3 1/2 = 312; half 156; /72 = 2.2 → 3 bays of 52 in; posts 2 × 4
  it('has as many bays on either side, and two posts more than bays', () => {
    expect(runNamed('gate-amid-run', run).shown).toMatchObject({
      baysEachHalf: '3 bays',
      bays: '6 bays',
      posts: '8 posts',
      bayCentres: '4 ft 4 in',
    })
  })

  it('is refused in a loop, where the gate takes all, and where the posts fill the bays', () => {
    expect(runNamed('gate-amid-run', { ...run, runEnds: 'loop' }).said).toContain('has no middle')
    expect(runNamed('gate-amid-run', { ...run, runLength: '4 ft' }, { confirmed: ['runLength'] }).said).toContain(
      'leaves no fence',
    )
  })
})

describe('a hinge packed out', () => {
  // Hinges as far apart as the leaf is wide: the packing is the drop.
  it('takes as much as the leaf dropped where the hinges are as far apart as it is wide', () => {
    expect(
      runNamed('hinge-packing', { latchDrop: '1/2 in', leafWidth: '36 in', hingeSpacing: '36 in' }).shown,
    ).toMatchObject({ hingePacking: '1/2 in' })
  })

  it('no leaf drops by its width', () => {
    const sunk = { latchDrop: '10 in', leafWidth: '9 in', hingeSpacing: '8 in' }
    expect(runNamed('hinge-packing', sunk, { confirmed: ['leafWidth', 'latchDrop'] }).said).toContain(
      'cannot have dropped',
    )
  })
})

describe('a post that is bought', () => {
  // 84 in is 7 ft: nothing is cut off.
  it('of just its length has no offcut, and none is taken that is too short', () => {
    const post = { postLength: '84 in', stockLengths: ['8 ft', '7 ft', '6 ft'] }
    expect(runNamed('post-as-sold', post).shown).toMatchObject({ postToBuy: '7 ft', postOffcut: '0 in' })
    expect(runNamed('post-as-sold', { ...post, stockLengths: ['6 ft'] }).said).toContain('None of these lengths')
  })

  it('that would end below the ground does not show', () => {
    const post = { picketLength: '20 in', footGap: '2 in', postBelowTop: '23 in', embedment: '20 in' }
    expect(runNamed('post-beside-pickets', post).said).toContain('does not show')
  })
})

describe('a run across a lot', () => {
  it('is refused where the setbacks leave nothing', () => {
    expect(runNamed('line-between-lots', { lotWidth: '20 ft', keptEachSide: '10 ft' }).said).toContain('leave nothing')
  })
})

describe('rails that are only counted', () => {
  // 3 × 9; no opening is needed for that.
  it('need no opening', () => {
    expect(runNamed('rails-between-posts', { rails: '3', bays: '9' }, { wanted: ['railsInAll'] }).shown).toMatchObject({
      railsInAll: '27 rails',
    })
  })
})
