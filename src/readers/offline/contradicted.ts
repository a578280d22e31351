// This file is about words beside a quantity that say what it is not: “600 mm below ground” is no height above it, “14 kg per square metre” no weight of a gate.
import { vocabulary, type Word } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'

/** What a message says of a quantity, and which words that rules out. */
interface Saying {
  /** Right in front of it. */
  readonly before?: RegExp
  /** Right behind it. */
  readonly behind?: RegExp
  /** Of which quantities it is said; of any, where nothing stands here. */
  readonly of?: (reading: Tagged) => boolean
  /** The words that it cannot be then. */
  readonly never: (word: Word) => boolean
}

const oneOf = (names: string) => {
  const set = new Set(names.split(' '))
  return (word: Word): boolean => set.has(word.name)
}
const kindOf = ({ quantity }: Tagged): string | undefined => quantity?.kind
const isLength = (it: Tagged): boolean => kindOf(it) === 'length' || it.bare !== null
/** “23 a foot”. */
const isEach = ({ said, per }: Tagged): boolean => per !== undefined || /\s(?:an?|per)\s/i.test(said)
const isBare = (it: Tagged): boolean => it.bare?.d === 1n
const prices = oneOf(
  'unitPrices spentPrices measurePrice packPrice singlePrice canPrice bagPrice picketPrice postPrice railPrice capPrice stonePrice hingePrice latchPrice onePrice otherPrice boardFootPrice screwBoxPrice pieceBought',
)
const weightsOfOne = oneOf('pieceWeight loadWeights bagWeight looseBagWeight cementBagWeight stickWeight')

const ofIt =
  '(?:\\s+of (?:it|each|every one|them|that|the post|each post))?(?:\\s+(?:is|are|goes|going|will be|being|stays?))?'
