// This file is about a run that is told by what it keeps off both lot lines, and one with its gate in the middle.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor } from '../request-parts.ts'
import { isLength, type Place, placedBy } from './placed.ts'
import { isAbout, knows, spotsOf } from './spots.ts'

export const runOfLotIn = (heard: Heard): Request | undefined => acrossLotIn(heard) ?? gateAmidIn(heard)

const lot = '(?:lot|property|plot|block|section|site|garden|yard|parcel|land)'
const widestBay: readonly Place[] = [
  {
    word: 'widestBay',
    is: isLength,
    before:
      /(?:(?:no|not)(?: \w+)? (?:farther|further|more|wider|longer|greater|bigger|over)(?: apart)?(?: \w+)?(?: than)?|at most|max(?:imum)?(?: of)?|up to|within|longer than|wider than|more than|every|spacing(?: of)?|bays? (?:of|at|over))\s*$/,
  },
  {
    word: 'widestBay',
    is: isLength,
    after: /^\s*(?:mm |in )?(?:or less|at (?:the )?most|max(?:imum)?\b|apart|bays?\b|spacing)/,
  },
]
export const alongRun: readonly Place[] = [
  {
    word: 'runLength',
    is: isLength,
    before: /(?:run|length of it|fence(?: line)?|line|side|stretch)(?: is| of| measures?|:|=|,|'s)*\s*$/,
  },
  {
    word: 'runLength',
    is: isLength,
    after: /^\s*(?:mm |m |ft )?(?:long\b|run\b|of fence|fence\b|in length|end to end|stretch|line\b)/,
  },
]
const wantsIn = (said: string): string[] => [
  ...(/\bhow many (?:equal )?(?:bays?|sections?|panels?|spaces?)\b/i.test(said) ? ['bays'] : []),
  ...(/\b(?:how far apart|what spacing|spacing|bay (?:width|size)|how (?:wide|long) (?:is|are|does|do|would|will) (?:each|the|every) bays?|each bay)\b/i.test(
    said,
  )
    ? ['bayCentres']
    : []),
  ...(/\bhow many (?:fence )?posts?\b|\bposts? (?:do|will|would) (?:i|we) need\b/i.test(said) ? ['posts'] : []),
]

const kept: readonly Place[] = [
  {
    word: 'lotWidth',
    is: isLength,
    before: new RegExp(`\\b${lot}(?: itself)?(?: is| are| measures?| runs?|'s|:|=|,| of| width)*(?: about)?\\s*$`),
  },
  { word: 'lotWidth', is: isLength, after: new RegExp(`^[\\s-]*(?:mm |m |ft |foot )?(?:wide |across )?${lot}\\b`) },
  {
    word: 'keptEachSide',
    is: isLength,
    before:
      /(?:stay|keep|kept|set ?back|setbacks?|back|hold|leave|stand|be|sit)(?: it| the fence| them| off| of| is| are| at least|:|=|,)*\s*$/,
  },
  {
    word: 'keptEachSide',
    is: isLength,
    after:
      /^\s*(?:mm |in |ft )?(?:inside|in from|back from|away from|from|off|clear of|set ?backs?|on (?:each|both|either) sides?|each (?:side|end)|at (?:each|both) ends?)/,
  },
  ...widestBay,
]
/** “I keep 2 ft off the line on both sides of a 60 ft lot, posts at most 8 ft apart: how many bays?” */
function acrossLotIn(heard: Heard): Request | undefined {
  const { said } = heard
  const isTwice =
    /\b(?:each|both|either) (?:sides?|ends?)\b|\b(?:one )?setback to the other\b|\bboth (?:lot|property|boundary) lines?\b/i.test(
      said,
    )
  if (!isTwice || !/\b(?:lot|property|boundary|set ?backs?|line)\b/i.test(said) || /\bgates?\b|\bcorner\b/i.test(said))
    return undefined
  const spots = spotsOf(heard).filter(
    ({ reading, after }) => !(/^one$/i.test(reading.said) && /^\s+(?:set ?back|lot|side|line|boundary)/.test(after)),
  )
  const told = placedBy(spots, kept)
  const has = (word: string): boolean => told?.some((it) => it.word === word) ?? false
  if (!told || !has('lotWidth') || !has('keptEachSide')) return undefined
  const wants = wantsIn(said)
  if (has('widestBay') && wants.length > 0) return requestFor('bays-in-run', wants, told)
  return /\bhow (?:long|much)\b|\bwhat length\b|\blength\b/i.test(said) && !has('widestBay')
    ? requestFor('line-between-lots', ['runLength'], told)
    : undefined
}

const amid =
  /\b(?:gates?|gap|opening)\b[^.?!]*\b(?:middle|cent(?:er|re)|halfway|midway|dead cent(?:er|re))\b|\b(?:middle|cent(?:er|re)|halfway|midway)\b[^.?!]*\bgates?\b/i
const halves =
  /\b(?:same|equal|as much|alike|even)\b[^.?!]*\b(?:each|either|both) sides?\b|\b(?:each|either|both) sides?\b[^.?!]*\b(?:same|equal|alike|as much)\b|\b(?:smack|dead|right|exactly|slap) (?:in|on|bang)\b|\bin the (?:dead )?(?:middle|cent(?:er|re)) of (?:it|the (?:run|fence|line|side))\b|\bin the (?:middle|cent(?:er|re))\b/i
const gate: readonly Place[] = [
  {
    word: 'gateCentres',
    is: isLength,
    after:
      /^\s*(?:mm |m |ft |foot |in )?(?:wide )?(?:measured )?(?:from |between )?(?:the )?(?:gate )?(?:posts? )?cent(?:er|re)s?(?:[- ]to[- ]|s? of (?:its|the) (?:two )?posts?|$|[,\s])/,
  },
  {
    word: 'gateOpening',
    is: isLength,
    before: /(?:gates?|gap|opening|gateway)(?: of| is| about| that is| for it| wide|:|=|,)*\s*$/,
  },
  {
    word: 'gateOpening',
    is: isLength,
    after: /^[\s-]*(?:mm |m |ft |foot |in )?(?:wide )?(?:gates?|gap|opening|gateway|wide\b|for (?:it|the gate|a gate))/,
  },
]
/** “A 1 m gate right in the middle, as much fence on either side: how many posts?”, with the run told, here or before. */
function gateAmidIn(heard: Heard): Request | undefined {
  const said = heard.said.replace(/(\d)\.(?=\d)/g, '$1,')
  const goesOn = isAbout(heard, 'bays-in-run', 'gate-amid-run')
  if (
    !amid.test(said) ||
    !halves.test(said) ||
    /\b(?:middle|second|third|first|end) bay\b|\brails?\b|\bpickets?\b|\bdouble\b|\bgates\b|\bcorner\b/i.test(said)
  )
    return undefined
  const told = placedBy(spotsOf(heard), [...gate, ...widestBay, ...alongRun])
  const has = (word: string): boolean =>
    (told?.some((it) => it.word === word) ?? false) || (goesOn && knows(heard, word))
  if (!told || !(has('gateOpening') || has('gateCentres')) || !['runLength', 'widestBay'].every(has)) return undefined
  const wants = wantsIn(said)
  return requestFor('gate-amid-run', wants.length > 0 ? wants : ['posts'], told)
}
