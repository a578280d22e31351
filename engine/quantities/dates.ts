// This file is about dates and times of day: they hold digits, and are no quantities.
import type { Scanned } from './scan.ts'
import { unitAt } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const months =
  /^(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec|january|february|march|april|june|july|august|september|october|november|december)$/
/** 2026-11-25, Nov 25, 3 pm, 10:30: not quantities. */
export function isDateOrTime(tokens: readonly Scanned[], at: number): boolean {
  const token = tokens[at] as Scanned
  if (token.sort !== 'digits') return false
  const [before, after] = [lower(tokens[at - 1]), tokens[at + 1]]
  if (/^(am|pm)$/.test(lower(after)) || (after?.text === ':' && after.glued && tokens[at + 2]?.glued)) return true
  if (months.test(before) && /^\d{1,2}$/.test(token.text)) return true
  if (months.test(lower(after)) && /^\d{1,2}$/.test(token.text) && lower(after) !== 'may') return true
  if (
    /^(19|20)\d\d$/.test(token.text) &&
    (months.test(before) ||
      (/^(in|since)$/.test(before) && !unitAt(tokens, at + 1, false) && !/\w/.test(after?.text ?? '')))
  )
    return true
  const dashed = (i: number): boolean =>
    tokens[i]?.text === '-' &&
    tokens[i]?.glued === true &&
    tokens[i + 1]?.glued === true &&
    tokens[i + 1]?.sort === 'digits'
  if (/^(19|20)\d\d$/.test(token.text) && dashed(at + 1) && dashed(at + 3)) return true
  return (
    tokens[at - 1]?.text === '-' &&
    tokens[at - 1]?.glued === true &&
    token.glued &&
    [at - 2, at - 4].some((i) => /^(19|20)\d\d$/.test(tokens[i]?.text ?? ''))
  )
}
