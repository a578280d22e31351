// This file is about figures: a value of the engine, as other programs and the page are told it.
import {
  atNearestMark,
  exactText,
  type Firmness,
  isExact,
  isoDate,
  isList,
  isQuantity,
  numberIn,
  type Quantity,
  type Role,
  show,
  type Value,
  type Word,
} from '../engine/index.ts'
import type { Figure } from './answer.ts'

export interface FigureOf {
  readonly ref: string
  readonly word: Pick<Word, 'name' | 'label' | 'options' | 'says'>
  readonly at: string
  readonly value: Value
  readonly role: Role
  /** The role of each value of a list, where they are not the same. */
  readonly roles?: readonly Role[]
  readonly headline?: boolean
  readonly roundedUp?: boolean
  readonly firmness?: Firmness
}

/** One figure; for a list, the figure of its first value with the text of all (use `figuresOf` for one of each). */
export function figureOf(it: FigureOf): Figure {
  const { ref, word, at, value, role, headline = false } = it
  const base = { ref, word: word.name, at, label: word.label, role, headline }
  if (isList(value)) return { ...figureOf({ ...it, value: value[0] as Quantity }), text: value.map(show).join('; ') }
  if (isQuantity(value)) {
    const exact = exactText(value)
    const marked = role === 'result' ? atNearestMark(value) : undefined
    return {
      ...base,
      value: value.kind === 'date' ? isoDate(value) : numberIn(value, value.unit),
      unit: value.unit,
      text: show(value),
      kind: kindOf(value, it),
      ...(exact?.includes('/') ? { exact } : {}),
      ...(marked ? { byTape: { value: numberIn(marked, value.unit), text: show(marked) } } : {}),
    }
  }
  if (typeof value === 'string')
    return { ...base, value, unit: 'choice', text: word.options?.[value]?.label ?? value, kind: 'exact' }
  return { ...base, value, unit: 'verdict', text: verdictText(word, value), kind: 'exact' }
}

export const verdictText = (word: Pick<Word, 'says'>, value: boolean | null): string =>
  value === null ? (word.says?.unknown ?? 'cannot say') : value ? (word.says?.yes ?? 'yes') : (word.says?.no ?? 'no')

/** A figure for each place of a list. */
export function figuresOf(it: FigureOf, places: readonly string[]): Figure[] {
  if (!isList(it.value)) return [figureOf(it)]
  const byPlace = places.length === it.value.length && places.length > 1
  return it.value.map((value, i) =>
    byPlace
      ? figureOf({
          ...it,
          value,
          role: it.roles?.[i] ?? it.role,
          at: places[i] as string,
          ref: `${it.ref}@${places[i]}`,
        })
      : figureOf({ ...it, value, ref: `${it.ref}@${i + 1}` }),
  )
}

function kindOf(q: Quantity, { firmness, roundedUp }: FigureOf): Figure['kind'] {
  if (roundedUp) return 'rounded-up'
  if (firmness === 'at-most' || firmness === 'less-than') return 'at-most'
  if (firmness === 'at-least' || firmness === 'more-than') return 'at-least'
  if (firmness === 'range') return 'range'
  return firmness === 'about' || !isExact(q.amount) ? 'about' : 'exact'
}
