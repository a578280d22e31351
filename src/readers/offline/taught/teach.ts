// This file is about teaching: weights from sentences. `npm run teach` writes weights.json; the same sentences give the same weights.
// What is asked, and what each quantity is, have files of their own. Which option is said, what kind of message it is and what speaks for a whole reading are log-linear:
// their weights are found by steps that get smaller for what has been stepped on often (Adagrad), drawn back towards nothing (L2).
import { readingsOf } from './decode.ts'
import { type BindLessons, bindLessons } from './bind-lessons.ts'
import { taughtBinds } from './teach-binds.ts'
import {
  choiceFeatures,
  kindFeatures,
  namesOption,
  optionLabel,
  resultFeatures,
  resultLabels,
  resultWords,
  type Weights,
} from './weights.ts'
import type { Looked } from './features.ts'
import type { KindLesson, Lesson, WalkLesson } from './lesson.ts'
import { any, normal, type Table } from './table.ts'
import { taughtAsks } from './teach-asks.ts'
import { kinds } from './kinds.ts'
import {
  askedFeatures,
  beginning,
  behindOf,
  passing,
  shapeOfToken,
  standingOf,
  tagsFor,
  untagged,
} from '../walk/tags.ts'
import type { WalkWeights } from '../walk/walk-weights.ts'

interface Choice {
  /** What speaks for each thing that could be chosen, and which is right. */
  readonly options: readonly (readonly Features[])[]
  readonly right: number
}

/** Features that speak for one label: each is there or not, or has a measure. */
interface Features {
  readonly label: string
  readonly names: readonly string[]
  readonly values?: readonly number[]
}

const ofAny = (features: readonly (readonly [string, number])[]): Features => ({
  label: any,
  names: features.map(([name]) => name),
  values: features.map(([, value]) => value),
})

/** For each choice of a lesson's calculation, what could be said of it. Only words that say an option somewhere may speak for one. */
const optionChoicesOf = ({ looked, calculation, options: said }: Lesson, saying: ReadonlySet<string>): Choice[] =>
  Object.values(calculation.needs)
    .filter((it) => it.kind === 'choice')
    .map((word) => {
      const options = [undefined, ...Object.keys(word.options ?? {})]
      const features = choiceFeatures(looked, word, saying)
      return {
        options: options.map((it) => [
          { label: optionLabel(word, it), names: features },
          ...(namesOption(looked, word, it) ? [ofAny([['option', 1]])] : []),
        ]),
        right: Math.max(0, options.indexOf(said.get(word.name))),
      }
    })

/** For each result that a lesson asks for, what it could ask for instead; or for none of them. */
function resultChoicesOf({ looked, calculation, results }: Lesson): Choice[] {
  const names = resultWords(looked)
  const asked = results.filter((it) => calculation.gives[it])
  return (asked.length > 0 ? asked : [undefined]).map((right) => {
    const others = Object.values(calculation.gives).filter(({ name }) => name === right || !asked.includes(name))
    const options = [undefined, ...others]
    return {
      options: options.map((it) => [
        ...resultLabels(it).map((label) => ({ label, names })),
        ofAny(resultFeatures(looked, calculation, it)),
      ]),
      right: options.findIndex((it) => it?.name === right),
    }
  })
}

interface Pace {
  readonly rounds: number
  readonly draw: number
}

/** How often all lessons are gone through, and how strongly weights are drawn back. More is kept where few sentences teach much, as of fences, and where a danger must be known surely. */
const pace = {
  usual: { rounds: 8, draw: 0.004 },
  sure: { rounds: 12, draw: 0.001 },
  few: { rounds: 30, draw: 0.0001 },
} as const

