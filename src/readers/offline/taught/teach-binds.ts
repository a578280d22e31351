// This file is about teaching what each quantity of a message is. Three things are learned together, each on what the others already know:
// what speaks for a word of the vocabulary, which words of a message belong to which quantity, and which word follows which.
// A quantity is learned beside what those before and behind it are (pseudo-likelihood: J. Besag, 1975).
import { canBe } from './decode.ts'
import { ends, nobodys, owned, wordsBeside } from './belongs.ts'
import { cueFeatures, quantityFeatures, standingFeatures, talkFeatures, wordLabel, type Weights } from './weights.ts'
import { sizedAt } from './features.ts'
import { mixed } from './mixed.ts'
import { any, normal, type Speaking, type Table } from './table.ts'
import type { Lesson } from './lesson.ts'

/** Numbers of features, and what each counts. */
interface Numbered {
  readonly at: readonly number[]
  readonly by: readonly number[]
}

/** What a quantity could be: what speaks for it, and for each word of the message what it would speak if it belonged to the quantity. */
interface Option extends Numbered {
  readonly label: string
  readonly words: readonly (readonly number[])[]
}

interface Quantity {
  readonly options: readonly Option[]
  /** Which is right; none where its word is no word of the calculation. */
  readonly right: number | undefined
  /** What is said before it and behind it. */
  readonly before: string
  readonly behind: string
}

interface Sentence {
  readonly quantities: readonly Quantity[]
  /** For each word of the message: how it stands to each quantity, and what keeps it from all. */
  readonly links: readonly { readonly each: readonly (readonly number[])[]; readonly nobody: readonly number[] }[]
}

/** The features that are learned, by number, each with its name and how strongly it is drawn back towards nothing. */
class Known {
  readonly names: (readonly [part: 'binds' | 'belongs' | 'follows', label: string, name: string])[] = []
  private readonly numbers = new Map<string, number>()
  private readonly seen = new Map<string, number>()
  private key = (part: string, label: string, name: string): string => `${part}\t${label}\t${name}`
  /** What stood beside a word when it was meant teaches, where it did so more than once. */
  see(part: 'binds' | 'belongs' | 'follows', label: string, name: string): void {
    const key = this.key(part, label, name)
    const times = (this.seen.get(key) ?? 0) + 1
    this.seen.set(key, times)
    if (times === 2) this.numbers.set(key, this.names.push([part, label, name]) - 1)
  }
  of = (part: string, label: string, name: string): number | undefined => this.numbers.get(this.key(part, label, name))
  all = (part: string, label: string, names: readonly string[]): number[] =>
    names.flatMap((it) => this.of(part, label, it) ?? [])
}

// How often all lessons are gone through; the weights are the mean of those after so many rounds, which depends less on the last lessons.
const rounds = { all: 8, before: 2 } as const
// The first step of a weight, and how strongly it is drawn back towards nothing: what is the same for all words is learned from so much that it needs little.
const rate = { usual: 0.25, belongs: 0.1 } as const
const draw = { usual: 0.03, any: 0.002, belongs: 0.0005 } as const

/** What a word belongs to before anything is learned: what is near, with nothing between. */
const atFirst: Readonly<Record<string, number>> = Object.fromEntries(
  ['before', 'after'].flatMap((side) => [
    [`${side} 1`, 2],
    [`${side} 2`, 1],
    [`${side} 3`, 0.5],
    [`${side}, past 1`, -1],
    [`${side}, past 2`, -2],
    [`${side}, past 3`, -2],
    [`${side}, stop`, -2],
    [`${side}, comma`, -1],
  ]),
)

/** A lesson as it is before its features have numbers. */
function told({ looked, calculation, meant }: Lesson) {
  const words = Object.values(calculation.needs).filter((it) => it.kind !== 'choice' && it.kind !== 'verdict')
  const needed = new Set(words.map((it) => it.name))
  const quantities = meant.map(({ reading, spot, word: marked }) => {
    // A stick called by its size tells both its sides; the one that brings the other along stands for both.
    const word = (reading.section && words.find((it) => it.otherSide === marked)?.name) || marked
    const isAble = canBe(looked, reading)
    const able = words.filter((it) => it.name === word || isAble(it, needed))
    const size = sizedAt(looked, reading, spot)
    const at = word === null ? 0 : able.findIndex((it) => it.name === word) + 1
    return {
      right: at === 0 && word !== null ? undefined : at,
      own: quantityFeatures(looked, reading, spot),
      options: [undefined, ...able].map((it) => ({
        label: wordLabel(it),
        ofAny: it
          ? [
              ...cueFeatures(looked, size, it),
              ...talkFeatures(looked, reading, it),
              ...standingFeatures(it, calculation),
            ]
          : [],
      })),
    }
  })
  return {
    quantities,
    beside: wordsBeside(
      looked,
      meant.map((it) => it.spot),
    ),
  }
}

