// This file is about the job: what has been decided at which place, move by move, what was asked last, and how it is written down.
import Fraction from 'fraction.js'
import type { Country } from '../by-country.ts'
import { vocabulary } from '../catalogue.ts'
import { type Amount, compare, exact, isExact } from '../quantities/amount.ts'
import { isList, isQuantity, type Quantity, type System, type Value } from '../quantities/quantity.ts'
import { kindsIn, looksFrom } from '../places.ts'

/** What was told of one word at one place, and in which turn. */
export interface Decision {
  readonly word: string
  readonly at: string
  readonly value: Value
  /** The turn it was said in. */
  readonly turn: number
  /** Of a list of counts: what each thing was called, where it was. */
  readonly called?: readonly string[]
  /** How it was said: a later “8 footers” changes what was told as “16 footers”. */
  readonly as?: AsSaid
  /** “They are 3.29 each”: it is what another sum gives, worked anew whenever that changes. The value is what it was when it was said; null where it was not known yet. */
  readonly of?: GivenBy
}

/** A word of the talk that a calculation gives. */
export interface GivenBy {
  readonly word: string
  readonly calculation: string
}

/** The words of a quantity, “16 footers”, and those right beside it. */
export interface AsSaid {
  readonly said: string
  readonly beside: string
}

/** A word that is asked for, at a place. */
export interface Wanted {
  readonly word: string
  readonly at: string
}

/** What was asked back; `between` are the ways in which the person's own words could be read, `either` the two words that a quantity may be. `again` is the question where a figure waits for its answer, and `sum` says that the whole sum does. */
export interface Asked extends Wanted {
  readonly between?: readonly string[]
  readonly either?: { readonly said: string; readonly words: readonly [string, string] }
  readonly again?: string
  readonly sum?: true
}

/** A result of the last working, kept so that a change can be shown as before → after. */
export interface Result extends Wanted {
  readonly value: Value
  readonly calculation: string
  readonly ref: string
}

/** What one turn decided: it is taken back as a whole. */
export interface Move {
  readonly turn: number
  readonly decisions: readonly Decision[]
  /** Words whose odd value was confirmed. */
  readonly confirms: readonly string[]
}

/** A whole plan that was kept under a name, to be held against others. */
export interface Kept {
  readonly name: string
  readonly moves: readonly Move[]
}

/** Everything that was decided about a fence. A value: deciding gives a new one and leaves this as it was. */
export interface Job {
  /** Everything that was decided and not taken back, in order. `decisions` and `confirmed` are what it comes to. */
  readonly moves: readonly Move[]
  /** Moves that were taken back, the last one last: they can be had again until something else is decided. */
  readonly takenBack: readonly Move[]
  readonly kept: readonly Kept[]
  readonly decisions: readonly Decision[]
  readonly system: System | null
  readonly confirmed: readonly string[]
  readonly wanted: readonly Wanted[]
  /** The calculation of the last working, where it was named. */
  readonly named: string | null
  readonly asked: readonly Asked[]
  readonly results: readonly Result[]
  /** Codes of the cautions already said in full. */
  readonly told: readonly string[]
}

/** A job in which nothing is decided yet. */
export const newJob: Job = {
  moves: [],
  takenBack: [],
  kept: [],
  decisions: [],
  system: null,
  confirmed: [],
  wanted: [],
  named: null,
  asked: [],
  results: [],
  told: [],
}

/** Decides words at their places; earlier decisions there are replaced, and so is what an earlier turn said that they put out of date. */
export function decide(job: Job, decisions: readonly Decision[], confirms: readonly string[] = []): Job {
  if (decisions.length === 0 && confirms.length === 0) return job
  const turn = decisions[0]?.turn ?? job.moves.at(-1)?.turn ?? 0
  const move: Move = { turn, decisions, confirms }
  return { ...job, ...after(job, move), moves: [...job.moves, move], takenBack: [] }
}

type State = Pick<Job, 'decisions' | 'confirmed'>

