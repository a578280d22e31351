// This file is about a fence that is told side by side, from its tags to what is told: each side’s length at its place, the gates in it, and whether the sides close.
//
//   The back is 48 ft, the left 30 and the right the same. A 42 in gate on the left.
//       name runLength    name runLength name  again       gateOpening     name
//
// A name goes with the length that stands nearest, whichever comes first; a gate is in the side that is named behind it, or else in the one that was told last.
// Nothing is added up here: a side that was told in pieces goes to the engine piece by piece.
import {
  amountIn,
  gatesTold,
  isQuantity,
  isRun,
  type Job,
  partOf,
  runOf,
  sameValue,
  toNumber,
  yard,
} from '../../../../engine/index.ts'
import type { Told } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import type { Bound } from '../bound.ts'
import type { Token } from '../stems.ts'
import type { Looked } from '../taught/features.ts'
import { type Gate, gatesIn, gatesOfKind } from './gates.ts'
import {
  aroundOneGate,
  byLandmark,
  byLength,
  byName,
  countSides,
  isGate,
  isSame,
  isSaidLast,
  isStop,
  isTotal,
  isWholeSide,
  type Item,
  itemsIn,
  numberIn,
  numbers,
  middleOf,
  ofNames,
  ordinals,
  type Side,
  sideNumber,
  sideSpokenOf,
} from './items.ts'

export interface Walked {
  readonly bound: readonly Bound[]
  /** What is told in words and not by a size: that the sides close, where a gate stands. */
  readonly chosen: readonly Told[]
  /** How many sides the message tells. */
  readonly sides: number
  /** Whether any of them is called by a name. */
  readonly isNamed: boolean
  /** Whether any of them is told in pieces, with a gate between. */
  readonly isInPieces: boolean
}

/** What a tagged message tells of a fence; nothing where its sides do not come out as it says. */
export function walked({ message, heard }: Looked, tags: readonly string[]): Walked | undefined {
  const items = itemsIn(message, tags)
  const { job, said } = heard
  const walk = new Walk(message, items, job, said)
  return walk.read()
}

class Walk {
  private readonly bound: Bound[] = []
  private readonly chosen: Told[] = []
  private readonly ownNames = new Map<string, string>()
  private count: number

  constructor(
    private readonly message: readonly Token[],
    private readonly items: readonly Item[],
    private readonly job: Job,
    private readonly said: string,
  ) {
    this.count = Math.max(0, ...this.known().map((it) => Number(/^run-(\d+)$/.exec(it)?.[1] ?? 0)))
  }

  read(): Walked | undefined {
    const sides = aroundOneGate(this.sidesIn(), this.said)
    const named = this.nameSides(sides)
    if (!this.comesOut(sides) || this.correctsUnknown(sides)) return undefined
    for (const side of sides) if (side.places.length === 0) side.places = this.corrected(side).slice(0, 1)
    // What stands on in a fence that is known is said of a side by its name, or round a corner.
    const goesOn = this.known().length === 0 || this.items.some((it) => it.tag === 'corner')
    for (const side of goesOn ? sides : sides.filter((it) => it.places.length > 0)) {
      if (side.places.length === 0) side.places = Array.from({ length: side.times }, () => this.next())
      for (const at of side.places)
        for (const piece of side.pieces) this.tell(side.isInPieces ? 'runPieces' : 'runLength', at, piece)
    }
    const isNamed = sides.some((it) => it.isNamed)
    this.closes(sides)
    this.gates(sides, named)
    for (const item of this.items) this.falls(item, sides)
    return {
      bound: this.bound,
      chosen: this.chosen,
      sides: sides.reduce((sum, it) => sum + it.places.length, 0),
      isNamed,
      isInPieces: sides.some((it) => it.isInPieces),
    }
  }

  /** “Make the barn side 36 ft”, of a fence in which no side is called so: none is added to it. */
  private correctsUnknown(sides: readonly Side[]): boolean {
    const known = this.known()
    return (
      known.length > 0 &&
      sides.some((it) => it.isNamed && it.places.some((place) => !known.includes(place))) &&
      this.message.some((it) => /^(make|change|actually|sorry|really|should|oops|remeasured|wait)$/.test(it.stem))
    )
  }