export function taught(
  lessons: readonly Lesson[],
  ofKinds: readonly KindLesson[],
  walks: readonly WalkLesson[],
): Weights {
  const all: Schooling = { lessons, ofKinds, binding: bindLessons(lessons) }
  const parts = {
    ...taughtInParts(all, () => true),
    walks: taughtWalks(walks, [...lessons.filter(tellsNoSides), ...ofKinds.filter(isOfNoSum)]),
  }
  // What speaks for a reading is learned on sentences that the rest was not learned from: each half by the other.
  const readings = [0, 1].flatMap((half) => {
    const by: Weights = { ...parts, ...taughtInParts(all, (i) => halfOf(i) !== half), readings: untaught }
    return lessons
      .filter((_, i) => halfOf(i) === half)
      .filter((_, i) => i % every === 0)
      .flatMap((it) => readingChoiceOf(it, by))
  })
  return { ...parts, readings: weighed(readings, true, pace.few)[any] ?? {} }
}

/** What is learned from, and what is made of it once for the whole and its halves. */
interface Schooling {
  readonly lessons: readonly Lesson[]
  readonly ofKinds: readonly KindLesson[]
  readonly binding: BindLessons
}

// Turns of one talk, and sentences written in one go, stay together.
const block = 20
const halfOf = (at: number): number => Math.floor(at / block) % 2
// Fewer are enough for a dozen weights.
const every = 2
// The order in which readings are tried does not matter while they are learned.
const untaught = { asked: 100 }

/** The readings that a lesson could have, and which calculation is the right one. */
function readingChoiceOf({ looked, calculation }: Lesson, by: Weights): Choice[] {
  const readings = readingsOf(looked, by)
  const right = readings.findIndex((it) => it.calculation === calculation)
  return right < 0 ? [] : [{ right, options: readings.map((it) => [ofAny(it.features)]) }]
}

/** What those of the lessons teach that are taken. */
function taughtInParts(
  { lessons: all, ofKinds, binding }: Schooling,
  isTaken: (at: number) => boolean,
): Omit<Weights, 'readings' | 'walks'> {
  const taken = all.flatMap((_, i) => (isTaken(i) ? [i] : []))
  const lessons = taken.map((it) => all[it] as Lesson)
  const saying = new Set(lessons.flatMap((it) => it.saying))
  return {
    asks: taughtAsks(lessons.map(({ looked, calculation }) => ({ looked, label: calculation.name }))),
    results: weighed(lessons.flatMap(resultChoicesOf)),
    ...taughtBinds(binding, taken),
    choices: weighed(lessons.flatMap((it) => optionChoicesOf(it, saying))),
    kinds: weighed(
      ofKinds
        .filter((_, i) => isTaken(i))
        .map(({ looked, kind }) => {
          const names = kindFeatures(looked)
          return { options: kinds.map((label) => [{ label, names }]), right: kinds.indexOf(kind) }
        }),
      false,
      pace.sure,
    ),
  }
}

function taughtWalks(walks: readonly WalkLesson[], others: readonly Pick<Lesson, 'looked'>[]): WalkWeights {
  const seen = new Map<string, Set<string>>()
  for (const { looked, tags } of walks)
    for (const [at, token] of looked.message.entries()) {
      const shape = shapeOfToken(token)
      seen.set(shape, (seen.get(shape) ?? new Set([untagged])).add(tags[at] as string))
    }
  const able: WalkWeights['seen'] = Object.fromEntries(
    [...seen].sort(([a], [b]) => (a < b ? -1 : 1)).map(([shape, tags]) => [shape, [...tags].sort()]),
  )
  const results = [...new Set(walks.flatMap((it) => it.asks))].sort()
  return {
    seen: able,
    tags: weighed(
      walks.flatMap(({ looked, tags }) => {
        let behind = beginning
        return looked.message.flatMap((token, at): Choice[] => {
          const of = tagsFor(able, looked.message, at)
          const names = [...standingOf(looked, at), ...behindOf(token, behind)]
          const right = of.indexOf(tags[at] as string)
          behind = passing(behind, token, tags[at] as string)
          return of.length < 2 || right < 0 ? [] : [{ right, options: of.map((label) => [{ label, names }]) }]
        })
      }),
      false,
      pace.sure,
    ),
    asks: weighed(
      [
        ...walks.flatMap(({ looked, asks, tags }) => [
          ...results.map((it) => yesOrNo(looked, it, asks.includes(it))),
          ...(tags.includes('runLength') || tags.includes('stretch') ? [yesOrNo(looked, 'fence', true)] : []),
        ]),
        ...others.map(({ looked }) => yesOrNo(looked, 'fence', false)),
      ],
      true,
      pace.sure,
    ),
  }
}

