import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('ready to finish: each fact alone turns the verdict', () => {
  const ready = {
    depthReading: '13 %',
    moistureLimit: '15 %',
    waterTest: 'soaks',
    woodAge: '1 week',
    finishKind: 'film',
  }
  const verdicts = (more: Record<string, string>) => runNamed('ready-to-finish', { ...ready, ...more })

  it('dry enough and surface ready to begin with, and it says what decided', () => {
    const { shown, said } = verdicts({})
    expect(shown).toEqual({ dryEnough: 'true', surfaceReady: 'true' })
    expect(said).toContain('Dryness is decided by the reading of 13 % at depth')
    expect(said).toContain('The surface is decided by two facts')
  })

  it.each([
    ['the reading', { depthReading: '16 %' }, { dryEnough: 'false', surfaceReady: 'true' }],
    ['the can’s limit', { moistureLimit: '12 %' }, { dryEnough: 'false', surfaceReady: 'true' }],
    ['water that beads', { waterTest: 'beads' }, { dryEnough: 'true', surfaceReady: 'false' }],
    ['its time in the weather', { woodAge: '3 weeks' }, { dryEnough: 'true', surfaceReady: 'false' }],
  ])('%s', (_, more, expected) => expect(verdicts(more).shown).toEqual(expected))

  it('on weathered wood the kind of finish turns it back', () => {
    expect(verdicts({ woodAge: '8 months' }).shown.surfaceReady).toBe('false')
    expect(verdicts({ woodAge: '8 months', finishKind: 'penetrating' }).shown.surfaceReady).toBe('true')
  })

  it('water beads on dry wood too: mill glaze or a factory repellent, said beside', () =>
    expect(verdicts({ waterTest: 'beads' }).said).toContain('mill glaze or a factory repellent'))
})

describe('what a meter reading is worth', () => {
  const cold = { moistureReading: '16 %', woodTemperature: '5 C', woodTreated: 'untreated' }

  it('is a range, never one figure, and wider where the correction is stronger', () => {
    const { shown, said } = runNamed('meter-correction', cold, { system: 'metric' })
    expect(shown).toMatchObject({ correctedFrom: '17 %', correctedTo: '18.5 %', readingHolds: 'true' })
    expect(said).toContain('Plan with the wetter end, 18.5 %')
  })

  it('at the temperature the meter is set for the reading stands as it is', () => {
    const { shown } = runNamed('meter-correction', { ...cold, woodTemperature: '20 C' }, { system: 'metric' })
    expect(shown).toMatchObject({ correctedFrom: '16 %', correctedTo: '16 %' })
  })

  it('treated wood reads a point or two high', () => {
    const { shown } = runNamed(
      'meter-correction',
      { ...cold, woodTemperature: '20 C', woodTreated: 'treated' },
      { system: 'metric' },
    )
    expect(shown).toMatchObject({ correctedFrom: '14 %', correctedTo: '15 %' })
  })

  it('a wet face alone makes it say that it cannot say', () => {
    const { shown, said } = runNamed('meter-correction', { ...cold, woodFace: 'wet' }, { system: 'metric' })
    expect(shown).toEqual({ readingHolds: 'null' })
    expect(said).toContain('The wet face decides')
    expect(runNamed('meter-correction', { ...cold, woodFace: 'dry' }, { system: 'metric' }).shown.readingHolds).toBe(
      'true',
    )
  })

  it('frost alone does so too, and a reading past the meter’s range is no figure', () => {
    const frozen = runNamed('meter-correction', { ...cold, woodTemperature: '-2 C' }, { system: 'metric' })
    expect(frozen.shown).toEqual({ readingHolds: 'null' })
    const far = runNamed('meter-correction', { ...cold, moistureReading: '34 %' }, { system: 'metric' })
    expect(far.shown.readingHolds).toBe('false')
    expect(far.said).toContain('very wet')
  })

  it('of several readings it corrects the deepest, and says so', () => {
    const { said } = runNamed('meter-correction', { ...cold, depthReading: '20 %' }, { system: 'metric' })
    expect(said).toContain('I corrected the deepest, 20 %')
  })
})

describe('the humidity for a wanted moisture', () => {
  it('refuses a moisture that no air gives', () =>
    expect(
      runNamed(
        'air-for-moisture',
        { airTemperature: '70 F', wantedMoisture: '40 %' },
        { confirmed: ['wantedMoisture'] },
      ).said,
    ).toContain('No air makes wood settle at 40 %'))

  it('gives back the moisture that was asked for', () => {
    const { outcome } = runNamed(
      'air-for-moisture',
      { airTemperature: '30 C', wantedMoisture: '14 %' },
      { system: 'metric' },
    )
    if (!outcome.ok) throw new Error('not worked')
    expect(outcome.steps.at(-1)?.result).toBe('0.14')
  })
})

