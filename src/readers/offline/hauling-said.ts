// This file is about hauling by weight: which weight is the vehicle's, which rides along, and which is that of one bag. “I’m 180 lb myself” weighs no bag.
import { type Calculation, calculationNamed, isList, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { isStickLength } from './fits.ts'
import { lastCount } from './last-answer.ts'
import { empty, from } from './plain-phrases.ts'
import type { Token } from './stems.ts'

const haul = calculationNamed('haul-trips') as Calculation

const vehicle =
  /\b(payload|trucks?|pickups?|utes?|vans?|minivans?|trailers?|cars?|estate|hatchback|suv|wagon|vehicle|lorry|boot|tray|jeep|4x4|bakkie)\b/i
const asksTrips = /\b(trips?|journeys?|runs?|loads|goes|times|drives?)\b/i
const asksAtOnce =
  /\bhow many\b[^.?!]*\b(in (the )?one (go|trip|run|load)|at once|at (a|one|any one|the same) time|(can|could|may|do|will|should|would) (i|we|it|she|he|you) (\w+ly |even |legally )?(carry|bring|fit|take|chuck|haul|load|get|put|throw|have)|can (go|ride)|(each|per|a) trip)\b/i
/** “How many trips to the store for 30 bags?” */
const tripsOfThings =
  /\bhow many (?:trips|runs|journeys|drives)\b[^.?!]{0,40}\b(?:bags?|sacks?|posts?|pickets?|palings?|boards?|panels?|blocks?|pavers?|rails?)\b/i
const other = /\b(barrow|wheelbarrow|deliver\w*|cheaper|cost|price|hire|rent)\b/i

const rider =
  /^(i|i'm|me|myself|himself|herself|driver|passenger|wife|husband|missus|partner|mate|buddy|friend|neighbor|neighbour|son|daughter|kid|brother|sister|dad|mum|mom|father|mother|boy|girl|lad|lass|nephew|niece|cousin|uncle|aunt|girlfriend|boyfriend|workmate|grandson|granddaughter|dog|she|he|her|him|helper|tool|tools|toolbox|mixer|gear|saw)$/
const isMe = /^(i|i'm|im|me|myself|driver)$/i
const ofVehicle =
  /^(payload|carry|carries|carrying|takes?|rated|sticker|plate|placard|limits?|capacity|hold|holds|haul|hauls|max|maximum|legal|legally|allowed|tow|tows|handle|handles|manage|manages)$/
/** “Can do like 700 lb”, “good for 750 kg”, “does 600 kg”. */
const asVehicle = /\b(?:(?:can|could|will|may|must) (?:\w+ )?(?:do|cope|have)|good for|does|up to)\b/i
const ofPiece =
  /^(bag|sack|concrete|cement|postmix|mix|post|block|paver|slab|each|apiece|stone|board|bucket|pail|panel|rail|sleeper|stick|picket|paling|piece|length|brick|footer)$/
const things = /^(bag|sack|post|block|paver|slab|board|piece|bucket|pail|panel|rail|sleeper|of|em|them)$/
/** “Only four of those bags at once”, “12 a trip”, “six in the boot”. */
const behindEach =
  /^\s*(?:(?:of|those|these|them|the|em|\w+s|bags?|\d+ ?(?:lb|kg))\s+){0,4}(?:at (?:a|one|any one) (?:time|go)|at once|(?:on |in |for )?(?:each|per|a|every|one|the one) (?:trip|go|load|run|time|journey)|in the (?:boot|trunk|back))\b/i

const hasIt = /^(have|had|has|got|get|haul|hauling|need|carry|buy|load|bring|move|order|pick|want|take|shift)$/

export interface Weight {
  readonly reading: Tagged
  readonly is: 'payload' | 'aboard' | 'piece' | undefined
  readonly thing: string
}

/** The request of a message about trips with a vehicle, where who is aboard, the payload and one piece are told apart; nothing for any other. */
export function haulingIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job } = heard
  const goesOn = job.wanted.some(({ word }) => haul.gives[word])
  const asksOf =
    (vehicle.test(said) || tripsOfThings.test(said)) &&
    (asksTrips.test(said) || asksAtOnce.test(said)) &&
    !other.test(said)
  if (!(goesOn || asksOf) || (job.asked.length > 0 && !goesOn)) return undefined
  const isOfRiders = goesOn && job.decisions.some((it) => it.word === 'weightAboard')
  const weights = message.flatMap(({ reading }, at): Weight[] =>
    reading && isWeight(reading, message, at, said, isOfRiders) ? [weighed(reading, message, at)] : [],
  )
  const isIdle = (it: Tagged): boolean =>
    it.people === true ||
    isStickLength(it) ||
    isOfOneGo(message, it) ||
    (it.bare !== null && ofPeople.test(said.slice(it.end, it.end + 24)))
  const counts = heard.readings.filter(
    (it) => it.bare !== null && !isIdle(it) && !weights.some(({ reading }) => reading === it),
  )
  const aboard = weights.filter((it) => it.is === 'aboard')
  // “Just me, 150”: whoever was told before, all of them, is out.
  const isAnew = aboard.length === 1 && alone.test(said)
  const left = isAnew ? undefined : leftAboard(heard)
  const payloads = weights.filter((it) => it.is === 'payload')
  const pieces = weights.filter((it) => it.is === 'piece')
  const each = counts.filter((it) => isOfEach(it, said))
  const [count, another] = counts.filter((it) => !each.includes(it))
  const isWhole =
    weights.length + counts.length + heard.readings.filter(isIdle).length === heard.readings.length &&
    weights.every((it) => it.is) &&
    [payloads, pieces, each].every((of) => of.length <= 1) &&
    another === undefined
  const earlier = count ? [] : ofEarlier(heard, message, pieces.length > 0 || each.length > 0)
  const isTold =
    aboard.length > 0 ||
    left !== undefined ||
    (payloads.length === 1 && (pieces.length === 1 || earlier.length > 0)) ||
    (pieces.length === 1 && weights.length + counts.length === 1 && asksAtOnce.test(said)) ||
    (each.length === 1 && (count !== undefined || earlier.length > 0)) ||
    (count !== undefined && heard.readings.length === 1 && tripsOfThings.test(said)) ||
    (goesOn && heard.readings.length > 0 && (asksTrips.test(said) || !/\bhow (?:much|many)\b/i.test(said)))
  // What is of vehicles alone is left to the words of the vocabulary, which know it as well.
  if (!isWhole || !isTold || (count && !isCounted(message, count))) return undefined
  const tellIt = (word: string, { tag }: Tagged): Told => ({ word, at: yard, from: from(tag) })
  const told: Told[] = [
    ...payloads.map(({ reading }) => tellIt('payload', reading)),
    ...(left ?? (aboard.length > 0 && !isAnew ? keptAboard(heard) : [])),
    ...aboard.map(({ reading, thing }) => ({ ...tellIt('weightAboard', reading), thing })),
    ...pieces.map(({ reading }) => tellIt('pieceWeight', reading)),
    ...each.map((it) => tellIt('piecesEachTrip', it)),
    ...(count ? [tellIt('piecesToHaul', count)] : earlier),
  ]
  // A limit of so many at a time that was told with the payload holds on; that of a barrow is none of the truck.
  const had = job.decisions.map((it) => it.word)
  if (payloads.length === 1 && had.includes('piecesEachTrip') && had.includes('payload'))
    told.push({ word: 'piecesEachTrip', at: yard, from: from('job.piecesEachTrip') })
  const want = asksAtOnce.test(said) && !asksTrips.test(said.replace(/\b(one|each|per|a) (go|trip|run|load)\b/gi, ''))
  const wanted = want ? 'piecesAtOnce' : goesOn && !asksTrips.test(said) ? (job.wanted[0]?.word ?? 'trips') : 'trips'
  return { ...empty, told, wants: [{ word: wanted, at: yard }], calculation: haul.name }
}

/** A mass; or a bare number beside whom it weighs, where another of the message is one, or of the talk: “payload 950 kg, me 95”, “me and the kid, 210 together”. */
export function isWeight(
  reading: Tagged,
  message: readonly Token[],
  at: number,
  said: string,
  isOfWeights = false,
): boolean {
  if (reading.quantity) return reading.quantity.kind === 'mass' && !reading.per
  if (reading.bare === null || !(isOfWeights || /\b\d+\s?(kg|lbs?|pounds?|kilos?)\b/i.test(said))) return false
  const spot = message[at - 1]?.text === ',' && allOf.test(wordAt(message, at + 1)) ? at - 2 : at - 1
  return rider.test(wordAt(message, spot)) || (spot === at - 2 && message[spot]?.reading?.people === true)
}
/** “210 together”: of all who were named before it. */
const allOf = /^(together|combined|between|altogether)$/

const wordAt = (message: readonly Token[], at: number): string =>
  message[at]?.tag ? '' : (message[at]?.text.toLowerCase() ?? '')

/** What a weight is of: whoever or whatever is named nearest to it in its part of the sentence. */
export function weighed(reading: Tagged, message: readonly Token[], at: number): Weight {
  if (isOfCounted(message, at)) return { reading, is: 'piece', thing: '' }
  // “Me and my wife, 240 together.”
  const all = message[at - 1]?.text === ',' && allOf.test(wordAt(message, at + 1)) ? message[at - 2] : undefined
  if (all?.reading?.people) return { reading, is: 'aboard', thing: all.text }
  const clauseFrom = lastOf(message, at, (it) => it.tag !== undefined || /^([.;?!\n]|and|with|plus)$/.test(it.text)) + 1
  const before = message.slice(clauseFrom, at)
  const behindEnd = message.findIndex((it, i) => i > at && (it.tag !== undefined || /^[.,;?!\n)]$/.test(it.text)))
  const behind = message.slice(at + 1, behindEnd < 0 ? message.length : behindEnd).slice(0, 3)
  // “I have 1800 kg to haul”: whoever has it is not weighed.
  const thingOf = (of: readonly Token[]): string | undefined => {
    const spot = of.findLastIndex((it) => !it.tag && rider.test(it.text.toLowerCase()))
    return of.slice(spot + 1).some((it) => hasIt.test(it.stem)) ? undefined : of[spot]?.text
  }
  const isPayload =
    before.some((it) => ofVehicle.test(it.text.toLowerCase())) || asVehicle.test(before.map((it) => it.text).join(' '))
  const isPiece =
    behind.some((it) => ofPiece.test(it.stem)) ||
    (before.slice(-3).some((it) => /^(bag|of)$/.test(it.stem)) && !before.slice(-3).some((it) => it.stem === 'load'))
  const who = thingOf(before) ?? thingOf(behind.slice(0, 1))
  if (isPayload) return { reading, is: 'payload', thing: '' }
  if (who && !behind.some((it) => /^(bag|sack|each|apiece)$/.test(it.stem)))
    return { reading, is: 'aboard', thing: who }
  return { reading, is: isPiece ? 'piece' : undefined, thing: '' }
}

