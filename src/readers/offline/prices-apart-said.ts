// This file is about two prices and what lies between: “the 8 footers are 12.30 and the tens 19.80, I need 14, how much more?”.
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { lastCount } from './last-answer.ts'
import { requestFor, tell } from './request-parts.ts'
import type { Token } from './stems.ts'

const asksApart =
  /\b(?:how much (?:more|extra|less|dearer|cheaper)|what(?:['’]?s| is| would be)? the (?:difference|extra)|difference (?:in (?:price|cost)|be|for)|extra (?:cost|for)|sav(?:e|ing)|cost (?:me )?(?:more|extra))\b/i
const asksOther = /\b(?:trips?|bags? instead|quote|per (?:foot|ft|m|metre|meter|yard)|tax|vat|discount|%)\b/i
const beforeWanted = /\b(?:need|needs|want|buy|buying|get|getting|for|take|taking|all|x|times|at)\s*(?:about\s*)?$/
const behindWanted =
  /^\s*(?:of (?:them|those|each|either)|posts?|boards?|rails?|pickets?|palings?|panels?|pieces|needed|altogether|in all|\?|\.|,|$)/

/** What the dearer of two prices comes to more, for as many as are needed. */
export function pricesApartIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, readings, job } = heard
  if (!asksApart.test(said) || asksOther.test(said) || job.asked.length > 0) return undefined
  const prices = readings.filter(
    (it) => !it.per && (it.quantity?.kind === 'money' || (mayBeMoney(it) && /^\d+\.\d\d$/.test(it.said))),
  )
  const [one, other, third] = prices
  if (!one || !other || third) return undefined
  const sizes = readings.filter(
    (it) => it.section !== undefined || /^(?:length|mass|volume)$/.test(it.quantity?.kind ?? ''),
  )
  const rest = readings.filter((it) => !prices.includes(it) && !sizes.includes(it) && !isNameOf(it, sizes, said))
  const [many, more] = rest
  if (more || (many && !isCount(many, heard))) return undefined
  const last = many ? undefined : lastCount(heard, message)
  const count = many?.tag ?? last?.tag
  return requestFor(
    'price-apart',
    [count ? 'moreForAll' : 'moreForEach'],
    [tell('onePrice', one.tag), tell('otherPrice', other.tag), ...(count ? [tell('piecesWanted', count)] : [])],
  )
}

/** “The 10s”: a length that was said before. */
const isNameOf = ({ said: digits, end, bare }: Tagged, sizes: readonly Tagged[], said: string): boolean =>
  bare !== null && (/^['’]?s\b/.test(said.slice(end)) || sizes.some((it) => it.said.startsWith(`${digits} `)))

const isCount = (it: Tagged, heard: Heard): boolean =>
  it.bare?.d === 1n &&
  !it.clock &&
  (beforeWanted.test(wordsBefore(heard, it)) || behindWanted.test(wordsBehind(heard, it)))
