// Every figure that somebody else printed, or that another method gives, against ours. `npm run evidence` prints the same.
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../engine/catalogue.ts'
import { runCheck } from './check.ts'
import { checks } from './checks.ts'
import { evidenceSchema, inWords, sumOf } from '../../src/evidence.ts'
import { evidencePage } from '../../src/web/evidence.tsx'
import { explained } from './explained.ts'
import { referenceExamples } from './reference-examples.ts'
import { report } from './report.ts'

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

describe('the report', () => {
  const made = report()

  it('fits its schema, and counts every check and every fact once', () => {
    expect(evidenceSchema.parse(JSON.parse(JSON.stringify(made)))).toEqual(made)
    const sum = sumOf(made)
    expect([sum.agree, sum.differ, sum.unchecked]).toEqual([checks.length, 0, []])
    expect(Object.values(sum.byKind).reduce((all, it) => all + it, 0)).toBe(checks.length)
    const facts = made.calculations.flatMap((it) => [...it.sourced, ...it.habit, ...it.memory])
    expect(facts).toHaveLength(catalogue.flatMap((it) => it.sources).length)
  })

  it('says of each calculation its formulas and its checks, on paper and on the page', () => {
    const [text, page] = [inWords(made), evidencePage(made)]
    for (const { name, title, formulas } of made.calculations) {
      expect(text).toContain(`\n${name}: ${title}\n`)
      expect(page).toContain(`<section class="reply" id="${name}">`)
      for (const { formula } of formulas) expect(text).toContain(formula)
    }
    expect(page).not.toMatch(/<script|undefined|NaN|\[object/)
    expect(page.match(/Agrees: /g)).toHaveLength(checks.length)
  })

  it('a page without a report says how it is made', () => {
    expect(evidencePage(undefined)).toContain('npm run evidence')
  })
})
