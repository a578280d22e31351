// Dates and time as people ask about them. A holiday that is left out makes a date too early, and somebody digs on it.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

const last = async (...said: string[]) => (await talk(said)).at(-1)

describe('holidays between the call and the hole', () => {
  it.each([
    // Wed 2 July; Thu 3, (Fri 4), Mon 7 pass whole; Tue 8
    ['i call on wednesday july 2 2025, 2 full working days notice, july 4 off. when can i dig', 'Tuesday 8 July 2025'],
    [
      'July 4 is a holiday. I call on July 2 2025 and need 2 full working days notice. When can I dig?',
      'Tuesday 8 July 2025',
    ],
    // Wed 2; (3, 4), Mon 7, Tue 8 pass; Wed 9
    ['i call july 2 2025, july 3 and july 4 off, 2 working days notice. when can i dig?', 'Wednesday 9 July 2025'],
    // Tue 1; Wed 2, Thu 3 pass; (Fri 4); Mon 7
    ['Called on 1 July 2025, 2 business days notice, closed July 4. When can I dig?', 'Monday 7 July 2025'],
    // Tue 17 June; 18, (19), 20, Mon 23 pass; Tue 24
    [
      'i call on tuesday june 17 2025, notice 3 working days, juneteenth (june 19) off, when can i dig',
      'Tuesday 24 June 2025',
    ],
    // Mon 14 April; 15, 16, 17 pass; (18, 21); Tue 22
    [
      "calling monday 14 april 2025, 3 full working days' notice, holidays 18 and 21 april, when can i dig?",
      'Tuesday 22 April 2025',
    ],
    // Tue 23 December; 24, (25, 26), Mon 29 pass; Tue 30
    [
      'i ring on Tuesday 23 December 2025, notice 2 working days, holidays 25 December, 26 December and 1 January. When may I dig?',
      'Tuesday 30 December 2025',
    ],
    // Mon 24 November; 25, 26, (27), 28 pass; Mon 1 December
    [
      'call 24 november 2025, 3 business days notice, thanksgiving november 27 off, earliest dig day?',
      'Monday 1 December 2025',
    ],
  ])('%s', async (said, day) => expect(results(await last(said)).firstDigDay).toBe(day))

  it.each([
    'i call on tuesday june 17 2025, notice 3 working days, juneteenth off, when can i dig',
    "calling monday 14 april 2025, 3 full working days' notice, good friday and easter monday are holidays, when can i dig?",
    'I call on a Tuesday July 1, 2 full working days, July 4 off, which day can I dig?',
    'i call on wednesday july 2 2025, 2 full working days notice, friday off. when can i dig',
    'when can I dig if I call on wednesday july 2 2025 and need 2 working days notice and july 3 to july 5 are off',
    'i call on tuesday june 17 2025, notice 3 working days, juneteeth off, when can i dig',
    'call on 2 July 2025, 2 working days notice, one public holiday in between. when can i dig?',
    'i call july 2 2025, 2 working days notice, 7/4 off, when can i dig',
  ])('no date where a holiday is not known: %s', async (said) => {
    const answer = await last(said)
    expect(results(answer)).toEqual({})
    expect(asked(answer)).toContain('holidays')
  })

  it('the date of the holiday, once told, is counted with those told before', async () => {
    const said = 'i call on june 17 2025, 15 working days notice, july 4 and juneteenth off. when can i dig'
    expect(results(await last(said))).toEqual({})
    // 18, (19), 20: 2; 23 to 27: 7; 30 to 3 July: 11; (4); 7 to 10: 15; Fri 11
    expect(results(await last(said, 'june 19')).firstDigDay).toBe('Friday 11 July 2025')
  })

  it('waits for it, whatever else is answered first, and goes on without it when there is none', async () => {
    const said = 'when can i dig if i call 7/2/2025, 2 working days notice, 7/4 off'
    expect(asked(await last(said))).toEqual(['callDate', 'holidays'])
    expect(results(await last(said, 'july 2 2025'))).toEqual({})
    expect(results(await last(said, 'july 2 2025', 'july 4')).firstDigDay).toBe('Tuesday 8 July 2025')
    expect(results(await last(said, 'july 2 2025', 'none')).firstDigDay).toBe('Monday 7 July 2025')
  })

  it('where none was named it says that it knows none', async () => {
    const answer = await last(
      'i call on wednesday july 2 2025, 2 full working days notice, no holidays. when can i dig',
    )
    expect(results(answer).firstDigDay).toBe('Monday 7 July 2025')
    expect(answer?.reply).toContain('I know no holidays')
    expect(answer?.reply).not.toContain('the holidays you named')
  })
})

