import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const number = (outcome: ReturnType<typeof runNamed>['outcome'], name: string): number => {
  if (!outcome.ok) throw new Error('must be ok')
  return (outcome.values.get(name) as { amount: { valueOf(): number } }).amount.valueOf()
}
const firstMark = (outcome: ReturnType<typeof runNamed>['outcome']): unknown =>
  outcome.ok && outcome.tables[0]?.rows[0]?.[1]

describe('how pickets begin and end at the posts', () => {
  // 92 1/2 / (3 1/2 + 2 1/2) = 15.4 → 16; 92 1/2 / 16 − 3 1/2 = 2 9/32; the first mark at half of it, 1 9/64, is 1 1/8 on the tape
  it('half a gap at each post: 92 1/2 in takes 16, 2 9/32 in apart', () => {
    const { shown, outcome } = runNamed('as-many-gaps', {
      opening: '92 1/2 in',
      picketWidth: '3 1/2 in',
      widestGap: '2 1/2 in',
      gapsAtPosts: 'half',
    })
    expect(shown).toMatchObject({ pickets: '16 pickets', gap: '2 9/32 in', postGap: '1 9/64 in' })
    expect(firstMark(outcome)).toBe('1 1/8')
  })

  // 88 1/2 / 6 1/2 = 13.6 → 14; 88 1/2 / 14 − 3 1/2 = 2 23/28
  it('tight against one post: 88 1/2 in takes 14, 2 13/16 in by the tape, and a whole gap at the other', () => {
    const { shown, outcome } = runNamed('as-many-gaps', {
      opening: '88 1/2 in',
      picketWidth: '3 1/2 in',
      widestGap: '3 in',
      gapsAtPosts: 'one',
    })
    expect(shown).toMatchObject({ pickets: '14 pickets', tapeGap: '2 13/16 in', postGap: '2 23/28 in' })
    expect(firstMark(outcome)).toBe('0')
  })

  it('wood and gaps add back up, no gap is over the limit, and one picket fewer would break it', () => {
    const sixteenths = (least: number, most: number) => fc.integer({ min: least * 16, max: most * 16 })
    fc.assert(
      fc.property(
        sixteenths(24, 144),
        sixteenths(1, 8),
        sixteenths(0, 5),
        fc.constantFrom('half', 'one'),
        (opening, width, limit, gapsAtPosts) => {
          const { outcome } = runNamed('as-many-gaps', {
            opening: `${opening}/16 in`,
            picketWidth: `${width}/16 in`,
            widestGap: `${limit}/16 in`,
            gapsAtPosts,
          })
          if (!outcome.ok) {
            // Refused only where no number does: one fewer leaves too wide a gap, and that many are too much wood.
            const count = Math.ceil(opening / (width + limit))
            expect(count * width).toBeGreaterThan(opening)
            return
          }
          const [count, gap] = [number(outcome, 'pickets'), number(outcome, 'gap')]
          expect(count * (width / 16 + gap)).toBeCloseTo(opening / 16, 9)
          expect(gap).toBeGreaterThanOrEqual(0)
          expect(gap).toBeLessThanOrEqual(limit / 16 + 1e-12)
          if (count > 1) expect(opening / 16 / (count - 1) - width / 16).toBeGreaterThan(limit / 16)
        },
      ),
      { numRuns: 300, seed: 3 },
    )
  })

  it('with one against each post, two must fit, and no wider gap is offered where they never do', () => {
    const { outcome, said } = runNamed('pickets-touching-posts', {
      opening: '12 in',
      picketWidth: '7 in',
      widestGap: '2 in',
    })
    expect(outcome.ok).toBe(false)
    expect(said).toContain('two of 7 in do not fit a 12 in opening')
    expect(said).not.toContain('wider gap')
  })
})

