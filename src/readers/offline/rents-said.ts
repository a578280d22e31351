// This file is about a machine by the hour: “28 an hour with a 4 hour minimum, it digs 3 holes an hour, I have 24”, and then “the day rate is 150”.
import { yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { empty, from } from './plain-phrases.ts'

const firstOf = /\b(?:for )?(?:the |a )?first\s*$/
const pastFirst =
  /^\s*(?:an|per|a|each|every|\/)?\s*(?:hour|hr|h)?\s*(?:after|past|beyond|for (?:each|every|any) (?:hour )?(?:after|more)|thereafter|over)/
const ofHole = /^\s*(?:a|per|each|every|for each|to a|for a|for every|to each)\s*(?:hole|post ?hole|post)\b/
const ofWay =
  /\b(?:run|take|bring|drive|drop|get|fetch|haul|carry|collect|pick|clean|load|return)\w*\b|\b(?:way|trip|drive) (?:there|back|home)\b|\bthere and back\b/
const asksRent = /\b(cost|costs|come to|run me|set me back|how much|what|pay|owe|bill|total)\b/i
const speaksOfRent = /\b(rent\w*|hire[sd]?|hiring|auger|digger|trencher|machine|mixer|post ?hole)\b/i
const anHour = /^\s*(?:an|per|a|each|every|\/)?\s*\/?\s*(?:hour|hr|h)\b/
const ofDay = /^\s*(?:a|per|the|for the|for a|\/)?\s*\/?\s*(?:full |whole )?day\b/
const beforeDay =
  /\b(?:day rate|daily(?: rate)?|(?:a|the|whole|full|per) day|day)(?: is| was|['’]s| it is| costs?| for| at|:)*\s*[$£€]?$/
// What a machine spares is another question: minutes to a hole, by hand and with it.
const ofOwnTime = /\b(worth|by hand|my (own )?time|buy(ing)?|bought|minutes?)\b/i
const isLeast = /\b(minimum|min|at least)\b/

/** The request of a message about a rent by the hour, or one that goes on with it. */
export function rentIn(heard: Heard): Request | undefined {
  const { readings, job, said } = heard
  const goesOn = job.named === 'rent-by-hour'
  const bare = withoutRate(heard)
  if (bare) return bare
  const byHoles = readings.some((it) => ofHole.test(wordsBehind(heard, it)))
  if (!goesOn && (byHoles ? /\b(by hand|buy(ing)?|bought)\b/i : ofOwnTime).test(said)) return undefined
  if (readings.length === 0 || readings.length > 8 || !(goesOn || speaksOfRent.test(said))) return undefined
  const all = readings.filter((it) => !isHourOfRate(it, heard)).map((it) => ({ it, word: wordOf(it, heard) }))
  if (all.some(({ word }) => word === undefined) || new Set(all.map(({ word }) => word)).size < all.length)
    return undefined
  const has = (word: string): boolean =>
    all.some((one) => one.word === word) || (goesOn && job.decisions.some((it) => it.word === word))
  const known = (word: string): boolean => goesOn && job.decisions.some((it) => it.word === word)
  const digs = (has('holesWanted') || known('holesWanted')) && (has('holesAnHour') || has('timeAHole'))
  if (!has('hourRate') || !(has('hoursWanted') || digs)) return undefined
  if (has('firstHours') !== has('firstHoursPrice')) return undefined
  const saves = has('rentADay') && /\b(sav\w*|how much (cheaper|less|dearer|more)|difference)\b/i.test(said)
  return {
    ...empty,
    told: all.map(({ it, word }): Told => ({ word: word as string, at: yard, from: from(it.tag) })),
    wants: [{ word: saves ? 'rentsApart' : has('rentADay') ? 'cheaperRent' : 'rentByHours', at: yard }],
    calculation: 'rent-by-hour',
  }
}

/** “What will the auger come to for 14 holes?”: the rate is asked for. */
function withoutRate({ readings, said, job }: Heard): Request | undefined {
  const [holes, more] = readings
  if (!holes?.bare || more || holes.bare.d !== 1n || job.decisions.length > 0 || said.length > 120) return undefined
  if (!/\b(rent\w*|hire|hiring)\b/i.test(said) || !speaksOfRent.test(said) || !asksRent.test(said)) return undefined
  if (!/^\s*(?:post ?)?holes?\b/i.test(said.slice(holes.end)) || /\b(cheaper|buy|worth|by hand|days?)\b/i.test(said))
    return undefined
  return {
    ...empty,
    told: [{ word: 'holesWanted', at: yard, from: from(holes.tag) }],
    wants: [{ word: 'rentByHours', at: yard }],
    calculation: 'rent-by-hour',
  }
}

/** The “an hour” of “28 an hour”. */
const isHourOfRate = (it: Tagged, { readings, said }: Heard): boolean =>
  it.quantity?.kind === 'duration' &&
  /^an? (hour|hr|day)$/i.test(it.said) &&
  (/^\s*(?:is|costs?|rate|at|for|:|=)\b/i.test(said.slice(it.end)) ||
    readings.some(
      (other) => other.end <= it.start && /^\s*(?:holes?|posts?)?\s*$/i.test(said.slice(other.end, it.start)),
    ))

function wordOf(it: Tagged, heard: Heard): string | undefined {
  const [before, behind] = [wordsBefore(heard, it), wordsBehind(heard, it)]
  if (it.quantity?.kind === 'duration' && firstOf.test(before)) return 'firstHours'
  if (it.quantity?.kind === 'duration' && ofHole.test(behind)) return 'timeAHole'
  if (it.quantity?.kind === 'duration' && ofWay.test(behind)) return 'timeBeside'
  if (it.quantity?.kind === 'duration')
    return it.firmness === 'at-least' || isLeast.test(behind.slice(0, 14)) || isLeast.test(before.slice(-16))
      ? 'leastHours'
      : 'hoursWanted'
  const isBare = it.bare !== null
  if (isBare && /^\s*(?:post ?)?holes?\s+(?:an|per|a|each|every|\/)\s*(?:hour|hr)\b/.test(behind)) return 'holesAnHour'
  if (isBare && /^\s*(?:more )?(?:post ?)?holes?\b/.test(behind)) return 'holesWanted'
  if (isBare && /^\s*(?:to dig|of them|of em)\b/.test(behind)) return 'holesWanted'
  if (!mayBeMoney(it)) return undefined
  if (/^\s*(?:for |covers |gets you |buys )?(?:the |a )?first\b/.test(behind)) return 'firstHoursPrice'
  if (anHour.test(behind) || pastFirst.test(behind)) return 'hourRate'
  return ofDay.test(behind) || beforeDay.test(before) ? 'rentADay' : undefined
}