const sayings: readonly Saying[] = [
  {
    behind: new RegExp(
      `^${ofIt},?\\s+(?:in(?:to)? the (?:ground|dirt|earth|soil|clay|hole)|(?:below|under|underneath|beneath) (?:the )?(?:ground|grade|grass|turf|surface|lawn)|underground|buried)\\b`,
      'i',
    ),
    of: isLength,
    never: oneOf('postAbove fenceHeight picketLength heightOtherSide barrierHeight postOverFence footGap'),
  },
  {
    behind: new RegExp(
      `^${ofIt},?\\s+(?:above (?:the )?(?:ground|grade|grass|turf|surface|lawn)|out of (?:the )?ground|showing|stick(?:s|ing)? (?:up|out))\\b`,
      'i',
    ),
    of: isLength,
    never: oneOf('embedment holeDepth frostDepth codeDepth officeDepth stoneDepth postLength'),
  },
  {
    behind: /^\s+(?:more )?of (?:them|those|these|['’]?em)\b/i,
    of: isBare,
    never: ({ kind }) => kind !== 'count',
  },
  {
    behind:
      /^\s*(?:cent(?:re|er)s\b|ctrs\b|cts\b|cent(?:re|er) to cent(?:re|er)|on cent(?:re|er)s?\b|o\.?c\.?(?![\p{L}])|(?:from|between) (?:the )?(?:post )?cent(?:re|er)s?\b)/iu,
    of: isLength,
    never: oneOf('opening openings gateOpening gateOpenings leafWidth insideWidth longerOpening shorterOpening'),
  },
  {
    behind: /^\s+(?:in the clear|clear(?! (?:of|above|under|below)\b)|of daylight|daylight|face to face)\b/i,
    of: isLength,
    never: oneOf('bayCentres widestBay fixedBay'),
  },
  {
    before:
      /\b(?:i|me|myself|wife|husband|kids?|son|daughter|mate|brother|sister|dad|mum|mom|passengers?|driver|us)\b(?: (?:is|am|are|weighs?|both|being|just|only|about|at))*\s*$/i,
    behind: /^\s*(?:$|[.,;:!?)]|together\b|between us\b|both\b|and\b)/i,
    of: (it) => kindOf(it) === 'mass' || (isBare(it) && !it.proportion),
    never: ({ name }) => name !== 'weightAboard' && name !== 'leanWeight',
  },
  {
    behind:
      /^\s*(?:per|an?|to the|to a|for (?:each|every|a)|every|\/)\s*(?:square|cubic|sq\b|cu\b|m2|m²|m3|m³|met(?:er|re)|foot|ft|yard|m\b)/i,
    of: (it) => kindOf(it) === 'mass',
    never: ({ kind }) => kind === 'mass',
  },
  {
    before: /\b(?:over)?lap(?:ped|ping|s)?(?: (?:of|by|is|them|at|each other by))?\s*$/i,
    of: isLength,
    never: ({ name, kind }) => kind === 'length' && !/lap/i.test(name),
  },
  {
    behind: /^\s*(?:altogether|in all|all told|together|in total|for (?:the lot|all of (?:it|them)|everything))\b/i,
    of: (it) => (kindOf(it) === 'money' || kindOf(it) === 'mass') && !isEach(it),
    never: (word) => prices(word) || weightsOfOne(word),
  },
  {
    behind:
      /^\s*(?:to (?:the|one|either) (?:side|left|right) of|from|off|out from|away from|either side of) (?:the )?(?:middle|cent(?:er|re)|crown|peak)\b/i,
    of: isLength,
    never: oneOf('archRise opening curveBase shortestPicket longestPicket endPicket picketWidth heightInMiddle'),
  },
  {
    before: /\b(?:i|we)(?:['’]?ve| have)?(?: only| just)?(?: got| have| had)\s*$|\bbudget(?: of| is| was|:)?\s*$/i,
    behind: /^(?!\s*(?:an?|per|each|ea|apiece|for (?:each|one|an?)|\/)\b)/i,
    of: (it) => kindOf(it) === 'money' && !isEach(it),
    never: prices,
  },
  {
    before: /\bshrink(?:s|age|ing)?(?: (?:by|of|is|about|around|at))*\s*$/i,
    of: (it) => kindOf(it) === 'percent',
    never: ({ label, name }) => /moisture|humidity/i.test(label) && !/shr[iu]nk/i.test(name),
  },
  {
    behind: /^\s*(?:of|off) (?:the|my|our|that) (?:whole )?(?:budget|money|bill|price|cost)\b/i,
    of: (it) => kindOf(it) === 'percent',
    never: ({ label, name }) => /moisture|humidity|basis|slope/i.test(`${label} ${name}`),
  },
  {
    before: /\d\s*(?:in(?:ch(?:es)?)?|mm|cm|["″])?\s*(?:by|x|×)\s*$/i,
    of: isLength,
    never: oneOf('stoneDepth concreteUnder frostDepth embedment wantedGap'),
  },
  {
    before: /\bbetween (?:the |my |those |these )?$/i,
    of: isBare,
    never: ({ kind }) => kind === 'count',
  },
  {
    behind: /^\s*deep\b/i,
    of: isLength,
    never: oneOf('holeDiameter postWidth runLength opening picketWidth widestBay bayCentres gateOpening postAbove'),
  },
  {
    behind: /^\s*(?:wide|across|in diameter|dia(?:meter)?)\b/i,
    of: isLength,
    never: oneOf('holeDepth stoneDepth embedment frostDepth postAbove fenceHeight picketLength leafHeight'),
  },
  {
    behind: /^\s*(?:tall|high)\b/i,
    of: isLength,
    never: oneOf(
      'holeDepth holeDiameter embedment runLength gateOpening opening bayCentres widestBay picketWidth leafWidth',
    ),
  },
]

/** Whether the words beside a quantity rule out that it is a value of a word. */
export function isContradicted(reading: Tagged, word: Word, { said }: Pick<Heard, 'said'>): boolean {
  const [front, back] = [
    said.slice(Math.max(0, reading.start - 40), reading.start),
    said.slice(reading.end, reading.end + 60),
  ]
  return sayings.some(
    (it) =>
      (it.of?.(reading) ?? true) &&
      it.never(word) &&
      (it.before?.test(front) ?? true) &&
      (it.behind?.test(back) ?? true),
  )
}

/** The request without what its message says that it is not: such a quantity is asked about, and nothing is worked out with it. */
export function withoutContradicted(request: Request, heard: Heard): Request {
  const told = request.told.filter(({ word: name, from }) => {
    const reading = heard.readings.find((it) => it.tag === from.tag)
    const word = vocabulary.get(name)
    return !reading || !word || !isContradicted(reading, word, heard)
  })
  return told.length === request.told.length ? request : { ...request, told }
}
