// This file is about what a calculation is, and how one is run.
import type { CautionCode } from './cautions/caution.ts'
import type { Solver } from './cutting/solver.ts'
import {
  type Amounts,
  dimensionOfLine,
  type Edge,
  type Line,
  readLine,
  sameDimension,
  workLine,
  writeLine,
} from './formula.ts'
import { placeLabel } from './places.ts'
import type { Cited, Given, Outcome, Problem, Source, Step, Table } from './outcome.ts'
import type { Amount } from './quantities/amount.ts'
import { isList, isQuantity, type Quantity, type System, type Value } from './quantities/quantity.ts'
import { show } from './quantities/show.ts'
import { type Dimension, dimensionOf, type Kind } from './quantities/units.ts'
import { baseUnit, declaredValue, drawnIn, problemWith, unitFor } from './words/value.ts'
import { inSentence, type Usual, type Word } from './words/word.ts'

type Words = Readonly<Record<string, Word>>
/** What a calculation's own code is handed for a word: an option, a verdict, or a quantity for each place in turn. */
type Handed<W> =
  W extends Word<infer K> ? (K extends 'choice' ? string : K extends 'verdict' ? boolean | null : Quantity) : never

export interface Tools<N extends Words> {
  /** Works a line and keeps the step; gives the quantity (of the first place, when there are several). Shown in that unit, else in its word's. */
  line(name: string, unit?: string): Quantity
  /** Every place's value of a word or of a line already worked. */
  rows(name: string): readonly Quantity[]
  /** Hands over these words place by place; one that is given once holds for every place. */
  eachPlace(names: readonly string[], check: (...values: Quantity[]) => void): void
  has(name: keyof N & string): boolean
  /** Whether nobody said it, and its usual value was taken. */
  assumed(name: keyof N & string): boolean
  /** Whether a line has been worked, or a value put. */
  worked(name: string): boolean
  /** Whether that result is wanted; where nothing was said of it, all are. */
  wants(name: string): boolean
  /** Gives a local name its value where no line can, for instance where a choice decides between two lines. */
  put<V extends Quantity | readonly Quantity[]>(name: string, value: V): V
  /** Gives a result that no line of its name can: a verdict, what a search or a table found, or one of two lines. */
  tell<V extends Value>(name: string, value: V): V
  /** Stops here and asks: the working found that it cannot do without this word after all. */
  need(word: keyof N & string): never
  /** Stops here: it cannot be done as given. */
  refuse(word: string, message: string): never
  /** Goes on, and says so. */
  doubt(code: Problem['code'], word: string, message: string, ask?: string): void
  remark(text: string): void
  /** Shows a quantity in a remark or a refusal, and keeps it among the figures of the answer. */
  cite(q: Quantity, label: string, role?: 'result' | 'published'): string
  table(table: Table): void
  readonly system: System
  /** A solver of linear and whole-number models, where one was handed in; without it a plan comes by plain rules. */
  readonly solver: Solver | undefined
}

export interface Example {
  readonly ask: string
  readonly given: Readonly<Record<string, string | readonly string[]>>
  /** Exact texts as `show` writes them; a verdict as its word says it. */
  readonly expect: Readonly<Record<string, string>>
}

