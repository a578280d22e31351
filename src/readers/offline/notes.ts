// This file is about which advice a message calls for: the note whose words are all in one of its sentences.
import { noteNamed, notes } from '../../../engine/index.ts'
import { groupedBy } from './phrases.ts'
import { filler, sentencesOf, stem, type Token, tokens } from './stems.ts'

/** Whether a note answers alone what sounds like a question for a figure. */
export const settles = (name: string): boolean => noteNamed(name)?.settles === true

interface Key {
  readonly note: string
  readonly groups: readonly ReadonlySet<string>[]
  readonly place: number
}

const keys: readonly Key[] = notes
  .flatMap((note) => note.called.map((line) => ({ note: note.name, line })))
  .map(({ note, line }, place) => ({
    note,
    groups: line.split(' ').map((group) => new Set(group.split('|').map(stem))),
    place,
  }))

/** The lines by the words of their first group. What has gone wrong is found by its own topics (./emergencies.ts); here it is only near at hand for whoever understands more. */
const begun = groupedBy(
  keys.filter((it) => !noteNamed(it.note)?.emergency),
  ({ groups }) => groups[0] ?? [],
)

/** The lines that each word stands in. */
const holders = groupedBy(keys, ({ groups }) => new Set(groups.flatMap((group) => [...group])))

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
  /** Its sentence holds one quantity at most: it is a question of its own beside a sum. */
  readonly isApart: boolean
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
  const holding = [...new Set([...words].flatMap((word) => begun.get(word) ?? []))].filter(({ groups }) =>
    groups.every((group) => [...group].some((word) => words.has(word))),
  )
  const [best] = holding.sort((a, b) => (worth.get(b) ?? 0) - (worth.get(a) ?? 0) || a.place - b.place)
  return best
    ? [{ note: best.note, words: best.groups.length, isApart: sentence.filter((it) => it.measured).length <= 1 }]
    : []
}

/** The notes that a message comes near to, the nearest first: for a reader that understands more than words. */
export const notesNear = (message: readonly Token[], most: number): string[] =>
  byNearness(message)
    .filter((it) => it.covers >= far)
    .slice(0, most)
    .map((it) => it.note)

/** Where no line of a note is met whole: the one note that most of what the message speaks of belongs to, and whether it is surely meant. */
export function nearestNote(
  message: readonly Token[],
): { readonly note: string; readonly isSure: boolean } | undefined {
  const [best, next] = byNearness(message).filter((it) => !noteNamed(it.note)?.emergency)
  if (!best || best.covers < enough.covers || best.worth < enough.worth) return undefined
  // Two that are as near as each other are both a guess.
  if (next && next.worth > best.worth * 0.9) return undefined
  return { note: best.note, isSure: best.covers >= surely.covers && best.worth >= surely.worth }
}

/** Nearer than this is worth naming to a reader that understands more. */
const far = 0.45
// Found by trying sixty questions for advice and thirty of other trades.
const enough = { covers: 0.5, worth: 4.4 }
const surely = { covers: 0.85, worth: 5.5 }

/** How much a word of a note stands for it: its title and its questions are what it is about, its text only speaks of it. */
const share = { title: 1, asks: 1, called: 0.8, text: 0.5 } as const

const meaningful = (text: string): string[] =>
  tokens(text)
    .map((it) => it.stem)
    .filter((it) => /\p{L}/u.test(it) && !filler.has(it) && !empty.has(it))

const empty = new Set(
  'how what which when where why who or and not no yes by in on at to with from than then so as up out off its has had very too some any one two get go make way best good better ok okay thing use using if'
    .split(' ')
    .map(stem),
)

interface Index {
  readonly names: readonly string[]
  /** For each word the notes that speak of it, by their place, and how much it stands for each. */
  readonly spoken: ReadonlyMap<string, readonly (readonly [number, number])[]>
  /** How rare each word is among them, in logarithms; one that is only spoken of counts little. */
  readonly rarity: (word: string) => number
}

