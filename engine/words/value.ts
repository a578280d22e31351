// This file is about the values of words: read from what people write, fitted to the word's kind, and held against its limits.
import type { Problem } from '../outcome.ts'
import { isExact } from '../quantities/amount.ts'
import {
  amountIn,
  equal,
  isQuantity,
  less,
  quantity,
  type Quantity,
  type System,
  type Value,
} from '../quantities/quantity.ts'
import { readOne } from '../quantities/read.ts'
import type { Reading } from '../quantities/reading.ts'
import { show } from '../quantities/show.ts'
import { type Kind, unitNamed } from '../quantities/units.ts'
import { inSentence, type Word } from './word.ts'

/** What a word declares of itself, a usual value or a limit, read once: every run needs it again. */
export function declaredValue(word: Word, text: string, system: System): Quantity {
  const key = `${system} ${text}`
  const known = declaredValues.get(word)?.get(key)
  if (known) return known
  const read = parseValue(word.list ? { ...word, list: false } : word, text, system)
  if (!isQuantity(read)) throw new Error(`“${text}”, declared for ${word.name}, cannot be read`)
  declaredValues.set(word, (declaredValues.get(word) ?? new Map<string, Quantity>()).set(key, read))
  return read
}
const declaredValues = new WeakMap<Word, Map<string, Quantity>>()

/** Reads one value of a word as people write it, or undefined. A bare number takes the unit of the word; in a list, that of the next one that has a unit. */
export function parseValue(word: Word, text: string, system: System): Value | undefined {
  if (word.list) return parseList(word, text, system)
  if (word.kind === 'choice') return word.options?.[text] ? text : undefined
  const reading = readOne(text, { system })
  if (!reading) return undefined
  if (reading.firmness === 'range') return undefined
  // “3 bananas” are no gallons: only what is counted brings a noun along.
  if (reading.bare && reading.end < text.trim().length && word.kind !== 'count' && word.kind !== 'number')
    return undefined
  return reading.section ? ofStick(word, reading.section) : fittedReading(word, reading, system)
}

/** What a stick called by its size, “2x4”, is worth for a word: its dressed width or thickness, or the size it is called by. */
export function ofStick(word: Word, { name, width, thickness, nominal }: Stick): Quantity | undefined {
  if (word.ofStick === 'thickness') return thickness
  if (word.ofStick === 'name' && nominal) return quantity(name.split('x')[1] as string, 'in')
  if (word.ofStick === 'name thickness') return nominal ? quantity(name.split('x')[0] as string, 'in') : thickness
  return word.ofStick && width
}
type Stick = NonNullable<Reading['section']>

/** What was read, as a value of that word: in the first way of reading it whose kind fits. */
export function fittedReading(
  word: Word,
  { quantity, bare, rivals, clock }: Pick<Reading, 'quantity' | 'bare' | 'rivals' | 'clock'>,
  system: System,
): Quantity | undefined {
  if (clock && word.noun !== 'o’clock') return undefined
  const first = fitted(word, quantity, bare, system)
  if (first || rivals.length === 0) return first
  return rivals.map((it) => fitted(word, it, bare, system)).find((it) => it !== undefined)
}

/** `$4,200` and `€1.250,50` are one amount each; `60,40` is two. */
const thousandsOfMoney = /^[A-Z]{0,3}[$£€]\d{1,3}((,\d{3})+(\.\d+)?|(\.\d{3})*,\d\d)$/

/** `60, 40, 59.7 and 39.8 ft`, `1 : 2 : 3`: the values of a list, between commas, semicolons, colons, line ends or “and”. */
function parseList(word: Word, text: string, system: System): readonly Quantity[] | undefined {
  const spaced = text.trim().split(/\s*(?:;|:|\n|,(?=\s)|\band\b|&)\s*/)
  const isTight = spaced.length === 1 && !/\s/.test(text.trim()) && !thousandsOfMoney.test(text.trim())
  const items = (isTight ? text.trim().split(',') : spaced).filter((it) => it !== '')
  const readings = items.map((it) => readOne(it, { system }))
  const united = readings.map((it) => (it?.quantity ? fittedReading(word, it, system)?.unit : undefined))
  const values = readings.map((reading, i) => {
    if (!reading) return undefined
    if (reading.section) return ofStick(word, reading.section)
    const unit = united.slice(i).find((it) => it) ?? united.findLast((it) => it)
    return reading.bare !== null && unit && word.kind !== 'count'
      ? fitted(word, quantity(reading.bare, unit), null, system)
      : fittedReading(word, reading, system)
  })
  return values.length > 0 && values.every((it) => it !== undefined) ? values : undefined
}

