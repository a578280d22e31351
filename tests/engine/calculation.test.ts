import { describe, expect, it } from 'vitest'
import { runNamed } from './run-named.ts'

const holes = { posts: '4', holeDiameter: '12 in', holeDepth: '30 in', bagYield: '0.6 ft3' }

describe('a calculation', () => {
  // 1 hole: (36 π − 12.25) × 30 = 3025.420065 in³; a bag that makes a seventh of that goes into it 7 times, as near as π is known.
  it('whose figure lies on the edge of a whole number says both in plain words, and which it took', () => {
    const { shown, said } = runNamed('concrete-for-posts', {
      ...holes,
      posts: '1',
      bagYield: `${((36 * Math.PI - 12.25) * 30) / 7} in3`,
    })
    expect(shown.bags).toBe('8 bags')
    expect(said).toContain(
      'Exactly on the edge (bags, bought together): 7 before rounding, as near as I can work it, so it could be 7 or 8. I took 8.',
    )
    expect(said).not.toMatch(/ceil|safe side/)
  })

  it.each([
    [{ posts: ['4', '7'], holeDiameter: ['12 in', '10 in', '9 in'] }, ['corner-posts', 'gate-posts'], '3 values'],
    [{ posts: ['4', '7', '3'], holeDiameter: ['12 in', '10 in'] }, undefined, '2 values'],
    [{ posts: '4', holeDiameter: ['12 in', '10 in'] }, ['corner-posts', 'gate-posts', 'end-posts'], '2 values'],
  ])('told different numbers of values says so: %j', (given, places, count) => {
    const { outcome, said } = runNamed('concrete-for-posts', { ...holes, ...given }, { places })
    expect(outcome.ok).toBe(false)
    expect(said).toContain(`I have ${count} for the hole width`)
  })
})
