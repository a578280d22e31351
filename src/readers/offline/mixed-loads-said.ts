// This file is about a load of several kinds: “12 bags at 25 kg and 9 posts at 11 kg on a trailer good for 350 kg, over or under?”, and what was counted last, weighed.
import { isList, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { isWeight, weighed } from './hauling-said.ts'
import { lastCount, workedBy } from './last-answer.ts'
import { requestFor, tell } from './request-parts.ts'
import type { Token } from './stems.ts'

const asksOver =
  /\b(?:over(?:load\w*|weight)?|under|(?:take|carry|hold|handle|manage) (?:it|that|this|them|all)|too (?:much|heavy)|within|room|spare|left|legal|fit|ok|okay|safe)\b/i
const asksTrips = /\b(?:trips?|journeys?|runs?|loads|goes|drives?)\b/i
const asksWeight = /\b(?:weigh\w*|weight|heavy)\b/i
const ofVehicle =
  /\b(?:payload|trucks?|pickups?|utes?|vans?|minivans?|trailers?|cars?|wagon|vehicle|lorry|boot|tray|overload\w*)\b/i
const thing =
  /^(?:bag|sack|post|picket|paling|board|rail|panel|block|paver|slab|brick|piece|sheet|sleeper|roll|bucket|gate|length|stick|box)$/

interface Pair {
  readonly count: Tagged
  readonly weight: Tagged
  readonly thing: string
}

/** The request of a message that loads so many of so much each, or that goes on with one. */
export function mixedLoadIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job } = heard
  const isOn = job.named === 'mixed-load'
  if (job.asked.length > 0 && !isOn) return undefined
  const { pairs, rest } = pairsIn(heard, message)
  const weights = message.flatMap(({ reading }, at) =>
    reading && rest.includes(reading) && isWeight(reading, message, at, said) ? [weighed(reading, message, at)] : [],
  )
  const limit = limitIn(heard, rest)
  if (limit) weights.push({ reading: limit, is: 'payload', thing: '' })
  const lumps = adds.test(said) || pairs.length > 0 ? rest.filter((it) => isLump(heard, it)) : []
  const loose = [
    ...(pairs.length > 1 ? rest.filter((it) => isLoose(it, weights) && !lumps.includes(it)) : []),
    ...lumps,
  ]
  const [payloads, aboard, pieces] = (['payload', 'aboard', 'piece'] as const).map((is) =>
    weights.filter((it) => it.is === is && !lumps.includes(it.reading)),
  ) as [typeof weights, typeof weights, typeof weights]
  const counts = rest.filter((it) => it !== limit && it.bare?.d === 1n && thingOf(message, it) !== '')
  if (payloads.length + aboard.length + pieces.length + counts.length + loose.length < rest.length) return undefined
  if (payloads.length > 1 || pieces.length > 1 || counts.length > 1) return undefined
  const isTold = pairs.length > 1 || (pairs.length === 1 && (isOn || (asksOver.test(said) && payloads.length > 0)))
  const isBare = pairs.length === 0 && counts.length === 1 && /\boverload\w*\b|\btoo (?:much|heavy)\b/i.test(said)
  const isMore =
    isOn &&
    (rest.length > 0 || asksTrips.test(said) || asksWeight.test(said) || asksOver.test(said)) &&
    !/\bpost holes?\b/.test(said)
  const before =
    (pairs.length > 0 || lumps.length === rest.length) && rest.length + pairs.length > 0 && adds.test(said)
      ? loadedBefore(heard, pairs)
      : []
  // “600 kg of posts on top”, and nothing is known that it comes on top of.
  if (lumps.length > 0 && pairs.length === 0 && before.length === 0) return undefined
  if (!(isTold || (isBare && ofVehicle.test(said)) || isMore || before.length > 0)) return undefined
  const told: Told[] = [
    ...before,
    ...loose.map((it) => tell('looseWeights', it.tag)),
    ...pairs.map((it) => ({ ...tell('loadCounts', it.count.tag), thing: it.thing })),
    ...pairs.map((it) => tell('loadWeights', it.weight.tag)),
    ...(pairs.length > 0 ? [] : amended(heard, message, counts[0], pieces[0]?.reading)),
    ...payloads.map((it) => tell('payload', it.reading.tag)),
    ...aboard.map((it) => ({ ...tell('weightAboard', it.reading.tag), thing: it.thing })),
  ]
  if (pieces.length + counts.length > 0 && told.length === payloads.length + aboard.length) return undefined
  const asked =
    asksTrips.test(said) || (before.length > 0 && job.named === 'haul-trips' && job.wanted[0]?.word === 'trips')
      ? 'mixedTrips'
      : asksOver.test(said) || payloads.length > 0
        ? 'loadFits'
        : asksWeight.test(said) && aboard.length === 0 && pieces.length === 0
          ? 'mixedWeight'
          : (job.wanted[0]?.word ?? 'mixedWeight')
  if (!isOn && pairs.length > 1 && !asksWeight.test(said) && !ofVehicle.test(said) && asked !== 'mixedTrips')
    return undefined
  return requestFor('mixed-load', [isOn || asked !== 'mixedWeight' || asksWeight.test(said) ? asked : 'loadFits'], told)
}

