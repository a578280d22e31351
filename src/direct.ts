// This file is about running one calculation directly, without a conversation, and about listing them.
import { type Calculation, calculationNamed, subjects, usualFor, type Word, workWritten } from '../engine/index.ts'
import type { Answer, Call } from './answer.ts'
import { callOf } from './calls.ts'
import { compose, wordsOf } from './compose.ts'
import { cautionsFor } from './guard/cautions.ts'
import { cutSolver } from './solver/highs.ts'

type JsonSchema = Readonly<Record<string, unknown>>

export interface Listed {
  readonly name: string
  readonly title: string
  /** The part of the job it belongs to. */
  readonly subject: string
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

/** A call beside what goes with it in every answer, and all of it as one text that stands by itself. */
export type Direct = Call & {
  readonly cautions: Answer['cautions']
  readonly words: NonNullable<Answer['words']>
  /** Markdown: figures, questions, how the inputs were read, the working, cautions. */
  readonly reply: string
}

/** The catalogue in the order a job meets it, each calculation with the JSON Schema of its inputs. */
export const listCalculations = (): Listed[] =>
  subjects.flatMap(({ subject, calculations }) => calculations.map((calc) => listed(calc, subject)))

const listed = (calc: Calculation, subject: string): Listed => {
  const words = Object.values(calc.needs)
  return {
    name: calc.name,
    title: calc.title,
    subject,
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
}

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

/** Runs one calculation on inputs as people write them ("93 in", "11", 11). `confirmed` names inputs whose odd value is meant. Undefined when there is no such calculation. */
export async function runCalculation(
  name: string,
  inputs: Readonly<Record<string, unknown>>,
  confirmed: readonly string[] = [],
): Promise<Direct | undefined> {
  const calc = calculationNamed(name)
  if (!calc) return undefined
  const outcome = workWritten(calc, inputs, { confirmed, solver: calc.solves ? await cutSolver() : undefined })
  const worked = { calculation: calc, at: 'yard', places: ['yard'], wanted: [], outcome }
  const call = callOf(worked, 'r1', calc.headlines)
  const parts = {
    worked: [worked],
    calls: [call],
    advice: [],
    asks: [...call.problems, ...call.doubts].flatMap(({ word, at, ask }) => (ask ? [{ word, at, question: ask }] : [])),
    changed: [],
    readAs: call.inputs.flatMap((figure) =>
      figure.role === 'said' ? [{ said: String(inputs[figure.word]), figure }] : [],
    ),
    cautions: cautionsFor({
      full: outcome.ok ? calc.cautions : [],
      lines: outcome.ok ? [] : calc.cautions,
      alreadyTold: [],
      brief: calc.plain ?? false,
    }),
    notices: [],
    leftOver: [],
    prose: '',
  }
  return { ...call, cautions: parts.cautions, words: wordsOf(parts), reply: compose(parts) }
}
