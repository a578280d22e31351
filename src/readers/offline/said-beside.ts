// This file is about sizes of holes, corners, wood, air and paint whose neighbours say outright what they are: “RH around 65”, “12 for the third coat”.
import { isQuantity, type Job, quantity, toNumber, type Word, yard } from '../../../engine/index.ts'
import type { Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import type { Token } from './stems.ts'

type Needs = Readonly<Record<string, Word>>

/** What the words right beside a quantity say that it is, for the words that a sum needs. */
export function saidBeside(message: readonly Token[], needs: Needs, job: Job): Bound[] {
  return [
    ...humidityIn(message, needs),
    ...dewMarginIn(message, needs),
    ...coatsIn(message, needs),
    ...diagonalIn(message, needs),
    ...heightOfLean(message, needs),
    ...readAnew(message, needs, job),
    ...holeAcross(message, needs),
  ].map((it) => ({ ...it, at: yard, score: weight.byPlace }))
}

interface Of {
  readonly reading: Tagged
  readonly word: string
}

const isLength = ({ quantity: size, bare, section }: Tagged): boolean =>
  !section && (size?.kind === 'length' || (bare !== null && size === null))
const isShare = ({ quantity: size, bare }: Tagged): boolean =>
  size?.kind === 'percent' || (bare !== null && size === null)
const sizeOf = ({ quantity: size, bare }: Tagged): number => bare?.valueOf() ?? (size ? toNumber(size.amount) : 0)
const stemAt = (message: readonly Token[], at: number): string => message[at]?.stem ?? ''

/** “RH around 65”, “65 RH”, “humidity is 80”. */
function humidityIn(message: readonly Token[], needs: Needs): Of[] {
  const word = needs.humidityNow ? 'humidityNow' : needs.humidity ? 'humidity' : undefined
  if (!word || needs.hourHumidities) return []
  const [only, more] = message.flatMap(({ reading }, at) => {
    if (!reading || !isShare(reading) || sizeOf(reading) > 100) return []
    let before = at - 1
    while (/^(is|are|at|of|around|about|near|roughly|say|was|now|:|=|,)$/.test(stemAt(message, before))) before--
    const isNamed =
      /^(rh|r\.h|humidity)$/.test(stemAt(message, before)) || /^(rh|r\.h|humidity)$/.test(stemAt(message, at + 1))
    return isNamed ? [reading] : []
  })
  return only && !more ? [{ reading: only, word }] : []
}

/** “The surface must be 5 above the dew point”. */
function dewMarginIn(message: readonly Token[], needs: Needs): Of[] {
  if (!needs.dewMargin) return []
  return message.flatMap(({ reading }, at) => {
    const behind = message.slice(at + 1, at + 5).map((it) => it.stem)
    const isAbove = /^(above|over)$/.test(behind.find((it) => !/^(degree|deg|f|c)$/.test(it)) ?? '')
    return reading && isAbove && behind.includes('dew') ? [{ reading, word: 'dewMargin' }] : []
  })
}

const ordinal = {
  coverageFirst: /^(first|1st)$/,
  coverageNext: /^(second|2nd|third|3rd|later|next|subsequent|further)$/,
} as const

/** “First coat 250, second coat 350”, “8 for the first and 12 for the next”: how far each goes. */
function coatsIn(message: readonly Token[], needs: Needs): Of[] {
  if (!needs.coverageFirst || !needs.coverageNext) return []
  const isSpread = (at: number): boolean => {
    const { reading } = message[at] ?? {}
    const isPlain =
      reading?.bare != null && !reading.change && sizeOf(reading) > 1 && stemAt(message, at + 1) !== 'coat'
    return reading?.quantity?.kind === 'coverage' || isPlain
  }
  return message.flatMap(({ stem }, at): Of[] => {
    const word = ordinal.coverageFirst.test(stem)
      ? 'coverageFirst'
      : ordinal.coverageNext.test(stem)
        ? 'coverageNext'
        : undefined
    if (!word) return []
    const steps = [1, 2, 3, 4]
    const isSettled = (step: number): boolean =>
      message.slice(at + 1, at + step).every((it) => !it.tag && !/^[.;?!\n]$/.test(it.text))
    const ahead = steps.find((step) => isSpread(at + step) && isSettled(step))
    // “250 a gallon first coat”, “150 for the first”: it stands before.
    const isNext = isSpread(at - 1)
    const behind = isNext || (/^(for|on|in)$/.test(stemAt(message, at - 2)) && stemAt(message, at - 1) === 'the')
    const spot = behind ? (isNext ? [1] : [3, 4, 5]).map((step) => at - step).find(isSpread) : ahead && at + ahead
    const reading = spot === undefined ? undefined : message[spot]?.reading
    return reading ? [{ reading, word }] : []
  })
}

/** “The diagonal is 20 ft 1/2 in”, “diagonals 14.62 and 14.55, 8 m on the side”. */
function diagonalIn(message: readonly Token[], needs: Needs): Of[] {
  const from = message.findIndex((it) => /^(diagonal|diag|hypotenuse)/.test(it.stem))
  if (from < 0) return []
  const lengths = message.flatMap(({ reading }, at) => (reading && isLength(reading) ? [{ reading, at }] : []))
  if (needs.measuredDiagonal) {
    const next = lengths.find(({ at }) => at > from)
    const isBehind = next && message.slice(from + 1, next.at).every((it) => joint.test(it.stem))
    const before = lengths.find(
      ({ at }) => at === from - 1 || (at === from - 2 && joint.test(stemAt(message, from - 1))),
    )
    const found = isBehind ? next : before
    return found ? [{ reading: found.reading, word: 'measuredDiagonal' }] : []
  }
  if (!needs.diagonals || lengths.length > 3) return []
  const alike = lengths.filter(({ reading }) =>
    lengths.some((it) => it.reading !== reading && Math.abs(sizeOf(it.reading) / sizeOf(reading) - 1) < oneTenth),
  )
  const others = lengths.filter((it) => !alike.includes(it))
  if (alike.length !== 2) return []
  return [
    ...alike.map(({ reading }) => ({ reading, word: 'diagonals' })),
    ...others.map(({ reading }) => ({ reading, word: 'pushedSide' })),
  ]
}
// Diagonals of four corners that somebody takes for square differ by less.
const oneTenth = 0.1
const joint =
  /^(is|are|was|be|of|at|come|comes|came|out|to|measure|measured|read|reads|got|i|get|on|the|says|it|only|about|,|:|=)$/

/** “Leans out 40 mm at the top, 1.25 m tall”: over the whole height. */
function heightOfLean(message: readonly Token[], needs: Needs): Of[] {
  const isAtTop = message.some((it, at) => it.stem === 'top' && /^(the|at)$/.test(stemAt(message, at - 1)))
  if (!needs.plumbOver || !needs.outOfPlumb || !isAtTop) return []
  const lengths = message.flatMap(({ reading }, at) => (reading && isLength(reading) ? [{ reading, at }] : []))
  const tall = lengths.filter(
    ({ at }) =>
      /^(tall|high|long|post)$/.test(stemAt(message, at + 1)) || /^(height|tall)$/.test(stemAt(message, at - 1)),
  )
  const [only, more] = tall
  return lengths.length === 2 && only && !more ? [{ reading: only.reading, word: 'plumbOver' }] : []
}

/** “36 in deep and a foot across”, “250 across by 700 deep”: as wide as the hole that is so deep. */
function holeAcross(message: readonly Token[], needs: Needs): Of[] {
  if (!needs.holeDiameter || !needs.holeDepth || !message.some((it) => /^(hole|posthole|footing)$/.test(it.stem)))
    return []
  const stands = (at: number, as: RegExp): boolean => {
    const { reading } = message[at] ?? {}
    return reading !== undefined && isLength(reading) && as.test(stemAt(message, at + 1))
  }
  const found = message.flatMap(({ reading }, at): Of[] => {
    if (!reading || !stands(at, acrossIt)) return []
    const isBeside = [2, 3, 4].some(
      (step) =>
        (stands(at - step, /^deep$/) && message.slice(at - step + 2, at).every((it) => pairs.test(it.stem))) ||
        (stands(at + step, /^deep$/) && message.slice(at + 2, at + step).every((it) => pairs.test(it.stem))),
    )
    return isBeside ? [{ reading, word: 'holeDiameter' }] : []
  })
  return found.length === 1 ? found : []
}
const acrossIt = /^(across|dia|diameter|wide|round)$/
const pairs = /^(and|by|x|,|&)$/

const meters = ['depthReading', 'moistureReading', 'surfaceReading'] as const

/** “Now its 14”, “down to 14 today”: what the meter read before, read anew. */
function readAnew(message: readonly Token[], needs: Needs, job: Job): Of[] {
  const [read, other] = meters.filter((word) => job.decisions.some((it) => it.word === word && isQuantity(it.value)))
  if (!read || other || !needs[read]) return []
  return message.flatMap(({ reading }, at): Of[] => {
    if (!reading || !isShare(reading) || reading.change) return []
    const isNow =
      message.slice(Math.max(0, at - 3), at).some((it) => /^(now|today|down)$/.test(it.stem)) ||
      /^(now|today)$/.test(stemAt(message, at + 1))
    const isLimit = message
      .slice(Math.max(0, at - 3), at)
      .some((it) => /^(can|tin|limit|max|under|below)$/.test(it.stem))
    return isNow && !isLimit ? [{ reading, word: read }] : []
  })
}

/** The stone of “gravel for 16 holes, 9 in auger, six inches deep”: nobody digs a hole for a post so shallow. */
export const isDeepAsStone = (reading: Tagged, needs: Needs): boolean =>
  needs.stoneDepth !== undefined &&
  needs.bucketSize !== undefined &&
  (reading.quantity
    ? toNumber(reading.quantity.amount) <= deepestStone
    : reading.bare !== null && (sizeOf(reading) <= 12 || (sizeOf(reading) >= 25 && sizeOf(reading) <= 300)))
const deepestStone = toNumber(quantity(12, 'in').amount)
