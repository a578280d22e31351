// This file is about the hour of the clock in a message: "8 am", "7:30 p.m.", "18:00", "6 in the evening".
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** The hours since midnight of the time that begins at a token; null when none does. A colon alone may be a slope or a scale: then only whole and quarter hours are times. */
export function hourAt(tokens: readonly Scanned[], at: number): Found | null {
  const past = pastTheHour(tokens, at)
  if (past) return past
  const military = withoutColon(tokens, at)
  if (military) return military
  const hour = tokens[at]
  // "7.30 pm", where no colon is written; without its half of the day it is a number.
  const dotted = /^(\d\d?)\.([0-5]\d)$/.exec(hour?.text ?? '')
  const spoken = hours.indexOf(lower(hour))
  if (!dotted && spoken < 0 && (hour?.sort !== 'digits' || !/^\d\d?$/.test(hour.text))) return null
  const minute = dotted || spoken > 0 ? null : minuteAt(tokens, at + 1)
  const half = halfOfDay(tokens, minute?.next ?? at + 1)
  const named = spoken > 0 ? spoken : Number(dotted ? dotted[1] : hour?.text)
  const minutes = dotted ? Number(dotted[2]) : (minute?.minutes ?? 0)
  const clock = (value: number, next: number): Found => ({
    next,
    quantity: null,
    bare: new Fraction(value).add(new Fraction(minutes, 60)),
    clock: true,
  })
  if (half) {
    // "2 at night" comes before the morning, "9 at night" after the evening; "12 in the evening" is no hour.
    const isLate = half.isNight ? named > 5 && named < 12 : half.isLate
    if (named < 1 || named > 12 || (half.isEvening && named === 12)) return null
    return clock((named % 12) + (isLate ? 12 : 0), half.next)
  }
  if (!minute || named > 23 || minutes % 15 !== 0) return null
  return clock(named, minute.next)
}

const tells =
  /^(dew|dark|dusk|sunset|sunrise|rain|frost|start|starts|starting|begin|begins|beginning|stop|finish|done|home)$/
/** “Dew from 1700”, “start at 0730”: four figures are an hour only beside what tells one, or before “hrs”. */
function withoutColon(tokens: readonly Scanned[], at: number): Found | null {
  const [, hour, minute] = /^([01]\d|2[0-3])([0-5]\d)$/.exec(tokens[at]?.text ?? '') ?? []
  if (!hour || tokens[at]?.sort !== 'digits') return null
  const isAfter =
    /^(from|at|by|after|until|till|before)$/.test(lower(tokens[at - 1])) && tells.test(lower(tokens[at - 2]))
  const isHours =
    /^(hrs|hours|h)$/.test(lower(tokens[at + 1])) &&
    hour !== undefined &&
    /^(from|at|by|after|until|till|before)$/.test(lower(tokens[at - 1]))
  // “Posts start at 1200 mm from the house” tells no hour.
  const isSize = /^(mm|cm|m|in|ft|feet|foot|from|along|apart|kg|lb|lbs|pounds|litres?|liters?|l)$/.test(
    lower(tokens[at + 1]),
  )
  if ((!isAfter && !isHours) || isSize) return null
  return {
    next: isHours ? at + 2 : at + 1,
    quantity: null,
    bare: new Fraction(Number(hour)).add(new Fraction(Number(minute), 60)),
    clock: true,
  }
}

/** "half past seven in the evening", "quarter to 8 am": the hour alone would be wrong by so much. */
function pastTheHour(tokens: readonly Scanned[], at: number): Found | null {
  const [part, joint] = [lower(tokens[at]), lower(tokens[at + 1])]
  if (!/^(half|quarter)$/.test(part) || !(joint === 'past' || (joint === 'to' && part === 'quarter'))) return null
  const whole = hourAt(tokens, at + 2)
  if (whole?.bare?.d !== 1n) return null
  const minutes = new Fraction(part === 'half' ? 30 : 15, 60)
  return { ...whole, bare: joint === 'past' ? whole.bare.add(minutes) : whole.bare.sub(minutes).add(24).mod(24) }
}

const hours = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

function minuteAt(tokens: readonly Scanned[], at: number): { minutes: number; next: number } | null {
  const [colon, minute] = [tokens[at], tokens[at + 1]]
  const isTime = colon?.text === ':' && colon.glued && minute?.glued && /^[0-5]\d$/.test(minute.text)
  // 10:30:15 has seconds too, and then it tells no hour of a list.
  return isTime && tokens[at + 2]?.text !== ':' ? { minutes: Number(minute.text), next: at + 2 } : null
}

/** "am", "p.m.", "o'clock in the evening", "at night". */
function halfOfDay(
  tokens: readonly Scanned[],
  at: number,
): { isLate: boolean; isNight?: boolean; isEvening?: boolean; next: number } | null {
  const from = /^o'?clock$/.test(lower(tokens[at])) ? at + 1 : at
  const words = tokens.slice(from, from + 4).map((token) => lower(token))
  const after = (count: number, isLate: boolean) => ({ isLate, next: from + count })
  if (/^[ap]m$/.test(words[0] ?? '')) return after(1, words[0] === 'pm')
  if (/^[ap]$/.test(words[0] ?? '') && words[1] === '.' && words[2] === 'm')
    return after(words[3] === '.' ? 4 : 3, words[0] === 'p')
  if (words[0] === 'in' && words[1] === 'the' && /^(morning|afternoon|evening)$/.test(words[2] ?? ''))
    return { ...after(3, words[2] !== 'morning'), isEvening: words[2] === 'evening' }
  return words[0] === 'at' && words[1] === 'night' ? { ...after(2, true), isNight: true } : null
}
