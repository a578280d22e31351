// This file is about what a message said that nothing took: it is named to the person, and no verdict passes over it.
import {
  type Calculation,
  calculationNamed,
  inSentence,
  isQuantity,
  problemWith,
  runPlaces,
  type Job,
  type Outcome,
  type Quantity,
  sameValue,
  show,
  toNumber,
  vocabulary,
  type Word,
  type Worked,
} from '../engine/index.ts'
import type { Bindings, Held } from './guard/bindings.ts'
import { isDenied } from './readers/offline/denied.ts'
import { countsList, isRate, isStickLength } from './readers/offline/fits.ts'
import type { Heard, Tagged } from './readers/reader.ts'
import { heldBack } from './held-back.ts'
import type { Request } from './request.ts'

/** Words whose value is so much in a time. */
const paces = new Set(['holesByHour', 'lengthADay', 'piecesADay', 'thingsATime', 'dryingRate'])

/** The quantities of the message that stand for no word and are no turn of phrase. */
export function unusedOf(heard: Heard, request: Request, held: readonly Held[]): Tagged[] {
  const { readings, said, job } = heard
  // “Why 14?”: a figure of the last answer, said back.
  const isExplained = ({ quantity: size, bare }: Tagged): boolean =>
    (request.acts ?? []).some((it) => it.act === 'explain') &&
    job.results.some(({ value }) =>
      !isQuantity(value)
        ? false
        : size
          ? sameValue(value, size)
          : bare !== null && value.kind === 'count' && toNumber(value.amount) === bare.valueOf(),
    )
  // “Just those four”, “9 cm by 9 cm”, “how far out per 100 ft”: it says again what stands beside it, or belongs to the question.
  const isSaidAgain = (it: Tagged): boolean => {
    const before = said.slice(Math.max(0, it.start - 12), it.start)
    const isCounted = /\b(those|these|all|them|the)\s+$/i.test(before) && it.bare?.d === 1n
    const isSecond = /(\bby|x|×)\s*$/i.test(before) && it.quantity !== null
    const isHundred =
      /\b(per|every|in)\s+$/i.test(before) && request.wants.some(({ word }) => word === 'offsetPerHundred')
    const isSame = ({ value }: { readonly value: unknown }): boolean =>
      isQuantity(value as Quantity) &&
      (it.quantity
        ? sameValue(value as Quantity, it.quantity)
        : (value as Quantity).kind === 'count' && toNumber((value as Quantity).amount) === it.bare?.valueOf())
    // “A quarter of a per cent for every one per cent”: what a rate is for.
    const isEachOne =
      /\b(?:(?:for|with) (?:each|every)|per(?: (?:each|every))?)\s+$/i.test(before) &&
      it.quantity?.kind === 'percent' &&
      toNumber(it.quantity.amount) === 0.01
    // “2 an hour”, “6 m a day”: what a pace that was told is for.
    const isPace =
      /^(?:an?|one) (?:hour|hr|day|evening|week)$/i.test(it.said) &&
      readings.some(
        (pace) =>
          pace.end < it.start &&
          /^\s+(?:\p{L}+\s+){0,2}$/u.test(said.slice(pace.end, it.start)) &&
          request.told.some(({ from, word }) => from.tag === pace.tag && paces.has(word)),
      )
    // “Two a nap, one nap a day”: each of them is a day.
    const isOnceADay =
      it.said.toLowerCase() === 'a day' &&
      /\b(?:one|1)\s+\p{L}+\s+$/iu.test(before) &&
      request.told.some(({ word }) => word === 'thingsATime')
    // “All four sides”: it has no more.
    const isAllSides = it.bare?.equals(4) === true && /^\s+sides\b/i.test(said.slice(it.end))
    // “The end of the 4 m string”: named by its size, which was told before.
    const isNamed =
      /\b(?:the|that|my|our|your)\s+$/i.test(before) && /^\s+(?:string|leg|line|side|stake)\b/i.test(said.slice(it.end))
    const isTold = job.decisions.some(({ value }) =>
      (Array.isArray(value) ? (value as readonly unknown[]) : [value]).some((one) => isSame({ value: one })),
    )
    return (
      isEachOne ||
      isPace ||
      isOnceADay ||
      (isAllSides && held.some((of) => of.word === 'coats')) ||
      isHundred ||
      (isNamed && isTold) ||
      ((isCounted || isSecond) && [...held, ...(isCounted ? job.decisions : [])].some(isSame))
    )
  }
  // “They were out of 16s, got 8s”: as it was told before, and is told anew beside it.
  const isNoMore = (it: Tagged): boolean =>
    isStickLength(it) &&
    held.some(({ word }) =>
      job.decisions.some(
        (old) => old.word === word && isQuantity(old.value) && sameValue(old.value, it.quantity as Quantity),
      ),
    )
  const used = (it: Tagged): boolean =>
    isSaidAgain(it) ||
    isNoMore(it) ||
    (request.acts ?? []).some(({ name }) => name?.includes(it.said)) ||
    isExplained(it) ||
    request.told.some(
      (told) => told.from.tag === it.tag || told.from.quote?.includes(it.said) || told.thing?.includes(it.said),
    ) ||
    // "4x4s, actual 3 1/2 in": the name says again what the size said.
    (it.section !== undefined &&
      (held.some((other) => isQuantity(other.value) && sameValue(other.value, it.section?.width ?? null)) ||
        isOnlyName(it, request)))
  // "between two walls", "the one by the drive": a small number in words is seldom a measure that somebody missed.
  // A date or an hour tells when, and few questions hang on it, but for those about dates; 811 is who to call.
  const isAboutDates = held.some((it) => isQuantity(it.value) && it.value.kind === 'date')
  // “A gallon does 300 square feet” and “80 square feet an hour” tell one thing. Elsewhere “a foot” may be a size that somebody missed.
  const isCoverage = held.some(
    (it) => it.word === 'areaAnHour' || (isQuantity(it.value) && it.value.kind === 'coverage'),
  )
  // “My wife and I want a fence”: who asks counts nothing, where no hours are told.
  const isOfHours = held.some((it) => isQuantity(it.value) && it.value.kind === 'duration')
  const isTurnOfPhrase = (it: Tagged): boolean =>
    isDenied(it, heard) ||
    (it.quantity?.kind === 'date' && !isAboutDates) ||
    it.clock === true ||
    (it.people === true && !isOfHours) ||
    // “Am I over or under 90?”: the square corner, of one that was measured.
    (it.bare?.equals(90) === true &&
      held.some(({ word }) => word === 'measuredDiagonal') &&
      /\b(?:under|over|from|off|of|than)\s+$/i.test(said.slice(0, it.start))) ||
    ((isCoverage || request.calculation === 'rent-by-hour') && isRate(it)) ||
    // “Hung in 1987”: a year.
    (it.bare !== null &&
      /^(?:1[89]|20)\d\d$/.test(it.said) &&
      /\b(?:in|since|from|circa|around|about|back in|built|of)\s+$/i.test(said.slice(0, it.start))) ||
    (it.bare?.d === 1n && /^(one|two|a couple|a pair|811)\b/i.test(it.said))
  const words = held.map((it) => it.word)
  // “Bay 3”, “run 2”: a number that names something.
  const isName = (it: Tagged): boolean =>
    it.bare !== null &&
    /\b(bay|run|side|leg|stretch|gate|post|section|panel|turn|step)\s+(no\.?\s*|number\s+|#)?$/i.test(
      said.slice(0, it.start),
    )
  return readings.filter((it) => !used(it) && !isName(it) && !isTurnOfPhrase(it) && !countsList(it, words))
}

