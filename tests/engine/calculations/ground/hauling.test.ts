// Bringing it home: how far a board sticks out, and whether a delivery costs less. Sums by hand beside each.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const marksIn = (longestPiece: string, bedLength: string): Record<string, string> => {
  const { outcome } = runNamed('load-overhang', { longestPiece, bedLength })
  return Object.fromEntries(
    outcome.ok ? (outcome.tables[0]?.rows ?? []).map((row) => [String(row[0]), String(row[3])]) : [],
  )
}

describe('a load that sticks out', () => {
  it('lies on the bed whole where it is no longer', () => {
    const { shown, said } = runNamed('load-overhang', { longestPiece: '8 ft', bedLength: '8 ft' })
    expect(shown).toMatchObject({ overhang: '0 ft', overhangChecked: 'true' })
    expect(said).toContain('it lies on the bed whole')
  })

  // 16 − 6.5 = 9.5 ft, 59 % of 16: its middle, at 8 ft, is past the bed’s 6 1/2
  it('tips where more than half of it is behind', () => {
    const { shown, said } = runNamed('load-overhang', { longestPiece: '16 ft', bedLength: '6 ft 6 in' })
    expect(shown).toMatchObject({ overhang: '9 ft 6 in', overhangChecked: 'false' })
    expect(said).toContain('it tips as soon as it is let go')
  })

  // 10 − 6.5 = 3.5 ft = 1.07 m: past a metre, short of 4 ft and of 1.2 m
  it('is marked by the law of each place', () => {
    expect(marksIn('10 ft', '6 ft 6 in')).toEqual({ US: '', UK: 'must be marked', Tasmania: '' })
  })
})

describe('a delivery or your own vehicle', () => {
  const trips = { deliveryPrice: '$79', loadWeight: '3900 lb', payload: '1200 lb', tripCost: '$14' }

  // 3900/1200 = 3.25 → 4; 4 × 14 = 56; 79 − 56
  it('counts whole trips', () => {
    expect(runNamed('deliver-or-haul', trips).shown).toMatchObject({ ownHaulCost: '$56.00', haulSaves: '$23.00' })
  })

  // 4 × 1 h × $10 = 40 more: 96, and the delivery is 17 less
  it('turns once an hour is worth something', () => {
    const { shown } = runNamed('deliver-or-haul', { ...trips, tripTime: '1 h', hourWorth: '$10' })
    expect(shown).toMatchObject({ cheaperHaul: 'the delivery', ownHaulCost: '$96.00', haulSaves: '$17.00' })
  })

  it('says that weight is missing, where the take-off does not weigh all', () => {
    expect(runNamed('deliver-or-haul', { ...trips, unweighedThings: '2' }).said).toContain('That is the least: 2 sorts')
    expect(
      runNamed('haul-trips', { loadWeight: '900 lb', payload: '1200 lb', unweighedThings: '0' }).said,
    ).not.toContain('That is the least')
  })

  it('asks for the payload of a load that is only weighed', () => {
    const { payload: _, ...without } = trips
    expect(runNamed('deliver-or-haul', without).said).toContain('missing payload')
  })
})
