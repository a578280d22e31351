// This file is about going on with a layout: a measure corrected, a spacing told anew, and a length of fence for pickets that nothing was said of.
import { isQuantity, quantity, toNumber, vocabulary, yard } from '../../../../engine/index.ts'
import type { Request, Told } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { again, asked, isLast, isLonger, knows, type Marked, sizeIn, tell } from './marked.ts'

const corrects =
  /\b(?:wait|no|nah|nope|sorry|oops|whoops|actually|hang on|scratch that|correction|my mistake|my bad|i meant|i mean|re-?measured|measured (?:it )?again|checked (?:it )?again|misread|mistake)\b/
const smallWords = new Set(
  'wait no nope sorry oops whoops actually i it its is was measured remeasured again that the mean meant said make should be not only really more like got now checked just my bad mistake hang on scratch that correction of to and so ok okay thats whole thing turns out comes came come all told us hmm um uh misread nah nope boss reckons reckon says said he she they we missus mate hubby wife husband dad tape actual theyre were thats wide long tall high deep thick across each em one ones them those these'.split(
    ' ',
  ),
)

/** “Wait no, I measured again, it's 112”: of what was told last, the one measure that it can be, or the one that is nearest by far. */
export function corrected(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  if (!only || more || only.section || only.change || job.asked.length > 0 || !it.has(corrects)) return undefined
  if (job.wanted.length === 0) return undefined
  // What was wrong may be a sentence of its own: “They're 65. I had the wrong glasses on.”
  const own = it.text.split(/[.!;]\s/).find((part) => part.includes('§')) ?? it.text
  const words = own.replace(/§\w+/g, ' ').match(/[a-z']+/g) ?? []
  if (it.text.includes('?') || words.some((word) => !smallWords.has(word.replace(/'/g, '')))) return undefined
  const alike = job.decisions.flatMap((old): { word: string; apart: number }[] => {
    if (!isQuantity(old.value) || old.at !== yard) return []
    if (only.quantity && only.quantity.kind !== old.value.kind) return []
    // A bare number takes the unit of the word, which must be the one it was said in.
    const isCount = vocabulary.get(old.word)?.kind === 'count'
    const size = only.bare !== null && isCount ? only.bare.valueOf() : sizeIn(only, old.value.unit)
    const was = isCount
      ? toNumber(old.value.amount)
      : toNumber(old.value.amount) / toNumber(quantity(1, old.value.unit).amount)
    const ratio = size && was ? Math.max(size / was, was / size) : Infinity
    return ratio < nearly && ratio > 1 ? [{ word: old.word, apart: Math.log(ratio) }] : []
  })
  const [first, second] = [...alike].sort((a, b) => a.apart - b.apart)
  const isNearest = first && (second === undefined || first.word === second.word || first.apart <= second.apart / 2)
  return isNearest ? again(tell(first.word, only)) : undefined
}
// Nobody is off by more than half.
const nearly = 1.5

const spacingSaid =
  /§[LN](\d+) (?:in |ft |foot |mm )?(?:post )?(?:spacings?|cent(?:er|re)s?|on cent|o\.?c\.?|apart|crs)|(?:spacing|cent(?:er|re)s|spaced|bays?)(?: of| at| is| to| are)? §[LN](\d+)/
/** “And for 6 ft 10 spacing?”: the spacing of posts that the talk is about. */
export function spacingAnew(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  if (!only || more || only.change || it.has(/picket|paling|rail|gate|gap|screw|board/)) return undefined
  const words = it.text.replace(/§\w+/g, ' ').match(/[a-z']+/g) ?? []
  if (!it.has(spacingSaid) || words.length > mostWords || it.has(/how many (?!posts|bays)|how deep|how long/))
    return undefined
  const told = ['bayCentres', 'widestBay', 'fixedBay'].filter((word) =>
    job.decisions.some((old) => old.word === word && old.at === yard),
  )
  const [word, other] = told
  return word && !other && job.wanted.length > 0 ? again(tell(word, only)) : undefined
}
const mostWords = 8

const ofPickets = /how many (?:pickets|palings)/
/** “How many pickets?” “12 m”: a length of fence, and no opening between two posts. */
export function picketsOfLength(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  if (
    !only &&
    job.wanted.length === 0 &&
    job.decisions.length === 0 &&
    it.has(ofPickets) &&
    it.has(/ (?:my|the|a|this|our|whole|entire) (?:whole |entire |picket |front |garden )*(?:fence|yard|garden)\b/)
  )
    return asked('pickets-by-length', [], 'picketsHung')
  const isOpen = job.asked.some((old) => old.word === 'opening') && job.asked.some((old) => old.word === 'picketWidth')
  if (!only || more || !isOpen || knows(job, 'runLength') || !isLonger(only, widestOpening)) return undefined
  const words = it.text.replace(/§\w+/g, ' ').match(/[a-z']+/g) ?? []
  return words.length <= mostWords ? asked('pickets-by-length', tell('runLength', only), 'picketsHung') : undefined
}
// No opening between two posts is wider.
const widestOpening = quantity(14, 'ft')

const opening =
  /opening(?: is| of|:)? §[LN](\d+)|§[LN](\d+) (?:mm |in |inch |clear |wide |gate )*opening|(?:between|posts)[^.?§]{0,30}§[LN](\d+)/
const eachSide =
  /§[LN](\d+) (?:mm |in |inch )?(?:gaps? |clearance |clear |play )?(?:at |on |for |down )?(?:each|both|either|the) (?:sides?|ends?|edges?)|(?:each|both|either) sides?[^.?§]{0,14}§[LN](\d+)/
const meeting =
  /§[LN](\d+) (?:mm |in |inch )?(?:gap )?(?:at |in |for |between )?(?:the )?(?:middle|centre|center|meeting|them|leaves)/
/** “Double gate, 3000 opening, 10 each side and 15 in the middle: how wide a leaf?” */
export function leafBetween(it: Marked): Request | undefined {
  const { job, readings, said } = it.heard
  const isGoing = isLast(job, 'gate-leaf') || job.asked.some((old) => old.word === 'gateOpening')
  if (!(isGoing || it.has(/how wide[^?.]*(?:leaf|leaves|gate)|leaf width|width of (?:the|each) (?:leaf|gate)/)))
    return undefined
  const one = (pattern: RegExp) =>
    pattern
      .exec(it.text)
      ?.slice(1)
      .map(it.at)
      .find((x) => x !== undefined)
  const [wide, side, middle] = [one(opening), one(eachSide), one(meeting)]
  if (!wide || !side || wide === side || middle === side) return undefined
  if (readings.some((x) => x !== wide && x !== side && x !== middle)) return undefined
  const [double] = /\b(?:double (?:gates?|leaf)|pair of (?:gates|leaves)|two leaves|each leaf)\b/i.exec(said) ?? []
  return asked(
    'gate-leaf',
    [
      ...tell('gateOpening', wide),
      ...tell('hingeGap', side),
      // “Each side” tells one gap of two: the words that said it are read once more.
      ...(middle || double ? tell('meetingGap', middle) : toldAgain('latchGap', side)),
      ...(double
        ? [{ word: 'gateLeaves', at: yard, from: { tag: null, quote: double, option: 'double', usual: null } }]
        : []),
    ],
    'leafWidth',
  )
}

const toldAgain = (word: string, { said }: Tagged): Told[] => [
  { word, at: yard, from: { tag: null, quote: said, option: null, usual: null } },
]
