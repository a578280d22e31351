// Lengths added, averaged, taken away, multiplied, shared; and two of them as an area.
import { sumsOf } from '../../plain-sums.ts'
import { lengthProduct, lengthSums, lengthUnit } from '../../words/plain-sums.ts'

export const lengthsTogether = sumsOf({
  name: 'lengths-together',
  title: 'Lengths added, taken away, multiplied, shared',
  answers:
    'What lengths come to when they are added, taken from each other, multiplied or shared, and the area of two of them.',
  kind: 'length',
  words: lengthSums,
  unit: lengthUnit,
  product: lengthProduct,
  examples: [
    // 87 1/2 + 57 = 144 1/2 in
    {
      ask: 'Add 7 ft 3 1/2 in and 4 ft 9 in.',
      given: { lengths: ['7 ft 3 1/2 in', '4 ft 9 in'] },
      expect: { lengthSum: '12 ft 0 1/2 in' },
    },
    // 93 − 3 1/2
    {
      ask: 'What is 93 in less 3 1/2 in?',
      given: { lengths: ['93 in', '3 1/2 in'] },
      expect: { lengthDifference: '89 1/2 in' },
    },
    // 14 × 8
    {
      ask: 'What is 14 times 8 ft?',
      given: { howManyTimes: '14', lengths: '8 ft' },
      expect: { lengthMultiple: '112 ft' },
    },
    // 7 13/16 / 2
    {
      ask: 'What is half of 7 13/16 in?',
      given: { lengths: '7 13/16 in', howManyTimes: '1/2' },
      expect: { lengthMultiple: '3 29/32 in' },
    },
    // 90 / 12
    {
      ask: 'What is 90 in divided by 12?',
      given: { lengths: '90 in', howManyTimes: '12' },
      expect: { lengthShare: '7 1/2 in' },
    },
    // (2400 + 2410 + 2385) / 3 = 2398 1/3
    {
      ask: 'What is the average of 2400 mm, 2410 mm and 2385 mm?',
      given: { lengths: ['2400 mm', '2410 mm', '2385 mm'] },
      expect: { lengthMean: '2,398 1/3 mm' },
    },
    // 2.4 × 1.8
    {
      ask: 'What is 2.4 m times 1.8 m?',
      given: { lengths: ['2.4 m', '1.8 m'] },
      expect: { lengthProduct: '4.32 m²' },
    },
  ],
})
