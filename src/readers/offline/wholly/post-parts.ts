// This file is about the length of a post told by its parts, and which of the lengths sold it is cut from.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor, tell } from '../request-parts.ts'
import { isLength, type Place, placedBy } from './placed.ts'
import { isAbout, knows, spotsOf } from './spots.ts'

export const postPartsIn = (heard: Heard): Request | undefined => asSoldIn(heard) ?? besideIn(heard) ?? inPartsIn(heard)

const ofPosts = [
  'post-in-parts',
  'post-beside-pickets',
  'post-as-sold',
  'post-between-steps',
  'post-depth',
  'post-depth-check',
]
const unit = '(?:mm |cm |in(?:ches)? |ft |feet )?'
const ground = '(?:ground|dirt|earth|soil|hole|concrete|clay|grade)'
const buried: readonly Place[] = [
  {
    word: 'embedment',
    is: isLength,
    after: new RegExp(
      `^\\s*${unit}(?:of it )?(?:(?:is |goes |to go )?(?:in|into|under|below|beneath)(?: the)? ${ground}|down\\b|deep\\b|buried|underground|under\\b)`,
    ),
  },
  {
    word: 'embedment',
    is: isLength,
    before: new RegExp(
      `(?:goes?|going|sunk|sinks?|buried|bury|set|sits?|in(?:to)? the ${ground})(?: down| in| into it| it| by| about|:|=|,)*\\s*$`,
    ),
  },
]
const shown: readonly Place[] = [
  {
    word: 'postAbove',
    is: isLength,
    before:
      /(?:(?:sticks?|stands?|stand|poke?s?|comes?|rises?|sticking|standing|shows?|left)(?: \w+)? (?:up|out|above|proud)|above (?:the )?(?:ground|grade)|shows|showing|exposed)(?: by| about| of| is|:|=|,)*\s*$/,
  },
  {
    word: 'postAbove',
    is: isLength,
    after: new RegExp(`^\\s*${unit}(?:above (?:the )?(?:ground|grade|dirt)|up\\b|out\\b|showing|exposed|above\\b)`),
  },
]
const asksLength =
  /\b(?:how long|what length|which length|post length|length of (?:the |a |each )?posts?|long (?:must|should|does) (?:the |a )?posts?|length post|length\s*\??$)/i
const others = /\b(?:frost|gravel|stone|rails?|gates?|bags?|slope\w*|steps?|panels?|deep enough|rule|code)\b|\$|£|€/i

/** “It stands 4 ft up and 30 in go into the ground: what length of post?” */
function inPartsIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (others.test(said) || !/\bposts?\b/i.test(said) || !asksLength.test(said)) return undefined
  const told = placedBy(spotsOf(heard), [...shown, ...buried])
  return told?.length === 2 ? requestFor('post-in-parts', ['postLength'], told) : undefined
}

const beside: readonly Place[] = [
  {
    word: 'postBelowTop',
    is: isLength,
    after: new RegExp(
      `^\\s*${unit}(?:below|under|lower than|down from|short of|shy of) (?:the )?(?:top|pickets?|palings?|pales?|tips?|points?)`,
    ),
  },
  {
    word: 'footGap',
    is: isLength,
    after: new RegExp(`^\\s*${unit}(?:off|above|clear of|over|up from|from) (?:the )?(?:ground|grass|dirt|grade|soil)`),
  },
  {
    word: 'footGap',
    is: isLength,
    before: /(?:feet|foot|clear(?:ance)?|gap (?:below|under)\w*|off the ground)(?: is| are| of|:|=|,)*\s*$/,
  },
  ...buried,
  { word: 'picketLength', is: isLength, before: /(?:pickets?|palings?|pales?|slats?)(?: are| is| of|'re|:|=|,)*\s*$/ },
  { word: 'picketLength', is: isLength, after: new RegExp(`^\\s*${unit}(?:long |tall )?(?:pickets?|palings?|pales?)`) },
]
/** “Palings 1,200 long, 50 off the ground, the post ends 30 below their tops and goes 650 in the ground.” */
function besideIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (others.test(said) || !/\bposts?\b/i.test(said) || !asksLength.test(said)) return undefined
  const told = placedBy(spotsOf(heard), beside)
  return told?.length === 4 ? requestFor('post-beside-pickets', ['postLength'], told) : undefined
}

/** “They come in 6, 7 and 8 ft: which one, and what is left?”, behind the length of a post. */
function asSoldIn(heard: Heard): Request | undefined {
  const { said, job } = heard
  if (!isAbout(heard, ...ofPosts) || !knows(heard, 'postLength')) return undefined
  if (/\b(?:rails?|pickets?|boards?|concrete|bags?)\b|\$|£|€/i.test(said)) return undefined
  const asksOff =
    /\b(?:cut|saw|trim|chop|lop|come|comes) (?:\w+ ){0,2}?off\b|\boff-?cuts?\b|\b(?:waste|left ?over)\b/i.test(said)
  const asksWhich =
    /\b(?:which|what)\b(?: (?:one|length|size|post)s?)?(?: \w+){0,4} (?:buy|get|order|take|pick)\b|\bwhich\b/i.test(
      said,
    )
  if (/\b(?:tall|high|deep|above|ground|frost|down)\b/i.test(said)) return undefined
  const answers = job.asked.some((it) => it.word === 'stockLengths') && heard.readings.length > 0
  // Without the lengths that are sold the post has only its own.
  if (heard.readings.length === 0 && !asksOff) return undefined
  if (!asksOff && !asksWhich && !answers) return undefined
  const spots = spotsOf(heard)
  if (!spots.every((it) => isLength(it.reading) && it.reading.firmness !== 'range')) return undefined
  // One length alone may be a part of the post told anew.
  if (!answers && spots.length === 1 && !/\b(?:come|comes|sold|sells?|yard|store|buy|has|have)\b/i.test(said))
    return undefined
  return requestFor(
    'post-as-sold',
    asksOff && !asksWhich ? ['postOffcut'] : asksOff || asksWhich ? ['postToBuy'] : [],
    spots.map((it) => tell('stockLengths', it.reading.tag)),
  )
}
