// A weight in another unit.
import { conversionOf } from '../../plain-conversion.ts'
import { massConverted, massGiven, massUnit } from '../../words/plain-sums.ts'

export const convertMass = conversionOf({
  name: 'convert-mass',
  title: 'A weight in another unit',
  answers: 'The same weight in pounds, stone, US tons, kilograms or tonnes, exactly.',
  kind: 'mass',
  from: massGiven,
  unit: massUnit,
  to: massConverted,
  sources: [
    {
      fact: '1 lb = 0.45359237 kg exactly',
      from: 'International yard and pound agreement, 1959; NIST SP 811, appendix B.',
    },
  ],
  beside: (from, wanted) =>
    from.unit === 'ton' || wanted === 'ton' ? 'A ton is a US ton of 2,000 lb here; a tonne is 1,000 kg.' : undefined,
  examples: [
    // 80 × 0.45359237 = 36.2873896
    {
      ask: 'What is 80 lb in kilograms?',
      given: { massGiven: '80 lb', massUnit: 'kg' },
      expect: { massConverted: '36.29 kg' },
    },
    // 25 / 0.45359237 = 55.1155…
    {
      ask: 'How many pounds are 25 kg?',
      given: { massGiven: '25 kg', massUnit: 'lb' },
      expect: { massConverted: '55.12 lb' },
    },
    // 13 × 14 × 0.45359237 = 82.553811…
    {
      ask: 'What is 13 stone in kilograms?',
      given: { massGiven: '13 stone', massUnit: 'kg' },
      expect: { massConverted: '82.55 kg' },
    },
    // 82 / 0.45359237 / 14 = 12.9127…
    {
      ask: 'What is 82 kg in stone?',
      given: { massGiven: '82 kg', massUnit: 'stone' },
      expect: { massConverted: '12.91 stone' },
    },
  ],
})