const adds =
  /\b(?:and|n|plus|also|too|as well|on top|another|more|add|along with (?:it|that|them|those|these)|besides?|as much again)\b/i
/** What was loaded already, where more is told: another kind on top, or the first one of trips that were asked about. */
function loadedBefore({ job }: Heard, pairs: readonly Pair[]): Told[] {
  const of = (word: string) => job.decisions.find((it) => it.word === word && it.at === yard)
  if (job.named === 'haul-trips') {
    if (!of('piecesToHaul') || !of('pieceWeight')) return []
    return [{ ...tell('loadCounts', 'told.piecesToHaul'), thing: 'pieces' }, tell('loadWeights', 'told.pieceWeight')]
  }
  // “Forty posts of 14 kilos to come along with them”: with the sticks that were weighed.
  if (job.named === 'stick-weight' && of('sticks'))
    return [
      { ...tell('loadCounts', 'told.sticks'), thing: 'sticks' },
      tell('loadWeights', workedBy('stick-weight', 'stickWeight')),
    ]
  const loose = of('looseWeights')?.value
  const [counts, weights] = [of('loadCounts')?.value, of('loadWeights')?.value]
  const names = of('loadCounts')?.called ?? []
  if (job.named !== 'mixed-load' || !isList(counts) || !isList(weights) || counts.length !== weights.length) return []
  if (pairs.some((it) => it.thing !== '' && names.includes(it.thing))) return []
  return [
    ...counts.map((_, i) => ({
      ...tell('loadCounts', `job.loadCounts.${i}`),
      ...(names[i] ? { thing: names[i] } : {}),
    })),
    ...weights.map((_, i) => tell('loadWeights', `job.loadWeights.${i}`)),
    ...(isList(loose) ? loose.map((_, i) => tell('looseWeights', `job.looseWeights.${i}`)) : []),
  ]
}

/** “600 kg of posts”: weighed all together, and not one by one. */
const isLump = ({ said }: Heard, it: Tagged): boolean =>
  it.quantity?.kind === 'mass' &&
  !it.per &&
  /^\s*(?:worth )?of (?:the |my |our )?(?:\p{L}+ )?(?:posts|pickets|palings|boards|rails|panels|blocks|pavers|timber|lumber|wood|gravel|stone|sand|gear|tools|steel|iron|stuff|mulch|soil|concrete|cement)\b/iu.test(
    said.slice(it.end, it.end + 40),
  )

