// This file is about holidays that a message speaks of and that are no date in it: “juneteenth off”, “the 4th is a holiday”.
// None is built in: they differ by country, state and year. Each is handed on as it was said, so that its date is asked for and no sum goes without it.
import { vocabulary, yard } from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import type { Heard } from '../reader.ts'
import type { Bound } from './bound.ts'
import { thatNeed } from './calculations-by-word.ts'
import { stem, type Token, tokens } from './stems.ts'

const word = 'holidays'

/** Days that have a name, as people say it. */
const named =
  `juneteenth|thanksgiving|thanksgiving day|christmas eve|christmas day|christmas|xmas day|xmas|boxing day|new year's day|new year's eve|new year's|new years day|new years eve|new years|new year
  |labor day|labour day|memorial day|independence day|fourth of july|veterans day|veteran's day|columbus day|indigenous peoples day|presidents day|president's day|washington's birthday|mlk day|martin luther king day|mlk
  |election day|good friday|easter monday|easter sunday|easter|whit monday|pentecost|ascension day|ascension|corpus christi|epiphany|may day|victoria day|canada day|family day|civic holiday|remembrance day|armistice day
  |anzac day|australia day|waitangi day|matariki|king's birthday|queen's birthday|melbourne cup day|st patrick's day|saint patrick's day|st andrew's day|bank holiday monday|cesar chavez day|patriots day|mardi gras|black friday|day after thanksgiving`
    .split('|')
    .map((it) => tokens(it.trim()).map((token) => token.stem))
    .sort((a, b) => b.length - a.length)

interface Stretch {
  readonly from: number
  readonly to: number
}

/** The holidays that nobody can count with: told by the words that name them. Only where what is asked counts working days. */
export function unreadHolidays(
  heard: Heard,
  message: readonly Token[],
  bound: readonly Bound[],
  wanted: readonly string[],
  calculation: string | undefined,
): Told[] {
  const counts = thatNeed(word).some(
    (calc) => calculation === calc.name || (!calculation && wanted.some((it) => calc.gives[it])),
  )
  if (!counts || !vocabulary.has(word)) return []
  const dates = new Set(bound.filter((it) => it.word === word).map((it) => it.reading.tag))
  const anyDate = new Set(heard.readings.filter((it) => it.quantity?.kind === 'date').map((it) => it.tag))
  const found = [...stretchesNamed(message), ...stretchesOff(message), ...runsOf(message, dates, anyDate)]
  if (found.length === 0 && dates.size === 0) found.push(...spokenOf(message))
  return found
    .filter(
      (it) =>
        !found.some(
          (other) =>
            other !== it && other.from <= it.from && other.to >= it.to && other.to - other.from > it.to - it.from,
        ),
    )
    .filter((it) => !hasDateBeside(it, message, dates))
    .map(({ from, to }) => ({
      word,
      at: yard,
      from: {
        tag: null,
        quote: heard.said.slice((message[from] as Token).start, (message[to - 1] as Token).end),
        option: null,
        usual: null,
      },
    }))
}

function stretchesNamed(message: readonly Token[]): Stretch[] {
  const found: Stretch[] = []
  for (let from = 0; from < message.length; from++) {
    const name = named.find((stems) =>
      stems.every((it, i) => plain(message[from + i]) === it || message[from + i]?.stem === it),
    )
    if (!name) continue
    found.push({ from, to: from + name.length })
    from += name.length - 1
  }
  return found
}
const plain = (token: Token | undefined): string => (token?.tag ? token.text : stem(token?.text ?? ''))

const isOff = /^(off|closed|shut|holiday)$/
const isDay =
  /^(mon|monday|tue|tuesday|wed|wednesday|thu|thursday|fri|friday|sat|saturday|sun|sunday|th|st|nd|rd|tomorrow|jan|january|feb|february|mar|march|apr|april|may|jun|june|jul|july|aug|august|sep|sept|september|oct|october|nov|november|dec|december|\d\d?\/\d\d?)$/
/** “Monday off”, “closed the 4th”, “July 4 off” where no year is said: a day, and no date of it. */
function stretchesOff(message: readonly Token[]): Stretch[] {
  return message.flatMap((token, i) => {
    if (!isOff.test(token.stem)) return []
    const before = [1, 2, 3].find(
      (step) => isDay.test(plain(message[i - step])) && isSmall(message.slice(i - step + 1, i)),
    )
    const after = [1, 2, 3].find(
      (step) => isDay.test(plain(message[i + step])) && isSmall(message.slice(i + 1, i + step)),
    )
    // “Founders’ Day off”, “juneteeth off”: a name that ends as such names do, slips and all.
    const isNamedSo =
      /^(off|holiday)$/.test(token.stem) &&
      /(.day|te+n?th?|mas|giving)$/.test(plain(message[i - 1])) &&
      !/^(holiday|workday|today|everyday|weekday|birthday)$/.test(plain(message[i - 1]))
    if (isNamedSo && !before) return [{ from: i - 1, to: i + 1 }]
    return before ? [{ from: i - before, to: i + 1 }] : after ? [{ from: i, to: i + after + 1 }] : []
  })
}
const isSmall = (between: readonly Token[]): boolean =>
  between.every(
    (it) => it.tag === undefined && /^(is|be|are|a|the|on|for|public|bank|being|also|th|st|nd|rd)$/.test(it.stem),
  )

/** “July 3 to July 5 off”: days from one to the other, of which only the ends are dates. */
function runsOf(message: readonly Token[], dates: ReadonlySet<string>, anyDate: ReadonlySet<string>): Stretch[] {
  return message.flatMap((token, i) => {
    const [first, last] = [token.tag ?? '', message[i + 2]?.tag ?? '']
    const isRun =
      anyDate.has(first) && anyDate.has(last) && /^(to|till|until|through|thru)$/.test(message[i + 1]?.stem ?? '')
    return isRun && (dates.has(first) || dates.has(last)) ? [{ from: i, to: i + 3 }] : []
  })
}

/** A holiday is spoken of, and none is a date. “No holidays”, “weekends and holidays left out” speak of none in particular. */
function spokenOf(message: readonly Token[]): Stretch[] {
  const at = message.findIndex((token) => token.stem === 'holiday')
  if (at < 0) return []
  const before = message.slice(Math.max(0, at - 4), at).map((it) => it.stem)
  const isNone = before.some((it) =>
    /^(no|not|without|any|never|ignore|ignoring|exclude|excluding|weekend|except|minus|which|what|zero)$/.test(it),
  )
  return isNone ? [] : [{ from: at, to: at + 1 }]
}

/** “Juneteenth, 19 June 2025, off”: the date is given right beside its name. */
const hasDateBeside = ({ from, to }: Stretch, message: readonly Token[], dates: ReadonlySet<string>): boolean => {
  const inside = message.slice(from, to).some((it) => dates.has(it.tag ?? ''))
  const skip = /^(,|on|is|be|the|fall|for|day|:|it's)$/
  let [left, right] = [from - 1, to]
  while (skip.test(message[left]?.stem ?? '')) left--
  while (skip.test(message[right]?.stem ?? '')) right++
  return !inside && (dates.has(message[left]?.tag ?? '') || dates.has(message[right]?.tag ?? ''))
}

/** “None”, in answer to which holidays there are. */
export const saysNoHolidays = (heard: Heard, message: readonly Token[]): boolean =>
  heard.job.asked.some((it) => it.word === word) &&
  heard.readings.length === 0 &&
  message.length <= 6 &&
  message.some((token) => /^(no|none|not|nope|forget|ignore|without)$/.test(token.stem))
