// This file is about bays of one width laid from one end, what is left over, and posts that go between two that stand already.
import type { Request } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { asked, isLast, knows, type Marked, tell } from './marked.ts'

const firstOf = (it: Marked, pattern: RegExp): Tagged | undefined =>
  pattern
    .exec(it.text)
    ?.slice(1)
    .map(it.at)
    .find((one) => one !== undefined)

const asksOdd =
  /(?:how (?:long|wide|big|much)|what(?:'s|s| is| will)?|size of)[^?.]*(?:last|odd|short|end|left ?over|remaining) (?:bay|section|panel|one|bit|piece|space)|(?:last|odd|short|left ?over) (?:bay|section|panel|one|bit|piece)[^?.]*(?:how (?:long|wide|big)|\?)/
const fixed =
  /(?:full|whole|fixed|standard|complete) (?:bays?|sections?|panels?)(?: of| at| are)? §[LN](\d+)|every §[LN](\d+)|§[LN](\d+) (?:mm |ft |foot )?(?:full|whole|fixed|standard) (?:bays?|sections?|panels?)/
const fromOneEnd =
  /from the [a-z-]+ (?:end|side|corner)|from (?:one|the other|this|that) (?:end|side|corner)|start\w* (?:at|from)|left ?over|remainder|whatever|full bays|whole bays|odd (?:bay|one)|short (?:bay|one)/
const run =
  /§L(\d+) (?:ft |foot |mm |m )?(?:of fence|run|long|line|fence|stretch|to fence)|(?:run|fence|line|stretch|it)(?: is| of| measures|'s)? §L(\d+)/

/** “53 ft of fence, posts every 8 ft from the house end, what is left over goes by the drive: how long is that last bay?” */
export function lastBay(it: Marked): Request | undefined {
  if (!it.has(asksOdd) || !it.has(fromOneEnd) || it.has(/picket|gap\b|gates?\b(?! (?:post|end))|rail/)) return undefined
  const [bay, line] = [firstOf(it, fixed), firstOf(it, run)]
  if (!bay || bay === line || (!line && !knows(it.heard.job, 'runLength'))) return undefined
  if (it.heard.readings.some((one) => one !== bay && one !== line && !one.bare?.equals(1))) return undefined
  return asked('bay-patterns', [...tell('runLength', line), ...tell('fixedBay', bay)], 'oddBay')
}

const splits =
  /(?:split|share|divid|halve|half|spread|put)[^?.]*(?:left ?over|remainder|odd|rest|what is left|short)[^?.]*(?:both|two|each|either) ends?|(?:left ?over|remainder|odd bit|rest)[^?.]*(?:both|two|each|either) ends?/
/** “Keep the 5 full ones and split what is left over both ends”: of the run and the bay that were told. */
export function leftOverSplit(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (!it.has(splits) || it.has(/one (?:full|whole)|match|alike|picket|gap\b|gate/)) return undefined
  const [bay, line] = [firstOf(it, fixed), firstOf(it, run)]
  const rest = readings.filter((one) => one !== bay && one !== line)
  const kept = rest.filter((one) => one.bare?.d === 1n && !/^(?:one|two|both)$/i.test(one.said))
  if (kept.length > 1 || rest.some((one) => one.bare?.d !== 1n) || (bay !== undefined && bay === line)) return undefined
  if (!(bay && line) && !(!bay && !line && isLast(job, 'bay-patterns'))) return undefined
  return asked(
    'leftover-at-ends',
    [...tell('runLength', line), ...tell('fixedBay', bay), ...tell('keptBays', kept[0])],
    'leftoverEachEnd',
  )
}

const stands =
  /(?:end posts?|posts? at (?:both|the|either) ends?|corner posts?|both posts|old (?:posts|ones)|existing posts?|two (?:posts|that))[^.?]*(?:stay|stand|still|sound|fine|good|keep|there|set|in already|already in|are in|remain|left)|between (?:the |those )?(?:two )?(?:old|existing|standing|that stand|that are there)|(?:keep\w*|leav\w*|reus\w*)[^.?]*(?:end|corner) posts/
const asksNew =
  /how many (?:new |more |extra |other |fresh )?posts?[^?]*(?:between|in between|new|more|need|buy|set|add)|(?:new|more|extra|additional) posts/
const limit =
  /(?:at most|no more than|not more than|max(?:imum)?(?: of)?|up to|within|every|no (?:further|farther|wider) than|under|not over) §[LN](\d+)/
const limitBehind = /§[LN](\d+) (?:metres |m |ft |feet |foot )?(?:apart|max|at most|or less|cent|o\.?c)/
const long =
  /(?:side|run|fence|stretch|line|distance|length|gap|it|that)(?: is| of| measures| runs|'s)? §L(\d+)|§L(\d+) (?:long|apart|between|of fence|run|stretch|side|line)/
/** “The two end posts stay, 22.5 m, at most 2.5 m apart: how many new ones between them?” */
export function postsBetween(it: Marked): Request | undefined {
  if (!it.has(stands) || !it.has(asksNew) || it.has(/corner to corner|gate/)) return undefined
  const most = firstOf(it, limit) ?? firstOf(it, limitBehind)
  const line = [...it.text.matchAll(new RegExp(long, 'g'))]
    .map((found) => it.at(found[1] ?? found[2]))
    .find((one) => one !== most)
  if (!most || !line || it.lengths.length !== 2) return undefined
  return asked('posts-between', [...tell('runLength', line), ...tell('widestBay', most)], 'newPosts')
}
