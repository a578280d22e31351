// This file is about what is to be painted, told by its sizes: “31 m x 1200, both sides”, “140 pickets 900 long, 70 wide and 18 thick”, “the tins hold 2.5 L and cost £34”.
import { type Calculation, calculationNamed, toNumber, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { empty, from } from './plain-phrases.ts'
import type { Token } from './stems.ts'

const byFace = calculationNamed('finish-by-face') as Calculation
const byArea = calculationNamed('finish-quantity') as Calculation

const paints = /\b(paint\w*|stain\w*|varnish\w*|oil|sealer|finish|preservative|primer|coats?)\b/i
const asksHowMuch = /\b(how (?:much|many)|litres?|liters?|gallons?|tins?|cans?|buckets?|cost|spend|need|what)\b/i
const sides =
  /\b(both (?:sides|faces)|two (?:sides|faces)|front and back|(?:the )?(?:one|single) (?:side|face)|just the (?:front|outside|one)|(?:front|outside|street side) only)\b/i

const isLength = ({ quantity, bare, section }: Tagged): boolean =>
  !section && (quantity?.kind === 'length' || bare !== null)

const tell = (word: string, { tag }: Tagged): Told => ({ word, at: yard, from: from(tag) })

/** How many sides, by the words that say so. */
function sidesTold(said: string): Told[] {
  const quote = sides.exec(said)?.[0]
  if (!quote) return []
  const option = /\b(?:one|single|only|just)\b/i.test(quote) ? 'one' : 'both'
  return [{ word: 'sidesCoated', at: yard, from: { tag: null, quote, option, usual: null } }]
}

interface Rest {
  readonly told: readonly Told[]
  readonly left: readonly Tagged[]
}

/** Coats, spread, spare, the size of the cans and what one costs; and what is left of the message. */
function ofCans(heard: Heard, message: readonly Token[]): Rest | undefined {
  const told: Told[] = []
  const left: Tagged[] = []
  for (const reading of heard.readings) {
    const at = message.findIndex((it) => it.tag === reading.tag)
    const next = message[at + 1]?.stem ?? ''
    const kind = reading.quantity?.kind
    if (kind === 'coverage') told.push(tell(spreadOf(reading, heard), reading))
    else if (reading.bare !== null && next === 'coat') told.push(tell('coats', reading))
    else if (isOfSides(reading, heard)) continue
    else if (kind === 'percent' && shareOfFace(reading, heard)) left.push(reading)
    else if (kind === 'percent') told.push(tell('finishSpare', reading))
    else if (kind === 'volume') told.push(tell('canSize', reading))
    else if (kind === 'money' && !reading.per) told.push(tell('canPrice', reading))
    else if (kind === undefined || kind === 'length') left.push(reading)
    else return undefined
  }
  const isOnce = new Set(told.map((it) => it.word)).size === told.length
  return isOnce ? { told, left } : undefined
}

/** “200 in the first coat, 300 in the second”: each by the coat that stands behind it, else before it. */
function spreadOf({ start, end }: Tagged, { said }: Heard): 'coverageFirst' | 'coverageNext' {
  const later = /^(?:second|2nd|next|later|other|following|third|rest)/i
  const [, behind] = ofCoat.exec(said.slice(end, end + 32)) ?? []
  const [, before] =
    /\b(first|1st|second|2nd|next|later|other|following|third|rest)(?: (?:coats?|one|go|time))?(?: (?:is|at|gets?|goes|covers?|of|only|,|:))*\s*$/i.exec(
      said.slice(Math.max(0, start - 40), start),
    ) ?? []
  return later.test(behind ?? before ?? '') ? 'coverageNext' : 'coverageFirst'
}
const ofCoat =
  /^\s*(?:(?:in|on|for|with|by|at)\s+)?(?:the\s+)?(first|1st|second|2nd|next|later|other|following|third|rest)\b/i

/** “All four sides”, “both faces”: what nobody measures. */
const isOfSides = ({ bare, end }: Tagged, { said }: Heard): boolean =>
  (bare?.equals(4) === true || bare?.equals(2) === true) &&
  /^\s+(?:sides?|faces?|edges?|long sides)\b/i.test(said.slice(end))

/** “Two thirds of it”: the gaps are left out. */
const isOfFace =
  /^\s*(?:of (?:it|that|this|the (?:fence|face|area))|(?:is )?(?:solid|wood|boards?)|as (?:wood|boards?))\b/i

/** “A third of it is just air”, “a quarter open”: no wood. */
const isOfAir =
  /^\s*(?:of (?:it|that|this|them|the (?:fence|face|area)) )?(?:(?:is|are|being|as|would be|just|only|all|about|really|nothing but) )*(?:open\w*|air|gaps?|empty|holes?|see[- ]through|space\w*|daylight|nothing)\b/i

/** The word for a part of the face that is wood, or is none. */
function shareOfFace({ quantity, end }: Tagged, { said }: Heard): 'faceOpen' | 'faceShare' | undefined {
  if (quantity?.kind !== 'percent') return undefined
  const behind = said.slice(end)
  return isOfAir.test(behind) ? 'faceOpen' : isOfFace.test(behind) ? 'faceShare' : undefined
}

const ofASide =
  /^\s*(?:a|an|per|each|every|for (?:each|one|a)|on (?:each|one|a|either)|(?:for|on) the one)\s+(?:side|face)\b/i
/** “300 square feet a side, both sides, 200 to the gallon”. */
export function paintingSidesIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job, readings } = heard
  const [side, more] = readings.filter(
    (it) => it.quantity?.kind === 'area' && ofASide.test(said.slice(it.end, it.end + 24)),
  )
  if (
    !side ||
    more ||
    !(paints.test(said) || job.wanted.some(({ word }) => byArea.gives[word]) || job.named === 'price-by-measure')
  )
    return undefined
  const isOne = (it: Tagged): boolean => /^(?:a|one) (?:gallon|litre|liter)$/i.test(it.said)
  const rest = ofCans({ ...heard, readings: readings.filter((it) => it !== side && !isOne(it)) }, message)
  if (!rest || rest.left.length > 0) return undefined
  const knows = job.decisions.some((it) => it.word === 'measurePrice')
  const isPriced = knows || rest.told.some((it) => it.word === 'canPrice')
  return {
    ...empty,
    told: [
      tell('sideArea', side),
      ...rest.told,
      ...sidesTold(said),
      ...(knows ? [{ word: 'canPrice', at: yard, from: from('told.measurePrice') }] : []),
    ],
    wants: [{ word: isPriced ? 'finishCost' : 'finishNeeded', at: yard }],
    calculation: byFace.name,
  }
}

