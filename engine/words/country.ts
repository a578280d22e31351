// This file is about the country that the fence stands in: rules, classes and sizes hold in one and not in the next.
import { word } from './word.ts'

// As people name where they live: the country by a part of it.
const parts = (names: string): string[] => names.split(', ')
const states = parts(
  'alabama, alaska, arizona, arkansas, california, colorado, connecticut, delaware, florida, hawaii, idaho, illinois, indiana, iowa, kansas, kentucky, louisiana, maryland, massachusetts, michigan, minnesota, mississippi, missouri, montana, nebraska, nevada, new hampshire, new jersey, new mexico, new york, north carolina, north dakota, ohio, oklahoma, oregon, pennsylvania, rhode island, south carolina, south dakota, tennessee, texas, utah, vermont, virginia, west virginia, wisconsin, wyoming',
)
const provinces = parts(
  'ontario, quebec, british columbia, alberta, manitoba, saskatchewan, nova scotia, new brunswick, newfoundland, prince edward island, yukon',
)
const australianStates = parts('new south wales, nsw, queensland, tasmania, south australia, western australia')
const europeans = parts(
  'germany, france, spain, italy, netherlands, holland, belgium, luxembourg, austria, switzerland, portugal, poland, czechia, czech republic, slovakia, hungary, slovenia, croatia, romania, bulgaria, greece, denmark, sweden, norway, finland, iceland, estonia, latvia, lithuania, serbia, ukraine',
)

export const country = word<'choice'>('country', {
  kind: 'choice',
  label: 'country',
  measure: 'Rules, classes and sizes differ by country, and within it.',
  ask: 'In which country is the fence?',
  called: { names: ['country'] },
  options: {
    us: {
      label: 'the US',
      called: [
        'in the us',
        'usa',
        'united states',
        'in the states',
        'us code',
        'ispsc',
        'irc',
        'in america',
        ...states,
      ],
    },
    canada: { label: 'Canada', called: ['in canada', 'canada', 'canadian', ...provinces] },
    uk: {
      label: 'the UK',
      called: ['in the uk', 'uk', 'england', 'scotland', 'wales', 'britain', 'great britain', 'northern ireland'],
    },
    ireland: { label: 'Ireland', called: ['ireland', 'in ireland'] },
    europe: {
      label: 'elsewhere in Europe',
      called: ['in europe', 'elsewhere in europe', 'european', 'the eu', ...europeans],
    },
    australia: {
      label: 'Australia',
      called: ['in australia', 'australia', 'australian', ...australianStates],
    },
    'new-zealand': { label: 'New Zealand', called: ['in new zealand', 'new zealand', 'nz', 'aotearoa'] },
    elsewhere: { label: 'another country', called: ['another country', 'elsewhere'] },
  },
})
