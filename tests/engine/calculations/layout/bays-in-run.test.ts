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
    ).toMatchObject({ bays: '7 bays', bayCentres: '7 ft 11 6/7 in', bayOpening: '92 5/14 in', posts: '9 posts' })
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

  it('a closed loop has as many posts as bays, and asks to mind the corners', () => {
    const { shown, said } = runNamed('bays-in-run', { runLength: '200 ft', widestBay: '8 ft', runEnds: 'loop' })
    expect(shown).toMatchObject({ bays: '25 bays', posts: '25 posts' })
    expect(said).toContain('corner')
  })

  it('asks how wide the gate is, and refuses a gate opening without a gate', () => {
    expect(runNamed('bays-in-run', { runLength: '60 ft', widestBay: '8 ft', gates: '1' }).said).toContain(
      'missing gateOpening',
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
          expect(rows.filter((row) => row[1] === 'gate post').length).toBeGreaterThanOrEqual(gates > 0 ? 2 : 0)
        },
      ),
      { numRuns: 400, seed: 5 },
    )
  })
})
