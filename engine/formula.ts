// This file is about one line of arithmetic: read from its text, checked by kind, worked out, and written with the numbers in.
import type Fraction from 'fraction.js'
import {
  type Amount,
  about,
  absolute,
  add,
  ceiling,
  compare,
  exact,
  floor,
  isExact,
  negative,
  over,
  power,
  roundTo,
  squareRoot,
  subtract,
  through,
  times,
  toNumber,
} from './quantities/amount.ts'
import { show } from './quantities/show.ts'
import type { Quantity } from './quantities/quantity.ts'
import { type Dimension, dimensionOf } from './quantities/units.ts'

type Operator = '+' | '-' | '*' | '/'
type Node =
  | { is: 'number'; text: string; value: Fraction }
  | { is: 'name'; name: string }
  | { is: 'call'; name: string; inputs: Node[] }
  | { is: 'pair'; operator: Operator; left: Node; right: Node }
  | { is: 'power'; base: Node; exponent: number }
  | { is: 'negative'; inner: Node }

/** What a line may call: how many inputs each takes. */
const calls: Record<string, number> = {
  ceil: 1,
  floor: 1,
  round: 2,
  abs: 1,
  min: 2,
  max: 2,
  sqrt: 1,
  sum: 1,
  sin: 1,
  cos: 1,
  tan: 1,
  asin: 1,
  acos: 1,
  atan: 1,
  sinh: 1,
  cosh: 1,
  ln: 1,
  exp: 1,
  weight: 1,
  fahrenheit: 1,
}

export interface Line {
  readonly text: string
  /** Every name the line uses, in order of first use. */
  readonly names: readonly string[]
  /** Those of them that stand outside a sum, where the line adds something up over all places. */
  readonly besideSum: readonly string[] | null
  readonly node: Node
}

/** Reads a line. Throws, naming the line and the place, when it is not arithmetic: that is our mistake, not the person's. */
export function readLine(text: string): Line {
  const tokens = text.match(/\d+(?:\.\d+)?|[A-Za-z][A-Za-z0-9]*|[-+*/^(),]|\S/g) ?? []
  const names: string[] = []
  const outside: string[] = []
  let hasSum = false
  let sums = 0
  let at = 0
  const wrong = (what: string): never => {
    throw new Error(`“${text}”: ${what} at “${tokens[at] ?? 'the end'}”`)
  }
  const take = (token: string): void => {
    if (tokens[at] !== token) wrong(`expected “${token}”`)
    at++
  }

  const sum = (): Node => {
    let left = product()
    while (tokens[at] === '+' || tokens[at] === '-')
      left = { is: 'pair', operator: tokens[at++] as Operator, left, right: product() }
    return left
  }
  const product = (): Node => {
    let left = factor()
    while (tokens[at] === '*' || tokens[at] === '/')
      left = { is: 'pair', operator: tokens[at++] as Operator, left, right: factor() }
    return left
  }
  const factor = (): Node => {
    if (tokens[at] === '-') {
      at++
      return { is: 'negative', inner: factor() }
    }
    const base = primary()
    if (tokens[at] !== '^') return base
    at++
    const exponent = Number(tokens[at++])
    if (!Number.isInteger(exponent)) wrong('a power must be a whole number')
    return { is: 'power', base, exponent }
  }
  const primary = (): Node => {
    const token = tokens[at++]
    if (token === undefined) return wrong('the line ends too early')
    if (token === '(') {
      const inner = sum()
      take(')')
      return inner
    }
    if (/^\d/.test(token)) return { is: 'number', text: token, value: exact(token) }
    if (!/^[A-Za-z]/.test(token)) {
      at--
      return wrong('not arithmetic')
    }
    if (tokens[at] !== '(') {
      if (token !== 'pi' && !names.includes(token)) names.push(token)
      if (token !== 'pi' && sums === 0) outside.push(token)
      return { is: 'name', name: token }
    }
    at++
    if (token === 'sum') {
      hasSum = true
      sums++
    }
    const inputs = [sum()]
    while (tokens[at] === ',') {
      at++
      inputs.push(sum())
    }
    take(')')
    if (token === 'sum') sums--
    if (calls[token] === undefined) wrong(`“${token}” is not one of ${Object.keys(calls).join(', ')}`)
    if (calls[token] !== inputs.length) wrong(`“${token}” takes ${calls[token]} inputs`)
    return { is: 'call', name: token, inputs }
  }
  const node = sum()
  if (at < tokens.length) wrong('something is left over')
  return { text, names, besideSum: hasSum ? outside : null, node }
}

