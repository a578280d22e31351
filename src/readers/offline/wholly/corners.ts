// This file is about squaring a corner: “1,800 one leg, 2,400 the other”, “the tape reads 3,040”, “how far do I swing the end of the 4 m string”.
import { isList, toNumber, type Quantity, unitNamed } from '../../../../engine/index.ts'
import type { Request } from '../../../request.ts'
import type { Heard, Tagged } from '../../reader.ts'
import { requestFor, tell } from '../request-parts.ts'
import { again, isAbout, isIdle, isLength, spotsOf } from './spots.ts'

const measured =
  /(?:tape|diag(?:onal)?s?|hypotenuse|across|reads?|reading|measur\w+|gett?ing|got|get|comes?(?: out)?(?: to| at)?|came(?: out)?(?: to| at)?|it's|its|is)(?: says?| reads?| is| at| to| about| out|:|=|,)*\s*$/

/** The request of a message about a corner that is to be square; nothing for any other. */
export function cornerIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (/\b(?:gates?|leaf|frame|brace|rectangle|four corners|both diagonals|bays?|area|pickets?|rails?)\b/i.test(said))
    return undefined
  // “Over or under 90” is the corner, and no size.
  const spots = spotsOf(heard).filter(
    (it) => !isIdle(it) && !(it.reading.bare?.equals(90) && /\b(?:under|over|from|off|of|than)\s*$/.test(it.before)),
  )
  if (!spots.every((it) => isLength(it.reading))) return undefined
  const goesOn = isAbout(heard, 'square-corner')
  const [one, two, more] = spots
  const asksDegrees = /\b(?:degrees?|angle|how (?:far|much) (?:out|off)|out of square)\b/i.test(said)
  const asksMove = /\b(?:swing|move|shift|slide|push|pull|nudge|fix)\b/i.test(said)
  // “What angle is the corner?” wants the whole of it, “how far out” what it lacks.
  const asksWhole = /\b(?:what|which) angle\b|\bangle (?:is|of|at|does|has) (?:the|my|that|this) corner\b/i.test(said)
  const asksOut = /\b(?:out|off)\b/i.test(said)
  const wants = asksMove ? ['moveStake'] : asksDegrees && !(asksWhole && !asksOut) ? ['outOfSquare'] : undefined
  if (goesOn && one && !two) {
    const named = legNamed(heard, one.reading, one.after)
    if (named && asksMove) return requestFor('square-corner', ['moveStake'], named)
    return measured.test(one.before) && !/\b(?:should|needs? to) be\b/i.test(one.before)
      ? requestFor('square-corner', wants ?? ['cornerAngle'], [tell('measuredDiagonal', one.reading.tag)])
      : undefined
  }
  const isDiagonal =
    /\bdiag\w*|\bhypotenuse\b|\bcorner to corner\b/i.test(said) &&
    !/\b(?:is|reads?|got|measur\w+|comes?)\s+\S*\d/i.test(said)
  if (goesOn && one && two && !more && isDiagonal)
    return requestFor('square-corner', ['squareAcross'], [tell('legs', one.reading.tag), tell('legs', two.reading.tag)])
  if (!one || !two || more || !/\bsquar\w+|\bcorner\b|\blegs?\b|\b3[- ]?4[- ]?5\b/i.test(said)) return undefined
  if (!/\bdiag\w*|\bhypotenuse\b|\bacross\b|\bcorner to corner\b/i.test(said)) return undefined
  // “The diagonal comes out at 15 ft 2” measures one of them.
  if ([one, two].some((it) => /(?:diag\w*|hypotenuse|across|tape)[^,]*$/.test(it.before))) return undefined
  if (
    !/\blegs?\b|\bone (?:way|side|leg|direction)\b|\bother\b|\bsides?\b|\bstrings?\b|\bby\b|\bx\b|\bi (?:have|got|measured)\b/i.test(
      said,
    )
  )
    return undefined
  return requestFor('square-corner', ['squareAcross'], [tell('legs', one.reading.tag), tell('legs', two.reading.tag)])
}

/** “The 4 m string”: one of the two sides, and no new size. What was told stands; the side that is named is the one that swings. */
function legNamed({ job }: Heard, { quantity, bare }: Tagged, after: string): ReturnType<typeof again>[] | undefined {
  const legs = job.decisions.find((it) => it.word === 'legs')?.value
  if (!isList(legs) || legs.length !== 2 || !/^\s*(?:string|leg|line|side|one\b|stake|end|run|arm|tape)/.test(after))
    return undefined
  if (!job.decisions.some((it) => it.word === 'measuredDiagonal')) return undefined
  const isIt = (leg: Quantity): boolean =>
    quantity
      ? Math.abs(toNumber(quantity.amount) - toNumber(leg.amount)) < 1e-9
      : bare !== null && Math.abs(toNumber(leg.amount) / toNumber(unitNamed(leg.unit).size) - bare.valueOf()) < 1e-9
  const at = (legs as readonly Quantity[]).findIndex(isIt)
  if (at < 0) return undefined
  return [again('legs', `job.legs.${1 - at}`), again('legs', `job.legs.${at}`), again('measuredDiagonal')]
}