  private known(): string[] {
    // In the order in which they were told first, whatever was put right since.
    const places = new Set(this.job.decisions.map((it) => runOf(it.at)).filter(isRun))
    const told = this.job.moves.flatMap((it) => it.decisions).map((it) => runOf(it.at))
    return [...new Set([...told, ...places])].filter((it) => places.has(it))
  }

  private next(): string {
    this.count++
    return `run-${this.count}`
  }

  private tell(word: string, at: string, reading: Tagged): void {
    this.bound.push({ reading, word, at, score: 1 })
  }

  private choose(word: string, at: string, option: string, { from, to }: Pick<Item, 'from' | 'to'>): void {
    const quote = this.said.slice((this.message[from] as Token).start, (this.message[to - 1] as Token).end)
    this.chosen.push({ word, at, from: { tag: null, quote, option, usual: null } })
  }

  // ── sides ──

  /** Lengths of whole sides. A piece of a side that has a gate beside it is no side. */
  private sidesIn(): Side[] {
    const sides: Side[] = []
    const isOfSide = (it: Item): boolean =>
      /^(runLength|stretch|again|corner)$/.test(it.tag) || isGate(it.tag) || isWholeSide(this.message, it)
    const row = this.items.filter(isOfSide)
    row.forEach((item, i) => {
      const last = sides.at(-1)
      // “The right side 32 again” has its length already.
      const isOwn = this.items.some(
        (it) => it.tag === 'name' && last && it.from >= last.item.from && it.to <= item.from,
      )
      if (item.tag === 'again' && last && isOwn)
        sides.push({ item, pieces: [...last.pieces], isInPieces: last.isInPieces, places: [], times: 1 })
      if (!item.reading || isGate(item.tag) || item.tag === 'again' || item.tag === 'corner') return
      const isPiece = item.tag === 'stretch' && [row[i - 1], row[i + 1]].some((it) => it && isGate(it.tag))
      // The other piece of the same side: “12 ft, a gate, then 24 ft to the corner”.
      const between = last ? row.slice(row.indexOf(last.item) + 1, i) : []
      if (
        isPiece &&
        last &&
        between.length > 0 &&
        between.every((it) => isGate(it.tag) || it.tag === 'stretch') &&
        isGate(row[i - 1]?.tag ?? '')
      )
        last.pieces.push(item.reading)
      else if (
        last &&
        isGate(row[i - 1]?.tag ?? '') &&
        last.pieces.length === 1 &&
        last.isInPieces &&
        isTotal(this.message, item)
      ) {
        last.gateStart = { reading: last.pieces[0] as Tagged, from: last.item.from }
        Object.assign(last, { item, pieces: [item.reading], isInPieces: false })
      } else if (!this.refersTo(item))
        sides.push({ item, pieces: [item.reading], isInPieces: isPiece, places: [], times: 1 })
    })
    countSides(this.message, this.items, sides)
    return sides
  }

  /** “In the 9 metre bit”: a side that is known by its length. */
  private refersTo({ reading, from }: Item): boolean {
    return (
      reading?.quantity != null &&
      this.known().some((place) => this.isLengthOf(place, reading)) &&
      !this.items.some((it) => it.tag === 'name' && Math.abs(it.from - from) <= 3)
    )
  }

  private isLengthOf(place: string, { quantity, bare }: Tagged): boolean {
    const length = this.job.decisions.find((it) => it.word === 'runLength' && it.at === place)?.value
    if (!isQuantity(length)) return false
    return quantity ? sameValue(length, quantity) : bare?.valueOf() === toNumber(amountIn(length, length.unit))
  }

  /** “That 7.2 is 8.0”: the side that is known by the length it had. */
  private corrected(side: Side): string[] {
    const others = this.message.flatMap(({ reading }) => (reading && !side.pieces.includes(reading) ? [reading] : []))
    return this.known().filter((place) => others.some((it) => this.isLengthOf(place, it)))
  }