let made: Index | undefined
/** Made when it is first looked at: a start need not wait for it. */
function index(): Index {
  if (made) return made
  const spoken = new Map<string, [number, number][]>()
  notes.forEach(({ title, asks, called, text }, at) => {
    const words = new Map<string, number>()
    const put = (part: string, weight: number): void => {
      for (const word of meaningful(part)) words.set(word, Math.max(words.get(word) ?? 0, weight))
    }
    put(title, share.title)
    put(asks.join('. '), share.asks)
    put(called.join(' ').replaceAll('|', ' '), share.called)
    put(text.replace(/\{\{\w+\}\}/g, ''), share.text)
    for (const [word, weight] of words) spoken.set(word, [...(spoken.get(word) ?? []), [at, weight]])
  })
  const rarities = new Map(
    [...spoken].map(([word, by]) => {
      const spread = by.reduce((sum, [, weight]) => sum + (weight > share.text ? 1 : 0.3), 0)
      return [word, Math.log((notes.length + 1) / spread)]
    }),
  )
  const unheard = Math.log((notes.length + 1) / 0.5)
  made = { names: notes.map((it) => it.name), spoken, rarity: (word) => rarities.get(word) ?? unheard }
  return made
}

function byNearness(message: readonly Token[]): { note: string; worth: number; covers: number }[] {
  const { names, spoken, rarity } = index()
  const words = [...new Set(message.flatMap((token) => wordsOf(token).flatMap(meaningful)))]
  const whole = words.reduce((sum, word) => sum + rarity(word), 0)
  const worth = names.map(() => 0)
  for (const word of words)
    for (const [at, weight] of spoken.get(word) ?? []) worth[at] = (worth[at] as number) + weight * rarity(word)
  return names
    .map((note, at) => ({ note, worth: worth[at] as number, covers: whole > 0 ? (worth[at] as number) / whole : 0 }))
    .sort((a, b) => b.worth - a.worth)
}

/** As it was typed, too: “storm” is forgiven to “story”, which the sums know. A bare number is its words: “two or three” rails. */
const wordsOf = (token: Token): string[] => [
  token.stem,
  ...(token.tag && !token.measured ? token.text.split(' ') : [token.text]).map(stem),
  // “811 in Ontario” was read as inches, and “a 12 year old” as a time.
  ...(token.measured
    ? token.text
        .split(/[ -]/)
        .filter((it) => /^(?:811|years?)$/.test(it))
        .map(stem)
    : []),
]

/** What a note says in all, as words with how often they stand there; its title and its questions count threefold. */
const saidIn = new Map(
  notes
    .filter((it) => !it.emergency)
    .map((note) => {
      const counts = new Map<string, number>()
      const count = (text: string, times: number): void => {
        for (const token of tokens(text)) {
          if (filler.has(token.stem) || !/^\p{L}/u.test(token.text)) continue
          counts.set(token.stem, (counts.get(token.stem) ?? 0) + times)
        }
      }
      // A word of many questions is no more the note’s than one of two.
      count([note.title, ...new Set(note.asks.flatMap((it) => tokens(it).map((word) => word.text)))].join(' '), 3)
      for (const line of note.called) count(line.replaceAll('|', ' '), 1)
      count(note.text, 1)
      return [note.name, counts] as const
    }),
)
const rarity = new Map<string, number>()
for (const counts of saidIn.values()) for (const word of counts.keys()) rarity.set(word, (rarity.get(word) ?? 0) + 1)
const rare = (word: string): number => Math.log((saidIn.size + 1) / (rarity.get(word) ?? saidIn.size + 1))
const lengths = new Map(
  [...saidIn].map(([name, counts]) => [
    name,
    Math.hypot(...[...counts].map(([word, count]) => (1 + Math.log(count)) * rare(word))),
  ]),
)
// Below this the note has little more than one rare word in common with the message.
const alikeEnough = 0.16

/** How like each note is to the message, by the words they share, rare ones counting most (the cosine of their word vectors). */
export function likenesses(message: readonly Token[]): ReadonlyMap<string, number> {
  const words = new Set(message.filter((it) => !it.tag && /^\p{L}/u.test(it.text)).map((it) => it.stem))
  const mine = [...words].filter((it) => !filler.has(it)).map((it) => [it, rare(it)] as const)
  const length = Math.hypot(...mine.map(([, weight]) => weight))
  return new Map(
    [...saidIn].map(([name, counts]) => {
      const shared = mine.reduce((sum, [word, weight]) => {
        const count = counts.get(word)
        return count ? sum + weight * (1 + Math.log(count)) * weight : sum
      }, 0)
      return [name, shared / Math.max(1e-9, length * (lengths.get(name) as number))]
    }),
  )
}

/** The note that is most like the message. */
export function likestNote(message: readonly Token[]): string | undefined {
  const [name, likeness] = [...likenesses(message)].reduce((a, b) => (b[1] > a[1] ? b : a))
  return likeness >= alikeEnough ? name : undefined
}
