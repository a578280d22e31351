import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('a post that goes on leaning', () => {
  const read = (outs: readonly string[], dates: readonly string[]) =>
    runNamed('lean-trend', { plumbReadings: outs, plumbDates: dates }).shown.leanMoves

  it('moves by more than two readings can be wrong by together, and not by less', () => {
    expect(read(['1/4 in', '7/16 in'], ['2025-04-01', '2026-04-01'])).toBe('true')
    expect(read(['1/4 in', '3/8 in'], ['2025-04-01', '2026-04-01'])).toBe('false')
  })

  it('moves back, too', () => {
    const { shown, said } = runNamed('lean-trend', {
      plumbReadings: ['3/4 in', '1/2 in'],
      plumbDates: ['2025-04-01', '2026-04-01'],
    })
    expect(shown.leanMoves).toBe('true')
    expect(said).toContain('1/4 in back')
  })

  it('a change too small to tell cannot be told from rest before half a year', () => {
    expect(read(['1/4 in', '5/16 in'], ['2026-01-01', '2026-06-29'])).toBe('null')
    expect(read(['1/4 in', '5/16 in'], ['2026-01-01', '2026-06-30'])).toBe('false')
  })

  it('refuses readings without their days, and days out of order', () => {
    expect(runNamed('lean-trend', { plumbReadings: ['1/4 in', '1/2 in'], plumbDates: ['2026-01-01'] }).said).toContain(
      '2 readings and 1 days',
    )
    expect(
      runNamed('lean-trend', { plumbReadings: ['1/4 in', '1/2 in'], plumbDates: ['2026-02-01', '2026-01-01'] }).said,
    ).toContain('oldest first')
  })
})

describe('what rot leaves', () => {
  const post = { postWidth: '3 1/2 in', rotWhere: 'one', rotDepth: '5/8 in' }

  it('(2 7/8 ÷ 3 1/2)² = 67.47 %: it may stay, and an eighth more of rot is too much', () => {
    const { shown, said } = runNamed('rot-left', post)
    expect(shown.postServes).toBe('true')
    expect(said).toContain('Decided by the strength left in bending: 67.47 % against 66.67 %')
    expect(runNamed('rot-left', { ...post, rotDepth: '3/4 in' }).shown.postServes).toBe('false')
  })

  it('the place of the rot alone flips it', () => {
    for (const rotWhere of ['opposite', 'corner', 'all'])
      expect(runNamed('rot-left', { ...post, rotWhere }).shown.postServes).toBe('false')
  })

  it('a round post rotten on one side has at least what is left when it is rotten all round: too little is not said of it', () => {
    const given = { postWidth: '4 in', postSection: 'round', rotDepth: '1/2 in' }
    expect(runNamed('rot-left', { ...given, rotWhere: 'all' }).shown.postServes).toBe('false')
    const { shown, said } = runNamed('rot-left', { ...given, rotWhere: 'one' })
    expect(shown.postServes).toBe('null')
    expect(said).toContain('at least')
  })

  it('rot right through leaves nothing', () => {
    const { shown, said } = runNamed('rot-left', { postWidth: '3 1/2 in', rotWhere: 'all', rotDepth: '1 3/4 in' })
    expect(shown.sectionLeft).toBe('0 %')
    expect(shown.postServes).toBe('false')
    expect(said).toContain('goes right through')
  })

  it('asks how deep, or how much is sound, where that is not said', () => {
    expect(runNamed('rot-left', { postWidth: '3 1/2 in', rotWhere: 'one' }).said).toContain('missing rotDepth')
    expect(runNamed('rot-left', { postWidth: '3 1/2 in', rotWhere: 'inside' }).said).toContain('missing soundShell')
  })
})

