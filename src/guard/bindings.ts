// This file is about bindings: the request of a reader, held against the message, the vocabulary and the job.
// Whatever cannot be traced to what the person said, to an earlier result or to a declared usual value counts as not told.
import {
  amountIn,
  type Decision,
  fitted,
  fittedReading,
  inSentence,
  ofStick,
  isPlace,
  isList,
  isQuantity,
  type Job,
  parseValue,
  problemWith,
  type Quantity,
  quantity,
  readQuantities,
  show,
  systemOf,
  type Value,
  valueAfter,
  valueBefore,
  vocabulary,
  type Wanted,
  type Word,
  yard,
  yearTaken,
} from '../../engine/index.ts'
import { isForeign, isPlainEverywhere } from '../readers/language.ts'
import type { Heard, Tagged } from '../readers/reader.ts'
import type { Request, Told } from '../request.ts'
import { asSaid } from '../readers/as-said.ts'
import { spansOf } from './spans.ts'
import { ofOther } from './of-other.ts'
import { isEachSide, isTwice } from './told-twice.ts'
import { againstOwn, eitherOf, isTornBy, type Torn, tornBetween, wantsSaid } from './swaps.ts'

/** One told value that held: what it is, and where in the message it came from. */
export interface Held extends Omit<Decision, 'called'> {
  readonly tag: string | null
  readonly firmness: Tagged['firmness']
  readonly accepted: 'said' | 'usual'
  /** What was counted, where it is one of a list: “posts”. */
  readonly thing?: string
}

export interface Refused {
  readonly word: string
  readonly why: string
  /** It lies in what the person wrote, and no reader could have bound it better. */
  readonly isOfTheWords?: true
}

/** A quantity that can be read in more than one way, each of them likely: the person is asked. */
export interface Unsure {
  readonly word: string
  readonly at: string
  readonly said: string
  readonly readings: readonly Quantity[]
}

export interface Bindings {
  readonly held: readonly Held[]
  readonly refused: readonly Refused[]
  readonly torn: readonly Torn[]
  readonly unsure: readonly Unsure[]
  readonly wants: readonly Wanted[]
}

/** Checks a request. A word that holds a list is told once for each of its values, in order. `own` is the offline reader's request for the same message, to catch the right tag under the wrong word. */
export function checkBindings(request: Request, heard: Heard, turn: number, own?: Request): Bindings {
  const { said, readings, job } = heard
  const torn = [...eitherOf(request, readings), ...(own ? tornBetween(request, own, heard) : [])]
  const held: Held[] = []
  const refused: Refused[] = []
  const unsure: Unsure[] = []
  const ofBare = isMetricBare(request, heard) ? { ...job, system: 'metric' as const } : job
  for (const told of request.told) {
    const word = vocabulary.get(told.word)
    if (!word) {
      refused.push({ word: told.word, why: 'it is no word of the vocabulary' })
      continue
    }
    if (!isPlace(told.at)) {
      refused.push({ word: word.name, why: 'the place that was given for it is none' })
      continue
    }
    if (torn.some((it) => isTornBy(it, told))) continue
    const against = own && againstOwn(told, word, own, heard)
    if (against) {
      refused.push({ word: word.name, why: against })
      continue
    }
    const heldHere = (name: string): Held | undefined => held.find((it) => it.word === name && it.at === told.at)
    // The other side of a stick may be told for itself as well: it is the same stick.
    const stick = readings.find((it) => it.tag === told.from.tag && it.section !== undefined)
    if (stick && heldHere(word.name)?.tag === stick.tag) continue
    const ends = rangeOf(told, word, readings, job) ?? sidesOf(told, word, readings)
    if (ends) {
      held.push(
        ...ends
          .filter((it) => vocabulary.get(it.word)?.list || !heldHere(it.word))
          .map((it) => ({ ...it, at: told.at, turn })),
      )
      continue
    }
    const result = changing(told, word, said, readings, job) ?? hold(told, word, said, readings, ofBare, held)
    if ('readings' in result) {
      unsure.push({ word: word.name, at: told.at, ...result })
      continue
    }
    if ('why' in result) {
      refused.push({ ...result, word: word.name })
      continue
    }
    if (!word.list && held.some((it) => it.word === word.name && it.at === told.at)) {
      refused.push({ word: word.name, why: 'it is told twice' })
      continue
    }
    // “The front and back are 60 ft” tells one word of two places.
    const isOfTwo =
      word.list === true && held.filter((it) => it.tag === result.tag).length === 1 && isTwice(result.tag, heard)
    if (
      result.tag &&
      held.some(
        (it) =>
          it.tag === result.tag &&
          !isEachSide(it.word, word.name, result.tag, heard) &&
          (it.word !== word.name || (it.at === told.at && !isOfTwo)),
      )
    ) {
      refused.push({ word: word.name, why: 'what was given for it is already taken for another word' })
      continue
    }
    const isNamed = (thing: string): boolean =>
      said.includes(thing) || job.decisions.some((it) => it.word === word.name && it.called?.includes(thing))
    const thing = typeof told.thing === 'string' && isNamed(told.thing) ? { thing: told.thing } : {}
    held.push({ ...thing, ...result, word: word.name, at: told.at, turn })
  }
  const known = request.wants.filter((it) => vocabulary.has(it.word) && isPlace(it.at))
  const wants = own ? wantsSaid(known, own, heard) : known
  return { held: held.map((it) => ({ ...it, ...saidAs(it, heard) })), refused, torn, unsure, wants }
}