/** What a calculation file declares. See `calculations/pickets/picket-spacing.ts` for the pattern. */
export interface Declared<N extends Words> {
  readonly name: string
  readonly title: string
  readonly answers: string
  readonly needs: N
  /** Needed words it can do without; `work` asks `has`. */
  readonly may?: readonly (keyof N & string)[]
  /** Words needed only when one of these results is wanted; their usual values are taken only then, too. */
  readonly onlyFor?: Readonly<Partial<Record<keyof N & string, readonly string[]>>>
  /** Usual values that hold for this calculation only, before the word's own. */
  readonly usually?: Readonly<Partial<Record<keyof N & string, Usual>>>
  /** Groups of words of which one must be known; the first is asked for. */
  readonly oneOf?: readonly (readonly (keyof N & string)[])[]
  /** Groups of words that stand for one another: the one that was told is enough, else the one that the talk has worked last. The others are not worked for it. */
  readonly standIns?: readonly (readonly (keyof N & string)[])[]
  readonly gives: Words
  /** What people say when they mean this calculation and no other that gives the same words: "a picket against each post". */
  readonly called?: readonly string[]
  /** The results that answer when the person only names the subject. */
  readonly headlines: readonly string[]
  /** Results that answer together: who asks for the first is told the others as well. */
  readonly together?: Readonly<Record<string, readonly string[]>>
  /** Its results may stand in for what another calculation needs and nobody said. */
  readonly joins?: true
  /** It does better with a solver handed in: whoever runs it should have one ready. */
  readonly solves?: true
  /** Serves until the bays are known: one that goes bay by bay comes before it, where that lacks no more. */
  readonly untilBays?: true
  /** Worked only for a fence whose runs are known. */
  readonly ofTheFence?: true
  /** A sum of any trade: it is meant only where a message asks for nothing of this one. */
  readonly plain?: true
  /** Kinds of local names: those that `put` gives a value, and of lines whose kind their dimension leaves open (an angle, not a number). */
  readonly locals?: Readonly<Record<string, Kind>>
  /** Each line: its arithmetic, and the reason as it would be said aloud. A name that is no word is local to the file. */
  readonly lines: Readonly<Record<string, readonly [formula: string, because: string]>>
  work(given: { readonly [K in keyof N]: Handed<N[K]> }, tools: Tools<N>): void
  readonly sources: readonly Source[]
  /** Cautions said in full whenever this is worked. The three that stand in every answer are listed only where it digs, sites, or sets a height or gate. */
  readonly cautions: readonly CautionCode[]
  readonly drawing?: (seen: Seen) => string | null
  readonly examples: readonly Example[]
}

/** What a drawing is handed: everything given and worked, by name. */
export interface Seen {
  one(name: string): Quantity
  maybe(name: string): Quantity | undefined
  option(name: string): string | undefined
  rows(name: string): readonly Quantity[]
  readonly tables: readonly Table[]
  readonly places: readonly string[]
  readonly system: System
}

/** A calculation whose lines are read and checked: what `calculation` makes of what a file declares. `run` works it. */
export interface Calculation extends Omit<Declared<Words>, 'work' | 'lines'> {
  readonly lines: ReadonlyMap<string, { readonly line: Line; readonly because: string; readonly dimension: Dimension }>
  work(given: Record<string, unknown>, tools: Tools<Words>): void
}

/** `concreteHeight` is read as “concrete height” on the page. */
const spaced = (name: string): string =>
  name.replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)

const missing = (word: Word): Problem => ({
  code: 'missing',
  word: word.name,
  message: `I need ${inSentence(word)}.`,
  ask: word.ask,
})

/** A sum over all places that has no one value, since a word of the whole job was told for one place only. */
const notAlike = (
  word: Word | undefined,
  name: string,
  each: readonly Quantity[],
  places: readonly string[],
): Problem => ({
  code: 'contradictory',
  word: name,
  message: `I have more than one value for ${word ? inSentence(word) : `the ${spaced(name)}`}: ${each.map((it, i) => `${show(it)} (${placeLabel(places[i] as string)})`).join(', ')}. All of it together needs one. Give one for all, or ask for each kind of post on its own.`,
})

/** A rounding that could go either way: both whole numbers are shown, and which of them was taken. */
const onTheEdge = (word: Word | undefined, name: string, { figure, either, taken }: Edge): Problem => {
  const plain = (amount: Amount): string => show({ kind: 'number', amount, unit: 'ratio' })
  return {
    code: 'contradictory',
    word: name,
    message: `Exactly on the edge (${word?.label ?? spaced(name)}): ${plain(figure)} before rounding, as near as I can work it, so it could be ${plain(either[0])} or ${plain(either[1])}. I took ${plain(taken)}.`,
  }
}

class Refusal {
  constructor(readonly problem: Problem) {}
}

