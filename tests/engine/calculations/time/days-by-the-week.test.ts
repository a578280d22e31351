// Days of work from a day of the week on, with and without a date. Counted off on a calendar by hand.
import { describe, expect, it } from 'vitest'
import { type Inputs, runNamed } from '../../run-named.ts'

const shown = (given: Inputs, ...wanted: string[]) => runNamed('days-by-the-week', given, { wanted }).shown

describe('nine things, three a day', () => {
  const work = { thingsToDo: '9', thingsATime: '3' }

  it.each([
    ['tuesday', 'weekdays', 'thursday', '3 calendar days'], // Tue, Wed, Thu
    ['friday', 'weekdays', 'tuesday', '5 calendar days'], // Fri, Mon, Tue
    ['saturday', 'notSundays', 'tuesday', '4 calendar days'], // Sat, Mon, Tue
    ['sunday', 'weekends', 'sunday', '8 calendar days'], // Sun, Sat, Sun
  ])('from a %s on, %s: they end on a %s', (firstWeekday, weekWorked, weekdayReached, dayOfIt) =>
    expect(shown({ ...work, firstWeekday, weekWorked }, 'weekdayReached')).toMatchObject({ weekdayReached, dayOfIt }),
  )

  // 1 June 2026 is a Monday.
  it('from a date on give a date', () => {
    expect(shown({ ...work, fromDay: '5 June 2026', weekWorked: 'weekdays' }, 'lastDayOn')).toMatchObject({
      lastDayOn: 'Tuesday 9 June 2026',
    })
  })

  it('from a weekday on give no date', () => {
    expect(shown({ ...work, firstWeekday: 'friday', weekWorked: 'weekdays' }, 'weekdayReached')).not.toHaveProperty(
      'lastDayOn',
    )
  })
})