const parts = ['length', 'mass', 'heat', 'time', 'money', 'force'] as const
const combine = (a: Dimension, b: Dimension, sign: 1 | -1): Dimension =>
  Object.fromEntries(parts.map((part) => [part, a[part] + sign * b[part]])) as unknown as Dimension
export const sameDimension = (a: Dimension, b: Dimension): boolean => parts.every((part) => a[part] === b[part])
const sayDimension = (d: Dimension): string =>
  parts
    .filter((p) => d[p] !== 0)
    .map((p) => `${p}^${d[p]}`)
    .join(' ') || 'a plain number'

/** The dimension of what the line gives. Throws when a length is added to a count, and the like. */
export function dimensionOfLine(line: Line, known: (name: string) => Dimension | undefined): Dimension {
  const plain = dimensionOf.number
  const same = (a: Dimension, b: Dimension, doing: string): Dimension => {
    if (!sameDimension(a, b)) throw new Error(`“${line.text}” would ${doing} ${sayDimension(a)} and ${sayDimension(b)}`)
    return a
  }
  const visit = (node: Node): Dimension => {
    switch (node.is) {
      case 'number':
        return plain
      case 'name': {
        if (node.name === 'pi') return plain
        const found = known(node.name)
        if (!found) throw new Error(`“${line.text}” uses “${node.name}”, which is not an input or an earlier line`)
        return found
      }
      case 'negative':
        return visit(node.inner)
      case 'power': {
        const base = visit(node.base)
        return Object.fromEntries(parts.map((part) => [part, base[part] * node.exponent])) as unknown as Dimension
      }
      case 'pair': {
        const [left, right] = [visit(node.left), visit(node.right)]
        if (node.operator === '*') return combine(left, right, 1)
        if (node.operator === '/') return combine(left, right, -1)
        return same(left, right, node.operator === '+' ? 'add' : 'subtract')
      }
      case 'call': {
        const inputs = node.inputs.map(visit)
        const first = inputs[0] ?? plain
        switch (node.name) {
          case 'min':
          case 'max':
            // Nothing is nothing in any unit: “max(short, 0)”.
            if (isNothing(node.inputs[1] as Node)) return first
            return same(first, inputs[1] ?? plain, 'compare')
          case 'round':
            return same(first, inputs[1] ?? plain, 'round')
          case 'ceil':
          case 'floor':
          case 'sin':
          case 'cos':
          case 'tan':
          case 'asin':
          case 'acos':
          case 'atan':
          case 'sinh':
          case 'cosh':
          case 'ln':
          case 'exp':
            return same(first, plain, 'take as a number')
          case 'weight':
            same(first, dimensionOf.mass, 'weigh')
            return dimensionOf.force
          case 'fahrenheit':
            same(first, dimensionOf.temperature, 'take as a temperature')
            return plain
          case 'sqrt':
            return Object.fromEntries(parts.map((part) => [part, first[part] / 2])) as unknown as Dimension
          default:
            return first
        }
      }
      default:
        return node satisfies never
    }
  }
  return visit(line.node)
}

const isNothing = (node: Node): boolean => node.is === 'number' && node.value.equals(0)

/** A number for each place, or one for all. */
export type Amounts = Amount | readonly Amount[]
const isMany = (a: Amounts): a is readonly Amount[] => Array.isArray(a)

/** One amount worked, or each of a list. */
const each = (a: Amounts, work: (a: Amount) => Amount): Amounts => (isMany(a) ? a.map(work) : work(a))
/** Two amounts worked; beside a list, one amount stands for all its places. */
const pairwise = (a: Amounts, b: Amounts, work: (a: Amount, b: Amount) => Amount): Amounts => {
  if (isMany(a)) return a.map((it, i) => work(it, isMany(b) ? (b[i] as Amount) : b))
  return isMany(b) ? b.map((it) => work(a, it)) : work(a, b)
}

/** A rounding that could go either way within the error carried: the figure before it, both whole numbers, and the one taken. */
export interface Edge {
  readonly figure: Amount
  readonly either: readonly [Fraction, Fraction]
  readonly taken: Fraction
}

const working = { '+': add, '-': subtract, '*': times, '/': over } as const

