// This file is about concrete that is told by the hole: “each hole takes 0.9 cubic feet and a bag makes 0.45”.
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { wordsBefore, wordsBehind } from './around.ts'
import { requestFor, tell } from './request-parts.ts'

const behindHole =
  /^\s*(?:of (?:concrete|mix|cement)\s*)?(?:per|a|each|for each|in each|to a|to each|every|in every)\s+(?:post\s*)?(?:hole|one)\b/
const beforeHole =
  /\b(?:each|every|a|one|per)\s+(?:post\s*)?(?:hole|one)\s+(?:will\s+)?(?:takes?|needs?|holds?|uses?|swallows?|is|wants?|requires?)\s*(?:about\s*)?$/
/** “30 in deep”, “10 in across”: no length of a run. */
const ofHole =
  /^\s*(?:deep|down|wide|across|in diameter|diameter|dia|round|square|tall|high|posts?|holes?|in the ground)\b/
const ofBag = /\b(?:bags?|sacks?)\b/
const makes = /\b(?:makes?|yields?|gives?|is|does|fills?|mixes? up)\b/

/** Bags, where what one hole takes and what one bag makes are told. */
export function bagsByHoleIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const isOn = job.named === 'bags-by-hole'
  if (!/\bholes?\b/i.test(said) && !isOn) return undefined
  const volumes = readings.filter((it) => it.quantity?.kind === 'volume' && !it.per)
  const holes = volumes.filter(
    (it) => behindHole.test(wordsBehind(heard, it)) || beforeHole.test(wordsBefore(heard, it)),
  )
  const bags = volumes.filter((it) => !holes.includes(it) && isOfBag(heard, it))
  const masses = readings.filter(
    (it) => it.quantity?.kind === 'mass' && ofBag.test(wordsBehind(heard, it).slice(0, 16)),
  )
  const counts = readings.filter(
    (it) =>
      it.bare?.d === 1n && !it.section && /^\s*(?:\w+\s+)?(?:holes?|posts?|of them)\b/.test(wordsBehind(heard, it)),
  )
  const lengths = readings.filter((it) => it.quantity?.kind === 'length' && !it.section)
  const apart = lengths.filter(
    (it) =>
      /^\s*(?:apart|o\.?c\.?|on cent|centers?|centres?|spac)/.test(wordsBehind(heard, it)) ||
      /\b(?:every|each)\s*$/.test(wordsBefore(heard, it)),
  )
  const runs = lengths.filter((it) => !apart.includes(it) && !ofHole.test(wordsBehind(heard, it)))
  const parts = [holes, bags, masses, counts, apart, runs]
  if (parts.some((it) => it.length > 1) || parts.flat().length < readings.length) return undefined
  if (!(holes.length === 1 || (isOn && readings.length > 0)) || runs.length !== apart.length) return undefined
  if (!isOn && !/\b(?:bags?|concrete|mix|cement)\b/i.test(said)) return undefined
  const one = (word: string, [it]: readonly Tagged[]) => (it ? [tell(word, it.tag)] : [])
  const wantsBags = bags.length > 0 || /\bbags?\b/i.test(said) || isOn
  return requestFor(
    'bags-by-hole',
    [wantsBags ? 'bags' : 'concrete'],
    [
      ...one('runLength', runs),
      ...one('widestBay', apart),
      ...one('posts', counts),
      ...one('concreteInHole', holes),
      ...one('bagWeight', masses),
      ...one('bagYield', bags),
    ],
  )
}

/** “A 50 lb bag makes 0.375”, “0.45 cubic feet a bag”. */
const isOfBag = (heard: Heard, it: Tagged): boolean => {
  const front = wordsBefore(heard, it)
  return (
    (ofBag.test(front) && makes.test(front)) ||
    /^\s*(?:a|per|each|to a|from a|out of a)?\s*(?:bag|sack)\b/.test(wordsBehind(heard, it))
  )
}
