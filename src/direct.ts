// This file is about running one calculation directly, without a conversation, and about listing them.
import {
  inSentence,
  type Calculation,
  calculationNamed,
  catalogue,
  type Given,
  isList,
  isQuantity,
  parseValue,
  type Problem,
  run,
  type System,
  unitNamed,
  usualFor,
  vocabulary,
  type Word,
} from '../engine/index.ts'
import type { Answer, Call } from './answer.ts'
import { callOf } from './calls.ts'
import { wordsOf } from './compose.ts'
import { cautionsFor } from './guard/cautions.ts'
import { cutSolver } from './solver/highs.ts'

type JsonSchema = Readonly<Record<string, unknown>>

export interface Listed {
  readonly name: string
  readonly title: string
  readonly answers: string
  readonly inputs: JsonSchema
  /** The same inputs as a form asks for them, in order. */
  readonly fields: readonly Field[]
  readonly results: readonly { readonly word: string; readonly label: string; readonly kind: string }[]
}

export interface Field {
  readonly word: string
  readonly label: string
  readonly measure: string
  /** What is taken when it is left empty. */
  readonly usual?: string
  readonly isNeeded: boolean
  readonly isList: boolean
  readonly choices?: readonly { readonly value: string; readonly label: string }[]
}

/** A call beside what goes with it in every answer. */
export type Direct = Call & { readonly cautions: Answer['cautions']; readonly words: NonNullable<Answer['words']> }

/** The catalogue, each calculation with the JSON Schema of its inputs. */
export const listCalculations = (): Listed[] =>
  catalogue.map((calc) => {
    const words = Object.values(calc.needs)
    return {
      name: calc.name,
      title: calc.title,
      answers: calc.answers,
      inputs: {
        type: 'object',
        additionalProperties: false,
        properties: Object.fromEntries(words.map((word) => [word.name, schemaOf(word, usualFor(calc, word)?.value)])),
        required: words.filter((word) => isNeeded(calc, word)).map((word) => word.name),
      },
      fields: words.map((word) => fieldOf(calc, word)),
      results: Object.values(calc.gives).map(({ name, label, kind }) => ({ word: name, label, kind })),
    }
  })

const isNeeded = (calc: Calculation, word: Word): boolean =>
  !calc.may?.includes(word.name) && !calc.onlyFor?.[word.name] && !usualFor(calc, word)

function fieldOf(calc: Calculation, word: Word): Field {
  const usual = usualFor(calc, word)?.value
  const choices = Object.entries(word.options ?? {}).map(([value, { label }]) => ({ value, label }))
  return {
    word: word.name,
    label: word.label,
    measure: word.measure,
    isNeeded: isNeeded(calc, word),
    isList: word.list ?? false,
    ...(usual === undefined ? {} : { usual: word.options?.[usual]?.label ?? usual }),
    ...(word.kind === 'choice' ? { choices } : {}),
  }
}

function schemaOf(word: Word, usual: string | undefined): JsonSchema {
  const description = `${word.label}. ${word.measure}${usual ? ` Usually ${usual}.` : ''}`
  return word.kind === 'choice'
    ? { type: 'string', enum: Object.keys(word.options ?? {}), description }
    : word.list
      ? { type: 'array', items: { type: ['string', 'number'] }, minItems: 1, description }
      : { type: ['string', 'number'], description }
}

/** Runs one calculation on inputs as people write them ("93 in", "11", 11). Undefined when there is no such calculation. */
export async function runCalculation(
  name: string,
  inputs: Readonly<Record<string, unknown>>,
): Promise<Direct | undefined> {
  const calc = calculationNamed(name)
  if (!calc) return undefined
  const problems: Problem[] = []
  const system = systemIn(inputs)
  const told = new Map<string, Given>()
  for (const [key, input] of Object.entries(inputs)) {
    const word = Object.hasOwn(calc.needs, key) ? calc.needs[key] : undefined
    if (!word) {
      problems.push({
        code: 'unreadable',
        word: key,
        message: `“${key}” is not an input of ${calc.name}. Its inputs are: ${Object.keys(calc.needs).join(', ')}.`,
      })
      continue
    }
    if (input === null || input === undefined) continue
    const text = textOf(input)
    const value = text === undefined ? undefined : parseValue(word, text, system)
    if (value === undefined)
      problems.push({
        code: 'unreadable',
        word: key,
        message: `I cannot read ${JSON.stringify(input)} as ${inSentence(word)}. ${word.measure}`,
        ask: word.ask,
      })
    else told.set(key, { value, role: 'said' })
  }
  const outcome =
    problems.length > 0
      ? { ok: false as const, given: told, problems, cited: [] }
      : run(calc, told, {
          system,
          wanted: wantedWith(calc.onlyFor ?? {}, told, Object.keys(calc.gives)),
          solver: calc.solves ? await cutSolver() : undefined,
        })
  const worked = { calculation: calc, at: 'yard', places: ['yard'], wanted: [], outcome }
  const call = callOf(worked, 'r1', calc.headlines)
  return {
    ...call,
    cautions: cautionsFor({
      full: outcome.ok ? calc.cautions : [],
      lines: outcome.ok ? [] : calc.cautions,
      alreadyTold: [],
      brief: calc.plain ?? false,
    }),
    words: wordsOf({ worked: [worked], calls: [call], notices: [], leftOver: [] }),
  }
}

/** One value as text; a list with semicolons between its values, which no quantity holds. */
const textOf = (input: unknown): string | undefined =>
  typeof input === 'string' || typeof input === 'number'
    ? String(input)
    : Array.isArray(input) && input.every((it) => typeof it === 'string' || typeof it === 'number')
      ? input.join('; ')
      : undefined

/** Metric when any input is written in a metric unit. */
function systemIn(inputs: Readonly<Record<string, unknown>>): System {
  for (const [key, input] of Object.entries(inputs)) {
    const word = vocabulary.get(key)
    const text = textOf(input)
    const value = word && text !== undefined ? parseValue(word, text, 'imperial') : undefined
    const first = isList(value) ? value[0] : value
    if (isQuantity(first) && unitNamed(first.unit).system === 'metric') return 'metric'
  }
  return 'imperial'
}

/** What can be wanted of what was given: a result that hangs on an input left out is not asked for, unless nothing else is left. */
function wantedWith(
  onlyFor: Readonly<Record<string, readonly string[] | undefined>>,
  told: ReadonlyMap<string, Given>,
  all: readonly string[],
): string[] {
  const out = new Set(Object.entries(onlyFor).flatMap(([need, results]) => (told.has(need) ? [] : (results ?? []))))
  const left = all.filter((it) => !out.has(it))
  return left.length > 0 ? left : [...all]
}
