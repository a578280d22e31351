// This file is about digits that belong to a name, and measure nothing: “No. 2 pine”, “16d nails”, “R403”, “M10”, “1/3 in the ground”.
import { numberAt } from './numbers.ts'
import type { Scanned } from './scan.ts'
import { sectionAt } from './sections.ts'
import { unitAt } from './unit-words.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** "No. 2 southern pine", "no 2 4x4", "grade 2", "No. 8 screws": a grade or size by its number; "no 2 in gaps" is a measure. */
const isGrade = (tokens: readonly Scanned[], at: number): boolean => {
  const hasDot = lower(tokens[at - 1]) === '.'
  const before = hasDot ? lower(tokens[at - 2]) : lower(tokens[at - 1])
  if (!(hasDot ? /^\d\d?$/ : /^[1-3]$/).test(tokens[at]?.text ?? '')) return false
  const next = tokens[at + 1]
  const isSize =
    next?.sort === 'digits'
      ? !sectionAt(tokens, at + 1)
      : unitAt(tokens, at + 1, false) !== null || (next?.glued === true && next.sort !== 'sign')
  return before === 'grade' || (before === 'no' && !isSize && !/^(or|more|gaps?|posts?|bays?|of)$/.test(lower(next)))
}

/** "16d nails", "10-penny", "9 gauge wire": what nails and wire are called by. */
const isOfTrade = (tokens: readonly Scanned[], at: number): boolean => {
  const isPenny = /^(2|3|4|5|6|8|10|12|16|20|30|40|60)$/.test(tokens[at]?.text ?? '')
  const from = tokens[at + 1]?.text === '-' && tokens[at + 1]?.glued ? at + 2 : at + 1
  const word = lower(tokens[from])
  if (isPenny && ((word === 'd' && tokens[from]?.glued && from === at + 1) || word === 'penny')) return true
  return /^\d\d?$/.test(tokens[at]?.text ?? '') && /^(gauge|gage|ga)$/.test(word)
}

/** "R403", "A153", "#8", "M10": digits that belong to a name. */
export const isPartOfName = (tokens: readonly Scanned[], at: number): boolean => {
  const [token, before] = [tokens[at] as Scanned, tokens[at - 1]]
  if (isGrade(tokens, at) || isOfTrade(tokens, at) || shareOfPost(tokens, at)) return true
  return (
    token.sort === 'digits' &&
    token.glued &&
    before !== undefined &&
    ((before.sort === 'word' && !/^x$/i.test(before.text) && unitAt(tokens, at - 1, false) === null) ||
      (before.text === 'M' && tokens[at - 2]?.sort !== 'digits') ||
      before.text === '#' ||
      before.text === ':' ||
      (before.text === '@' && before.glued) ||
      // "12 yd² in m2": the unit that is wanted, and no number.
      (/^[23]$/.test(token.text) &&
        /^(mm|cm|m|ft|yd|in)$/i.test(before.text) &&
        /^(in|to|into|as|per|many)$/.test(lower(tokens[at - 2]))))
  )
}
/** The token after the name. */
export const skipName = (tokens: readonly Scanned[], at: number): number => {
  const share = shareOfPost(tokens, at)
  if (share) return share
  while (at + 1 < tokens.length && (tokens[at + 1] as Scanned).glued && (tokens[at + 1] as Scanned).sort !== 'sign')
    at++
  return at + 1
}

/** The token after “1/3” in “1/3 in the ground”, “2/3 out of the ground”, “the 1/3 rule”: a share of the post, and no part of an inch. */
function shareOfPost(tokens: readonly Scanned[], at: number): number | undefined {
  const { sort, text } = tokens[at] ?? {}
  const isPart = sort === 'digits' && (tokens[at + 1]?.text === '/' || /[^\d.,]/.test(text ?? ''))
  const number = isPart ? numberAt(tokens, at, false) : null
  if (!number?.hasFraction || number.value.compare(1) >= 0) return undefined
  const words = tokens.slice(number.next, number.next + 4).map(lower)
  const isShare =
    ofGround.test(words.join(' ')) ||
    (number.value.d === 3n &&
      /^(?:- )?(?:rule|of (?:the |its |each |my |a )?(?:post|length|whole|total))\b/.test(words.join(' ')))
  return isShare ? number.next : undefined
}
const ofGround =
  /^(?:is |goes |of it |of the post )?(?:in|into|below|under|out of|above|down in) (?:the )?(?:ground|earth|soil|dirt|hole|grade)\b/
