// This file is about figures in every spelling that a model could hide one in, for the guard's fuzz and its benchmark. Seeded, so that a run can be had again.

export type Chance = () => number

/** A small generator of chance (mulberry32). */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}
export const pick = <T>(list: readonly T[], chance: Chance): T => list[Math.floor(chance() * list.length)] as T

const units =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const tens = '- - twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')

export function inEnglish(value: number): string {
  if (value < 20) return units[value] as string
  if (value < 100) return `${tens[Math.floor(value / 10)]}${value % 10 ? `-${units[value % 10]}` : ''}`
  return `${units[Math.floor(value / 100)]} hundred${value % 100 ? ` and ${inEnglish(value % 100)}` : ''}`
}

function roman(value: number): string {
  let [rest, text] = [value, '']
  for (const [sign, worth] of [
    ['C', 100],
    ['XC', 90],
    ['L', 50],
    ['XL', 40],
    ['X', 10],
    ['IX', 9],
    ['V', 5],
    ['IV', 4],
    ['I', 1],
  ] as const)
    for (; rest >= worth; rest -= worth) text += sign
  return text
}

const digitsFrom = (value: number, zero: number): string =>
  [...String(value)].map((it) => String.fromCodePoint(zero + Number(it))).join('')
const into = (text: string, what: string, chance: Chance): string => {
  const at = 1 + Math.floor(chance() * (text.length - 1))
  return text.slice(0, at) + what + text.slice(at)
}
const looksLike: Readonly<Record<string, string>> = {
  a: 'а',
  e: 'е',
  o: 'о',
  i: 'і',
  s: 'ѕ',
  x: 'х',
  c: 'с',
  y: 'у',
  t: 'т',
  n: 'ո',
  u: 'υ',
  v: 'ν',
  h: 'һ',
}
const letterFor: Readonly<Record<string, string>> = { o: '0', e: '3', i: '1', s: '5', t: '7', l: '1' }
const swapped = (word: string, table: Readonly<Record<string, string>>, chance: Chance): string => {
  const at = [...word].flatMap((it, i) => (table[it] ? i : []))
  const one = pick(at.length > 0 ? at : [0], chance)
  return word.slice(0, one) + (table[word[one] as string] ?? '7') + word.slice(one + 1)
}
const misspelt = (word: string, chance: Chance): string => {
  const at = 1 + Math.floor(chance() * (word.length - 1))
  switch (Math.floor(chance() * 4)) {
    case 0:
      return word.slice(0, at) + word.slice(at + 1)
    case 1:
      return word.slice(0, at) + word[at] + word.slice(at)
    case 2:
      return word.slice(0, at) + pick([...'aeioukzv'], chance) + word.slice(at + 1)
    default:
      return word.slice(0, at - 1) + word[at] + word[at - 1] + word.slice(at + 1)
  }
}

const foreign =
  'deux trois quatre cinq sept huit neuf dix onze douze quinze vingt trente cent zwei drei vier fünf sechs sieben acht neun zehn zwölf zwanzig hundert dos tres cuatro cinco siete ocho nueve diez doce veinte cien due quattro sei sette otto dieci dodici venti dois quatro sete dez doze twee vijf zes zeven negen tien twaalf dwa trzy cztery pięć sześć siedem två fem åtta tolv kolme viisi iki üç beş ichi yon nana eins ein_paar tatlo tano moja mbili'.split(
    ' ',
  )
const amounts = [
  'a dozen',
  'two dozen',
  'half a dozen',
  'a couple of',
  'a pair of',
  'twice',
  'thrice',
  'double',
  'triple',
  'treble',
  'tenfold',
  'three-fold',
  'half again',
  'half',
  'a third',
  'two thirds',
  'a quarter',
  'three-quarters',
  'five-eighths',
  'one and a half',
  'the second',
  'the tenth',
  'twenty-first',
  'umpteen',
  'a score of',
  'a gross of',
  'a trio of',
  'dozens of',
  'a grand',
  'one post',
  'one more bag',
  'a single picket',
  'every other picket',
  'a hundred',
  'a thousand',
  'hundreds of',
  'a foot',
  'an inch',
  'a few inches',
  'several feet',
  'some yards',
  'a yard of gravel',
  'an hour',
  'a few minutes',
  'a week',
  'a good foot',
  'a fortnight',
  'overnight',
  'daily',
  'weekly',
  'until tomorrow',
  'by noon',
  'once a week',
  'a pound',
  'a gallon',
  'a mile',
  'a metre',
  "a pencil's width",
  "a hand's breadth",
  'baker’s dozen',
  'two-by-four',
  'a decade',
  'a century',
]
const signs = [
  '🔟',
  '⚅',
  '⚂',
  '⠼⠃',
  '½',
  '¾',
  '⅝',
  '⅔',
  '¹⁷',
  '₁₇',
  '①⑦',
  '⑰',
  '⒄',
  '⒘',
  '❼',
  '➆',
  'Ⅻ',
  'ⅹⅶ',
  '十七',
  '七',
  '二十',
  '百',
  '拾',
  '〇',
  '1️⃣7️⃣',
  '5 %',
  '5‰',
  '🯱🯷',
  '𝟏𝟕',
  '𝟙𝟟',
  '𝟷',
  '๑๗',
  '၁',
  '၇',
  '௧௭',
  '༡༧',
  '𐒡',
  '🂡',
  '🀇',
]
const slots = [
  '{{r9.bags}}',
  '{{u9}}',
  '{{r1.bags',
  'r1.bags}}',
  '{r1.bags}',
  '{{__proto__}}',
  '{{constructor}}',
  '{{r1.bags}}7',
  '7{{r1.bags}}',
  '{{r1.bags}}{{r1.bags}}',
  '{{r1.bags}}-{{r1.bags}}',
  '~{{r1.bags}}',
  '{{ r0.bags }}',
  '{{{r1.bags}}}',
  '[r1.bags]',
]

