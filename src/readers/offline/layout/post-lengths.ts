// This file is about a post that was told or worked, and what is said of it next: that it stands above the pickets, that another length is sold.
import type { Request, Told } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { isStickLength } from '../fits.ts'
import { asked, isLast, isLonger, knows, type Marked, tell, tellAgain } from './marked.ts'
import { quantity, yard } from '../../../../engine/index.ts'

const firstOf = (it: Marked, pattern: RegExp): Tagged | undefined =>
  pattern
    .exec(it.text)
    ?.slice(1)
    .map(it.at)
    .find((one) => one !== undefined)

const over =
  /(?:stick\w*|stand\w*|poke?\w*|go\w*|run\w*|ris\w*|extend\w*|proud|up|come\w*|to be)(?: up| out| by| about| to| only| just)* §[LN](\d+) (?:above|over|past|higher|beyond|proud of|taller)(?: than)? (?:that|it|the (?:top|pickets|palings|fence|boards|tops)|them|pickets|palings)|§[LN](\d+) (?:above|over|past|higher than|taller than|proud of|beyond) (?:the )?(?:tops? of (?:the )?)?(?:pickets?|palings?|fence|boards|that)\b/
const tallest = quantity(3, 'ft')
/** “And they stick up 75 mm above that”: it comes on top of what was told, and replaces nothing. */
export function postOver(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  const above = firstOf(it, over)
  if (!above || only !== above || more || isLonger(above, tallest)) return undefined
  if (isLast(job, 'post-in-parts') && knows(job, 'embedment'))
    return asked('post-in-parts', tell('postOverFence', above), 'postLength')
  if (!isLast(job, 'post-depth') || !knows(job, 'postAbove')) return undefined
  const worked = job.results.findLast((one) => one.word === 'embedment')
  return worked
    ? asked('post-in-parts', [...tellAgain('embedment', worked.ref), ...tell('postOverFence', above)], 'postLength')
    : undefined
}

const sawn = /(?:saw|cut|trim|lop|chop|take|slice)[^?.]*\boff\b|\bleft over\b|offcut|how much (?:waste|is wasted)|spare/
/** “The shop only has 2.4 m ones, how much do we saw off each?” */
export function postCut(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  if (!only || more || !it.has(sawn) || !isLast(job, 'post-in-parts')) return undefined
  return isStickLength(only) || isLonger(only, tallest)
    ? asked('post-as-sold', tell('stockLengths', only), 'postOffcut')
    : undefined
}

const frost = /frost(?: line| depth| level)?[^.?§]{0,30}§[LN](\d+)|§[LN](\d+) (?:is )?(?:the )?frost/
const restsThere =
  /(?:foot|bottom|base|end|post)[^.?§]*(?:rest|sit|stand|go|be|reach)\w* (?:at|to|on|down to) (?:that|this|the frost|it)/
const pickets =
  /(?:pickets?|palings?|fence)[^.?§]{0,24}§[LN](\d+) (?:above|high|tall|off|out)|§[LN](\d+) (?:high|tall|above (?:the )?ground)/
/** “Frost reaches 4 ft and the foot of the post rests there, pickets 42 in above the ground, posts 2 in above them: what length?” */
export function postToFrost(it: Marked): Request | undefined {
  const [down, tall, above] = [firstOf(it, frost), firstOf(it, pickets), firstOf(it, over)]
  if (!down || !tall || !above || new Set([down, tall, above]).size < 3 || it.heard.readings.length !== 3)
    return undefined
  if (!it.has(restsThere) || !it.has(/length|how long/) || it.has(/how deep/)) return undefined
  return asked(
    'post-in-parts',
    [
      ...tell('postAbove', tall),
      ...tell('postOverFence', above),
      ...tell('embedment', down),
      ...toldAgain('frostDepth', down),
    ],
    'postLength',
  )
}

/** The words that said it are read once more. */
const toldAgain = (word: string, { said }: Tagged): Told[] => [
  { word, at: yard, from: { tag: null, quote: said, option: null, usual: null } },
]

const belowFrost =
  /(?:went|go|goes|going|set|dig|plus)?[^.?§]{0,12}§[LN](\d+) (?:under|below|past|deeper than|beyond|more than) (?:that|it|the frost|frost)/
const showing = /(?:stick\w*|stand\w*|poke\w*|com\w*|rise\w*)(?: up| out)* §[LN](\d+)(?: out of| above| up| over)?/
/** “Frost goes down 42 in, I go half a foot under that, and the posts stick up 4 ft 2 in: how long?”: the three together. */
export function postUnderFrost(it: Marked): Request | undefined {
  const [down, under, up] = [firstOf(it, frost), firstOf(it, belowFrost), firstOf(it, showing)]
  if (!down || !under || !up || new Set([down, under, up]).size < 3 || it.heard.readings.length !== 3) return undefined
  if (!it.has(/how long|length/) || it.has(/gravel|stone|concrete/)) return undefined
  return asked(
    'lengths-together',
    [down, under, up].flatMap((one) => tell('lengths', one)),
    'lengthSum',
  )
}
