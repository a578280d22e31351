// This file is about what the model is told of the vocabulary: in the prompt's front what can be asked for at all, the same bytes every turn;
// beside the message the words it may be about, so that the catalogue can grow and a turn still costs little.
import {
  type Calculation,
  askable,
  type Job,
  noteNamed,
  subjects,
  vocabulary,
  type Word,
} from '../../../engine/index.ts'
import { calculationsIn, cuesIn, forgiven, type Sort } from '../offline/lexicon.ts'
import { readOffline } from '../offline/offline.ts'
import type { Heard } from '../reader.ts'
import { notesNear } from '../offline/notes.ts'
import { tokens } from '../offline/stems.ts'

// What a calculation is known by; all that it gives comes beside a message that it may answer.
const mostGiven = 3
/** Every calculation with what it gives first, by subject. */
export const catalogueText = (): string =>
  subjects
    .flatMap(({ subject, calculations }) => [
      `${subject.charAt(0).toUpperCase()}${subject.slice(1)}`,
      ...calculations.map((calc) => `${calc.name}: ${Object.keys(calc.gives).slice(0, mostGiven).join(', ')}`),
    ])
    .join('\n')

/** The words of the calculations that the message may be about: what can be told, and what wanted, with the meaning where the name does not say it. */
export function wordsFor(heard: Heard): string {
  const { said, job } = heard
  // What the words alone lead to is always among them.
  const plainly = readOffline(heard)
  const own = askable.filter(
    (calc) =>
      calc.name === plainly.calculation ||
      (plainly.wants.some((it) => calc.gives[it.word]) && plainly.told.some((it) => calc.needs[it.word])),
  )
  const near = withinReason([...new Set([...own, ...calculationsFor(said, job)])], own.length)
  const words = (of: (calc: Calculation) => readonly Word[]): Word[] => [...new Set(near.flatMap(of))]
  const told = new Set([
    ...words((calc) => Object.values(calc.needs)),
    ...[...job.asked, ...plainly.told].map((it) => vocabulary.get(it.word)),
  ])
  const wanted = [
    ...new Set([
      ...words((calc) => Object.values(calc.gives)),
      ...plainly.wants.flatMap((it) => vocabulary.get(it.word) ?? []),
    ]),
  ]
  const advice = notesNear(tokens(said), mostNotes).map((name) => `${name} (${noteNamed(name)?.title})`)
  return [
    ...(near.length > 0
      ? ['To be told:', ...linesOf([...told].filter((it) => it !== undefined)), '', 'To be wanted:', ...linesOf(wanted)]
      : []),
    ...(advice.length > 0 ? ['', `Advice at hand: ${advice.join('; ')}`] : []),
  ]
    .join('\n')
    .trim()
}

/** The likeliest, as long as their words are not too many: a take-off alone has as many as five others. */
function withinReason(calculations: readonly Calculation[], least: number): readonly Calculation[] {
  const words = new Set<string>()
  const last = calculations.findIndex((calc, i) => {
    for (const word of [...Object.keys(calc.needs), ...Object.keys(calc.gives)]) words.add(word)
    return i >= least && words.size > mostWords
  })
  return last < 0 ? calculations : calculations.slice(0, last)
}

// Enough that the right one is nearly always among them.
const mostCalculations = 9
const mostWords = 110
const mostNotes = 6
const weight: Readonly<Record<Sort, number>> = { ask: 3, name: 2, thing: 1, option: 1, side: 0.4 }

/** The calculations that most of the message and of the talk speaks of, the likeliest first. */
function calculationsFor(said: string, job: Job): Calculation[] {
  const message = tokens(said).map(forgiven)
  const spoken = new Map<string, number>()
  for (const hit of cuesIn(message))
    spoken.set(hit.word, Math.max(spoken.get(hit.word) ?? 0, weight[hit.sort] * hit.length))
  const named = calculationsIn(message)
  const wanted = new Set(job.wanted.map((it) => it.word))
  const asked = new Set(job.asked.map((it) => it.word))
  const decided = new Set(job.decisions.map((it) => it.word))
  const scoreOf = (calc: Calculation): number => {
    const needs = Object.keys(calc.needs)
    const gives = Object.keys(calc.gives)
    const sum = (words: readonly string[], of: (word: string) => number): number =>
      words.reduce((total, word) => total + of(word), 0)
    const heard = (word: string): number => spoken.get(word) ?? 0
    return (
      (named.includes(calc.name) ? 8 : 0) +
      2 * Math.max(0, ...gives.map(heard)) +
      sum(needs, heard) +
      sum(gives, (word) => (wanted.has(word) ? 8 : 0)) +
      sum(needs, (word) => (asked.has(word) ? 8 : decided.has(word) ? 0.5 : 0))
    )
  }
  return askable
    .map((calc) => ({ calc, score: scoreOf(calc) }))
    .filter((it) => it.score > 0)
    .sort((a, b) => b.score - a.score)
    .slice(0, mostCalculations)
    .map((it) => it.calc)
}

/** A line for each kind of word. */
function linesOf(words: readonly Word[]): string[] {
  const kinds = [...new Set(words.map((word) => word.kind))]
  return kinds.map(
    (kind) =>
      `- ${kind}: ${words
        .filter((word) => word.kind === kind)
        .map(entryOf)
        .join('; ')}`,
  )
}

/** `bayCentres (bay, centre to centre)`, `holeDepth`, `sides []`, `waterTest = beads | soaks`. */
function entryOf(word: Word): string {
  const known = entries.get(word)
  if (known !== undefined) return known
  const entry = writtenOut(word)
  entries.set(word, entry)
  return entry
}

const entries = new Map<Word, string>()

function writtenOut(word: Word): string {
  const label = saysItself(word) ? '' : ` (${word.label})`
  const options = word.options ? ` = ${optionsOf(Object.keys(word.options))}` : ''
  return `${word.name}${label}${word.list ? ' []' : ''}${options}`
}

/** Every option; of the hours of a day the first two and the last, since the others go on alike. */
const optionsOf = (options: readonly string[]): string =>
  (options.length > 12 && options.every((it) => /^\d\d:\d\d$/.test(it))
    ? [...options.slice(0, 2), '…', ...options.slice(-1)]
    : options
  ).join(' | ')

const small = new Set('a an and as at be by each for from in is it its of on or one that the this to with'.split(' '))

/** Whether the name holds most of what the label says: every token is paid for at every turn. */
function saysItself({ name, label }: Word): boolean {
  const inName = name
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase()
    .split(' ')
  const said = (label.toLowerCase().match(/\p{L}+/gu) ?? []).filter((it) => !small.has(it))
  const known = said.filter((it) =>
    inName.some((part) => part.startsWith(it.slice(0, 4)) || it.startsWith(part.slice(0, 4))),
  )
  return known.length * 2 > said.length
}
