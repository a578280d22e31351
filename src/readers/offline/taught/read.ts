// This file is about what the taught reading hands to the offline reader: what is asked, by which calculation, and what each quantity is.
import { askable, type Calculation, type Wanted, vocabulary, type Word, yard } from '../../../../engine/index.ts'
import type { Heard, Tagged } from '../../reader.ts'
import type { Bound } from '../bound.ts'
import { type Kinds, placeFor } from '../places.ts'
import type { Token } from '../stems.ts'
import { type Binding, readingsOf, weights } from './decode.ts'
import { look, type Looked } from './features.ts'
import { kindsOf, type MessageKind, optionSaid, resultsAsked } from './weights.ts'
import type { Told } from '../../../request.ts'

export interface Taught {
  /** Empty where the message only tells, or goes on with what the talk was about. */
  readonly asks: readonly Wanted[]
  readonly calculation: Calculation
  readonly bound: readonly Bound[]
  readonly chosen: readonly Told[]
  readonly loose: readonly Tagged[]
  /** How much better it explains the message than the next calculation does, in logarithms. */
  readonly ahead: number
  /** How sure the least sure of its bindings is. */
  readonly least: number
  readonly missing: number
}

/** What kind of message it is, where the weights are sure of it. */
export function kindOf(heard: Heard, message: readonly Token[]): { kind: MessageKind; share: number } {
  const shares = kindsOf(weights(), look(heard, message))
  const [kind, share] = [...shares].reduce((a, b) => (b[1] > a[1] ? b : a))
  return { kind, share }
}

export function taughtReading(heard: Heard, message: readonly Token[], kinds: Kinds): Taught | undefined {
  const looked = look(heard, message)
  const { job } = heard
  const giving = askable.filter((calc) => job.wanted.some((it) => calc.gives[it.word])).map((it) => it.name)
  const talked = job.named ? [job.named] : giving
  const told = new Set(job.decisions.map((it) => it.word))
  const [best, next] = readingsOf(looked, talked, told)
  if (!best || best.clashes) return undefined
  const { calculation } = best
  const asked = resultsAsked(weights(), looked, calculation)
  const goesOn = talked.includes(calculation.name)
  const isSum = kindOf(heard, message)
  // It asks, though not for what: then for what the calculation is there for.
  const result =
    asked[0]?.result ??
    (isSum.kind === 'sum' && isSum.share > 0.7 ? (asked[1]?.result ?? calculation.headlines[0]) : undefined)
  const isVerdict = calculation.headlines.some((it) => calculation.gives[it]?.kind === 'verdict')
  const spots = new Map(message.flatMap((token, i) => (token.tag ? [[token.tag, i] as const] : [])))
  return {
    asks:
      result === undefined || (goesOn && job.wanted.some((it) => it.word === result))
        ? []
        : [{ word: result, at: yard }],
    calculation,
    bound: best.bound
      .filter((it) => isSure(it, isVerdict))
      .map(({ reading, word, sure }) => ({
        reading,
        word,
        at: placeFor(vocabulary.get(word) as Word, spots.get(reading.tag) ?? 0, kinds, message),
        score: sure,
      })),
    chosen: Object.values(calculation.needs).flatMap((word) =>
      word.kind === 'choice' ? optionTold(looked, word) : [],
    ),
    // What is hardly surer to be that word than another, or none, is left for a question.
    loose: [...best.left, ...best.bound.filter((it) => !isSure(it, isVerdict)).map((it) => it.reading)],
    ahead: next ? best.score - next.score : Number.POSITIVE_INFINITY,
    least: Math.min(...best.bound.map((it) => it.sure), Number.POSITIVE_INFINITY),
    missing: best.missing.length,
  }
}

// “The thingummy is 3 in”: no verdict is given on a size that nothing names and that is not very sure.
const enough = { named: 0.5, unnamed: 0.5, unnamedInVerdict: 4 } as const
const isSure = ({ sure, named }: Binding, isVerdict: boolean): boolean =>
  named ? sure >= enough.named : isVerdict ? sure >= enough.unnamedInVerdict : sure === 0 || sure >= enough.unnamed

/** An option that a message says, with the words that say so. */
function optionTold(looked: Looked, word: Word): Told[] {
  const said = optionSaid(weights(), looked, word)
  if (!said || said.share < 0.6) return []
  const parts = said.by.split(' ')
  const { message, heard } = looked
  const from = message.findIndex(
    (token, at) =>
      parts.every((it, i) => it.startsWith('<') || message[at + i]?.stem === it) && token.stem !== undefined,
  )
  const [first, last] = [message[from], message[from + parts.length - 1]]
  if (!first || !last) return []
  return [
    {
      word: word.name,
      at: yard,
      from: { tag: null, quote: heard.said.slice(first.start, last.end), option: said.option, usual: null },
    },
  ]
}