/** How a value was said, where it is a quantity of the message. */
function saidAs({ tag }: Held, { said, readings }: Heard): Pick<Held, 'as'> {
  const reading = readings.find((it) => it.tag === tag)
  return reading ? { as: asSaid(said, reading, readings) } : {}
}

/** Whether a quantity of a message in another language may be taken: things counted in plain digits, and numbers with a sign that is the same everywhere. */
const isSafeAbroad = (reading: Tagged, word: Word): boolean =>
  reading.bare === null ? isPlainEverywhere(reading.said) : word.kind === 'count' && /^\d+$/.test(reading.said)

const isNone =
  /^\s*(?:no|none|without|zero|nil|any|left? out|leave out|leaving out|skip|skipping|skipped|forget|drop|ditch)\b/i
const isNoNone = /^\s*no\s+(?:\w+er\b|more\b|less\b|matter\b|idea\b|need\b|problem\b|sooner\b|,|\.)/i

/** What a bag weighs is what one piece weighs, where the bags are hauled; a spacing that was told is as wide as a whole bay. */
const saysToo: Readonly<Record<string, string>> = { bagWeight: 'pieceWeight', widestBay: 'fixedBay' }

type Origin = Pick<Held, 'value' | 'tag' | 'firmness' | 'accepted' | 'thing' | 'of'>

type Several = Pick<Unsure, 'said' | 'readings'>

type Unheld = Omit<Refused, 'word'>

