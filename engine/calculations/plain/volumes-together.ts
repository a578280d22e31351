// Volumes added, averaged, taken away, multiplied, shared.
import { sumsOf } from '../../plain-sums.ts'
import { volumeSums, volumeUnit } from '../../words/plain-sums.ts'

export const volumesTogether = sumsOf({
  name: 'volumes-together',
  title: 'Volumes added, taken away, multiplied, shared',
  answers: 'What volumes come to when they are added, taken from each other, multiplied or shared.',
  kind: 'volume',
  words: volumeSums,
  unit: volumeUnit,
  examples: [
    // 11 × 0.6
    {
      ask: 'What is 11 times 0.6 cubic feet?',
      given: { howManyTimes: '11', volumes: '0.6 ft³' },
      expect: { volumeMultiple: '6.6 ft³' },
    },
    // 36.4 + 28.1 + 30.5
    {
      ask: 'What is the total of 36.4 L, 28.1 L and 30.5 L?',
      given: { volumes: ['36.4 L', '28.1 L', '30.5 L'] },
      expect: { volumeSum: '95 L' },
    },
  ],
})
