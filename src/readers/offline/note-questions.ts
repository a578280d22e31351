// This file is about the notes' own questions: which of them a message is most like, also one that only goes on with what the talk is about.
import { notes } from '../../../engine/index.ts'
import type { Talked } from './taught/talked.ts'
import { forgiven } from './lexicon.ts'
import { likenesses, notesIn } from './notes.ts'
import { namesOf } from './taught/features.ts'
import { sentencesOf, type Token, tokens } from './stems.ts'

/** The note whose question a message is most like. */
interface Alike {
  readonly note: string
  /** From nought to one, which is the very same words. */
  readonly likeness: number
  /** Only what the talk is about says what it means: “which corner does it start from”. */
  readonly isOnward: boolean
}

/** A question as how much each of its words counts, and how much all of them do. */
interface Question {
  readonly note: string
  /** The calculations that the talk must be about; none where it is asked out of the blue. */
  readonly after: ReadonlySet<string> | undefined
  readonly words: readonly string[]
}

/** What people say in other words, and mean the same by. */
const sames: ReadonlyMap<string, string> = new Map(
  [
    'rock boulder ledge bedrock',
    'cold freez frost frozen',
    'ok okay fine alright grand right bad harm',
    'good use us worth help point better work',
    'lean tilt crook',
    'fix mend repair',
    'dampen wet damp soak',
    'start begin',
    'neighbor neighbour',
    'cause make why',
    'around round past',
    'bottom foot below beneath underneath under',
    'ground earth grass lawn',
    'touch against meet',
    'matter difference trouble',
    'end tip',
    'store keep',
    'protect preserv stop prevent',
    'cable wire line',
    'fence fencing',
    'sloping slope hill',
    'look looks nicer prettier best better',
  ].flatMap((line) => {
    const names = line.split(' ')
    return names.map((it) => [it, `~${names[0]}`] as const)
  }),
)

/** “Digging”, “dug” is another word, “digs” and “dig” are one; “raking” is “rake”. */
const rooted = (word: string): string => {
  const bare = word.length > 4 ? word.replace(/(?:ing|ed)$/, '') : word
  if (bare === word || bare.length < 3) return word.length > 4 ? word.replace(/e$/, '') : word
  return bare.replace(/([bdgklmnprt])\1$/, '$1').replace(/e$/, '')
}

/** Its words, each thing by one name, and each two that follow one another. */
function wordsOf(message: readonly Token[]): string[] {
  const words = message
    .filter((it) => !/^[.,;:!?\n]$/.test(it.text))
    // “Ten years”, “one of them” are words of the question, and no sizes.
    .flatMap((it) => (it.tag && !/\d/.test(it.text) ? tokens(it.text) : [it]))
    .map((it) => {
      const names = namesOf(it)
      const [own = ''] = names
      if (own.startsWith('<')) return own
      return names[1] ?? sames.get(rooted(own)) ?? rooted(own)
    })
  return [...new Set([...words, ...words.slice(1).map((it, i) => `${words[i]} ${it}`)])]
}

interface Asked {
  readonly questions: readonly Question[]
  readonly rarity: ReadonlyMap<string, number>
  readonly most: number
}

let made: Asked | undefined
/** Made when it is first looked at: a start need not wait for it. */
function asked(): Asked {
  if (made) return made
  const questions = notes
    .filter((it) => !it.emergency)
    .flatMap(({ name, asks, onward }): Question[] => [
      ...asks.map((it) => ({ note: name, after: undefined, words: wordsOf(tokens(it).map(forgiven)) })),
      ...(onward ?? []).flatMap(({ after, asks: later }) =>
        later.map((it) => ({ note: name, after: new Set(after), words: wordsOf(tokens(it).map(forgiven)) })),
      ),
    ])
  const holding = new Map<string, number>()
  for (const { words } of questions) for (const word of words) holding.set(word, (holding.get(word) ?? 0) + 1)
  const rarity = new Map([...holding].map(([word, by]) => [word, Math.log((questions.length + 1) / by)]))
  made = { questions, rarity, most: Math.log(questions.length + 1) }
  return made
}

/** Two words in a row count less than either alone: people put them in other orders. */
const inARow = 0.5

