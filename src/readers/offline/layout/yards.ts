// This file is about how long a fence is: a yard that the house closes on one side, a line less its ends, setbacks one behind the other.
import { toNumber } from '../../../../engine/index.ts'
import type { Request, Told } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { chosenBy } from '../request-parts.ts'
import { asked, knows, type Marked, tell, tellAgain } from './marked.ts'

const rectangle = /§[LN](\d+) (?:ft |feet )?(?:x|by|deep and|wide and|wide by|long by) §[LN](\d+)/
const closing =
  /house|garage|shed|barn|wall|building|bungalow|neighbo|no fence|closed?s?\b|already fenced|existing fence|open side/
// “The house is on one of the 40 sides”, “closes one 60 ft side”, “no fence on a 12 m side”.
const closedSide =
  /(?:one|1|a|the|an|of the|§N\d+)(?: of (?:the|my|its))? (?:short |long )?§[LN](\d+) (?:ft |foot |m |metre )?(?:sides?|ends?|lengths?|widths?)|(?:house|garage|wall|building)[^.?§]*? §[LN](\d+) (?:sides?|ends?|of)/
const asksFence =
  /how (?:many|much)[^?.]*(?:fence|fencing)|(?:feet|foot|ft|metres|meters|m) of (?:fence|fencing)|length of (?:the )?fence|total fence|fence (?:length|total)|how long[^?.]*fence|actual fence/
const otherThings = /how many (?:posts|pickets|palings|rails|panels|bags|holes|boards|sections|bays)/
const lessGates =
  /not counting|without|less the|minus|excluding|exclud|except|not including|actual|leav\w* out|take (?:off|out)|besides/

const numberOf = ({ quantity: size, bare }: Tagged): number => bare?.valueOf() ?? (size ? toNumber(size.amount) : 0)
const isSame = (one: Tagged | undefined, other: Tagged): boolean =>
  one !== undefined &&
  (one.bare !== null || other.bare !== null
    ? one.said.replace(/\D/g, '') === other.said.replace(/\D/g, '')
    : Math.abs(numberOf(one) / numberOf(other) - 1) < 1e-9)

/** A yard of two measures with a side closed: how much fence it takes, with its gates and without. */
export function fenceOfYard(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (it.has(otherThings)) return undefined
  const sides = it.find(rectangle) ?? []
  if (sides.length === 0) return gatesOff(it)
  if (!it.has(closing) || !it.has(asksFence) || knows(job, 'runLength')) return undefined
  const [closed, named] = closedSide.exec(it.text)?.slice(1).map(it.at) ?? []
  const shut = closed ?? named
  if (!shut || !sides.some((one) => one && isSame(shut, one))) return undefined
  const rest = readings.filter((one) => one !== shut && !sides.includes(one) && !isHeight(it, one))
  // “One in each 45 ft side” says where a gate is, and is no size of one.
  const places = rest.filter((one) => sides.some((side) => side && isSame(side, one)) && isSide(it, one))
  const gates = gatesTold(
    it,
    rest.filter((one) => !places.includes(one)),
  )
  if (!gates) return undefined
  const [across, along] = sides
  const [height] = readings.filter((one) => one !== shut && !sides.includes(one) && isHeight(it, one))
  const told = [
    ...tell('postAbove', height),
    ...tell('yardAcross', across),
    ...tell('yardAlong', along),
    ...tell('closedSides', shut),
    ...gates,
  ]
  return asked('fence-round-yard', told, gates.length > 0 && it.has(lessGates) ? 'fenceAlone' : 'fenceAround')
}

const mark = ({ heard }: Marked, reading: Tagged): string => `§[LN]${heard.readings.indexOf(reading)}`
const isHeight = (it: Marked, reading: Tagged): boolean =>
  it.has(
    new RegExp(
      `${mark(it, reading)} (?:ft |foot |in )?(?:tall|high|picket fence|fence\\b)|(?:height|tall|high)[^.?§]{0,12}${mark(it, reading)}\\b`,
    ),
  )
const isSide = (it: Marked, reading: Tagged): boolean => it.has(new RegExp(`${mark(it, reading)} (?:sides?|ends?)`))

