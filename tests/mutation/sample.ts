// This file is about choosing mutants: every one that Stryker could make of the code in engine/'s functions, in an order that a seed gives.
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Instrumenter } from '@stryker-mutator/instrumenter'
import ts from 'typescript'

interface Place {
  readonly line: number
  readonly column: number
}

export interface Mutant {
  readonly file: string
  readonly start: Place
  readonly end: Place
  readonly mutator: string
  readonly replacement: string
}

/** All mutants of these files that stand within a function, the likeliest to be drawn first. Strings are left out, as in `.config/stryker.mjs`. */
export async function drawn(files: readonly string[], seed: string): Promise<Mutant[]> {
  const silent = new Proxy({}, { get: (_, name) => (String(name).startsWith('is') ? () => false : () => undefined) })
  const instrumenter = new Instrumenter(silent as never)
  const read = files.map((name) => ({ name, content: readFileSync(name, 'utf8'), mutate: true as const }))
  const { mutants } = await instrumenter.instrument(read, {
    plugins: null,
    excludedMutations: ['StringLiteral'],
    ignorers: [],
  } as never)
  const bodies = new Map(read.map(({ name, content }) => [name, bodiesIn(name, content)]))
  const rank = (it: Mutant): string =>
    createHash('sha256')
      .update(`${seed} ${JSON.stringify(it)}`)
      .digest('hex')
  return mutants
    .flatMap(({ fileName, location, mutatorName, replacement, status }): Mutant[] =>
      status === undefined && bodies.get(fileName)?.some(({ start, end }) => within(location, start, end))
        ? [{ file: fileName, start: location.start, end: location.end, mutator: mutatorName, replacement }]
        : [],
    )
    .map((it) => ({ it, rank: rank(it) }))
    .sort((a, b) => (a.rank < b.rank ? -1 : 1))
    .map(({ it }) => it)
}

export const engineFiles = (): string[] =>
  readdirSync('engine', { recursive: true, encoding: 'utf8' })
    .filter((it) => it.endsWith('.ts'))
    .map((it) => join('engine', it).replaceAll('\\', '/'))
    .sort()

/** Where the bodies of functions stand: only what is in one is not worked once and for all when the file is loaded. */
function bodiesIn(name: string, content: string): { start: Place; end: Place }[] {
  const source = ts.createSourceFile(name, content, ts.ScriptTarget.ESNext)
  const placeOf = (position: number): Place => {
    const { line, character } = source.getLineAndCharacterOfPosition(position)
    return { line, column: character }
  }
  const found: { start: Place; end: Place }[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body) {
      const body = node.body as ts.Node
      found.push({ start: placeOf(body.getStart(source)), end: placeOf(body.getEnd()) })
    }
    ts.forEachChild(node, visit)
  }
  visit(source)
  return found
}

const before = (a: Place, b: Place): boolean => a.line < b.line || (a.line === b.line && a.column <= b.column)
const within = (it: { start: Place; end: Place }, start: Place, end: Place): boolean =>
  before(start, it.start) && before(it.end, end)
