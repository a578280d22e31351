// This file is about an arch told in a story: how tall its ends are, how tall its middle, and a picket at a place.
import type { Request } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { chosenBy } from '../request-parts.ts'
import { asked, isLast, knows, type Marked, tell } from './marked.ts'

const firstOf = (it: Marked, pattern: RegExp): Tagged | undefined =>
  pattern
    .exec(it.text)
    ?.slice(1)
    .map(it.at)
    .find((one) => one !== undefined)

const ofTop = /arch|hump|scallop|dip|curv|crown|swoop|bow/
const tall = '(?: ?(?:mm|in|ft|foot))? ?(?:tall|high|long)?'
const ends = new RegExp(
  `(?:ends?|end ones|posts?|end pickets?|sides?|edges?|two end pickets)(?: are| is| to be| to stand| stand| at|'s|,)* §[LN](\\d+)|§[LN](\\d+)${tall} (?:at|by|against|beside) (?:the |each |both |either )?(?:posts?|ends?|sides|edges)`,
)
const middle = new RegExp(
  `(?:middle|cent(?:re|er)|crest|peak|crown|top)(?: one| picket| paling)?(?: is| are| to be| to stand| stands?| at| of|'s|,)* §[LN](\\d+)|§[LN](\\d+)${tall} (?:in|at) (?:the )?(?:very |dead )?(?:middle|cent(?:re|er)|crest|peak|top of)(?! §)|(?:dips?|drops?|rises?|comes?|goes|down|up) (?:down |up )?to (?:about |only )?§[LN](\\d+)`,
)
const bay =
  /§L(\d+) (?:wide |clear |long )?(?:bays?|opening|span|sections?|panels?|(?:in )?(?:from )?(?:post to post|end to end)|between (?:the )?posts?|across(?! an? )|wide)|(?:bays?|opening|span|sections?|panels?)(?: is| are| of| measures?|'s)? §L(\d+)/
const place =
  /§[LN](\d+) (?:away |in |out |along |over )*(?:from|off) (?:the |a |either |each |one )?(?:left |right |end )?(?:posts?|ends?|edge)\b(?! to)/
const placeMiddle =
  /§[LN](\d+) (?:away |out |along |over |to (?:the |one |either )?(?:left |right )?(?:side )?)*(?:from|off|of) (?:the )?(?:dead )?(?:middle|cent(?:re|er))/

/** “The ends are 3 ft tall and the middle 3 ft 8 across an 8 ft bay: how tall is the picket 2 ft in from the post?” */
export function archTold(it: Marked): Request | undefined {
  const { job } = it.heard
  const goesOn =
    isLast(job, 'arched-top') || isLast(job, 'arch-at-place') || job.asked.some((one) => one.word === 'archRise')
  const below = belowEnds(it)
  if (below) return below
  if (!(it.has(ofTop) || goesOn) || it.has(/gate|template|radius of the hole/)) return undefined
  const [low, high, wide] = [firstOf(it, ends), firstOf(it, middle), firstOf(it, bay)]
  const [fromPost, fromMiddle] = [firstOf(it, place), firstOf(it, placeMiddle)]
  const told = [low, high, wide, fromPost, fromMiddle].filter((one) => one !== undefined)
  if (!low || !high || !wide || new Set(told).size < told.length) return undefined
  if (it.heard.readings.some((one) => !told.includes(one) && !one.bare?.equals(1))) return undefined
  if (fromPost && fromMiddle) return undefined
  const all = [...tell('opening', wide), ...tell('heightAtPosts', low), ...tell('heightInMiddle', high)]
  if (!fromPost && !fromMiddle)
    return it.has(/radius|string|compass/) || (goesOn && job.wanted.some((one) => one.word === 'archRadius'))
      ? asked('arch-at-place', all, 'archRadius')
      : undefined
  return it.has(/how (?:tall|high|long)|height|length/)
    ? asked(
        'arch-at-place',
        [...all, ...tell('placeFromPost', fromPost), ...tell('placeFromMiddle', fromMiddle)],
        'heightAtPlace',
      )
    : undefined
}

/** The shape by its words, where nothing else says it: “dips below the ends”. */
export const placeOnArch = (it: Marked): Request | undefined => {
  const dip = /\bdips?\b[^.?§]*§[LN](\d+) (?:lower|below|under)/.exec(it.text)
  const rise = it.at(dip?.[1])
  const wide = firstOf(it, bay)
  if (!dip || !rise || !wide || rise === wide || it.heard.readings.length !== 2 || !it.has(/radius/)) return undefined
  const [quote = ''] = /\bdips?\b/i.exec(it.heard.said) ?? []
  return asked(
    'arch-at-place',
    [...tell('opening', wide), ...tell('archRise', rise), chosenBy('archShape', 'concave', quote)],
    'archRadius',
  )
}

/** “How far below the ends does it lie 24 in from the middle?”, of an arch whose rise the talk knows. */
function belowEnds(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  if (!only || more || !(isLast(job, 'arched-top') || isLast(job, 'arch-at-place'))) return undefined
  if (!knows(job, 'opening') || !(knows(job, 'archRise') || knows(job, 'heightInMiddle'))) return undefined
  if (
    !it.has(
      /how (?:far|much)[^?.]*(?:below|above|under|over|lower|higher|down|up|dip|drop|rise)|(?:drop|dip|rise)[^?.]* at /,
    )
  )
    return undefined
  const [fromPost, fromMiddle] = [firstOf(it, place), firstOf(it, placeMiddle)]
  if ((fromPost ?? fromMiddle) !== only || (fromPost && fromMiddle)) return undefined
  return asked(
    'arch-at-place',
    [...tell('placeFromPost', fromPost), ...tell('placeFromMiddle', fromMiddle)],
    'curveOffEnds',
  )
}
