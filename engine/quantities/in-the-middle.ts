// This file is about the small word “in” that is no inch: “15 in middle”, “650 in ground”, “cut each one in half”.
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const inPlace = /^(middle|centre|center)$/
const partsOf = /^(half|halves|thirds|quarters|fourths)$/
const isAPart = /^(lap|lapped|round|rounds|bricks?|inch|inches)$/
/** Whether what stands there is a place, or parts of a cut; but “a 2 in middle rail” and “2 in half-rounds” are two inches. */
export function isInMiddle(tokens: readonly Scanned[], at: number): boolean {
  const [word, next] = [lower(tokens[at]), lower(tokens[at + 1])]
  if (partsOf.test(word)) return !isAPart.test(next === '-' ? lower(tokens[at + 2]) : next)
  if (word === 'two') return tokens.length === at + 1 || !/^(\p{L}|\d)/u.test(next)
  if (word === 'ground') return !/^(clearance|clear|gap|level|cover|-)$/.test(next)
  return inPlace.test(word) && (tokens[at + 1]?.sort !== 'word' || /^(and|how|what|so|each|with)$/.test(next))
}
