// Marks, the lot line and the street corner: what is not known is never taken for the better.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('a call on a day that is not that weekday', () => {
  const call = { callDate: '2026-10-05', noticeDays: '3' }

  it('is refused with both', () => {
    expect(runNamed('dig-notice', { ...call, callWeekday: 'friday' }).said).toContain(
      'You call on Monday 5 October 2026, and said that it is a Friday. Check the day.',
    )
  })

  // Monday; Tuesday, Wednesday and Thursday pass; Friday
  it('one that is says nothing of it', () => {
    const { shown, said } = runNamed('dig-notice', { ...call, callWeekday: 'monday' })
    expect(shown.firstDigDay).toBe('Friday 9 October 2026')
    expect(said).not.toContain('Check the day')
  })
})

describe('a hole beside a mark that does not say how wide the line is', () => {
  const zone = { holeDiameter: '10 in', zoneEachSide: '24 in' }

  // 40 − 5 = 35; 35 − 24 = 11 in from a line of no width: outside only of one narrower than 22 in
  it('is never called outside its zone', () => {
    const { shown, said } = runNamed('hole-to-mark', { ...zone, markDistance: '40 in' })
    expect(shown.outsideZone).toBe('null')
    expect(shown.moveHole).toBeUndefined()
    expect(said).toContain('only if the line is narrower than 22 in')
  })

  it('is outside when the width was said, and far enough', () => {
    const outside = (facilityWidth: string): string | undefined =>
      runNamed('hole-to-mark', { ...zone, markDistance: '40 in', facilityWidth }).shown.outsideZone
    expect([outside('0 in'), outside('21 in'), outside('22 in')]).toEqual(['true', 'true', 'false'])
  })

  // 24 − 5 − 24 = −5
  it('is inside all the same where no width could help, and must move by more than is worked', () => {
    const { shown, said } = runNamed('hole-to-mark', { ...zone, markDistance: '24 in' })
    expect(shown).toMatchObject({ outsideZone: 'false', moveHole: '5 in' })
    expect(said).toContain('Move it by half the width of the buried line more')
  })
})

describe('a fence corner at a street corner', () => {
  // 14 and 14 would lie beyond the long side of a 25 ft triangle; 14 and 5 lie inside it.
  it('with one distance for both streets is not judged', () => {
    const { shown } = runNamed('sight-triangle', { sightLegs: ['25 ft', '25 ft'], fenceAlong: ['14 ft'] })
    expect(shown.outsideSight).toBe('null')
  })
})

describe('a hole behind the lot line', () => {
  // posts 6 + 1 3/4 = 7 3/4 in; 7 3/4 − 5 = 2 3/4 in inside, 3 1/4 in short of the 6
  it('that reaches into the setback says so, whatever the fence above it does', () => {
    const { shown, said } = runNamed('post-line', { setback: '6 in', picketSide: 'inside', holeDiameter: '10 in' })
    expect(shown).toMatchObject({ holeInside: '2 3/4 in', nothingOver: 'true' })
    expect(said).toContain('In the ground the hole reaches 3 1/4 in into the setback.')
  })

  // outside: 6 + 1 3/4 + 1 1/2 + 3/4 = 10; 10 − 4 = 6 in
  it('that stays behind the setback does not', () => {
    const { said } = runNamed('post-line', { setback: '6 in', picketSide: 'outside', holeDiameter: '8 in' })
    expect(said).not.toContain('into the setback')
  })
})
