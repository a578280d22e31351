// A length in another unit.
import { conversionOf } from '../../plain-conversion.ts'
import { lengthConverted, lengthGiven, lengthUnit } from '../../words/plain-sums.ts'

export const convertLength = conversionOf({
  name: 'convert-length',
  title: 'A length in another unit',
  answers: 'The same length in inches, feet and inches, yards, millimetres, centimetres or metres, exactly.',
  kind: 'length',
  from: lengthGiven,
  unit: lengthUnit,
  to: lengthConverted,
  sources: [
    { fact: '1 in = 25.4 mm exactly', from: 'International yard and pound agreement, 1959; NIST SP 811, appendix B.' },
  ],
  examples: [
    // 96 × 25.4
    {
      ask: 'What is 8 ft in millimetres?',
      given: { lengthGiven: '8 ft', lengthUnit: 'mm' },
      expect: { lengthConverted: '2,438.4 mm' },
    },
    // 2400 / 25.4 = 94 62/127 in, less 84
    {
      ask: 'What is 2.4 m in feet and inches?',
      given: { lengthGiven: '2.4 m', lengthUnit: 'ft' },
      expect: { lengthConverted: '7 ft 10.49 in' },
    },
  ],
})
