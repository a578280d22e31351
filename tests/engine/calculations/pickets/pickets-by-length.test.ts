import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('pickets for a length of fence', () => {
  const fence = { runLength: '60 ft', picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' }

  // 720 / 6 = 120, to the picket; 720 1/4 begins another
  it('a length that comes out even takes no more, one a hair longer one more', () => {
    expect(runNamed('pickets-by-length', fence).shown).toMatchObject({ picketsHung: '120 pickets' })
    expect(runNamed('pickets-by-length', { ...fence, runLength: '720 1/4 in' }).shown).toMatchObject({
      picketsHung: '121 pickets',
    })
  })

  // 720 − 48 = 672; 672 / 6 = 112; two: 624 / 6 = 104
  it('gates are left out, one where only its width is told', () => {
    const gate = { ...fence, gateOpening: '48 in' }
    expect(runNamed('pickets-by-length', gate).shown).toMatchObject({ picketsHung: '112 pickets' })
    expect(runNamed('pickets-by-length', { ...gate, gates: '2' }).shown).toMatchObject({ picketsHung: '104 pickets' })
    expect(runNamed('pickets-by-length', { ...gate, gates: '0' }).shown).toMatchObject({ picketsHung: '120 pickets' })
    expect(runNamed('pickets-by-length', { ...fence, gates: '2' }).said).toContain('missing gateOpening')
  })

  it('a limit serves as the gap, and one of the two is asked for', () => {
    const { wantedGap, ...bare } = fence
    expect(runNamed('pickets-by-length', { ...bare, widestGap: wantedGap }).shown).toMatchObject({
      picketsHung: '120 pickets',
    })
    expect(runNamed('pickets-by-length', bare).said).toContain('missing wantedGap')
  })

  it('is refused where nothing is left to put pickets on', () => {
    const scrap = runNamed('pickets-by-length', { ...fence, runLength: '3 in' }, { confirmed: ['runLength'] })
    expect(scrap.said).toContain('is wider than 3 in')
    expect(runNamed('pickets-by-length', { ...fence, runLength: '10 ft', gateOpening: '10 ft' }).said).toContain(
      'takes no 3 1/2 in picket',
    )
  })
})

describe('pickets to the metre, and what so many cover', () => {
  // 1000 / 100 = 10; 240 × 100 mm = 24 m, and those 24 m take 240 again
  it('the one undoes the other', () => {
    const size = { picketWidth: '65 mm', wantedGap: '35 mm' }
    expect(runNamed('pickets-a-metre', size, { system: 'metric' }).shown).toEqual({
      pitch: '100 mm',
      perMetre: '10',
      perFoot: '3.048',
    })
    const covered = runNamed('pickets-a-metre', { ...size, picketsHung: '240' }, { system: 'metric' }).shown
    expect(covered).toMatchObject({ fenceCovered: '24 m' })
    expect(runNamed('pickets-by-length', { ...size, runLength: covered.fenceCovered as string }).shown).toMatchObject({
      picketsHung: '240 pickets',
    })
  })

  // 12 / 5 1/2 = 2.18
  it('boards without a gap take just their own width', () => {
    const { shown, said } = runNamed('pickets-a-metre', { picketWidth: '5 1/2 in', wantedGap: '0 in' })
    expect(shown).toMatchObject({ perFoot: '2.182', pitch: '5 1/2 in' })
    expect(said).toContain('Without a gap')
  })
})
