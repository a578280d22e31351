// This file is about the vocabulary: the words of all calculations by their names, each once.
import type { Word } from './word.ts'

interface OfWords {
  readonly needs: Readonly<Record<string, Word>>
  readonly gives: Readonly<Record<string, Word>>
}

/** The words that stand by themselves and those of the calculations, by name. Two words of one name would be two meanings: refused here. */
export function wordsOf(alone: readonly Word[], calculations: readonly OfWords[]): ReadonlyMap<string, Word> {
  const words = new Map(alone.map((word) => [word.name, word] as const))
  for (const calc of calculations)
    for (const word of [...Object.values(calc.needs), ...Object.values(calc.gives)]) {
      const known = words.get(word.name)
      if (known && known !== word) throw new Error(`“${word.name}” is declared twice`)
      words.set(word.name, word)
    }
  return words
}
