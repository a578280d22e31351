// This file is about the one form that every rule sees: entities decoded, hidden characters gone, look-alikes folded.

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  frac12: '½',
  half: '½',
  frac14: '¼',
  frac34: '¾',
  frac18: '⅛',
  frac38: '⅜',
  frac58: '⅝',
  frac78: '⅞',
  frac13: '⅓',
  frac23: '⅔',
  times: '×',
  divide: '÷',
  plusmn: '±',
  minus: '−',
  ndash: '–',
  mdash: '—',
  deg: '°',
  sup2: '²',
  sup3: '³',
  sup1: '¹',
  permil: '‰',
  percnt: '%',
  num: '#',
  lcub: '{',
  rcub: '}',
  lbrace: '{',
  rbrace: '}',
  shy: '',
  zwj: '',
  zwnj: '',
  ensp: ' ',
  emsp: ' ',
  thinsp: ' ',
  hellip: '…',
  rsquo: '’',
  lsquo: '‘',
  ldquo: '“',
  rdquo: '”',
  prime: '′',
  Prime: '″',
  frasl: '⁄',
}

/** Decodes entities once; what is left of them afterwards is refused as markup. */
const decoded = (text: string): string =>
  text.replace(/&(#x[0-9a-f]{1,6}|#\d{1,7}|[a-z]{2,8}\d{0,2});/gi, (whole, name: string) => {
    if (name.startsWith('#')) {
      const code = Number.parseInt(/^#x/i.test(name) ? name.slice(2) : name.slice(1), /^#x/i.test(name) ? 16 : 10)
      return code > 0 && code <= 0x10ffff && !(code >= 0xd800 && code <= 0xdfff) ? String.fromCodePoint(code) : whole
    }
    return entities[name] ?? entities[name.toLowerCase()] ?? whole
  })

// Letters of other alphabets that look like Latin ones. They are refused as another script; folded, they are also seen as the words they imitate.
const alike: Readonly<Record<string, string>> = {
  а: 'a',
  в: 'b',
  с: 'c',
  е: 'e',
  ё: 'e',
  н: 'h',
  і: 'i',
  ї: 'i',
  ј: 'j',
  к: 'k',
  м: 'm',
  о: 'o',
  р: 'p',
  ѕ: 's',
  т: 't',
  у: 'y',
  х: 'x',
  ԁ: 'd',
  ɡ: 'g',
  ո: 'n',
  ս: 'u',
  ν: 'v',
  ω: 'w',
  α: 'a',
  ε: 'e',
  ι: 'i',
  κ: 'k',
  ο: 'o',
  ρ: 'p',
  τ: 't',
  υ: 'u',
  χ: 'x',
  η: 'n',
  ı: 'i',
  ſ: 's',
}

/** The form for the rules and for showing. */
export function normalForm(text: string): string {
  return (
    decoded(text)
      // Roman numerals of one character would turn into letters.
      .replace(/\p{Nl}/gu, '0')
      .normalize('NFKC')
      .replace(/\p{Cf}|[\ufe00-\ufe0f]|\u20e3|\u034f|\u115f|\u1160|\u3164/gu, '')
      .replace(/\r\n?/g, '\n')
      .replace(/[\u2028\u2029\v\f]/g, '\n')
      .replace(/[^\S\n]/g, ' ')
      // "sev**en**teen": emphasis inside a word hides it.
      .replace(/(?<=\p{L})[*_]{1,3}(?=\p{L})/gu, '')
  )
}

/** Lower case, marks off letters, look-alikes folded, quotes plain: for comparing words. */
export const folded = (text: string): string =>
  [...text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '')]
    .map((char) => alike[char] ?? char)
    .join('')
    .replace(/[’‘ʼ`´]/g, "'")
    .replace(/ß/g, 'ss')
    .replace(/ł/g, 'l')

/** "s e v e n" and "s-e-v-e-n": single letters run together, three or more. */
export const unspaced = (text: string): string =>
  text.replace(/(?<![\p{L}'])\p{L}(?:[ .·_-]{1,2}\p{L}(?![\p{L}'])){2,}/gu, (run) => run.replace(/[^\p{L}]/gu, ''))
