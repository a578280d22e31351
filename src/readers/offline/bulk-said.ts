// This file is about stuff by the load: “42 a yard and 65 delivery, they only sell by the half yard”, “the truck has a 2 yd minimum, or bags at 5.98”.
import { yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import { tell } from './request-parts.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { lastFigures } from './last-answer.ts'
import { empty } from './plain-phrases.ts'
import { soldByIn } from './prices-said.ts'

const ofVolume = /^(yd|yd3|m|m3|ft3)$/
const isLeast = /\b(minimum|min|least)\b/
const beforeStep = /\b(by the|in|steps? of|lots? of|multiples of|increments of|to the nearest|by|does|do|only)\s*$/
const behindStep = /^\s*(lots?|steps?|increments?|multiples|batches|at a time)\b/
const ofBags = /\b(bags?|sacks?)\b/
const ofWaste = /\b(waste|wastage|spare|spill\w*|extra|over|allow\w*)\b/
const ofDelivery = /\b(deliver\w*|drop|haulage|cartage|freight)\b/

/** The request of a message about a load, or one that goes on with the last. */
export function loadIn(heard: Heard): Request | undefined {
  const { readings, job, said } = heard
  const goesOn = job.named === 'bulk-order'
  if (readings.length === 0 || readings.length > 9) return undefined
  const all = readings.map((it) => ({ it, word: wordOf(it, heard) }))
  if (all.some(({ word }) => word === undefined)) return undefined
  const found = (word: string): Tagged | undefined => all.find((one) => one.word === word)?.it
  if (new Set(all.map(({ word }) => word)).size < all.length) return undefined
  const [price, step, least, needed] = [
    found('measurePrice'),
    found('bulkStep'),
    found('leastLoad'),
    found('bulkVolume'),
  ]
  const [last] = goesOn ? [] : lastFigures(heard, 'volume')
  if (!needed && !last && !goesOn) return undefined
  // “2.5 m³ of gravel at £38 per m³” is plainly its price.
  if (needed && !step && !least && !found('deliveryPrice') && !found('bagPriced')) return undefined
  // Ready mix has a sum of its own, with its weight and the bags instead.
  if (needed && !price && !least && /\bready[- ]?mix\b/i.test(said)) return undefined
  if (!price && !step && !least && !(goesOn && (found('bulkWaste') || found('bagPriced') || found('deliveryPrice'))))
    return undefined
  const hasPrice = price !== undefined || job.decisions.some((it) => goesOn && it.word === 'measurePrice')
  const hasBags = found('bagPriced') !== undefined || job.decisions.some((it) => goesOn && it.word === 'bagPriced')
  const wants = hasPrice && hasBags ? 'cheaperSupply' : hasPrice ? 'bulkCost' : 'orderedVolume'
  return {
    ...empty,
    told: [
      ...(!needed && last ? [tell('bulkVolume', last.tag)] : []),
      ...all.map(({ it, word }) => tell(word as string, it.tag)),
      ...(price ? soldByIn([{ reading: price, word: 'measurePrice', at: yard, score: 1 }], said) : []),
    ],
    wants: [{ word: wants, at: yard }],
    calculation: 'bulk-order',
  }
}

/** What a quantity is of a load; undefined where it is nothing of one. */
function wordOf(it: Tagged, heard: Heard): string | undefined {
  const [before, behind] = [wordsBefore(heard, it), wordsBehind(heard, it)]
  const near = `${before.split(/[,;]/).at(-1) ?? ''} ${behind.split(/[,;]/)[0] ?? ''}`
  if (it.per) return ofVolume.test(it.per) ? 'measurePrice' : undefined
  if (it.quantity?.kind === 'percent') return ofWaste.test(near) ? 'bulkWaste' : undefined
  if (it.quantity?.kind === 'mass') return ofBags.test(behind.slice(0, 14)) ? 'bagWeight' : undefined
  if (it.quantity?.kind === 'volume') {
    if (it.firmness === 'at-least' || isLeast.test(behind.slice(0, 16)) || isLeast.test(before.slice(-18)))
      return 'leastLoad'
    // “In half-cubic-foot bags”: so many bags, and no step of a load.
    if (/^[-\s]*(bags?|sacks?)\b/.test(behind) && !/\b(concrete|mix|cement)\b/.test(near)) return undefined
    if (behindStep.test(behind) || beforeStep.test(before)) return 'bulkStep'
    if (/\b(makes?|yields?|bags?)\b/.test(near.slice(0, 40)) && ofBags.test(near)) return 'bagYield'
    return 'bulkVolume'
  }
  if (it.bare !== null && behindStep.test(behind)) return 'bulkStep'
  if (!mayBeMoney(it)) return undefined
  if (ofDelivery.test(behind.slice(0, 20)) || ofDelivery.test(before.slice(-24))) return 'deliveryPrice'
  if (
    (ofBags.test(before) && /\b(at|for|cost|are|is|@)\s*[£$€]?$/.test(before)) ||
    /^\s*(a|per|each|\/)\s*(bag|sack)/.test(behind)
  )
    return 'bagPriced'
  return undefined
}
