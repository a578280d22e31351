// This file is about posts whose number is given, pieces of fence that stand apart, and the same bays asked for in another way.
import type { Request } from '../../../request.ts'
import { again, asked, isLast, knows, type Marked, tell, tellAgain, wasAsked } from './marked.ts'

const asksSpacing =
  /how far apart|how close|how far (?:is|are|will|do|would) (?:they|the posts|each)|what(?:'s|s| is| would be)? (?:the |my |a )?(?:post |new )?spacing|what spacing|space (?:them|em|the posts|my posts)|spaced? (?:them |the posts )?(?:out )?(?:evenly|equally)|how (?:wide|long|big) (?:is|are|would|will) (?:each|the|a) (?:bay|section|span)/
const asksClear =
  /(?:clear|opening|open|space|gap|room|distance|between)[^?.§]*(?:between|opening|them|posts|faces)|face to face|clear opening/
const ofPickets = /picket|paling|slat|\bbags?\b|holes?\b|concrete|gate|at most|no more than|maximum|\bmax\b|under §/
const countOfPosts = /§N(\d+) (?:[a-z]+ )?posts?\b/

/** “Got 10 posts already, the line is 66 ft, how far apart”, and what is asked of them next. */
export function postsGiven(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const section = readings.find((one) => one.section)
  const [count] = it.find(countOfPosts) ?? []
  const goesOn = isLast(job, 'posts-given')
  const width = tell('postWidth', section)
  if (goesOn && it.has(asksClear) && readings.every((one) => one.section || one === count))
    return asked('posts-given', [...tell('posts', count), ...width], 'opening')
  if (goesOn && count && readings.length === 1) return again(tell('posts', count))
  if (!count || it.has(ofPickets) || it.lengths.length > 1) return undefined
  if (!it.has(asksSpacing) && !(it.has(asksClear) && it.lengths.length === 1)) return undefined
  if (readings.some((one) => one !== count && one !== section && !it.lengths.includes(one))) return undefined
  const [run] = it.lengths
  if (!run && !knows(job, 'runLength')) return undefined
  const want = it.has(asksSpacing) ? 'bayCentres' : 'opening'
  return asked('posts-given', [...tell('runLength', run), ...tell('posts', count), ...width], want)
}

const ownEnds =
  /own end posts|end posts of (?:its|their) own|(?:each|both) (?:sides?|pieces?|parts?|sections?|runs?|halves|half)[^.?]* (?:own|separate)|separate (?:runs|pieces|fences|sections)|(?:don't|dont|do not) share/
const apart =
  /§L(\d+) (?:to the |on the )?(?:left|right|one side|east|west|north|south)\b[^§?]*§L(\d+) (?:to the |on the )?(?:left|right|other|the other|east|west|north|south)\b/
const widest =
  /(?:no more than|at most|max(?:imum)?(?: of)?|under|every|up to|not over|within) §[LN](\d+)|§[LN](\d+) (?:apart|max|spacing|at most|o\.?c|on cent|cent|or less|tops)/

/** “27 ft left of the walk and 18 ft right of it, each with its own end posts”. */
export function runsApart(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const pieces = it.find(apart) ?? []
  const [first, second] = widest.exec(it.text)?.slice(1).map(it.at) ?? []
  const limit = first ?? second
  const told = pieces.flatMap((one) => tell('piecesApart', one))
  const rest = readings.filter((one) => one !== limit && !pieces.includes(one))
  if (rest.length > 0 || it.has(/gate|corner|picket|back run|front run/)) return undefined
  if (told.length > 1) {
    if (!it.has(/walk|drive|path|gap|door|porch|step|apart|own end/)) return undefined
    return limit || it.has(/how many|posts/)
      ? asked('runs-apart', [...told, ...tell('widestBay', limit)], 'posts')
      : again(told)
  }
  if (!knows(job, 'piecesApart')) return undefined
  const isOfPosts =
    it.has(/how many posts|posts (?:total|in all|altogether)|number of posts|post count/) || it.has(ownEnds)
  if (isOfPosts) return asked('runs-apart', tell('widestBay', limit), 'posts')
  if (wasAsked(job, 'runs-apart') && it.has(asksSpacing))
    return asked('runs-apart', tell('widestBay', limit), 'bayCentres')
  if (wasAsked(job, 'runs-apart') && limit) return again(tell('widestBay', limit))
  return undefined
}

const asksOdd =
  /odd (?:bay|one|section|panel|bit)|left ?over|last (?:bay|section|one|panel)|short (?:bay|one)|remainder/
const asksEven =
  /(?:all|them|em|bays?|sections?|posts?|every(?:thing|one)?)[^.?]* (?:the same|equal|even(?:ly)?|alike|identical)|same (?:size|width|spacing)|equal (?:bays|spacing|spaces)|evenly/

/** The odd bay of a run whose spacing is known, and how wide all are when they are made alike. */
export function baysAgain(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (readings.some((one) => !one.bare?.equals(1)) || !knows(job, 'runLength')) return undefined
  const isOfBays = !it.has(/picket|paling|gap|rail|board|bag|money|cost/)
  if (isOfBays && isLast(job, 'bay-patterns') && it.has(asksEven) && it.has(/how|what|spacing|apart/))
    return asked('bay-patterns', [], 'evenBay')
  const isTold = job.decisions.some((one) => one.word === 'widestBay')
  return isOfBays && isTold && !knows(job, 'fixedBay') && it.has(asksOdd)
    ? asked('bay-patterns', tellAgain('fixedBay', 'job.widestBay'), 'oddBay')
    : undefined
}