  /** Gives each name to the length that stands nearest. Returns the names that no length took. */
  private nameSides(sides: readonly Side[]): Item[] {
    const names = this.items.filter((it) => it.tag === 'name' && !this.isOfCorner(it))
    const pairs = names
      .flatMap((name) => sides.map((side) => ({ name, side, cost: this.between(name, side.item) })))
      .filter(({ cost }) => cost < 9)
      .sort((a, b) => a.cost - b.cost)
    const left = new Set(names)
    for (const { name, side } of pairs) {
      if (!left.has(name)) continue
      const isJoined =
        side.places.length > 0 && names.some((it) => !left.has(it) && this.isBeside(it, name)) && side.times === 1
      if (side.places.length > 0 && !isJoined) continue
      const places = this.placesOf(name, sides, true)
      const isTaken = (place: string): boolean => sides.some((it) => it.places.includes(place))
      if (places.length === 0 || places.some(isTaken)) continue
      left.delete(name)
      side.isNamed = true
      side.places = [...side.places, ...places.filter((it) => !side.places.includes(it))]
    }
    return [...left]
  }

  /** “The left front corner” is no side. */
  private isOfCorner({ to }: Item): boolean {
    return this.message[to]?.stem === 'corner'
  }

  /** How far a name stands from a length: by words, and more over a stop or a gate. */
  private between(name: Item, side: Item): number {
    const [from, to] = name.to <= side.from ? [name.to, side.from] : [side.to, name.from]
    const apart = this.message.slice(from, to)
    const isOther = this.items.some(
      (it) => it.from >= from && it.to <= to && (isGate(it.tag) || it.tag === 'runLength' || it.tag === 'again'),
    )
    return apart.reduce((sum, it) => sum + (isStop(it) ? 6 : /^(,|and)$/.test(it.text) ? 2 : 1), isOther ? 6 : 0)
  }

  /** “The left and right are 30 ft”. */
  private isBeside(one: Item, other: Item): boolean {
    const [from, to] = one.to <= other.from ? [one.to, other.from] : [other.to, one.from]
    return this.message.slice(from, to).every((it) => /^(and|&|,|the|my)$/i.test(it.text))
  }

  /** The place that a name stands for: a side with a name that everybody knows, “side two”, “the last one”, or the next, which is then called so. */
  private placesOf({ from, to, reading }: Item, sides: readonly Side[], isNew = false): string[] {
    const said = this.message.slice(from, to)
    if (reading?.quantity) return this.known().filter((place) => this.isLengthOf(place, reading))
    const known = [...new Set(said.flatMap((it) => byName.get(it.stem) ?? []))]
    const order = [...this.known(), ...sides.flatMap((it) => it.places)]
    const isThere = (place: string): boolean => order.includes(place)
    const sure = known.filter((it) => it !== 'side' && (it === 'long' || it === 'short' ? isNew || isThere(it) : true))
    // “Between the garage and the neighbour’s” says where a side ends, and names none.
    if (this.message.slice(Math.max(0, from - 4), to).some((it) => it.stem === 'between')) return []
    if (sure.length > 0) return sure
    const has = (stem: RegExp): boolean => said.some((it) => stem.test(it.stem))
    const before = this.known()
    if (has(/^(middle|center)$/) && !before.includes('middle') && middleOf(before).length > 0) return middleOf(before)
    const along = said.map((it) => byLandmark.get(it.stem)).find((it) => it !== undefined)
    if (along && (isNew || isThere(along))) return [along]
    if (has(/^last$/)) return order.slice(-1)
    if (has(/^(long|longest|longer|big)$/)) return byLength(sides, 1)
    if (has(/^(short|shortest|shorter|small)$/)) return byLength(sides, -1)
    const nth = Math.max(...said.map((it) => ordinals.indexOf(it.stem))) + 1
    if (nth > 0 && order.length >= nth) return order.slice(nth - 1, nth)
    const number = nth > 0 ? nth : sideNumber(said)
    if (number > 0 && number < 20) {
      this.count = Math.max(this.count, number)
      return [`run-${number}`]
    }
    const name = said
      .map((it) => it.stem)
      .filter((it) => !ofNames.test(it))
      .join(' ')
    // “The side”, of a fence that has none called so, is any of them.
    if (name === '') return known.filter((place) => isThere(place) || this.known().length === 0)
    const place = this.ownNames.get(name) ?? (isNew ? this.next() : undefined)
    if (!place) return []
    this.ownNames.set(name, place)
    return [place]
  }

