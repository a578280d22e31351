// Areas added, averaged, taken away, multiplied, shared.
import { sumsOf } from '../../plain-sums.ts'
import { areaSums, areaUnit } from '../../words/plain-sums.ts'

export const areasTogether = sumsOf({
  name: 'areas-together',
  title: 'Areas added, taken away, multiplied, shared',
  answers: 'What areas come to when they are added, taken from each other, multiplied or shared.',
  kind: 'area',
  words: areaSums,
  unit: areaUnit,
  examples: [
    // 120 + 85 1/2
    {
      ask: 'Add 120 sq ft and 85 1/2 sq ft.',
      given: { areas: ['120 ft²', '85 1/2 ft²'] },
      expect: { areaSum: '205.5 ft²' },
    },
    // 12.5 − 3.2
    {
      ask: 'What is 12.5 m² minus 3.2 m²?',
      given: { areas: ['12.5 m²', '3.2 m²'] },
      expect: { areaDifference: '9.3 m²' },
    },
  ],
})
