// This file is about quotations: the words of the message that somebody repeats, found there whole, or not at all.
import type { Tagged } from '../readers/reader.ts'
import { isNumberWord } from './words.ts'

export interface Span {
  readonly start: number
  readonly end: number
}

/** Lower case, plain quotes, one space for several; with where each character stands in the message. */
function flat(text: string): { readonly text: string; readonly at: readonly number[] } {
  let plain = ''
  const at: number[] = []
  for (let i = 0; i < text.length; i++) {
    const char = text[i] as string
    const one = /\s/.test(char) ? ' ' : /[‘’]/.test(char) ? "'" : /[“”]/.test(char) ? '"' : char.toLowerCase()
    if (one === ' ' && (plain === '' || plain.endsWith(' '))) continue
    plain += one.length === 1 ? one : char
    at.push(i)
  }
  return { text: plain, at }
}

const inWord = /[\p{L}\p{M}\p{N}_]/u

/** Where the message repeats a quotation in whole words and whole quantities. */
export function spansOf(said: string, quote: string, readings: readonly Tagged[]): Span[] {
  const [message, wanted] = [flat(said), flat(quote).text.trim()]
  if (wanted === '') return []
  const whole = [...readings, ...numbersIn(said)]
  const found: Span[] = []
  for (let from = message.text.indexOf(wanted); from >= 0; from = message.text.indexOf(wanted, from + 1)) {
    const start = message.at[from] as number
    const end = (message.at[from + wanted.length - 1] as number) + 1
    if (isBound(said, start) && isBound(said, end) && whole.every((it) => isWhole(it, start, end)))
      found.push({ start, end })
    if (found.length >= 20) break
  }
  return found
}

/** The person's own words for a quotation; nothing where the message does not hold it whole. */
export function wordsOfMessage(said: string, quote: string, readings: readonly Tagged[]): string | undefined {
  const [span] = spansOf(said, quote, readings)
  return span && said.slice(span.start, span.end)
}

/** Whether a word does not run on over this place. */
const isBound = (said: string, at: number): boolean =>
  at === 0 || at === said.length || !(inWord.test(said[at - 1] as string) && inWord.test(said[at] as string))

const isWhole = (it: Span, start: number, end: number): boolean =>
  it.end <= start || it.start >= end || (it.start >= start && it.end <= end)

/**
 * Numbers as they stand, with all that is joined to them: `3 1/2`, `1,250`, `7' 10 3/8"`, `12-15`, `8 or ten`.
 * What the program read as one quantity is whole besides; this holds for what it did not read.
 */
function numbersIn(said: string): Span[] {
  const spans: { start: number; end: number }[] = []
  for (const { 0: text, index } of said.matchAll(/[\p{L}\p{M}]+|[\p{N}][\p{N}.,/⁄:'’′″"×%°#x*-]*[\p{L}]*/gu)) {
    const isNumber = /^\p{N}/u.test(text) || isNumberWord(text)
    if (!isNumber) continue
    const end = index + text.replace(/[.,:;]+$/, '').length
    const last = spans.at(-1)
    const between = last && said.slice(last.end, index)
    if (last && between !== undefined && isJoint(between)) last.end = end
    else spans.push({ start: index, end })
  }
  return spans
}

const isJoint = (between: string): boolean =>
  between.length <= 12 &&
  /^(?:\s*[-–—/⁄×x+&.'’′″"]?\s*|,|\s+(?:and|and a|a|to|or|by|of a|x|of|over|thru|through)\s+)$/i.test(between)
