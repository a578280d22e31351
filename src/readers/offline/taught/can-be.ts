// This file is about which words a quantity can be at all, before anything is weighed: by its kind, and by what stands right beside it.
import { calculationNamed, fittedReading, systemOf, vocabulary, type Word } from '../../../../engine/index.ts'
import type { Tagged } from '../../reader.ts'
import { countsThings, type Fits, fitting, isOfSection } from '../fits.ts'
import { ofInsides, tellsOutside } from '../frame-told.ts'
import type { Token } from '../stems.ts'
import type { Looked } from './features.ts'
import { talkedOf } from './talked.ts'

/** Which words a quantity can be: by its kind, or as a bare number that only the words around it give a unit. */
export function canBe(looked: Looked, reading: Tagged): Fits {
  const { section } = reading
  const fits = fitting(reading, looked.heard)
  const system = systemOf(looked.heard.job)
  const isIdle = isIdleNumber(reading, looked)
  const isFree =
    reading.bare !== null &&
    !reading.change &&
    !countsThings(reading, looked.heard) &&
    !section &&
    !reading.clock &&
    !reading.people &&
    !reading.rails &&
    !reading.proportion
  const isCentred = isToCentres(looked.message, reading)
  const noGate = !speaksOfGates(looked)
  const isOutside = tellsOutside(looked.message)
  const isPrice = isPriceSaid(looked.message, reading)
  const behind = looked.message[looked.message.findIndex((it) => it.tag === reading.tag) + 1]?.stem ?? ''
  const isAcross = reading.bare !== null && /^(across|wide|deep|tall|thick|diameter)$/.test(behind)
  const isStick =
    /footers?$/i.test(reading.said) ||
    (reading.quantity?.kind === 'length' && /^\s+(?:fence\s+)?posts\b/i.test(looked.heard.said.slice(reading.end)))
  const before = looked.message[looked.message.findIndex((it) => it.tag === reading.tag) - 1]?.stem ?? ''
  const isPer = /^(per|every)$/.test(before) && reading.quantity?.kind === 'length'
  const noLap = !/lap|cover/i.test(looked.heard.said)
  const isOfHole = /^(hole|auger|posthole)$/.test(behind)
  const isBuried = buried.test(looked.heard.said.slice(reading.end))
  return (word, needed) =>
    // “600 goes in the dirt”, “600 mm of each below ground”.
    !(isBuried && word.name === 'postAbove') &&
    !(isOutside && ofInsides.has(word.name)) &&
    !(isPrice && word.kind !== 'money') &&
    !(isIdle && word.kind !== 'count') &&
    !(isCentred && word.kind === 'length' && !measuredToCentres.has(word.name)) &&
    !(noGate && ofGates.has(word.name)) &&
    // “An 8 footer” is bought as long, “12 across” counts nothing, and a “10 inch hole” has no such stone in it.
    !(isStick && ofGround.has(word.name)) &&
    !(isAcross && word.kind === 'count') &&
    !(isOfHole && inHole.has(word.name)) &&
    !(isPer && word.name === 'measuredDiagonal') &&
    !(noLap && word.name === 'boardLap' && needed.has('wantedGap')) &&
    (fits(word, needed) ||
      // A stick called by its size is any of its sides, where it has such a side.
      (section !== undefined && word.ofStick !== undefined && hasSide(word, section, needed)) ||
      (isFree && word.kind !== 'count' && fittedReading(word, reading, system) !== undefined))
}

const buried =
  /^\s*(?:of (?:it|each|them|that|every one|the post)\s+)?(?:is |are |was |goes |go |going |to go |will be |sits |will go )?(?:(?:down )?(?:in|into)(?:to)? the (?:ground|dirt|soil|earth)|(?:below|under) (?:the )?(?:ground|grass|grade|soil)|underground|buried)\b/i
const ofGround = new Set(
  'holeDepth holeDiameter stoneDepth frostDepth officeDepth codeDepth embedment postAbove'.split(' '),
)
const inHole = new Set('stoneDepth concreteUnder postWidth postAbove'.split(' '))

/** “Price is 11.20 a length”, “prices 5.10, 6.60 and 8.20”: a number behind that word, or in a row of such, is money. */
function isPriceSaid(message: readonly Token[], { tag, bare }: Tagged): boolean {
  if (bare === null || bare.d === 1n) return false
  let at = message.findIndex((it) => it.tag === tag) - 1
  while (
    message[at]?.reading?.bare ||
    /^(is|are|be|of|now|:|,|and|at|they|the|for|a|each)$/.test(message[at]?.stem ?? '')
  )
    at--
  return message[at]?.stem === 'price'
}

/** Whether centres are said right behind it: “8 ft o.c.”, “at 2.4 centres”, “7 ft c/c”. */
function isToCentres(message: readonly Token[], { tag }: Tagged): boolean {
  const at = message.findIndex((it) => it.tag === tag)
  const [one, two] = [message[at + 1]?.stem ?? '', message[at + 2]?.stem ?? '']
  return /^(o\.?c|cc|center|ctr)$/.test(one) || (one === 'c' && two === 'c') || (one === 'on' && two === 'center')
}
// What the vocabulary calls by its centres is measured from one to the other, and no clear opening is.
const measuredToCentres = new Set(
  [...vocabulary.values()].flatMap((it) =>
    Object.values(it.called)
      .flat()
      .some((phrase) => typeof phrase === 'string' && /\b(cent(er|re)s?|o\.?c\.?)\b/.test(phrase))
      ? [it.name]
      : [],
  ),
)

// “A 4 ft picket fence” has no gate of 4 ft, unless one was spoken of.
const ofGates = new Set([...vocabulary.values()].flatMap((it) => (/\bgates?\b/.test(it.label) ? [it.name] : [])))
const speaksOfGates = ({ message, heard: { job } }: Looked): boolean =>
  message.some((it) =>
    /^(gate|leaf|leave|opening|entry|entrance|door|doorway|driveway|drive|hinge|latch|wicket|walkthrough|clear)$/.test(
      it.stem,
    ),
  ) ||
  [...job.decisions, ...job.asked, ...job.wanted].some((it) => ofGates.has(it.word)) ||
  talkedOf(job).now.some((it) => calculationNamed(it)?.title.toLowerCase().includes('gate'))

/** “One”, “three”: a small whole number in words. */
export const isSmallWord = ({ bare, said, change }: Tagged): boolean =>
  !change && bare !== null && bare.d === 1n && bare.compare(10) < 0 && /^\p{L}/u.test(said)

/** “One number”, “two stakes”: a small number in words measures nothing, unless a dimension stands behind it. */
const isIdleNumber = (reading: Tagged, { message }: Looked): boolean =>
  isSmallWord(reading) &&
  !/^(wide|deep|across|tall|high|long|thick|apart|by|percent|coat)$/.test(
    message[message.findIndex((it) => it.tag === reading.tag) + 1]?.stem ?? '',
  )

/** Whether a stick called by its size may tell that side. Where one name tells both sides, the word that brings the other along takes it. */
const hasSide = (word: Word, section: NonNullable<Tagged['section']>, needed: ReadonlySet<string>): boolean =>
  ![...needed].some((it) => vocabulary.get(it)?.otherSide === word.name) && (isOfSection(word, section) ?? true)
