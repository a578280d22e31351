// Time: what decides, and what flips when that alone is changed.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const job = { callDate: '2026-06-01', noticeDays: '3', coats: '2' }

describe('the calendar of the job', () => {
  it('names the path that decides, and the table tells what may slip', () => {
    const { said, outcome } = runNamed('job-calendar', { ...job, woodWait: '2 days' })
    expect(said).toContain(
      'What decides the end: call → notice → holes → posts set → concrete → rails → pickets → drying → coat 1 → wait 1 → coat 2.',
    )
    // The posts go in on Sunday the 7th; wood of 2 days is there from the 3rd: it may come 4 days later
    const wood = outcome.ok ? outcome.tables[0]?.rows.find((it) => it[0] === 'wood comes') : undefined
    expect(wood?.[3]).toBe('')
    expect(wood?.[4]).toBe(4)
  })

  it('wood that is long on its way decides instead of the notice', () => {
    const { said } = runNamed('job-calendar', { ...job, woodWait: '20 days' })
    expect(said).toContain('What decides the end: wood comes → posts set →')
  })

  it('an inspection is in it only where it was said, and counts working days', () => {
    const without = runNamed('job-calendar', job)
    const withIt = runNamed('job-calendar', { ...job, inspectionWait: '2' })
    expect(without.said).toContain('I put in no inspection')
    // Holes Fri 5 and Sat 6; the inspector Mon 8 and Tue 9; posts Wed 10
    expect(without.shown.postsSetDate).toBe('Sunday 7 June 2026')
    expect(withIt.shown.postsSetDate).toBe('Wednesday 10 June 2026')
  })

  it('no ticket begins on a weekend: notice over on Friday means digging from Monday', () => {
    // Call Tuesday 2 June; Wed, Thu, Fri pass; Monday 8, Tuesday 9 holes; posts Wednesday 10
    expect(runNamed('job-calendar', { ...job, callDate: '2026-06-02' }).shown.postsSetDate).toBe(
      'Wednesday 10 June 2026',
    )
  })

  it('a holiday puts the first hole off, and all that hangs on it', () => {
    expect(runNamed('job-calendar', { ...job, holidays: ['2026-06-03'] }).shown.postsSetDate).toBe(
      'Wednesday 10 June 2026',
    )
  })

  it('every usual figure is named as not the person’s own', () => {
    expect(runNamed('job-calendar', job).said).toContain('Usual, not yours: digging, setting posts, concrete')
  })

  it('a part longer than any fence is refused, with its own value', () => {
    const { outcome, said } = runNamed('job-calendar', { ...job, dryWait: '5 years' }, { confirmed: ['dryWait'] })
    expect(outcome.ok).toBe(false)
    expect(said).toContain('5 years is longer than any part of a fence')
  })
})

describe('working days', () => {
  it('the last before the first is refused', () => {
    const { outcome, said } = runNamed('working-days-between', { fromDay: '2026-10-16', toDay: '2026-10-05' })
    expect(outcome.ok).toBe(false)
    expect(said).toContain('comes before')
  })

  it('there and back: so many working days later, so many between', () => {
    for (const days of [1, 4, 5, 23, 260]) {
      const { outcome } = runNamed('working-days-later', { fromDay: '2026-10-07', daysAhead: String(days) })
      const reached = outcome.ok ? outcome.values.get('dayReached') : undefined
      const shown = runNamed('working-days-later', { fromDay: '2026-10-07', daysAhead: String(days) }).shown.dayReached
      expect(reached).toBeDefined()
      expect(
        runNamed('working-days-between', { fromDay: '2026-10-07', toDay: shown as string }).shown.workingDaysAfter,
      ).toBe(`${days} working day${days === 1 ? '' : 's'}`)
    }
  })

  it('a holiday on a Sunday changes nothing', () => {
    const given = { fromDay: '2026-10-05', toDay: '2026-10-16' }
    expect(runNamed('working-days-between', { ...given, holidays: ['2026-10-11'] }).shown.workingDaysBoth).toBe(
      runNamed('working-days-between', given).shown.workingDaysBoth,
    )
  })
})