/** The request of a message that tells a fence by its length and height, to be painted. */
export function paintingByFaceIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job } = heard
  const isAwaited =
    job.asked.length > 0 &&
    job.asked.every(({ word }) => byFace.needs[word] ?? byArea.needs[word]) &&
    job.wanted.some(({ word }) => byFace.gives[word])
  if (!(paints.test(said) && asksHowMuch.test(said)) && !isAwaited) return undefined
  if (job.asked.length > 0 && !isAwaited) return undefined
  const rest = ofCans(heard, message)
  if (!rest || rest.left.length < 2 || !rest.told.some((it) => it.word === 'coverageFirst')) return undefined
  const told: Told[] = []
  const spots = rest.left.map((reading) => message.findIndex((it) => it.tag === reading.tag))
  for (const [i, reading] of rest.left.entries()) {
    const share = shareOfFace(reading, heard)
    if (share) {
      told.push(tell(share, reading))
      continue
    }
    if (!isLength(reading)) return undefined
    const at = spots[i] as number
    const next = message[at + 1]?.stem ?? ''
    const isAfterBy = /^(x|×|by)$/i.test(message[at - 1]?.text ?? '') && spots[i - 1] === at - 2
    if (/^(gap|gapped|apart)$/.test(next)) told.push(tell('faceGap', reading))
    else if (/^(picket|board|paling|pale|slat|plank)$/.test(next) && reading.quantity)
      told.push(tell('picketWidth', reading))
    else if (/^(tall|high|height)$/.test(next) || isAfterBy) told.push(tell('faceHeight', reading))
    else if (/^(long|length|run|of|x|×|by)$/i.test(next) && reading.quantity) told.push(tell('faceLength', reading))
    else return undefined
  }
  const words = told.map((it) => it.word)
  const isWhole = words.includes('faceLength') && words.includes('faceHeight')
  if (!isWhole || new Set(words).size !== words.length) return undefined
  const isPriced = rest.told.some((it) => it.word === 'canPrice')
  return {
    ...empty,
    told: [...told, ...rest.told, ...sidesTold(said)],
    wants: [{ word: isPriced ? 'finishCost' : 'finishNeeded', at: yard }],
    calculation: byFace.name,
  }
}