type Told = ReturnType<typeof told>

/** What each quantity is said to be, in their order; nothing for one that means nothing. */
const saidIn = ({ quantities }: Told): (string | undefined)[] =>
  quantities.map(({ right, options }) => (right ? options[right]?.label : undefined))

const around = (said: readonly (string | undefined)[], i: number): { before: string; behind: string } => ({
  before: said.slice(0, i).findLast((it) => it !== undefined) ?? ends.first,
  behind: said.slice(i + 1).find((it) => it !== undefined) ?? ends.last,
})

function seen(lessons: readonly Told[]): Known {
  const known = new Known()
  for (const lesson of lessons) {
    const said = saidIn(lesson)
    for (const [i, { right, own, options }] of lesson.quantities.entries()) {
      const meant = right === undefined ? undefined : options[right]
      if (!meant) continue
      for (const name of own) known.see('binds', meant.label, name)
      for (const [name] of meant.ofAny) known.see('binds', any, name)
      for (const { names } of lesson.beside) for (const name of names) known.see('binds', meant.label, owned(name))
      const { before, behind } = around(said, i)
      if (right) known.see('follows', before, meant.label)
      if (right && behind === ends.last) known.see('follows', meant.label, behind)
    }
    if (lesson.quantities.length > 0)
      for (const { names, links } of lesson.beside) {
        for (const name of links.flat()) known.see('belongs', any, name)
        for (const name of nobodys(names)) known.see('belongs', any, name)
      }
  }
  // What was never said one after the other.
  for (const _ of [1, 2]) known.see('follows', any, any)
  return known
}

function numbered({ quantities, beside }: Told, known: Known): Sentence {
  const said = saidIn({ quantities, beside })
  return {
    quantities: quantities.map(({ right, own, options }, i) => ({
      right,
      ...around(said, i),
      options: options.map(({ label, ofAny }) => {
        const names = known.all('binds', label, own)
        const measured = ofAny.flatMap(([name, by]) => {
          const at = known.of('binds', any, name)
          return at === undefined ? [] : [{ at, by }]
        })
        return {
          label,
          at: [...names, ...measured.map((it) => it.at)],
          by: [...names.map(() => 1), ...measured.map((it) => it.by)],
          words: beside.map((it) => known.all('binds', label, it.names.map(owned))),
        }
      }),
    })),
    links: beside.map(({ names, links }) => ({
      each: links.map((it) => known.all('belongs', any, it)),
      nobody: known.all('belongs', any, nobodys(names)),
    })),
  }
}

/** The weights while they are learned (Adagrad). */
class Learning {
  readonly weights: Float64Array
  private readonly squares: Float64Array
  private readonly draws: Float64Array
  private readonly rates: Float64Array
  private readonly never: number
  constructor(readonly known: Known) {
    const { names } = known
    this.weights = Float64Array.from(names, ([part, , name]) => (part === 'belongs' ? (atFirst[name] ?? 0) : 0))
    this.squares = new Float64Array(names.length)
    this.draws = Float64Array.from(names, ([part, label]) =>
      part === 'belongs' ? draw.belongs : part === 'binds' && label === any ? draw.any : draw.usual,
    )
    this.rates = Float64Array.from(names, ([part]) => (part === 'belongs' ? rate.belongs : rate.usual))
    this.never = known.of('follows', any, any) as number
  }

  private sum(at: readonly number[]): number {
    let sum = 0
    for (const it of at) sum += this.weights[it] as number
    return sum
  }

  private step(at: number, gradient: number): void {
    const now = this.weights[at] as number
    const full = gradient - (this.draws[at] as number) * now
    const square = (this.squares[at] as number) + full * full
    this.squares[at] = square
    this.weights[at] = now + ((this.rates[at] as number) * full) / Math.sqrt(square + 1e-6)
  }