/** “34 bags, 80 lb”: nothing but what is counted stands between the number and the weight. */
function isOfCounted(message: readonly Token[], at: number): boolean {
  let spot = at - 1
  while (/^[,@]$/.test(message[spot]?.text ?? '') || /^(at|of|weighing|each)$/.test(wordAt(message, spot))) spot--
  const count = message[spot - 1]?.reading
  return hauled.test(message[spot]?.stem ?? '') && count?.bare?.d === 1n && !count.people
}

const lastOf = (message: readonly Token[], before: number, is: (it: Token) => boolean): number =>
  message.slice(0, before).findLastIndex(is)

/** “Two of us”, “three people aboard”. */
const ofPeople = /^\s*(?:of us|people|persons|adults|men|women|lads|aboard|passengers)\b/i

/** “In one go” counts nothing. */
const isOfOneGo = (message: readonly Token[], { bare, tag }: Tagged): boolean =>
  bare?.equals(1) === true &&
  /^(go|trip|run|load|time)$/.test(message[message.findIndex((it) => it.tag === tag) + 1]?.stem ?? '')

/** Whether a number counts what is hauled: “44 bags”, “those 40”, “50 to shift”. */
function isCounted(message: readonly Token[], { tag }: Tagged): boolean {
  const at = message.findIndex((it) => it.tag === tag)
  const next = message[at + 1]
  return (
    next === undefined ||
    needed.test(message[at - 1]?.text ?? '') ||
    things.test(next.stem) ||
    /^([.,;?!]|to|in)$/.test(next.text) ||
    next.reading?.quantity?.kind === 'mass'
  )
}

