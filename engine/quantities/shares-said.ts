// This file is about shares that stand without a percent sign: “half of it is open”, “a quarter in the ground”. None of them is a part of an inch.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import { type NumberRead, numberAt } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { tableOf } from './table-of.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const ofFace =
  /^(?:of (?:it|that|this|the|my|each|every|them)(?: (?:whole|panel|fence|face|bay|section|area|front|wall|side))?(?: (?:is|are|being|will be|would be|as))?(?: (?:just|only|all|about))? )?(?:open\b|openings?\b|air\b|empty\b|solid\b|see[- ]through)/
/** “Two thirds of it is wood”: only where it is said of something. */
const ofWood =
  /^of (?:it|that|this|them|(?:the|my|each|every) (?:fence|face|bay|panel|section|area))(?: (?:is|are|being|as))?(?: (?:just|only|all))? (?:wood|timber|boards?|pickets?|gaps?|holes?|space|nothing|daylight)\b/
/** “I count three quarters of it.” */
const ofItAlone = /^of (?:it|them) [.,;:?!]/
const inGround =
  /^(?:of (?:it|the post|each post|its length|the length|them|the whole post) )?(?:is |goes |go |being )?(?:in|into|under|below) (?:the )?(?:ground|earth|soil|dirt)\b/

/** The part of a face that is open or solid, or of a post that is in the ground; a third of a post is the rule of the trade, and is read as that. */
export function shareSaid(tokens: readonly Scanned[], at: number): Found | null {
  if (!mayBegin(tokens, at)) return null
  const isArticle = /^an?$/.test(lower(tokens[at])) && /^(half|quarter|third|fifth|sixth)$/.test(lower(tokens[at + 1]))
  const number: NumberRead | null = isArticle
    ? partOf(tokens, at + 1)
    : (partOf(tokens, at) ?? numberAt(tokens, at, false))
  if (!number?.hasFraction || number.value.compare(1) >= 0) return null
  const words = tokens
    .slice(number.next, number.next + 9)
    .map(lower)
    .join(' ')
  // “3/4 openings”, “1/2 air gap” are parts of an inch.
  const isOfFace =
    ofWood.test(words) ||
    (tokens[at]?.sort !== 'digits' && ofItAlone.test(words)) ||
    (ofFace.test(words) && (tokens[at]?.sort !== 'digits' || words.startsWith('of ')))
  const isShare = isOfFace || (inGround.test(words) && number.value.d !== 3n)
  return isShare
    ? { next: number.next, quantity: quantity(number.value.mul(100), 'percent'), bare: null, note: 'read as a share' }
    : null
}

/** Most words begin no share: they are not looked at further. */
const mayBegin = (tokens: readonly Scanned[], at: number): boolean => {
  const [word, next] = [lower(tokens[at]), lower(tokens[at + 1])]
  return (
    parts[word] !== undefined ||
    (/^(an?|one|two|three)$/.test(word) &&
      (parts[next] !== undefined || /^(?:quarters|thirds|fifths|-)$/.test(next))) ||
    (tokens[at]?.sort === 'digits' && (next === '/' || /[^\d.,]/.test(word)))
  )
}

const parts = tableOf<number>({ half: 2, third: 3, quarter: 4, fifth: 5, sixth: 6 })
function partOf(tokens: readonly Scanned[], at: number): NumberRead | null {
  const into = parts[lower(tokens[at])]
  return into === undefined ? null : { value: new Fraction(1, into), next: at + 1, spoken: true, hasFraction: true }
}
