// This file is about lessons on what each quantity is, laid out in plain numbers: they are gone through many times, in whole and by halves.
// Every feature that teaches has a number. All lists of one kind stand one behind the other.
import { vocabulary, type Word } from '../../../../engine/index.ts'
import { ends, nobodys, owned, wordsBeside } from './belongs.ts'
import { canBe } from './can-be.ts'
import { sizedAt } from './features.ts'
import type { Lesson } from './lesson.ts'
import { growing, GrowingLists, GrowingMeasured, type Lists, type Measured, Numbers } from './numbered.ts'
import { any } from './table.ts'
import { talkFeatures } from './told-before.ts'
import { cueFeatures, quantityFeatures, standingFeatures, wordLabel } from './weights.ts'

/** Of each lesson come its quantities and its words; of each quantity its options; of each word its links. */
export interface BindLessons {
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
  readonly measured: Measured
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
    // A word of what stands behind the sum, “8 ft on centre” for the opening, is learned where it is meant.
    const fed = word === null || needed.has(word) ? undefined : vocabulary.get(word)
    const able = [
      ...words.filter((it) => it.name === word || isAble(it, needed)),
      ...(fed && isAble(fed, new Set([fed.name])) ? [fed] : []),
    ]
    const size = sizedAt(looked, reading, spot)
    const at = word === null ? 0 : able.findIndex((it) => it.name === word) + 1
    const ofAny = (it: Word): [string, number][] => [
      ...cueFeatures(looked, size, it),
      ...talkFeatures(looked, { reading }, it),
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

/** What stood beside a word when it was meant. */
function seen(lessons: readonly Told[]): Tables {
  const features: Feature[] = []
  const numbersOf = (part: Part): Numbers => new Numbers((label, name) => features.push({ part, label, name }) - 1)
  const [binds, belongs, follows] = [numbersOf('binds'), numbersOf('belongs'), numbersOf('follows')]
  for (const lesson of lessons) {
    const { quantities, beside } = lesson
    for (const [i, { right, own, options }] of quantities.entries()) {
      const meant = right === undefined ? undefined : options[right]
      if (!meant) continue
      for (const name of own) binds.see(meant.label, name)
      for (const [name] of meant.ofAny) binds.see(any, name)
      for (const { names } of beside) for (const name of names) binds.see(meant.label, name)
      const { before, behind } = around(lesson, i)
      if (right) follows.see(before, meant.label)
      if (right && behind === ends.last) follows.see(meant.label, behind)
    }
    if (quantities.length > 0) for (const name of beside.flatMap((it) => it.links.flat())) belongs.see(any, name)
  }
  // What was never said one after the other.
  for (const _ of [1, 2]) follows.see(any, any)
  return { features, binds, belongs, follows }
}

/** The features of each table, by number. */
interface Tables {
  readonly features: readonly Feature[]
  readonly binds: Numbers
  readonly belongs: Numbers
  readonly follows: Numbers
}

export function bindLessons(lessons: readonly Lesson[]): BindLessons {
  const all = lessons.map(told)
  const { features, binds, belongs, follows } = seen(all)
  const never = follows.of(any).get(any) as number
  const pair = (before: string, after: string): number => follows.of(before).get(after) ?? never
  const [quantities, words, options, right, ofQuantity] = [growing(), growing(), growing(), growing(), growing()]
  const [there, following, measured] = [new GrowingLists(), new GrowingLists(), new GrowingMeasured()]
  const [spoken, links] = [new GrowingLists(), new GrowingLists()]
  const [spokenFor, firstLink] = [growing(), growing()]
  let linked = 0
  for (const lesson of all) {
    quantities.push(right.length)
    words.push(firstLink.length)
    const first = ofQuantity.length
    for (const [i, it] of lesson.quantities.entries()) {
      options.push(ofQuantity.length)
      const { before, behind } = around(lesson, i)
      for (const [j, { label, ofAny }] of it.options.entries()) {
        ofQuantity.push(right.length)
        there.begin()
        there.push(binds.of(label), it.own)
        measured.add(binds.of(any), ofAny)
        following.begin()
        if (j > 0) for (const at of [pair(before, label), pair(label, behind)]) following.all.push(at)
        else if (before !== ends.first || behind !== ends.last) following.all.push(pair(before, behind))
      }
      right.push(it.right ?? -1)
    }
    const labels = lesson.quantities.flatMap((it) => it.options.map(({ label }) => binds.of(label)))
    for (const { names, links: stands } of lesson.beside) {
      spoken.begin()
      for (const [i, own] of labels.entries()) {
        spoken.push(own, names)
        while (spokenFor.length < spoken.all.length) spokenFor.push(first + i)
      }
      firstLink.push(linked)
      linked += stands.length
      for (const stand of stands) {
        links.begin()
        links.push(belongs.of(any), stand)
      }
    }
  }
  quantities.push(right.length)
  words.push(firstLink.length)
  options.push(ofQuantity.length)
  return {
    features,
    never,
    quantities: quantities.all,
    words: words.all,
    options: options.all,
    right: right.all,
    ofQuantity: ofQuantity.all,
    there: there.lists,
    measured: measured.lists,
    following: following.lists,
    spoken: spoken.lists,
    spokenFor: spokenFor.all,
    links: links.lists,
    firstLink: firstLink.all,
  }
}
