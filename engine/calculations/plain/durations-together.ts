// Times added, averaged, taken away, multiplied, shared.
import { sumsOf } from '../../plain-sums.ts'
import { durationSums, durationUnit } from '../../words/plain-sums.ts'

export const durationsTogether = sumsOf({
  name: 'durations-together',
  title: 'Times added, taken away, multiplied, shared',
  answers: 'What times come to when they are added, taken from each other, multiplied or shared.',
  kind: 'duration',
  words: durationSums,
  unit: durationUnit,
  examples: [
    // 3 h 20 + 2 h 45 = 6 h 5
    {
      ask: 'Add 3 hours, 20 minutes, 2 hours and 45 minutes.',
      given: { durations: ['3 h', '20 minutes', '2 h', '45 minutes'] },
      expect: { durationSum: '6.083 hours' },
    },
    // 18 × 25 = 450 min
    {
      ask: 'What is 18 times 25 minutes in hours?',
      given: { howManyTimes: '18', durations: '25 minutes', durationUnit: 'h' },
      expect: { durationMultiple: '7.5 hours' },
    },
  ],
})
