// This file is about which words a model may use: plain English, the vocabulary's own, and what the person said.
import { catalogue, vocabulary } from '../../engine/index.ts'
import { folded } from './form.ts'
import { plainWords } from './plain-words.ts'
import { isNearNumber, isNumberWord } from './words.ts'

/** The words of what the program asks and answers, as it calls them; put together when first needed. */
let vocabularyWords: ReadonlySet<string> | undefined
const ofVocabulary = (): ReadonlySet<string> => {
  vocabularyWords ??= new Set(
    [
      ...[...vocabulary.values()].flatMap((it) => [it.label, ...(it.called.names ?? []), ...(it.called.things ?? [])]),
      ...catalogue.map((it) => it.title),
    ]
      .flatMap((text) => lettersOf(text))
      .filter((word) => !isNearNumber(word)),
  )
  return vocabularyWords
}

const lettersOf = (text: string): string[] => folded(text).match(/\p{L}+(?:'\p{L}+)?/gu) ?? []

/** The person's own words: what they call things may be said back, but for whatever comes near a number. */
export const wordsSaid = (texts: readonly string[]): ReadonlySet<string> =>
  new Set(texts.flatMap(lettersOf).filter((word) => word.length > 2 && !isNearNumber(word)))

/** The first word that is none of those. */
export const unknownWord = (piece: string, said: ReadonlySet<string>): string | undefined =>
  (piece.match(/[\p{L}\p{M}]+/gu) ?? []).find((word) => hasMarks.test(word) && !said.has(folded(word))) ??
  lettersOf(piece).find((word) => !isKnown(word, said))

/** Plain English has no letter beyond the alphabet: “beş” is no “bes”. */
const hasMarks = /[^a-z]/i

function isKnown(word: string, said: ReadonlySet<string>): boolean {
  if (said.has(word) || plainWords.has(word)) return true
  // Whether a number word may stand is another rule's to say.
  if (isNumberWord(word) || alsoKnown.has(word)) return true
  const bare = word.replace(/n't$|'(?:s|re|ll|ve|d|m)?$/, '')
  return basesOf(bare).some((it) => plainWords.has(it) || ofVocabulary().has(it))
}

const alsoKnown = new Set(["won't", "can't", 'mc', 'cd', 'cm', 'mdf'])

const endings: readonly (readonly [ending: string, ...instead: string[]])[] = [
  ['ies', 'y'],
  ['es', '', 'e'],
  ['s', ''],
  ['ied', 'y'],
  ['ed', '', 'e'],
  ['ing', '', 'e'],
  ['ier', 'y'],
  ['er', '', 'e'],
  ['iest', 'y'],
  ['est', '', 'e'],
  ['ily', 'y'],
  ['ly', '', 'le'],
]
const doubles = new Set(['ed', 'ing', 'er', 'est'])

/** A word, and what it may be a form of: trimming → trim, stakes → stake, evenly → even. */
function basesOf(word: string): string[] {
  const bases = [word]
  for (const [ending, ...instead] of endings) {
    if (!word.endsWith(ending) || word.length < ending.length + 2) continue
    const stem = word.slice(0, -ending.length)
    bases.push(...instead.map((it) => stem + it))
    if (doubles.has(ending) && stem.at(-1) === stem.at(-2)) bases.push(stem.slice(0, -1))
  }
  return [
    ...bases,
    ...bases.filter((it) => /^(?:un|re|pre)\p{L}{3}/u.test(it)).map((it) => it.replace(/^(?:un|re|pre)/, '')),
  ]
}
