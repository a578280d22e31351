// This file is about a size that is put right: “no sorry, I said 42, it's 38 wide”. The old figure says which word is meant.
import { isQuantity, type Quantity, toNumber, unitNamed, yard } from '../../../../engine/index.ts'
import type { Request } from '../../../request.ts'
import type { Heard, Tagged } from '../../reader.ts'
import { tell } from '../request-parts.ts'
import { isLength } from './spots.ts'

const wrong =
  /\b(?:sorry|i said|i told you|said|wrong|meant|mistake|misread|mismeasured|oops|whoops|actually|scratch that|correction|should(?:'ve| have)? (?:be|been|said)|not)\b/i

/** Two sizes, one of them told before of one word alone, and words that say it was wrong: the other is that word. */
export function putRightIn({ said, readings, job }: Heard): Request | undefined {
  const [one, two, more] = readings
  if (!one || !two || more || job.wanted.length === 0 || !wrong.test(said) || said.includes('?')) return undefined
  if (![one, two].every(isLength) || said.split(/\s+/).length > 20) return undefined
  const of = (it: Tagged) =>
    job.decisions.filter(({ value, at }) => at === yard && isQuantity(value) && isSame(it, value))
  const [old, fresh] = of(one).length > 0 ? [one, two] : [two, one]
  const [word, other] = of(old)
  if (!word || other || of(fresh).length > 0) return undefined
  // “It's 38, not 42”, “I said 42, it's 38”: the old one stands behind what takes it back.
  const before = said.slice(0, old.start).toLowerCase()
  if (
    !/(?:\bsaid|\bnot|\binstead of|\brather than|\btold you|\bfrom|\bsaid it (?:was|is)|\bput|\bhad|\bwrote|\btyped)(?:\s+(?:it|that|the|was|is|a|an|it's))*\s*$/.test(
      before,
    )
  )
    return undefined
  return {
    told: [tell(word.word, fresh.tag)],
    wants: [],
    calculation: null,
    confirms: [],
    notes: [],
    declines: [],
  }
}

const isSame = ({ quantity, bare }: Tagged, value: Quantity): boolean =>
  value.kind === 'length' &&
  Math.abs(
    quantity
      ? toNumber(quantity.amount) - toNumber(value.amount)
      : (bare?.valueOf() ?? Number.NaN) - toNumber(value.amount) / toNumber(unitNamed(value.unit).size),
  ) < 1e-9