/** Works the line out. `onEdge` is told when a rounding could go either way. */
export function workLine(line: Line, value: (name: string) => Amounts, onEdge: (edge: Edge) => void): Amounts {
  const degrees = Math.PI / 180
  const visit = (node: Node): Amounts => {
    switch (node.is) {
      case 'number':
        return node.value
      case 'name':
        return node.name === 'pi' ? about(Math.PI, 2 ** -52) : value(node.name)
      case 'negative':
        return each(visit(node.inner), negative)
      case 'power':
        return each(visit(node.base), (base) => power(base, node.exponent))
      case 'pair':
        return pairwise(visit(node.left), visit(node.right), working[node.operator])
      case 'call': {
        // What takes one input does not look at the second.
        const [input, second] = node.inputs.map(visit) as [Amounts, Amounts]
        const whole = (round: typeof ceiling) =>
          each(input, (a) => {
            const { whole: taken, either } = round(a)
            if (either) onEdge({ figure: a, either, taken })
            return taken
          })
        switch (node.name) {
          case 'ceil':
            return whole(ceiling)
          case 'floor':
            return whole(floor)
          case 'round':
            return pairwise(input, second, (a, step) => {
              if (!('s' in step)) throw new Error(`“${line.text}”: a mark is exact`)
              return roundTo(a, step)
            })
          case 'abs':
            return each(input, absolute)
          case 'min':
            return pairwise(input, second, (a, b) => (compare(a, b) === 1 ? b : a))
          case 'max':
            return pairwise(input, second, (a, b) => (compare(a, b) === -1 ? b : a))
          case 'sqrt':
            return each(input, squareRoot)
          case 'sum':
            return isMany(input) ? input.reduce(add, exact(0)) : input
          case 'sin':
            return each(input, (a) => through(a, (x) => Math.sin(x * degrees), degrees))
          case 'cos':
            return each(input, (a) => through(a, (x) => Math.cos(x * degrees), degrees))
          case 'tan':
            return each(input, (a) =>
              through(a, (x) => Math.tan(x * degrees), degrees / Math.cos(toNumber(a) * degrees) ** 2),
            )
          // Angles are in degrees. Near ±1 an arc's slope runs away, so its error is that of the two ends.
          case 'asin':
            return each(input, (a) => between(a, (x) => Math.asin(x) / degrees))
          case 'acos':
            return each(input, (a) => between(a, (x) => Math.acos(x) / degrees))
          case 'atan':
            return each(input, (a) => through(a, (x) => Math.atan(x) / degrees, 1 / degrees))
          case 'sinh':
            return each(input, (a) => through(a, Math.sinh, Math.cosh(toNumber(a))))
          case 'cosh':
            return each(input, (a) => through(a, Math.cosh, Math.sinh(Math.abs(toNumber(a)))))
          case 'ln':
            return each(input, logarithm)
          case 'exp':
            return each(input, (a) => through(a, Math.exp, Math.exp(toNumber(a) + (isExact(a) ? 0 : a.error))))
          case 'weight':
            return input // a pound weighs a pound-force, at standard gravity
          case 'fahrenheit':
            return each(input, (a) => about(toNumber(a))) // kept in °F; used only in published fits, which are not exact
          default:
            throw new Error(`“${node.name}” has no working`)
        }
      }
      default:
        return node satisfies never
    }
  }
  return visit(line.node)
}

/** A function of one argument between −1 and 1, with the spread of its ends as its error. */
function between(a: Amount, f: (x: number) => number): Amount {
  const [x, error] = [toNumber(a), isExact(a) ? 0 : a.error]
  const held = (it: number): number => Math.max(-1, Math.min(1, it))
  if (Math.abs(x) - error > 1) throw new RangeError(`${x} has no angle: it lies outside −1 to 1`)
  const value = f(held(x))
  return about(
    value,
    Math.max(Math.abs(f(held(x + error)) - value), Math.abs(f(held(x - error)) - value)) + Math.abs(value) * 2 ** -50,
  )
}

/** The natural logarithm, which only a number that is surely above nothing has. */
function logarithm(a: Amount): Amount {
  const [x, error] = [toNumber(a), isExact(a) ? 0 : a.error]
  if (x - error <= 0) throw new RangeError(`${x} has no logarithm`)
  return through(a, Math.log, 1 / (x - error))
}