function after({ decisions: before, confirmed }: State, { decisions, confirms }: Move): State {
  const isAnew = (it: Decision): boolean => before.some((old) => old.word === it.word && old.at === it.at)
  const replaced = (old: Decision): boolean =>
    decisions.some(
      (it) =>
        it.at === old.at &&
        (it.word === old.word ||
          (old.turn < it.turn &&
            (isOutOfDate(it.word, old) || (isAnew(it) && vocabulary.get(it.word)?.replacesAnew?.includes(old.word))))),
    )
  const kept = confirmed.filter((word) => !decisions.some((it) => it.word === word))
  return {
    decisions: [...before.filter((old) => !replaced(old)), ...decisions],
    confirmed: [...new Set([...kept, ...confirms])],
  }
}

const stateOf = (moves: readonly Move[]): State => moves.reduce(after, { decisions: [], confirmed: [] } as State)

const isOutOfDate = (word: string, old: Decision): boolean =>
  vocabulary.get(word)?.replaces?.includes(old.word) === true ||
  (vocabulary.get(word)?.replacesNone?.includes(old.word) === true &&
    isQuantity(old.value) &&
    compare(old.value.amount, exact(0)) === 0)

/** The job without its last move; as it is where there is none. */
export function undo(job: Job): Job {
  const last = job.moves.at(-1)
  if (!last) return job
  const moves = job.moves.slice(0, -1)
  return { ...job, ...stateOf(moves), moves, takenBack: [...job.takenBack, last] }
}

/** The job with the move that was taken back last made again. */
export function redo(job: Job): Job {
  const last = job.takenBack.at(-1)
  if (!last) return job
  return { ...job, ...after(job, last), moves: [...job.moves, last], takenBack: job.takenBack.slice(0, -1) }
}

/** As many whole plans can be kept side by side, the one that is worked on among them. */
export const mostKept = 3

/** Keeps the plan as it stands under a name; one of the same name is replaced, and of too many the oldest goes. */
export const keep = (job: Job, name: string): Job => ({
  ...job,
  kept: [...job.kept.filter((it) => it.name !== name), { name, moves: job.moves }].slice(-mostKept),
})

/** Goes on with a plan that was kept. */
export function turnTo(job: Job, { moves }: Kept): Job {
  return { ...job, ...stateOf(moves), moves, takenBack: [] }
}

/** The decisions by word and place: looked at so often that they are found at once. */
const known = new WeakMap<readonly Decision[], Map<string, Decision>>()
function byPlace(decisions: readonly Decision[]): Map<string, Decision> {
  const found = known.get(decisions)
  if (found) return found
  const made = new Map(decisions.map((it) => [`${it.word}@${it.at}`, it] as const))
  known.set(decisions, made)
  return made
}

/** What was decided for a word at that very place. */
export const decidedAt = (job: Pick<Job, 'decisions'>, wordName: string, place: string): Decision | undefined =>
  byPlace(job.decisions).get(`${wordName}@${place}`)

/** What was decided for a word, at the place or above it. A word that does not inherit holds at its own place only. */
export function decided(job: Job, wordName: string, place: string): Decision | undefined {
  if (vocabulary.get(wordName)?.inherits === false) return decidedAt(job, wordName, place)
  // Only kinds of post have wider groups between them and the yard.
  const isOfKinds = kindsIn(place).length > 0
  const wider = isOfKinds ? job.decisions.filter((it) => it.word === wordName).map((it) => it.at) : []
  for (const at of looksFrom(place, wider)) {
    const found = decidedAt(job, wordName, at)
    if (found) return found
  }
  return undefined
}

// Two approximate amounts within their errors are the same: nothing that a person could notice has changed.
const sameQuantity = (a: Quantity, b: Quantity): boolean =>
  a.kind === b.kind && Math.abs(compare(a.amount, b.amount) ?? 0) === 0

/** Whether two values are the same, in whatever units they were said. */
export function sameValue(a: Value, b: Value): boolean {
  if (isQuantity(a) && isQuantity(b)) return sameQuantity(a, b)
  if (isList(a) && isList(b)) return a.length === b.length && a.every((q, i) => sameQuantity(q, b[i] as Quantity))
  return a === b
}

