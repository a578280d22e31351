// This file is about what cannot wait: something has just gone wrong, and only what to do now is of use.
// The notes it calls up (engine/notes/emergencies.ts) come before sums, questions, refusals and the limits of the trade.
import { noteNamed } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import { isInSentence, lengthAt, list, type Phrases, phrasesOf, type Words, wordsOf } from './phrases.ts'
import type { Token } from './stems.ts'
import { topicsOfLines } from './topics-of-lines.ts'
import { topicsOfPeople } from './topics-of-people.ts'

// “How do I avoid hitting”, “so I don’t hit”, “will I hit”: thought of, not happened. “I may have hit” has.
const notYet = new Set(
  list(
    'avoid, avoiding, without, prevent, preventing, never, not, of, from, about, might, could, would, will, can, may, should, shall, against',
  ),
)
const notI = new Set(
  list("don't, doesn't, not, never, can, could, may, should, do, does, will, would, might, must, shall, to"),
)
const subjects = new Set(list('i, we, you, it, he, she, they, somebody, someone'))
const adverbs = new Set(list('accidentally, ever, even, just, getting, being, be, get'))
const noiseOf = new Set(list('sound, noise, smell, lot, bit, because, whiff, out'))
const cameTo = new Set(list('managed, seem, seems, happened, appear, appears'))

function isOnlyThoughtOf(words: Words, at: number): boolean {
  const back = (n: number): string => words[at - n]?.[0] ?? ''
  const spares = (word: string): boolean => notYet.has(word) || word.endsWith("n't")
  if (back(1) === 'to') return !cameTo.has(back(2))
  if (back(1) === 'of') return !noiseOf.has(back(2))
  return (
    spares(back(1)) ||
    (subjects.has(back(1)) && (notI.has(back(2)) || (spares(back(2)) && back(2) !== 'of' && back(2) !== 'about'))) ||
    (adverbs.has(back(1)) && spares(back(2)))
  )
}

const closeBy = new Set(
  list(
    'near, nearby, next, beside, besides, close, closer, past, around, along, above, over, from, by, towards, toward, between, under',
  ),
)

const compiled = [...topicsOfLines, ...topicsOfPeople].map((topic) => ({
  note: topic.note,
  happened: phrasesOf(topic.happened),
  near: (topic.near ?? []).map(phrasesOf),
  within: topic.within ?? 0,
  after: topic.after ?? false,
  itself: topic.itself ?? false,
  anyhow: topic.anyhow ?? false,
  unless: phrasesOf(topic.unless ?? []),
}))

/** What says more of the hurt than that there is one. */
const saysHow = new Set(
  list('heat-stroke, caught-by-a-gate, head-between-pickets, in-the-water, cement-in-the-eye, jet-through-the-skin'),
)

/** Whoever may die of it within minutes comes first, and what only floods a yard comes last. */
const gravest = list(
  'in-the-water, badly-hurt, hit-gas, hit-cable, wire-down, burning, heat-stroke, caught-by-a-gate, head-between-pickets, swallowed, jet-through-the-skin, cement-in-the-eye, hitting-a-line, hit-water',
)

/** The emergencies that a message tells of, the gravest first; two at the most, since nobody reads a third. */
export function emergenciesIn(message: readonly Token[]): string[] {
  const words = wordsOf(message)
  const found = new Set<string>()
  for (const topic of compiled) {
    if (found.has(topic.note)) continue
    for (let at = 0; at < words.length; at++) {
      const long = lengthAt(topic.happened, words, at)
      if (long === 0 || (!topic.anyhow && isOnlyThoughtOf(words, at))) continue
      if (
        topic.near.every((_, group) => isNear(group, words, at, long, topic)) &&
        !isInSentence(topic.unless, words, at)
      ) {
        found.add(topic.note)
        break
      }
    }
  }
  const named = [...found]
  // What is not known to be gas or a cable is only looked for when neither is.
  const known = named.filter(
    (it) =>
      (it !== 'hitting-a-line' || named.every((other) => !/^hit-/.test(other))) &&
      (it !== 'badly-hurt' || !named.some((other) => saysHow.has(other))),
  )
  return known.sort((a, b) => gravest.indexOf(a) - gravest.indexOf(b)).slice(0, 2)
}

function isNear(n: number, words: Words, at: number, long: number, topic: (typeof compiled)[number]): boolean {
  const group = topic.near[n] as Phrases
  const itself = topic.itself && n === 0
  const from = topic.after ? at + long : Math.max(0, at - topic.within)
  for (let i = from; i <= at + long - 1 + topic.within && i < words.length; i++) {
    if (i >= at && i < at + long && topic.after) continue
    if (lengthAt(group, words, i) === 0) continue
    if (itself && i > at) {
      const between = words.slice(at + long, i)
      if (between.some((forms) => closeBy.has(forms[0] as string))) continue
    }
    // Before what happened, “near the gas line I hit …” leaves open what was hit.
    if (itself && i < at && closeBy.has(words[i - 1]?.[0] ?? '')) continue
    if (itself && i < at && closeBy.has(words[i - 2]?.[0] ?? '')) continue
    return true
  }
  return false
}

/** Whether a request is for what cannot wait. Nothing else of it is worked then. */
export const isUrgent = ({ notes }: Pick<Request, 'notes'>): boolean =>
  (notes ?? []).some((name) => noteNamed(name)?.emergency === true)

/** A request for these notes, and nothing else. */
export const onlyThese = (notes: readonly string[]): Request => ({
  told: [],
  wants: [],
  calculation: null,
  confirms: [],
  notes: notes.filter((name) => noteNamed(name)?.emergency === true),
  declines: [],
})
