// Every figure that somebody else printed, or that another method gives, against ours. `npm run evidence` prints the same.
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../engine/catalogue.ts'
import { runCheck } from './check.ts'
import { checks } from './checks.ts'
import { explained } from './explained.ts'
import { referenceExamples } from './reference-examples.ts'

describe('against the outside', () => {
  it.each(checks.map((check) => [`${check.calculation}: ${check.what}`, check] as const))('%s', (_, check) => {
    const { got, expected } = runCheck(check)
    expect(Math.abs(got - expected), `got ${got}, expected ${expected} ${check.unit}`).toBeLessThanOrEqual(
      check.tolerance,
    )
  })

  it('every calculation has at least one check that is not the reference book alone', () => {
    const held = new Set(checks.filter((it) => it.kind !== 'reference').map((it) => it.calculation))
    expect(catalogue.map((it) => it.name).filter((name) => !held.has(name))).toEqual([])
  })

  it('every example of the reference book is reproduced, or the reason is given', () => {
    const done = new Set([...checks.flatMap((it) => it.reference ?? []), ...Object.keys(explained)])
    expect(referenceExamples.filter((id) => !done.has(id))).toEqual([])
  })
})