const ofPickets = /^(picket|paling|pale|board|slat)$/
const ofRails = /^(rail|stringer)$/

/** Which side of a stick a size is, by the word behind it. */
const sideBehind = (stem: string): 'long' | 'wide' | 'thick' | undefined =>
  /^(long|tall|high)$/.test(stem) ? 'long' : stem === 'wide' ? 'wide' : stem === 'thick' ? 'thick' : undefined

const words = {
  picket: { count: 'picketsHung', long: 'picketLength', wide: 'picketWidth', thick: 'picketThickness' },
  rail: { count: 'railsInAll', long: 'railCut', wide: 'railDepth', thick: 'railThickness' },
} as const

/** “140 pickets, each 900 mm long, 70 mm wide and 18 mm thick”, “twelve rails, each 3.6 m long and 75 by 38”: each with its own sizes, to be painted. */
export function paintingSticksIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job } = heard
  const goesOn = job.wanted.some(({ word }) => byArea.gives[word])
  if (!(goesOn || (paints.test(said) && asksHowMuch.test(said)))) return undefined
  const rest = ofCans(heard, message)
  if (!rest) return undefined
  const told: Told[] = []
  let of: keyof typeof words | undefined
  const threes = sizesOfThree(rest.left, said)
  for (const [i, reading] of rest.left.entries()) {
    const is3 = threes.get(reading)
    if (of && is3) {
      told.push(...is3.map((side) => tell(words[of as keyof typeof words][side], reading)))
      continue
    }
    const at = message.findIndex((it) => it.tag === reading.tag)
    const next = message[at + 1]?.stem ?? ''
    const named = countedAt(message, at) ?? (goesOn && i === 0 && isOfThem(reading, said) ? 'picket' : undefined)
    const side = sideBehind(next)
    if (reading.bare?.d === 1n && named && !side) {
      of = named
      told.push(tell(words[of].count, reading))
      continue
    }
    if (!of || !isLength(reading)) return undefined
    const before = rest.left[i - 1]
    const isSecond = /^(x|×|by)$/i.test(message[at - 1]?.text ?? '') && before !== undefined
    const isFirst = /^(x|×|by)$/i.test(message[at + 1]?.text ?? '')
    const is = side ?? (isFirst ? 'wide' : isSecond ? 'thick' : undefined)
    if (!is) return undefined
    told.push(tell(words[of][is], reading))
  }
  const isOnce = new Set(told.map((it) => it.word)).size === told.length
  if (told.length < 3 || !isOnce) return undefined
  const all = [...told, ...rest.told]
  const isPriced = all.some((it) => it.word === 'canPrice')
  const isOfCans = /\b(tins?|cans?|pails?|buckets?)\b[^.?!]*\?|\bhow many (?:tins?|cans?|pails?)\b/i.test(said)
  return {
    ...empty,
    told: all,
    wants: [{ word: isPriced ? 'finishCost' : isOfCans ? 'finishCans' : 'finishNeeded', at: yard }],
    calculation: byArea.name,
  }
}