  private following(before: string, after: string): number {
    return this.known.of('follows', before, after) ?? this.never
  }

  /** What follows what, where a quantity is one of its options; the first, that it means nothing. */
  private pairs({ options, before, behind }: Quantity): number[][] {
    const without = before === ends.first && behind === ends.last ? [] : [this.following(before, behind)]
    return options.map(({ label }, i) =>
      i === 0 ? without : [this.following(before, label), this.following(label, behind)],
    )
  }

  learn({ quantities, links }: Sentence): void {
    const last = quantities.length
    const shares = links.map(({ each, nobody }) =>
      normal([...each.map((it) => this.sum(it)), this.sum(nobody)]).map(Math.exp),
    )
    const pairs = quantities.map((it) => this.pairs(it))
    const errors = quantities.map(({ options, right }, i) => {
      if (right === undefined) return options.map(() => 0)
      const scores = options.map(({ at, by, words }, j) => {
        let score = this.sum((pairs[i] as number[][])[j] as number[])
        for (let k = 0; k < at.length; k++) score += (this.weights[at[k] as number] as number) * (by[k] as number)
        for (let k = 0; k < words.length; k++)
          score += ((shares[k] as number[])[i] as number) * this.sum(words[k] as number[])
        return score
      })
      return normal(scores).map((it, j) => (j === right ? 1 : 0) - Math.exp(it))
    })
    const each = (use: (option: Option, error: number, i: number, j: number) => void): void => {
      for (const [i, { options }] of quantities.entries())
        for (const [j, option] of options.entries()) {
          const error = (errors[i] as number[])[j] as number
          if (Math.abs(error) > 1e-4) use(option, error, i, j)
        }
    }
    each((_, error, i, j) => {
      for (const at of (pairs[i] as number[][])[j] as number[]) this.step(at, error)
    })
    for (const [k, { each: stands, nobody }] of links.entries()) {
      const share = shares[k] as number[]
      // How much better all would be if the word belonged more to this quantity.
      const better = quantities.map(() => 0)
      each(({ words }, error, i) => {
        better[i] = (better[i] as number) + error * this.sum(words[k] as number[])
      })
      const mean = better.reduce((sum, it, i) => sum + it * (share[i] as number), 0)
      each(({ words }, error, i) => {
        for (const at of words[k] as number[]) this.step(at, error * (share[i] as number))
      })
      const move = (at: readonly number[], gradient: number): void => {
        if (Math.abs(gradient) > 1e-4) for (const it of at) this.step(it, gradient)
      }
      for (const [i, it] of stands.entries()) move(it, (share[i] as number) * ((better[i] as number) - mean))
      move(nobody, -(share[last] as number) * mean)
    }
    each(({ at, by }, error) => {
      for (let k = 0; k < at.length; k++) this.step(at[k] as number, error * (by[k] as number))
    })
  }
}

/** What the lessons teach of quantities. */
export function taughtBinds(lessons: readonly Lesson[]): Pick<Weights, 'binds' | 'belongs' | 'follows'> {
  const all = lessons.map(told).filter((it) => it.quantities.length > 0)
  const known = seen(all)
  const sentences = all.map((it) => numbered(it, known))
  const learning = new Learning(known)
  const sums = new Float64Array(known.names.length)
  for (let round = 0; round < rounds.all; round++) {
    for (const at of mixed(sentences.length, round)) learning.learn(sentences[at] as Sentence)
    if (round >= rounds.before)
      for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] as number) + (learning.weights[i] as number)
  }
  const tables: Record<'binds' | 'belongs' | 'follows', Record<string, Record<string, number>>> = {
    binds: {},
    belongs: {},
    follows: {},
  }
  const named = known.names.map(([part, label, name], i) => ({
    part,
    label,
    name,
    weight: Math.round(((sums[i] as number) / (rounds.all - rounds.before)) * 100),
  }))
  named.sort((a, b) => (a.label === b.label ? (a.name < b.name ? -1 : 1) : a.label < b.label ? -1 : 1))
  for (const { part, label, name, weight } of named)
    if (Math.abs(weight) >= least) {
      const table = tables[part]
      table[label] ??= {}
      table[label][name] = weight
    }
  return { binds: tables.binds, follows: tables.follows as Table, belongs: (tables.belongs[any] ?? {}) as Speaking }
}

// What weighs less, in hundredths, is left out.
const least = 3
