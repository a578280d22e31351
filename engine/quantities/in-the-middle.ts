// This file is about “10 each side, 15 in middle”: the “in” tells where, and is no inch; but “a 2 in middle rail” is two inches.
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** Whether “middle” stands there, and the phrase ends with it. */
export const isInMiddle = (tokens: readonly Scanned[], at: number): boolean =>
  /^(middle|centre|center)$/.test(lower(tokens[at])) &&
  (tokens[at + 1]?.sort !== 'word' || /^(and|how|what|so|each|with)$/.test(lower(tokens[at + 1])))
