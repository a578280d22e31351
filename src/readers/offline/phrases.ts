// This file is about finding phrases of one word or several in a message, in whatever form they were typed.
import { stem, type Token } from './stems.ts'

/** Whatever is looked for, by the word that it is found by. */
export function groupedBy<T>(all: Iterable<T>, words: (it: T) => Iterable<string>): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>()
  for (const it of all)
    for (const word of words(it)) {
      const own = groups.get(word)
      if (own) own.push(it)
      else groups.set(word, [it])
    }
  return groups
}

/** Every form of each word of a message: as it was typed, and as it was forgiven. */
export type Words = readonly (readonly string[])[]
export const wordsOf = (message: readonly Token[]): Words =>
  message.map((token) => [...new Set([stem(token.text), token.stem])])

/** Phrases by their first word. */
export type Phrases = ReadonlyMap<string, readonly (readonly string[])[]>
export function phrasesOf(texts: readonly string[]): Phrases {
  const found = new Map<string, string[][]>()
  for (const text of texts) {
    const phrase = text.split(/[ -]/).map(stem)
    const first = phrase[0] as string
    found.set(first, [...(found.get(first) ?? []), phrase])
  }
  return found
}

/** How many words the phrase that begins there has; nought when none does. */
export function lengthAt(phrases: Phrases, words: Words, at: number): number {
  for (const first of words[at] ?? [])
    for (const phrase of phrases.get(first) ?? [])
      if (phrase.every((word, i) => words[at + i]?.includes(word))) return phrase.length
  return 0
}

const sentenceEnd = /^[.;?!\n]$/

/** Whether one of the phrases stands in the sentence of that word. */
export function isInSentence(phrases: Phrases, words: Words, at: number): boolean {
  let from = at
  while (from > 0 && !sentenceEnd.test(words[from - 1]?.[0] ?? '')) from--
  for (let i = from; i < words.length && !(i > at && sentenceEnd.test(words[i]?.[0] ?? '')); i++)
    if (lengthAt(phrases, words, i) > 0) return true
  return false
}

/** “a, b c, d” as a list. */
export const list = (phrases: string): string[] => phrases.split(/,\s*/).map((it) => it.trim())
/** Every one of the first before every one of the second. */
export const pairs = (first: readonly string[], second: readonly string[]): string[] =>
  first.flatMap((a) => second.map((b) => `${a} ${b}`))
