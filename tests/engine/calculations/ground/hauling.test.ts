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

describe('so many pieces of so much each', () => {
  const bags = { piecesToHaul: '34', pieceWeight: '80 lb', payload: '1480 lb', weightAboard: '190 lb' }

  // 1480 − 190 = 1290 = 16 × 80 + 10; 34 = 16 + 16 + 2
  it('goes on in whole bags, beside the driver', () => {
    expect(runNamed('haul-trips', bags).shown).toMatchObject({ trips: '3 trips', piecesAtOnce: '16 pieces' })
  })

  // 1440/80 = 18; 36/18 = 2 trips, and the whole 1440 lb is used
  it('uses a payload that comes out even to the last pound', () => {
    const even = { ...bags, piecesToHaul: '36', payload: '1630 lb' }
    expect(runNamed('haul-trips', even).shown).toMatchObject({ trips: '2 trips', piecesAtOnce: '18 pieces' })
    expect(runNamed('haul-trips', { ...even, payload: '1629 lb' }).shown).toMatchObject({ trips: '3 trips' })
  })

  // by weight 3, by count 34/10 → 4; ⌈34/4⌉ = 9, × 80
  it('is held to the number that goes at once as well', () => {
    const { shown, said } = runNamed('haul-trips', { ...bags, piecesEachTrip: '10' })
    expect(shown).toMatchObject({ trips: '4 trips', eachTrip: '720 lb' })
    expect(said).toContain('Decided by: the count, 4 trips')
  })

  it('says what goes at once before anybody counts the bags', () => {
    const { piecesToHaul: _, ...some } = bags
    expect(runNamed('haul-trips', some, { wanted: ['piecesAtOnce'] }).shown).toMatchObject({
      piecesAtOnce: '16 pieces',
    })
    expect(runNamed('haul-trips', some).said).toContain('missing piecesToHaul')
  })

  it('says which room is not counted, and not that of the pieces where they are weighed', () => {
    const by = (more: Record<string, string>) => runNamed('haul-trips', { ...bags, ...more }).said
    expect(by({})).not.toContain('that is not counted')
    expect(by({ loadVolume: '3 yd3' })).toContain('Without the room in the bed or trailer that is not counted')
    expect(by({ loadVolume: '3 yd3', bedVolume: '2 yd3' })).not.toContain('that is not counted')
  })

  it('is told from a total that says otherwise', () => {
    expect(runNamed('haul-trips', { ...bags, loadWeight: '2500 lb' }).said).toContain('I counted the pieces alone')
    expect(runNamed('haul-trips', { ...bags, loadWeight: '2720 lb' }).said).not.toContain('I counted the pieces alone')
  })

  it('does not go where the people leave nothing, or less than one bag', () => {
    expect(runNamed('haul-trips', { ...bags, weightAboard: '1480 lb' }).said).toContain('nothing is left for a load')
    expect(runNamed('haul-trips', { ...bags, payload: '260 lb' }).said).toContain('heavier than the 70 lb')
  })
})

describe('gravel, stone, sand or soil in bags', () => {
  // 16.5 = 33 × 0.5 exactly
  it('takes no bag more than the volume asks for', () => {
    const of = (looseVolume: string) => runNamed('loose-in-bags', { looseVolume, looseBag: '0.5 ft3' }).shown
    expect(of('16.5 ft3')).toMatchObject({ looseBags: '33 bags' })
    expect(of('16.51 ft3')).toMatchObject({ looseBags: '34 bags' })
  })

  // 27 ft³ is a cubic yard
  it('speaks of loose delivery from a yard up', () => {
    const of = (looseVolume: string) => runNamed('loose-in-bags', { looseVolume, looseBag: '1 ft3' }).said
    expect(of('27 ft3')).toContain('it is cheaper loose')
    expect(of('26 ft3')).not.toContain('it is cheaper loose')
  })
})
