// This file is about paces that are told: “3 holes an hour, two hours of an evening”, “40 m of fence at 6 m a day”.
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { requestFor, tell } from './request-parts.ts'

const behind = ({ said }: Heard, { end }: Tagged): string => said.slice(end, end + 48).toLowerCase()
const before = ({ said }: Heard, { start }: Tagged): string => said.slice(Math.max(0, start - 48), start).toLowerCase()

const isWhole = (it: Tagged): boolean => it.bare !== null && !it.section && !it.clock && !it.people && !it.proportion
/** “An hour”, “a day”: what the pace is told for, and no time of its own. */
const isOneOf = (it: Tagged, unit: RegExp): boolean => unit.test(it.said.toLowerCase())

const anHour = /^\s*(?:(?:post\s*)?holes?\s*)?(?:an|per|each|every|in an|\/)\s*(?:hour|hr|h)\b/
const ofHoles = /^\s*(?:of (?:them|those|these)\b|(?:\w+\s+)?(?:post\s*)?(?:holes?|postholes?|posts?)\b)/
const asksTime = /\b(?:how (?:many|long)|when|days?|evenings?|nights?|weekends?|hours?|time)\b/i
const beside =
  /\b(?:beside|with|alongside|comes? (?:along|too)|joins?|helps?|helping|too|as well|also)\b|\band (?:my|our|his|her|the|a|he|she|they|[A-Z]\w+)\b/i
const ofADay =
  /^\s*(?:(?:of work|at a time|or so)\s+)?(?:an?|per|each|every|of an?|in the|in an?|\/)?\s*(?:days?|evenings?|nights?|sessions?|afternoons?|mornings?|weekends?|daily)\b/
const daysOf =
  /\b(?:days?|evenings?|nights?|sessions?|afternoons?|mornings?)\s+(?:of|are|last|is|with|have)?\s*(?:about |only )?$/

/** Holes an hour, of one or of several who dig. */
export function diggingRateIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const isOn = job.named === 'digging-by-rate'
  const rates = readings.filter((it) => isWhole(it) && anHour.test(behind(heard, it)))
  const idle = readings.filter((it) => isOneOf(it, /^(?:an|one) (?:hour|hr)$/))
  const rest = readings.filter((it) => !rates.includes(it) && !idle.includes(it))
  const holes = rest.filter((it) => isWhole(it) && ofHoles.test(behind(heard, it)))
  const times = rest.filter((it) => it.quantity?.kind === 'duration')
  if (holes.length > 1 || times.length > 1 || holes.length + times.length < rest.length) return undefined
  // “With half an hour for lunch” is no day’s work.
  if (times.some((it) => !ofADay.test(behind(heard, it)) && !daysOf.test(before(heard, it)))) return undefined
  if (!isOn && (rates.length === 0 || !/\b(?:dig\w*|dug|holes?|auger)\b/i.test(said) || !asksTime.test(said)))
    return undefined
  if (isOn && rates.length + rest.length === 0) return undefined
  const isBeside =
    isOn && rates.length > 0 && beside.test(said) && !/\b(?:instead|if i|i can only|actually i)\b/i.test(said)
  const had = job.decisions.find((it) => it.word === 'holesByHour')?.value
  const kept = isBeside && Array.isArray(had) ? had.map((_, i) => tell('holesByHour', `job.holesByHour.${i}`)) : []
  const told: Told[] = [
    ...holes.map((it) => tell('posts', it.tag)),
    ...kept,
    ...rates.map((it) => tell('holesByHour', it.tag)),
    ...times.map((it) => tell('dayHours', it.tag)),
  ]
  const ofDays =
    times.length > 0 || /\bhow many (?:days|evenings|nights|afternoons|mornings|weekends|sessions)\b/i.test(said)
  const wants = ofDays ? 'diggingDays' : isOn ? (job.wanted[0]?.word ?? 'diggingClock') : 'diggingClock'
  return requestFor('digging-by-rate', [wants], told)
}

const aDay = /^\s*(?:[\p{L}]+\s+){0,3}?(?:a|per|each|every|in a|\/)\s*(?:day|evening|weekend|session|night)\b/u
const thing =
  /^\s*(?:of\s+)?(?:fence|line|run|it|pickets?|palings?|posts?|holes?|bays?|panels?|boards?|rails?|sections?)\b/
const asksDays =
  /\b(?:how (?:many (?:days|evenings|weekends|nights)|long (?:will|would|does|to|is))|when (?:will|am|are)|days)\b/i
const asksBare =
  /\bhow (?:many days|long)\b[^.?!]*\b(?:to (?:put (?:it|this|the fence|a fence) up|put up|build|erect|finish)|(?:will|would|does) (?:it|this|the fence) take)\b/i
const ofDrying = /\b(?:dry|dries|moisture|cure|set|paint\w*|stain\w*|coats?|recoat|notice|call|hire|rent\w*|%)\b/i

