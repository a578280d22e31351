// This file is about rows: “44, 47, 51, 46 and 42 inches, all 24 in the ground”. What stands between commas is of one list, and what stands apart is not.
import { type Calculation, type Word, vocabulary } from '../../../engine/index.ts'
import type { Tagged } from '../reader.ts'
import type { Token } from './stems.ts'

interface Of {
  readonly reading: Tagged
  readonly word: string
  readonly sure: number
}

const shortest = 3

/** The quantities that nothing but commas and “and” joins, three or more. */
function rowsIn(message: readonly Token[]): Tagged[][] {
  const rows: Tagged[][] = [[]]
  for (const { reading, text } of message)
    if (reading) rows.at(-1)?.push(reading)
    else if (!/^(,|and|&)$/i.test(text)) rows.push([])
  return rows.filter((it) => it.length >= shortest)
}

/**
 * The same bindings with every row whole: the list that most of a row is of takes all of it.
 * What that list had taken elsewhere goes to the one word that is still lacking, if there is just one that it can be; else it is left over.
 */
export function withWholeRows<T extends Of>(
  message: readonly Token[],
  bound: readonly T[],
  calculation: Calculation,
  lacking: (without: readonly T[]) => readonly Word[],
  canBe: (word: Word, reading: Tagged) => boolean,
): T[] {
  let all = [...bound]
  for (const row of rowsIn(message)) {
    const listed = all.filter((it) => row.includes(it.reading) && vocabulary.get(it.word)?.list)
    const word = calculation.needs[mostSaid(listed) ?? '']
    // A value among the others is as sure as the surest of them.
    const model = listed.filter((it) => it.word === word?.name).sort((a, b) => b.sure - a.sure)[0]
    if (!word || !model || listed.length * 2 <= row.length || !row.every((it) => canBe(word, it))) continue
    const away = all.filter((it) => it.word === word.name && !row.includes(it.reading))
    const kept = all.filter((it) => it.word !== word.name && !row.includes(it.reading))
    const whole = [...kept, ...row.map((reading) => ({ ...model, reading }))]
    const moved = away.flatMap((it) => {
      const [only, more] = lacking(whole).filter((other) => canBe(other, it.reading))
      return away.length === 1 && only && !more ? [{ ...it, word: only.name }] : []
    })
    all = [...whole, ...moved]
  }
  return all
}

/** The word of most of them. */
function mostSaid(bound: readonly Of[]): string | undefined {
  const counts = new Map<string, number>()
  for (const { word } of bound) counts.set(word, (counts.get(word) ?? 0) + 1)
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0]
}
