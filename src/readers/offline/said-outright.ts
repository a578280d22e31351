// This file is about quantities whose place in the sentence says what they are, however near another name stands.
import { type Job, type Word, yard } from '../../../engine/index.ts'
import type { Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import { cutsIn } from './cuts-said.ts'
import { diagonalsIn } from './diagonals-said.ts'
import { knownIn } from './feeds.ts'
import { changedTo } from './fits.ts'
import { cuesIn } from './lexicon.ts'
import { namedAfter } from './named-after.ts'
import { pickedByPanel } from './of-panels.ts'
import { isDeepAsStone, saidBeside } from './said-beside.ts'
import { loadsIn } from './loads-said.ts'
import { marginIn } from './painting-weather.ts'
import { stem, type Token } from './stems.ts'
import { thingBehind } from './thing-behind.ts'
import { weightOfOne } from './weight-of-one.ts'

/** What a message says outright of the words of a calculation. */
export function saidOutright(message: readonly Token[], needs: Readonly<Record<string, Word>>, job: Job): Bound[] {
  const needed = new Set(Object.keys(needs))
  // “12 % or less”: a meter reads no such thing.
  const limit = needed.has('moistureLimit') ? message.find(({ reading }) => isLimit(reading))?.reading : undefined
  // “It went up a week ago”: so long it has been out.
  const age = needed.has('woodAge')
    ? message.find(({ reading }, i) => reading?.quantity?.kind === 'duration' && message[i + 1]?.stem === 'ago')
        ?.reading
    : undefined
  return [
    ...(age ? [{ reading: age, word: 'woodAge', at: yard, score: weight.byPlace }] : []),
    ...readingAlone(message, needed),
    ...(limit ? [{ reading: limit, word: 'moistureLimit', at: yard, score: weight.byPlace }] : []),
    ...timesIn(message, needs, job),
    ...pickedByPanel(message, needs),
    ...cutsIn(message, needed),
    ...diagonalsIn(message, needed),
    ...thingBehind(message, needs),
    ...saidBeside(message, needs, job),
    ...marginIn(message, needs),
    ...loadsIn(message, needs),
    ...weightOfOne(message, needs),
    ...namedAfter(message, needs, new Set(job.asked.map((it) => it.word))),
  ]
}

/** “Half that gap”, “twice as many posts”: of what was told or worked, and is named behind it. */
function timesIn(message: readonly Token[], needs: Readonly<Record<string, Word>>, job: Job): Bound[] {
  const times = message.flatMap(({ reading }, at) => (reading?.change?.way === 'times' ? [{ reading, at }] : []))
  if (times.length === 0) return []
  const hits = cuesIn(message)
  const known = knownIn(job)
  return times.flatMap(({ reading, at }) => {
    const words = new Set(
      hits.filter((it) => it.from > at && it.from <= at + reach && known.has(it.word)).map((it) => it.word),
    )
    const [only] = words
    const need = only === undefined ? undefined : needs[only]
    return need && words.size === 1 && changedTo(need, reading, { job })
      ? [{ reading, word: need.name, at: yard, score: weight.byPlace }]
      : []
  })
}
const reach = 3

/** “Four posts, 24 in deep”, where holes of one kind are spoken of: how deep they are. */
export function depthOfHoles(message: readonly Token[], needs: Readonly<Record<string, Word>>): Bound[] {
  const [reading, more] = message.flatMap((it, i) => (it.reading && isDeep(message, i) ? [it.reading] : []))
  if (!needs.holeDepth || !reading || more) return []
  const word = isDeepAsStone(reading, needs) ? 'stoneDepth' : 'holeDepth'
  return [{ reading, word, at: yard, score: weight.byPlace }]
}

/** “24 in deep”: as deep as the holes, unless what lies in them stands beside it. */
function isDeep(message: readonly Token[], at: number): boolean {
  const { reading } = message[at] as Token
  const isLength =
    reading !== undefined && !reading.section && (reading.quantity?.kind === 'length' || reading.bare !== null)
  if (!isLength || message[at + 1]?.stem !== 'deep') return false
  return message.slice(Math.max(0, at - 3), at + 5).every(({ stem: it }) => !liesInHoles.has(it))
}
const liesInHoles = new Set(
  'gravel stone rock scoria concrete cement footing bed base trench strip water rot frost'.split(' ').map(stem),
)

const isLimit = (reading: Tagged | undefined): boolean =>
  reading?.quantity?.kind === 'percent' && (reading.firmness === 'at-most' || reading.firmness === 'less-than')

const ofMeters = /^(read|reads|reading|measure|measured|show|shows|at)$/
const saysWhere =
  /^(surface|depth|deep|deeper|core|inside|skin|outside|pin|pins|face|middle|limit|under|below|maximum|max)$/
/** “Now it reads 11 %”: a meter’s reading, of which nothing says how deep it was taken. */
function readingAlone(message: readonly Token[], needed: ReadonlySet<string>): Bound[] {
  const all = message.filter(({ reading }) => reading?.quantity?.kind === 'percent')
  const [only, more] = all
  if (!needed.has('moistureReading') || !only?.reading || more || isLimit(only.reading)) return []
  const at = message.indexOf(only)
  const isRead = message
    .slice(Math.max(0, at - 2), at)
    .some(({ stem: it, text }) => ofMeters.test(it) || ofMeters.test(text))
  return isRead && !message.some(({ stem: it }) => saysWhere.test(it))
    ? [{ reading: only.reading, word: 'moistureReading', at: yard, score: weight.byPlace }]
    : []
}
