// This file is about bare numbers in rows and columns, which have the unit that is said once for all of them.
import type Fraction from 'fraction.js'
import { numberIn, quantity } from './quantity.ts'
import type { Reading } from './reading.ts'
import { unitNamed } from './units.ts'

const inUnit = (it: Reading, unit: string, note: string, rivals: readonly string[] = []): Reading => ({
  ...it,
  quantity: quantity(it.bare as Fraction, unit),
  bare: null,
  rivals: rivals.map((other) => quantity(it.bare as Fraction, other)),
  note,
})
const isBare = (it: Reading | undefined): boolean => it !== undefined && it.bare !== null && !it.clock

/** "60, 40, 59.7 and 39.8 ft": bare numbers in a row have the unit that the last one has. Of two alone only where they are much alike, "57 and 58 in". */
export function inTheirRow(readings: readonly Reading[], text: string): Reading[] {
  const joins = (a: Reading, b: Reading): boolean =>
    /^\s*(,|;|to\b|plus\b|minus\b|less\b|\+|(,\s*)?(and\b|&))\s*$/.test(text.slice(a.end, b.start))
  const read = [...readings]
  for (let last = read.length - 1; last >= 1; last--) {
    const { quantity: named, rivals } = read[last] as Reading
    if (!named || named.kind === 'money' || named.kind === 'date' || calledByLength.test(read[last]?.said ?? ''))
      continue
    let first = last
    while (first > 0 && isBare(read[first - 1]) && joins(read[first - 1] as Reading, read[first] as Reading)) first--
    if (last - first < (isPairOfSizes(read, first, text) ? 1 : 2)) continue
    const others = rivals.map((it) => it.unit)
    for (let i = first; i < last; i++)
      read[i] = inUnit(read[i] as Reading, named.unit, 'in the unit of the last of the row', others)
  }
  return read
}

// “8s are 6.20, 12s 9.80”: a stick is called so, and its unit is no other's.
const calledByLength = /^\d+s$/

/** Of two, neither may be a number that something goes by: "posts 5 and 6 in a row". */
function isPairOfSizes(read: readonly Reading[], first: number, text: string): boolean {
  const [a, b] = [read[first]?.bare, read[first + 1]?.quantity]
  if (!a || !b) return false
  // "From 20 to 12 %": down from one to the other. "7/8 minus 3/16 in": a sum of like things.
  if (/^\s*(to|plus|minus|less|\+)\s*$/.test(text.slice(read[first]?.end, read[first + 1]?.start))) return true
  if (unitNamed(b.unit).kind === 'percent') return false
  const [small, large] = [a.valueOf(), Number(numberIn(b, b.unit))].sort((x, y) => x - y) as [number, number]
  // A few words are enough: looking over the whole message for every pair would take ever longer.
  const start = read[first]?.start ?? 0
  const before = text.slice(Math.max(0, start - 40), start)
  // “RH around 65 and 68F”: a share of the air, and how warm it is.
  if (/\b(rh|humidity)\s+(?:(?:is|of|at|around|about|near)\s+)?$/i.test(before)) return false
  return (
    large <= small * 2 &&
    !/\b(posts?|sides?|bays?|gates?|corners?|holes?|stakes?|marks?|points?|numbers?|no\.?|#)\s*$/i.test(before)
  )
}

/**
 * A pasted table: under a line of heads stand lines of as many numbers, and a head's unit is that of the bare numbers below it.
 *
 *   time    temp (°F)   RH %
 *   6 am    48          92
 */
export function underTheirHeads(
  readings: readonly Reading[],
  text: string,
  unitOf: (said: string) => string | undefined,
): Reading[] {
  const read = [...readings]
  const places = new Map(readings.map((it, i) => [it, i]))
  for (const { heads, rows } of tablesIn(readings, text)) {
    const units = heads.map((head) =>
      unitSaid(head)
        .map(unitOf)
        .find((unit) => unit !== undefined),
    )
    for (const row of rows)
      for (const [column, it] of row.entries()) {
        const unit = units[column]
        if (unit && isBare(it)) read[places.get(it) as number] = inUnit(it, unit, 'in the unit of its column')
      }
  }
  return read
}

/** A table that was pasted into a message: its heads, and its quantities row by row. */
export interface PastedTable<R extends Reading = Reading> {
  /** What stands over each column; empty where no line of as many heads stands above. */
  readonly heads: readonly string[]
  readonly rows: readonly (readonly R[])[]
}

/** Lines one after another, or parts between semicolons, that hold the same number of quantities: two to eight of them, on two lines or more. */
export function tablesIn<R extends Reading>(readings: readonly R[], text: string): PastedTable<R>[] {
  let next = 0
  const lines = [...text.matchAll(/[^\n;]+/g)].map(({ 0: line, index }) => {
    const held: R[] = []
    for (; (readings[next]?.start ?? Infinity) < index + line.length; next++) held.push(readings[next] as R)
    return { line, held }
  })
  const tables: PastedTable<R>[] = []
  for (let at = 0; at < lines.length; ) {
    const width = (lines[at] as (typeof lines)[number]).held.length
    let end = at + 1
    while (lines[end]?.held.length === width) end++
    if (width >= 2 && width <= 8 && end - at >= 2) {
      const above = lines[at - 1]
      const cells = above?.held.length === 0 ? cellsOf(above.line) : []
      tables.push({
        heads: cells.length === width ? cells : [],
        rows: lines.slice(at, end).map((it) => it.held),
      })
    }
    at = end
  }
  return tables
}

function cellsOf(line: string): string[] {
  const cut = [/\t|\||\s{2,}/, /,/, /\s+(?![([])/].map((between) =>
    line
      .split(between)
      .map((cell) => cell.trim())
      .filter((cell) => cell !== ''),
  )
  return cut.find((cells) => cells.length > 1) ?? []
}

/** "Temp (°F)", "RH %", "°C": what may be the unit of a head. */
function unitSaid(head: string): string[] {
  const inBrackets = /[([]([^()[\]]+)[)\]]/.exec(head)?.[1]
  const parts = head.split(/\s+/)
  const sign = /^[°%]/.test(parts.at(-1) ?? '') || parts.length > 1 ? parts.at(-1) : undefined
  return [inBrackets, sign].filter((it) => it !== undefined)
}
