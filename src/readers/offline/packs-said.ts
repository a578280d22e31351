// This file is about things in packs with all told in one go, “30 posts, caps come 6 to a box at 18.40”, for the things counted last, and those of them that need none.
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { lastCount } from './last-answer.ts'
import { requestFor, tell } from './request-parts.ts'
import type { Token } from './stems.ts'

const pack = '(?:bundles?|packs?|packets?|box(?:es)?|cartons?|sleeves?|tubs?|bags?)'
const inPacks = new RegExp(`\\b${pack}\\b`, 'i')
const behindPack = new RegExp(
  `^\\s*(?:\\w+\\s+)?(?:to|in|per|a|each)\\s+(?:a\\s+|an\\s+|each\\s+|every\\s+|the\\s+)?${pack}\\b`,
)
const beforePack = new RegExp(
  `\\b${pack}\\s+(?:of|has|have|holds?|with|contains?)\\s*$|\\b(?:come|comes|sold) in\\s*$|\\b(?:pack|box|bundle)s? (?:is|are)\\s*$`,
)
const ofPack = /\b(?:packs?|packets?|box(?:es)?|bundles?)\b/i
const things =
  '(?:caps?|finials?|brackets?|hinges?|pickets?|palings?|boards?|posts?|rails?|screws?|nails?|spacers?|clips?|ties|lights?|plates?|anchors?)'
const behindWanted = new RegExp(`^\\s*(?:\\w+\\s+)?${things}\\b|^\\s*(?:of (?:them|these|those))\\b`)
const beforeWanted = /\b(?:need|needs|want|for|all|have|got)\s*(?:about\s*)?$/

const isWhole = (it: Tagged): boolean =>
  it.bare?.d === 1n && !it.section && !it.clock && !it.people && !/^\d+\.\d/.test(it.said)
/** “One of them” counts nothing. */
const isIdle = (it: Tagged, heard: Heard): boolean =>
  it.bare?.equals(1) === true && /^\s*(?:of|for|on)\b/.test(wordsBehind(heard, it))

/** How many packs, and at what price, where every number of the message says what it is. */
export function packsIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job } = heard
  const without = needsNone(heard)
  if (without) return without
  if (!inPacks.test(said) || !ofPack.test(said) || /\b(?:per|a|to the) (?:lb|pound|kg|kilo)\b/i.test(said))
    return undefined
  const readings = heard.readings.filter((it) => !isIdle(it, heard))
  const each = readings.filter(
    (it) => isWhole(it) && (behindPack.test(wordsBehind(heard, it)) || beforePack.test(wordsBefore(heard, it))),
  )
  const [one, two] = each
  if (!one || two || one.bare?.compare(2) === -1) return undefined
  const prices = readings.filter(
    (it) => it !== one && !it.per && (it.quantity?.kind === 'money' || (mayBeMoney(it) && /\.\d\d$/.test(it.said))),
  )
  const wanted = readings.filter((it) => it !== one && !prices.includes(it))
  const [many, more] = wanted
  if (more || prices.length > 1 || job.asked.some((it) => it.word === 'piecesAPack')) return undefined
  if (
    many &&
    !(isWhole(many) && (behindWanted.test(wordsBehind(heard, many)) || beforeWanted.test(wordsBefore(heard, many))))
  )
    return undefined
  // A cap to each post that was counted.
  const ofPosts = /\b(?:caps?|finials?|lights?)\b/i.test(said)
  const last = many || (job.asked.length > 0 && !ofPosts) ? undefined : lastCount(heard, message, true)
  const isOther = last && /^(?:pack|box|bag|trip|bay|hole|screw)$/.test(last.value.unit)
  const of = many?.tag ?? (last && !isOther && (last.value.unit !== 'post' || ofPosts) ? last.tag : undefined)
  if (!of || (!many && !ofPosts)) return undefined
  const [price] = prices
  return requestFor(
    'packs',
    [price ? 'packsCost' : 'packs'],
    [tell('piecesWanted', of), tell('piecesAPack', one.tag), ...(price ? [tell('packPrice', price.tag)] : [])],
  )
}

const none =
  /\b(?:no (?:caps?|need)|need(?:s)? (?:none|no)|don['’]?t (?:need|get|want|take|count)|do not (?:need|get|want)|doesn['’]?t need|not (?:needed|getting)|without|are round|leave (?:out|off)|already (?:have|got|capped))\b/i
/** “Two of them are round, no cap”: so many fewer are needed. */
function needsNone(heard: Heard): Request | undefined {
  const { job, said } = heard
  const [few, more] = heard.readings
  if (job.named !== 'packs' || !few || more || !isWhole(few) || !none.test(said) || /\bpacks?\b/i.test(said))
    return undefined
  if (!job.wanted.some((it) => /^packs/.test(it.word)) || job.asked.length > 0) return undefined
  return requestFor('packs', [job.wanted[0]?.word ?? 'packs'], [tell('piecesNotNeeded', few.tag)])
}
