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
import { type Choice, pace, thereFor, weighed } from './log-linear.ts'
import { any } from './table.ts'
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

/** For each choice of a lesson's calculation, what could be said of it. Only words that say an option somewhere may speak for one. */
const optionChoicesOf = ({ looked, calculation, options: said }: Lesson, saying: ReadonlySet<string>): Choice[] =>
  Object.values(calculation.needs)
    .filter((it) => it.kind === 'choice')
    .map((word) => {
      const options = [undefined, ...Object.keys(word.options ?? {})]
      const features = choiceFeatures(looked, word, saying)
      return {
        options: options.map((it) => ({
          there: [{ label: optionLabel(word, it), names: features }],
          ofAny: namesOption(looked, word, it) ? [['option', 1]] : [],
        })),
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
      options: options.map((it) => ({
        there: resultLabels(it).map((label) => ({ label, names })),
        ofAny: resultFeatures(looked, calculation, it),
      })),
      right: options.findIndex((it) => it?.name === right),
    }
  })
}

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
  return right < 0 ? [] : [{ right, options: readings.map((it) => ({ there: [], ofAny: it.features })) }]
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
          return { options: kinds.map((label) => thereFor(label, names)), right: kinds.indexOf(kind) }
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
          return of.length < 2 || right < 0 ? [] : [{ right, options: of.map((label) => thereFor(label, names)) }]
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
  options: [{ there: [], ofAny: [] }, thereFor(label, askedFeatures(looked))],
})
