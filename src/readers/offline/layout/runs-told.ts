// This file is about whole runs told in a talk: pickets along one, a lot less its sides, a face half open to the wind.
import { isQuantity, quantity, sameValue, yard } from '../../../../engine/index.ts'
import type { Request } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { chosenBy } from '../request-parts.ts'
import { again, asked, isLast, isLonger, knows, type Marked, tell, tellAgain } from './marked.ts'

const firstOf = (it: Marked, pattern: RegExp): Tagged | undefined =>
  pattern
    .exec(it.text)
    ?.slice(1)
    .map(it.at)
    .find((one) => one !== undefined)

const picket = '(?:pickets?|palings?|pales?|slats?|boards?)'
const width = new RegExp(
  `${picket}(?: are| is| of| at|'re|,|:)* §[LN](\\d+)|§[LN](\\d+) (?:mm |in |inch )?(?:wide )?${picket}\\b|§[LN](\\d+) wide\\b`,
)
const gap =
  /gaps?(?: of| is| are| about|,|:)* §[LN](\d+)|§[LN](\d+) (?:mm |in |inch )?(?:between|gaps?|apart|spaces?|spacing)/
const asWide =
  /(?:gaps?|spaces?|spacing)[^.?§]*(?:same as|as wide as|equal to|like)[^.?§]*(?:picket|slat|paling|board|width)|(?:same|equal) (?:gap|space) as/
// No opening between two posts is wider.
const widestOpening = quantity(14, 'ft')
const isOfPickets = ({ heard: { job } }: Marked): boolean =>
  job.asked.some((one) => one.word === 'opening' || one.word === 'picketWidth') ||
  job.wanted.some((one) => one.word === 'pickets' || one.word === 'picketsHung')

/** “48 ft long, pickets 3 1/2 wide, 2 1/2 between them”: a run of pickets, since no opening is as wide. */
export function picketsOfRun(it: Marked): Request | undefined {
  const { readings, job } = it.heard
  const [line, more] = it.lengths.filter((one) => isLonger(one, widestOpening))
  if (!line || more || it.has(/rail|post|bay|gate|high|tall|stain|paint|screw|each side|price|cost|\$|£/))
    return undefined
  const goesOn = isOfPickets(it)
  if (
    !goesOn &&
    !it.has(new RegExp(`how many ${picket}|${picket}[^?.]*how many`)) &&
    !(it.has(new RegExp(picket)) && readings.length === 3)
  )
    return undefined
  const [wide, open] = [firstOf(it, width), firstOf(it, gap)]
  const told = [line, wide, open].filter((one) => one !== undefined)
  if (new Set(told).size < told.length || readings.some((one) => !told.includes(one))) return undefined
  if (!wide && !(knows(job, 'picketWidth') && goesOn)) return undefined
  if (!wide && !it.has(/same|side|yard|stretch|back|other|fence|it/)) return undefined
  const before = wide
    ? []
    : [...(!open && !knows(job, 'wantedGap') && knows(job, 'widestGap') ? tellAgain('wantedGap', 'job.widestGap') : [])]
  const same =
    it.has(asWide) && wide && !open
      ? [{ word: 'wantedGap', at: yard, from: { tag: null, quote: wide.said, option: null, usual: null } }]
      : []
  return asked(
    'pickets-by-length',
    [...tell('runLength', line), ...tell('picketWidth', wide), ...tell('wantedGap', open), ...before, ...same],
    'picketsHung',
  )
}

/** “3 in gaps look better, how many then?” */
export function gapAnew(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  if (!only || more || !isLast(job, 'pickets-by-length') || it.has(/at most|no more|max|rail|post/)) return undefined
  return firstOf(it, gap) === only ? again(tell('wantedGap', only)) : undefined
}

/** “Gap same as the slat”. */
export function gapAsWide(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (readings.length > 0 || !it.has(asWide) || !isOfPickets(it) || !knows(job, 'picketWidth')) return undefined
  return asked(
    isLast(job, 'pickets-by-length') || knows(job, 'runLength') ? 'pickets-by-length' : 'picket-spacing',
    tellAgain('wantedGap', 'job.picketWidth'),
    isLast(job, 'pickets-by-length') || knows(job, 'runLength') ? 'picketsHung' : 'pickets',
  )
}

const stakes =
  /(?:stakes?|pins?|pegs?|markers?|corners?|neighbou?rs?|lot|plot|block|line|boundary|property|front|frontage|yard)[^.?§]{0,36}§L(\d+)|§L(\d+) (?:apart|wide|across|from (?:stake|pin|corner|line) to)/g