/** “Six foot 4x4s”, where no side of a stick is asked: what the stick is called decides nothing. */
function isOnlyName({ section }: Tagged, { calculation }: Request): boolean {
  const needs = Object.values((calculation && calculationNamed(calculation)?.needs) || {})
  return section !== undefined && needs.length > 0 && needs.every((it) => !it.ofStick && !it.otherSide)
}

/** A verdict that might have been another with what was not understood says neither yes nor that nothing fails. */
export const withoutYes = (worked: readonly Worked[], unused: readonly Tagged[]): Worked[] =>
  worked.map((it) => {
    const { outcome } = it
    // Of air and dew the wind decides nothing.
    const passed = it.calculation.needs.airNow ? unused.filter((of) => of.quantity?.kind !== 'speed') : unused
    if (passed.length === 0 || !outcome.ok || ![...outcome.values.values()].includes(true)) return it
    const values = new Map([...outcome.values].map(([word, value]) => [word, value === true ? null : value] as const))
    return { ...it, outcome: { ...outcome, values } }
  })

/**
 * A sum of money or of weight that passed over a number of things, “26 boards at $1.35 a foot”, or over a rate of tax, is of something else;
 * so is a time that passed over a pace, “160 pickets at 4 minutes each”.
 * So is one that took the usual one of what was counted, and one that goes on in a talk without what was said this time. It waits, and the person is asked.
 */
