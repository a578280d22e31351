// This file is about which advice a message calls for: the note whose words are all in one of its sentences.
import { notes } from '../../../engine/index.ts'
import { stem, type Token } from './stems.ts'

interface Key {
  readonly note: string
  readonly groups: readonly ReadonlySet<string>[]
}

const keys: readonly Key[] = notes.flatMap((note) =>
  note.called.map((line) => ({
    note: note.name,
    groups: line.split(' ').map((group) => new Set(group.split('|').map(stem))),
  })),
)

/** The lines that each word stands in. */
const holders = new Map<string, Key[]>()
for (const key of keys)
  for (const word of new Set(key.groups.flatMap((group) => [...group])))
    holders.set(word, [...(holders.get(word) ?? []), key])

/** How much a word says: one that few lines hold says the most. */
const says = (group: ReadonlySet<string>): number => {
  const holding = new Set([...group].flatMap((word) => holders.get(word) ?? []))
  return Math.log((keys.length + 1) / Math.max(1, holding.size))
}

const worth = new Map(keys.map((key) => [key, key.groups.reduce((sum, group) => sum + 1 + says(group), 0)]))

export interface Called {
  readonly note: string
  /** How many of the message's words call for it. */
  readonly words: number
}

/** The best note of each sentence, in order. */
export function notesIn(message: readonly Token[]): Called[] {
  const found = sentencesOf(message).flatMap((sentence) => bestFor(sentence))
  // What a message says in two sentences may call for a note that neither calls for alone.
  const all = found.length > 0 ? found : bestFor(message)
  return all.filter((it, i) => all.findIndex((other) => other.note === it.note) === i)
}

function bestFor(sentence: readonly Token[]): Called[] {
  const words = new Set(sentence.flatMap(wordsOf))
  const holding = keys.filter(({ groups }) => groups.every((group) => [...group].some((word) => words.has(word))))
  const [best] = [...holding].sort((a, b) => (worth.get(b) ?? 0) - (worth.get(a) ?? 0))
  return best ? [{ note: best.note, words: best.groups.length }] : []
}

/** The notes that a message comes near to, the nearest first: for a reader that understands more than words. */
export function notesNear(message: readonly Token[], most: number): string[] {
  const words = new Set(message.flatMap(wordsOf))
  const near = keys
    .map((key) => {
      const met = key.groups.filter((group) => [...group].some((word) => words.has(word)))
      return {
        note: key.note,
        met: met.length,
        share: met.length / key.groups.length,
        worth: met.reduce((sum, it) => sum + says(it), 0),
      }
    })
    .filter((it) => it.met >= 2 || it.share === 1)
    .sort((a, b) => b.share - a.share || b.worth - a.worth)
  return [...new Set(near.map((it) => it.note))].slice(0, most)
}

/** As it was typed, too: “storm” is forgiven to “story”, which the sums know. A bare number is its words: “two or three” rails. */
const wordsOf = (token: Token): string[] => [
  token.stem,
  ...(token.tag && !token.measured ? token.text.split(' ') : [token.text]).map(stem),
]

function sentencesOf(message: readonly Token[]): Token[][] {
  const sentences: Token[][] = [[]]
  for (const token of message) {
    if (/^[.;?!\n]$/.test(token.text)) sentences.push([])
    else sentences.at(-1)?.push(token)
  }
  return sentences.filter((it) => it.length > 0)
}
