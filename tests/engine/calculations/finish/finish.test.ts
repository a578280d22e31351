import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

describe('the area to finish', () => {
  const pickets = { picketsHung: '15', picketWidth: '3 1/2 in', picketThickness: '3/4 in', picketLength: '42 in' }
  const bay = { ...pickets, railsInAll: '2', railCut: '94 1/2 in', posts: '1', postAbove: '48 in' }

  it('members add up to the whole', () => {
    const { shown } = runNamed('finish-area', bay)
    expect(shown).toEqual({
      picketsArea: '37.73 ft²',
      railsArea: '13.125 ft²',
      postsArea: '4.752 ft²',
      finishArea: '55.61 ft²',
      hiddenArea: '5.104 ft²',
    })
  })

  // one side: 15 × (3.5 × 42 + 2 × 0.75 × 42) = 3150; 2 × 3.5 × 94.5 = 661.5; 3.5 × 48 = 168 in²
  it('one side is a face and the edges of the pickets, and a face of the rest', () => {
    const { shown, said } = runNamed('finish-area', { ...bay, sidesCoated: 'one' })
    expect(shown.finishArea).toBe('27.64 ft²')
    expect(shown.hiddenArea).toBeUndefined()
    expect(said).toContain('cups')
  })

  it('pickets on gates count among all pickets, and the frames beside them', () => {
    const plain = runNamed('finish-area', pickets).shown.finishArea
    const { shown } = runNamed('finish-area', { ...pickets, gatePickets: '5' })
    expect(shown.finishArea).toBe(plain)
    expect(shown).toMatchObject({ picketsArea: '25.16 ft²', gatesArea: '12.58 ft²' })
    // 10 in round × 20 ft = 2400 in²
    expect(runNamed('finish-area', { gateFrame: '20 ft' }).shown.gatesArea).toBe('16.67 ft²')
    expect(runNamed('finish-area', { ...pickets, gatePickets: '16' }).said).toContain('more than the 15 pickets in all')
  })

  // a 5 1/2 in cap 3/4 in thick on a 3 1/2 in post: 2 × 30.25 + 4 × 5.5 × 0.75 = 77; hidden 2 × 12.25 = 24.5 in²
  it('a cap on each post hides the top of the post and its own seat', () => {
    const { shown } = runNamed('finish-area', { posts: '1', postAbove: '48 in', capSize: '5 1/2 in' })
    expect(shown).toMatchObject({ capsArea: '0.5347 ft²', hiddenArea: '0.1701 ft²' })
    expect(runNamed('finish-area', { posts: '1', postAbove: '48 in', capSize: '3 in' }).said).toContain(
      'does not cover',
    )
  })

  it('asks for what a member lacks', () => {
    expect(runNamed('finish-area', {}).said).toContain('missing picketsHung')
    expect(runNamed('finish-area', { picketsHung: '15' }).said).toContain('missing picketWidth')
    expect(runNamed('finish-area', { railsInAll: '4' }).said).toContain('missing railCut')
  })

  it('posts of several kinds are all counted', () => {
    const { shown } = runNamed(
      'finish-area',
      { posts: ['4', '2'], postAbove: ['48 in', '60 in'] },
      { places: ['line', 'gate'] },
    )
    // 4 × (4 × 3.5 × 48 + 12.25) + 2 × (4 × 3.5 × 60 + 12.25) = 4441.5 in²
    expect(shown.postsArea).toBe('30.84 ft²')
  })
})

describe('how much finish', () => {
  it('556.1 ft² at 150 and then 300 with a tenth spare is 6.12 gal, and 7 cans', () => {
    const { shown } = runNamed('finish-quantity', {
      finishArea: '556.1 ft2',
      coats: '2',
      coverageFirst: '150 ft2/gal',
      coverageNext: '300 ft2/gal',
    })
    expect(shown).toEqual({ finishNeeded: '6.1171 gal', finishCans: '7 cans' })
  })

  it('rough wood takes twice as much as smooth, by the published low ends', () => {
    const of = (surfaceTexture: string) =>
      runNamed('finish-quantity', { finishArea: '400 ft2', coats: '1', surfaceTexture, finishSpare: '0 %' })
    expect([of('smooth').shown.finishNeeded, of('rough').shown.finishNeeded]).toEqual(['2 gal', '4 gal'])
    expect(of('rough').said).toContain('No spread from your can yet')
  })

  it('asks for a spread, or whether the wood is rough', () =>
    expect(runNamed('finish-quantity', { finishArea: '400 ft2' }).said).toContain('missing coverageFirst'))

  it('tells the cans of other sizes beside', () => {
    const { outcome } = runNamed(
      'finish-quantity',
      { finishArea: '20 m2', coats: '1', coverageFirst: '8 m2/L', finishSpare: '0 %' },
      { system: 'metric' },
    )
    if (!outcome.ok) throw new Error('not worked')
    expect(outcome.tables[0]?.rows).toEqual([
      ['1 L', '3 cans'],
      ['2.5 L', '1 can'],
      ['5 L', '1 can'],
      ['10 L', '1 can'],
    ])
  })
})

