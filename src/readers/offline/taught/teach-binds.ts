// This file is about teaching what each quantity of a message is. Three things are learned together, each on what the others already know:
// what speaks for a word of the vocabulary, which words of a message belong to which quantity, and which word follows which.
// A quantity is learned beside what those before and behind it are (pseudo-likelihood: J. Besag, 1975).
import { ends } from './belongs.ts'
import type { BindLessons, Part } from './bind-lessons.ts'
import type { Weights } from './weights.ts'
import { mixed } from './mixed.ts'
import { any, type Speaking, type Table, toShares } from './table.ts'

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

/** How often each feature was there when its word was meant, in some of the lessons. */
function timesSeen(all: BindLessons, lessons: readonly number[]): Int32Array {
  const { features, never, quantities, words, options, right, there, measured, following, spoken, spokenFor, links } =
    all
  const times = new Int32Array(features.length)
  const see = (at: number): void => {
    times[at] = (times[at] as number) + 1
  }
  const seeAll = ({ from, all: list }: BindLessons['there'], which: number): void => {
    for (let i = from[which] as number; i < (from[which + 1] as number); i++) see(list[i] as number)
  }
  for (const lesson of lessons) {
    const [first, end] = [quantities[lesson] as number, quantities[lesson + 1] as number]
    const meant = new Set<number>()
    for (let it = first; it < end; it++) {
      const at = right[it] as number
      if (at < 0) continue
      const option = (options[it] as number) + at
      meant.add(option)
      seeAll(there, option)
      seeAll(measured, option)
      if (at === 0) continue
      const [before, behind] = following.all.subarray(following.from[option], following.from[option + 1])
      see(before as number)
      if (features[behind as number]?.name === ends.last) see(behind as number)
    }
    for (let word = words[lesson] as number; word < (words[lesson + 1] as number); word++) {
      for (let i = spoken.from[word] as number; i < (spoken.from[word + 1] as number); i++)
        if (meant.has(spokenFor[i] as number)) see(spoken.all[i] as number)
      for (let i = 0; i <= end - first; i++) seeAll(links, (all.firstLink[word] as number) + i)
    }
  }
  times[never] = enough
  return times
}

// What stood beside a word when it was meant teaches, where it did so more than once.
const enough = 2

/** The weights while they are learned (Adagrad), from some of the lessons. What those did not see often enough stays at nothing. */
class Learning {
  readonly weights: Float64Array
  private readonly squares: Float64Array
  private readonly draws: Float64Array
  private readonly rates: Float64Array
  /** The features of what follows what, as these lessons know them. */
  private readonly following: Int32Array
  // What is worked for one lesson at a time; there is room for the largest.
  private readonly shares: Float64Array
  private readonly errors: Float64Array
  private readonly better: Float64Array

  constructor(
    private readonly all: BindLessons,
    lessons: readonly number[],
  ) {
    const { features, never, following, quantities, words, options } = all
    const times = timesSeen(all, lessons)
    const isKnown = (at: number): boolean => (times[at] as number) >= enough
    this.weights = Float64Array.from(features, ({ part, name }, at) =>
      part === 'belongs' && isKnown(at) ? (atFirst[name] ?? 0) : 0,
    )
    this.squares = new Float64Array(features.length)
    this.draws = Float64Array.from(features, ({ part, label }) =>
      part === 'belongs' ? draw.belongs : part === 'binds' && label === any ? draw.any : draw.usual,
    )
    this.rates = Float64Array.from(features, ({ part }, at) =>
      !isKnown(at) ? 0 : part === 'belongs' ? rate.belongs : rate.usual,
    )
    this.following = following.all.map((at) => (isKnown(at) ? at : never))
    const most = (of: (lesson: number) => number): number => lessons.reduce((sum, it) => Math.max(sum, of(it)), 0)
    const quantitiesOf = (it: number): number => (quantities[it + 1] as number) - (quantities[it] as number)
    const optionsOf = (it: number): number =>
      (options[quantities[it + 1] as number] as number) - (options[quantities[it] as number] as number)
    const wordsOf = (it: number): number => (words[it + 1] as number) - (words[it] as number)
    this.shares = new Float64Array(most((it) => wordsOf(it) * (quantitiesOf(it) + 1)))
    this.errors = new Float64Array(most(optionsOf))
    this.better = new Float64Array(most(quantitiesOf))
  }