describe('moisture by weighing', () => {
  it('a sample cannot weigh more dry than wet', () =>
    expect(
      runNamed('oven-dry-moisture', { wetWeight: '50 g', dryWeight: '58.3 g' }, { system: 'metric' }).said,
    ).toContain('cannot weigh more dry (58.3 g) than wet (50 g)'))
})

describe('when the wood will be dry enough', () => {
  const week = {
    dryingReadings: ['24 %', '19 %'],
    readingSpacing: '7 days',
    equilibriumMoisture: '12 %',
    moistureLimit: '15 %',
  }
  const forecast = (more: Record<string, string | readonly string[]>) =>
    runNamed('drying-forecast', { ...week, ...more })

  it('says half to twice the time, and to measure again', () => {
    const { shown, said } = forecast({})
    expect(shown).toMatchObject({ driesHere: 'true', daysToDryFrom: '5 days', daysToDryTo: '23 days' })
    expect(said).toContain('Measure again after 5 days')
    expect(said).toContain('Two facts decide')
  })

  it('air that settles it over the limit alone turns it to “not in this weather”', () => {
    const { shown, said } = forecast({ equilibriumMoisture: '15 %' })
    expect(shown.driesHere).toBe('false')
    expect(shown.daysToDry).toBeUndefined()
    expect(said).toContain('The air decides')
  })

  it('readings that do not fall alone turn it to “cannot say”', () => {
    const { shown, said } = forecast({ dryingReadings: ['19 %', '24 %'] })
    expect(shown.driesHere).toBe('null')
    expect(said).toContain('The readings decide')
  })

  it('a last reading within the limit is dry enough now', () => {
    const { shown, said } = forecast({ dryingReadings: ['19 %', '14 %'] })
    expect(shown).toMatchObject({ driesHere: 'true', daysToDry: '0 days' })
    expect(said).toContain('The last reading decides')
  })

  it('a reading under where the air settles it contradicts the air', () =>
    expect(forecast({ dryingReadings: ['11 %', '19 %'] }).shown.driesHere).toBe('null'))

  it('a limit within a point of where it settles is said to be a guess', () =>
    expect(forecast({ equilibriumMoisture: '14.5 %' }).said).toContain('little more than a guess'))

  it('takes dates in their order, one for each reading', () => {
    const dated = { ...week, readingSpacing: undefined }
    const { readingSpacing: _, ...rest } = dated
    const of = (readingDates: readonly string[]) => runNamed('drying-forecast', { ...rest, readingDates })
    expect(of(['2026-05-01', '2026-05-08']).shown.dryFrom).toBe('Wednesday 13 May 2026')
    expect(of(['2026-05-08', '2026-05-01']).said).toContain('does not come after')
    expect(of(['2026-05-01']).said).toContain('Give one date for each reading')
  })
})

describe('what a stick measures and weighs', () => {
  it.each([
    ['1x4', '3/4 in', '3 1/2 in'],
    ['2x6', '1 1/2 in', '5 1/2 in'],
    ['6x6', '5 1/2 in', '5 1/2 in'],
    ['6x8', '5 1/2 in', '7 1/2 in'],
    ['1x12', '3/4 in', '11 1/4 in'],
  ])('a %s measures %s by %s', (name, dressedThickness, dressedWidth) =>
    expect(runNamed('dressed-size', { nominalThickness: name, nominalWidth: name }).shown).toEqual({
      dressedThickness,
      dressedWidth,
    }),
  )

  // Half an inch off each side of a timber, up to 16 in; a width is none of 5/4, 5 or 18.
  it.each([
    ['5 in', '5 in', '4 1/2 in'],
    ['6 in', '16 in', '15 1/2 in'],
    ['6 in', '18 in', 'No stick is sold as 18 in'],
    ['6 in', '6 1/2 in', 'No stick is sold as 6 1/2 in'],
    ['4 in', '5 in', 'No stick is sold as 5 in'],
    ['2 in', '1 1/4 in', 'No stick is sold as 1 1/4 in'],
    ['1 1/4 in', '6 in', '5 1/2 in'],
    ['2 in', '8 in', '7 1/4 in'],
  ])('sold as %s by %s the width is told so: %s', (nominalThickness, nominalWidth, expected) => {
    const confirmed = ['nominalThickness', 'nominalWidth']
    const { shown, said } = runNamed('dressed-size', { nominalThickness, nominalWidth }, { confirmed })
    expect(shown.dressedWidth ?? said).toContain(expected)
  })

  it('asks for the country where sawn sizes are told in millimetres, and does not guess a size that is not in its table', () => {
    expect(
      runNamed('dressed-size', { nominalThickness: '50 mm', nominalWidth: '100 mm' }, { system: 'metric' }).said,
    ).toContain('missing country')
    expect(
      runNamed(
        'dressed-size',
        { nominalThickness: '90x45', nominalWidth: '90x45', country: 'uk' },
        { system: 'metric' },
      ).said,
    ).toContain('No stick is sold as 45 mm')
  })

  it('a board thinner than an inch counts as an inch', () => {
    const thin = { nominalThickness: '3/4 in', nominalWidth: '4 in', lumberLength: '6 ft' }
    const { shown, said } = runNamed('board-feet', thin)
    expect(shown.boardFeet).toBe('2 board feet')
    expect(said).toContain('counted as an inch')
  })

  // 1000 kg/m³ × 0.31 × 1.3 = 403 kg/m³ at 30 %; × 0.31 × 1.6 at 60 %: over fibre saturation only the water grows
  it('over fibre saturation only the water is heavier', () => {
    const cube = {
      species: 'western-redcedar',
      lumberThickness: '100 mm',
      lumberWidth: '100 mm',
      lumberLength: '1000 mm',
    }
    const density = (moistureNow: string) =>
      runNamed('stick-weight', { ...cube, moistureNow }, { system: 'metric' }).shown.woodDensity
    expect([density('12 %'), density('30 %'), density('60 %')]).toEqual(['358.4 kg/m³', '403 kg/m³', '496 kg/m³'])
  })
})