export function withoutIdle(
  worked: readonly Worked[],
  { held, torn }: Pick<Bindings, 'held' | 'torn'>,
  unused: readonly Tagged[],
  { job: before, said }: Heard,
): Worked[] {
  const used = new Set(worked.flatMap((it) => [...it.outcome.given.keys()]))
  // “Yes” to “what is “1,050 mm” of?” says nothing of it.
  const open = held.length === 0 ? before.asked.find((it) => it.again) : undefined
  if (open)
    return worked.map((it) =>
      heldBack(it, {
        code: 'unreadable',
        word: open.word,
        message: 'I asked what a number is of, and give no figure before I know.',
        ask: open.again as string,
        isIdle: true,
      }),
    )
  const left = leftOpen(before, said)
  const eitherOf = before.asked.find(
    ({ either }) => either && !held.some(({ word }) => either.words.includes(word)),
  )?.either
  const isMany = (q: Quantity): boolean => q.kind === 'count' && toNumber(q.amount) > 1
  const idle = held.filter(({ word, value, tag }) => tag !== null && !used.has(word) && isQuantity(value))
  const counts = [
    ...idle.filter(({ value }) => isMany(value as Quantity)).map((it) => show(it.value as Quantity)),
    ...unused
      .filter((it) => (it.bare?.d === 1n && it.bare.compare(1) > 0) || isPricedByMeasure(it, said))
      .map((it) => `“${it.said}”`),
  ]
  const rates = idle
    .filter(({ value }) => (value as Quantity).kind === 'percent')
    .map((it) => show(it.value as Quantity))
  // “Nights are 11 in December”, said of an earlier sum: whoever brings a size to it means it to change something.
  const isShort = said.split(/\s+/).length <= noStory && runPlaces(before).length === 0
  const goesOn = before.wanted.length > 0 && runPlaces(before).length === 0
  const paces = idle
    .filter(({ value }) => (value as Quantity).kind === 'duration')
    .map((it) => show(it.value as Quantity))
  return worked.map((it) => {
    const { outcome, calculation, wanted } = it
    if (!outcome.ok) return it
    // “Is that the post width, or the stone?”, unanswered: neither of them is taken as usual instead.
    const untold = eitherOf?.words.find((word) => outcome.given.get(word)?.role === 'assumed')
    if (eitherOf && untold)
      return heldBack(it, {
        code: 'unreadable',
        word: untold,
        message: `You said “${eitherOf.said}” before, and I still cannot tell what it is, so I give no figure.`,
        ask: `Is “${eitherOf.said}” ${eitherOf.words.map((word) => `${inSentence((calculation.needs[word] ?? vocabulary.get(word)) as Word)}`).join(', or ')}? Say which it is, with the size.`,
        isIdle: true,
      })
    if (left && calculation.gives[left.word])
      return heldBack(it, {
        code: 'unreadable',
        word: left.word,
        message: `You said “${left.number}” before, and I still have no place for it in this sum, so I give no figure.`,
        ask: `${left.again.replace(/ Say it beside .*$/, '')} Say the sum once more with it, each number beside what it is of.`,
        isIdle: true,
      })
    const kinds = new Set(wanted.map((name) => calculation.gives[name]?.kind))
    const isOfMoney = kinds.has('money')
    const isAll = isOfMoney || kinds.has('mass') || takesUsualCount(calculation, outcome)
    const isTime = kinds.has('duration')
    const deciding = unused
      .filter(
        (one) =>
          goesOn ||
          mayDecide(one, calculation, outcome) ||
          (isShort && isOfItsKind(one, calculation) && !isMeasuredAgain(one, held)),
      )
      .map((one) => `“${one.said}”`)
    const asked = unused.find((one) =>
      torn.some(({ tag, words }) => tag === one.tag && words.some((name) => outcome.given.has(name))),
    )
    const [what] = [
      ...(asked ? [`“${asked.said}”`] : []),
      ...deciding,
      ...(goesOn ? idle.filter((one) => mayChange(one, calculation)).map((one) => show(one.value as Quantity)) : []),
      ...(isAll ? counts : []),
      ...(isOfMoney ? rates : []),
      ...(isTime ? paces : []),
    ]
    if (what === undefined) return it
    const problem = {
      code: 'unreadable',
      word: wanted[0] as string,
      message: asked
        ? `You said ${what}, and it may be one thing or another, so I give no figure.`
        : `You said ${what}, and I found no place for it in this sum, so I give no figure.`,
      // Which of the two it is, is asked already.
      ...(asked
        ? {}
        : {
            ask: `What is ${what} of? Say it beside what it counts: so many of what, each of what size or at what price.`,
            isIdle: true as const,
          }),
    } as const
    return heldBack(it, problem)
  })
}

