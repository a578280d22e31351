// This file is about an answer to "60 °F, or 60 °C?", or to “is that the gap, or the picket’s width?”: the unit alone, the name, or “the first”, says which of the two was meant.
import { type Job, type Reading, readQuantities, vocabulary, type Wanted } from '../engine/index.ts'
import { filler, stem } from './readers/offline/stems.ts'

const byPlace = /^(?:the )?(?:(first|former)|(second|latter|last))(?: one)?$/
const byUnit = /^(?:in |it is |it's )?(\S.*)$/

/**
 * The quantity that such an answer picks, standing for the whole message.
 * Undefined where the message says anything else besides, where it picks none, or where more than one question is open.
 */
export function pickedBetween(said: string, job: Job): Reading | undefined {
  const text = said.trim().replace(/[.!]$/, '').toLowerCase()
  const [open, another] = job.asked.flatMap(({ between }) => (between ? [between] : []))
  if (!open || another || text === '' || text.length > longest) return undefined
  const ways = open.flatMap((it) => readQuantities(it).slice(0, 1))
  const place = byPlace.exec(text)
  const unit = unitSaid(byUnit.exec(text)?.[1] ?? '')
  const [picked, more] = place
    ? [place[1] ? ways[0] : ways.at(-1)]
    : ways.filter((it) => unit !== undefined && it.quantity?.unit === unit)
  return picked && !more ? { ...picked, start: 0, end: said.length, said, firmness: 'exactly', rivals: [] } : undefined
}

const longest = 20

/** The unit that the words are, and nothing but: “F”, “degrees Celsius”, “inches”. */
function unitSaid(words: string): string | undefined {
  for (const each of [words, words.toUpperCase()]) {
    const whole = `1 ${each}`
    const [only, more] = readQuantities(whole)
    if (only?.quantity && !more && only.end === whole.length && only.rivals.length === 0) return only.quantity.unit
  }
  return undefined
}

/**
 * What an answer to “You said “14”. Is that the gap, or the picket’s width?” picks: the quantity, standing for the whole message, and the word that it is asked for then.
 * Undefined where nothing like that was asked, or the answer picks none of the two, or says more.
 */
export function wordPicked(said: string, job: Job): { reading: Reading; word: Wanted } | undefined {
  const [open, more] = job.asked.flatMap((it) => (it.either ? [{ ...it.either, at: it.at }] : []))
  if (!open || more) return undefined
  const [before] = readQuantities(open.said)
  const others = readQuantities(said).filter((it) => it.said !== open.said && !/^one$/i.test(it.said))
  // “Not the bed” and “what is the bed?” pick nothing.
  if (!before || others.length > 0 || said.length > longestName || picksNone.test(said)) return undefined
  const place = byPlace.exec(said.trim().replace(/[.!]$/, '').toLowerCase())
  const [one, other] = open.words
  const word = place ? (place[1] ? one : other) : named(said, open.words)
  return word === undefined
    ? undefined
    : {
        reading: { ...before, start: 0, end: said.length, said: open.said },
        word: { word, at: open.at },
      }
}

const longestName = 60
const picksNone = /\?|\b(?:not|neither|nor|never)\b|n['’]t\b|^\s*(?:(?:and|so|but) )?(?:what|how|why|when|which)\b/i

/** The one of two words that a text names, by what only one of them is called. */
function named(said: string, [one, other]: readonly [string, string]): string | undefined {
  const text = stemsIn(said)
  const [a, b] = [calledBy(one), calledBy(other)]
  const times = (own: ReadonlySet<string>, theirs: ReadonlySet<string>): number =>
    text.filter((it) => own.has(it) && !theirs.has(it)).length
  const [first, second] = [times(a, b), times(b, a)]
  return first === second ? undefined : first > second ? one : other
}

const calledBy = (name: string): ReadonlySet<string> => {
  const word = vocabulary.get(name)
  return new Set(word ? [word.label, ...Object.values(word.called).flat()].flatMap((it) => stemsIn(String(it))) : [])
}

const stemsIn = (text: string): string[] =>
  (text.match(/\p{L}[\p{L}’']*/gu) ?? []).map((it) => stem(it)).filter((it) => !filler.has(it))
