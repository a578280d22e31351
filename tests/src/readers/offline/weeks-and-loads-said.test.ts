// Work by the evening and the day it ends, loads that grow, and fences that are partly air, as people say them. Worked by hand beside each.
import { describe, expect, it } from 'vitest'
import { asked, results, talk } from '../../talk.ts'

const each = async (...said: string[]) => (await talk(said)).map((it) => results(it))

describe('work by the evening', () => {
  // 75 / 8 → 10 evenings; two coats 150 / 8 → 19; Mon 7 September + 19 without Sundays: 12, 19, 26 September are the 6th, 12th, 18th; Mon 28: 19th
  it('pieces of an evening, coats, and every day but one', async () => {
    const [first, twice, date] = await each(
      'I get 8 palings stained of an evening and there are 75 of them. How many evenings?',
      'what if it wants two coats',
      'Starting Monday 7 September 2026, every evening except Sundays, what date am I done?',
    )
    expect(first).toMatchObject({ daysInAll: '10 working days' })
    expect(twice).toMatchObject({ daysInAll: '19 working days' })
    expect(date).toMatchObject({ lastDayOn: 'Monday 28 September 2026' })
  })

  // 15 / 5 = 3: Wednesday to Friday; 4 days behind it: Tuesday
  it('a weekday to begin on, and a wait behind the last day', async () => {
    const [only] = await each(
      'We set 5 posts a day, 15 in all, then the concrete has to sit four days. If we start on a Wednesday and dont skip any, what day can the rails go on?',
    )
    expect(only).toMatchObject({ weekdayReached: 'Tuesday', daysInAll: '3 working days' })
  })

  // 7 days, two a weekend: 4 weekends; Sat 2 May 2026: 2, 3, 9, 10, 16, 17, 23
  it('weekends only', async () => {
    const [weeks, date] = await each(
      'The job is 7 days of work and I am free only Saturday and Sunday. How many weekends?',
      'If I begin Saturday 2 May 2026 on what date am I finished?',
    )
    expect(weeks).toMatchObject({ weeksWorked: '4 working weeks' })
    expect(date).toMatchObject({ lastDayOn: 'Saturday 23 May 2026' })
  })

  // 21 / 7 = 3; + 3 + 2 = 8; 28 / 7 = 4: 9
  it('parts one after another behind a pace', async () => {
    const [, all, more] = await each(
      'there are 21 post holes and we can dig 7 a day, how many days',
      'then 3 days waiting for the concrete and 2 days of rails. how many days is the whole thing',
      'no, 28 holes not 21. how many days for everything now?',
    )
    expect(all).toMatchObject({ daysInAll: '8 working days' })
    expect(more).toMatchObject({ daysInAll: '9 working days' })
  })
})

describe('loads', () => {
  // 12 × 20 = 240; + 15 × 6 = 330; 330 − 300 = 30
  it('another kind on top', async () => {
    const [first, second] = await each(
      'Will the trailer take it? 12 bags at 20 kg. The limit is 300 kg.',
      'and 15 rails at 6 kg on top',
    )
    expect(first).toMatchObject({ mixedWeight: '240 kg' })
    expect(second).toMatchObject({ mixedWeight: '330 kg', overPayload: '30 kg' })
  })

  // 700 − 150 = 550; / 60 = 9 at once; 30 / 9 → 4
  it('the weight of a bag is never that of the load', async () => {
    const [, once, trips] = await each(
      'How many 60 lb bags may I safely haul in my pickup at one time?',
      'The door sticker says 700 lb for everything aboard, and I weigh 150 lb myself.',
      'I need 30 bags in all, how many trips is that?',
    )
    expect(once).toMatchObject({ piecesAtOnce: '9 pieces' })
    expect(trips).toMatchObject({ trips: '4 trips' })
  })
})

describe('fences that are painted', () => {
  // 80 × 5 × 2 × 3/4 = 600 ft²; / 300 = 2; × 1.1
  it('a quarter that is air is no wood', async () => {
    const [only] = await each(
      'how much stain for a fence 80 ft long and 5 ft tall, a quarter of it is just air, both sides, 1 coat, 300 sq ft per gallon?',
    )
    expect(only).toMatchObject({ faceArea: '600 ft²', finishNeeded: '2.2 gal' })
  })

  // 240 × 2 / 200 = 2.4; × 1.1 = 2.64
  it('an area of one side is painted on both', async () => {
    const [only] = await each(
      '240 square feet a side, both sides, one coat, 200 sq ft per gallon: how much stain do I need?',
    )
    expect(only).toMatchObject({ finishNeeded: '2.64 gal' })
  })
})

it('a number that had no place holds the sum back in the next turn, too', async () => {
  const answers = await talk([
    'One litre does 9 m2 on smooth wood and 5 m2 on sawn. There is 40 m2 smooth and 12 m2 sawn, one coat, how many litres?',
    'The tins are 2.5 litres. How many tins?',
  ])
  for (const it of answers) expect(results(it)).toEqual({})
  expect(asked(answers.at(-1)).length).toBeGreaterThan(0)
})
