// This file is about the lexicon: every phrase by which the vocabulary is called, made from the words themselves when the program loads.
import { askable, postKinds, vocabulary, type Word, oneSlip } from '../../../engine/index.ts'
import { groupedBy } from './phrases.ts'
import { filler, stem, type Token, tokens } from './stems.ts'

export type Sort = 'name' | 'thing' | 'side' | 'ask' | 'option'

export interface Cue {
  readonly word: string
  readonly sort: Sort
  /** The option, for a choice. */
  readonly option?: string | undefined
}

interface Phrase {
  readonly stems: readonly string[]
  /** How much it says: its words that mean something; small words only break a tie. */
  readonly length: number
  readonly cues: Cue[]
}

/** A cue found in a message: the tokens it covers. */
export interface Hit extends Cue {
  readonly from: number
  readonly to: number
  readonly length: number
}

const byFirst = new Map<string, Phrase[]>()
const byText = new Map<string, Phrase>()
const stemsOf = (text: string): string[] => tokens(text).map((token) => token.stem)
const bare = (stems: readonly string[]): string[] => stems.filter((it) => !filler.has(it))
const weightOf = (stems: readonly string[]): number => bare(stems).length + stems.length / 100

// "How many do I need" would be left with nothing to know it by.
const questionWords = new Set(['how', 'many', 'much', 'what', 'which', 'long', 'big'])

function learn(text: string, cue: Cue): void {
  // Questions are matched with their small words left out, as long as that leaves two or more to know them by.
  const whole = stemsOf(text)
  const content = bare(whole)
  const stems =
    cue.sort === 'ask' && content.length >= 2 && !content.every((it) => questionWords.has(it)) ? content : whole
  const first = stems[0]
  if (first === undefined) return
  const list = byFirst.get(first) ?? []
  byFirst.set(first, list)
  const key = stems.join(' ')
  const same = byText.get(key)
  if (same) {
    if (!same.cues.some((it) => it.word === cue.word && it.sort === cue.sort)) same.cues.push(cue)
  } else {
    const phrase = { stems, length: weightOf(stems), cues: [cue] }
    list.push(phrase)
    byText.set(key, phrase)
  }
}

const results = new Set(askable.flatMap((calc) => Object.keys(calc.gives)))

// Sums of any trade are read apart, in ./plain-sums.ts: their words, “less”, “times”, “in feet”, are no cues for the trade's.
const ofTheTrade = askable.filter((calc) => !calc.plain)
const isSaid = ({ name, unsaid }: Word): boolean =>
  !unsaid && (!askable.some((calc) => calc.needs[name] || calc.gives[name]) || isOfTheTradesWords(name))
const isOfTheTradesWords = (name: string): boolean =>
  ofTheTrade.some((calc) => calc.needs[name] !== undefined || calc.gives[name] !== undefined)

for (const word of vocabulary.values()) {
  if (!isSaid(word)) continue
  const { names = [], things = [], sides = [], asks = [] } = word.called
  for (const text of [word.label, word.name.replace(/([a-z])([A-Z])/g, '$1 $2'), ...names])
    learn(text, { word: word.name, sort: 'name' })
  for (const text of things) learn(text, { word: word.name, sort: 'thing' })
  for (const text of sides) learn(text, { word: word.name, sort: 'side' })
  for (const text of asks) learn(text, { word: word.name, sort: 'ask' })
  // "how many bags", "number of pickets" need not be written out: they follow from what is counted.
  if (word.kind === 'count' && results.has(word.name))
    for (const thing of things)
      for (const start of ['how many', 'number of', 'what number of', 'count of'])
        learn(`${start} ${thing}`, { word: word.name, sort: 'ask' })
  for (const [option, { called }] of Object.entries(word.options ?? {}))
    for (const text of called) learn(text, { word: word.name, sort: 'option', option })
}

/** The phrases by which calculations are called, the longest first. */
const byCalculation = askable
  .flatMap((calc) => (calc.called ?? []).map((text) => ({ calculation: calc.name, stems: stemsOf(text) })))
  .sort((a, b) => weightOf(b.stems) - weightOf(a.stems))
  .map((phrase, rank) => ({ ...phrase, rank }))
const callsByFirst = groupedBy(byCalculation, ({ stems }) => stems.slice(0, 1))

const known = new Set([...[...byFirst.values()].flat(), ...byCalculation].flatMap((phrase) => phrase.stems))
for (const kind of Object.values(postKinds)) for (const it of kind) known.add(it)
for (const it of ['corner', 'wide', 'deep', 'long', 'tall', 'gate', 'post', 'hole', 'fence', 'inch', 'foot'])
  known.add(it)

