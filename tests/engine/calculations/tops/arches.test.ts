import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

type Given = Parameters<typeof runNamed>[1]

/** The lengths in the table, left edge, middle and right edge of every picket, in inches. */
function lengths(given: Given): number[][] {
  const { outcome, said } = runNamed('arched-top', { tapeMark: '1/64 in', ...given })
  if (!outcome.ok) throw new Error(said)
  return (outcome.tables[0]?.rows ?? []).map((row) => row.slice(1, 4).map((cell) => inches(String(cell))))
}
/** `7 7/8` as a number. */
const inches = (text: string): number =>
  text.split(' ').reduce((sum, part) => {
    const [top, bottom = 1] = part.split('/').map(Number)
    return sum + (top as number) / bottom
  }, 0)

const arch = { opening: '94 1/2 in', archRise: '6 in', picketWidth: '3 1/2 in', pickets: '15' }

describe('pickets cut to an arch or a dip', () => {
  // R = (47.25² + 6²)/12 = 189.047; gaps 42/16 = 2.625, so the first outer edge lies 44.625 from the middle:
  // √(189.047² − 44.625²) − 183.047 = 0.657 over the base. The curve's base is 36 − 0.657, and the middle one 6 more.
  it('the shortest picket has the length asked for at its shorter edge, not the curve at the post', () => {
    const table = lengths({ ...arch, shortestPicket: '36 in' })
    expect(Math.min(...table.flat())).toBe(36)
    expect(table[0]?.[0]).toBe(36)
    expect(table[7]?.[1]).toBeCloseTo(36 - 0.657 + 6, 1)
    expect(runNamed('arched-top', { ...arch, shortestPicket: '36 in' }).said).toContain('36 in at its shorter edge')
  })

  it('a dip may start from its longest picket, the one at the end', () => {
    const table = lengths({ ...arch, archShape: 'concave', longestPicket: '48 in' })
    expect(Math.max(...table.flat())).toBe(48)
    expect(table[0]?.[0]).toBe(48)
    expect(table.at(-1)?.[2]).toBe(48)
    // The middle one stands in the middle of the bay: 6 − 0.657 lower.
    expect(table[7]?.[1]).toBeCloseTo(48 - 6 + 0.657, 1)
  })

  it('the end picket is the longest of a dip and the shortest of a rising arch', () => {
    const dip = { ...arch, archShape: 'concave' }
    expect(lengths({ ...dip, endPicket: '48 in' })).toEqual(lengths({ ...dip, longestPicket: '48 in' }))
    expect(lengths({ ...arch, endPicket: '36 in' })).toEqual(lengths({ ...arch, shortestPicket: '36 in' }))
  })

  it('the longest picket and the base of the curve give one and the same arch', () => {
    const base = lengths({ ...arch, curveBase: '36 in' })
    const longest = lengths({ ...arch, longestPicket: '42 in' })
    expect(longest).toEqual(base)
    expect(runNamed('arched-top', { ...arch, curveBase: '36 in', longestPicket: '42 in' }).said).toContain(
      'Give me one of them',
    )
  })

  // 27 × 3 1/2 = 94 1/2 is what the opening holds to the last hair; 28 are 98.
  it('more wood than the opening holds is refused, and so are more pickets than can be worked', () => {
    const given = { ...arch, shortestPicket: '36 in' }
    expect(runNamed('arched-top', { ...given, pickets: '28' }).said).toContain('more wood than a 94 1/2 in opening')
    expect(runNamed('arched-top', { ...given, pickets: '27' }).outcome.ok).toBe(true)
  })

  it('asks how long the shortest is when none of them is known', () => {
    const { outcome } = runNamed('arched-top', arch)
    expect(outcome.ok && outcome.doubts.map((it) => it.word)).toEqual(['shortestPicket'])
  })

  it('a longest picket that the curve uses up is refused', () => {
    const steep = {
      opening: '60 in',
      archRise: '28 in',
      picketWidth: '3 1/2 in',
      pickets: '16',
      longestPicket: '24 in',
    }
    expect(runNamed('arched-top', steep).said).toContain('nothing is left of the shortest')
  })

  // Parabola: 20 × (√(1 + 3²) + asinh(3)/3) = 75.369
  it('only a circle is refused a rise of more than half the opening', () => {
    const steep = { opening: '40 in', archRise: '30 in' }
    expect(runNamed('arched-top', { ...steep, archCurve: 'circle' }).said).toContain(
      'a circle would bulge past the posts',
    )
    expect(runNamed('arched-top', { ...steep, archCurve: 'parabola' }).shown.archLength).toBe('75.37 in')
    expect(runNamed('arched-top', { ...steep, archCurve: 'chain' }).outcome.ok).toBe(true)
  })
})

describe('one arch over bays that are not alike', () => {
  // R = (48² + 20²)/40 = 67.6; over 30 in: 67.6 − √(67.6² − 15²) = 1.685. With the same 20 in, 20 is more than half of 30.
  it('the same rise is not offered where a circle would bulge past the posts of the odd bay', () => {
    const { shown, said } = runNamed('arch-over-unequal-bays', {
      standardChord: '96 in',
      archRise: '20 in',
      otherChord: '30 in',
    })
    expect(shown.riseSameRadius).toBe('1.685 in')
    expect(shown.radiusSameRise).toBeUndefined()
    expect(said).toContain('20 in is more than half of its 30 in')
  })
})

describe('clipped corners', () => {
  const clip = (more: Record<string, string>) =>
    runNamed('clipped-corners', { picketWidth: '3 1/2 in', clipAcross: '1 in', ...more })

  // Down 1 and across 1 is 45°; across 1 at 60° reaches √3 down; nothing said is as far down as across.
  it('are set by how far down or by the angle, and not by both', () => {
    expect(clip({}).shown).toMatchObject({ clipShoulder: '1 in', clipCut: '45°', flatTop: '1 1/2 in' })
    expect(clip({ clipDown: '1 in' }).shown).toMatchObject({ clipShoulder: '1 in', clipCut: '45°' })
    expect(clip({ clipAngle: '60 deg' }).shown).toMatchObject({ clipShoulder: '1.732 in', clipCut: '60°' })
    expect(clip({ clipDown: '1 in', clipAngle: '60 deg' }).said).toContain('would be a second answer')
  })

  // Twice 1 3/4 is the whole width: a point, and no more.
  it('meet in a point at most', () => {
    expect(clip({ clipAcross: '1 3/4 in' }).shown.flatTop).toBe('0 in')
    expect(clip({ clipAcross: '1 7/8 in' }).said).toContain('are more than a 3 1/2 in picket is wide')
  })
})
