// This file is about sizes, counts and sticks that each stand beside what they are: one place for every word.
import type { Told } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { tell } from '../request-parts.ts'
import { isIdle, isLength, isMeasured, type Spot } from './spots.ts'

/** What makes a quantity a word: what it is, and the text right before it or right behind it. A word with a star is read and says nothing of the sum. */
export interface Place {
  readonly word: string
  readonly is: (it: Tagged) => boolean
  readonly before?: RegExp
  readonly after?: RegExp
  /** Told once for each value. */
  readonly list?: true
}

export const isCount = ({ quantity, bare, section, change, clock }: Tagged): boolean =>
  quantity === null && bare?.d === 1n && !section && !change && !clock
export const isStick = ({ section }: Tagged): boolean => section !== undefined
/** “4x4”, “6x6”: a post, where nothing else of a fence is as thick as wide. */
export const isSquareStick = ({ section }: Tagged): boolean =>
  section !== undefined && section.thickness.amount.valueOf() === section.width.amount.valueOf()
export const isWide = (it: Tagged): boolean => isLength(it) || isStick(it)
export { isLength, isMeasured }

/** What every quantity is by its place, the first place that meets it; nothing where one has none, or two have the same. */
export function placedBy(spots: readonly Spot[], places: readonly Place[]): Told[] | undefined {
  const placed: Told[] = []
  for (const spot of spots) {
    const place = places.find(
      (it) => it.is(spot.reading) && (it.before?.test(spot.before) ?? true) && (it.after?.test(spot.after) ?? true),
    )
    if (isIdle(spot) && !(place && place.is === isCount)) continue
    if (!place || spot.reading.change?.way === 'times') return undefined
    if (place.word === '*') continue
    if (!place.list && placed.some((it) => it.word === place.word)) return undefined
    placed.push(tell(place.word, spot.reading.tag))
  }
  return placed
}

const unit = '(?:mm |cm |in(?:ches)? |ft |feet )?'
const ofPost = '(?:square |sq\\.? |nominal |wide |thick |actual |fence )*'
/** From post centre to post centre. */
export const onCentre: readonly Place[] = [
  {
    word: 'bayCentres',
    is: isLength,
    after: new RegExp(
      `^,?\\s*${unit}(?:apart,? )?(?:(?:measured )?(?:from )?(?:post )?cent(?:er|re)s?[- ]to[- ](?:post )?cent(?:er|re)s?|on[- ]cent(?:er|re)s?|cent(?:er|re)s|o\\.?c\\b|c ?to ?c\\b|c/c\\b|crs\\b|ctrs\\b)`,
    ),
  },
  {
    word: 'bayCentres',
    is: isLength,
    before:
      /(?:cent(?:er|re)s? of (?:the |my |our |two |neighbou?ring )*posts?|cent(?:er|re)s?|on[- ]cent(?:er|re)s?|o\.?c\.?|c\/c|crs|ctrs)(?: at| of| are| is| every|:|=)*\s*$/,
  },
]
// A bare number before several of a thing counts them, and is no size of one.
const isSized = (it: Tagged): boolean => isMeasured(it) || isStick(it)
export const thePost: readonly Place[] = [
  { word: 'postWidth', is: isSized, after: new RegExp(`^\\s*${unit}${ofPost}posts?\\b`) },
  { word: 'postWidth', is: isLength, after: /^\s*(?:mm )?(?:square |sq\.? )posts?\b|^\s*(?:mm )?post\b/ },
  {
    word: 'postWidth',
    is: isWide,
    before:
      /(?<!\bbetween (?:the |two |my |adjacent |gate )?|\bof |\bpost to )\bposts?(?: themselves)?(?: are| is| measure| measures| being| at|'re|,|:| of| all| each| which| that)*(?: about)?\s*$/,
  },
]
const picket = '(?:pickets?|palings?|pales?|slats?|boards?|dog[- ]?ears?)'
const oneOf = '(?:picket|paling|pale|slat|board|dog[- ]?ear)'
export const thePickets: readonly Place[] = [
  {
    word: 'wantedGap',
    is: isLength,
    before:
      /(?:gaps?|spaces?|spacing|apart)(?: of| is| are| about| around| roughly| between(?: them| each)?|'s|,|:|=)*\s*$/,
  },
  {
    word: 'wantedGap',
    is: isLength,
    after: new RegExp(
      `^\\s*${unit}(?:wide )?(?:gaps?|apart|spaces?|spacing|between|in between|of (?:space|gap|air))\\b`,
    ),
  },
  { word: 'picketWidth', is: isSized, after: new RegExp(`^\\s*${unit}${picket}\\b`) },
  {
    word: 'picketWidth',
    is: isWide,
    after: new RegExp(`^\\s*${unit}(?:wide\\b(?!,? (?:lot|gap|opening))|across\\b|face\\b|${oneOf}\\b)`),
  },
  {
    word: 'picketWidth',
    is: isWide,
    before: new RegExp(`${picket}(?: are| of| is|'re| each|,|:| which| that| at| measuring| measure| wide)*\\s*$`),
  },
]
export const howMany = (word: string, of: string): Place => ({
  word,
  is: isCount,
  after: new RegExp(`^\\s+(?:(?!per|a|each|every|in|for|to|on)[a-z-]+ ){0,2}?(?:${of})\\b`),
})
export const pickets = picket
