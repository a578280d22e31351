// This file is about mutants of the code: so many of those that could be made, drawn by a seed, tried by Stryker one after the other.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { KeptMutation } from '../../src/evidence.ts'
import { sameProgram } from './same-program.ts'
import { drawn, engineFiles, type Mutant } from './sample.ts'
import { today } from './kept.ts'

interface Tried extends Mutant {
  readonly status: 'Killed' | 'Timeout' | 'Survived' | 'NoCoverage' | 'RuntimeError'
}

const folder = join('dist', 'mutate')
const results = join(folder, 'results.jsonl')

/** Tries the first so many of these files' mutants. What was tried before with the same seed and is still the same is not tried again. */
export async function codeMutants(
  most: number,
  seed: string,
  files: readonly string[] = engineFiles(),
): Promise<{ kept: KeptMutation['code'] & object; unnoticed: readonly Tried[] }> {
  const all = await drawn(files, seed)
  const chosen = all.slice(0, most)
  mkdirSync(folder, { recursive: true })
  const known = new Set(triedOf(chosen).map(keyOf))
  const mutants = chosen.filter((it) => !known.has(keyOf(it)))
  if (mutants.length > 0) {
    const list = join(process.cwd(), folder, 'chosen.json')
    writeFileSync(list, JSON.stringify({ root: process.cwd(), results: join(process.cwd(), results), mutants }))
    const stryker = join('node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js')
    const env = { ...process.env, PLUMBPOST_MUTANTS: list }
    spawnSync(process.execPath, [stryker, 'run', join('.config', 'stryker.mjs')], { stdio: 'inherit', env })
    rmSync(join('dist', 'mutating'), { recursive: true, force: true })
  }
  const tried = triedOf(chosen)
  const isNoticed = ({ status }: Tried): boolean => status !== 'Survived' && status !== 'NoCoverage'
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

/** How those of them that were tried came out. */
function triedOf(chosen: readonly Mutant[]): Tried[] {
  const keys = new Set(chosen.map(keyOf))
  const lines = existsSync(results) ? readFileSync(results, 'utf8').split('\n').filter(Boolean) : []
  const last = new Map(lines.map((it) => JSON.parse(it) as Tried).map((it) => [keyOf(it), it]))
  return [...last].filter(([key]) => keys.has(key)).map(([, it]) => it)
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
