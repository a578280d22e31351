import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('pickets in one bay', () => {
  // 12 × 3 1/2 = 42; 70 5/8 − 42 = 28 5/8; shared by 13 gaps = 229/104 = 2 21/104; nearest sixteenth 35/16 = 2 3/16
  it('a 70 5/8 in opening takes 12 pickets, 2 3/16 in by the tape, 2 21/104 in exactly', () => {
    const { shown } = runNamed('picket-spacing', {
      opening: '70 5/8 in',
      picketWidth: '3 1/2 in',
      widestGap: '2 1/2 in',
    })
    expect(shown).toMatchObject({ pickets: '12 pickets', gap: '2 21/104 in', tapeGap: '2 3/16 in' })
  })

  // One picket every 5 73/104 in: 2 21/104, 7 47/52, 13 63/104 … to the nearest sixteenth 2 3/16, 7 7/8, 13 5/8 (13.606 → 13 5/8)
  it('its running marks are none off by more than half a sixteenth', () => {
    const { outcome } = runNamed('picket-spacing', {
      opening: '70 5/8 in',
      picketWidth: '3 1/2 in',
      widestGap: '2 1/2 in',
    })
    if (!outcome.ok) throw new Error('must be ok')
    const marks = (outcome.tables[0]?.rows ?? []).map((row) => inches(String(row[1])))
    expect(marks).toHaveLength(12)
    const pitch = 229 / 104 + 3.5
    for (const [i, mark] of marks.entries())
      expect(Math.abs(mark - (229 / 104 + i * pitch))).toBeLessThanOrEqual(1 / 32 + 1e-12)
    expect(marks.slice(0, 3)).toEqual([2.1875, 7.875, 13.625])
  })

  // 16 × 5 1/2 = 88, 93 − 88 = 5, shared by 17 = 5/17 > 1/4; 17 × 5 1/2 = 93 1/2 > 93 by 1/2
  it('a limit that no count can meet is refused with both neighbours shown', () => {
    const { outcome, said } = runNamed('picket-spacing', {
      opening: '93 in',
      picketWidth: '5 1/2 in',
      widestGap: '1/4 in',
    })
    expect(outcome.ok).toBe(false)
    expect(said).toContain('16 pickets leave gaps of 5/17 in')
    expect(said).toContain('17 pickets do not fit')
    expect(said).toContain('93 1/2 in of wood, 1/2 in more than the opening')
    expect(said).not.toContain('−')
  })

  it('a picket wider than the opening is refused with both sizes', () => {
    expect(
      runNamed(
        'picket-spacing',
        { opening: '13 in', picketWidth: '14 in', widestGap: '1 in' },
        { confirmed: ['picketWidth'] },
      ).said,
    ).toContain('A 14 in picket does not fit a 13 in opening')
  })

  // 94 1/2 with 15: (94.5 − 52.5)/16 = 2.625; with 16: (94.5 − 56)/17 = 2 9/34 (2.2647); 2 1/2 is nearer 2.625
  // Both gaps stand in the reference book of carpentry geometry, as derived there.
  it('a gap that is wished for takes the nearest count, and shows the neighbours', () => {
    const { shown } = runNamed('picket-spacing', {
      opening: '94 1/2 in',
      picketWidth: '3 1/2 in',
      wantedGap: '2 1/2 in',
    })
    expect(shown).toMatchObject({ pickets: '15 pickets', gap: '2 5/8 in', gapOneMore: '2 9/34 in' })
  })

  // IRC R312.1.3 wording: a 4 in sphere must not pass; (70 − 13 × 1 1/2)/14 = 3.607. Twelve leave exactly 4.0.
  it('a 4 in ball is stopped only by gaps under 4 in: 70 in with 1 1/2 in pickets takes 13, not the 12 that leave exactly 4 in', () => {
    const { shown } = runNamed('picket-spacing', { opening: '70 in', picketWidth: '1 1/2 in', sphere: '4 in' })
    expect(shown.pickets).toBe('13 pickets')
  })

  // For 2 1/2 in: (93 − 2 1/2)/6 = 15.08 → 16, gap 37/17 = 2 3/17. The 4 in ball alone: (93 − 4)/7 1/2 = 11.87 → 12.
  it('a ball and a limit are both kept: the stricter governs, and is named', () => {
    const bay = { opening: '93 in', picketWidth: '3 1/2 in', sphere: '4 in' }
    const limit = runNamed('picket-spacing', { ...bay, widestGap: '2 1/2 in' })
    expect(limit.shown).toMatchObject({ pickets: '16 pickets', gap: '2 3/17 in' })
    expect(limit.said).toContain('What governs is the widest gap you allow, 2 1/2 in')
    const ball = runNamed('picket-spacing', { ...bay, widestGap: '5 in' })
    expect(ball.shown.pickets).toBe('12 pickets')
    expect(ball.said).toContain('What governs is the 4 in ball')
  })

  // About 2 in: (93 − 2)/5 1/2 = 16.5; 17 leave 67/36 (0.139 off), 16 leave 2 3/17 (0.176 off). The ball alone takes 12.
  it('a gap that is wished for stands beside a ball, and gives way to a limit', () => {
    const bay = { opening: '93 in', picketWidth: '3 1/2 in', wantedGap: '2 in' }
    expect(runNamed('picket-spacing', { ...bay, sphere: '4 in' }).shown.pickets).toBe('17 pickets')
    // (93 − 1 1/2)/5 = 18.3 → 19
    const { shown, said } = runNamed('picket-spacing', { ...bay, widestGap: '1 1/2 in' })
    expect(shown.pickets).toBe('19 pickets')
    expect(said).toContain('What governs is the widest gap you allow, 1 1/2 in')
  })

  // One 7 in picket leaves 2 1/2 in at each side; two do not fit 12 in.
  it('a ball that no count stops is not answered with a wider gap', () => {
    const { outcome, said } = runNamed('picket-spacing', { opening: '12 in', picketWidth: '7 in', sphere: '2 in' })
    expect(outcome.ok).toBe(false)
    expect(said).not.toContain('Allow a wider gap')
    expect(said).toContain('Use narrower pickets, or trim the two at the posts.')
  })

  it('asks how wide a gap may be when nobody says', () => {
    expect(runNamed('picket-spacing', { opening: '93 in', picketWidth: '3 1/2 in' }).said).toContain(
      'missing widestGap',
    )
  })

  const sixteenths = (least: number, most: number) => fc.integer({ min: least * 16, max: most * 16 })
  // Odd sizes are confirmed, so that nothing is refused but what cannot be done.
  const bayOf = (opening: number, width: number, gap: number) =>
    runNamed(
      'picket-spacing',
      { opening: `${opening}/16 in`, picketWidth: `${width}/16 in`, widestGap: `${gap}/16 in` },
      { confirmed: ['opening', 'picketWidth', 'widestGap'] },
    ).outcome
  /** Some count leaves gaps that are not less than nothing and not over the limit. */
  const canBeDone = (opening: number, width: number, gap: number): boolean =>
    Array.from({ length: Math.floor(opening / width) }, (_, i) => i + 1).some(
      (count) => (opening - count * width) / (count + 1) <= gap,
    )

  it('wood and gaps add back up, no gap is over the limit, one picket fewer would break it, and no mark drifts', () => {
    fc.assert(
      fc.property(sixteenths(24, 144), sixteenths(1, 8), sixteenths(0, 5), (opening, width, gap) => {
        const outcome = bayOf(opening, width, gap)
        expect(outcome.ok).toBe(canBeDone(opening, width, gap))
        if (!outcome.ok) return
        const value = (name: string): number => {
          const q = outcome.values.get(name) as { amount: { valueOf(): number } }
          return q.amount.valueOf()
        }
        const [count, exact] = [value('pickets'), value('gap')]
        expect((count * width) / 16 + (count + 1) * exact).toBeCloseTo(opening / 16, 9)
        expect(exact).toBeGreaterThanOrEqual(0)
        expect(exact).toBeLessThanOrEqual(gap / 16 + 1e-12)
        if (count > 1) expect((opening / 16 - ((count - 1) * width) / 16) / count).toBeGreaterThan(gap / 16)
        const marks = (outcome.tables[0]?.rows ?? []).map((row) => inches(String(row[1])))
        for (const [i, mark] of marks.entries())
          expect(Math.abs(mark - (exact + i * (exact + width / 16)))).toBeLessThanOrEqual(1 / 32 + 1e-9)
      }),
      { numRuns: 400, seed: 7 },
    )
  })

  // A second derivation: pickets laid one by one until the gap that is left, shared out, is within the limit.
  it('agrees with laying pickets one by one', () => {
    fc.assert(
      fc.property(sixteenths(24, 144), sixteenths(1, 6), sixteenths(1, 5), (opening, width, gap) => {
        const outcome = bayOf(opening, width, gap)
        let laid = 0
        while (laid * width <= opening && (opening - laid * width) / (laid + 1) > gap) laid++
        // Every opening here is wider than the widest gap, so there is a picket at least.
        expect(outcome.ok).toBe(laid * width <= opening)
        if (outcome.ok)
          expect((outcome.values.get('pickets') as { amount: { valueOf(): number } }).amount.valueOf()).toBe(laid)
      }),
      { numRuns: 300, seed: 11 },
    )
  })
})

/** `7 7/8` as a number. */
function inches(text: string): number {
  const [whole = '0', part] = text.includes('/') && !text.includes(' ') ? ['0', text] : text.split(' ')
  const [top, bottom] = (part ?? '0/1').split('/').map(Number)
  return Number(whole.replace(/,/g, '')) + (top as number) / (bottom as number)
}