const needed = /^(need|needs|have|got|get|haul|fetch|move|want|buying)$/i

/** Those who rode along before, where more are told now. */
function keptAboard({ job }: Heard): Told[] {
  const told = job.decisions.find((it) => it.word === 'weightAboard' && it.at === yard)
  return isList(told?.value)
    ? told.value.map((_, i) => ({ word: 'weightAboard', at: yard, from: from(`job.weightAboard.${i}`) }))
    : []
}

const alone = /\b(alone|on my own|by myself|just me|only me|me only|solo)\b/i
const staysBehind =
  /\b(stays?|staying|stayed|remains?) (at )?(home|behind|here)\b|\bwithout (her|him|them|my|the)\b|\b(isn['’]?t|is not|not|doesn['’]?t|does not) (coming|come|riding|ride)\b|\bleave (her|him|them|my|the)\b|\bdrop(ping)? (her|him)\b/i

/** Who is left aboard, where somebody stays at home: nothing where nobody does, or it cannot be told who. */
function leftAboard({ said, job }: Heard): Told[] | undefined {
  const isAlone = alone.test(said)
  if (!isAlone && !staysBehind.test(said)) return undefined
  const told = job.decisions.find((it) => it.word === 'weightAboard' && it.at === yard)
  if (!isList(told?.value) || !told.called || told.called.length !== told.value.length) return undefined
  const { called } = told
  const words = new Set(said.toLowerCase().match(/\p{L}+/gu) ?? [])
  const stays = called.map((it) => !isMe.test(it) && (isAlone ? !isThing(it) : words.has(it.toLowerCase())))
  // “She stays at home”: whoever rides along beside the driver, where it is one.
  const others = called.flatMap((it, i) => (isMe.test(it) || isThing(it) ? [] : [i]))
  if (!isAlone && !stays.includes(true) && others.length === 1 && /\b(she|he|her|him|they)\b/i.test(said))
    stays[others[0] as number] = true
  if (stays.every((it) => it) || (!isAlone && !stays.includes(true))) return undefined
  return called.flatMap((thing, i) =>
    stays[i] ? [] : [{ word: 'weightAboard', at: yard, from: from(`job.weightAboard.${i}`), thing }],
  )
}
const isThing = (name: string): boolean => /^(tools?|toolbox|mixer|gear|saw|dog)$/i.test(name)

