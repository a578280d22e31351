// This file is about the evidence as a report: every calculation, its formulas, what it was held against, and what rests on habit or on memory.
// `npm run evidence` makes it; the page and the installed command show what was made.
import { z } from 'zod'

const fact = z.object({ fact: z.string(), from: z.string() })

/** What is kept of the last runs of `npm run mutate`: whether the tests notice when the engine is changed. Each part has the day it was run on. */
export const keptMutationSchema = z.object({
  /** Each line of arithmetic with one sign, number or function changed, held against examples and evidence. */
  formulas: z
    .object({ on: z.string(), mutants: z.number(), noticed: z.number(), refusedAtLoad: z.number() })
    .optional(),
  /** Mutants of the code in functions of engine/, drawn by a seed from all that are possible. `same` of those not noticed make the same program. */
  code: z
    .object({
      on: z.string(),
      seed: z.string(),
      possible: z.number(),
      tried: z.number(),
      noticed: z.number(),
      same: z.number(),
    })
    .optional(),
  /** Percent of lines and branches of engine/ that its tests run. */
  coverage: z.object({ on: z.string(), lines: z.number(), branches: z.number() }).optional(),
})
export type KeptMutation = z.infer<typeof keptMutationSchema>

export const evidenceSchema = z.object({
  version: z.string(),
  mutation: keptMutationSchema,
  calculations: z.array(
    z.object({
      name: z.string(),
      title: z.string(),
      formulas: z.array(z.object({ formula: z.string(), because: z.string() })),
      checks: z.array(
        z.object({
          what: z.string(),
          kind: z.enum(['published', 'handbook', 'library', 'second derivation', 'reference']),
          source: z.string(),
          reference: z.string().optional(),
          unit: z.string(),
          expected: z.number(),
          got: z.number(),
          tolerance: z.number(),
          pass: z.boolean(),
        }),
      ),
      /** Facts with a source. */
      sourced: z.array(fact),
      /** Facts that are common practice, or a rule of the trade, without a source: said so in every answer. */
      habit: z.array(fact),
      /** Facts that nobody looked up again: said so in every answer. */
      memory: z.array(fact),
    }),
  ),
  /** Worked examples of the reference book that are not reproduced, each with its reason. */
  explained: z.record(z.string(), z.string()),
})
export type Evidence = z.infer<typeof evidenceSchema>

/** What stands behind a check, the strongest first. */
export const kinds = {
  published: 'an answer that somebody else printed',
  handbook: 'a table or formula of a standard or handbook',
  library: 'another program, with numbers and units of its own',
  'second derivation': 'the same by another method',
  reference: 'a worked example of our reference book',
} as const

export interface Sum {
  readonly agree: number
  readonly differ: number
  readonly byKind: Readonly<Record<keyof typeof kinds, number>>
  readonly habit: number
  readonly memory: number
  /** Calculations that nothing was held against. */
  readonly unchecked: readonly string[]
}

export function sumOf({ calculations }: Evidence): Sum {
  const checks = calculations.flatMap((it) => it.checks)
  const ofKind = (kind: string): number => checks.filter((it) => it.kind === kind).length
  return {
    agree: checks.filter((it) => it.pass).length,
    differ: checks.filter((it) => !it.pass).length,
    byKind: Object.fromEntries(Object.keys(kinds).map((kind) => [kind, ofKind(kind)])) as Sum['byKind'],
    habit: calculations.reduce((sum, it) => sum + it.habit.length, 0),
    memory: calculations.reduce((sum, it) => sum + it.memory.length, 0),
    unchecked: calculations.filter((it) => it.checks.length === 0).map((it) => it.name),
  }
}

/** As people read it: a millionth is nothing that anybody measures. */
export const figure = (x: number): string => String(Math.round(x * 1e6) / 1e6)

/** The 95 % interval of a share, by Wilson's score, as a test holds against printed intervals. */
export function bounds(count: number, of: number): readonly [low: number, high: number] {
  const z = 1.96
  const p = count / of
  const middle = p + (z * z) / (2 * of)
  const reach = z * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of))
  const whole = 1 + (z * z) / of
  return [(middle - reach) / whole, (middle + reach) / whole]
}

/** What is known of the tests themselves, a line each, with the day it was found. */
export function aboutTheTests({ formulas, code, coverage }: KeptMutation): string[] {
  const percent = (it: number): string => `${(it * 100).toFixed(1)} %`
  const lines: string[] = []
  if (formulas)
    lines.push(
      `Of ${formulas.mutants} formulas with one sign, number or function changed, examples and evidence alone notice ${percent(formulas.noticed / formulas.mutants)} (${formulas.on}).`,
    )
  if (code) {
    const of = code.tried - code.same
    const [low, high] = bounds(code.noticed, of)
    lines.push(
      `Of ${of} changes to the code of the engine, drawn by chance from ${code.possible} that are possible, its tests notice ${percent(code.noticed / of)}; of all of them between ${percent(low)} and ${percent(high)}, 19 times in 20 (${code.on}).${code.same > 0 ? ` ${code.same} more were drawn that change nothing anybody can see.` : ''}`,
    )
  }
  if (coverage)
    lines.push(
      `Its tests run ${coverage.lines} % of the lines of the engine and ${coverage.branches} % of the branches (${coverage.on}).`,
    )
  return lines.length > 0 ? lines : ['Whether the tests notice a change was not tried yet: npm run mutate.']
}

/** The whole report as text. */
export function inWords(evidence: Evidence): string {
  const sum = sumOf(evidence)
  const lines = evidence.calculations.flatMap(({ name, title, formulas, checks, habit, memory }) => [
    `\n${name}: ${title}`,
    ...formulas.map((it) => `  formula  ${it.formula}`),
    ...checks.flatMap((it) => [
      `  ${it.pass ? 'agrees ' : 'DIFFERS'}  ${it.what}: expected ${figure(it.expected)} ${it.unit}, got ${figure(it.got)}, within ${figure(it.tolerance)}`,
      `           ${it.kind}: ${it.source}${it.reference ? ` [${it.reference}]` : ''}`,
    ]),
    ...(checks.length === 0 ? ['  UNCHECKED'] : []),
    ...habit.map((it) => `  habit    ${it.fact} (${it.from})`),
    ...memory.map((it) => `  memory   ${it.fact} (${it.from})`),
  ])
  return [
    ...lines,
    '',
    ...Object.entries(evidence.explained).map(([id, why]) => `not reproduced [${id}]: ${why}`),
    '',
    `${sum.agree} agree, ${sum.differ} differ. ${sum.unchecked.length === 0 ? 'Every calculation has a check.' : `Without a check: ${sum.unchecked.join(', ')}.`}`,
    ...Object.entries(kinds).map(([kind, says]) => `  ${sum.byKind[kind as keyof typeof kinds]} against ${says}`),
    `  ${sum.habit} facts are common practice without a source, ${sum.memory} are from memory`,
    ...aboutTheTests(evidence.mutation),
    '',
  ].join('\n')
}
