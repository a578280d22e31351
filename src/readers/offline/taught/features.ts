// This file is about what a message looks like to the weights: its words for what is asked, and what stands around a quantity for what it is.
import type Fraction from 'fraction.js'
import { amountIn, type Job, quantity, type System, toNumber, type Word } from '../../../../engine/index.ts'
import type { Heard, Tagged } from '../../reader.ts'
import { type Around, around, cueScore, type Owned, owners, withoutInner } from '../cue-score.ts'
import { cuesIn, type Hit } from '../lexicon.ts'
import { likelihood } from '../likelihood.ts'
import { placesIn } from '../places.ts'
import { filler, stem, type Token } from '../stems.ts'

/** A message, looked at once. */
export interface Looked {
  readonly heard: Heard
  readonly message: readonly Token[]
  readonly hits: readonly Hit[]
  readonly usable: readonly Owned[]
}

export function look(heard: Heard, message: readonly Token[], hits: readonly Hit[] = cuesIn(message)): Looked {
  return { heard, message, hits, usable: owners(withoutInner(hits, message), message, placesIn(message)) }
}

/** What is worked once for each message, however many ask for it. */
function oncePerMessage<T>(work: (looked: Looked) => T): (looked: Looked) => T {
  const known = new WeakMap<Looked, T>()
  return (looked) => {
    const found = known.get(looked) ?? work(looked)
    known.set(looked, found)
    return found
  }
}

/** A token as the weights know it: a quantity is only what kind of thing it is. */
const shape = ({ reading, stem }: Token): string =>
  !reading
    ? stem
    : reading.section
      ? '<stick>'
      : reading.quantity
        ? `<${reading.quantity.kind}>`
        : reading.proportion
          ? '<parts>'
          : '<number>'

const isSign = (token: Token): boolean => /^[.,;:!\n]$/.test(token.text)

/** A word, and the thing that it names by the one name of all that are called alike. */
export const namesOf = (token: Token): string[] => {
  const own = shape(token)
  const thing = thingOf.get(own)
  return thing === undefined ? [own] : [own, thing]
}

/** Words, with the tokens that they begin and end at. */
interface Phrase {
  readonly words: string
  readonly from: number
  readonly to: number
}

/** The telling words of a message, and each two that follow one another. */
export const phrasesOf = oncePerMessage(({ message }): readonly Phrase[] => {
  const telling = message.flatMap((token, at) =>
    isSign(token) || filler.has(token.stem) ? [] : [{ words: shape(token), from: at, to: at }],
  )
  return [
    ...telling,
    ...telling.slice(1).flatMap((it, i) => {
      const before = telling[i] as (typeof telling)[number]
      // “Posts 100 mm square. Holes 300 wide”: two sentences make no phrase.
      const isParted = message.slice(before.to + 1, it.from).some(({ text }) => /^[.;?!\n]$/.test(text))
      return isParted ? [] : [{ words: `${before.words} ${it.words}`, from: before.from, to: it.to }]
    }),
  ]
})

/** The same as features, and the things they speak of by one name each. */
export const wordsOf = oncePerMessage((looked): readonly string[] => {
  const words = phrasesOf(looked).map((it) => it.words)
  return [...new Set([...words, ...words.flatMap((it) => thingOf.get(it) ?? [])])]
})

/** Every word, the small ones too: “without”, “before”, “if i” tell a danger from a sum. */
export const everyWordOf = oncePerMessage(({ message }): readonly string[] => {
  const shapes = message.filter((it) => !isSign(it)).map(shape)
  return [...new Set([...shapes, ...shapes.slice(1).map((it, i) => `${shapes[i]} ${it}`)])]
})

/** Things that people call by many names, each by one of its own. */
const thingOf: ReadonlyMap<string, string> = new Map(
  [
    'picket board slat paling pale stave upright stick',
    'hole pit footing posthole bore',
    'bag sack',
    'gap space spacing daylight',
    'bay section panel span',
    'rail stringer runner arris crossbar',
    'concrete cement mud postmix postcrete',
    'gravel stone hardcore ballast crusher scalping aggregate',
    'post upright',
    'soil dirt earth spoil muck clay',
    'paint stain finish coat varnish oil preservative',
    'truck pickup ute van trailer tray bed car wagon',
    'deep depth down buried underground deeper deepen shallower',
    'wide width across diameter broad round wider widen narrower',
    'tall high height taller higher',
    'cost price total bill pay',
    'helper mate buddy son wife brother neighbour neighbor kid',
  ].flatMap((line) => {
    const names = line.split(' ')
    return names.map((it) => [stem(it), `~${names[0]}`] as const)
  }),
)

/** Whether something was told or asked before. */
export const isLater = ({ decisions, wanted }: Job): boolean => decisions.length > 0 || wanted.length > 0

/** Where the message stands in the talk: at its beginning, after others, or after a question of ours; and whether it is short. */
export function standOf({ heard: { job }, message }: Looked): string[] {
  const stand = job.asked.length > 0 ? 'open' : isLater(job) ? 'later' : 'first'
  const length = message.length <= 4 ? 'short' : message.length <= 9 ? 'middling' : 'long'
  return [`@${stand}`, `@${length}`, `@${stand} ${length}`]
}