const raised: Record<number, string> = { 2: '²', 3: '³' }
const spoken: Record<string, string> = {
  ceil: 'round up',
  floor: 'round down',
  round: 'to the nearest mark',
  fahrenheit: '',
  weight: '',
  asin: 'angle whose sine is',
  acos: 'angle whose cosine is',
  atan: 'angle whose tangent is',
  exp: 'e to the power',
}

/** How strongly what is written holds together: 1 as a sum does, 2 as a product, 3 as one number. A sum over a list is written out. */
const strength = (node: Node, rowsIn: (inner: Node) => number): number => {
  if (node.is === 'call' && node.name === 'sum') {
    const inner = node.inputs[0] as Node
    return rowsIn(inner) > 1 ? 1 : strength(inner, rowsIn)
  }
  if (node.is === 'pair') return node.operator === '+' || node.operator === '-' ? 1 : 2
  return node.is === 'negative' ? 1 : 3
}

/** The line with the quantities in place of their names; a list writes it once for each of its values. */
export function writeLine(line: Line, value: (name: string) => Quantity | readonly Quantity[]): string {
  const rows = Math.max(
    1,
    ...line.names.map((name) => {
      const found = value(name)
      return Array.isArray(found) ? found.length : 1
    }),
  )
  // A sum over a list is written out for as many as that list has, however many another list of the line has.
  const rowsIn = (node: Node): number => {
    if (node.is === 'name') {
      const found = node.name === 'pi' ? undefined : value(node.name)
      return Array.isArray(found) ? found.length : 1
    }
    if (node.is === 'negative') return rowsIn(node.inner)
    if (node.is === 'power') return rowsIn(node.base)
    if (node.is === 'pair') return Math.max(rowsIn(node.left), rowsIn(node.right))
    return node.is === 'call' ? Math.max(1, ...node.inputs.map(rowsIn)) : 1
  }
  const isMoney = (node: Node): boolean => {
    const found = node.is === 'name' && node.name !== 'pi' ? value(node.name) : undefined
    return (Array.isArray(found) ? found[0]?.kind : (found as Quantity | undefined)?.kind) === 'money'
  }
  const visit = (node: Node, row: number): string => {
    const inBrackets = (inner: Node, least: number): string =>
      strength(inner, rowsIn) < least ? `(${visit(inner, row)})` : visit(inner, row)
    switch (node.is) {
      case 'number':
        return node.text
      case 'name': {
        if (node.name === 'pi') return 'π'
        const found = value(node.name)
        return bare(Array.isArray(found) ? (found[row] as Quantity) : (found as Quantity))
      }
      case 'negative':
        return `−${inBrackets(node.inner, 3)}`
      case 'power': {
        const base = visit(node.base, row)
        return `${/^[\d.,]+$/.test(base) ? base : `(${base})`}${raised[node.exponent] ?? `^${node.exponent}`}`
      }
      case 'pair': {
        const least = strength(node, rowsIn)
        const sign = { '+': '+', '-': '−', '*': '×', '/': '/' }[node.operator]
        const right = inBrackets(node.right, node.operator === '-' || node.operator === '/' ? least + 1 : least)
        return `${inBrackets(node.left, least)} ${sign} ${right}`
      }
      case 'call': {
        if (node.name === 'sum') {
          const inner = node.inputs[0] as Node
          const own = rowsIn(inner)
          return Array.from({ length: own }, (_, i) =>
            own > 1 && strength(inner, rowsIn) < 2 ? `(${visit(inner, i)})` : visit(inner, i),
          ).join(' + ')
        }
        if (node.name === 'round' && isMoney(node.inputs[1] as Node))
          return `to the cent (${visit(node.inputs[0] as Node, row)})`
        const inputs = node.inputs.map((input) => visit(input, row)).join('; ')
        return `${spoken[node.name] ?? node.name}${spoken[node.name] === '' ? '' : ' '}(${inputs})`
      }
      default:
        return node satisfies never
    }
  }
  const usesSum = /\bsum\(/.test(line.text)
  const isList = rows > 1 && !usesSum && line.names.some((name) => Array.isArray(value(name)))
  return isList ? Array.from({ length: rows }, (_, i) => visit(line.node, i)).join('; ') : visit(line.node, 0)
}

// In the working a count stands without its noun: "12 × 3 1/2 in" reads better than "12 pickets × 3 1/2 in".
const bare = (q: Quantity): string => (q.kind === 'count' ? show({ ...q, kind: 'number', unit: 'ratio' }) : show(q))
