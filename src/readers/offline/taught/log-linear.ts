// This file is about log-linear weights: found by steps that get smaller for what has been stepped on often (Adagrad), drawn back towards nothing (L2).
import { growing, GrowingLists, GrowingMeasured, type Lists, type Measured, Numbers } from './numbered.ts'
import { any, type Table, toShares } from './table.ts'

export interface Choice {
  /** What speaks for each thing that could be chosen, and which is right. */
  readonly options: readonly Option[]
  readonly right: number
}

interface Option {
  /** Features that are there, each for a label. */
  readonly there: readonly { readonly label: string; readonly names: readonly string[] }[]
  /** Features that have a measure, and speak for any alike. */
  readonly ofAny: readonly (readonly [name: string, measure: number])[]
}

/** An option that features speak for by one label alone. */
export const thereFor = (label: string, names: readonly string[]): Option => ({
  there: [{ label, names }],
  ofAny: [],
})

interface Pace {
  readonly rounds: number
  readonly draw: number
}

/** How often all lessons are gone through, and how strongly weights are drawn back. More is kept where few sentences teach much, as of fences, and where a danger must be known surely. */
export const pace = {
  usual: { rounds: 8, draw: 0.004 },
  sure: { rounds: 12, draw: 0.001 },
  few: { rounds: 30, draw: 0.0001 },
} as const

/** The choices with their features by number. */
interface Rows {
  /** Where the options of each begin; where those of the last end. */
  readonly options: Int32Array
  readonly right: Int32Array
  readonly there: Lists
  readonly measured: Measured
  /** The label and name of each number. */
  readonly features: readonly (readonly [label: string, name: string])[]
}

function numbered(choices: readonly Choice[]): Rows {
  const features: (readonly [string, string])[] = []
  const numbers = new Numbers((label, name) => features.push([label, name]) - 1)
  for (const { options, right: at } of choices) {
    const right = options[at]
    for (const { label, names } of right?.there ?? []) for (const name of names) numbers.see(label, name)
    for (const [name] of right?.ofAny ?? []) numbers.see(any, name)
  }
  const [from, there, measured] = [growing(), new GrowingLists(), new GrowingMeasured()]
  let count = 0
  for (const { options } of choices) {
    from.push(count)
    count += options.length
    for (const it of options) {
      there.begin()
      for (const { label, names } of it.there) there.push(numbers.of(label), names)
      measured.add(numbers.of(any), it.ofAny)
    }
  }
  from.push(count)
  return {
    options: from.all,
    right: Int32Array.from(choices, (it) => it.right),
    there: there.lists,
    measured: measured.lists,
    features,
  }
}

// The first step of a weight.
const rate = 0.25

/** The weights of the features by which the right option of each choice is told from the others. `isFew` keeps them all, however little they weigh. */
export function weighed(choices: readonly Choice[], isFew = false, { rounds, draw } = pace.usual as Pace): Table {
  const { options, right, there, measured, features } = numbered(choices)
  const weights = new Float64Array(features.length)
  const squares = new Float64Array(features.length)
  const stepped = new Uint8Array(features.length)
  const shares = new Float64Array(choices.reduce((most, it) => Math.max(most, it.options.length), 0))
  const step = (at: number, gradient: number): void => {
    const now = weights[at] as number
    const full = gradient - draw * now
    const square = (squares[at] as number) + full * full
    squares[at] = square
    weights[at] = now + (rate * full) / Math.sqrt(square + 1e-6)
    stepped[at] = 1
  }
  const scoreOf = (option: number): number => {
    let sum = 0
    for (let i = there.from[option] as number; i < (there.from[option + 1] as number); i++)
      sum += weights[there.all[i] as number] as number
    for (let i = measured.from[option] as number; i < (measured.from[option + 1] as number); i++)
      sum += (weights[measured.all[i] as number] as number) * (measured.measures[i] as number)
    return sum
  }
  const learn = (option: number, error: number): void => {
    for (let i = there.from[option] as number; i < (there.from[option + 1] as number); i++)
      step(there.all[i] as number, error)
    for (let i = measured.from[option] as number; i < (measured.from[option + 1] as number); i++)
      step(measured.all[i] as number, error * (measured.measures[i] as number))
  }
  for (let round = 0; round < rounds; round++)
    for (let choice = 0; choice < right.length; choice++) {
      const first = options[choice] as number
      const many = (options[choice + 1] as number) - first
      for (let i = 0; i < many; i++) shares[i] = scoreOf(first + i)
      toShares(shares, 0, many)
      for (let i = 0; i < many; i++) {
        const error = (i === right[choice] ? 1 : 0) - (shares[i] as number)
        if (Math.abs(error) > 1e-4) learn(first + i, error)
      }
    }
  const table: Record<string, Record<string, number>> = {}
  const kept = features.map(([label, name], at) => ({ label, name, weight: weights[at] as number, at }))
  kept.sort((a, b) => (a.label === b.label ? (a.name < b.name ? -1 : 1) : a.label < b.label ? -1 : 1))
  for (const { label, name, weight, at } of kept)
    if (stepped[at] === 1 && (isFew || Math.abs(weight) >= 0.15)) {
      table[label] ??= {}
      table[label][name] = Math.round(weight * 100)
    }
  return table
}