/** Reads and checks the lines of a calculation, when the catalogue loads. Throws at our own mistakes. */
export function calculation<N extends Words>(declared: Declared<N>): Calculation {
  const dimensions = new Map<string, Dimension>()
  const dimensionOfWord = (word: Word): Dimension | undefined =>
    word.kind === 'choice' || word.kind === 'verdict' ? undefined : dimensionOf[word.kind]
  for (const word of Object.values(declared.needs)) {
    const dimension = dimensionOfWord(word)
    if (dimension) dimensions.set(word.name, dimension)
  }
  for (const [name, kind] of Object.entries(declared.locals ?? {}))
    if (!declared.lines[name]) dimensions.set(name, dimensionOf[kind])
  const lines = new Map<string, { line: Line; because: string; dimension: Dimension }>()
  for (const [name, [text, because]] of Object.entries(declared.lines)) {
    const line = readLine(text)
    const dimension = dimensionOfLine(line, (used) => dimensions.get(used))
    const word = declared.gives[name]
    const promised = word && dimensionOfWord(word)
    if (promised && !sameDimension(promised, dimension))
      throw new Error(`${declared.name}: line “${name}” does not give a ${word.kind}`)
    const local = declared.locals?.[name]
    if (local && !sameDimension(dimensionOf[local], dimension))
      throw new Error(`${declared.name}: line “${name}” does not give a ${local}`)
    dimensions.set(name, dimension)
    lines.set(name, { line, because, dimension })
  }
  for (const name of declared.headlines)
    if (!declared.gives[name]) throw new Error(`${declared.name} does not give its headline “${name}”`)
  return { ...declared, lines, work: declared.work as Calculation['work'] }
}

/** Which words must be known for these results. Words it may do without are left out. */
export function needsFor(calc: Calculation, wanted: readonly string[]): Word[] {
  return Object.values(calc.needs).filter((word) => {
    if (calc.may?.includes(word.name)) return false
    const only = calc.onlyFor?.[word.name]
    return !only || wanted.some((name) => only.includes(name))
  })
}

const kinds = Object.keys(dimensionOf) as Kind[]
const kindOf = (dimension: Dimension): Kind =>
  sameDimension(dimension, dimensionOf.number)
    ? 'number'
    : (kinds.find((kind) => sameDimension(dimensionOf[kind], dimension)) ?? 'number')

/** The usual value of a word in a calculation, and why; nothing where it must be asked for. */
export const usualFor = (calc: Calculation, word: Word): Usual | undefined => calc.usually?.[word.name] ?? word.usual

/** The same as a value, in the person's units. */
export function usualValue(calc: Calculation, word: Word, system: System): Value | undefined {
  const usual = usualFor(calc, word)
  if (!usual) return undefined
  const text = system === 'metric' ? (usual.metric ?? usual.value) : usual.value
  return word.kind === 'choice' ? text : declaredValue(word, text, system)
}

/** Whether some result can be had without that word. */
const canWait = (calc: Calculation, name: string): boolean => {
  const only = calc.onlyFor?.[name]
  return only !== undefined && Object.keys(calc.gives).some((result) => !only.includes(result))
}

export interface RunOptions {
  readonly system: System
  /** The results that are wanted; all that can be had when left out. */
  readonly wanted?: readonly string[]
  /** Words whose odd value the person has confirmed. */
  readonly confirmed?: ReadonlySet<string>
  /** Names of the places, when some words are given as a list. */
  readonly places?: readonly string[]
  /** What has to be said beside the answer, about how the job was understood. */
  readonly doubts?: readonly Problem[]
  /** What solves linear and whole-number models, from outside the engine. */
  readonly solver?: Solver
}

/** Words told place by place must have one value for each place. */
function lengthsApart(
  given: ReadonlyMap<string, Given>,
  calc: Calculation,
  places: readonly string[] | undefined,
): Problem | undefined {
  const byPlace = [...given].flatMap(([name, { value }]) => {
    const word = calc.needs[name] as Word
    return isList(value) && !word.list ? [{ word, count: value.length }] : []
  })
  const expected = places?.length ?? Math.max(...byPlace.map((it) => it.count))
  const wrong = byPlace.find((it) => it.count !== expected)
  if (!wrong) return undefined
  return {
    code: 'contradictory',
    word: wrong.word.name,
    message: `I have ${wrong.count} values for ${inSentence(wrong.word)}, and ${expected} kinds of post. Give one for each kind, or one for all.`,
  }
}

