// This file is about the message as the reader of quantities sees it: one plain form, character for character, cut into tokens.
import { tableOf } from './table-of.ts'
import Fraction from 'fraction.js'

export interface Scanned {
  readonly text: string
  readonly start: number
  readonly end: number
  readonly sort: 'digits' | 'word' | 'sign'
  /** Nothing stands between it and the token before. */
  readonly glued: boolean
}

const vulgar = tableOf<string>({
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
})

/** The value of a one-character fraction. */
export const vulgarFraction = (sign: string): Fraction | undefined =>
  vulgar[sign] ? new Fraction(vulgar[sign]) : undefined

const plain = tableOf<string>({
  '’': "'",
  '‘': "'",
  '′': "'",
  ʹ: "'",
  '´': "'",
  '”': '"',
  '“': '"',
  '″': '"',
  ʺ: '"',
  '–': '-',
  '—': '-',
  '−': '-',
  '‐': '-',
  '‑': '-',
  '×': 'x',
  '⨯': 'x',
  '✕': 'x',
  '✖': 'x',
  ｘ: 'x',
  Ｘ: 'X',
  х: 'x',
  Х: 'X',
  '⁄': '/',
  '∕': '/',
  '／': '/',
  '٪': '%',
  '％': '%',
  '．': '.',
  '，': ',',
  '٫': '.',
  '٬': ',',
  º: '°',
  '˚': '°',
})

/** The same characters in their plainest form, one for one, so that offsets hold. */
export function plainForm(message: string): string {
  let text = ''
  for (const char of message) {
    // “1·8 m”: a point in the middle of the line, as it used to be printed.
    if (char === '·' && isDigit(text.at(-1)) && isDigit(message[text.length + 1])) {
      text += '.'
      continue
    }
    // “Ø350”: the sign says what is measured, and is none of the number.
    if (/[ØøΦ⌀∅]/.test(char) && /^\s?\d/.test(message.slice(text.length + 1, text.length + 3))) {
      text += ' '
      continue
    }
    if (char.length > 1) {
      text += '\u0000'.repeat(char.length)
      continue
    }
    const code = char.charCodeAt(0)
    if (code < 0x80) text += char
    else if (code >= 0xff10 && code <= 0xff19) text += String.fromCharCode(code - 0xff10 + 48)
    else if (code >= 0x660 && code <= 0x669) text += String.fromCharCode(code - 0x660 + 48)
    else if (code >= 0x6f0 && code <= 0x6f9) text += String.fromCharCode(code - 0x6f0 + 48)
    else if (code >= 0x966 && code <= 0x96f) text += String.fromCharCode(code - 0x966 + 48)
    else if (/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/.test(char)) text += ' '
    else text += plain[char] ?? char
  }
  return text
}

const isDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9'

/** Digits with their points and commas, words, and single signs. One pass, no going back. */
export function scan(text: string): Scanned[] {
  const tokens: Scanned[] = []
  let at = 0
  let glued = false
  while (at < text.length) {
    const char = text[at] as string
    const start = at
    if (/\s/.test(char)) {
      at++
      glued = false
      continue
    }
    let sort: Scanned['sort'] = 'sign'
    if (isDigit(char) || ((char === '.' || char === ',') && isDigit(text[at + 1]) && !isDigit(text[at - 1]))) {
      sort = 'digits'
      at++
      // A point or comma belongs to the number only with a digit on both sides: "12, and" ends at the comma.
      while (isDigit(text[at]) || ((text[at] === '.' || text[at] === ',') && isDigit(text[at + 1]))) at++
    } else if (/\p{L}/u.test(char)) {
      sort = 'word'
      at++
      while (at < text.length && /[\p{L}\p{M}]/u.test(text[at] as string)) at++
      // "isn't", "men's": an apostrophe inside a word belongs to it.
      if (text[at] === "'" && /[a-z]/i.test(text[at + 1] ?? '')) {
        at++
        while (at < text.length && /[a-z]/i.test(text[at] as string)) at++
      }
    } else at++
    tokens.push({ text: text.slice(start, at), start, end: at, sort, glued })
    glued = true
  }
  return tokens
}