  private step(at: number, gradient: number): void {
    const now = this.weights[at] as number
    const full = gradient - (this.draws[at] as number) * now
    const square = (this.squares[at] as number) + full * full
    this.squares[at] = square
    this.weights[at] = now + ((this.rates[at] as number) * full) / Math.sqrt(square + 1e-6)
  }

  private sum(list: Int32Array, from: number, to: number): number {
    let sum = 0
    for (let i = from; i < to; i++) sum += this.weights[list[i] as number] as number
    return sum
  }

  private stepAll(list: Int32Array, from: number, to: number, gradient: number): void {
    if (Math.abs(gradient) > least) for (let i = from; i < to; i++) this.step(list[i] as number, gradient)
  }

  learn(lesson: number): void {
    const { quantities, words, options, there, measured, following } = this.all
    const [first, end] = [quantities[lesson] as number, quantities[lesson + 1] as number]
    this.share(lesson)
    this.err(lesson)
    const { errors } = this
    const [firstOption, endOption] = [options[first] as number, options[end] as number]
    for (let it = firstOption; it < endOption; it++)
      this.stepAll(
        this.following,
        following.from[it] as number,
        following.from[it + 1] as number,
        errors[it - firstOption] as number,
      )
    for (let word = words[lesson] as number; word < (words[lesson + 1] as number); word++) this.learnWord(lesson, word)
    for (let it = firstOption; it < endOption; it++) {
      const error = errors[it - firstOption] as number
      if (Math.abs(error) <= least) continue
      this.stepAll(there.all, there.from[it] as number, there.from[it + 1] as number, error)
      for (let i = measured.from[it] as number; i < (measured.from[it + 1] as number); i++)
        this.step(measured.all[i] as number, error * (measured.measures[i] as number))
    }
  }

  /** The share of each word that belongs to each quantity, and to none. */
  private share(lesson: number): void {
    const { quantities, words, links, firstLink } = this.all
    const size = (quantities[lesson + 1] as number) - (quantities[lesson] as number) + 1
    const first = words[lesson] as number
    for (let word = first; word < (words[lesson + 1] as number); word++) {
      const at = (word - first) * size
      for (let i = 0; i < size; i++) {
        const link = (firstLink[word] as number) + i
        this.shares[at + i] = this.sum(links.all, links.from[link] as number, links.from[link + 1] as number)
      }
      toShares(this.shares, at, at + size)
    }
  }

  /** How far the share of each option is from what it should be; nothing where none is right. */
  private err(lesson: number): void {
    const { quantities, words, options, right, ofQuantity, spoken, spokenFor } = this.all
    const { errors } = this
    const [first, end] = [quantities[lesson] as number, quantities[lesson + 1] as number]
    const [firstOption, endOption] = [options[first] as number, options[end] as number]
    for (let it = firstOption; it < endOption; it++) errors[it - firstOption] = this.ownScore(it)
    const firstWord = words[lesson] as number
    for (let word = firstWord; word < (words[lesson + 1] as number); word++) {
      const share = (word - firstWord) * (end - first + 1)
      const last = spoken.from[word + 1] as number
      for (let i = spoken.from[word] as number; i < last; ) {
        const option = spokenFor[i] as number
        const next = this.endOfOption(i, last)
        const at = share + (ofQuantity[option] as number) - first
        errors[option - firstOption] =
          (errors[option - firstOption] as number) + (this.shares[at] as number) * this.sum(spoken.all, i, next)
        i = next
      }
    }
    for (let it = first; it < end; it++) {
      const [from, to] = [(options[it] as number) - firstOption, (options[it + 1] as number) - firstOption]
      const meant = right[it] as number
      if (meant < 0) errors.fill(0, from, to)
      else {
        toShares(errors, from, to)
        for (let i = from; i < to; i++) errors[i] = (i - from === meant ? 1 : 0) - (errors[i] as number)
      }
    }
  }