/** A quantity, or a bare number, as a value of that word; undefined when the kinds do not fit. */
export function fitted(
  word: Word,
  q: Quantity | null,
  bare: Quantity['amount'] | null,
  system: System,
): Quantity | undefined {
  if (word.kind === 'choice' || word.kind === 'verdict') return undefined
  if (q) {
    if (q.kind === word.kind) return q
    // "A force of 120 lb": a pound pushes with a pound-force, at standard gravity, as `weight` has it.
    if (word.kind === 'force' && q.kind === 'mass')
      return { kind: 'force', amount: q.amount, unit: unitNamed(q.unit).system === 'metric' ? 'N' : 'lbf' }
    // "3 days" of notice are counted days, where it is days that the word counts.
    if (word.kind === 'count' && q.kind === 'duration' && word.noun?.endsWith(' day'))
      return { kind: 'count', amount: amountIn(q, 'day'), unit: word.noun }
    return undefined
  }
  // A number alone is no day of the calendar.
  if (bare === null || word.kind === 'date') return undefined
  const unit = unitNamed(unitFor(word, system))
  if (word.kind === 'count') return { kind: 'count', amount: bare, unit: word.noun ?? 'ratio' }
  const size = isExact(bare) ? bare.mul(unit.size) : bare
  return { kind: word.kind, amount: isExact(size) && unit.zero ? size.add(unit.zero) : size, unit: unit.name }
}

/** What is wrong with a value of that word in itself: outside what can be, or outside what is usual and not yet confirmed. */
export function problemWith(word: Word, value: Quantity, confirmed: boolean, system: System): Problem | undefined {
  const limit = (text: string | undefined): Quantity | undefined =>
    text === undefined ? undefined : declaredValue(word, text, system)
  const [above, least, most] = [limit(word.possible?.above), limit(word.possible?.least), limit(word.possible?.most)]
  const impossible = (why: string): Problem => ({
    code: 'impossible',
    word: word.name,
    message: `${inSentence(word).replace(/^./, (it) => it.toUpperCase())} cannot be ${show(value)}: ${why}. ${word.measure}`,
    ask: word.ask,
  })
  if (above && (less(value, above) || equal(value, above)))
    return impossible(`it must be more than ${show({ ...above, unit: value.unit })}`)
  if (least && less(value, least)) return impossible(`it must be ${show({ ...least, unit: value.unit })} or more`)
  if (most && less(most, value)) return impossible(`it must be ${show({ ...most, unit: value.unit })} or less`)
  if (word.whole && isExact(value.amount) && value.amount.d !== 1n)
    return impossible('it is a count, so it must be whole')
  const theirUnit = unitNamed(value.unit).system
  const inTheirs = (q: Quantity): string =>
    show(unitNamed(q.unit).system === theirUnit ? q : { ...q, unit: value.unit })
  const [from, to] = [limit(word.plausible?.from), limit(word.plausible?.to)]
  if (!confirmed && from && to && (less(value, from) || less(to, value)))
    return {
      code: 'implausible',
      word: word.name,
      message: `I read ${inSentence(word)} as ${show(value)}. That is outside what I would expect: ${inTheirs(from)} to ${inTheirs(to)}.`,
      ask: `Is ${inSentence(word)} really ${show(value)}? Say yes, or give it again.`,
    }
  return undefined
}

export const unitFor = (word: Word, system: System): string =>
  word.noun ?? word.units?.[system] ?? baseUnit[word.kind as Kind]?.[system] ?? 'ratio'

/** As it is drawn: feet and inches that were told stand in metric units where the rest does. Millimetres stay, since no tape has their inches. */
export const drawnIn = (q: Quantity, word: Word | undefined, system: System): Quantity => {
  const { kind, system: told } = unitNamed(q.unit)
  if (system === 'imperial' || told !== 'imperial') return q
  return { ...q, unit: word ? unitFor(word, system) : baseUnit[kind][system] }
}

/** The units that a result is shown in when its word names none. */
export const baseUnit: Record<Kind, Record<System, string>> = {
  length: { imperial: 'in', metric: 'mm' },
  area: { imperial: 'in2', metric: 'm2' },
  volume: { imperial: 'ft3', metric: 'L' },
  mass: { imperial: 'lb', metric: 'kg' },
  density: { imperial: 'lb/ft3', metric: 'kg/m3' },
  coverage: { imperial: 'ft2/gal', metric: 'm2/L' },
  temperature: { imperial: 'F', metric: 'C' },
  temperatureDifference: { imperial: 'dF', metric: 'dC' },
  duration: { imperial: 'day', metric: 'day' },
  percent: { imperial: 'percent', metric: 'percent' },
  angle: { imperial: 'deg', metric: 'deg' },
  count: { imperial: 'ratio', metric: 'ratio' },
  number: { imperial: 'ratio', metric: 'ratio' },
  money: { imperial: 'USD', metric: 'USD' },
  force: { imperial: 'lbf', metric: 'N' },
  moment: { imperial: 'lbf-ft', metric: 'N-m' },
  pressure: { imperial: 'psi', metric: 'MPa' },
  pressureByDepth: { imperial: 'psf/ft', metric: 'kPa/m' },
  speed: { imperial: 'mph', metric: 'm/s' },
  lineWeight: { imperial: 'lb/ft', metric: 'kg/m' },
  date: { imperial: 'date', metric: 'date' },
}