const slippable = [...known].filter((it) => it.length >= 5)

/** The word as the lexicon has it, forgiving one slip in words of five letters and more. */
export function forgiven(token: Token): Token {
  if (token.tag || known.has(token.stem) || token.stem.length < 5 || ordinary.has(token.stem)) return token
  const stem = meant.get(token.stem) ?? slippable.find((it) => oneSlip(token.stem, it)) ?? token.stem
  if (meant.size < mostRemembered) meant.set(token.stem, stem)
  return { ...token, stem }
}

/** Slips looked up before: a long message repeats its words. */
const meant = new Map<string, string>()
const mostRemembered = 5000

// Everyday words that stand one letter from a word of the trade, and mean themselves.
const ordinary = new Set(
  'tipped there these those where whose while which white write story stone store stand start state place plane close clean clear great green board bored beard paint point print plant quiet quick three throw think thing thick thank house horse hours other under sound round pound found hound mound boats coats posts costs lasts lists rains rails gates dates rates plain table cable stain train brain wider water later after never above about again being bring doing going count could would should pickle packet bucket socket pocket weight height eight right light night might sight'
    .split(' ')
    .map(stem),
)

/** Every cue in the message. Longer phrases are found beside the shorter ones they hold; who reads decides. */
export function cuesIn(message: readonly Token[]): Hit[] {
  const hits: Hit[] = []
  const spoken = new Set(message.map((it) => it.stem))
  message.forEach((token, from) => {
    for (const { stems, cues, length } of byFirst.get(token.stem) ?? []) {
      // Most phrases lack their second word or their last: they need not be looked for.
      if (stems.length > 1 && !(spoken.has(stems[1] as string) && spoken.has(stems.at(-1) as string))) continue
      const whole = matchFrom(message, from, stems, false)
      let loose: number | null | undefined
      for (const cue of cues) {
        if (cue.sort === 'ask') loose ??= matchFrom(message, from, stems, true)
        const to = cue.sort === 'ask' ? loose : whole
        if (to != null) hits.push({ word: cue.word, sort: cue.sort, option: cue.option, from, to, length })
      }
    }
  })
  return hits
}

/** The calculations that the message names by their own phrases, the longest phrase first. */
export function calculationsIn(message: readonly Token[]): readonly string[] {
  const known = calledIn.get(message)
  if (known) return known
  const found = message.flatMap((token, at) =>
    (callsByFirst.get(token.stem) ?? []).filter(({ stems }) => {
      const to = matchFrom(message, at, stems, true)
      // "no gap over 2 in" limits the gap: it is not "no gap".
      return to !== null && !goesOn.has(message[to]?.stem ?? '')
    }),
  )
  const called = [...new Set(found.sort((a, b) => a.rank - b.rank).map((it) => it.calculation))]
  calledIn.set(message, called)
  return called
}

const calledIn = new WeakMap<readonly Token[], readonly string[]>()

const goesOn = new Set(['over', 'above', 'than', 'wider', 'bigger', 'larger', 'greater', 'more', 'exceeding'])

// Nobody says more between two words of one question.
const mostBetween = 30

/** The end of the phrase from that token on; questions may have small words and quantities in between: "how many 60 lb bags". */
function matchFrom(message: readonly Token[], from: number, stems: readonly string[], loose: boolean): number | null {
  let at = from
  for (const [i, wanted] of stems.entries()) {
    const last = at + mostBetween
    if (i > 0 && loose)
      while (
        at < last &&
        message[at] &&
        (message[at]?.tag || filler.has((message[at] as Token).stem)) &&
        (message[at] as Token).stem !== wanted
      )
        at++
    if (message[at]?.stem !== wanted) return null
    at++
  }
  return at
}

const tradeWords = new Set(
  `fence fencing gate hinge latch post picket rail board plank hole dig digging auger concrete cement gravel stone wood lumber timber cedar pine oak
  stain paint primer sand sanding saw screw nail bracket brace cap yard lot line property utility neighbor setback permit arch top bay string stake level plumb deck moisture meter dry wet weathered
  treated frost clay soil slope bag bucket trip spacing gap knot paling slat height inspector surveyor survey post-hole posthole border edging mow brick paver moulding trim roller brush finish coat fastener bolt`
    .split(/\s+/)
    .map(stem),
)

/** Whether anything in the message belongs to the trade at all. */
export const isOfTheTrade = (message: readonly Token[]): boolean => message.some((token) => tradeWords.has(token.stem))

export const isResult = (word: string): boolean => results.has(word)
