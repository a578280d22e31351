// This file is about lessons on what each quantity is, laid out in plain numbers: they are gone through many times, in whole and by halves.
// Every feature that teaches has a number. All lists of one kind stand one behind the other.
import type { Word } from '../../../../engine/index.ts'
import { ends, nobodys, owned, wordsBeside } from './belongs.ts'
import { canBe } from './decode.ts'
import { sizedAt } from './features.ts'
import type { Lesson } from './lesson.ts'
import { any } from './table.ts'
import { cueFeatures, quantityFeatures, standingFeatures, talkFeatures, wordLabel } from './weights.ts'

/** Lists of numbers, one behind the other: list `i` stands from `from[i]` to before `from[i + 1]`. */
interface Lists {
  readonly from: Int32Array
  readonly all: Int32Array
}

/** Of each lesson come its quantities and its words; of each quantity its options; of each word its links. */
export interface BindLessons {
  readonly count: number
  /** The features, each with its table, its label and its name. */
  readonly features: readonly Feature[]
  /** What follows something that it never followed: its feature. */
  readonly never: number
  /** Where the quantities of each lesson begin, and its words. */
  readonly quantities: Int32Array
  readonly words: Int32Array
  /** Where the options of each quantity begin: the first is that it means nothing. */
  readonly options: Int32Array
  /** Which option is right; -1 where its word is no word of the calculation. */
  readonly right: Int32Array
  /** The quantity of each option. */
  readonly ofQuantity: Int32Array
  /** For each option: what speaks for it as it is there, what does by a measure, and what it follows and is followed by. */
  readonly there: Lists
  readonly measured: Lists
  readonly measures: Float64Array
  readonly following: Lists
  /** For each word: what it would speak if it belonged to the quantity, and for which option. */
  readonly spoken: Lists
  readonly spokenFor: Int32Array
  /** For each word: how it stands to each quantity of its lesson, and then what keeps it from all. */
  readonly links: Lists
  readonly firstLink: Int32Array
}

export type Part = 'binds' | 'belongs' | 'follows'
export interface Feature {
  readonly part: Part
  readonly label: string
  readonly name: string
}

/** A lesson before its features have numbers. */
function told({ looked, calculation, meant }: Lesson) {
  const words = Object.values(calculation.needs).filter((it) => it.kind !== 'choice' && it.kind !== 'verdict')
  const needed = new Set(words.map((it) => it.name))
  const quantities = meant.map(({ reading, spot, word: marked }) => {
    // A stick called by its size tells both its sides; the one that brings the other along stands for both.
    const word = (reading.section && words.find((it) => it.otherSide === marked)?.name) || marked
    const isAble = canBe(looked, reading)
    const able = words.filter((it) => it.name === word || isAble(it, needed))
    const size = sizedAt(looked, reading, spot)
    const at = word === null ? 0 : able.findIndex((it) => it.name === word) + 1
    const ofAny = (it: Word): [string, number][] => [
      ...cueFeatures(looked, size, it),
      ...talkFeatures(looked, reading, it),
      ...standingFeatures(it, calculation),
    ]
    return {
      right: at === 0 && word !== null ? undefined : at,
      own: quantityFeatures(looked, reading, spot),
      options: [undefined, ...able].map((it) => ({ label: wordLabel(it), ofAny: it ? ofAny(it) : [] })),
    }
  })
  const spots = meant.map((it) => it.spot)
  const beside = wordsBeside(looked, spots).map(({ names, links }) => ({
    names: names.map(owned),
    links: [...links, nobodys(names)],
  }))
  return { quantities, beside }
}

type Told = ReturnType<typeof told>

/** What stands before a quantity and behind it, of those that are said to be something. */
function around({ quantities }: Told, i: number): { before: string; behind: string } {
  const said = quantities.map(({ right, options }) => (right ? options[right]?.label : undefined))
  return {
    before: said.slice(0, i).findLast((it) => it !== undefined) ?? ends.first,
    behind: said.slice(i + 1).find((it) => it !== undefined) ?? ends.last,
  }
}

/** The numbers of features, by table, label and name. */
class Numbers {
  readonly features: Feature[] = []
  private readonly known: Readonly<Record<Part, Map<string, Map<string, number>>>> = {
    binds: new Map(),
    belongs: new Map(),
    follows: new Map(),
  }
  /** What stood beside a word when it was meant teaches, where it did so more than once. */
  see(part: Part, label: string, name: string): void {
    const own = this.of(part, label)
    const at = own.get(name)
    if (at === undefined) own.set(name, seenOnce)
    else if (at === seenOnce) own.set(name, this.features.push({ part, label, name }) - 1)
  }
  of(part: Part, label: string): Map<string, number> {
    const table = this.known[part]
    const own = table.get(label) ?? new Map<string, number>()
    table.set(label, own)
    return own
  }
}
const seenOnce = -1

