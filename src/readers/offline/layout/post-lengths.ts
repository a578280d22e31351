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
  if (!only || more || !it.has(sawn) || !(isStickLength(only) || isLonger(only, tallest))) return undefined
  if (isLast(job, 'post-in-parts')) return asked('post-as-sold', tell('stockLengths', only), 'postOffcut')
  // The length of a post was a plain sum of what is in the ground and what shows.
  const sum = isLast(job, 'lengths-together') ? job.results.findLast((one) => one.word === 'lengthSum') : undefined
  return sum && it.has(/\bposts?\b/) && !it.has(/rail|picket|board/)
    ? asked('post-as-sold', [...tellAgain('postLength', sum.ref), ...tell('stockLengths', only)], 'postOffcut')
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

const soil = '(?:ground|dirt|earth|soil|grass|turf|grade|surface|clay)'
const wholePost =
  /posts?(?: [a-z']+){0,5} §[LN](\d+)(?: [a-z]+)? (?:long|in length|in all|overall)|§[LN](\d+) (?:long |mm |foot |timber |wooden )*posts?\b|posts?(?: that)?(?: are| is| measures?|'re|'s) §[LN](\d+) (?:long|in length|overall|all up)/
const buried = new RegExp(
  `§[LN](\\d+) (?:of (?:it|each|every one|them|that|the post|each post|which) )?(?:is |are |goes? |going |will be |will go |to go |to be |has to go |must go )*(?:down )?(?:in|into|under|below|beneath) (?:the )?${soil}|§[LN](\\d+) (?:of (?:it|each|them) )?(?:is |are |goes |to be )*(?:down|buried|underground)\\b|(?:bury|burying|buried|sink|sinking|sunk)(?: (?:it|them|each|the|post|posts|by|about|of)){0,3} §[LN](\\d+)`,
)
const ofStone = /§[LN](\d+) (?:of |in )?(?:gravel|stone|rock|crushed|chippings|shingle)/
const asksUp = new RegExp(
  `how (?:much|far|tall|high)[^?.]*(?:stick\\w*|stands?|standing|show\\w*|left|up|above|out of|over) ?|what(?:'s|s| is| will be)?[^?.]*(?:above|out of|over) (?:the )?${soil}|what(?:'s|s| is)? (?:left|sticking|showing|standing)`,
)
const asksDown = /how deep|what depth|how far down|depth[^?.]*(?:hole|dig)|deep[^?.]*hole/
/** “The post is 2.1 m long and 700 of it goes in the ground: how much sticks up, how deep a hole?”: what was told of it, and no rule. */
export function postOfLength(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (it.has(/frost|rule|third|enough|picket|rail\b|gate|buy|cost|concrete/)) return undefined
  const wants = it.has(asksDown) ? 'holeDepth' : it.has(asksUp) ? 'postAbove' : undefined
  if (readings.length === 0)
    return isLast(job, 'post-above') && wants && it.has(/\bpost|\bit\b|hole|ground|grass/)
      ? asked('post-above', [], wants)
      : undefined
  const anew = deepAsBefore(it)
  if (anew) return anew
  const [only, other] = readings
  if (isLast(job, 'post-above') && wants === 'holeDepth' && !other && firstOf(it, ofStone) === only)
    return asked('post-above', tell('stoneDepth', only), wants)
  const [all, down, stone] = [firstOf(it, wholePost), firstOf(it, buried), firstOf(it, ofStone)]
  if (!wants || !all || !down || new Set([all, down, stone]).size < 3) return undefined
  if (readings.some((one) => ![all, down, stone].includes(one) && !one.bare?.equals(1))) return undefined
  return asked(
    'post-above',
    [...tell('postLength', all), ...tell('embedment', down), ...tell('stoneDepth', stone)],
    wants,
  )
}

const sameDepth =
  /same (?:depth|hole|amount|bit)?(?: ?(?:in|below|under)(?: the)? (?:ground|dirt)|depth|in ground)?|(?:just )?as deep|depth (?:stays|the same|unchanged)/
const upNow =
  /§[LN](\d+) (?:mm |in )?(?:up|above|showing|standing|out of|sticking|tall|high|over)|(?:stick\w*|stand\w*|show\w*|above|up)(?: up| out| of| by)* §[LN](\d+)/
/** “I want 1,400 showing instead, same depth: what length of post?” */
function deepAsBefore(it: Marked): Request | undefined {
  const [only, more] = it.heard.readings
  const up = firstOf(it, upNow)
  if (!only || more || up !== only || !isLast(it.heard.job, 'post-above')) return undefined
  if (!it.has(sameDepth) || !it.has(/length|how long|long a post|size/)) return undefined
  return asked('post-in-parts', tell('postAbove', only), 'postLength')
}
