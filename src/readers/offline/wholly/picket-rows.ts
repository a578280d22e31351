// This file is about pickets in a row, in a bay and along a run, told so plainly that every size has its place.
import { alongRun } from './lots.ts'
import { isQuantity, toNumber } from '../../../../engine/index.ts'
import type { Request } from '../../../request.ts'
import type { Heard, Tagged } from '../../reader.ts'
import { requestFor, tell } from '../request-parts.ts'
import {
  howMany,
  isCount,
  isLength,
  isMeasured,
  onCentre,
  pickets,
  type Place,
  placedBy,
  thePickets,
  thePost,
} from './placed.ts'
import { isAbout, knows, spotsOf } from './spots.ts'

export const picketRowIn = (heard: Heard): Request | undefined =>
  endToEndIn(heard) ?? gapOfIn(heard) ?? alongRunIn(heard)

const others =
  /\b(?:gates?|leaf|rails?|screws?|cost|price|budget|high|tall|at most|no (?:more|wider|bigger|larger)|max\w*|ball|sphere|lap\w*|overlap\w*)\b|\$|£|€/i
const aRow: readonly Place[] = [howMany('picketsHung', pickets), ...thePickets]
const barePicket: Place = { word: 'picketWidth', is: isLength, after: /^\s*(?:mm |in |inch(?:es)? )?wide\b/ }

/** “18 pickets 4 in wide with 2 in gaps: how long is the row end to end?”, and behind it “and with a gap at each end?” */
function endToEndIn(heard: Heard): Request | undefined {
  const { said, readings } = heard
  const goesOn = isAbout(heard, 'pickets-end-to-end')
  if (goesOn && readings.every((it) => /^(two|both|2|one)$/i.test(it.said)))
    return /\b(?:both|each|either|the|two) ends?\b|\bends too\b|\b(?:at|against|by) the posts?\b|\bouter gaps?\b/i.test(
      said,
    )
      ? requestFor('pickets-end-to-end', ['picketRowGaps'], [])
      : undefined
  if (others.test(said) || /\b(?:cover|will they go|do they go|how many|per (?:foot|metre|meter))\b/i.test(said))
    return undefined
  const asks =
    /\bend[- ]to[- ]end\b|\bfirst\b[^.?!]*\bto\b[^.?!]*\blast\b|\b(?:how (?:long|wide|far)|what length|total (?:length|width))\b[^.?!]*\b(?:row|run|that|it|stretch|line|panel|section|altogether|in all|overall)\b/i.test(
      said,
    )
  if (!asks && !goesOn) return undefined
  const told = placedBy(spotsOf(heard), [...aRow, barePicket])
  if (!told || told.length === 0) return undefined
  const has = (word: string): boolean => told.some((it) => it.word === word) || (goesOn && knows(heard, word))
  if (!['picketsHung', 'picketWidth', 'wantedGap'].every(has)) return undefined
  const wantsGaps =
    /\bgaps? (?:at|on) (?:both|each|either)(?: of the)? ends?\b|\bwith (?:the )?(?:end|outer) gaps\b/i.test(said)
  return requestFor('pickets-end-to-end', goesOn ? [] : [wantsGaps ? 'picketRowGaps' : 'picketRow'], told)
}