/** A number that was asked about in the turn before, and that this message neither says again nor drops: the sum it was said for waits on. */
function leftOpen({ asked }: Job, said: string): { word: string; number: string; again: string } | undefined {
  if (
    /\b(?:never ?mind|forget|ignore|leave (?:it|that|them) out|without|doesn['’]?t matter|instead|start again)\b/i.test(
      said,
    )
  )
    return undefined
  for (const { again, word } of asked) {
    const number = /^What is “(.+?)” of\?/.exec(again ?? '')?.[1]
    if (again && number && !/^(?:an?|one)\b/i.test(number) && !isSaidIn(number, said)) return { word, number, again }
  }
  return undefined
}
const isSaidIn = (number: string, said: string): boolean => {
  const [, digits = number] = /([\d.,/]+)/.exec(number) ?? []
  // “5” is not in “150”.
  return said.split(/[^\d.,/]+/).some((it) => it.replace(/[.,/]+$/, '') === digits.replace(/[.,/]+$/, ''))
}

/** “60 metres of rail at £2.10 a metre”: a line of a bill, as “26 boards” is. */
const isPricedByMeasure = ({ quantity, end }: Tagged, said: string): boolean =>
  quantity !== null &&
  quantity.kind !== 'money' &&
  /^\s+of\b[^.;,]{0,40}(?:\bat|@)\s*[$£€]/i.test(said.slice(end, end + 60))

/** Whether a size that nothing took may be one that the sum took as usual, or did without. */
const mayDecide = ({ quantity }: Tagged, { needs }: Calculation, { given }: Outcome): boolean =>
  quantity !== null &&
  Object.values(needs).some(
    (word) =>
      word.kind === quantity.kind &&
      (given.get(word.name)?.role ?? 'assumed') === 'assumed' &&
      problemWith(word, quantity, false, 'imperial') === undefined,
  )

// In a message of more words there is often a number that has nothing to do with the sum.
const noStory = 30

/** Whether a size that nothing took is of a kind that the sum is made of: “first coat 250 square feet to the gallon” beside an area to paint. */
const isOfItsKind = ({ quantity, section, firmness }: Tagged, { needs, gives }: Calculation): boolean =>
  quantity !== null &&
  section === undefined &&
  firmness !== 'range' &&
  gives.bays === undefined &&
  Object.values(needs).some((word) => word.kind === quantity.kind)

/** “93 in, 93 1/8 in, 93 in”: nearly what was taken, and so the same thing measured again. */
const isMeasuredAgain = ({ quantity }: Tagged, held: readonly Held[]): boolean =>
  held.some(
    ({ value }) =>
      quantity !== null &&
      isQuantity(value) &&
      value.kind === quantity.kind &&
      Math.abs(toNumber(value.amount) - toNumber(quantity.amount)) < toNumber(value.amount) / 20,
  )

/** Whether a size may have been meant for a word of the sum: “the run is 96 ft” is none of a force on one post. */
const mayChange = ({ value }: Held, { needs }: Calculation): boolean =>
  Object.values(needs).some(
    (word) =>
      word.kind === (value as Quantity).kind && problemWith(word, value as Quantity, false, 'imperial') === undefined,
  )

/** Whether it worked on one of something, since nobody said how many. */
const takesUsualCount = (calculation: Calculation, { given }: Outcome): boolean =>
  [...given].some(
    ([name, it]) =>
      it.role === 'assumed' &&
      calculation.needs[name]?.kind === 'count' &&
      calculation.needs[name]?.usual?.value === '1',
  )

/**
 * What a sum may go without, and was said, and could not be read: a holiday by its name, a date that may be either of two.
 * A sum that left it out would be another than the one asked for. It waits, and the person is asked.
 */
export function withoutUnread(
  worked: readonly Worked[],
  { refused, unsure, held }: Bindings,
  request: Request,
  before: Job,
): Worked[] {
  const isHeld = (name: string): boolean => held.some((it) => it.word === name)
  // Dates that were asked for and are still owed: the answer to another question is none to that.
  const owed = before.asked.filter(
    ({ word: name }) => vocabulary.get(name)?.kind === 'date' && !isHeld(name) && !request.confirms.includes(name),
  )
  const unreadDates = refused.filter((it) => vocabulary.get(it.word)?.kind === 'date')
  const unread = [...unreadDates, ...unsure, ...owed].map((it) => it.word)
  return worked.map((it) => {
    const { calculation, outcome } = it
    const known = outcome.ok ? [] : outcome.problems
    const problems = (calculation.may ?? [])
      .flatMap((name) => vocabulary.get(name) ?? [])
      .filter((may) => !may.usual && unread.includes(may.name) && (may.list || !isHeld(may.name)))
      .filter((may) => !known.some((other) => other.word === may.name))
      .map((may) => ({ code: 'unreadable', word: may.name, ...askedAnew(may, request) }) as const)
    if (problems.length === 0) return it
    return { ...it, outcome: { ok: false, given: outcome.given, problems: [...known, ...problems], cited: [] } }
  })
}

/** Says which words could not be read, and asks for what they stand for. */
function askedAnew(word: Word, { told }: Request): { message: string; ask: string } {
  const quotes = told.filter((it) => it.word === word.name && it.from.quote).map((it) => `“${it.from.quote}”`)
  if (quotes.length === 0)
    return { message: `I have not understood ${inSentence(word)}, and count nothing without it.`, ask: word.ask }
  const [which, isOne] = [quotes.join(' and '), quotes.length === 1]
  return {
    message: `You said ${which}, and I know no date for ${isOne ? 'it' : 'them'}: I count nothing without it.`,
    ask: `Which date is ${which}? Give ${isOne ? 'it' : 'each'} with its year.`,
  }
}