describe('sister or replace', () => {
  const post = { postAbove: '4 ft', rotHeight: '24 in' }

  it('24 in of sound wood take a lap of 24 in; an inch more of rot, or of lap, does not', () => {
    const { shown, said } = runNamed('sister-or-replace', post)
    expect(shown.sisterServes).toBe('true')
    expect(said).toContain('Decided by the sound wood above the rot')
    expect(runNamed('sister-or-replace', { ...post, rotHeight: '25 in' }).shown.sisterServes).toBe('false')
    expect(runNamed('sister-or-replace', { ...post, sisterLap: '25 in' }).shown.sisterServes).toBe('false')
    expect(runNamed('sister-or-replace', { ...post, postAbove: '47 in' }).shown.sisterServes).toBe('false')
  })

  it('cannot say before it is known how far up the rot goes', () => {
    const { shown, outcome } = runNamed('sister-or-replace', { postAbove: '4 ft' })
    expect(shown.sisterServes).toBe('null')
    expect(outcome.ok && outcome.doubts.map((it) => it.word)).toEqual(['rotHeight'])
  })
})

describe('why a gate hangs low', () => {
  // Nothing out: both diagonals alike, plumb, gaps alike.
  const gate = {
    leafWidth: '40 in',
    leafHeight: '40 in',
    tieDiagonal: '56 9/16 in',
    strutDiagonal: '56 9/16 in',
    outOfPlumb: '0 in',
    plumbOver: '48 in',
    hingeSpacing: '30 in',
    hingeGapTop: '3/8 in',
    hingeGapBottom: '3/8 in',
  }

  it('says none when none lets it down', () => {
    const { shown, said } = runNamed('sag-triage', gate)
    expect(shown).toMatchObject({ sagCause: 'none', leafRacked: 'false', postLeaning: 'false', hingesGive: 'false' })
    expect(said).toContain('Look at the ground under the gate')
  })

  it.each([
    ['tieDiagonal', '57 in', 'leaf', 'leafRacked'],
    ['outOfPlumb', '1/2 in', 'post', 'postLeaning'],
    ['hingeGapTop', '5/8 in', 'hinges', 'hingesGive'],
  ])('%s alone at %s makes it the %s', (word, value, cause, verdict) => {
    const { shown, said } = runNamed('sag-triage', { ...gate, [word]: value })
    expect(shown.sagCause).toBe(cause)
    expect(shown[verdict]).toBe('true')
    expect(said).toContain('Decided by the largest drop at the latch')
  })

  it('is unsure until all three are measured, and says what is missing', () => {
    const { hingeGapTop: _, ...two } = gate
    const { shown, outcome } = runNamed('sag-triage', { ...two, outOfPlumb: '1/2 in' })
    expect(shown).toMatchObject({ sagCause: 'unsure', postLeaning: 'true', hingesGive: 'null' })
    expect(outcome.ok && outcome.doubts.map((it) => it.word)).toEqual(['hingeGapTop'])
  })

  it('names the same drops as the calculations of each', () => {
    const racked = { tieDiagonal: '58 11/16 in', strutDiagonal: '57 5/16 in', leafHeight: '40 in' }
    const leaned = { outOfPlumb: '1 in', plumbOver: '48 in', leafWidth: '42 in' }
    const { outcome } = runNamed('sag-triage', { ...racked, ...leaned })
    const drops = outcome.ok ? outcome.tables[0]?.rows.map((it) => it[2]) : []
    expect(drops).toEqual([
      runNamed('gate-sag', racked).shown.latchDrop,
      runNamed('gate-post-lean', leaned).shown.latchMove,
      'not measured',
    ])
  })
})

describe('the yearly list', () => {
  it('has the day of the walk, the look in between and the next walk on it', () => {
    const { outcome } = runNamed('yearly-walk', { walkDate: '2026-04-12', posts: '26' })
    const days = new Set(outcome.ok ? outcome.tables[0]?.rows.map((it) => it[0]) : [])
    expect([...days]).toEqual([
      'Sunday 12 April 2026',
      'Sunday 11 October 2026',
      'after each storm',
      'Monday 12 April 2027',
    ])
  })
})