/** Gates of a yard: some alike with their number, or one size for each; undefined where something else is among them. */
function gatesTold(it: Marked, rest: readonly Tagged[]): Told[] | undefined {
  if (rest.length === 0) return []
  if (!it.has(/gate/)) return undefined
  const isOne = (one: Tagged): boolean => one.bare?.equals(1) ?? false
  const counts = rest.filter(
    (one) => one.bare !== null && !isOne(one) && it.has(new RegExp(`${mark(it, one)} (?:[a-z]+ )?gates?`)),
  )
  const sizes = rest.filter((one) => !counts.includes(one) && !isOne(one))
  if (counts.length > 1 || sizes.length === 0) return undefined
  const [count] = counts
  if (count && sizes.length === 1) return [...tell('gates', count), ...tell('gateOpening', sizes[0])]
  if (count && !count.bare?.equals(sizes.length)) return undefined
  return sizes.flatMap((one) => tell('gateOpenings', one))
}

/** “Gates are one 4 ft and one 10 ft, so how much is fence?”: of the yard that was told before. */
function gatesOff(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (!knows(job, 'yardAcross') || !it.has(/gate/) || readings.length === 0) return undefined
  const gates = gatesTold(it, readings)
  return gates && gates.length > 0 ? asked('fence-round-yard', gates, 'fenceAlone') : undefined
}

const whole =
  /(?:boundary|line|frontage|front|lot|plot|side|whole|yard|wall to wall)\b[^?§]{0,40}§L(\d+)|§L(\d+) (?:[a-z]+ ){0,3}(?:boundary|frontage|line|from one)/g
const atEnds =
  /(?:at|off|on|from) (?:each|both|either) ends?[^?§]{0,50}§[LN](\d+)|§[LN](\d+)[^.?§]{0,40}(?:at|off|on|from|each|both) (?:each |both |either |the )?ends?\b/
