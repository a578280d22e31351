// Days of work and of drying, and sticks of several sizes, as people say them. The figures are worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

describe('days of work', () => {
  it('a first day is told by its weekday; days are lost, Saturdays are worked', async () => {
    // Mon 8, Tue 9, Wed 10, Thu 11, Fri 12; 3 more: Mon 15, Tue 16, Wed 17; with Saturdays 8 to 13, 15, 16
    const answers = await talk([
      'we start Monday September eighth, it takes five working days, no weekends. what day are we done?',
      'and if we lose three days to rain?',
      'what if the crew works Saturdays too?',
    ])
    expect(answers.map((it) => results(it).lastWorkDay)).toEqual([
      'Friday 12 September 2025',
      'Wednesday 17 September 2025',
      'Tuesday 16 September 2025',
    ])
  })

  it('a holiday behind a semicolon is one day', async () => {
    // Wed 31 Dec, (Thu 1), Fri 2, Mon 5, Tue 6
    const [only] = await talk([
      'We start on Wednesday, December 31, 2025; January 1 is a holiday. The job takes 4 working days. On what day do we finish?',
    ])
    expect(results(only)).toMatchObject({ lastWorkDay: 'Tuesday 6 January 2026' })
  })

  it('one person per auger counts nobody', async () => {
    // ⌈15 / 2⌉ = 8 × 45 min = 6 h; / 5 → 2
    const answers = await talk([
      'How many days of digging for 15 holes with two diggers?',
      'about 45 minutes a hole with one person per auger, 5 hours a day',
    ])
    expect(results(answers[1])).toMatchObject({ diggingClock: '6 hours', diggingDays: '2 digging days' })
  })
})

describe('a rate of drying', () => {
  it('is followed to its day, and another rate is tried', async () => {
    // 27 − 15 = 12 points: 8 weeks; 3 March + 56 = 28 April; at 3 a week 4 weeks: 31 March
    const answers = await talk([
      'The meter says 27 % today, 3 March 2025, and it loses 1.5 points a week. On what date is it at 15 %?',
      'and at 3 points a week?',
    ])
    expect(results(answers[0])).toMatchObject({ daysAtRate: '56 days', readyAtRate: 'Monday 28 April 2025' })
    expect(results(answers[1])).toMatchObject({ daysAtRate: '28 days', readyAtRate: 'Monday 31 March 2025' })
  })

  it('a board shrinks by what was told', async () => {
    // 90 × 0.003 × 12 = 3.24
    const answers = await talk([
      'The boards read 27 % today, 3 March 2025, losing half a per cent a day. When are they at 15 %?',
      'how much has a 90 mm board shrunk then, if it loses 0.3 % of its width for every one per cent?',
    ])
    expect(results(answers[1])).toMatchObject({ shrunkBy: '3.24 mm' })
  })
})

it('sticks of two sizes are added up, each with its own number', async () => {
  // 18 × 2 × 4 × 10 / 12 = 120; 9 × 4 × 4 × 8 / 12 = 96
  const answers = await talk([
    'two by fours ten foot eighteen of them and four by fours eight foot nine of them, how many board feet is that',
    'what does it all weigh?',
  ])
  expect(results(answers[0])).toMatchObject({ listBoardFeet: '216 board feet' })
  expect(answers[1]?.asks.map((it) => it.word)).toContain('species')
})
