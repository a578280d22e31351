// This file is about mutants of formulas: each line of each calculation with one sign, number or function changed, held against that calculation's examples
// and evidence. Stryker sees a formula as a text and leaves it alone.
import { type Calculation, calculation, run } from '../../engine/calculation.ts'
import { catalogue, vocabulary } from '../../engine/catalogue.ts'
import { isList, isQuantity, type Value } from '../../engine/quantities/quantity.ts'
import { show } from '../../engine/quantities/show.ts'
import { givenOf, systemOf } from '../engine/run-named.ts'
import { runCheck } from '../evidence/check.ts'
import { checks } from '../evidence/checks.ts'

export interface FormulaMutants {
  /** Those that load: what mixes kinds is refused before anything is worked. */
  readonly mutants: number
  readonly noticed: number
  readonly refusedAtLoad: number
  readonly unnoticed: readonly { readonly calculation: string; readonly was: string; readonly is: string }[]
}

const instead: Readonly<Record<string, string>> = {
  '+': '-',
  '-': '+',
  '*': '/',
  '/': '*',
  ceil: 'floor',
  floor: 'ceil',
  min: 'max',
  max: 'min',
  sin: 'cos',
  cos: 'sin',
  tan: 'sin',
  asin: 'acos',
  acos: 'asin',
  atan: 'asin',
  sinh: 'cosh',
  cosh: 'sinh',
  sqrt: 'abs',
}

/** The line with one of its parts changed, each in turn. A rounding to a mark falls away. */
export function mutated(text: string): string[] {
  const tokens = text.match(/\d+(?:\.\d+)?|[A-Za-z][A-Za-z0-9]*|\S/g) ?? []
  const withPart = (i: number, part: string): string => tokens.map((it, at) => (at === i ? part : it)).join(' ')
  return tokens.flatMap((token, i) => {
    if (/^\d/.test(token)) return [withPart(i, String(Number(token) + 1))]
    const other = instead[token]
    return other && (tokens[i + 1] === '(' || !/^[a-z]/.test(token)) ? [withPart(i, other)] : []
  })
}

export function formulaMutants(): FormulaMutants {
  let [mutants, noticed, refusedAtLoad] = [0, 0, 0]
  const unnoticed: { calculation: string; was: string; is: string }[] = []
  for (const calc of catalogue) {
    const lines = calc.lines as Map<string, ReturnType<Calculation['lines']['get']> & object>
    for (const [name, kept] of [...lines])
      for (const text of mutated(kept.line.text)) {
        const changed = withLine(calc, name, text)
        if (!changed) {
          refusedAtLoad++
          continue
        }
        mutants++
        lines.set(name, changed)
        if (isNoticed(calc)) noticed++
        else unnoticed.push({ calculation: calc.name, was: `${name} = ${kept.line.text}`, is: text })
        lines.set(name, kept)
      }
  }
  return { mutants, noticed, refusedAtLoad, unnoticed }
}

/** The line as the catalogue would load it; nothing where it would not. */
function withLine(calc: Calculation, name: string, text: string) {
  const texts = [...calc.lines].map(([it, { line, because }]) => [it, [it === name ? text : line.text, because]])
  try {
    return calculation({ ...calc, lines: Object.fromEntries(texts) } as never).lines.get(name)
  } catch {
    return undefined
  }
}

/** Whether an example or a piece of evidence no longer comes out, or cannot be worked at all. */
function isNoticed(calc: Calculation): boolean {
  try {
    return (
      calc.examples.some(({ given, expect }) => {
        const system = systemOf(given)
        const outcome = run(calc, givenOf(calc.name, given, system), { system, wanted: Object.keys(expect) })
        return (
          !outcome.ok ||
          Object.entries(expect).some(([name, shown]) => written(name, outcome.values.get(name)) !== shown)
        )
      }) || checks.some((it) => it.calculation === calc.name && !runCheck(it).pass)
    )
  } catch {
    return true
  }
}

function written(name: string, value: Value | undefined): string {
  if (isQuantity(value)) return show(value)
  if (isList(value)) return value.map(show).join('; ')
  const says = vocabulary.get(name)?.says
  return says && typeof value !== 'string'
    ? value === null
      ? says.unknown
      : value
        ? says.yes
        : says.no
    : String(value)
}
