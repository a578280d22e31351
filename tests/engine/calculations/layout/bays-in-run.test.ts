import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const number = (outcome: ReturnType<typeof runNamed>['outcome'], name: string): number => {
  if (!outcome.ok) throw new Error('must be ok')
  return (outcome.values.get(name) as { amount: { valueOf(): number } }).amount.valueOf()
}

describe('bays in a run', () => {
  // 48 ft at 8 ft is 6 bays (reference book, stepped run), so 7 posts
  it('48 ft at 8 ft is 6 bays and 7 posts', () => {
    expect(runNamed('bays-in-run', { runLength: '48 ft', widestBay: '8 ft' }).shown).toMatchObject({
      bays: '6 bays',
      bayCentres: '8 ft',
      posts: '7 posts',
    })
  })

  // Floating point says 8.4 / 1.2 = 7.000000000000001, and would take 8.
  it('8.4 m at 1.2 m is 7 bays exactly', () => {
    expect(runNamed('bays-in-run', { runLength: '8.4 m', widestBay: '1.2 m' }, { system: 'metric' }).shown.bays).toBe(
      '7 bays',
    )
  })

  // 60 ft = 720; less one post 716 1/2; gate 42 + 3 1/2 = 45 1/2; 671 / 96 → 7; 95 6/7 in; 7 + 1 + 1 posts
  it('between two walls, with a gate, the gate and half a post at each wall come off first', () => {
    expect(
      runNamed('bays-in-run', {
        runLength: '60 ft',
        widestBay: '8 ft',
        runEnds: 'walls',
        gates: '1',
        gateOpening: '42 in',
      }).shown,
    ).toMatchObject({ bays: '7 bays', bayCentres: '7 ft 11 6/7 in', opening: '92 5/14 in', posts: '9 posts' })
  })

  // Gate from 20 ft: before 240/96 → 3 bays of 80; 100 ft: after 1200 − 240 − 45 1/2 = 914 1/2 → 10 bays of 91 9/20; posts 13 + 1 + 1
  it('a gate whose place is given divides the run in two, each with bays of its own', () => {
    const { shown, said } = runNamed('bays-in-run', {
      runLength: '100 ft',
      widestBay: '8 ft',
      gates: '1',
      gateOpening: '42 in',
      gateStart: '20 ft',
    })
    expect(shown).toMatchObject({ bays: '13 bays', posts: '15 posts', bayCentres: '7 ft 7 9/20 in' })
    expect(said).toContain('6 ft 8 in')
  })

  const kinds = (outcome: ReturnType<typeof runNamed>['outcome']): (string | number)[] => {
    if (!outcome.ok) throw new Error('must be ok')
    return (outcome.tables[0]?.rows ?? []).map((row) => row[1] as string | number)
  }
  const places = (outcome: ReturnType<typeof runNamed>['outcome']): number[] => {
    if (!outcome.ok) throw new Error('must be ok')
    return (outcome.tables[0]?.rows ?? []).map((row) => Number(row[3]))
  }

  // The word counts from the wall: the gate post's centre stands at 240 in, where the tape says 20 ft. The first post's is at 1 3/4.
  it.each(['walls', 'outside'])(
    'from %s, a gate at 20 ft has its nearer post’s centre at 20 ft by the tape',
    (runEnds) => {
      const { outcome } = runNamed('bays-in-run', {
        runLength: '100 ft',
        widestBay: '8 ft',
        runEnds,
        gates: '1',
        gateOpening: '42 in',
        gateStart: '20 ft',
      })
      const at = kinds(outcome).indexOf('gate post, then the gate')
      expect(places(outcome)[at]).toBe(240)
      expect(places(outcome)[at + 1]).toBe(285.5)
      expect([places(outcome)[0], places(outcome).at(-1)]).toEqual([1.75, 1198.25])
    },
  )

  it('a gate so near an end that its bay is lost between the posts is refused, and one against the end post is not', () => {
    const run = { runLength: '40 ft', widestBay: '8 ft', gates: '1', gateOpening: '42 in' }
    expect(runNamed('bays-in-run', { ...run, gateStart: '2 in' }).said).toContain(
      'impossible gateStart: That leaves a bay of 2 in centre to centre before the gate, and 3 1/2 in posts leave nothing of it',
    )
    // 480 − 45 1/2 = 434 1/2; a gate that starts at 432 leaves 2 1/2 after it
    expect(runNamed('bays-in-run', { ...run, gateStart: '432 in' }).said).toContain('after the gate')
    expect(runNamed('bays-in-run', { ...run, gateStart: '0 in' }).outcome.ok).toBe(true)
    expect(runNamed('bays-in-run', { ...run, runEnds: 'walls', gateStart: '1 in' }).said).toContain(
      'cannot stand 1 in from the wall',
    )
  })

  // 480 − 3 × 45 1/2 = 343 1/2; / 96 → 4 bays, so three joints for three gates
  it('three gates in 40 ft each stand where two bays meet', () => {
    const { outcome, said } = runNamed('bays-in-run', {
      runLength: '40 ft',
      widestBay: '8 ft',
      gates: '3',
      gateOpening: '42 in',
    })
    expect(kinds(outcome)).toEqual([
      'post',
      ...Array.from({ length: 3 }, () => ['gate post, then the gate', 'gate post']).flat(),
      'post',
    ])
    expect(said).toContain('it stands where two bays meet')
    // The drawing shows three gates, and fence in the four bays only.
    expect(outcome.ok && outcome.drawing?.match(/>gate</g)).toHaveLength(3)
  })

  // 120 − 45 1/2 = 74 1/2: one bay, which has no joint. 240 − 3 × 45 1/2 = 103 1/2: two bays, one joint.
  it('says so when there are more gates than joints between bays', () => {
    const run = { widestBay: '8 ft', gateOpening: '42 in' }
    const one = runNamed('bays-in-run', { ...run, runLength: '10 ft', gates: '1' })
    expect(one.said).toContain('1 bay has too few joints for 1 gate between bays')
    expect(one.said).not.toContain('where two bays meet')
    expect(kinds(one.outcome)).toEqual(['post', 'gate post, then the gate', 'gate post'])
    const three = runNamed('bays-in-run', { ...run, runLength: '20 ft', gates: '3' })
    expect(three.said).toContain('2 bays have too few joints for 3 gates between bays')
    expect(three.outcome.ok && three.outcome.drawing?.match(/>gate</g)).toHaveLength(3)
  })

  it('a closed loop has as many posts as bays, and asks to mind the corners', () => {
    const { shown, said } = runNamed('bays-in-run', { runLength: '200 ft', widestBay: '8 ft', runEnds: 'loop' })
    expect(shown).toMatchObject({ bays: '25 bays', posts: '25 posts' })
    expect(said).toContain('corner')
  })

  it('asks how wide the gate is, doubts a gate opening with no gate, and refuses gates that take the whole run', () => {
    expect(runNamed('bays-in-run', { runLength: '60 ft', widestBay: '8 ft', gates: '1' }).said).toContain(
      'missing gateOpening',
    )
    const without = { runLength: '60 ft', widestBay: '8 ft', gates: '0', gateOpening: '42 in' }
    expect(runNamed('bays-in-run', without).said).toContain(
      'You gave a gate opening of 42 in and said that there is no gate. I reckoned without one.',
    )
    expect(
      runNamed('bays-in-run', { runLength: '10 ft', widestBay: '8 ft', gates: '3', gateOpening: '42 in' }).said,
    ).toContain('impossible runLength')
  })

  it('bays, gates and posts add back up to the run; no bay is over the limit, and one fewer would be', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 4000 }),
        fc.integer({ min: 36, max: 120 }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom('centres', 'walls', 'loop'),
        (run, most, gates, ends) => {
          const { outcome } = runNamed(
            'bays-in-run',
            {
              runLength: `${run} in`,
              widestBay: `${most} in`,
              runEnds: ends,
              gates: String(gates),
              ...(gates > 0 ? { gateOpening: '40 in' } : {}),
            },
            { confirmed: ['runLength'] },
          )
          if (!outcome.ok) return
          const [bays, each, posts] = [number(outcome, 'bays'), number(outcome, 'bayCentres'), number(outcome, 'posts')]
          expect(bays * each + gates * 43.5 + (ends === 'walls' ? 3.5 : 0)).toBeCloseTo(run, 6)
          expect(each).toBeLessThanOrEqual(most + 1e-9)
          if (bays > 1) expect((bays * each) / (bays - 1)).toBeGreaterThan(most)
          expect(posts).toBe(bays + gates + (ends === 'loop' ? 0 : 1))
          const rows = outcome.tables[0]?.rows ?? []
          expect(rows).toHaveLength(posts)
          const stations = rows.map((row) => Number(row[3]))
          for (let i = 1; i < stations.length; i++)
            expect(stations[i] as number).toBeGreaterThan(stations[i - 1] as number)
          expect(rows.filter((row) => String(row[1]).startsWith('gate post')).length).toBeGreaterThanOrEqual(
            gates > 0 ? 2 : 0,
          )
        },
      ),
      { numRuns: 400, seed: 5 },
    )
  })
})
