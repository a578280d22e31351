// This file is about how firmly a quantity was said: at most, about, or just so.
import type { Found } from './found.ts'
import type { Firmness } from './reading.ts'
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** How firmly it was said: the words just before, or just after. */
export function firmnessOf(tokens: readonly Scanned[], at: number, found: Found): Firmness {
  if (found.high ?? found.bareHigh) return 'range'
  // "8+ ft", "8 ft+"; "8 ft + 3 ft" is a sum.
  const [inside, behind] = [tokens.slice(at, found.next), tokens[found.next]]
  const isSum = tokens[found.next + 1]?.sort === 'digits'
  if (inside.some((it) => it.text === '+') || (behind?.text === '+' && behind.glued && !isSum)) return 'at-least'
  const before = ` ${tokens
    .slice(Math.max(0, at - 5), at)
    .map(lower)
    .join(' ')} `
  const after = ` ${tokens
    .slice(found.next, found.next + 4)
    .map(lower)
    .join(' ')} `
  // “< 5 ft”, but no end of “->” or “</td>”; “max. 5 ft”, but not “8 ft max. 5 posts”.
  const [mark, lead] = [tokens[at - 1], tokens[at - 3]]
  if (/^[<>]$/.test(mark?.text ?? '') && !mark?.glued) return mark?.text === '<' ? 'less-than' : 'more-than'
  if (mark?.text === '.' && (lead === undefined || lead.sort === 'sign')) {
    if (/^max$/.test(lower(tokens[at - 2]))) return 'at-most'
    if (/^min$/.test(lower(tokens[at - 2]))) return 'at-least'
  }
  if (noneOver.test(before)) return 'at-most'
  if (noneUnder.test(before)) return 'at-least'
  for (const [firmness, words] of leading) if (words.some((it) => before.endsWith(it))) return firmness
  for (const [firmness, words] of trailing) if (words.some((it) => after.startsWith(it))) return firmness
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
/** Whole words, since they are looked for in a row of them: a space on either side. */
const apart = (table: readonly (readonly [Firmness, readonly string[]])[]): typeof table =>
  table.map(([firmness, words]) => [firmness, words.map((it) => ` ${it} `)])

const leading = apart([
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
      '≤',
      '< =',
      'not to exceed',
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
      'min :',
      '≥',
      '> =',
      'upwards of',
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
      '≈',
      'ca',
      'ca .',
      'abt',
      'aprox',
      'approximatly',
      'more or less',
      'something like',
      'in the region of',
      'in the neighborhood of',
      'in the neighbourhood of',
    ],
  ],
  ['less-than', ['under', 'below', 'less', 'shy of', ...smaller.map((it) => `${it} than`)]],
  ['more-than', ['over', 'above', 'exceeding', ...bigger.map((it) => `${it} than`)]],
])
const trailing = apart([
  [
    'at-most',
    [
      'max',
      'maximum',
      '( max )',
      'at most',
      'at the most',
      'or under',
      'or below',
      'tops',
      ...smaller.map((it) => `or ${it}`),
      'and under',
    ],
  ],
  [
    'at-least',
    ['min', 'minimum', 'at least', '( min )', 'or over', 'or better', 'and up', ...bigger.map((it) => `or ${it}`)],
  ],
  [
    'about',
    [
      'or so',
      'ish',
      '- ish',
      'give or take',
      ', give or take',
      'or thereabouts',
      'more or less',
      ', more or less',
      'roughly',
      'approx',
      'approximately',
    ],
  ],
])