/** The one currency that all the money is in. Money is never changed from one into another: nobody here knows today's rate. */
function currencyOf(given: ReadonlyMap<string, Given>, calc: Calculation): { currency: string; mixed?: Problem } {
  const money = [...given].flatMap(([name, { value }]) =>
    (isList(value) ? value : isQuantity(value) ? [value] : [])
      .filter((it) => it.kind === 'money')
      .map((it) => ({ word: calc.needs[name] as Word, it })),
  )
  const [first] = money
  const other = money.find(({ it }) => it.unit !== first?.it.unit)
  if (!first || !other) return { currency: first?.it.unit ?? baseUnit.money.imperial }
  return {
    currency: first.it.unit,
    mixed: {
      code: 'contradictory',
      word: other.word.name,
      message: `${show(first.it)} and ${show(other.it)} are two currencies. I do not change one into the other, since I do not know the rate of the day. Give all of it in one.`,
      ask: other.word.ask,
    },
  }
}

/** Runs a calculation on what is given, taking usual values where there are any and saying so. Never throws for the person's mistakes. */
export function run(calc: Calculation, told: ReadonlyMap<string, Given>, options: RunOptions): Outcome {
  const { system, places = [''] } = options
  const wanted = options.wanted ?? Object.keys(calc.gives)
  const given = new Map<string, Given>()
  const problems: Problem[] = []
  const required = new Set(needsFor(calc, wanted).map((word) => word.name))
  // A word that only some results hang on does not hold up the others: they are worked, and it is asked for beside them.
  const postponed: Problem[] = []

  for (const word of Object.values(calc.needs)) {
    const found = told.get(word.name)
    if (found) {
      given.set(word.name, found)
      const values = isList(found.value) ? found.value : isQuantity(found.value) ? [found.value] : []
      const isSure = found.role === 'result' || (options.confirmed?.has(word.name) ?? false)
      problems.push(...values.flatMap((value) => problemWith(word, value, isSure, system) ?? []))
      continue
    }
    // A usual value that nothing wanted hangs on is not taken, and so not read out either.
    const isIdle = calc.onlyFor?.[word.name]?.every((name) => !wanted.includes(name)) ?? false
    const usual = isIdle ? undefined : usualValue(calc, word, system)
    if (usual !== undefined) given.set(word.name, { value: usual, role: 'assumed' })
    else if (required.has(word.name)) (canWait(calc, word.name) ? postponed : problems).push(missing(word))
  }
  const uneven = lengthsApart(given, calc, options.places)
  const { currency, mixed } = currencyOf(given, calc)
  problems.push(...[uneven, mixed].filter((it) => it !== undefined))
  for (const group of calc.oneOf ?? [])
    if (!group.some((name) => told.has(name))) problems.push(missing(calc.needs[group[0] as string] as Word))
  // Where every result waits for something, nothing can be worked yet: then they are asked for, not worked beside.
  const waits = (result: string): boolean => postponed.some((it) => calc.onlyFor?.[it.word ?? '']?.includes(result))
  if (postponed.length > 0 && Object.keys(calc.gives).every(waits)) problems.push(...postponed.splice(0))
  if (problems.length > 0) return { ok: false, given, problems: [...problems, ...postponed], cited: [] }

  const values = new Map<string, Value>()
  const steps: Step[] = []
  const doubts: Problem[] = [...(options.doubts ?? []), ...postponed]
  const remarks: string[] = []
  const tables: Table[] = []
  const cited: Cited[] = []
  const rowsOf = (name: string): readonly Quantity[] => {
    const value = values.get(name) ?? given.get(name)?.value
    if (isList(value)) return value
    if (isQuantity(value)) return [value]
    throw new Error(`${calc.name} has no quantity “${name}” yet`)
  }
  // Lines that are of all places together: what one of them needs besides must be the same everywhere.
  const ofTheWhole = new Set<string>()
  const varied = (names: readonly string[]): string | undefined => {
    const name = names.find((it) => isList(values.get(it) ?? given.get(it)?.value))
    return name === undefined || given.has(name) ? name : (varied(calc.lines.get(name)?.line.names ?? []) ?? name)
  }
  const tools: Tools<Words> = {
    system,
    solver: options.solver,
    line(name, inUnit) {
      const entry = calc.lines.get(name)
      if (!entry) throw new Error(`${calc.name} has no line “${name}”`)
      const look = (used: string): Quantity | readonly Quantity[] => {
        const value = values.get(used) ?? given.get(used)?.value
        if (isList(value) || isQuantity(value)) return value
        throw new Error(`${calc.name}, line “${name}”: no quantity “${used}” yet`)
      }
      const worked = workLine(
        entry.line,
        (used): Amounts => {
          const value = look(used)
          return Array.isArray(value) ? value.map((q: Quantity) => q.amount) : (value as Quantity).amount
        },
        (edge) => doubts.push(onTheEdge(calc.gives[name], name, edge)),
      )
      const { besideSum, names } = entry.line
      if (besideSum || names.some((it) => ofTheWhole.has(it))) {
        ofTheWhole.add(name)
        const differs = places.length > 1 && Array.isArray(worked) ? varied(besideSum ?? names) : undefined
        if (differs !== undefined) throw new Refusal(notAlike(calc.needs[differs], differs, rowsOf(differs), places))
      }
      const word = calc.gives[name]
      const kind = word ? (word.kind as Kind) : (calc.locals?.[name] ?? kindOf(entry.dimension))
      const unit = inUnit ?? (kind === 'money' ? currency : word ? unitFor(word, system) : baseUnit[kind][system])
      const asQuantity = (amount: Quantity['amount']): Quantity => ({ kind, amount, unit })
      const result: Quantity | readonly Quantity[] = Array.isArray(worked)
        ? worked.map(asQuantity)
        : asQuantity(worked as Quantity['amount'])
      values.set(name, result)
      const shown = Array.isArray(result) ? result.map(show).join('; ') : show(result as Quantity)
      steps.push({
        gives: name,
        value: result,
        name: word?.label ?? spaced(name),
        formula: `${name} = ${entry.line.text}`,
        substituted: writeLine(entry.line, look),
        result: shown,
        because: entry.because,
      })
      return rowsOf(name)[0] as Quantity
    },
    rows: rowsOf,
    eachPlace(names, check) {
      const columns = names.map(rowsOf)
      for (const i of places.keys()) check(...columns.map((column) => (column[i] ?? column[0]) as Quantity))
    },
    has: (name) => given.has(name),
    assumed: (name) => given.get(name)?.role === 'assumed',
    worked: (name) => values.has(name),
    wants: (name) => wanted.includes(name),
    put(name, value) {
      values.set(name, value)
      return value
    },
    need(name) {
      throw new Refusal(missing(calc.needs[name] as Word))
    },
    tell(name, value) {
      if (!calc.gives[name]) throw new Error(`${calc.name} does not give “${name}”`)
      values.set(name, value)
      return value
    },
    refuse(word, message) {
      throw new Refusal({ code: 'impossible', word, message })
    },
    doubt: (code, word, message, ask) => void doubts.push({ code, word, message, ...(ask ? { ask } : {}) }),
    remark: (text) => void remarks.push(text),
    cite(q, label, role = 'result') {
      cited.push({ label, value: q, role })
      return show(q)
    },
    table: (table) => void tables.push(table),
  }

  try {
    calc.work(
      Object.fromEntries([...given].map(([name, { value }]) => [name, isList(value) ? value[0] : value])),
      tools,
    )
  } catch (thrown) {
    if (thrown instanceof Refusal) return { ok: false, given, problems: [thrown.problem], cited }
    throw thrown
  }
  const drawn = (name: string): Quantity[] => rowsOf(name).map((it) => drawnIn(it, calc.needs[name], system))
  const seen: Seen = {
    one: (name) => drawn(name)[0] as Quantity,
    maybe: (name) => (given.has(name) || values.has(name) ? drawn(name)[0] : undefined),
    option: (name) => [given.get(name)?.value].find((it) => typeof it === 'string'),
    rows: drawn,
    tables,
    places,
    system,
  }
  return {
    ok: true,
    given,
    values: new Map([...values].filter(([name]) => calc.gives[name])),
    steps,
    doubts,
    sources: calc.sources,
    tables,
    remarks,
    cited,
    // Drawn when it is looked at: many a working is never shown.
    get drawing() {
      return calc.drawing?.(seen) ?? null
    },
  }
}
