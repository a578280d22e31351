// Weights added, averaged, taken away, multiplied, shared.
import { sumsOf } from '../../plain-sums.ts'
import { massSums, massUnit } from '../../words/plain-sums.ts'

export const massesTogether = sumsOf({
  name: 'masses-together',
  title: 'Weights added, taken away, multiplied, shared',
  answers: 'What weights come to when they are added, taken from each other, multiplied or shared.',
  kind: 'mass',
  words: massSums,
  unit: massUnit,
  examples: [
    // 14 × 80
    {
      ask: 'What is 14 times 80 lb?',
      given: { howManyTimes: '14', masses: '80 lb' },
      expect: { massMultiple: '1,120 lb' },
    },
    // 450 / 25
    {
      ask: 'How many times does 25 kg go into 450 kg?',
      given: { masses: ['25 kg', '450 kg'] },
      expect: { massRatio: '18' },
    },
  ],
})