/** “120 of em”, where the talk is about pickets to paint. */
const isOfThem = ({ bare, end }: Tagged, said: string): boolean =>
  bare?.d === 1n && /^\s+of (?:['’]?em|them|those|these)\b/i.test(said.slice(end))

type Side = 'long' | 'wide' | 'thick'
const by = /^\s*(?:mm|cm|in|inch(?:es)?)?\s*(?:x|×|by)\s*$/i
/** “1200x90x19”, “90 by 19 by 1200”: three sizes in a row, the longest of them the length, the least the thickness. */
function sizesOfThree(of: readonly Tagged[], said: string): Map<Tagged, readonly Side[]> {
  const found = new Map<Tagged, readonly Side[]>()
  const isJoined = (one: Tagged | undefined, two: Tagged | undefined): boolean =>
    one !== undefined && two !== undefined && by.test(said.slice(one.end, two.start))
  for (const [i, one] of of.entries()) {
    const [two, three] = [of[i + 1], of[i + 2]]
    if (!two || !isJoined(one, two)) continue
    const section = one.section ? one : two.section ? two : undefined
    if (section) {
      found.set(section, ['wide', 'thick'])
      found.set(section === one ? two : one, ['long'])
    } else if (three && isJoined(two, three)) {
      const row = [one, two, three].sort((a, b) => sizeOf(b) - sizeOf(a))
      if (new Set(row.map(sizeOf)).size < 3 || new Set(row.map((it) => it.quantity?.unit)).size > 1) continue
      for (const [at, it] of row.entries()) found.set(it, [(['long', 'wide', 'thick'] as const)[at] as Side])
    }
  }
  return found
}
const sizeOf = ({ quantity, bare }: Tagged): number => (quantity ? toNumber(quantity.amount) : (bare?.valueOf() ?? 0))

/** “140 pickets”, or “I forgot the rails. There are twelve”: what a number counts. */
function countedAt(message: readonly Token[], at: number): keyof typeof words | undefined {
  const kind = (it: Token | undefined): keyof typeof words | undefined =>
    !it || it.tag ? undefined : ofPickets.test(it.stem) ? 'picket' : ofRails.test(it.stem) ? 'rail' : undefined
  const behind = kind(message[at + 1]) ?? kind(message[at + 2])
  const isThere =
    /^(be|are|is|there|of)$/.test(message[at - 1]?.stem ?? '') || /^([,.]|of)$/.test(message[at + 1]?.text ?? '')
  const before = message
    .slice(Math.max(0, at - 6), at)
    .map(kind)
    .findLast((it) => it)
  return behind ?? (isThere ? before : undefined)
}

/** “4 L tins 79 bucks, cost”, “what if it covers 250 a gallon?”, behind a sum of finish. */
export function cansIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { job, said, readings } = heard
  const calc = [byFace, byArea].find((it) => it.name === job.named)
  if (!calc || readings.length === 0 || !job.wanted.some(({ word }) => calc.gives[word])) return undefined
  const rest = ofCans(heard, message)
  const isOther = /\b(deliver\w*|discount|off|tax|vat|gst|hour|wage|labou?r|brush\w*)\b/i.test(said)
  if (!rest || rest.left.length > 0 || isOther || job.asked.length > 0) return undefined
  const isPriced = rest.told.some((it) => it.word === 'canPrice') || job.wanted.some((it) => it.word === 'finishCost')
  const isOfCans = rest.told.some((it) => it.word === 'canSize')
  const had = job.wanted.filter(({ word }) => calc.gives[word])
  return {
    ...empty,
    told: [...rest.told, ...sidesTold(said)],
    wants: isPriced ? [{ word: 'finishCost', at: yard }] : isOfCans ? [{ word: 'finishCans', at: yard }] : [...had],
    calculation: calc.name,
  }
}

/** “2.5 L tins at £34 a go”: the size of the cans and what one costs, before the price is taken for that of something else. */
export const cansPricedIn = (heard: Heard, message: readonly Token[]): Request | undefined => {
  const kinds = heard.readings.map((it) => it.quantity?.kind)
  return kinds.length === 2 && kinds.includes('volume') && kinds.includes('money') ? cansIn(heard, message) : undefined
}
