// This file is about the days of a job: the day it starts on, days lost to rain, Saturdays worked too.
import { type Calculation, calculationNamed, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { empty, from } from './plain-phrases.ts'

const later = calculationNamed('working-days-later') as Calculation

const lost =
  /\b(?:los(?:e|es|ing|t)|rain\w*|weather\w*|storm\w*|snow\w*|delay\w*|off sick|sick|washed out|set back|behind)\b/i
const sixDays = /\b(?:saturdays?|sats?|six[- ]day week|6[- ]day week|six days a week|6 days a week)\b/i
const sevenDays =
  /\b(?:sundays? too|saturdays? and sundays?|weekends? (?:too|as well|also)|(?:also|works?) (?:on )?weekends|seven days a week|7 days a week|every day of the week|straight through the weekend)\b/i
const notWorked =
  /\b(?:no|not|don['’]?t|doesn['’]?t|without|except|off|closed|never|but not)\b[^.;,]{0,20}\b(?:saturdays?|sats?|weekends?)\b/i

/** What a message says of the days that are worked, behind a date of a job or beside one. */
export function workDaysIn(heard: Heard): Request | undefined {
  const { said, job, readings } = heard
  const goesOn = job.wanted.some(({ word }) => later.gives[word])
  if (!goesOn || job.asked.some((it) => it.word !== 'holidays')) return undefined
  const week = weekTold(said)
  const days = readings.filter(isDays)
  const [only, more] = days
  const isLost = only !== undefined && more === undefined && lost.test(said)
  if ((days.length > 0 && !isLost) || readings.length > days.length || (!isLost && week.length === 0)) return undefined
  return {
    ...empty,
    told: [...(only ? [{ word: 'lostDays', at: yard, from: from(only.tag) }] : []), ...week],
    wants: [{ word: 'lastWorkDay', at: yard }],
    calculation: later.name,
  }
}

const isDays = ({ quantity, bare, people }: Tagged): boolean =>
  !people && (bare !== null ? bare.d === 1n : quantity?.kind === 'duration' && quantity.unit === 'day')

function weekTold(said: string): Told[] {
  if (notWorked.test(said)) return []
  const seven = sevenDays.exec(said)
  const found = seven ?? sixDays.exec(said)
  if (!found || !/\b(work\w*|too|also|as well|includ\w*|count\w*|put in|if|and|on|week)\b/i.test(said)) return []
  const option = seven ? 'seven' : 'six'
  return [{ word: 'workWeek', at: yard, from: { tag: null, quote: found[0], option, usual: null } }]
}

/** “And counting working days only?”, behind a date so many days later. */
export function asWorkingDaysIn({ said, job, readings }: Heard): Request | undefined {
  const isCounted =
    /\b(?:only|just|count\w*|if|in)\b[^.?!]*\b(?:work(?:ing)?[- ]?days?|business days?|weekdays?)\b|\bmonday (?:to|through|till|until) friday\b|\b(?:no|not|without|skip\w*|except) (?:counting |the )?weekends?\b/i
  if (job.named !== 'days-later' || readings.length > 0 || !isCounted.test(said)) return undefined
  if (!job.decisions.some((it) => it.word === 'laterBy')) return undefined
  return {
    ...empty,
    told: [{ word: 'daysAhead', at: yard, from: from('told.laterBy') }],
    wants: [{ word: 'dayReached', at: yard }],
    calculation: later.name,
  }
}

const startsOn =
  /\b(?:start|starts|starting|begin|begins|beginning|kick(?:ing)? off|from)(?: work| digging| building)?(?: on)?(?: the)?\s*$/i
const asksEnd =
  /\b(?:what|which|when)\b[^.?!]*\b(?:done|finish\w*|end|ends|complete|over|wrap|last day)\b|\b(?:last (?:working |work )?day|end date|finish(?:ing|ed)? (?:date|day|when)|done (?:when|by when))\b/i
const ofWork = /^\s*(?:(?:working|work|business|week)[- ]?days?|days? of (?:work|labou?r)|days?\b)/i
const isWorking =
  /\bwork(?:ing)?[- ]?days?\b|\bdays? of work\b|\bbusiness\b|\bdays? work\b|\b(?:no|not|off|without|except) (?:on |working )?(?:the )?weekends?\b|\bweekends? off\b|\bweekdays?\b|\bmonday (?:to|through) friday\b/i

/** Days that are lost, by the words beside them: “lose 2 days to rain”, “two rain days”. */
const isLostOf = ({ start, end }: Tagged, said: string): boolean =>
  /\b(?:los(?:e|es|ing|t)|rained? off|rains?(?: for)?|delay\w*(?: by| of)?)\s*(?:about\s*)?$/i.test(
    said.slice(Math.max(0, start - 24), start),
  ) ||
  /^\s*(?:working )?(?:days? )?(?:lost|(?:to|of|for) (?:the )?(?:rain|weather)|rain days?)\b/i.test(
    said.slice(end, end + 32),
  )

/** “We start Monday June second and it takes nine working days, what day are we done?”: one date, one number of days, and what is lost of them. */
export function jobDaysIn(heard: Heard): Request | undefined {
  const { said, job, readings } = heard
  const [date, ...others] = readings.filter((it) => it.quantity?.kind === 'date')
  const days = readings.filter(isDays)
  const gone = days.filter((it) => isLostOf(it, said))
  const [many, more] = days.filter(
    (it) => !gone.includes(it) && (it.quantity !== null || ofWork.test(said.slice(it.end, it.end + 40))),
  )
  const isWhole = readings.length === 2 + gone.length && gone.length <= 1
  if (!date || others.length > 0 || !many || more || !isWhole || job.asked.length > 0) return undefined
  const isStart = startsOn.test(said.slice(Math.max(0, date.start - 40), date.start))
  if (
    !isStart ||
    !asksEnd.test(said) ||
    !isWorking.test(said) ||
    /\b(notice|call|dig|inspect\w*|calendar)\b/i.test(said)
  )
    return undefined
  return {
    ...empty,
    told: [
      { word: 'fromDay', at: yard, from: from(date.tag) },
      { word: 'daysAhead', at: yard, from: from(many.tag) },
      ...gone.map((it) => ({ word: 'lostDays', at: yard, from: from(it.tag) })),
      ...weekTold(said),
    ],
    wants: [{ word: 'lastWorkDay', at: yard }],
    calculation: later.name,
  }
}