// What speaks for advice, in logarithms of odds: found by a logistic regression on the 24,600 taught messages with one size at most, each looked at by what
// the others taught.
const speaks = { itself: -0.1, likeness: 1.9, ofAdvice: 0.67, ofTold: -2.4, asksFigure: -2.2, size: -0.9, later: -1.7 }
/** So likely advice must be, and a note so like what is said: by a question of its own, by one that goes on with the talk, and where no word is of the trade. */
const enough = { odds: -0.2, plain: 0.3, onward: 0.25, outOfTheBlue: 0.55, same: 0.75, surely: 0.97 } as const

/** What the message is like besides its words. */
interface Manner {
  readonly ofAdvice: number
  readonly ofTold: number
  /** It asks for a figure by its name, or how much of something. */
  readonly asksFigure: boolean
  readonly isOfTheTrade: boolean
}

interface Advised {
  readonly notes: string[]
  /** Advice is likely to be asked for at all. */
  readonly isLikely: boolean
}

/** The sizes of a message: what is written in digits, and is no grade, as “H4” is. */
export const sizesIn = (message: readonly Token[]): number =>
  message.filter((it, i) => isSize(it, message[i - 1])).length

const isSize = ({ tag, text, start }: Token, before: Token | undefined): boolean =>
  tag !== undefined && /\d/.test(text) && before?.end !== start

/** The note that answers a message which asks for no figure, and whether it is likely to ask for advice; nothing where no note is like it. */
export function adviceOn(
  message: readonly Token[],
  { now, before }: Talked,
  { ofAdvice, ofTold, asksFigure, isOfTheTrade }: Manner,
): Advised | undefined {
  const sizes = sizesIn(message)
  // What holds several sizes is a sum, whatever it sounds like.
  if (sizes > 1) return undefined
  const talk = [...now, ...before]
  const sentences = sentencesOf(message)
  const isOut = talk.length === 0 && !isOfTheTrade
  const over = ({ likeness, isOnward }: Alike): number =>
    likeness - (isOut ? enough.outOfTheBlue : isOnward ? enough.onward : enough.plain)
  const [best] = [message, ...(sentences.length > 1 ? sentences : [])]
    .flatMap((it) => alikest(it, talk).slice(0, 1))
    .sort((a, b) => over(b) - over(a))
  if (!best || over(best) < 0) return undefined
  const odds =
    speaks.itself +
    speaks.likeness * best.likeness +
    speaks.ofAdvice * Math.log((ofAdvice + 1e-4) / (1 - ofAdvice + 1e-4)) +
    speaks.ofTold * ofTold +
    (asksFigure ? speaks.asksFigure : 0) +
    speaks.size * sizes +
    (talk.length > 0 ? speaks.later : 0)
  // A note whose words are all there is meant, unless this one’s very question is asked.
  const met = best.likeness >= enough.same ? [] : notesIn(message)
  return {
    notes: met.length > 0 ? met.map((it) => it.note) : [best.note],
    // “How far apart should posts be?” asks for a figure, unless a note’s very question is asked.
    isLikely: best.likeness >= enough.surely || (odds >= enough.odds && !asksFigure),
  }
}

/**
 * The notes whose questions the message is most like, the likest first: by the words they share with one question, rare ones counting most (the cosine of
 * their word vectors), and by those they share with all that is said of the note.
 */
function alikest(message: readonly Token[], talk: readonly string[]): Alike[] {
  const { questions, rarity, most } = asked()
  const counts = (word: string): number => ((rarity.get(word) ?? most) * (word.includes(' ') ? inARow : 1)) ** 2
  const lengthOf = (words: readonly string[]): number =>
    Math.sqrt(words.reduce((sum, it) => sum + (it.includes(' ') && !rarity.has(it) ? 0 : counts(it)), 0))
  const mine = new Set(wordsOf(message))
  const length = lengthOf([...mine])
  const found = new Map<string, Alike>()
  for (const { note, after, words } of questions) {
    if (after && !talk.some((it) => after.has(it))) continue
    const shared = words.reduce((sum, it) => sum + (mine.has(it) ? counts(it) : 0), 0)
    const likeness = shared / Math.max(1e-9, length * lengthOf(words))
    if (likeness > (found.get(note)?.likeness ?? 0)) found.set(note, { note, likeness, isOnward: after !== undefined })
  }
  const whole = likenesses(message)
  return [...found.values()]
    .map((it) => ({ ...it, likeness: it.likeness + ofWhole * (whole.get(it.note) ?? 0) }))
    .sort((a, b) => b.likeness - a.likeness)
}
// So much counts what is said of the note in all.
const ofWhole = 0.6
