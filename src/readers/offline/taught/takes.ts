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

const mustBe = new WeakMap<Calculation, readonly Word[]>()
/** The words that a calculation must be told for what is asked of it first. */
export function mustBeTold(calculation: Calculation): readonly Word[] {
  const found =
    mustBe.get(calculation) ??
    needsFor(calculation, calculation.headlines).filter((it) => !usualFor(calculation, it) && it.kind !== 'choice')
  mustBe.set(calculation, found)
  return found
}

/** Those of them that neither a person nor another calculation has given. */
export const lackingFor = (calculation: Calculation, has: ReadonlySet<string>): Word[] =>
  mustBeTold(calculation).filter((it) => !has.has(it.name) && !isFed(it.name, has))
