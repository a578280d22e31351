// Prices told without their currency: every sum of money comes to the same number as with one, in no currency. What is bought says that none was named.
import { describe, expect, it } from 'vitest'
import { run } from '../../engine/calculation.ts'
import { catalogue } from '../../engine/catalogue.ts'
import type { Given } from '../../engine/outcome.ts'
import { isList, isQuantity, type Quantity, type Value } from '../../engine/quantities/quantity.ts'
import { givenOf, systemOf } from './run-named.ts'

const unnamed = (it: Quantity): Quantity => (it.kind === 'money' ? { ...it, unit: 'money' } : it)
const without = (value: Value): Value =>
  isList(value) ? value.map(unnamed) : isQuantity(value) ? unnamed(value) : value
const holdsMoney = (value: Value): boolean =>
  (isList(value) ? value : isQuantity(value) ? [value] : []).some((it) => it.kind === 'money')

/** These only set amounts side by side, or have prices among much else. */
const silent =
  /^(take-off|tax-on-amounts|price-by-measure|board-foot-price|price-range|rent-buy-dig|deliver-or-haul|money-together|amount-against|amount-and-share) /
const told = catalogue.flatMap(({ examples, ...calculation }) =>
  examples.flatMap(({ given }, i) => {
    const named = givenOf(calculation.name, given, systemOf(given))
    const holds = [...named.values()].some((it) => holdsMoney(it.value))
    return holds
      ? [{ name: `${calculation.name} ${i + 1}`, calculation: { ...calculation, examples }, given, named }]
      : []
  }),
)

describe('prices of no currency', () => {
  it.each(told.map((it) => [it.name, it] as const))('%s', (name, { calculation, given, named }) => {
    const system = systemOf(given)
    const bare = new Map([...named].map(([key, it]): [string, Given] => [key, { ...it, value: without(it.value) }]))
    const [before, after] = [named, bare].map((it) => run(calculation, it, { system }))
    if (!before?.ok || !after?.ok) throw new Error(JSON.stringify(after))
    expect(after.remarks.filter((it) => it.startsWith('You named no currency'))).toHaveLength(silent.test(name) ? 0 : 1)
    expect(before.remarks.join()).not.toContain('currency')
    expect([...after.values]).toEqual([...before.values].map(([key, value]) => [key, without(value)]))
  })
})