describe('so many days later', () => {
  const of = (fromDay: string, laterBy: string, wanted: string) =>
    runNamed('days-later', { fromDay, laterBy }, { wanted: [wanted] })

  // February 2026 has 28 days: 1 March is the 60th day, and 10 back is the 50th, 19 February.
  it('tells the later one or the earlier, whichever is wanted', () => {
    expect(of('2026-03-01', '10 days', 'dateLater').shown).toEqual({ dateLater: 'Wednesday 11 March 2026' })
    expect(of('2026-03-01', '10 days', 'dateEarlier').shown).toEqual({ dateEarlier: 'Thursday 19 February 2026' })
  })

  it('does not mind what lies beyond its calendar on the other side', () => {
    expect(of('2199-06-01', '99 years', 'dateEarlier').shown.dateEarlier).toContain('1 June 2100')
    expect(of('1901-06-01', '99 years', 'dateLater').shown.dateLater).toContain('1 June 2000')
    expect(of('2199-06-01', '99 years', 'dateLater').said).toContain('leads out of the years')
    expect(of('1901-06-01', '99 years', 'dateEarlier').said).toContain('leads out of the years')
  })

  it('counts hours from hour to hour, and a part of a day as a day begun', () => {
    expect(of('2026-03-01', '48 h', 'dateLater').shown.dateLater).toContain('3 March')
    expect(of('2026-03-01', '48 h', 'dateLater').said).toContain('at the same hour')
    expect(of('2026-03-01', '36 h', 'dateLater').shown.dateLater).toContain('3 March')
    expect(of('2026-03-01', '36 h', 'dateLater').said).toContain('a day begun')
    expect(of('2026-03-01', '2 days', 'dateLater').said).not.toContain('hour')
  })

  it('ends a month on at its last day where it is shorter', () => {
    expect(of('2026-01-31', '1 month', 'dateLater').shown.dateLater).toContain('28 February 2026')
    expect(of('2026-01-31', '1 month', 'dateLater').said).toContain('A month on is the same day')
    expect(of('2026-01-31', '4 weeks', 'dateLater').said).not.toContain('A month on')
  })
})

describe('hours of work', () => {
  it('usual paces are said to be usual, and the person’s own are taken', () => {
    const usual = runNamed('job-hours', { picketsHung: '120' })
    expect(usual.shown.picketHanging).toBe('6 hours')
    expect(usual.said).toContain('The paces are usual ones')
    const own = runNamed('job-hours', { picketsHung: '120', picketsAnHour: '15' })
    expect(own.shown.picketHanging).toBe('8 hours')
    expect(own.said).not.toContain('The paces are usual ones')
  })

  it('asks for something to reckon with when nothing is given', () => {
    const { outcome, said } = runNamed('job-hours', {})
    expect(outcome.ok).toBe(false)
    expect(said).toContain('missing posts')
  })
})

describe('the season of the coats', () => {
  const given = { coatMonth: 'october', hemisphere: 'north', leastPaintTemperature: '50 °F' }
  it('the night alone flips the verdict, and the remark says that it decided', () => {
    const warm = runNamed('season-check', { ...given, nightLow: '50 °F' })
    const cold = runNamed('season-check', { ...given, nightLow: '49 °F' })
    expect([warm.shown.warmEnough, cold.shown.warmEnough]).toEqual(['true', 'false'])
    expect(warm.said).toContain('What decides: the nights go down to 50 °F')
    expect(cold.said).toContain('What decides: the nights go down to 49 °F')
  })

  it('the can alone flips it', () => {
    const colder = runNamed('season-check', { ...given, nightLow: '45 °F', leastPaintTemperature: '40 °F' })
    expect(colder.shown.warmEnough).toBe('true')
    expect(runNamed('season-check', { ...given, nightLow: '45 °F' }).shown.warmEnough).toBe('false')
  })

  it('with a can that nobody read, a cold night is cannot say', () => {
    const { shown, said } = runNamed('season-check', { coatMonth: 'october', hemisphere: 'north', nightLow: '45 °F' })
    expect(shown.warmEnough).toBe('null')
    expect(said).toContain('what your can allows I do not know')
  })

  it('turning the earth round turns the season, and no night', () => {
    const months = ['january', 'april', 'july', 'october']
    const of = (half: string) =>
      months.map(
        (coatMonth) => runNamed('season-check', { ...given, coatMonth, hemisphere: half, nightLow: '55 °F' }).shown,
      )
    expect(of('north').map((it) => it.coatSeason)).toEqual(['winter', 'spring', 'summer', 'autumn'])
    expect(of('south').map((it) => it.coatSeason)).toEqual(['summer', 'autumn', 'winter', 'spring'])
    expect(new Set([...of('north'), ...of('south')].map((it) => it.warmEnough))).toEqual(new Set(['true']))
  })
})
