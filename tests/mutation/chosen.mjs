// This file is about two small plugins of Stryker: a checker that lets only the chosen mutants through, and a reporter that writes down each result at once.
import { appendFileSync, readFileSync } from 'node:fs'
import { relative } from 'node:path'

const { root, results, mutants, texts, all } = JSON.parse(readFileSync(process.env.PLUMBPOST_MUTANTS, 'utf8'))

const key = (file, { start, end }, mutator, replacement) =>
  [file, start.line, start.column, end.line, end.column, mutator, replacement].join(' ')
const chosen = new Set(
  mutants.map(({ file, start, end, mutator, replacement }) => key(file, { start, end }, mutator, replacement)),
)

class Chosen {
  async init() {}
  async check(asked) {
    return Object.fromEntries(
      asked.map((it) => [
        it.id,
        chosen.has(key(relative(root, it.fileName), it.location, it.mutatorName, it.replacement))
          ? { status: 'passed' }
          : { status: 'compileError', reason: 'not chosen' },
      ]),
    )
  }
  async group(asked) {
    return [asked.map((it) => it.id)]
  }
}

/** Results count lines and columns from one, mutants from nought. */
const fromNought = ({ line, column }) => ({ line: line - 1, column: column - 1 })

class WrittenDown {
  onMutantTested({ fileName, location, mutatorName, replacement, status, testsCompleted, killedBy, coveredBy }) {
    if (status === 'CompileError' || status === 'Ignored') return
    const row = {
      file: relative(root, fileName),
      start: fromNought(location.start),
      end: fromNought(location.end),
      mutator: mutatorName,
      replacement,
      status,
      testsCompleted,
      killedBy,
      covered: coveredBy?.length,
      source: texts[relative(root, fileName)],
      noticing: killedBy?.map((it) => texts[it.split('#')[0]]),
      all,
    }
    appendFileSync(results, `${JSON.stringify(row)}\n`)
  }
}

export const strykerPlugins = [
  { kind: 'Checker', name: 'chosen', injectableClass: Chosen },
  { kind: 'Reporter', name: 'chosen', injectableClass: WrittenDown },
]
