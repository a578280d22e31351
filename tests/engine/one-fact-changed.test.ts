// Each example with one fact changed: told in another way, left out, halved, doubled, told for two places, or in the other system.
// What is said then that the example did not say is kept beside the examples, as in as-worked.test.ts. An odd value counts as confirmed, so that it is worked.
import { describe, expect, it } from 'vitest'
import { type Calculation, run } from '../../engine/calculation.ts'
import { catalogue } from '../../engine/catalogue.ts'
import type { Given, Outcome } from '../../engine/outcome.ts'
import { add, exact, over } from '../../engine/quantities/amount.ts'
import { isList, isQuantity, type Quantity, type System, type Value } from '../../engine/quantities/quantity.ts'
import { show } from '../../engine/quantities/show.ts'
import { declaredValue } from '../../engine/words/value.ts'
import type { Word } from '../../engine/words/word.ts'
import { saidInShort, shown } from './in-words.ts'
import { givenOf, systemOf } from './run-named.ts'

interface Changed {
  readonly what: string
  readonly told: ReadonlyMap<string, Given>
  readonly system: System
  readonly places?: readonly string[]
}

const times = (q: Quantity, of: number): Quantity => ({
  ...q,
  amount:
    q.kind === 'count' || q.kind === 'date' ? add(q.amount, exact(of > 1 ? 3 : -1)) : over(q.amount, exact(1 / of)),
})

const half = (it: Value): Value => (isList(it) ? it.map((q) => times(q, 0.5)) : isQuantity(it) ? times(it, 0.5) : it)
const twice = (it: Value): Value => (isList(it) ? it.map((q) => times(q, 2)) : isQuantity(it) ? times(it, 2) : it)

/** What may be told of a word that was not told: each option, or the ends of what is plausible. */
function others(word: Word, system: System): Value[] {
  if (word.kind === 'choice') return Object.keys(word.options ?? {})
  const texts = [word.plausible?.from, word.plausible?.to].filter((it) => it !== undefined)
  const ends = texts.map((it) => declaredValue(word, it, system))
  return word.list && ends.length > 0 ? [ends] : ends
}

function changes(calc: Calculation, given: Calculation['examples'][number]['given']): Changed[] {
  const system = systemOf(given)
  const told = givenOf(calc.name, given, system)
  const withValue = (name: string, value: Value): ReadonlyMap<string, Given> =>
    new Map([...told, [name, { value, role: 'said' }]])
  return [
    { what: 'in the other system', told, system: system === 'metric' ? 'imperial' : 'metric' },
    ...Object.values(calc.needs).flatMap((word): Changed[] => {
      const value = told.get(word.name)?.value
      const as = (it: Value): Changed => ({
        what: `${word.name}: ${shown(it)}`,
        told: withValue(word.name, it),
        system,
      })
      if (value === undefined) return others(word, system).map(as)
      const left: Changed = {
        what: `without ${word.name}`,
        told: new Map([...told].filter(([name]) => name !== word.name)),
        system,
      }
      if (word.kind === 'choice')
        return [
          left,
          ...others(word, system)
            .filter((it) => it !== value)
            .map(as),
        ]
      const atTwo: Changed[] =
        isQuantity(value) && !word.list && calc.needs.posts
          ? [
              {
                what: `${word.name}: ${show(value)} at corner posts, ${show(times(value, 2))} at gate posts`,
                told: withValue(word.name, [value, times(value, 2)]),
                system,
                places: ['corner-posts', 'gate-posts'],
              },
            ]
          : []
      return [left, as(half(value)), as(twice(value)), ...atTwo]
    }),
  ]
}

function worked(calc: Calculation, { told, system, places }: Changed): Outcome {
  return run(calc, told, { system, places, confirmed: new Set(told.keys()) })
}

describe('one fact changed', () => {
  it.each(catalogue.map((calc) => [calc.name, calc] as const))('%s', async (name, calc) => {
    const [example] = calc.examples
    if (!example) throw new Error(`${name} has no example`)
    const system = systemOf(example.given)
    const before = new Set(saidInShort(worked(calc, { what: '', told: givenOf(name, example.given, system), system })))
    const lines = changes(calc, example.given).flatMap((it) => [
      `# ${it.what}`,
      ...saidInShort(worked(calc, it)).filter((line) => !before.has(line)),
    ])
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`as-worked/changed/${name}.txt`)
  })
})