const asksLeft =
  /how long (?:will|would|is|does|should)[^?.]*fence|how much fence|how much (?:is|will be) left|length of (?:the )?fence|what(?:'s|s| is)[^?.]*left|(?:which|what) (?:net |clear |total |exact )?length[^?.]*(?:remain|left|fence)|how many (?:ft|feet|foot|m|metres|meters) (?:of fence|of fencing|remain|are left|is left|to (?:build|fence))[^?.]*/
const takes = /takes? (?:up )?(?:another )?§[LN](\d+)/g

/** “The line is 16 m, a hedge takes 500 mm at each end: how long will the fence be?” */
export function lineLess(it: Marked): Request | undefined {
  if (!it.has(asksLeft) || it.has(/how many (?!ft|feet|foot|m |metres|meters)/)) return undefined
  if (it.has(/gate/) && !it.has(/gate[^.?§]{0,12} takes? (?:up )?(?:another )?§/)) return undefined
  const [ends, behind] = atEnds.exec(it.text)?.slice(1).map(it.at) ?? []
  const each = ends ?? behind
  const line = [...it.text.matchAll(whole)].map((found) => it.at(found[1] ?? found[2])).find((one) => one !== each)
  const pieces = each ? [] : [...it.text.matchAll(takes)].map((found) => it.at(found[1]))
  if (!line || line === each || (!each && pieces.length === 0)) return undefined
  // What it stands back from the pavement does not make it shorter.
  const isBack = (reading: Tagged): boolean =>
    it.has(
      new RegExp(
        `${mark(it, reading)} (?:back|behind|in from|inside|away|tall|high)|(?:back|behind)[^.?§]{0,16}${mark(it, reading)}`,
      ),
    )
  const rest = it.heard.readings.filter(
    (x) => x !== line && x !== each && !pieces.includes(x) && !isBack(x) && !x.bare?.equals(1) && !isBeside(it, x),
  )
  if (rest.length > 0) return undefined
  const [back, more] = it.heard.readings.filter((x) => x !== each && isBack(x))
  return asked('line-left', [
    ...(more ? [] : tell('setback', back)),
    ...tell('wholeLine', line),
    ...tell('offEachEnd', each),
    ...pieces.flatMap((x) => tell('takenOff', x)),
  ])
}

/** Years, dogs, and how deep the land is behind a front that is told apart, are no length of its line. */
const isBeside = (it: Marked, reading: Tagged): boolean =>
  reading.quantity?.kind === 'duration' ||
  reading.people !== undefined ||
  it.has(new RegExp(`${mark(it, reading)} (?:[a-z]+ )?(?:dogs?|cats?|kids?|children|neighbou?rs?|people|years?)\\b`)) ||
  (it.has(/front/) && it.has(new RegExp(`${mark(it, reading)} (?:deep|to the back)`)))

const faceStands =
  /(?:outside|outer|outward|street|road|front|boundary)?[- ]?(?:face|edge|side)s? of (?:the |my |each |our )*posts? (?:[a-z]+ ){0,3}§[LN](\d+) (?:mm )?(?:in |back |inside |in from |clear )*(?:from|off|of|inside|behind)? ?(?:the |my |our )?(?:boundary|line|lot|property|neighbou?r|title|fence line)/
const squarePost =
  /posts? (?:are |is |of |being )?§[LN](\d+)(?: mm)?(?: square| sq| wide)|§[LN](\d+) (?:square |sq |wide )?posts?/
/** “The outer face of the posts is 300 off the boundary, posts 100 square: how far in is the string on their centres?” */
export function centresFromFace(it: Marked): Request | undefined {
  const face = it.find(faceStands)?.[0]
  const [one, other] = it.find(squarePost) ?? []
  const wide = one ?? other
  if (!face || !wide || face === wide || it.heard.readings.length !== 2) return undefined
  if (!it.has(/cent(?:re|er)s?|middle/) || !it.has(/how far|where|distance|what/) || it.has(/picket|rail|cap/))
    return undefined
  const [quote] = /(?:face|edge|side)s? of (?:\w+ )?posts?/i.exec(it.heard.said) ?? []
  return quote
    ? asked(
        'post-line',
        [...tell('setback', face), ...tell('postWidth', wide), chosenBy('picketSide', 'inside', quote)],
        'postLineOffset',
      )
    : undefined
}

const asksFrom = /how far (?:out |in |back |away )?(?:from|is|off|does|do|should|will|would)[^?]*|distance from/
const inChain =
  /§[LN](\d+) (?:back|in|away|off|behind|inside)? ?(?:from|of|behind) (?:the )?[a-z]+|[a-z]+ is §[LN](\d+) (?:wide|deep|across)|(?:starts|begins|is|sits|lies) §[LN](\d+) (?:from|off|back|behind|in)|§[LN](\d+) (?:wide|deep) [a-z]+/g

/** “18 in back from the sidewalk, which is 4 ft wide and starts 6 ft from the curb: how far from the curb?”: one behind the other. */
export function setbacks(it: Marked): Request | undefined {
  const { readings } = it.heard
  if (readings.length < 2 || !it.has(asksFrom) || !it.has(/back from|set ?back|behind|starts|begins/)) return undefined
  if (
    !it.has(/curb|kerb|road|street|pavement|sidewalk|path|verge|walk/) ||
    it.has(/post center|post centre|gate|picket/)
  )
    return undefined
  const found = new Set([...it.text.matchAll(inChain)].map((one) => it.at(one.slice(1).find((x) => x !== undefined))))
  if (!readings.every((one) => found.has(one) && one.quantity?.kind === 'length')) return undefined
  // A width stands between two of them: without it they may lie beside each other.
  if (!it.has(/§L\d+ (?:wide|deep|across)/)) return undefined
  return asked(
    'lengths-together',
    readings.flatMap((one) => tell('lengths', one)),
    'lengthSum',
  )
}

const sticksOut =
  /(?:stick|stand|project|hang|come)s? (?:out |proud )?(?:by |about )?§[LN](\d+)[^.?§]*post|§[LN](\d+) (?:out |proud )?(?:in front of|proud of|past|beyond|out from) (?:the )?(?:front of (?:the )?)?(?:face of (?:the )?)?posts?/
/** “The pickets stick out 2 1/4 in in front of the posts, where does the post's centre go?” */
export function faceOut(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (
    !it.has(/picket|paling|face/) ||
    !it.has(/post(?:'s|s)? (?:center|centre)|where[^?.]*posts?[^?.]* go|cent(?:er|re) of the post/)
  )
    return undefined
  const [one, other] = sticksOut.exec(it.text)?.slice(1).map(it.at) ?? []
  const out = one ?? other
  const section = readings.find((x) => x.section)
  if (!out || readings.some((x) => x !== out && x !== section)) return undefined
  const sum = job.results.findLast((x) => x.word === 'lengthSum')
  const set = sum ? tellAgain('setback', sum.ref) : []
  if (set.length === 0 && !knows(job, 'setback')) return undefined
  return asked('post-line', [...set, ...tell('picketFaceOut', out), ...tell('postWidth', section)], 'postLineOffset')
}