const inBay: readonly Place[] = [
  howMany('pickets', pickets),
  { word: 'pickets', is: isCount, after: /^\s+of (?:them|those|these|'em|em)\b/ },
  ...onCentre,
  {
    word: 'opening',
    is: isLength,
    after:
      /^\s*(?:mm |in )?(?:clear\b|(?:wide )?(?:opening|bay|space)\b|between (?:the |two )?posts?|post to post|from post)/,
  },
  {
    word: 'opening',
    is: isLength,
    before:
      /(?:opening|clear|space|between (?:the |two )?posts?|posts? are|bay)(?: is| are| of| measures?| apart|:|=|,)*\s*$/,
  },
  ...thePost,
  ...thePickets.filter((it) => it.word === 'picketWidth'),
]
const asksGap =
  /\b(?:how (?:wide|big|large|much))\b[^.?!]*\b(?:gaps?|spaces?|space|apart)\b|\b(?:what|which)\b[^.?!]*\b(?:gaps?|spacing|space)\b|\b(?:equal|even) gaps?\b[^.?!]*\?|\bgap\s*\?/i

/** “Bays 8 ft on center, 4x4 posts, 13 pickets 3 1/2 wide with equal gaps: how wide is each?”, and behind it “with twelve?” */
function gapOfIn(heard: Heard): Request | undefined {
  const { said } = heard
  const goesOn = isAbout(heard, 'gap-for-pickets')
  const spots = spotsOf(heard)
  const [only, more] = spots
  if (goesOn && only && !more && isCount(only.reading) && !/\b(?:posts?|rails?|bays?|gates?)\b/i.test(said))
    return requestFor('gap-for-pickets', [], [tell('pickets', only.reading.tag)])
  const anew = countAnew(heard)
  if (anew) return anew
  if (others.test(said) || !asksGap.test(said)) return undefined
  const told = placedBy(spots, inBay)
  if (!told?.some((it) => it.word === 'pickets') || !told.some((it) => it.word === 'picketWidth')) return undefined
  // Half a post at each end is taken off what is told on centre.
  const bay = told.filter((it) => it.word === 'opening' || it.word === 'bayCentres')
  return bay.length === 1 ? requestFor('gap-for-pickets', ['gap'], told) : undefined
}

const bayOfPickets = ['picket-spacing', 'gap-for-pickets']
const anewSaid =
  /^\W*(?:(?:ok|okay|no|nah|yeah|actually|and|so|then|now|hmm|well|but|right)\W+)*(?:make (?:it|that|them)|(?:lets|let's|i'll|ill|i'd|we'll)?\s*(?:say|try|use|do|go (?:with|for)|have|take|want)|what (?:about|if (?:i|we) (?:use|do|have|take|put in))|how about|with|and with)\s+(?:just |only |it )?$/i
/** “Make it 14”, where 15 came out: as many pickets, and no gap, since no gap is as large. “Where is the fifth one's edge?”: the marks once more. */
function countAnew(heard: Heard): Request | undefined {
  const { said, job } = heard
  if (!isAbout(heard, ...bayOfPickets) || job.asked.length > 0) return undefined
  const worked = (word: string): number | undefined => {
    const value = job.results.findLast((it) => it.word === word)?.value
    return isQuantity(value) ? toNumber(value.amount) : undefined
  }
  const spots = spotsOf(heard)
  const [only, more] = spots
  if (only && !more && isCount(only.reading) && anewSaid.test(said.slice(0, only.reading.start))) {
    const [count, was] = [only.reading.bare?.valueOf() ?? 0, worked('pickets')]
    const isBare = /^\s*(?:(?:pickets?|palings?|of (?:them|those|em)|then|instead|pls|please|now)\b|[.?!]|$)/.test(
      only.after,
    )
    const isNear = was !== undefined && Math.max(count / was, was / count) < nearCount
    return isBare && isNear && knows(heard, 'opening')
      ? requestFor('gap-for-pickets', ['gap'], [tell('pickets', only.reading.tag)])
      : undefined
  }
  const asksMark =
    /\b(?:where|distance|how far)\b[^.?!]*\b(?:edge|start|begin|sits?|stands?|lie|mark)\b[^.?!]*\b(?:picket|paling|one)\b|\b(?:where|distance|how far)\b[^.?!]*\b(?:picket|paling)\b[^.?!]*\b(?:edge|start|begin|sit|lie|go|stand)\b/i
  const isOrdinal = /\b(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|last|\d+(?:st|nd|rd|th))\b/i
  if (!asksMark.test(said) || !isOrdinal.test(said) || spots.length > 0) return undefined
  const told = job.decisions.some((it) => it.word === 'pickets')
  return requestFor(told ? 'gap-for-pickets' : 'picket-spacing', ['tapeGap'], [])
}
// Whoever takes more pickets or fewer takes some more, and not half as many again.
const nearCount = 1.4

/** “A 12 m run, palings 70 wide, gap 30: how many?” And “40 ft, pickets 5 1/2, gap 2”, where how many was asked and an opening was lacking: none is as wide. */
function alongRunIn(heard: Heard): Request | undefined {
  const { said, job } = heard
  if (others.test(said) || /\b(?:posts?|bays?|panels?|sides?|corners?)\b/i.test(said)) return undefined
  const lacks = job.asked.some((it) => it.word === 'opening') && job.wanted.some((it) => it.word === 'pickets')
  const asks = new RegExp(`\\bhow many(?:\\s*[?.]?\\s*$| ${pickets}\\b| do | will | are )`, 'i').test(said.trim())
  if (!lacks && !(asks && new RegExp(`\\b${pickets}\\b`, 'i').test(said))) return undefined
  const spots = spotsOf(heard)
  const long = lacks ? spots.filter(({ reading }) => isMeasured(reading) && inInches(reading) >= widestOpening) : []
  const told = placedBy(
    spots.filter((it) => !long.includes(it)),
    [...thePickets, ...alongRun],
  )
  const all = [...(told ?? []), ...long.map((it) => tell('runLength', it.reading.tag))]
  const isWhole = ['runLength', 'picketWidth', 'wantedGap'].every((word) => all.some((it) => it.word === word))
  return told && all.length === 3 && isWhole ? requestFor('pickets-by-length', ['picketsHung'], all) : undefined
}
// No rail spans as much between two posts.
const widestOpening = 192
const inInches = ({ quantity }: Tagged): number => (quantity ? toNumber(quantity.amount) : 0)