// Further away a word says little of a quantity.
const reach = 6

/** What stands around a quantity, as `L1 wide` or `R2 post`: side, how near, and what; past another quantity it is marked. `~ wide` is on either side. */
export function contextOf({ message }: Looked, spot: number, isEither = true): string[] {
  const found: string[] = []
  for (const step of [-1, 1]) {
    let isPast = false
    let words = 0
    for (let at = spot + step; words < reach && message[at]; at += step) {
      const token = message[at] as Token
      if (token.text === '\n' || /^[.?!;]$/.test(token.text)) isPast = true
      if (/^[.,;:?!\n]$/.test(token.text)) continue
      words++
      const side = step < 0 ? 'L' : 'R'
      const near = words === 1 ? '1' : words <= 3 ? '2' : '3'
      const it = shape(token)
      found.push(`${side}${isPast ? 'x' : ''}${near} ${it}`)
      if (isEither) found.push(`${isPast ? 'x' : ''}~ ${it}`)
      if (words === 1 && message[at + step] && !isPast)
        found.push(`${side}${side} ${it} ${shape(message[at + step] as Token)}`)
      if (token.tag) isPast = true
    }
  }
  return found
}

export const unitOf = (reading: Tagged): string =>
  reading.section ? 'stick' : reading.quantity ? reading.quantity.unit : reading.proportion ? 'parts' : 'bare'

/** A quantity, and what stands around it. */
export interface Sized {
  readonly reading: Tagged
  readonly spot: number
  readonly near: Around
  /** A bare number may be a length in any unit that its size is likely in: feet, metres, millimetres. */
  readonly lengths: readonly Tagged[]
}

export function sizedAt({ heard, usable }: Looked, reading: Tagged, spot: number): Sized {
  const units = reading.bare === null ? [] : unitsOf(heard.job.system)
  const lengths = units.map((unit): Tagged => {
    return { ...reading, bare: null, quantity: quantity(reading.bare as Fraction, unit) }
  })
  return { reading, spot, near: around(spot, usable), lengths }
}

/** What the vocabulary itself says of a quantity and a word: how strongly it is named, and how likely its size is. */
export function cues(
  { heard, message }: Looked,
  { reading, spot, near, lengths }: Sized,
  word: Word,
): { cue: number; likely: number } {
  const ways = word.kind === 'length' ? [reading, ...lengths] : [reading]
  return {
    cue: Math.min(8, cueScore(word, reading, spot, near, message, word.called.plainly === true)) / 4,
    likely: Math.max(-4, ...ways.map((it) => likelihood(word, it, heard))),
  }
}

/** How a number looks: whole or not, and how large, by steps of three. */
export function shapeOf({ bare, quantity, section }: Tagged): string {
  if (section) return section.name
  const size = bare?.valueOf() ?? (quantity ? toNumber(amountIn(quantity, quantity.unit)) : 0)
  const part = bare
    ? bare.d === 1n
      ? 'whole'
      : bare.d === 100n || bare.d === 50n || bare.d === 20n
        ? 'cents'
        : 'part'
    : quantity?.kind
  return `${part} ${Math.floor(Math.log(Math.max(size, 0.01)) / Math.log(3))}`
}

/** How large a quantity is, finely and roughly, and how it stands among those of its measure: the bay is longer than the picket. */
export function sizeOf(reading: Tagged, all: readonly Tagged[]): string[] {
  const measure = measureOf(reading)
  const size = amountOf(reading)
  const kin = all.filter((it) => measureOf(it) === measure)
  const larger = kin.filter((it) => amountOf(it) > size).length
  const smaller = kin.filter((it) => amountOf(it) < size).length
  const steps = (by: number): number => Math.round(Math.log(size) / Math.log(by))
  return [
    `r:${measure} ${Math.min(larger, 4)}/${Math.min(kin.length, 5)}`,
    `rl:${measure} ${Math.min(smaller, 3)}`,
    ...(size > 0 ? [`s:${measure} ${steps(1.5)}`] : []),
    ...(size > 0 && reading.bare === null ? [`s2:${measure} ${steps(2.2)}`] : []),
    ...(reading.bare === null ? [] : [`v:${reading.bare.toFraction()}`]),
  ]
}

const measureOf = ({ section, quantity, proportion }: Tagged): string =>
  section ? 'stick' : (quantity?.kind ?? (proportion ? 'parts' : 'bare'))

/** A number as it stands, a quantity in the base unit of its kind. */
const amountOf = ({ bare, quantity }: Tagged): number => bare?.valueOf() ?? (quantity ? toNumber(quantity.amount) : 0)

const unitsOf = (system: System | null): readonly string[] =>
  system === 'metric' ? ['mm', 'cm', 'm'] : system === 'imperial' ? ['in', 'ft'] : ['in', 'ft', 'mm', 'm']
