// A volume in another unit.
import { conversionOf } from '../../plain-conversion.ts'
import { volumeConverted, volumeGiven, volumeUnit } from '../../words/plain-sums.ts'

export const convertVolume = conversionOf({
  name: 'convert-volume',
  title: 'A volume in another unit',
  answers: 'The same volume in cubic inches, feet, yards or metres, litres, US or imperial gallons, exactly.',
  kind: 'volume',
  from: volumeGiven,
  unit: volumeUnit,
  to: volumeConverted,
  sources: [
    { fact: '1 in = 25.4 mm exactly', from: 'International yard and pound agreement, 1959; NIST SP 811, appendix B.' },
    {
      fact: 'a US gallon is 231 in³, an imperial gallon 4.54609 L, exactly',
      from: 'NIST Handbook 44, appendix C; Weights and Measures Act 1985 (UK) (from memory).',
    },
  ],
  beside: (from, wanted) =>
    from.unit === 'gal' || wanted === 'gal'
      ? 'I took US gallons. An imperial gallon is larger, about six fifths of one: say “imperial gallons” if that is meant.'
      : undefined,
  examples: [
    // 5 × 231 × 0.016387064 = 18.92705892
    {
      ask: 'How many litres are 5 gallons?',
      given: { volumeGiven: '5 gal', volumeUnit: 'L' },
      expect: { volumeConverted: '18.93 L' },
    },
    // 2 / 0.764554857984 = 2.61590…
    {
      ask: 'What is 2 m³ in cubic yards?',
      given: { volumeGiven: '2 m³', volumeUnit: 'yd3' },
      expect: { volumeConverted: '2.616 yd³' },
    },
  ],
})
