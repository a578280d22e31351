// This file is about what each calculation could be told, and what that is to the weights: it hangs on the catalogue and the weights alone, and is worked once.
import { type Calculation, needsFor, usualFor, vocabulary, type Word } from '../../../../engine/index.ts'
import { isFed, neededBehind } from '../feeds.ts'
import { followingOf } from './assign.ts'
import { any, scoreOf } from './table.ts'
import { standingFeatures, type Weights } from './weights.ts'

/** What a calculation could be told: its own words, and those of what may stand in for them. */
interface Takes {
  readonly words: readonly Word[]
  readonly names: ReadonlySet<string>
  readonly isList: readonly boolean[]
  /** How far each stands behind the calculation’s own. */
  readonly behind: readonly number[]
  /** What speaks for each, whatever the quantity is. */
  readonly standing: readonly number[]
  /** How well each follows each other one. */
  readonly after: (before: number, after: number) => number
}

/** A word that belongs to what stands behind, for each step: in logarithms, as all scores. */
export const eachBehind = -3
const farthest = 2

const takenBy = new WeakMap<Weights, Map<Calculation, Takes>>()
export function takes(calculation: Calculation, by: Weights): Takes {
  const known = takenBy.get(by) ?? new Map<Calculation, Takes>()
  takenBy.set(by, known)
  const found = known.get(calculation) ?? takesAnew(calculation, by)
  known.set(calculation, found)
  return found
}

function takesAnew(calculation: Calculation, { binds, follows }: Weights): Takes {
  const told = [...neededBehind(new Set(Object.keys(calculation.needs)))].flatMap(([name, behind]) => {
    const word = vocabulary.get(name) as Word
    const isTold = word.kind !== 'choice' && word.kind !== 'verdict' && !word.unsaid
    return isTold && behind <= farthest ? [{ word: calculation.needs[name] ?? word, behind }] : []
  })
  const words = told.map((it) => it.word)
  return {
    words,
    names: new Set(words.map((it) => it.name)),
    isList: words.map((it) => it.list === true),
    behind: told.map((it) => it.behind),
    standing: told.map(({ word, behind }) =>
      behind > 0 ? behind * eachBehind : scoreOf(binds[any], standingFeatures(word, calculation)),
    ),
    after: followingOf(follows, words),
  }
}

const mustBe = new WeakMap<Calculation, Map<string, readonly Word[]>>()
/** The words that a calculation must be told for some of its results. */
export function mustBeTold(
  calculation: Calculation,
  results: readonly string[] = calculation.headlines,
): readonly Word[] {
  const known = mustBe.get(calculation) ?? new Map<string, readonly Word[]>()
  mustBe.set(calculation, known)
  const key = results.join()
  const found =
    known.get(key) ?? needsFor(calculation, results).filter((it) => !usualFor(calculation, it) && it.kind !== 'choice')
  known.set(key, found)
  return found
}

/** Those that neither a person nor another calculation has given: of several results those of the one that lacks the fewest. */
export function lackingFor(
  calculation: Calculation,
  has: ReadonlySet<string>,
  results: readonly string[] = calculation.headlines,
): Word[] {
  const each = results.map((it) =>
    mustBeTold(calculation, [it]).filter((word) => !has.has(word.name) && !isFed(word.name, has)),
  )
  return each.reduce((least, it) => (it.length < least.length ? it : least))
}
