// This file is about dates that stand in a row or a pair: holidays, and the days from one to another. Their order and the small words
// between them say what they are, better than how near a cue stands: a holiday taken for the last day would change every count.
import type { Heard, Tagged } from '../reader.ts'
import { yard } from '../../../engine/index.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import type { Token } from './stems.ts'

/** The dates whose place in the message says what they are, for the words that the question needs. */
export function daysIn(heard: Heard, message: readonly Token[], needed: ReadonlySet<string>): Bound[] {
  const dates = new Map(heard.readings.filter((it) => it.quantity?.kind === 'date').map((it) => [it.tag, it]))
  const spots = message.flatMap((token, i) => (dates.has(token.tag ?? '') ? [i] : []))
  const at = (spot: number): Tagged => dates.get(message[spot]?.tag ?? '') as Tagged
  const bound: Bound[] = []
  const put = (spot: number, word: string): void => {
    bound.push({ reading: at(spot), word, at: yard, score: weight.byPlace })
  }
  const off = new Set(needed.has('holidays') ? [...ledByHoliday(message, spots), ...followedByOff(message, spots)] : [])
  for (const spot of off) put(spot, 'holidays')
  const [first, last, ...more] = spots.filter((spot) => !off.has(spot))
  if (needed.has('fromDay') && needed.has('toDay') && first !== undefined && last !== undefined && more.length === 0) {
    put(first, 'fromDay')
    put(last, 'toDay')
  }
  const days = workDays(message)
  if (days && spots.length > 0 && (needed.size === 0 || needed.has('daysAhead')))
    bound.push({ reading: days, word: 'daysAhead', at: yard, score: weight.byPlace })
  return bound
}

const ofNotice = /^(notice|dig|call|called|calling|ring|ticket|locate|inspector|inspection|hole|mark)$/
/** “9 working days” of work: where nobody is called and nothing is dug, they are no notice. */
function workDays(message: readonly Token[]): Tagged | undefined {
  if (message.some((token) => ofNotice.test(token.stem))) return undefined
  const found = message.flatMap((token, i) => {
    const isOfDays = /^(working|business|work)$/.test(message[i + 1]?.stem ?? '') && message[i + 2]?.stem === 'day'
    const reading = isOfDays || message[i + 1]?.stem === 'workday' ? token.reading : undefined
    return reading?.bare ? [reading] : []
  })
  return found.length === 1 ? found[0] : undefined
}

const isJoint = (token: Token | undefined): boolean => /^(,|;|and|&|plus|or)$/.test(token?.text.toLowerCase() ?? '')
const skipJoints = (message: readonly Token[], from: number, step: 1 | -1): number => {
  let at = from
  while (isJoint(message[at])) at += step
  return at
}

const leads = /^(holiday|closed|shut|except|excluding|off|skipping|skip)$/
const small = /^(on|are|is|be|:|of|fall|falls|fell|the|for|in|between|being|at|with|as|date|here|-|–)$/
/** “holidays 18 April, 21 April and 1 May”, “closed on 4 July”. */
function ledByHoliday(message: readonly Token[], spots: readonly number[]): number[] {
  return message.flatMap((token, i) => {
    if (!leads.test(token.stem)) return []
    // “July 4 off, I call on July 2”: “off” speaks of what stands before it.
    if (token.stem === 'off' && spots.includes(i - 1)) return []
    let at = i + 1
    while (message[at] && (small.test((message[at] as Token).stem) || leads.test((message[at] as Token).stem))) at++
    const row: number[] = []
    while (spots.includes(at)) {
      row.push(at)
      at = skipJoints(message, at + 1, 1)
    }
    return row
  })
}

const trails = /^(off|closed|shut|holiday)$/
const copula =
  /^(is|be|are|a|an|the|both|public|bank|all|being|as|was|also|our|my|federal|state|national|statutory|paid)$/
const begins =
  /^(call|called|calling|ring|rang|phone|file|filed|request|ticket|from|start|begin|after|since|until|to|job|dig)$/
/** “July 3 and July 4 off”, “July 4 is a holiday”. Behind a comma stands another date: “I call on July 2, July 4 off”. */
function followedByOff(message: readonly Token[], spots: readonly number[]): number[] {
  return message.flatMap((token, i) => {
    const isUncounted =
      /^(count|work|working)$/.test(token.stem) && /^(n't|not|don't|doesn't|no)$/.test(message[i - 1]?.stem ?? '')
    if (!trails.test(token.stem) && !isUncounted) return []
    let at = isUncounted ? i - 2 : i - 1
    while (message[at] && copula.test((message[at] as Token).stem)) at--
    const row: number[] = []
    while (spots.includes(at)) {
      row.push(at)
      const before = skipJoints(message, at - 1, -1)
      const hasAnd = message.slice(before + 1, at).some((it) => !/^[,;]$/.test(it.text))
      const isLed = message.slice(Math.max(0, before - 3), before).some((it) => begins.test(it.stem))
      if (!hasAnd && (isLed || row.length < 2)) break
      if (hasAnd && isLed && row.length > 1) break
      at = before
    }
    return row
  })
}