describe('working days', () => {
  it.each([
    // Mon 3 to Fri 7: 5; to Fri 14: 10; Mon 17, Tue 18
    [
      'if i start on monday march 3 2025 and need 12 working days when do i finish',
      'Tuesday 18 March 2025',
      'Wednesday 19 March 2025',
    ],
    ['12 working days from monday 3 march 2025, when am i done', 'Tuesday 18 March 2025', 'Wednesday 19 March 2025'],
    // Mon 2 to Fri 6: 5; Mon 9 to Thu 12: 9
    ['job starts monday june 2 2025, 9 working days, when is it done', 'Thursday 12 June 2025', 'Friday 13 June 2025'],
    ['job starts monday june 2 2025, 9 working days', 'Thursday 12 June 2025', 'Friday 13 June 2025'],
    // 22, 23, 24, (25, 26), 29, 30
    [
      'starting 22 December 2025, 5 working days, holidays 25 and 26 December, when will it be done?',
      'Tuesday 30 December 2025',
      'Wednesday 31 December 2025',
    ],
  ])('%s', async (said, lastWorkDay, dayReached) => {
    const answer = await last(said)
    expect(results(answer)).toMatchObject({ lastWorkDay, dayReached })
    expect(answer?.reply).toContain('Does the first day count?')
  })

  it.each([
    // Mon 14 April to Fri 2 May: three weeks of five, less two
    '14 April 2025 and 2 May 2025, holidays 18 April and 21 April: working days?',
    'working days between 14 April 2025 and 2 May 2025, holidays 18 and 21 April?',
    'how many working days from 14 April to 2 May 2025, closed on 18 April and 21 April?',
  ])('%s', async (said) => expect(results(await last(said)).workingDaysBoth).toBe('13 working days'))
})

describe('days by the calendar', () => {
  it.each([
    // 15 left of June, 31, 31, 13 of September
    ['90 days after june 15 2025', { dateLater: 'Saturday 13 September 2025' }],
    ['what date is 45 days after july 4th, 2025?', { dateLater: 'Monday 18 August 2025' }],
    ['what day is 6 weeks from 3 march 2025', { dateLater: 'Monday 14 April 2025' }],
    ['2 months after 15 June 2025', { dateLater: 'Friday 15 August 2025' }],
    ['30 days before 1 June 2025', { dateEarlier: 'Friday 2 May 2025' }],
    ['first coat on may 3 2025, recoat after 24 hours', { dateLater: 'Sunday 4 May 2025' }],
    ['stain on 10 June 2025, recoat after 48 hours. when?', { dateLater: 'Thursday 12 June 2025' }],
  ])('%s', async (said, expected) => expect(results(await last(said))).toMatchObject(expected))
})

describe('hours', () => {
  it.each([
    // 2:45 + 3:20 = 6:05
    ['add 2 h 45 min, 3 h 20 min', { durationSum: '6.083 hours' }, 'In hours and minutes: 6 h 5 min.'],
    ['1 hour 20 minutes plus 45 minutes', { durationSum: '2.083 hours' }, '2 h 5 min'],
    // 14/2 = 7; 26/6 = 4 1/3; 150/20 = 7 1/2; 5: 23 5/6; by two 11 11/12
    [
      '14 posts, 13 bays, 2 rails a bay, 150 pickets, 1 gate, how many hours with 2 people?',
      { workTime: '23.83 hours', workClock: '11.92 hours' },
      '',
    ],
    [
      '14 posts, 26 rails, 150 pickets and 1 gate: how many hours with 2 people?',
      { workTime: '23.83 hours', workClock: '11.92 hours' },
      '',
    ],
  ])('%s', async (said, expected, also) => {
    const answer = await last(said)
    expect(results(answer)).toMatchObject(expected)
    expect(answer?.reply).toContain(also)
  })
})
