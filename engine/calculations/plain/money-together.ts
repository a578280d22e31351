// Amounts of money added, averaged, taken away, multiplied, shared, to the cent.
import { sumsOf } from '../../plain-sums.ts'
import { moneySums } from '../../words/plain-sums.ts'

export const moneyTogether = sumsOf({
  name: 'money-together',
  title: 'Amounts of money added, taken away, multiplied, shared',
  answers:
    'What amounts of money come to when they are added, taken from each other, multiplied or shared, to the cent.',
  kind: 'money',
  words: moneySums,
  examples: [
    // 47.90 + 12.35 + 3.08
    {
      ask: 'Add $47.90, $12.35 and $3.08.',
      given: { amounts: ['$47.90', '$12.35', '$3.08'] },
      expect: { moneySum: '$63.33' },
    },
    // 100 / 3 = 33.333…
    {
      ask: 'What is £100 divided by 3?',
      given: { amounts: '£100', howManyTimes: '3' },
      expect: { moneyShare: '£33.33' },
    },
  ],
})
