// This file is about mutants of the code: so many of those that could be made, drawn by a seed, tried by Stryker one after the other.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { KeptMutation } from '../../src/evidence.ts'
import { sameProgram } from './same-program.ts'
import { drawn, engineFiles, type Mutant } from './sample.ts'
import { today } from './kept.ts'

interface Tried extends Mutant {
  readonly status: 'Killed' | 'Timeout' | 'Survived' | 'NoCoverage' | 'RuntimeError'
  /** What the text of its file came to then, those of the tests that noticed it, and all together: a result holds as long as they do. */
  readonly source: string
  readonly noticing?: readonly string[]
  readonly all: string
}

/** What the text of each file of the engine and of its tests comes to. */
function textsNow(): Readonly<Record<string, string>> {
  const files = ['engine', 'tests/engine', 'tests/evidence'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true })
      .filter((it) => it.isFile())
      .map((it) => join(it.parentPath, it.name).replaceAll('\\', '/')),
  )
  return Object.fromEntries(files.map((it) => [it, hashOf(readFileSync(it, 'utf8'))]))
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16)

const folder = join('dist', 'mutate')
const results = join(folder, 'results.jsonl')

/** Tries the first so many of these files' mutants. What was tried before and still holds is not tried again. */
export async function codeMutants(
  most: number,
  seed: string,
  files: readonly string[] = engineFiles(),
): Promise<{ kept: KeptMutation['code'] & object; unnoticed: readonly Tried[] }> {
  const all = await drawn(files, seed)
  const chosen = all.slice(0, most)
  mkdirSync(folder, { recursive: true })
  const texts = textsNow()
  const known = new Set(triedOf(chosen, texts).map(keyOf))
  const mutants = chosen.filter((it) => !known.has(keyOf(it)))
  if (mutants.length > 0) {
    const list = join(process.cwd(), folder, 'chosen.json')
    const told = { root: process.cwd(), results: join(process.cwd(), results), mutants, texts, all: allOf(texts) }
    writeFileSync(list, JSON.stringify(told))
    const stryker = join('node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js')
    const env = { ...process.env, PLUMBPOST_MUTANTS: list }
    spawnSync(process.execPath, [stryker, 'run', join('.config', 'stryker.mjs')], { stdio: 'inherit', env })
    rmSync(join('dist', 'mutating'), { recursive: true, force: true })
  }
  const tried = triedOf(chosen, texts)
  const unnoticed = tried.filter((it) => !isNoticed(it))
  const same = unnoticed.filter(isSameProgram).length
  const noticed = tried.length - unnoticed.length
  return {
    kept: { on: today(), seed, possible: all.length, tried: tried.length, noticed, same },
    unnoticed: unnoticed.filter((it) => !isSameProgram(it)),
  }
}

const keyOf = ({ file, start, end, mutator, replacement }: Mutant): string =>
  JSON.stringify([file, start.line, start.column, end.line, end.column, mutator, replacement])

const isNoticed = ({ status }: Tried): boolean => status !== 'Survived' && status !== 'NoCoverage'
const allOf = (texts: Readonly<Record<string, string>>): string => hashOf(JSON.stringify(texts))

/**
 * How those of them that were tried came out, where it still holds: what was noticed, as long as its file and the test that noticed it
 * are the same; what was not, as long as everything is.
 */
function triedOf(chosen: readonly Mutant[], texts: Readonly<Record<string, string>>): Tried[] {
  const all = allOf(texts)
  const stand = new Set(Object.values(texts))
  const holds = (it: Tried): boolean =>
    it.all === all ||
    (isNoticed(it) && it.source === texts[it.file] && (it.noticing ?? []).every((test) => stand.has(test)))
  const keys = new Set(chosen.map(keyOf))
  const lines = existsSync(results) ? readFileSync(results, 'utf8').split('\n').filter(Boolean) : []
  const last = new Map(lines.map((it) => JSON.parse(it) as Tried).map((it) => [keyOf(it), it]))
  return [...last].filter(([key, it]) => keys.has(key) && holds(it)).map(([, it]) => it)
}

/** What stands in the source in the mutant's place. */
export function replaced({ file, start, end }: Mutant): string {
  const lines = readFileSync(file, 'utf8')
    .split('\n')
    .slice(start.line, end.line + 1)
  lines[lines.length - 1] = (lines.at(-1) as string).slice(0, end.column)
  lines[0] = (lines[0] as string).slice(start.column)
  return lines.join('\n')
}

const isSameProgram = (it: Mutant): boolean =>
  sameProgram.some(({ file, was, is }) => file === it.file && is === it.replacement && was === replaced(it))
