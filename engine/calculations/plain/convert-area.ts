// An area in another unit.
import { conversionOf } from '../../plain-conversion.ts'
import { areaConverted, areaGiven, areaUnit } from '../../words/plain-sums.ts'

export const convertArea = conversionOf({
  name: 'convert-area',
  title: 'An area in another unit',
  answers: 'The same area in square inches, feet, centimetres or metres, exactly.',
  kind: 'area',
  from: areaGiven,
  unit: areaUnit,
  to: areaConverted,
  sources: [
    { fact: '1 in = 25.4 mm exactly', from: 'International yard and pound agreement, 1959; NIST SP 811, appendix B.' },
  ],
  examples: [
    // 120 × 0.3048² = 11.1483648
    {
      ask: 'What is 120 square feet in square metres?',
      given: { areaGiven: '120 ft²', areaUnit: 'm2' },
      expect: { areaConverted: '11.15 m²' },
    },
    // 25 / 0.09290304 = 269.0977…
    {
      ask: 'Convert 25 m² to square feet.',
      given: { areaGiven: '25 m²', areaUnit: 'ft2' },
      expect: { areaConverted: '269.1 ft²' },
    },
  ],
})
