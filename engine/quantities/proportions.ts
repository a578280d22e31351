// This file is about proportions: "1:2:3", "1 : 1½ : 3", "1-2-3 mix", the parts of a mix in their order.
import type Fraction from 'fraction.js'
import { numberAt } from './numbers.ts'
import type { Scanned } from './scan.ts'

/** One term of a proportion: its tokens, and its number. */
export interface Term {
  readonly from: number
  readonly next: number
  readonly value: Fraction
}

// With two terms it may be a slope, a scale or the hour; with many, it is no mix.
const fewestTerms = 3
const mostTerms = 6

/** The terms of the proportion that begins at a token; null when none does. */
export function proportionAt(tokens: readonly Scanned[], at: number): Term[] | null {
  if (tokens[at]?.glued && tokens[at - 1]?.sort !== 'sign') return null
  // Inside a row of numbers none begins: the whole row was looked at from its start.
  if (/^[:-]$/.test(tokens[at - 1]?.text ?? '') && tokens[at - 2]?.sort === 'digits') return null
  const byColons = termsAt(tokens, at, ':')
  if (byColons.length >= fewestTerms) return isClock(tokens, byColons) ? null : byColons
  const byHyphens = termsAt(tokens, at, '-', fewestTerms + 1)
  return byHyphens.length === fewestTerms && isOfMix(tokens, byHyphens) ? byHyphens : null
}

function termsAt(tokens: readonly Scanned[], at: number, joint: ':' | '-', most = Infinity): Term[] {
  const terms: Term[] = []
  for (let from = at; ; ) {
    const number = numberAt(tokens, from, false)
    if (!number || number.spoken || number.feet || number.note) return terms
    terms.push({ from, next: number.next, value: number.value })
    if (tokens[number.next]?.text !== joint || terms.length >= most) return terms
    if (terms.length === mostTerms) return []
    from = number.next + 1
  }
}

/** 10:30:15 tells the hour, minute and second. */
const isClock = (tokens: readonly Scanned[], terms: readonly Term[]): boolean =>
  terms.slice(1).every(({ from, next }) => next === from + 1 && /^\d\d$/.test(tokens[from]?.text ?? ''))

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''
const mixed = /^(mix|mixes|mixed|mixture|concrete|ratio|parts|proportions?)$/

/** Hyphens join many things, telephone numbers among them: small numbers, tight together, with the mix named beside them. */
function isOfMix(tokens: readonly Scanned[], terms: readonly Term[]): boolean {
  const [first, last] = [terms[0] as Term, terms.at(-1) as Term]
  const tight = tokens.slice(first.from + 1, last.next).every((token) => token.glued)
  const before = [1, 2, 3].map((back) => lower(tokens[first.from - back]))
  return (
    tight &&
    terms.every(({ value }) => value.compare(20) < 0) &&
    (mixed.test(lower(tokens[last.next])) ||
      mixed.test(before[0] as string) ||
      (/^(of|at|is|a)$/.test(before[0] as string) && before.slice(1).some((word) => mixed.test(word))))
  )
}
