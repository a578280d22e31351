// This file is about packs: their price against single ones, so many to each of so many out of packs, and packs of what was counted last.
import { yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { lastCount, workedBy } from './last-answer.ts'
import { requestFor, tell } from './request-parts.ts'
import type { Token } from './stems.ts'

const pack = '(?:packs?|packets?|box(?:es)?|tubs?|tins?|bundles?|cartons?|sleeves?|bags?|jars?|buckets?)'
const isOfPack = new RegExp(
  `^\\s*(?:for )?(?:a|per|the|each|every|one|an)\\s+${pack}\\b|^\\s*(?:a|per)\\s+(?:pack|box)\\b`,
)
const packBefore = new RegExp(`\\b${pack}(?: of)?(?: is| are| at| for| cost| costs|:)*\\s*[$£€]?$`)
const packOf = new RegExp(`\\b${pack} (?:of|with|holds?|has|have|hold)\\s*$`)
const toPack = new RegExp(`^\\s*(?:\\p{L}+\\s)?(?:to|in|per) (?:a|the|each|every)?\\s*${pack}\\b`, 'u')
const isSingle =
  /^\s*(each|apiece|a piece|ea\b|singly|single|loose|on their own|by themselves|one by one|one at a time)/
const asksMoney = /\b(cost|costs|come to|comes to|how much|total|price|pay|spend|run me|set me back|damage)\b/i
const singly = /\b(singly|singles?|one by one|one at a time|individual(ly)?|loose|each on its own|separately)\b/i
const over = /\b(left ?over|over|spare|extra|remain\w*)\b/i
const onlyPacks = /\b(packs?|packets?|boxes|bundles?|tubs?|tins?)\b/i

const whole = (it: Tagged): boolean => it.bare?.d === 1n && !it.section && !it.clock && !it.change

/** The request of a message about packs and what they cost; nothing where it is another matter. */
export function packPricesIn(heard: Heard, message: readonly Token[]): Request | undefined {
  if (heard.said.length > 300) return undefined
  if (heard.job.named === 'packs') {
    const next = onward(heard)
    if (next) return next
  }
  const inOne = heard.readings.find(
    (it) => whole(it) && (packOf.test(wordsBefore(heard, it)) || toPack.test(wordsBehind(heard, it))),
  )
  const money = heard.readings.filter((it) => it !== inOne && mayBeMoney(it) && !isCounted(it, heard))
  const prices = money.filter((it) => it.quantity?.kind === 'money' || /\.\d\d$/.test(it.said) || isPriced(it, heard))
  const packPrice =
    prices.find((it) => isOfPack.test(wordsBehind(heard, it))) ??
    prices.find((it) => packBefore.test(wordsBefore(heard, it))) ??
    (prices.length === 1 && inOne && !prices.some((it) => isSingle.test(wordsBehind(heard, it)))
      ? prices[0]
      : undefined)
  if (!inOne || !packPrice) return undefined
  const single = prices.find((it) => it !== packPrice)
  const counts = heard.readings.filter((it) => it !== inOne && it !== packPrice && it !== single)
  if (!counts.every(whole) || (single && !isSingle.test(wordsBehind(heard, single)))) return undefined
  const told = [
    tell('piecesAPack', inOne.tag),
    tell('packPrice', packPrice.tag),
    ...(single ? [tell('singlePrice', single.tag)] : []),
  ]
  const wants =
    single && singly.test(heard.said) && !onlyPacks.test(heard.said.replace(/^.*\?/s, '')) ? 'singlesCost' : 'packsCost'
  const [one, two, more] = counts
  if (more) return undefined
  if (one && two) return eachOutOfPacks(heard, [one, two], told)
  if (one)
    return single || asksMoney.test(heard.said)
      ? requestFor('packs', [wants], [tell('piecesWanted', one.tag), ...told])
      : undefined
  if (heard.job.asked.length > 0) return undefined
  const of = lastCount(heard, message, true)
  if (!of || /^(pack|box|bag|trip|bay|hole)$/.test(of.value.unit)) return undefined
  return requestFor('packs', [wants], [tell('piecesWanted', of.tag), ...told])
}

const isPriced = (it: Tagged, heard: Heard): boolean =>
  isSingle.test(wordsBehind(heard, it)) || isOfPack.test(wordsBehind(heard, it))
/** “214 pickets”: a thing is counted, and nothing priced. */
const isCounted = (it: Tagged, heard: Heard): boolean =>
  whole(it) && !isPriced(it, heard) && it.quantity?.kind !== 'money' && !packBefore.test(wordsBefore(heard, it))

const ofEach =
  /^\s*(?:\p{L}+\s){0,3}?(?:in|to|for|into|per|each|every|a)\s*(?:each|every|one|a|picket|paling|bracket|hinge|post|rail|board)\b|^\s*(?:\p{L}+\s)?(?:each|apiece)\b|^\s*(?:\p{L}+\s)?per\b/u
/** “150 pickets, 3 screws in every one, boxes of 200 at 9.40”: so many to each, out of packs. */
function eachOutOfPacks(heard: Heard, counts: readonly [Tagged, Tagged], told: Request['told']): Request | undefined {
  const each = counts.filter((it) => ofEach.test(wordsBehind(heard, it)))
  const [pieces] = each
  const groups = counts.find((it) => it !== pieces)
  if (!pieces || !groups || each.length > 1 || /\b(rails?|spares?|over)\b/i.test(heard.said)) return undefined
  return requestFor(
    'packs',
    ['packsCost'],
    [
      tell('groups', groups.tag),
      tell('piecesEach', pieces.tag),
      tell('piecesWanted', workedBy('so-many-each', 'piecesInAll')),
      ...told,
    ],
  )
}

/** “And singly?”, “how many would be left over?”, “what if I put 3 in each?”, “caps too, 9 at 3.10, total?”. */
function onward(heard: Heard): Request | undefined {
  const { readings, job, said } = heard
  const known = (word: string): boolean => job.decisions.some((it) => it.word === word && it.at === yard)
  if (readings.length === 0) {
    if (singly.test(said) && known('singlePrice')) return requestFor('packs', ['singlesCost'], [])
    if (over.test(said) && /\b(how many|any|what)\b/i.test(said)) return requestFor('packs', ['piecesOver'], [])
    return onlyPacks.test(said) &&
      known('packPrice') &&
      /\b(only|just|instead|cost|in)\b/i.test(said) &&
      said.length < 60
      ? requestFor('packs', ['packsCost'], [])
      : undefined
  }
  const [only, more] = readings
  if (!only || more) return undefined
  if (whole(only) && known('piecesEach') && (ofEach.test(wordsBehind(heard, only)) || said.length < 40))
    return requestFor(
      'packs',
      job.wanted.map((it) => it.word),
      [tell('piecesEach', only.tag)],
    )
  return undefined
}