const inside =
  /§[LN](\d+) (?:inside|in|back|off|from|clear|short|away)[^.?§]*(?:each|both|either) (?:end|side|neighbou?r|line|boundar|lot)|(?:each|both|either) (?:ends?|sides?)[^.?§]{0,30}§[LN](\d+) (?:inside|in|back|off|from|clear)|§[LN](\d+) (?:at|on) (?:each|both|either) (?:end|side)/
const asksLong = /how long[^?.]*(?:fence|run|line)|how (?:much|long a) fence|what length|length of/
/** “Eight inches inside my line at both ends, the stakes are 130 ft apart: how long a fence?” */
export function lotTold(it: Marked): Request | undefined {
  if (!it.has(asksLong) || it.has(/how many|gate|picket|post\b/)) return undefined
  const each = firstOf(it, inside)
  const line = [...it.text.matchAll(stakes)]
    .map((found) => it.at(found[1] ?? found[2]))
    .find((one) => one !== undefined && one !== each)
  if (!each || !line || it.heard.readings.length !== 2 || !line.quantity || !each.quantity) return undefined
  if (!isLonger(line, each.quantity)) return undefined
  return asked('line-between-lots', [...tell('lotWidth', line), ...tell('keptEachSide', each)], 'runLength')
}

const takenOut = /(?:leav\w*|tak\w*|cut\w*|less|minus|without|los\w*|subtract\w*)[^.?§]*§[LN](\d+)/
/** “And if we leave 4 ft out of that for a gate?”, “what if it is 2 ft from each side instead of 18 in?” */
export function lotAgain(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (!knows(job, 'lotWidth') || !knows(job, 'keptEachSide')) return undefined
  const isSaid = (word: string, one: Tagged): boolean => {
    const before = job.decisions.findLast((old) => old.word === word)?.value
    return isQuantity(before) && one.quantity !== null && sameValue(before, one.quantity)
  }
  const fresh = readings.filter((one) => !isSaid('keptEachSide', one) && !isSaid('lotWidth', one))
  const [only, more] = fresh
  if (!only || more || only.section) return undefined
  const out = firstOf(it, takenOut)
  const worked = job.results.findLast((one) => one.word === 'runLength')
  if (out === only && it.has(/gate|drive|opening|gap|walk|path/) && worked)
    return asked('line-left', [...tellAgain('wholeLine', worked.ref), ...tell('takenOff', only)], 'runLength')
  if (it.has(/(?:each|both|either) (?:side|end)/) && it.has(/what if|instead|rather|not|make|now|sorry|actually/))
    return isLast(job, 'line-between-lots')
      ? again(tell('keptEachSide', only))
      : asked('line-between-lots', tell('keptEachSide', only), 'runLength')
  return undefined
}

const openPart =
  /§Q(\d+) of (?:it|that|the [a-z]+)(?: (?:fence|face|panel))?(?: is)?(?: just| only| all)? (?:open|air|gap|empty)|§Q(\d+) open/
/** “20 lb to the square foot on a bay 8 ft by 4 ft high, half of it open”. */
export function windOpen(it: Marked): Request | undefined {
  const { readings } = it.heard
  const open = firstOf(it, openPart)
  const pressure = readings.find((one) => one.quantity?.kind === 'pressure')
  if (open?.quantity?.kind !== 'percent' || !pressure || it.lengths.length !== 2) return undefined
  const wide = firstOf(
    it,
    /§L(\d+) (?:wide |long )?(?:bay|panel|section|span|wide|apart)|(?:bay|panel|section|span)s?(?: is| of| are)? §L(\d+)/,
  )
  const tall = firstOf(it, /§L(\d+) (?:tall|high)/)
  if (
    !wide ||
    !tall ||
    wide === tall ||
    readings.some((one) => ![open, pressure, wide, tall].includes(one) && !one.bare?.equals(1))
  )
    return undefined
  const [onWood] =
    /\b(?:of|on)(?: the| that)?(?: solid| bare)? (?:wood|timber|board|boards)\b/i.exec(it.heard.said) ?? []
  const [quote] = /\b(?:factored|ultimate|strength level)\b/i.exec(it.heard.said) ?? []
  return asked(
    'wind-from-pressure',
    [
      ...tell('givenPressure', pressure),
      ...tell('bayCentres', wide),
      ...tell('postAbove', tall),
      ...tell('openPart', open),
      ...(onWood ? [chosenBy('pressureOn', 'wood', onWood)] : []),
      ...(quote ? [chosenBy('pressureLevel', 'strength', quote)] : []),
    ],
    'sideForce',
  )
}
