// This file is about a price by the foot with what comes on top: “$31.50 a foot installed, plus $240 for each gate”.
import { yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import { tell } from './request-parts.ts'
import type { Heard, Tagged } from '../reader.ts'
import { wordsBefore, wordsBehind } from './around.ts'
import { lastFigures } from './last-answer.ts'
import { empty } from './plain-phrases.ts'
import { soldByIn } from './prices-said.ts'
import { stem } from './stems.ts'
const ofEach = /^\s*(?:for (?:each|every|a|the)|per|a|an|each|apiece)\s*(?:of (?:the )?)?(\p{L}+)?/u
const asksOther = /\b(which|cheaper|flat|versus|vs|better)\b/i

/** The length told or answered last at its price, and so many of something on top, each at its own; nothing where there is none of that. */
export function quoteIn(heard: Heard): Request | undefined {
  const { readings, said, job } = heard
  const prices = readings.filter((it) => it.per && /^(ft|m|yd)$/.test(it.per))
  const [price] = prices
  if (!price || prices.length > 1 || asksOther.test(said)) return undefined
  const extras = readings.filter((it) => it.quantity?.kind === 'money' && !it.per)
  const lengths = readings.filter((it) => it.quantity?.kind === 'length' && !it.section && !it.per)
  const counts = readings.filter((it) => it.bare?.d === 1n && !it.section)
  const [extra] = extras
  if (!extra || extras.length > 1 || lengths.length > 1 || counts.length > 1) return undefined
  if (readings.length > 2 + lengths.length + counts.length) return undefined
  const [, thing = ''] = ofEach.exec(wordsBehind(heard, extra)) ?? []
  const isEach = /^\s*(?:for (?:each|every)|per|each|apiece|a )/.test(wordsBehind(heard, extra))
  if (!isEach) return undefined
  const [count] = counts
  const isOf = (it: Tagged): boolean =>
    thing === '' ||
    `${wordsBefore(heard, it)} ${wordsBehind(heard, it)}`.split(/[^\p{L}]+/u).some((one) => stem(one) === stem(thing))
  if (count && !isOf(count)) return undefined
  const known = stem(thing) === 'gate' ? job.decisions.find((it) => it.word === 'gates' && it.at === yard) : undefined
  const [last] = lengths.length > 0 ? [] : lastFigures(heard, 'length')
  const length =
    lengths[0]?.tag ??
    last?.tag ??
    (job.decisions.some((it) => it.word === 'runLength' && it.at === yard) ? 'told.runLength' : undefined)
  return {
    ...empty,
    told: [
      tell('measurePrice', price.tag),
      ...soldByIn([{ reading: price, word: 'measurePrice', at: yard, score: 1 }], said),
      ...(length ? [tell('pricedLength', length)] : []),
      tell('extraEach', extra.tag),
      ...(count ? [tell('extraCount', count.tag)] : known ? [tell('extraCount', 'told.gates')] : []),
    ],
    wants: [{ word: 'quotedByMeasure', at: yard }],
    calculation: 'quote-by-length',
  }
}