  /** Whether there are as many sides as the message says. */
  private comesOut(sides: readonly Side[]): boolean {
    const many = sides.reduce((sum, it) => sum + Math.max(it.times, it.places.length), 0)
    // “Three sides”, “five lengths”.
    const said = this.message.flatMap((it, at) => {
      const number = it.reading?.bare?.valueOf() ?? numbers.indexOf(it.stem) + 1
      const isOfSides = /^(side|length|run|stretch)$/.test(this.message[at + 1]?.stem ?? '')
      const isHow = this.items.some((item) => item.tag === 'times' && item.from <= at && at < item.to)
      return isOfSides && !isHow && number > 1 && number < 12 && Number.isInteger(number) ? [number] : []
    })
    if (sides.length === 0 || this.known().length > 0) return true
    return said.every((it) => it === many || (it === 4 && this.isTwoByTwo(sides)))
  }

  /** “60 by 40, four sides”. */
  private isTwoByTwo(sides: readonly Side[]): boolean {
    const [one, other, more] = sides
    return (
      one !== undefined &&
      other !== undefined &&
      !more &&
      this.message.slice(one.item.to, other.item.from).some((it) => /^(by|x|×)$/i.test(it.text))
    )
  }

  private closes(sides: readonly Side[]): void {
    const closed = this.items.find(
      (it) =>
        it.tag === 'closed' &&
        this.message
          .slice(it.from, it.to)
          .some((word) =>
            /^(round|around|closed?|closes|loop|ring|enclosed?|four|start(ed)?|began|meets?|joins?|perimeter|rectangle|square)$/.test(
              word.stem,
            ),
          ) &&
        numberIn(this.message, it) !== 3,
    )
    if (closed && sides.length > 0) {
      this.choose('runEnds', yard, 'loop', closed)
      if (this.isTwoByTwo(sides) && sides.every((it) => it.places.length === 1))
        for (const { pieces } of sides) this.tell('runLength', this.next(), pieces[0] as Tagged)
    }
    const ends = this.items.find((it) => it.tag.startsWith('runEnds:'))
    if (ends && !closed) this.choose('runEnds', yard, ends.tag.slice(8), ends)
  }

  // ── gates ──

  private gates(sides: readonly Side[], names: readonly Item[]): void {
    const gates = gatesIn(this.message, this.items)
    const all = gatesTold(this.job)
    const before = gates.length === 1 ? gatesOfKind(all, this.message) : all
    const isMore = this.message.some((it) => /^(another|second|also|add|extra|more|too|plus|new)$/.test(it.stem))
    const perPlace = new Map<string, number>()
    const at = gates.map((gate) => this.sideOf(gate, sides, names))
    for (const place of at.flat()) perPlace.set(place, (perPlace.get(place) ?? 0) + 1)
    const numbered = new Map<string, number>()
    gates.forEach((gate, i) => {
      const own = at[i] as readonly string[]
      const [only] = before
      // “Make the gate 4 ft”: the one there is.
      const same =
        only &&
        before.length === 1 &&
        !isMore &&
        gates.length === 1 &&
        (own.length === 0 || own[0] === runOf(only.place))
      for (const side of same ? [only.place] : own.length > 0 ? own : [yard]) {
        const had = isMore ? before.filter((it) => runOf(it.place) === side).length : 0
        const number = (numbered.get(side) ?? had) + 1
        numbered.set(side, number)
        const place = same || side === yard ? side : partOf(side, 'gate', number)
        if (gate.width) this.tell('gateOpening', place, gate.width)
        else if (!same && side !== yard) this.choose('gatePlace', place, 'joint', gate.item)
        const start =
          gate.start ?? (number === 1 ? sides.find((it) => it.places.includes(side))?.gateStart?.reading : undefined)
        if (start && side !== yard) this.tell('gateStart', place, start)
        if (gate.place?.option === 'middle' && side !== yard) this.choose('gatePlace', place, 'middle', gate.place.item)
        if (gate.count && side !== yard) this.more(gate, side, number)
      }
    })
    const none = this.items.find((it) => it.tag === 'noGates')
    const [only, another] = before
    if (none && only && !another) this.choose('leftOut', only.place, 'out', none)
  }

