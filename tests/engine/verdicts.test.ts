// Every verdict: it turns when one fact alone is changed, and each time says what decided.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Calculation, run } from '../../engine/calculation.ts'
import { catalogue } from '../../engine/catalogue.ts'
import type { Given, Outcome } from '../../engine/outcome.ts'
import { givenOf, systemOf } from './run-named.ts'
import { inputsFor } from './random-inputs.ts'

const verdicts = catalogue.flatMap((calc) =>
  Object.values(calc.gives)
    .filter((word) => word.kind === 'verdict')
    .map((word) => [calc.name, word.name, calc] as const),
)

type Done = Extract<Outcome, { readonly ok: true }>

interface Turned {
  readonly changed: string
  readonly before: Done
  readonly after: Done
}

const inputsTried = 400

/** Two workings of which one fact alone is different, and the verdict with it: each example of the calculation with one fact after the other at random. */
function turned(calc: Calculation, verdict: string): Turned | undefined {
  const random = fc.sample(inputsFor(calc), { numRuns: inputsTried, seed: 11 })
  for (const { given } of calc.examples) {
    const system = systemOf(given)
    const told = givenOf(calc.name, given, system)
    const confirmed = new Set(Object.keys(calc.needs))
    const work = (inputs: ReadonlyMap<string, Given>) =>
      run(calc, inputs, { system, confirmed, wanted: Object.keys(calc.gives) })
    const before = work(told)
    if (!before.ok || !before.values.has(verdict)) continue
    for (const other of random)
      for (const [changed, value] of other.told) {
        const after = work(new Map([...told, [changed, value]]))
        if (after.ok && after.values.get(verdict) !== before.values.get(verdict) && after.values.has(verdict))
          return { changed, before, after }
      }
  }
  return undefined
}

describe.each(verdicts)('%s: %s', (_, verdict, calc) => {
  it('turns with one fact, and both times says what decided', () => {
    const found = turned(calc, verdict)
    expect(found).toBeDefined()
    for (const done of [found?.before, found?.after].filter((it) => it !== undefined)) {
      const said = done.remarks.join(' ')
      // What cannot be said yet is asked for, and the question says what it hangs on.
      const open = done.values.get(verdict) === null ? done.doubts.map((it) => it.message).join(' ') : ''
      expect(open || said).toMatch(open ? /./ : /decid/i)
    }
  })
})