const spellings: readonly ((value: number, chance: Chance) => string)[] = [
  (value) => String(value),
  (value, chance) => `${value}${pick(['.5', ',5', '/16', '″', '′', ' in', '"', 'x4', '-ish', '%', 'th', 'm'], chance)}`,
  (value, chance) => `${pick(['#', '$', '€', '≈', '~', '±', '×', '(', '>', '≤', '+', '-', '='], chance)}${value}`,
  (value) => [...String(value)].join(' '),
  (value, chance) =>
    digitsFrom(
      value,
      pick(
        [0x660, 0x6f0, 0x966, 0x9e6, 0xe50, 0xff10, 0x1d7ce, 0x1d7d8, 0x1d7e2, 0x1d7ec, 0x1d7f6, 0x17e0, 0x1040],
        chance,
      ),
    ),
  (value) => [...String(value)].map((it) => `&#${it.charCodeAt(0)};`).join(''),
  (value) => [...String(value)].map((it) => `&#x${it.charCodeAt(0).toString(16)};`).join(''),
  (_, chance) => pick(['&frac12;', '&frac34;', '&sup2;', '&half;', '&frac58;', '&amp;frac12;', '&#189;'], chance),
  (value) => inEnglish(value),
  (value) => inEnglish(value).toUpperCase(),
  (value) => inEnglish(value).replace(/[ -]/g, ''),
  (value) => inEnglish(value).replace(/^./, (it) => it.toUpperCase()),
  (value) => [...inEnglish(value).replace(/[ -]/g, '')].join(' '),
  (value, chance) =>
    [...inEnglish(value).replace(/[ -]/g, '')].join(pick(['-', '.', '·', '_', '*', '~', '/', '​', ' - ', '’'], chance)),
  (value, chance) =>
    into(
      inEnglish(value),
      pick(
        [
          '\u200b',
          '\u00ad',
          '\u2060',
          '\ufeff',
          '\u034f',
          '\u200d',
          '\ufe0f',
          '\u0301',
          '\u0336',
          '**',
          '*',
          '_',
          '***',
          ' ',
          '-',
          '\u3164',
          '\u180e',
          '&shy;',
          '&zwj;',
          '<b>',
          '`',
          '\\',
        ],
        chance,
      ),
      chance,
    ),
  (value, chance) => swapped(inEnglish(value), looksLike, chance),
  (value, chance) => swapped(inEnglish(value), letterFor, chance),
  (value, chance) => misspelt(inEnglish(value), chance),
  (value) =>
    [...inEnglish(value)]
      .map((it) => (/[a-z]/.test(it) ? String.fromCodePoint(it.charCodeAt(0) - 97 + 0x1d41a) : it))
      .join(''),
  (value) =>
    [...inEnglish(value)]
      .map((it) => (/[a-z]/.test(it) ? String.fromCodePoint(it.charCodeAt(0) - 97 + 0xff41) : it))
      .join(''),
  (value) =>
    [...inEnglish(value)]
      .map((it) => (/[a-z]/.test(it) ? String.fromCodePoint(it.charCodeAt(0) - 97 + 0x24d0) : it))
      .join(''),
  (value) => [...inEnglish(value)].reverse().join(''),
  (value) => `**${inEnglish(value)}**`,
  (value) => `*${value}*`,
  (value) => `__${inEnglish(value)}__ posts`,
  (value) => `${inEnglish(value)}-foot`,
  (value) => roman(Math.max(2, value === 5 || value === 10 || value === 50 || value === 100 ? value + 1 : value)),
  (_, chance) => pick(foreign, chance).replace('_', ' '),
  (_, chance) => pick(amounts, chance),
  (_, chance) => pick(signs, chance),
  (_, chance) => pick(slots, chance),
]

/** A figure that no engine gave, in some spelling. */
export const disguised = (chance: Chance): string => pick(spellings, chance)(2 + Math.floor(chance() * 190), chance)

export interface Planted {
  readonly text: string
  /** The rest of it, which may be shown. */
  readonly rest: string
}

/** A figure in a sentence of some carrier, at any gap, in any of the forms a text can take. The figure's piece must not be shown. */
export function planted(carriers: readonly string[], figure: string, chance: Chance): Planted {
  const other = 'Keep it level.'
  const words = pick(carriers, chance).split(' ')
  words.splice(Math.floor(chance() * words.length), 0, figure)
  const bad = words.join(' ')
  switch (Math.floor(chance() * 9)) {
    case 0:
      return { text: `- ${other}\n- ${bad}`, rest: `- ${other}` }
    case 1:
      return { text: `1. ${other}\n2. ${bad}`, rest: `1. ${other}` }
    case 2:
      return {
        text: `| what | where |\n|---|---|\n| ${bad.replaceAll('|', '')} | here |`,
        rest: '| what | where |\n|---|---|',
      }
    case 3:
      return { text: `| what | where |\n|---|---|\n| posts | ${figure} |`, rest: '| what | where |\n|---|---|' }
    case 4:
      return { text: `## ${bad}\n\n${other}`, rest: other }
    case 5:
      return { text: `**${bad}**\n\n${other}`, rest: other }
    case 6:
      return { text: `${other}\n\n- ${other}\n  - ${bad}`, rest: `${other}\n\n- ${other}` }
    case 7:
      return { text: words.join(chance() < 0.5 ? '\n' : ' '), rest: '' }
    default:
      return { text: `${other} ${bad}`, rest: other }
  }
}