// “60, 40 and 60 ft round two corners” may be a fence side by side, or the sum of one line.
const tellsNoSides = ({ calculation }: Lesson): boolean => calculation.needs.fenceSides === undefined
const isOfNoSum = ({ kind }: KindLesson): boolean => kind !== 'sum' && kind !== 'told'

const yesOrNo = (looked: Looked, label: string, isSo: boolean): Choice => ({
  right: isSo ? 1 : 0,
  options: [[], [{ label, names: askedFeatures(looked) }]],
})

/** A choice with its features by number, so that going through all of them many times is quick. */
interface Row {
  readonly right: number
  readonly options: readonly { readonly features: Int32Array; readonly values: Float64Array }[]
}

/** The choices with their features by number, and the label and name of each number. */
function numbered(choices: readonly Choice[]): { rows: Row[]; features: (readonly [string, string])[] } {
  // What stood around a word when it was meant teaches; all that it ever stood beside without would only be learned by heart.
  const seen = new Map<string, Map<string, number>>()
  for (const { options, right } of choices)
    for (const { label, names } of options[right] ?? []) {
      const own = seen.get(label) ?? new Map<string, number>()
      seen.set(label, own)
      for (const name of names) own.set(name, (own.get(name) ?? 0) + 1)
    }
  const features: (readonly [string, string])[] = []
  const numbers = new Map<string, Map<string, number>>()
  for (const [label, own] of seen) {
    const known = new Map<string, number>()
    for (const [name, times] of own) if (times > 1) known.set(name, features.push([label, name]) - 1)
    numbers.set(label, known)
  }
  const rows = choices.map(({ options, right }) => ({
    right,
    options: options.map((groups) => {
      const known: number[] = []
      const measures: number[] = []
      for (const { label, names, values } of groups) {
        const own = numbers.get(label)
        if (own)
          for (const [i, name] of names.entries()) {
            const at = own.get(name)
            if (at === undefined) continue
            known.push(at)
            measures.push(values?.[i] ?? 1)
          }
      }
      return { features: Int32Array.from(known), values: Float64Array.from(measures) }
    }),
  }))
  return { rows, features }
}

// The first step of a weight.
const rate = 0.25

function weighed(choices: readonly Choice[], isFew = false, { rounds, draw } = pace.usual as Pace): Table {
  const { rows, features: all } = numbered(choices)
  const weights = new Float64Array(all.length)
  const squares = new Float64Array(all.length)
  const stepped = new Uint8Array(all.length)
  const step = (at: number, gradient: number): void => {
    const now = weights[at] as number
    const full = gradient - draw * now
    const square = (squares[at] as number) + full * full
    squares[at] = square
    weights[at] = now + (rate * full) / Math.sqrt(square + 1e-6)
    stepped[at] = 1
  }
  for (let round = 0; round < rounds; round++)
    for (const { options, right } of rows) {
      const share = normal(options.map((it) => sumOf(it, weights)))
      for (const [i, { features, values }] of options.entries()) {
        const error = (i === right ? 1 : 0) - Math.exp(share[i] as number)
        if (Math.abs(error) > 1e-4)
          for (let j = 0; j < features.length; j++) step(features[j] as number, error * (values[j] as number))
      }
    }
  const table: Record<string, Record<string, number>> = {}
  const kept = all.map(([label, name], at) => ({ label, name, weight: weights[at] as number, at }))
  kept.sort((a, b) => (a.label === b.label ? (a.name < b.name ? -1 : 1) : a.label < b.label ? -1 : 1))
  for (const { label, name, weight, at } of kept)
    if (stepped[at] === 1 && (isFew || Math.abs(weight) >= 0.15)) {
      table[label] ??= {}
      table[label][name] = Math.round(weight * 100)
    }
  return table
}

function sumOf({ features, values }: Row['options'][number], weights: Float64Array): number {
  let sum = 0
  for (let i = 0; i < features.length; i++) sum += (weights[features[i] as number] as number) * (values[i] as number)
  return sum
}
