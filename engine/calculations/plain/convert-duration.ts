// A time in another unit.
import { conversionOf } from '../../plain-conversion.ts'
import { durationConverted, durationGiven, durationUnit } from '../../words/plain-sums.ts'

export const convertDuration = conversionOf({
  name: 'convert-duration',
  title: 'A time in another unit',
  answers: 'The same time in minutes, hours, days or weeks.',
  kind: 'duration',
  from: durationGiven,
  unit: durationUnit,
  to: durationConverted,
  sources: [{ fact: 'an hour is 60 minutes, a day 24 hours, a week 7 days', from: 'By definition.' }],
  examples: [
    // 450 / 60
    {
      ask: 'What is 450 minutes in hours?',
      given: { durationGiven: '450 minutes', durationUnit: 'h' },
      expect: { durationConverted: '7.5 hours' },
    },
    // 3 × 7
    {
      ask: 'How many days are 3 weeks?',
      given: { durationGiven: '3 weeks', durationUnit: 'day' },
      expect: { durationConverted: '21 days' },
    },
  ],
})
