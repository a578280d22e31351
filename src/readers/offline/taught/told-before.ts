// This file is about what the talk says of a quantity: whether a word was asked for, or told before, and how like that is to what is said now.
// “They only had 8 footers”, after “16 footers” and “an 8 foot bed”: the stock is told anew, and not the bed.
import {
  amountIn,
  type AsSaid,
  calculationNamed,
  isQuantity,
  type Quantity,
  toNumber,
  vocabulary,
  type Word,
} from '../../../../engine/index.ts'
import { asSaid } from '../../as-said.ts'
import type { Tagged } from '../../reader.ts'
import { filler, stem } from '../stems.ts'
import { canBe } from './can-be.ts'
import type { Looked, Sized } from './features.ts'
import { talkedOf } from './talked.ts'

/** The features of a quantity and a word that the talk knows already: asked for, or told before, and how. */
export function talkFeatures(looked: Looked, { reading }: Pick<Sized, 'reading'>, word: Word): [string, number][] {
  const { job } = looked.heard
  if (job.asked.some((it) => it.word === word.name)) return [['open', 1]]
  const before = job.decisions.findLast((it) => it.word === word.name)
  if (!before) return job.decisions.length > 0 ? [['new', 1]] : []
  const found: [string, number][] = [
    ['again', 1],
    [looked.message.length <= short ? 'again, short' : 'again, long', 1],
  ]
  if (before.turn === job.moves.at(-1)?.turn) found.push(['again last', 1])
  if (rivalsOf(looked, reading).every((it) => it === word.name)) found.push(['again alone', 1])
  if (before.as) found.push(...echoes(stemsOf(before.as), stemsOf(saidNow(looked, reading))))
  if (!isQuantity(before.value)) return found
  if (reading.quantity && reading.quantity.unit === before.value.unit) found.push(['again unit', 1])
  const ratio = ratioOf(reading, before.value)
  // A size is put right by one not far from it.
  if (ratio !== undefined)
    found.push([ratio === 1 ? 'again same' : ratio < 2 ? 'again near' : ratio < 4 ? 'again off' : 'again far', 1])
  return found
}

// A message of so few words leans on what was said before.
const short = 6

/** The words told before that a quantity could tell anew, of what the talk is about. */
function rivalsOf(looked: Looked, reading: Tagged): readonly string[] {
  const known = rivals.get(reading)
  if (known) return known
  const { job } = looked.heard
  const now = talkedOf(job).now.flatMap((it) => calculationNamed(it) ?? [])
  const told = [...new Set(job.decisions.map((it) => it.word))].filter((it) => now.some(({ needs }) => needs[it]))
  const names = new Set(told)
  const isAble = canBe(looked, reading)
  const found = told.filter((it) => {
    const word = vocabulary.get(it)
    return word !== undefined && isAble(word, names)
  })
  rivals.set(reading, found)
  return found
}
const rivals = new WeakMap<Tagged, readonly string[]>()

/** How a quantity is said now. */
function saidNow({ heard: { said, readings } }: Looked, reading: Tagged): AsSaid {
  const known = sayings.get(reading) ?? asSaid(said, reading, readings)
  sayings.set(reading, known)
  return known
}
const sayings = new WeakMap<Tagged, AsSaid>()

interface Stems {
  readonly own: ReadonlySet<string>
  readonly beside: ReadonlySet<string>
}

function stemsOf(as: AsSaid): Stems {
  const known = stemmed.get(as) ?? { own: new Set(wordsIn(as.said)), beside: new Set(wordsIn(as.beside)) }
  stemmed.set(as, known)
  return known
}
const stemmed = new WeakMap<AsSaid, Stems>()

const wordsIn = (text: string): string[] =>
  (text.match(/\p{L}[\p{L}\p{M}'’]*/gu) ?? []).map(stem).filter((it) => !filler.has(it))

/** What was said then and is said again. */
function echoes(then: Stems, now: Stems): [string, number][] {
  const shared = [...now.beside].filter((it) => then.beside.has(it)).length
  const isNew = shared === 0 && now.beside.size > 0
  return [
    ...([...now.own].some((it) => then.own.has(it)) ? ([['again called', 1]] as const) : []),
    ...(shared > 0 ? ([['again beside', Math.min(2, shared) / 2]] as const) : []),
    ...(isNew ? ([['again beside others', 1]] as const) : []),
  ].map(([name, size]) => [name, size])
}

/** How many times larger one is than the other; a bare number is held against the number that was said before. */
function ratioOf({ quantity: now, bare }: Tagged, before: Quantity): number | undefined {
  if (now && now.kind !== before.kind) return undefined
  const [a, b] = now
    ? [toNumber(now.amount), toNumber(before.amount)]
    : [bare?.valueOf() ?? 0, toNumber(amountIn(before, before.unit))]
  return a > 0 && b > 0 ? Math.max(a / b, b / a) : undefined
}