function hold(
  told: Told,
  word: Word,
  said: string,
  readings: readonly Tagged[],
  job: Job,
  before: readonly Held[],
): Origin | Several | Unheld {
  const { tag, quote, option, usual } = told.from
  const system = systemOf(job)
  if (option !== null) {
    if (word.kind !== 'choice' || !word.options?.[option])
      return { why: 'what was given for it is not one of its options' }
    if (!quote || spansOf(said, quote, readings).length === 0)
      return { why: 'the words that say so are not in the message' }
    return { value: option, tag: null, firmness: 'exactly', accepted: 'said' }
  }
  if (tag !== null) {
    const reading = readings.find((it) => it.tag === tag)
    if (reading && isForeign(said) && !isSafeAbroad(reading, word))
      return { why: `I could only be sure of “${reading.said}” in English, with its unit`, isOfTheWords: true }
    if (reading)
      return surely(
        likelierUnit(inTheirUnit(inches(reading, word, readings, job), word, readings, job, before), word, job),
        word,
        job,
      )
    const ofSum = ofOther(tag, word, job)
    if (ofSum) return ofSum
    // `job.gateOpening` is what was decided of the yard: a gate that was told before anybody said where it is.
    const earlier =
      job.results.find((it) => it.ref === tag) ??
      job.decisions.find(
        (it) => `job.${it.word}` === tag && (it.word === word.name || saysToo[it.word] === word.name) && it.at === yard,
      ) ??
      listedIn(job, tag, word)
    if (!earlier) return { why: 'the message holds no such quantity' }
    if (!isQuantity(earlier.value) || earlier.value.kind !== word.kind)
      return { why: `what was worked before is no ${word.label}` }
    const money = earlier.value.unit === unnamed ? moneyOf(readings, job) : undefined
    return {
      value: { ...earlier.value, unit: word.noun ?? money ?? earlier.value.unit },
      tag: null,
      firmness: 'exactly',
      accepted: 'said',
      ...('thing' in earlier ? { thing: earlier.thing } : {}),
    }
  }
  if (quote !== null) {
    const [span] = spansOf(said, quote, readings)
    if (!span) return { why: 'the words that were given for it are not in the message' }
    // "no gravel", "none": nought, where the word may be nought.
    const words = said.slice(span.start, span.end)
    if (isNone.test(words)) {
      // “No wider than 2 in” is a limit, and “any gravel?” a question.
      if (
        isNoNone.test(words) ||
        (/^any\b/i.test(words) && !/\b(?:not|never|without|n['’]t)\b/i.test(said.slice(0, span.start)))
      )
        return { why: 'the message does not say that there is none' }
      const least = word.possible?.least
      const nought = least === undefined ? undefined : noughtOf(word, least, system)
      return nought === undefined
        ? { why: `${word.label} cannot be none` }
        : { value: nought, tag: null, firmness: 'exactly', accepted: 'said' }
    }
    if (isForeign(said))
      return { why: `I could only be sure of “${words}” in English, with its unit`, isOfTheWords: true }
    // “And a brace”, of a list of things that are counted: one.
    if (word.list && word.kind === 'count' && /^\s*an?\s+\p{L}[\p{L} ]*$/iu.test(words))
      return { value: quantity(1, word.noun ?? 'ratio'), tag: null, firmness: 'exactly', accepted: 'said' }
    const found = readQuantities(words, { system })
    const [only] = found
    if (!only || found.length !== 1)
      return { why: 'the words that were given for it do not hold one quantity', isOfTheWords: true }
    return surely({ ...only, tag: '' }, word, job)
  }
  if (usual) {
    const text = word.usual && (system === 'metric' ? (word.usual.metric ?? word.usual.value) : word.usual.value)
    const value = text === undefined ? undefined : parseValue(word, text, system)
    return value === undefined
      ? { why: `${word.label} has no usual value` }
      : { value, tag: null, firmness: 'exactly', accepted: 'usual' }
  }
  return { why: 'nothing says where it comes from' }
}

/** An amount by which a word changes, “2 in wider”: what the word comes to. Nothing where it is a value of its own. */
function changing(
  told: Told,
  word: Word,
  said: string,
  readings: readonly Tagged[],
  job: Job,
): Origin | Unheld | undefined {
  const reading = told.from.tag === null ? undefined : readings.find((it) => it.tag === told.from.tag)
  // In another language “plus 4” may say something else: there it counts as any other quantity.
  if (!reading?.change || isForeign(said)) return undefined
  const thing = told.thing ?? undefined
  const before = valueBefore(job, word, told.at, thing)
  const value = valueAfter(job, word, told.at, inches(reading, word, readings, job), thing)
  if (value) return { value, tag: reading.tag, firmness: 'exactly', accepted: 'said' }
  const asSaid = `“${reading.said}” changes ${inSentence(word)}`
  if (before && reading.change.way === 'less')
    return { why: `${asSaid} by more than the ${show(before)} that it was`, isOfTheWords: true }
  // What was never told is told by it: “another 3 posts”.
  const isPlain = reading.change.way !== 'times' && !before
  return isPlain ? undefined : { why: `${asSaid}, and I do not know what it was`, isOfTheWords: true }
}

/** A range said of a word whose upper end is a word of its own: both ends of it. */
function rangeOf(
  told: Told,
  word: Word,
  readings: readonly Tagged[],
  job: Job,
): Omit<Held, 'at' | 'turn'>[] | undefined {
  const reading = told.from.tag === null ? undefined : readings.find((it) => it.tag === told.from.tag)
  const upper = word.upTo === undefined ? undefined : vocabulary.get(word.upTo)
  if (reading?.firmness !== 'range' || !reading.high || !upper) return undefined
  const system = systemOf(job)
  const [low, high] = [fitted(word, reading.quantity, null, system), fitted(upper, reading.high, null, system)]
  if (!low || !high) return undefined
  const said = { tag: reading.tag, firmness: 'exactly', accepted: 'said' } as const
  return [
    { ...said, word: word.name, value: low },
    { ...said, word: upper.name, value: high },
  ]
}

/** A stick called by its size, “2x4”, said of a word whose other side is a word of its own: both sides of it. */
function sidesOf(told: Told, word: Word, readings: readonly Tagged[]): Omit<Held, 'at' | 'turn'>[] | undefined {
  const reading = told.from.tag === null ? undefined : readings.find((it) => it.tag === told.from.tag)
  const other = word.otherSide === undefined ? undefined : vocabulary.get(word.otherSide)
  if (!reading?.section || !other) return undefined
  const [one, two] = [ofStick(word, reading.section), ofStick(other, reading.section)]
  if (!one || !two) return undefined
  const said = { tag: reading.tag, firmness: reading.firmness, accepted: 'said' } as const
  return [
    { ...said, word: word.name, value: one },
    { ...said, word: other.name, value: two },
  ]
}

/** `job.itemCounts.2`: the third of the values that were told of a list, and what it was called. */
function listedIn(job: Job, tag: string, word: Word): { value: Quantity; thing: string } | undefined {
  const place = tag.startsWith(`job.${word.name}.`) ? Number(tag.slice(`job.${word.name}.`.length)) : -1
  const told = job.decisions.find((it) => it.word === word.name && it.at === yard)
  const value = isList(told?.value) ? told.value[place] : undefined
  return value && { value, thing: told?.called?.[place] ?? '' }
}

function noughtOf(word: Word, least: string, system: 'imperial' | 'metric'): Value | undefined {
  const value = parseValue(word, least, system)
  return isQuantity(value) && amountIn(value, value.unit).valueOf() === 0 ? value : undefined
}

const lengthUnits = { imperial: ['in', 'ft'], metric: ['mm', 'cm', 'm'] } as const

/** A bare number that is no likely size in the unit of its word, and a likely one in just one other: “pales 70 wide”, “bays of 1.93”. */
function likelierUnit(reading: Tagged, word: Word, job: Job): Tagged {
  const { bare } = reading
  if (bare === null || word.kind !== 'length') return reading
  const isLikely = (it: Quantity | undefined): boolean =>
    it !== undefined && problemWith(word, it, false, systemOf(job)) === undefined
  if (isLikely(fittedReading(word, reading, systemOf(job)))) return reading
  const systems = job.system === null ? (['imperial', 'metric'] as const) : [job.system]
  const likely = systems
    .map((system) => lengthUnits[system].map((unit) => quantity(bare, unit)).filter(isLikely))
    .find((it) => it.length > 0)
  const [only] = likely ?? []
  return only ? { ...reading, bare: null, quantity: only, rivals: likely?.slice(1) ?? [] } : reading
}

/** Of bare lengths that stand together all are metric where one of them can be nothing else: holes “.3 wide, .7 deep”. Sizes told in inches and feet are left as they are. */
function isMetricBare({ told }: Request, { readings, job }: Heard): boolean {
  if (job.system !== null) return false
  const bare = told.flatMap((it) => {
    const word = vocabulary.get(it.word)
    const reading = readings.find(({ tag }) => tag === it.from.tag)
    return word?.kind === 'length' && reading?.bare ? [{ word, bare: reading.bare }] : []
  })
  const isIn = (system: 'imperial' | 'metric'): boolean =>
    bare.every(({ word, bare }) =>
      lengthUnits[system].some((unit) => problemWith(word, quantity(bare, unit), false, system) === undefined),
    )
  return bare.length > 1 && !isIn('imperial') && isIn('metric')
}

/** A bare price is in the money of the others; “3 quarts each, up to 4” are quarts, “94 lb bags or 47” are pounds, and “17 °C, the boards 15” degrees Celsius. */
function inTheirUnit(
  reading: Tagged,
  word: Word,
  readings: readonly Tagged[],
  job: Job,
  held: readonly Held[],
): Tagged {
  const { bare } = reading
  if (word.kind === 'money') return inTheirMoney(reading, word, readings, job)
  if (bare === null || !/^(volume|mass|temperature)$/.test(word.kind)) return reading
  const isAlike = (it: Quantity): boolean => it.kind === word.kind
  const said = (all: readonly Tagged[]): Quantity[] => all.flatMap((it) => it.quantity ?? []).filter(isAlike)
  // “17 degrees” was held as what it can be.
  const isHeld = held
    .map(({ value }) => value)
    .filter(isQuantity)
    .findLast(isAlike)
  const before = said(readings.filter((it) => it.start < reading.start)).at(-1)
  const other = (word.kind === 'temperature' ? isHeld : undefined) ?? before ?? said(readings)[0]
  return other ? { ...reading, bare: null, quantity: quantity(bare, other.unit) } : reading
}

/** A price without its currency is in the money of the others, of this message or told before; where none was ever named, a list of prices stays without. */
function inTheirMoney(reading: Tagged, word: Word, readings: readonly Tagged[], job: Job): Tagged {
  const { bare, quantity: said } = reading
  if (said && said.unit !== unnamed) return reading
  const unit = moneyOf(readings, job)
  if (bare !== null)
    return unit || (word.list && !besideBudget.has(word.name))
      ? { ...reading, bare: null, quantity: quantity(bare, unit ?? unnamed) }
      : reading
  return said && unit ? { ...reading, quantity: { ...said, unit } } : reading
}
const unnamed = 'money'
/** What is spent stands beside one amount to spend, and is in the same money as that. */
const besideBudget = new Set(['spentAmounts', 'spentPrices'])

/** The currency that was named, in the message or before it; the unnamed one where there is only that. */
function moneyOf(readings: readonly Tagged[], job: Job): string | undefined {
  const said = readings.flatMap((it) => it.quantity ?? [])
  const told = job.decisions.flatMap(({ value }) => (isList(value) ? value : isQuantity(value) ? [value] : []))
  const money = [...said, ...told].filter((it) => it.kind === 'money')
  return (money.find((it) => it.unit !== unnamed) ?? money[0])?.unit
}

/**
 * A bare number for what is told in feet: “1 1/2” is inches, as so little is with such a fraction;
 * another may be inches where others of the message are, and the word may be as small as a foot: “diagonals 55 and 56, gate 36 in wide”.
 */
function inches(reading: Tagged, word: Word, readings: readonly Tagged[], job: Job): Tagged {
  const { bare, said } = reading
  if (bare === null || systemOf(job) !== 'imperial' || word.units?.imperial !== 'ft') return reading
  if (/\d\s*\/\s*\d|[½¼¾⅛⅜⅝⅞]/.test(said) && bare.compare(3) < 0)
    return { ...reading, bare: null, quantity: quantity(bare, 'in') }
  if (word.plausible?.from !== '1 ft' || !readings.some((it) => it.quantity?.unit === 'in')) return reading
  return { ...reading, bare: null, quantity: quantity(bare, 'ft'), rivals: [quantity(bare, 'in')] }
}

/** Of several ways to read it, the only one that the word can well have; when there are more, all of them. */
function surely(reading: Tagged, word: Word, job: Job): Origin | Several | Unheld {
  const first = ofReading(reading, word, job)
  if ('why' in first || reading.rivals.length === 0 || !reading.quantity) return first
  const system = systemOf(job)
  const likely = [reading.quantity, ...reading.rivals]
    .map((it) => fitted(word, it, null, system))
    .filter((it) => it !== undefined)
    .filter((it) => problemWith(word, it, false, system) === undefined)
  const [only] = likely
  if (only && likely.length === 1) return { ...first, value: only }
  // “No, it's 19200”, in a talk that has told its lengths in millimetres.
  const told = job.decisions.flatMap(({ value }) => (isList(value) ? value : isQuantity(value) ? [value] : []))
  const [asBefore, other] = likely.filter((it) => told.some(({ kind, unit }) => kind === it.kind && unit === it.unit))
  if (asBefore && !other) return { ...first, value: asBefore }
  return likely.length > 1 ? { said: reading.said, readings: likely } : first
}

function ofReading(reading: Tagged, word: Word, job: Job): Origin | Unheld {
  const system = systemOf(job)
  const tag = reading.tag || null
  if (reading.firmness === 'range')
    return { why: `“${reading.said}” is a range; one figure is needed`, isOfTheWords: true }
  // A weekday that does not fit its date: either may be the slip, so neither is taken.
  if (reading.quantity?.kind === 'date' && reading.note && !reading.note.startsWith(yearTaken))
    return { why: `you said “${reading.said}”, and ${reading.note}`, isOfTheWords: true }
  const value = reading.section ? ofStick(word, reading.section) : fittedReading(word, reading, system)
  if (!value) return { why: `“${reading.said}” is no ${word.label}` }
  const counted = word.kind === 'count' ? quantity(value.amount, word.noun ?? 'ratio') : value
  return { value: counted, tag, firmness: reading.firmness, accepted: 'said' }
}