describe('dew', () => {
  const fine = { airNow: '21 C', humidityNow: '65 %', surfaceTemperature: '18 C' }
  const of = (more: Record<string, string>) => runNamed('dew-point', { ...fine, ...more }, { system: 'metric' })

  it('is far enough to begin with, and says which facts decided', () => {
    expect(of({}).shown).toMatchObject({ dewPoint: '14.18 °C', dewHolds: 'true' })
    expect(of({}).said).toContain('Two facts decide')
  })

  it.each([
    ['a colder face', { surfaceTemperature: '17 C' }, 'The face decides'],
    ['damper air', { humidityNow: '75 %' }, 'The face decides'],
    ['a wider margin', { dewMargin: '5 C°' }, 'The face decides'],
    ['a stricter limit of humidity', { humidityLimit: '60 %' }, 'The humidity decides'],
  ])('%s alone turns it', (_, more, decides) => {
    const { shown, said } = of(more)
    expect(shown.dewHolds).toBe('false')
    expect(said).toContain(decides)
  })

  // 5 F° is 2.8 C°, not −15 °C: 2.9 C° above is enough for the one and not for 3 C°.
  it('a margin in F° is a difference, not a temperature', () => {
    const near = { surfaceTemperature: '17.05 C' }
    expect(of({ ...near, dewMargin: '5 F°' }).shown.dewHolds).toBe('true')
    expect(of({ ...near, dewMargin: '3 C°' }).shown.dewHolds).toBe('false')
  })

  it('in saturated air the dew point is the air’s own temperature', () =>
    expect(of({ humidityNow: '100 %' }).shown.dewPoint).toBe('21 °C'))

  it('below freezing it says that it is frost, and too cold', () =>
    expect(of({ airNow: '2 C', humidityNow: '50 %' }).said).toContain('below freezing'))

  it('warmer air than it was held against is doubted, and 45 °C itself is not', () => {
    const hot = (airNow: string) =>
      runNamed('dew-point', { airNow, humidityNow: '50 %' }, { confirmed: ['airNow'], wanted: ['dewPoint'] }).said
    expect(hot('46 C')).toContain('In air over 45 °C')
    expect(hot('45 C')).not.toContain('In air over')
  })
})

