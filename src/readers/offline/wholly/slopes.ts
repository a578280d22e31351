// This file is about fences on a slope told so plainly that every size has its place: steps, what is under their low ends, the posts between them, the fall of so many bays.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor, tell } from '../request-parts.ts'
import { boundBy, isAbout, isLength, isMeasured, knows, type Role, spotsOf } from './spots.ts'

export const slopeIn = (heard: Heard): Request | undefined => postIn(heard) ?? fallOfBaysIn(heard) ?? stepIn(heard)

const bays = '(?:equal |even |same |level |stepped |stepping )*(?:panels?|bays?|steps?|sections?|spans?)'
const stepRoles: readonly Role[] = [
  { word: 'widestBay', after: new RegExp(`^\\s*(?:mm |in )?(?:wide )?(?:long )?${bays}`) },
  {
    word: 'highEndGap',
    before:
      /(?:clears?|clearance|gap|leav(?:e|es|ing)|keep(?:s|ing)?(?: them| it)?|off the (?:ground|grass|dirt))(?: of| is| by| at| about|:|=)*\s*$/,
  },
  {
    word: 'highEndGap',
    after:
      /^\s*(?:mm |in )?(?:of )?(?:clear\b|clearance|gap|off the (?:ground|grass|dirt)|above (?:the )?(?:ground|grass|grade))/,
  },
  { word: 'postAbove', after: /^\s*(?:mm |in )?(?:tall|high)\b/ },
  {
    word: 'fall',
    before:
      /(?:falls?|drops?|falling|dropping|slopes? down|goes down|comes down|lower|fall|drop|down)(?: by| of| is| about|'s|:|=)*\s*$/,
  },
  { word: 'fall', after: /^\s*(?:mm |in )?(?:of )?(?:a )?(?:total )?(?:fall\b|drop\b|lower|downhill)/ },
  {
    word: 'levelDistance',
    before:
      /(?:over|across|along|away|length|distance|run|long|fence line|in)(?: a| the| its)?(?: total| whole| level)?(?: length| distance| run)?(?: of| is|:|=)*\s*$/,
  },
  {
    word: 'levelDistance',
    after: /^\s*(?:mm |in |m )?(?:away|long|level\b|of (?:fence|run)|run\b|end to end|in length|fence\b|horizontal)/,
  },
  { word: 'widestBay', before: /(?:bays?|panels?|sections?)(?: of| are| at| is| about|,|:|=)*\s*$/ },
]

/** “It falls 40 in over 64 ft and I step it in 8 ft bays”, “6 panels, falls 900”, “the low end if the high end clears 2 in”. */
function stepIn(heard: Heard): Request | undefined {
  const { said } = heard
  const goesOn = isAbout(heard, 'stepped-run')
  if (!goesOn && !/\bstep(?:s|ped|ping)?\b/i.test(said)) return undefined
  if (
    /\b(?:rails?|pickets?|raked?|racked?|gates?|corner|at most|no more|max\w*|concrete|holes?|posts? (?:must|long|length)|how long)\b/i.test(
      said,
    )
  )
    return undefined
  const spots = spotsOf(heard)
  const counts = spots.filter(
    ({ reading, after }) =>
      reading.bare?.d === 1n && new RegExp(`^\\s*${bays}\\b`).test(after) && reading.bare.compare(200) < 0,
  )
  const told = boundBy(
    spots.filter((it) => !counts.includes(it)),
    stepRoles,
  )
  if (!told || counts.length > 1 || (told.length === 0 && counts.length === 0)) return undefined
  const all = [...told, ...counts.map((it) => tell('slopeBays', it.reading.tag))]
  const has = (word: string): boolean => all.some((it) => it.word === word) || knows(heard, word)
  // Only one of the two says how many bays there are.
  if (all.some((it) => it.word === 'widestBay') && (counts.length > 0 || knows(heard, 'slopeBays'))) return undefined
  if (!goesOn && !(has('fall') && (has('slopeBays') || (has('widestBay') && has('levelDistance'))))) return undefined
  const asksUnder = /\b(?:low(?:er)? end|downhill end|down-?hill side|bottom end)\b/i.test(said)
  const asksStep =
    /\b(?:how (?:big|much|far|high|tall)|what|size|drop (?:at|per)|each step|step (?:at|each|be|per))\b/i.test(said)
  const wants = asksUnder ? ['gapUnderStep'] : asksStep || !goesOn ? ['stepEach'] : []
  return requestFor('stepped-run', wants, all)
}

/** “Panels 900 high, 50 clear at the uphill end, posts 600 in the ground: how long is a post between two panels?” */
function postIn(heard: Heard): Request | undefined {
  const { said } = heard
  const isBetween =
    /\bposts?\b[^.?]*\b(?:between|where|shared|join)\b[^.?]*\bpanels?\b|\bbetween (?:two |the )?(?:panels?|steps)\b/i.test(
      said,
    )
  if (!isBetween || !/\bhow long\b|\bwhat length\b|\blength\b/i.test(said)) return undefined
  const told = boundBy(spotsOf(heard), [
    {
      word: 'embedment',
      after:
        /^\s*(?:mm |in )?(?:in(?:to)? (?:the )?(?:ground|dirt|earth|soil)|deep\b|down\b|below ground|underground|in ground|buried)/,
    },
    {
      word: 'embedment',
      before: /(?:go(?:es)?(?: down)?|bur(?:y|ied)|sunk|embedded|into the ground)(?: by| about)*\s*$/,
    },
    { word: 'stepEach', before: /(?:steps?|step down|drops?)(?: of| is| are| by| each|:|=)*\s*$/ },
    { word: 'stepEach', after: /^\s*(?:mm |in )?(?:each )?(?:steps?|drop)\b/ },
    { word: 'highEndGap', before: /(?:clear|clearance|gap|keep (?:them|it)|leave)(?: of| is| at|:|=)*\s*$/ },
    {
      word: 'highEndGap',
      after: /^\s*(?:mm |in )?(?:of )?(?:clear\b|clearance|gap|off the ground|above the ground|up\b)/,
    },
    { word: 'panelHeight', after: /^\s*(?:mm |in )?(?:high|tall)\b/ },
    { word: 'panelHeight', before: /panels?(?: are| of| is|'re| height|,|:|=)*\s*$/ },
  ])
  if (!told?.some((it) => it.word === 'panelHeight')) return undefined
  return requestFor('post-between-steps', ['stepPost'], told)
}

/** “Total fall over 8 bays”, in a talk about rails along a slope. */
function fallOfBaysIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (!isAbout(heard, 'raked-run')) return undefined
  if (heard.readings.length === 0)
    return /\b(?:cut|end|plumb)s?(?:\s+\w+){0,2}\s+angle\b|\bangle\b[^.?]*\b(?:cut|saw|ends?)\b|\bwhat angle\b/i.test(
      said,
    )
      ? requestFor('raked-run', ['plumbCut'], [])
      : undefined
  const [only, more] = spotsOf(heard)
  if (!only || more || !/\b(?:fall|drop|falls|drops|lower|come down|go down|descend)\b/i.test(said)) return undefined
  if (
    only.reading.bare?.d !== 1n ||
    isMeasured(only.reading) ||
    !isLength(only.reading) ||
    !new RegExp(`^\\s*(?:\\w+ )?${bays}\\b`).test(only.after)
  )
    return undefined
  return requestFor('raked-run', ['totalFall'], [tell('slopeBays', only.reading.tag)])
}
