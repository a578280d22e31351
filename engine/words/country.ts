// This file is about the country that the fence stands in: rules, classes and sizes hold in one and not in the next.
import { word } from './word.ts'

export const country = word<'choice'>('country', {
  kind: 'choice',
  label: 'country',
  measure: 'Rules, classes and sizes differ by country, and within it.',
  ask: 'In which country is the fence?',
  called: { names: ['country'] },
  options: {
    us: { label: 'the US', called: ['in the us', 'usa', 'united states', 'in the states', 'us code', 'ispsc', 'irc'] },
    canada: { label: 'Canada', called: ['in canada', 'canada', 'canadian'] },
    uk: {
      label: 'the UK',
      called: ['in the uk', 'uk', 'england', 'scotland', 'wales', 'britain', 'great britain', 'northern ireland'],
    },
    ireland: { label: 'Ireland', called: ['ireland', 'in ireland'] },
    europe: { label: 'elsewhere in Europe', called: ['in europe', 'elsewhere in europe', 'european'] },
    australia: { label: 'Australia', called: ['in australia', 'australia', 'australian'] },
    'new-zealand': { label: 'New Zealand', called: ['in new zealand', 'new zealand'] },
    elsewhere: { label: 'another country', called: ['another country', 'elsewhere'] },
  },
})