  /** What speaks for an option but for the words of the message. */
  private ownScore(option: number): number {
    const { there, measured, following } = this.all
    let score = this.sum(this.following, following.from[option] as number, following.from[option + 1] as number)
    for (let i = there.from[option] as number; i < (there.from[option + 1] as number); i++)
      score += this.weights[there.all[i] as number] as number
    for (let i = measured.from[option] as number; i < (measured.from[option + 1] as number); i++)
      score += (this.weights[measured.all[i] as number] as number) * (measured.measures[i] as number)
    return score
  }

  /** Where what a word speaks for one option ends. */
  private endOfOption(from: number, last: number): number {
    const { spokenFor } = this.all
    let end = from + 1
    while (end < last && spokenFor[end] === spokenFor[from]) end++
    return end
  }

  private learnWord(lesson: number, word: number): void {
    const { quantities, words, options, ofQuantity, spoken, spokenFor, links, firstLink } = this.all
    const { errors, better, shares } = this
    const first = quantities[lesson] as number
    const many = (quantities[lesson + 1] as number) - first
    const firstOption = options[first] as number
    const share = (word - (words[lesson] as number)) * (many + 1)
    const [from, last] = [spoken.from[word] as number, spoken.from[word + 1] as number]
    // How much better all would be if the word belonged more to a quantity.
    better.fill(0, 0, many)
    for (let i = from; i < last; ) {
      const next = this.endOfOption(i, last)
      const option = spokenFor[i] as number
      const error = errors[option - firstOption] as number
      const at = (ofQuantity[option] as number) - first
      if (Math.abs(error) > least) better[at] = (better[at] as number) + error * this.sum(spoken.all, i, next)
      i = next
    }
    let mean = 0
    for (let i = 0; i < many; i++) mean += (better[i] as number) * (shares[share + i] as number)
    for (let i = from; i < last; i++) {
      const option = spokenFor[i] as number
      const error = errors[option - firstOption] as number
      if (Math.abs(error) > least)
        this.step(spoken.all[i] as number, error * (shares[share + (ofQuantity[option] as number) - first] as number))
    }
    for (let i = 0; i <= many; i++) {
      const link = (firstLink[word] as number) + i
      const gradient =
        i < many
          ? (shares[share + i] as number) * ((better[i] as number) - mean)
          : -(shares[share + many] as number) * mean
      this.stepAll(links.all, links.from[link] as number, links.from[link + 1] as number, gradient)
    }
  }
}

// What would move a weight by less is left out.
const least = 1e-4

/** What some of the lessons teach of quantities. */
export function taughtBinds(
  all: BindLessons,
  lessons: readonly number[],
): Pick<Weights, 'binds' | 'belongs' | 'follows'> {
  const telling = lessons.filter((it) => (all.quantities[it + 1] as number) > (all.quantities[it] as number))
  const learning = new Learning(all, telling)
  const sums = new Float64Array(all.features.length)
  for (let round = 0; round < rounds.all; round++) {
    for (const at of mixed(telling.length, round)) learning.learn(telling[at] as number)
    if (round >= rounds.before)
      for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] as number) + (learning.weights[i] as number)
  }
  const tables: Record<Part, Record<string, Record<string, number>>> = { binds: {}, belongs: {}, follows: {} }
  const named = all.features.map((it, i) => ({
    ...it,
    weight: Math.round(((sums[i] as number) / (rounds.all - rounds.before)) * 100),
  }))
  named.sort((a, b) => (a.label === b.label ? (a.name < b.name ? -1 : 1) : a.label < b.label ? -1 : 1))
  for (const { part, label, name, weight } of named)
    if (Math.abs(weight) >= lightest) {
      const table = tables[part]
      table[label] ??= {}
      table[label][name] = weight
    }
  return { binds: tables.binds, follows: tables.follows as Table, belongs: (tables.belongs[any] ?? {}) as Speaking }
}

// What weighs less, in hundredths, is left out.
const lightest = 3