describe('the hours to paint in', () => {
  const flat = (value: string, count = 8): string[] => Array.from({ length: count }, () => value)
  const fine = {
    firstHour: '9',
    hourTemperatures: flat('65 F'),
    hourHumidities: flat('60 %'),
    rainChances: flat('0 %'),
  }
  const of = (more: Record<string, string | readonly string[]>) => runNamed('paint-window', { ...fine, ...more })

  // eight hours from 9 to 17, the last four of them to dry in
  it('leaves time to dry at the end', () =>
    expect(of({}).shown).toEqual({
      windowOpens: 'true',
      windowStart: '09:00',
      windowStop: '13:00',
      windowHours: '4 hours',
    }))

  it('a longer time to dry leaves less to paint in', () =>
    expect(of({ dryHours: '6 h' }).shown.windowStop).toBe('11:00'))

  it.each([
    ['cold', { leastPaintTemperature: '66 F' }, 'Cold decides'],
    ['heat', { hourTemperatures: flat('95 F') }, 'Heat decides'],
    ['humidity', { humidityLimit: '55 %' }, 'Humidity decides'],
    ['the dew point', { dewMargin: '20 F°' }, 'The dew point decides'],
    ['rain', { rainChances: flat('30 %') }, 'Rain decides'],
  ])('%s alone closes it', (_, more, decides) => {
    const { shown, said } = of(more)
    expect(shown).toEqual({ windowOpens: 'false' })
    expect(said).toContain(decides)
  })

  it('a list too short to dry in cannot say', () => {
    const short = { hourTemperatures: flat('65 F', 3), hourHumidities: flat('60 %', 3), rainChances: flat('0 %', 3) }
    const { shown, said } = of(short)
    expect(shown.windowOpens).toBe('null')
    expect(said).toContain('The list decides')
  })

  it('rain later in the day stops the brush four hours before it', () => {
    const { shown, said } = of({ rainChances: [...flat('0 %', 7), '50 %'] })
    expect(shown).toMatchObject({ windowStart: '09:00', windowStop: '12:00' })
    expect(said).toContain('too little time to dry (rain)')
  })

  it('heat stops painting, but not drying', () => {
    const { shown } = of({ hourTemperatures: [...flat('80 F', 3), ...flat('95 F', 5)] })
    expect(shown).toMatchObject({ windowStart: '09:00', windowStop: '12:00' })
  })

  // 8 hours from 9: the last begins at 16, and ends at 17.
  it.each([
    [['9', '17'], ''],
    [['9', '16'], ''],
    [['9', '18'], 'From 09:00 to 18:00 are 9 hours, and there are 8 temperatures'],
    [['9', '15'], 'From 09:00 to 15:00 are 6 hours, and there are 8 temperatures'],
    [['9', '10', '11', '12', '13', '14', '15', '16'], ''],
    [['9', '10', '11', '12', '13', '14', '15'], 'There are 7 hours and 8 temperatures'],
    [['9', '10', '12', '13', '14', '15', '16', '17'], 'After 10:00 comes 12:00'],
    [['20', '21', '22', '23', '0', '1', '2', '3'], ''],
    [['20', '4'], ''],
    [['20', '3'], ''],
    [['20', '5'], 'From 20:00 to 05:00 are 9 hours'],
  ])('hours told as %j go with eight temperatures: “%s”', (firstHour, said) => {
    const ran = runNamed('paint-window', { ...fine, firstHour }, { confirmed: ['firstHour'] })
    expect(ran.outcome.ok).toBe(said === '')
    expect(ran.said).toContain(said)
  })

  it('two hours are the fewest, told one by one', () => {
    const few = (count: number, firstHour: string[]) =>
      of({
        firstHour,
        hourTemperatures: flat('65 F', count),
        hourHumidities: flat('60 %', count),
        rainChances: flat('0 %', count),
      })
    expect(few(1, ['9']).said).toContain('I have 1 temperature')
    expect(few(2, ['9', '10']).outcome.ok).toBe(true)
    expect(few(2, ['9', '11']).said).toContain('After 09:00 comes 11:00')
    expect(few(2, ['9']).shown.windowOpens).toBe('null')
  })

  // Of twelve hours from 17 on, the last four to dry in: the window ends at 1 in the night. Of eleven it ends at 24:00, which is no next day.
  it('runs past midnight, and says so', () => {
    const late = (count: number) =>
      of({
        firstHour: '17',
        hourTemperatures: flat('65 F', count),
        hourHumidities: flat('60 %', count),
        rainChances: flat('0 %', count),
      })
    expect(late(12).shown).toMatchObject({ windowStart: '17:00', windowStop: '01:00', windowHours: '8 hours' })
    expect(late(12).said).toContain('past midnight')
    expect(late(11).shown).toMatchObject({ windowStop: '24:00', windowHours: '7 hours' })
    expect(late(11).said).not.toContain('past midnight')
  })

  // 9 and 10 too damp, 11 to 13 good with four hours each to dry in, 14 good to dry in but too late to begin.
  it('has a row for each hour, with what stands against it', () => {
    const { outcome, said } = of({
      hourHumidities: [...flat('90 %', 2), ...flat('60 %', 7)],
      hourTemperatures: flat('65 F', 9),
      rainChances: flat('0 %', 9),
    })
    const table = outcome.ok ? outcome.tables[0] : undefined
    expect(table?.columns.map((it) => it.label)).toEqual(['from', 'air', 'humidity', 'dew point', 'rain', 'paint'])
    expect(table?.rows.map((it) => [it[0], it.at(-1)])).toEqual([
      ['09:00', 'too damp'],
      ['10:00', 'too damp'],
      ['11:00', 'yes'],
      ['12:00', 'yes'],
      ['13:00', 'yes'],
      ...['14:00', '15:00', '16:00', '17:00'].map((it) => [it, 'the list ends too soon']),
    ])
    expect(table?.rows[0]?.slice(1, 3)).toEqual(['65 °F', '90 %'])
    expect(table?.rows[0]?.[4]).toBe('0 %')
    expect(said).toContain('the start: too damp before it')
    expect(said).toContain('the end: the list ends before 4 hours of drying are over')
  })

  it('of two stretches takes the longer, and of equals the first', () => {
    const by = (temperatures: readonly string[]) =>
      of({
        dryHours: '1 h',
        hourTemperatures: temperatures,
        hourHumidities: flat('60 %', temperatures.length),
        rainChances: flat('0 %', temperatures.length),
      }).shown
    // Good hours that have one good hour behind them: 9 and 10; 13 to 15.
    expect(by([...flat('65 F', 3), '40 F', ...flat('65 F', 4)])).toMatchObject({
      windowStart: '13:00',
      windowStop: '16:00',
    })
    expect(by([...flat('65 F', 3), '40 F', ...flat('65 F', 3)])).toMatchObject({
      windowStart: '09:00',
      windowStop: '11:00',
    })
  })

  it('names what is against it most often', () => {
    const closed = of({ hourTemperatures: [...flat('40 F', 3), ...flat('95 F', 5)] })
    expect(closed.said).toContain('Heat decides')
    expect(of({ hourTemperatures: [...flat('40 F', 5), ...flat('95 F', 3)] }).said).toContain('Cold decides')
  })

  it('lists that do not go together are refused, with how many there are', () =>
    expect(of({ hourHumidities: flat('60 %', 7) }).said).toContain('8 temperatures and 7 humidities'))

  it('warns of a night under the least temperature, and of rain that was not told', () => {
    const { said } = runNamed('paint-window', {
      firstHour: '12',
      hourTemperatures: [...flat('60 F', 8), ...flat('44 F', 4)],
      hourHumidities: flat('60 %', 12),
    })
    expect(said).toContain('At 20:00 it falls to 44 °F')
    expect(said).toContain('I left rain out')
  })
})