function seen(lessons: readonly Told[]): Numbers {
  const numbers = new Numbers()
  for (const lesson of lessons) {
    const { quantities, beside } = lesson
    for (const [i, { right, own, options }] of quantities.entries()) {
      const meant = right === undefined ? undefined : options[right]
      if (!meant) continue
      for (const name of own) numbers.see('binds', meant.label, name)
      for (const [name] of meant.ofAny) numbers.see('binds', any, name)
      for (const { names } of beside) for (const name of names) numbers.see('binds', meant.label, name)
      const { before, behind } = around(lesson, i)
      if (right) numbers.see('follows', before, meant.label)
      if (right && behind === ends.last) numbers.see('follows', meant.label, behind)
    }
    if (quantities.length > 0)
      for (const name of beside.flatMap((it) => it.links.flat())) numbers.see('belongs', any, name)
  }
  // What was never said one after the other.
  for (const _ of [1, 2]) numbers.see('follows', any, any)
  return numbers
}

/** Numbers as they come, in as much room as they need. */
class Growing<Room extends Int32Array | Float64Array> {
  length = 0
  constructor(private room: Room) {}
  push(it: number): void {
    if (this.length === this.room.length) {
      const more = new (this.room.constructor as new (length: number) => Room)(2 * this.length)
      more.set(this.room)
      this.room = more
    }
    this.room[this.length++] = it
  }
  get all(): Room {
    return this.room.slice(0, this.length) as Room
  }
}
const growing = (): Growing<Int32Array> => new Growing(new Int32Array(1024))

/** The lists as they come. */
class GrowingLists {
  readonly all = growing()
  private readonly from = growing()
  begin(): void {
    this.from.push(this.all.length)
  }
  get lists(): Lists {
    this.begin()
    return { from: this.from.all, all: this.all.all }
  }
}

export function bindLessons(lessons: readonly Lesson[]): BindLessons {
  const all = lessons.map(told)
  const numbers = seen(all)
  const belongs = numbers.of('belongs', any)
  const ofAny = numbers.of('binds', any)
  const never = numbers.of('follows', any).get(any) as number
  const follows = (before: string, after: string): number => known(numbers.of('follows', before), after) ?? never
  const [quantities, words, options, right, ofQuantity] = [growing(), growing(), growing(), growing(), growing()]
  const [there, measured, following] = [new GrowingLists(), new GrowingLists(), new GrowingLists()]
  const [spoken, links] = [new GrowingLists(), new GrowingLists()]
  const [spokenFor, firstLink] = [growing(), growing()]
  const measures = new Growing(new Float64Array(1024))
  let linked = 0
  const numberOption = (
    { label, ofAny: by }: Told['quantities'][number]['options'][number],
    own: readonly string[],
  ): void => {
    ofQuantity.push(right.length - 1)
    const ofLabel = numbers.of('binds', label)
    there.begin()
    for (const name of own) {
      const at = known(ofLabel, name)
      if (at !== undefined) there.all.push(at)
    }
    measured.begin()
    for (const [name, measure] of by) {
      const at = known(ofAny, name)
      if (at === undefined) continue
      measured.all.push(at)
      measures.push(measure)
    }
  }
  for (const lesson of all) {
    quantities.push(right.length)
    words.push(firstLink.length)
    const first = ofQuantity.length
    for (const [i, it] of lesson.quantities.entries()) {
      options.push(ofQuantity.length)
      right.push(it.right ?? -1)
      const { before, behind } = around(lesson, i)
      for (const [j, option] of it.options.entries()) {
        numberOption(option, it.own)
        following.begin()
        if (j > 0)
          for (const at of [follows(before, option.label), follows(option.label, behind)]) following.all.push(at)
        else if (before !== ends.first || behind !== ends.last) following.all.push(follows(before, behind))
      }
    }
    const labels = lesson.quantities.flatMap((it) => it.options.map(({ label }) => numbers.of('binds', label)))
    for (const { names, links: stands } of lesson.beside) {
      spoken.begin()
      for (const [i, own] of labels.entries())
        for (const name of names) {
          const at = known(own, name)
          if (at === undefined) continue
          spoken.all.push(at)
          spokenFor.push(first + i)
        }
      firstLink.push(linked)
      linked += stands.length
      for (const stand of stands) {
        links.begin()
        for (const name of stand) {
          const at = known(belongs, name)
          if (at !== undefined) links.all.push(at)
        }
      }
    }
  }
  quantities.push(right.length)
  words.push(firstLink.length)
  options.push(ofQuantity.length)
  return {
    count: all.length,
    features: numbers.features,
    never,
    quantities: quantities.all,
    words: words.all,
    options: options.all,
    right: right.all,
    ofQuantity: ofQuantity.all,
    there: there.lists,
    measured: measured.lists,
    measures: measures.all,
    following: following.lists,
    spoken: spoken.lists,
    spokenFor: spokenFor.all,
    links: links.lists,
    firstLink: firstLink.all,
  }
}

/** The number of a feature that teaches. */
function known(own: ReadonlyMap<string, number>, name: string): number | undefined {
  const at = own.get(name)
  return at === seenOnce ? undefined : at
}