/** Whether the person speaks in metric: by the last length or volume they said. */
export function systemOf(job: Job): System {
  return job.system ?? 'imperial'
}

/** Where the fence is, once it was said. */
export const countryOf = (job: Job): Country | undefined =>
  job.decisions.find((it) => it.word === 'country')?.value as Country | undefined

// What a value comes to, as a text that is the same for the same value: for looking things up, never for showing.
const amountKey = (amount: Amount): string =>
  isExact(amount) ? amount.toFraction() : `${amount.value}±${amount.error}`
export const quantityKey = (q: Quantity): string => `${amountKey(q.amount)} ${q.unit}`
export const valueKey = (value: Value): string =>
  isList(value) ? value.map(quantityKey).join(';') : isQuantity(value) ? quantityKey(value) : String(value)

// ── writing down ──
// Exact amounts are written as fractions (`565/8`), approximate ones with their error, so that reading gives the same job.

type WrittenAmount = string | { value: number; error: number }
type WrittenValue = string | boolean | null | WrittenQuantity | WrittenQuantity[]
interface WrittenQuantity {
  kind: Quantity['kind']
  amount: WrittenAmount
  unit: string
}

const writeAmount = (a: Amount): WrittenAmount => (isExact(a) ? a.toFraction() : { value: a.value, error: a.error })
const readAmount = (a: WrittenAmount): Amount => (typeof a === 'string' ? new Fraction(a) : a)
const writeQuantity = (q: Quantity): WrittenQuantity => ({ kind: q.kind, amount: writeAmount(q.amount), unit: q.unit })
const readQuantity = (q: WrittenQuantity): Quantity => ({ kind: q.kind, amount: readAmount(q.amount), unit: q.unit })

export const writeValue = (value: Value): WrittenValue =>
  isList(value) ? value.map(writeQuantity) : isQuantity(value) ? writeQuantity(value) : value
export const readValue = (value: WrittenValue): Value =>
  Array.isArray(value)
    ? value.map(readQuantity)
    : typeof value === 'object' && value !== null
      ? readQuantity(value)
      : value

type WrittenDecision = Omit<Decision, 'value'> & { readonly value: WrittenValue }
type WrittenMove = Omit<Move, 'decisions'> & { readonly decisions: readonly WrittenDecision[] }
/** A job as it is kept in JSON: amounts are written exactly, as fractions. */
export type WrittenJob = Omit<Job, 'moves' | 'takenBack' | 'kept' | 'decisions' | 'confirmed' | 'results'> & {
  readonly moves: readonly WrittenMove[]
  readonly takenBack: readonly WrittenMove[]
  readonly kept: readonly { readonly name: string; readonly moves: readonly WrittenMove[] }[]
  readonly results: readonly (Omit<Result, 'value'> & { readonly value: WrittenValue })[]
}

const writeMoves = (moves: readonly Move[]): WrittenMove[] =>
  moves.map((move) => ({
    ...move,
    decisions: move.decisions.map((it) => ({ ...it, value: writeValue(it.value) })),
  }))
const readMoves = (moves: readonly WrittenMove[]): Move[] =>
  moves.map((move) => ({ ...move, decisions: move.decisions.map((it) => ({ ...it, value: readValue(it.value) })) }))

/** The job for JSON; `readJob` gives the same job back. */
export function writeJob({ decisions: _, confirmed: __, ...job }: Job): WrittenJob {
  return {
    ...job,
    moves: writeMoves(job.moves),
    takenBack: writeMoves(job.takenBack),
    kept: job.kept.map((it) => ({ ...it, moves: writeMoves(it.moves) })),
    results: job.results.map((it) => ({ ...it, value: writeValue(it.value) })),
  }
}

/** The job that `writeJob` wrote, read back. Nothing is checked: hand in only what was written so. */
export function readJob(written: WrittenJob): Job {
  const moves = readMoves(written.moves)
  return {
    ...written,
    ...stateOf(moves),
    moves,
    takenBack: readMoves(written.takenBack),
    kept: written.kept.map((it) => ({ ...it, moves: readMoves(it.moves) })),
    results: written.results.map((it) => ({ ...it, value: readValue(it.value) })),
  }
}