describe('the class of treatment', () => {
  const of = (more: Record<string, string>) => runNamed('use-class', { fenceMember: 'post', country: 'us', ...more })

  it('where it stands decides, and turns it', () => {
    expect(of({}).shown.useClass).toBe('UC4A')
    expect(of({ memberStands: 'clear' }).shown.useClass).toBe('UC3B')
    expect(of({ fenceMember: 'rail' }).shown.useClass).toBe('UC3B')
    expect(of({ fenceMember: 'rail', memberStands: 'close' }).shown.useClass).toBe('UC4A')
    expect(of({}).said).toContain('Where it stands decides: a post in the ground, as I took it')
  })

  it('hard ground takes the next class up in the ground, and none above it', () => {
    expect(of({ decayRisk: 'severe' }).shown.useClass).toBe('UC4B')
    expect(of({ decayRisk: 'severe', country: 'uk' }).said).toContain('no stronger class for soil')
    expect(of({ decayRisk: 'severe', fenceMember: 'picket' }).said).toContain('I know no stronger class')
  })

  it('names the class of the country, and none where it knows none', () => {
    const classes = ['us', 'canada', 'uk', 'europe', 'australia', 'new-zealand'].map(
      (country) => of({ country }).shown.useClass,
    )
    expect(classes).toEqual(['UC4A', 'UC4.1', 'use class 4', 'use class 4', 'H4', 'H4'])
    expect(of({ country: 'canada' }).said).toContain('from memory')
    expect(of({ country: 'elsewhere' }).said).toContain('Ask a treater or the yard')
  })
})

describe('the metal for screws', () => {
  const cedar = {
    woodTreated: 'untreated',
    species: 'western-redcedar',
    finishKind: 'penetrating',
    metalInHand: 'hotDip',
  }
  const of = (more: Record<string, string>) => runNamed('fastener-metal', { ...cedar, ...more })

  it('hot-dip in cedar under a finish that soaks in does not suit: the kind of wood decides', () => {
    const { shown, said } = of({})
    expect(shown).toEqual({ fastenerMetal: 'stainless', metalHolds: 'false' })
    expect(said).toContain('The kind of wood decides')
  })

  it.each([
    ['paint over it', { finishKind: 'film' }, 'true'],
    ['another wood', { species: 'douglas-fir' }, 'true'],
    ['treated wood', { woodTreated: 'treated' }, 'true'],
    ['stainless', { metalInHand: 'stainless' }, 'true'],
  ])('%s alone turns it', (_, more, expected) => expect(of(more).shown.metalHolds).toBe(expected))

  it.each([
    ['electroplated', { metalInHand: 'electroplated' }, 'false'],
    ['plain steel', { metalInHand: 'plain' }, 'false'],
    ['aluminium', { metalInHand: 'aluminium' }, 'false'],
    ['copper in wood I have no source for', { metalInHand: 'copper' }, 'null'],
    ['salt water near by', { saltAir: 'near' }, 'false'],
  ])('in treated wood hot-dip suits; %s alone turns it', (_, more, expected) => {
    const treated = { woodTreated: 'treated' }
    expect(of(treated).shown.metalHolds).toBe('true')
    expect(of({ ...treated, ...more }).shown.metalHolds).toBe(expected)
  })
})