describe('boards in two layers', () => {
  // Gaps of 3 5/11 in, boards 5 1/2 in: each front board at a post reaches 1 1/44 in over it. Two of them do not meet on a 3 1/2 in post.
  it('says nothing of one front board that serves two bays', () => {
    const { said } = runNamed('board-on-board', { opening: '93 in', picketWidth: '5 1/2 in', boardLap: '1 in' })
    expect(said).not.toContain('serves both')
  })

  // (92.5 − 3)/6.5 = 13.8 → 14 behind, 15 in front; a 4 in gap is wider than a 3 1/2 in board
  it('take the gap behind instead of the lap, as long as a board covers it', () => {
    const bay = { opening: '92 1/2 in', picketWidth: '3 1/2 in' }
    expect(runNamed('board-on-board', { ...bay, widestGap: '3 in' }).shown).toMatchObject({ bothLayers: '29 boards' })
    expect(runNamed('board-on-board', { ...bay, widestGap: '4 in' }).said).toContain('do not cover gaps of 4 in')
    expect(runNamed('board-on-board', bay).said).toContain('missing boardLap')
    expect(runNamed('board-on-board', { ...bay, widestGap: '0 in' }).said).toContain('nothing for the front boards')
  })

  // A lap of 1 in leaves gaps of 3 1/2 in: (93 − 3.5)/9 = 9.9 → 10 behind; 2 in at most: (93 − 2)/7.5 = 12.1 → 13
  it('keep both the lap and the widest gap, where both are told', () => {
    const bay = { opening: '93 in', picketWidth: '5 1/2 in', boardLap: '1 in' }
    expect(runNamed('board-on-board', { ...bay, widestGap: '2 in' }).shown).toMatchObject({ backBoards: '13 boards' })
    expect(runNamed('board-on-board', { ...bay, widestGap: '4 in' }).shown).toMatchObject({ backBoards: '10 boards' })
  })
})

describe('a story stick', () => {
  const bay = { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15' }
  // Pitch 6 1/8: a 24 in step lies at acos(6.125/24) = 75.2° and drops 94.5 × tan = 358 in
  it('that would drop past what a post can take is refused, with the widest step that does', () => {
    const { said } = runNamed('story-stick', { ...bay, stickPitch: '24 in' })
    expect(said).toContain('drops 358 in from post to post, more than the 6 ft of a tall one')
    // 6 1/8 × √(1 + (72/94 1/2)²) = 7.700
    expect(said).toContain('no wider than 7.7 in')
    expect(runNamed('story-stick', { ...bay, stickPitch: '7.69 in' }).outcome.ok).toBe(true)
  })
})

describe('bays that look alike', () => {
  const alike = (openings: readonly string[], options: Parameters<typeof runNamed>[2] = {}) =>
    runNamed('bays-alike', { openings, picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' }, options)
  const pickets = ({ outcome }: ReturnType<typeof runNamed>): unknown[] =>
    outcome.ok ? (outcome.tables[0]?.rows ?? []).map((row) => row[2]) : []

  // 15 pickets: (93 − 52 1/2) / 16 = 2.53, 16: (93 − 56) / 17 = 2.18. Two bays alike differ by nothing either way: 2.53 is nearer to 2 1/2.
  it('take the gap nearest to the one wanted, where several differ by as little', () => {
    expect(pickets(alike(['93 in', '93 in']))).toEqual([15, 15])
    expect(alike(['93 in', '93 in']).shown).toEqual({ gapsDiffer: '0 in', alike: 'true' })
  })

  it('are two at least and sixty at most', () => {
    expect(alike(['93 in']).said).toContain('One bay is alike to itself')
    expect(alike(Array.from({ length: 61 }, () => '93 in')).said).toContain('That is 61 bays. Give at most 60 bays')
    expect(pickets(alike(Array.from({ length: 60 }, () => '93 in')))).toHaveLength(60)
  })

  // An opening of one picket's width holds that one and no gap; beside it 16 pickets with 37/17 = 2 3/17 differ less than 15 with 2.53.
  it('hold a picket each', () => {
    const standBy = { confirmed: ['openings'] }
    expect(alike(['93 in', '3 in'], standBy).said).toContain('does not fit an opening of 3 in')
    expect(alike(['93 in', '3 1/2 in'], standBy).shown).toEqual({ gapsDiffer: '2 3/17 in', alike: 'false' })
    expect(pickets(alike(['93 in', '3 1/2 in'], standBy))).toEqual([16, 1])
  })

  it('cost no less spread by any other counts near the gap wanted', () => {
    const width = 3.5
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 40, max: 180 }), { minLength: 2, maxLength: 4 }), (spaces) => {
        const ran = alike(spaces.map((it) => `${it} in`))
        const gaps = spaces.map((space) =>
          Array.from({ length: Math.floor(space / width) }, (_, i) => (space - (i + 1) * width) / (i + 2))
            .sort((a, b) => Math.abs(a - 2.5) - Math.abs(b - 2.5))
            .slice(0, 2),
        )
        const spreads = gaps
          .reduce<number[][]>((all, own) => all.flatMap((it) => own.map((gap) => [...it, gap])), [[]])
          .map((it) => Math.max(...it) - Math.min(...it))
        expect(number(ran.outcome, 'gapsDiffer')).toBeCloseTo(Math.min(...spreads), 9)
      }),
      { numRuns: 60, seed: 7 },
    )
  })
})