/** So much of it a day, and how much there is. */
export function daysAtPaceIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const isOn = job.named === 'days-at-pace'
  if (ofDrying.test(said) || readings.some((it) => it.quantity?.kind === 'money')) return undefined
  if (readings.length === 0)
    return asksBare.test(said) && job.decisions.length === 0 && job.wanted.length === 0
      ? requestFor('days-at-pace', ['daysAtPace'], [])
      : undefined
  const idle = readings.filter((it) => isOneOf(it, /^(?:a|one|each) (?:day|evening|weekend|night)$/))
  const paces = readings.filter(
    (it) => !idle.includes(it) && (isLength(it) || isWhole(it)) && aDay.test(behind(heard, it)),
  )
  const rest = readings.filter((it) => !idle.includes(it) && !paces.includes(it))
  const [pace, second] = paces
  const [much, more] = rest
  if (second || more || (!pace && !isOn)) return undefined
  if (pace && !isOn && !much && !asksDays.test(said)) return undefined
  if (
    much &&
    !(
      (isLength(much) && !ofPart.test(behind(heard, much))) ||
      (isWhole(much) &&
        (thing.test(behind(heard, much)) || /\b(?:have|got|all|there are|need|of)\s*$/.test(before(heard, much))))
    )
  )
    return undefined
  const kindOf = (it: Tagged | undefined): string | undefined => it && (isLength(it) ? 'length' : 'pieces')
  const known = job.decisions.some((it) => it.word === 'piecesToDo' || it.word === 'piecesADay') ? 'pieces' : 'length'
  const kind = kindOf(pace) ?? (isOn ? known : undefined)
  if (!kind || (much && kindOf(much) !== kind)) return undefined
  return requestFor(
    'days-at-pace',
    ['daysAtPace'],
    [
      ...(much ? [tell(kind === 'length' ? 'lengthToDo' : 'piecesToDo', much.tag)] : []),
      ...(pace ? [tell(kind === 'length' ? 'lengthADay' : 'piecesADay', pace.tag)] : []),
    ],
  )
}
/** “1.8 m high”, “2.4 m bays”: no length of the fence. */
const ofPart =
  /^\s*(?:high|tall|wide|apart|deep|thick|across|bays?|posts?|panels?|pickets?|palings?|rails?|cent(?:er|re)s?|gate)\b/
const isLength = ({ quantity, section, change }: Tagged): boolean => !section && !change && quantity?.kind === 'length'

const putOn = /^\s*(?:to (?:put|roll|brush|spray|get|apply|do)\b|(?:for|per|a|each|every) coat\b|a coat\b)|^\s*on\b/
const coatTakes = /\bcoats?\b[^.;,]*\b(?:takes?|needs?|is|lasts?)\b[^.;,]*$/
const waits =
  /^\s*(?:(?:to |of )?(?:dry\w*|wait\w*|cure\w*)|between|before (?:the )?(?:next|another|recoat\w*)|till (?:the )?next)/
const waitsBefore =
  /\b(?:dr(?:y|ies|ying)|waits?|leave it|left|recoat(?:ed)? after|between (?:coats|them)|then)\b[^.;,]*$/
const asksWhen = /\b(?:when|what time|how long|finish\w*|done|end)\b/i
const asksCoats = /\bhow many coats\b/i
const starts = /\b(?:start\w*|begin\w*|from|at|kick off)\s*(?:at\s*)?$/
const stops =
  /\b(?:dew|dark|rain|sun(?:set)?|until|till|before|by|after|past|stop\w*|from|cut ?off|no later than)\b[^.;,]*$/

/** Coats with their time and the wait between them, from one hour of the day on. */
export function coatsClockIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const isOn = job.named === 'coats-by-clock'
  if (!/\b(?:coats?|dew|dark|start\w*|begin\w*)\b/i.test(said)) return undefined
  const told: Told[] = []
  const hours = readings.filter((it) => isHour(it, said))
  const clocks = hours.length
  for (const it of readings) {
    const [front, back] = [before(heard, it), behind(heard, it)]
    if (hours.includes(it)) {
      const isStop = stops.test(front) && !/\b(?:start\w*|begin\w*)\b[^.;,]*$/.test(front)
      const isStart =
        starts.test(front) && (clocks === 1 ? !isOn || /\b(?:start\w*|begin\w*)\b/.test(front) : it === hours[0])
      told.push(tell(isStart || !isStop ? 'startsAt' : 'stopsAt', it.tag))
    } else if (it.quantity?.kind === 'duration') {
      if (waits.test(back)) told.push(tell('coatWait', it.tag))
      else if (putOn.test(back) || coatTakes.test(front)) told.push(tell('coatTime', it.tag))
      else if (waitsBefore.test(front)) told.push(tell('coatWait', it.tag))
      else return undefined
    } else if (isWhole(it) && /^\s*(?:more\s+)?coats?\b/.test(back)) told.push(tell('coats', it.tag))
    else return undefined
  }
  const has = (word: string): boolean => told.some((it) => it.word === word)
  if (new Set(told.map((it) => it.word)).size < told.length || told.length === 0) return undefined
  if (!isOn && !(has('coatTime') && has('coatWait') && (asksWhen.test(said) || asksCoats.test(said)))) return undefined
  const wants = asksCoats.test(said) || (has('stopsAt') && !has('coats')) ? 'coatsDone' : 'coatsSpan'
  return requestFor('coats-by-clock', [wants], told)
}

/** “8 am”, “5 pm”, “1700”, “start at 8”. */
const isHour = (it: Tagged, said: string): boolean =>
  it.clock === true ||
  (it.bare?.d === 1n &&
    /\b(?:start\w*|begin\w*|from|dew at|until|till)\s*(?:at\s*)?$/i.test(
      said.slice(Math.max(0, it.start - 20), it.start),
    ) &&
    it.bare.compare(24) <= 0)