/** “Limit’s 500”: said without its unit, beside weights that have theirs. */
const limitIn = ({ said }: Heard, rest: readonly Tagged[]): Tagged | undefined =>
  rest.find(
    ({ bare, start, end }) =>
      bare !== null &&
      /\b(?:limit|payload|max(?:imum)?|capacity)(?:['’]?s| is| of|:)?\s*$/i.test(said.slice(0, start)) &&
      /^\s*(?:[.,;?!]|$)/.test(said.slice(end)),
  )

/** “And hinges 1.6 kg”: weighed whole, and no number of it. */
const isLoose = (it: Tagged, weights: readonly { reading: Tagged; is: string | undefined }[]): boolean =>
  it.quantity?.kind === 'mass' && !it.per && weights.some((of) => of.reading === it && of.is === undefined)

/** What a number counts, by the word behind it. */
function thingOf(message: readonly Token[], { tag }: Tagged): string {
  const at = message.findIndex((it) => it.tag === tag)
  const next = [1, 2, 3].map((i) => message[at + i]).find((it) => it && !it.tag && thing.test(it.stem))
  return next?.text ?? ''
}

const between =
  /^(?:[x×*@:]|at|of|by|the|a|each|weighing|that|which|weigh|are|is|pieces?|\p{L}+s|brace|gate|frame|latch|stick|pound)$/u
/** Nothing but such words: tried one by one, since what stands between may be long. */
const isBetween = (gap: string): boolean =>
  gap
    .replace(/[×*@:]/g, ' $& ')
    .split(/\s+/)
    .every((it) => it === '' || between.test(it))

/** “29 bags at 20 kg”, “9 × 11 kg posts”, “20 kg bags × 29”: each number with the weight beside it. */
function pairsIn({ said, readings }: Heard, message: readonly Token[]): { pairs: Pair[]; rest: Tagged[] } {
  const pairs: Pair[] = []
  const rest: Tagged[] = []
  const isCount = (it: Tagged | undefined): it is Tagged =>
    it?.bare?.d === 1n && !it.section && !it.clock && !it.people && (!it.change || it.change.way === 'more')
  const isMass = (it: Tagged | undefined): it is Tagged => it?.quantity?.kind === 'mass' && !it.per
  for (let i = 0; i < readings.length; i++) {
    const [one, two] = [readings[i] as Tagged, readings[i + 1]]
    const gap = two ? said.slice(one.end, two.start).toLowerCase() : ''
    const isPair = two && isBetween(gap) && !/\bof us\b|\bme\b/.test(gap)
    const [count, weight] = isCount(one) ? [one, two] : [two, one]
    if (isPair && isCount(count) && isMass(weight) && (count === one || /^\s*\p{L}*\s*(?:x|×|\*)\s*$/u.test(gap))) {
      pairs.push({ count, weight, thing: thingOf(message, count) || thingOf(message, weight) })
      i++
    } else rest.push(one)
  }
  return { pairs, rest }
}

/** Another number of one kind, or what was still to be told of it. */
function amended(
  { job }: Heard,
  message: readonly Token[],
  count: Tagged | undefined,
  weight: Tagged | undefined,
): Told[] {
  const of = (word: string) => job.decisions.find((it) => it.word === word && it.at === yard)
  const names = of('loadCounts')?.called ?? []
  const many = isList(of('loadCounts')?.value) ? names.length : 0
  const told: Told[] = weight && many <= 1 ? [tell('loadWeights', weight.tag)] : []
  if (!count) return told
  const name = thingOf(message, count)
  if (many === 0) return [...told, { ...tell('loadCounts', count.tag), thing: name }]
  const at = names.findIndex((it) => it.replace(/s$/, '') === name.replace(/s$/, ''))
  if (at < 0 && many > 1) return []
  return [
    ...told,
    ...names.map((it, i) => ({
      ...tell('loadCounts', i === Math.max(at, 0) ? count.tag : `job.loadCounts.${i}`),
      thing: it,
    })),
  ]
}

const asksAll =
  /\b(?:what(?:['’]?s)?|how much|how heavy)\b[^.?!]*\b(?:weigh\w*|weight|heavy)\b|\bhow heavy\b|\b(?:total|whole|all the) weight\b/i
const ofOther = /\b(?:gate|leaf|board|wood|timber|soil|dirt|spoil|gravel|stone|wet|dry|one|each bag|a bag|per)\b/i
/** “What does it all weigh?”: of the bags that were counted last; or of whatever was, at a weight told with it. */
export function weightOfLast(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, readings, job } = heard
  const [each, more] = readings
  if (!asksAll.test(said) || ofOther.test(said) || more || said.length > 90 || job.asked.length > 0) return undefined
  if (each && (each.quantity?.kind !== 'mass' || each.per || each.change)) return undefined
  const many = lastCount(heard, message, true)
  if (!many || /PerHole|Each/.test(many.word)) return undefined
  const isWeighed = many.value.unit === 'bag' && job.decisions.some((it) => it.word === 'bagWeight' && it.at === yard)
  if (!each && !isWeighed) return undefined
  return requestFor(
    'mixed-load',
    ['mixedWeight'],
    [
      { ...tell('loadCounts', many.tag), thing: `${many.value.unit}s` },
      tell('loadWeights', each?.tag ?? 'told.bagWeight'),
    ],
  )
}