const onlyFits = /\b(?:only|just|at most|max(?:imum)?(?: of)?)\s+(?:takes?|fits?|carry|carries|holds?|manages?)?\s*$/i
/** So many at a time. */
const isOfEach = ({ start, end }: Tagged, said: string): boolean =>
  behindEach.test(said.slice(end, end + 60)) || onlyFits.test(said.slice(Math.max(0, start - 30), start))

const hauled = /^(bag|sack|post|picket|paling|board|panel|rail|piece|block|paver|slab|bucket)$/
/** What was counted last, and what a bag of it weighs where that is known: “the ute takes 800 kg, how many trips?”. */
function ofEarlier(heard: Heard, message: readonly Token[], isEnough: boolean): Told[] {
  const { job } = heard
  if (job.decisions.some((it) => it.word === 'piecesToHaul') || job.wanted.length === 0) return []
  const many = lastCount(heard, message, true)
  if (!many || !hauled.test(many.value.unit)) return []
  const isWeighed = many.value.unit === 'bag' && job.decisions.some((it) => it.word === 'bagWeight' && it.at === yard)
  if (!isWeighed && !isEnough) return []
  return [
    { word: 'piecesToHaul', at: yard, from: from(many.tag) },
    ...(isWeighed && !isEnough ? [{ word: 'pieceWeight', at: yard, from: from('told.bagWeight') }] : []),
  ]
}