  /** “Two gates of 4 ft” in one side. */
  private more({ count, width }: Gate, side: string, number: number): void {
    for (let more = 1; more < Number(count?.bare?.valueOf() ?? 1) && width; more++)
      this.tell('gateOpening', partOf(side, 'gate', number + more), width)
  }

  /** The sides that a gate is in: named behind it, or the one that is being told; none where nothing says it. */
  private sideOf(gate: Gate, sides: readonly Side[], names: readonly Item[]): readonly string[] {
    const stop = this.message.findIndex((it, at) => at > gate.at && isStop(it))
    const end = stop < 0 ? this.message.length : stop
    const next = this.items.find(
      (it) =>
        it.from > gate.at &&
        (it.tag === 'gateBare' || (it.tag === 'gateOpening' && it !== gate.item && gate.width !== it.reading)),
    )
    const behind = names.find((it) => it.from > gate.at && it.from < Math.min(end, next?.from ?? end))
    if (behind) return this.placesOf(behind, sides)
    const inPlace = gate.place && this.nameIn(gate.place.item)
    if (inPlace) return [inPlace]
    if (gate.place && this.isAtCorner(gate.place.item)) return []
    const start = this.message.findLastIndex((it, at) => at < gate.at && isStop(it)) + 1
    const ahead = names.findLast((it) => it.from >= start && it.from < gate.at)
    if (ahead) return this.placesOf(ahead, sides)
    // “In the 9 metre bit”.
    const ofLength = this.items
      .filter((it) => it.reading && (it.tag === 'ref' || (it.tag === 'runLength' && this.refersTo(it))))
      .flatMap((it) => [
        ...this.known().filter((place) => this.isLengthOf(place, it.reading as Tagged)),
        ...sides
          .filter(({ pieces: [only] }) => only && isSame(only, it.reading as Tagged))
          .flatMap((side) => side.places),
      ])
    if (ofLength.length > 0) return isSaidLast(this.message) ? ofLength.slice(-1) : ofLength.slice(0, 1)
    const spoken = sideSpokenOf(this.message, this.known())
    if (spoken) return [spoken]
    const last = sides.findLast((it) => Math.min(it.gateStart?.from ?? it.item.from, this.nameOf(it)) < gate.at)
    if (last) return last.places.slice(-1)
    if (sides.length === 1) return (sides[0] as Side).places.slice(0, 1)
    const known = this.known()
    return known.length === 1 && sides.length === 0 ? known : []
  }

  /** “In the front, hard by the left corner”: the front. */
  private nameIn({ from, to }: Item): string | undefined {
    const words = this.message.slice(from, to).map((it) => it.stem)
    const isCorner = (at: number): boolean =>
      words[at] === 'corner' || (byName.has(words[at] ?? '') && isCorner(at + 1))
    const name = words.find((it, at) => byName.has(it) && !/^(side|house)$/.test(it) && !isCorner(at))
    return byName.get(name ?? '')
  }

  /** “Tight to the left front corner”: of two sides, and nobody says which. */
  private isAtCorner({ from, to }: Item): boolean {
    const words = this.message.slice(from, to)
    return words.filter((it) => byName.has(it.stem)).length > 1 && words.some((it) => it.stem === 'corner')
  }

  private nameOf(side: Side): number {
    const name = this.items.find(
      (it) => it.tag === 'name' && it.to <= side.item.from && this.between(it, side.item) < 9,
    )
    return name?.from ?? side.item.from
  }

  private falls({ tag, reading, from }: Item, sides: readonly Side[]): void {
    if (!reading || tag !== 'fall') return
    const side = sides.findLast((it) => it.item.from < from)
    for (const at of side?.places ?? []) this.tell('fall', at, reading)
  }
}
