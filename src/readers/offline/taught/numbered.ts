// This file is about features by number. What is learned from is gone through many times: it is kept as plain numbers, list behind list.

/** Lists of numbers: list `i` stands from `from[i]` to before `from[i + 1]`. */
export interface Lists {
  readonly from: Int32Array
  readonly all: Int32Array
}

/** Names with their numbers; of what was seen once only, and teaches nothing, none. */
type Names = ReadonlyMap<string, number | undefined>

/** The numbers of features, by label and name. What was there when a label was meant teaches, where it was so more than once: all else would only be learned by heart. */
export class Numbers {
  private readonly known = new Map<string, Map<string, number | undefined>>()
  /** `numbered` takes a feature that teaches, and gives its number. */
  constructor(private readonly numbered: (label: string, name: string) => number) {}

  see(label: string, name: string): void {
    const own = this.known.get(label) ?? new Map<string, number | undefined>()
    this.known.set(label, own)
    if (!own.has(name)) own.set(name, undefined)
    else if (own.get(name) === undefined) own.set(name, this.numbered(label, name))
  }

  of = (label: string): Names => this.known.get(label) ?? nothing
}
const nothing: Names = new Map()

/** Numbers as they come, in as much room as they need. */
export class Growing<Room extends Int32Array | Float64Array> {
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
export const growing = (): Growing<Int32Array> => new Growing(new Int32Array(1024))
export const growingMeasures = (): Growing<Float64Array> => new Growing(new Float64Array(1024))

/** Lists as they come. */
export class GrowingLists {
  readonly all = growing()
  private readonly from = growing()
  begin(): void {
    this.from.push(this.all.length)
  }
  /** The numbers of those names that have one, as part of the list that was begun. */
  push(own: Names, names: readonly string[]): void {
    for (const name of names) {
      const at = own.get(name)
      if (at !== undefined) this.all.push(at)
    }
  }
  get lists(): Lists {
    this.begin()
    return { from: this.from.all, all: this.all.all }
  }
}

/** Lists of features that have a measure, as they come. */
export class GrowingMeasured {
  private readonly features = new GrowingLists()
  private readonly measures = growingMeasures()
  add(own: Names, measured: readonly (readonly [name: string, measure: number])[]): void {
    this.features.begin()
    for (const [name, measure] of measured) {
      const at = own.get(name)
      if (at === undefined) continue
      this.features.all.push(at)
      this.measures.push(measure)
    }
  }
  get lists(): Measured {
    return { ...this.features.lists, measures: this.measures.all }
  }
}

/** The same with the measure of each number. */
export interface Measured extends Lists {
  readonly measures: Float64Array
}
