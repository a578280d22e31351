// This file is about how firmly a quantity was said: at most, about, or just so.
import type { Found } from './found.ts'
import type { Firmness } from './reading.ts'
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** How firmly it was said: the words just before, or just after. */
export function firmnessOf(tokens: readonly Scanned[], at: number, found: Found): Firmness {
  if (found.high ?? found.bareHigh) return 'range'
  const before = ` ${tokens
    .slice(Math.max(0, at - 5), at)
    .map(lower)
    .join(' ')} `
  const after = ` ${tokens
    .slice(found.next, found.next + 4)
    .map(lower)
    .join(' ')} `
  if (noneOver.test(before)) return 'at-most'
  if (noneUnder.test(before)) return 'at-least'
  for (const [firmness, words] of leading) if (words.some((it) => before.endsWith(` ${it} `))) return firmness
  for (const [firmness, words] of trailing) if (words.some((it) => after.startsWith(` ${it} `))) return firmness
  return 'exactly'
}
const bigger = [
  'wider',
  'bigger',
  'larger',
  'more',
  'greater',
  'longer',
  'deeper',
  'taller',
  'higher',
  'further',
  'farther',
]
const smaller = ['less', 'narrower', 'smaller', 'fewer', 'shorter', 'shallower', 'lower', 'closer']
// "No gap over 2 in", "nothing in it wider than 4 in": what there is none of may stand between.
const none = "(?:no|not|nothing|none|never|without|don't)(?: [\\p{L}'-]+){0,2}"
const noneOver = new RegExp(`\\b${none} (?:over|above|past|beyond|exceeding|(?:${bigger.join('|')}) than) $`, 'u')
const noneUnder = new RegExp(`\\b${none} (?:under|below|(?:${smaller.join('|')}) than) $`, 'u')
const leading: readonly (readonly [Firmness, readonly string[]])[] = [
  [
    'at-most',
    [
      'at most',
      'at the most',
      'not over',
      'no over',
      'max',
      'maximum',
      'max of',
      'maximum of',
      'max is',
      'maximum is',
      'max :',
      'limit of',
      'up to',
      'not exceeding',
      "can't exceed",
      'not exceed',
      'go over',
      'not go over',
      'not above',
      'not more than',
      'at max',
      'within',
      ...bigger.flatMap((it) => [
        `no ${it} than`,
        `not ${it} than`,
        `nothing ${it} than`,
        `never ${it} than`,
        `isn't ${it} than`,
        `aren't ${it} than`,
        `be ${it} than`,
      ]),
    ],
  ],
  [
    'at-least',
    [
      'at least',
      'not less than',
      'min',
      'minimum',
      'min of',
      'minimum of',
      'not under',
      'not below',
      ...smaller.flatMap((it) => [`no ${it} than`, `not ${it} than`]),
    ],
  ],
  [
    'about',
    [
      'about',
      'around',
      'roughly',
      'approx',
      'approx .',
      'approximately',
      '~',
      'nearly',
      'almost',
      'somewhere around',
      'close to',
      'circa',
      'say',
      'near',
      'ish',
    ],
  ],
  ['less-than', ['under', 'below', 'less', ...smaller.map((it) => `${it} than`)]],
  ['more-than', ['over', 'above', ...bigger.map((it) => `${it} than`)]],
]
const trailing: readonly (readonly [Firmness, readonly string[]])[] = [
  [
    'at-most',
    [
      'max',
      'maximum',
      'at most',
      'at the most',
      'or less',
      'or under',
      'or below',
      'tops',
      'or fewer',
      'or narrower',
      'and under',
    ],
  ],
  ['at-least', ['min', 'minimum', 'at least', 'or more', 'or over', 'or better', 'and up']],
  [
    'about',
    ['or so', 'ish', '- ish', 'give or take', 'or thereabouts', 'more or less', 'roughly', 'approx', 'approximately'],
  ],
]
