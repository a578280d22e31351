// Every calculation on inputs that its examples do not have: small, large and odd ones, facts left out or told besides, both systems, refusals.
// Each stands in as-worked/varied/ behind a #, with what is said that the first example did not say: kept like the examples in as-worked.test.ts, so that nothing
// changes unseen. Of a drawing its words are kept, and what its shapes come to: the drawings themselves are kept of the examples. “Sure” is that odd values are confirmed.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../engine/catalogue.ts'
import type { System } from '../../engine/quantities/quantity.ts'
import { saidInShort } from './in-words.ts'
import { type Inputs, runNamed, systemOf } from './run-named.ts'

const fileOf = (name: string): string => join(import.meta.dirname, 'as-worked', 'varied', `${name}.txt`)

interface Told {
  readonly line: string
  readonly system: System
  readonly isSure: boolean
  readonly given: Inputs
}

/** “# metric, sure | opening: 2 m | pickets: 16”. */
function toldIn(name: string): Told[] {
  const lines = readFileSync(fileOf(name), 'utf8').split('\n')
  return lines
    .filter((it) => it.startsWith('# '))
    .map((line) => {
      const [how = '', ...facts] = line.slice(2).split(' | ')
      const [system, sure] = how.split(', ')
      const given = facts.map((it) => [it.slice(0, it.indexOf(': ')), it.slice(it.indexOf(': ') + 2)] as const)
      return { line, system: system as System, isSure: sure === 'sure', given: Object.fromEntries(given) }
    })
}

const worked = (name: string, given: Inputs, system: System, isSure: boolean): string[] =>
  saidInShort(runNamed(name, given, { system, confirmed: isSure ? Object.keys(given) : [] }).outcome)

describe('other inputs', () => {
  it.each(catalogue.filter((it) => existsSync(fileOf(it.name))).map((it) => [it.name, it] as const))(
    '%s',
    async (name, { examples }) => {
      const first = examples[0]?.given ?? {}
      const before = new Set(worked(name, first, systemOf(first), false))
      const lines = toldIn(name).flatMap(({ line, given, system, isSure }) => [
        line,
        ...worked(name, given, system, isSure).filter((it) => !before.has(it) && !it.startsWith('said ')),
      ])
      await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(fileOf(name))
    },
  )
})
