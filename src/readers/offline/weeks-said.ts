// This file is about work told day by day: “7 posts of an evening, 30 of them”, “only Saturdays”, “then three days to cure”, “what date am I done?”.
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { daysAtPaceIn } from './paces-said.ts'
import { chosenBy, requestFor, tell } from './request-parts.ts'

const own = 'days-by-the-week'
const time =
  '(?:day|evening|morning|afternoon|night|weekend|session|shift|nap|naptime|visit|lunch ?(?:hour|break)|break|outing|go|saturday|sunday)'
/** “4 a day”, “four posts of an evening”, “25 in a morning”. */
const each = new RegExp(
  `^\\s*(?:of (?:them|em|those)\\s+)?(?:[\\p{L}']+\\s+){0,2}?(?:(?:of|in|on)\\s+)?(?:a|an|one|per|each|every|\\/)\\s*${time}\\b`,
  'iu',
)
const oneTime = new RegExp(`^(?:a|an|one|each|every)\\s+${time}$`, 'i')
const asksDay =
  /\b(?:what|which)(?:['’]?s)?(?: the)? (?:day|date|weekday)\b|\bwhen (?:am|are|can|will|do|would|should|could|is)\b|\b(?:what|which|whats)\b[^.?!]*\blast day\b/i
const asksWeeks = /\bhow many (?:weeks|weekends)\b/i
const asksDays = /\bhow (?:many (?:days|evenings|nights|mornings|afternoons|sessions)|long)\b/i
const asksAll = /\b(?:whole|all|total|altogether|everything|in all|start to finish)\b/i
const waits = /\b(?:cur(?:e|es|ing)|sit|sits|stand|wait\w*|dry|dries|drying|set up|harden\w*|rest|before)\b/i
const other = /\b(?:notice|call(?:ed|ing)?|hire|rent\w*|moisture|meter|percent|inspect\w*)\b|%/i

/** The request of a message that tells work by the day or evening, or goes on with it. */
export function weeksIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const isOn = job.named === own || job.named === 'days-at-pace' || isBehindDate(heard)
  if (other.test(said) || readings.some((it) => /^(?:money|percent|area|volume)$/.test(it.quantity?.kind ?? '')))
    return undefined
  const found = parts(heard, isOn)
  if (!found) return undefined
  const { pace, many, coats, wait, spans, dates } = found
  const week = weekTold(said)
  const weekday = dates.length === 0 ? weekdayTold(said) : undefined
  const extras = [coats, wait, week, weekday, ...dates].some((it) => it !== undefined) || asksWeeks.test(said)
  if (readings.length === 0 && !isOn) return bare(heard)
  if (!isOn) {
    const isPaced = pace !== undefined && (many !== undefined || spans.length === 0)
    const isSpanned =
      !pace && !many && spans.length > 0 && week !== undefined && (asksWeeks.test(said) || asksDay.test(said))
    const answersDays = job.asked.length > 0 && job.wanted.some((it) => it.word === 'diggingDays')
    const isAsked = asksDay.test(said) || asksWeeks.test(said) || asksDays.test(said) || answersDays
    if (!(isPaced || isSpanned) || !isAsked) return undefined
    if (!extras && daysAtPaceIn(heard)) return undefined
  } else if (!extras && spans.length === 0 && job.named !== own) return undefined
  else if (readings.length === 0 && !extras && !asksDay.test(said)) return undefined
  const isLinked = job.named === 'days-at-pace' || job.decisions.some((it) => it.word === 'daysDone')
  const told: Told[] = [
    ...(job.named === 'days-at-pace' ? [tell('daysDone', 'worked.days-at-pace.daysAtPace')] : []),
    ...(isBehindDate(heard) && dates.length === 0
      ? [tell('fromDay', job.results.find((it) => it.word === 'dateLater')?.ref ?? '')]
      : []),
    ...(many ? [tell(isLinked ? 'piecesToDo' : 'thingsToDo', many.tag)] : []),
    ...(pace ? [tell(isLinked ? 'piecesADay' : 'thingsATime', pace.tag)] : []),
    ...(coats ? [tell('timesOver', coats.tag)] : []),
    ...spans.map((it) => tell('otherDays', it.tag)),
    ...(wait ? [tell('waitBehind', wait.tag)] : []),
    ...(week ? [chosenBy('weekWorked', week.option, week.quote)] : []),
    ...(weekday ? [chosenBy('firstWeekday', weekday.option, weekday.quote)] : []),
    ...dates.map((it) => tell('fromDay', it.tag)),
  ]
  const had = job.named === own ? job.wanted[0]?.word : undefined
  const knows = (word: string): boolean =>
    told.some((it) => it.word === word) || job.decisions.some((it) => it.word === word)
  const ofDay = (): string =>
    knows('firstWeekday') && !knows('fromDay') ? 'weekdayReached' : knows('waitBehind') ? 'readyOn' : 'lastDayOn'
  const asked = asksWeeks.test(said)
    ? 'weeksWorked'
    : asksDay.test(said) || dates.length > 0 || weekday
      ? ofDay()
      : asksDays.test(said) || asksAll.test(said)
        ? 'daysInAll'
        : (had ?? 'daysInAll')
  return requestFor(own, [asked], told)
}

/** “Then I’ve four days of rails”, behind a date so many days later: work that begins on that date. */
const isBehindDate = ({ said, job, readings }: Heard): boolean =>
  job.named === 'days-later' &&
  job.results.some((it) => it.calculation === 'days-later' && it.word === 'dateLater') &&
  readings.some((it) => it.quantity?.kind === 'duration') &&
  /\b(?:then|after (?:that|which)|from (?:then|there|that day)|next|on from)\b/i.test(said) &&
  /\b(?:days?|weeks?) (?:of|for|on) (?!wait|dry|cur)|\b(?:takes?|work\w*|counting|including|starting|hang\w*|build\w*|paint\w*|nail\w*|rail\w*)\b/i.test(
    said,
  ) &&
  !/\b(?:wait\w*|leave|cure|curing|dry\w*|sit|before)\b/i.test(said)

interface Parts {
  readonly pace: Tagged | undefined
  readonly many: Tagged | undefined
  readonly coats: Tagged | undefined
  readonly wait: Tagged | undefined
  readonly spans: readonly Tagged[]
  readonly dates: readonly Tagged[]
}

/** What each quantity is; nothing where one is none of these, or two are the same. */
function parts({ said, readings }: Heard, isOn: boolean): Parts | undefined {
  const behind = (it: Tagged): string => said.slice(it.end, it.end + 48)
  const idle = (it: Tagged): boolean => oneTime.test(it.said) || it.people === true || isOnceADay(it, behind(it))
  const of = readings.filter((it) => !idle(it))
  const isWhole = (it: Tagged): boolean => it.bare?.d === 1n && !it.section && !it.clock && !it.proportion && !it.change
  const dates = of.filter((it) => it.quantity?.kind === 'date')
  const days = of.filter((it) => it.quantity?.kind === 'duration' && /^(?:day|week)$/.test(it.quantity.unit))
  const coats = of.filter((it) => isWhole(it) && /^\s*coats?\b/i.test(behind(it)))
  const paces = of.filter((it) => isWhole(it) && each.test(behind(it)) && !coats.includes(it))
  const rest = of.filter((it) => isWhole(it) && !coats.includes(it) && !paces.includes(it))
  const waiting = days.filter((it) => isWait(it, said))
  const isCured = waiting.length === 1 && (paces.length > 0 || days.length === 1) && (isOn || paces.length > 0)
  const spans = days.filter((it) => !(isCured && waiting.includes(it)))
  const lists = [dates, coats, paces, rest]
  const total = dates.length + days.length + coats.length + paces.length + rest.length
  if (lists.some((it) => it.length > 1) || total < of.length) return undefined
  return { pace: paces[0], many: rest[0], coats: coats[0], wait: isCured ? waiting[0] : undefined, spans, dates }
}

/** “One nap a day”: every one of them is a day. */
const isOnceADay = ({ bare }: Tagged, behind: string): boolean =>
  bare?.equals(1) === true && new RegExp(`^\\s+${time}\\s+(?:a|per|each|every)\\s+day\\b`, 'i').test(behind)

/** “Has to sit three days”, “then 7 days cure”. */
const isWait = ({ start, end }: Tagged, said: string): boolean =>
  waits.test(said.slice(Math.max(0, start - 24), start).replace(/^.*[.;,]/s, '')) ||
  waits.test((/^[^.;,]*/.exec(said.slice(end, end + 24))?.[0] ?? '').trimStart().split(/\s+/).slice(0, 3).join(' '))

/** “How many weeks will it take me to hang my pickets?”: nothing is told yet. */
const bare = ({ said, job }: Heard): Request | undefined =>
  job.decisions.length === 0 &&
  job.wanted.length === 0 &&
  /\bhow many (?:weeks|weekends|evenings|mornings)\b[^.?!]*\b(?:take|need|spend|put up|hang|build|paint|set|dig|finish)\b/i.test(
    said,
  ) &&
  !/\b(?:dry|cure|wait|last|notice|rent)\b/i.test(said)
    ? requestFor(own, [/\bweek/i.test(said) ? 'weeksWorked' : 'daysInAll'], [])
    : undefined

const dayNames = 'monday|tuesday|wednesday|thursday|friday|saturday|sunday'
const counts = ['one', 'two', 'three', 'four'] as const

/** The days of the week that are worked, as one of the patterns; nothing where none is told. */
export function weekTold(said: string): { option: string; quote: string } | undefined {
  const found = (option: string, at: RegExpExecArray | null) => (at ? { option, quote: at[0].trim() } : undefined)
  const ofSundays =
    /\b(?:but|except|bar|not|no|never|skip\w*|off|without|barring)\s+(?:on |for |the |work |\p{L}+ing )*sundays?\b|\bsundays? off\b|\b(?:six|6) days a week\b|\bmonday (?:to|through|thru|till|until) saturday\b/iu
  const ofWeekdays =
    /\bmonday (?:to|through|thru|till|until) friday\b|\bweekdays\b|\b(?:no|not|except|but not|but|skip\w*|without|never)\s+(?:on |the |at |for |work(?:ing)? )*weekends?\b|\bweekends? off\b|\bonly (?:count )?work(?:ing)? ?days\b/i
  const day = `(?:${dayNames})s?(?: (?:mornings?|evenings?|afternoons?|nights?))?`
  const row = `${day}(?:[\\s,&/]+(?:(?:and|or)\\s+)?${day})*`
  const only = new RegExp(`\\b(?:only|just)\\b[^.;?!]{0,24}?\\b${row}\\b|\\b${row}\\s+only\\b`, 'i').exec(said)
  if (only) {
    const names = new Set(only[0].toLowerCase().match(new RegExp(`\\b(?:${dayNames})`, 'g')) ?? [])
    const isWeekend = names.size === 2 && names.has('saturday') && names.has('sunday')
    const option = isWeekend ? 'weekends' : counts[names.size - 1]
    return option ? { option, quote: only[0].trim() } : undefined
  }
  return (
    found('weekends', /\b(?:only|just)\b[^.;?!]{0,20}\bweekends?\b|\bweekends only\b/i.exec(said)) ??
    found('notSundays', ofSundays.exec(said)) ??
    found('weekdays', ofWeekdays.exec(said)) ??
    found(
      'every',
      /\b(?:do ?n['’]?t|not|never|without) (?:skip\w*|miss\w*) (?:any|a day|one)\b|\bno days? off\b|\bevery (?:single )?(?:day|evening|night)\b|\bstraight through\b|\b(?:seven|7) days a week\b|\bweekends? too\b/i.exec(
        said,
      ),
    )
  )
}

/** “Start on a Monday”, and no date. */
function weekdayTold(said: string): { option: string; quote: string } | undefined {
  const found = new RegExp(
    `\\b(?:start\\w*|begin\\w*|first day|kick off|commenc\\w*)\\b(?:\\s+(?:is|on|work|it|this|next|a|the|of|in|going|up|digging|painting)\\b)*\\s+(${dayNames})\\b`,
    'i',
  ).exec(said)
  return found?.[1] ? { option: found[1].toLowerCase(), quote: found[0] } : undefined
}