describe('the next coat', () => {
  it.each([
    ['repellent', 'Wednesday 12 May 2027', 'Saturday 12 May 2029'],
    ['tinted', 'Friday 12 May 2028', 'Saturday 12 May 2029'],
    ['semitransparent', 'Sunday 12 May 2030', 'Friday 12 May 2034'],
    ['solid', 'Wednesday 12 May 2032', 'Sunday 12 May 2041'],
    ['paint', 'Monday 12 May 2036', 'Saturday 12 May 2046'],
  ])('%s from 12 May 2026', (finishType, recoatFrom, recoatBy) =>
    expect(runNamed('recoat-calendar', { lastCoat: '2026-05-12', finishType }).shown).toEqual({ recoatFrom, recoatBy }),
  )

  it('one coat on new smooth wood is due sooner', () =>
    expect(
      runNamed('recoat-calendar', {
        lastCoat: '2026-05-12',
        finishType: 'semitransparent',
        surfaceTexture: 'smooth',
        coats: '1',
      }).shown.recoatFrom,
    ).toBe('Friday 12 May 2028'))

  it('says so when the calendar ends', () =>
    expect(runNamed('recoat-calendar', { lastCoat: '2195-05-12', finishType: 'paint' }).said).toContain(
      'too late for my calendar',
    ))
})

describe('hours of painting', () => {
  it('help shortens the clock and not the work, and each coat begins on a day of its own', () => {
    const of = (painters: string) =>
      runNamed('painting-hours', {
        picketsHung: '120',
        picketTime: '4 min',
        coats: '2',
        painters,
        coatSetUp: '30 min',
        paintDayHours: '5 h',
      }).shown
    expect(of('1')).toEqual({ paintingTime: '17 hours', paintingClock: '17 hours', paintingDays: '4 painting days' })
    expect(of('2')).toEqual({ paintingTime: '17 hours', paintingClock: '9 hours', paintingDays: '2 painting days' })
  })

  it('says that the paces are only usual until they are told', () => {
    expect(runNamed('painting-hours', { posts: '9' }).said).toContain('time your own first picket')
    expect(
      runNamed('painting-hours', { posts: '9', postTime: '6 min', picketTime: '4 min', railTime: '5 min' }).said,
    ).not.toContain('time your own first picket')
  })
})

describe('hours of painting by the area', () => {
  const fence = { finishArea: '560 ft2', areaAnHour: '80 ft2', coats: '2', coatSetUp: '0 min', paintDayHours: '4 h' }

  // 560/80 = 7 h a coat: by one ⌈7/4⌉ = 2 days a coat, by two 3.5 h and one day
  it('is shared by those who paint', () => {
    expect(runNamed('painting-by-area', fence).shown).toMatchObject({
      paintingTime: '14 hours',
      paintingDays: '4 painting days',
    })
    expect(runNamed('painting-by-area', { ...fence, painters: '2' }).shown).toMatchObject({
      paintingTime: '14 hours',
      paintingClock: '7 hours',
      paintingDays: '2 painting days',
    })
  })
})
