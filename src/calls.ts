// This file is about calls: one calculation as it was worked, written for the page and for other programs.
import { type Problem, vocabulary, type Word, type Worked } from '../engine/index.ts'
import type { Call, Figure } from './answer.ts'
import { figureOf, figuresOf } from './figures.ts'

/** The call of one worked calculation. `asked` are the words that answer what was asked: they come first, in that order. */
export function callOf(worked: Worked, id: string, asked: readonly string[]): Call {
  const { calculation: calc, outcome, at, places } = worked
  const inputs: Figure[] = [...outcome.given].flatMap(([name, it]) =>
    figuresOf({ ref: `${id}.${name}`, word: wordNamed(name), at, ...it }, places),
  )
  const shared = { id, calculation: calc.name, title: calc.title, inputs }
  if (!outcome.ok) {
    return {
      ...shared,
      steps: [],
      results: [],
      tables: [],
      doubts: [],
      sources: [...calc.sources],
      drawing: null,
      problems: outcome.problems.map((it) => problemAt(it, at)),
    }
  }
  const order = (name: string): number => (asked.includes(name) ? asked.indexOf(name) : asked.length)
  // A list in order, the post centres of a run, stands in a table: it is no figure. Nor is what only passes between parts of a fence.
  const isFigure = (name: string): boolean =>
    !calc.gives[name]?.list && (!calc.gives[name]?.unsaid || asked.includes(name))
  const values = [...outcome.values].filter(([name]) => isFigure(name)).sort(([a], [b]) => order(a) - order(b))
  const results = values.flatMap(([name, value]) =>
    figuresOf(
      {
        ref: `${id}.${name}`,
        word: wordNamed(name),
        at,
        value,
        role: 'result',
        headline: asked.includes(name),
        roundedUp: isRoundedUp(calc.lines.get(name)?.line.text),
      },
      places,
    ),
  )
  return {
    ...shared,
    steps: outcome.steps.map(({ name, formula, substituted, result, because }) => ({
      name,
      formula,
      substituted,
      result,
      because,
    })),
    results,
    tables: outcome.tables.map((table) => ({
      title: table.title,
      columns: [...table.columns],
      rows: table.rows.map((row) => [...row]),
    })),
    doubts: outcome.doubts.map((it) => problemAt(it, at)),
    sources: [...outcome.sources],
    drawing: outcome.drawing,
    problems: [],
  }
}

/** Figures of a call beyond its inputs and results: what the remarks cite, and what the working gives on the way. */
export function besidesIn({ calculation, outcome, at, places }: Worked, id: string): Figure[] {
  const cited = outcome.cited.map(({ label, value, role }, i) =>
    figureOf({ ref: `${id}.cited${i + 1}`, word: { name: 'cited', label }, at, value, role }),
  )
  const onTheWay = !outcome.ok
    ? []
    : outcome.steps
        .filter((step) => !calculation.gives[step.gives])
        .flatMap((step) =>
          figuresOf(
            {
              ref: `${id}.${step.gives}`,
              word: { name: step.gives, label: step.name },
              at,
              value: step.value,
              role: 'result',
            },
            places,
          ),
        )
  return [...cited, ...onTheWay]
}

export const problemAt = (problem: Problem, at: string): Call['problems'][number] => {
  const { isIdle: _, ...said } = problem
  return { ...said, at }
}

export function wordNamed(name: string): Word {
  const word = vocabulary.get(name)
  if (!word) throw new Error(`“${name}” is no word of the vocabulary`)
  return word
}

const isRoundedUp = (line: string | undefined): boolean => line?.startsWith('ceil(') ?? false
