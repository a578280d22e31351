// Every figure that somebody else printed, or that another method gives, against ours. `npm run evidence` prints the same.
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../engine/catalogue.ts'
import { runCheck } from './check.ts'
import { checks } from './checks.ts'
import { aboutTheTests, bounds, evidenceSchema, inWords, sumOf } from '../../src/evidence.ts'
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

  it('says what is known of the tests, when it was found, and of what share', () => {
    const told = aboutTheTests({
      formulas: { on: '2026-05-01', mutants: 200, noticed: 150, refusedAtLoad: 40 },
      code: { on: '2026-05-02', seed: 'first', possible: 9000, tried: 270, noticed: 240, same: 7 },
      coverage: { on: '2026-05-03', lines: 97.5, branches: 91.2 },
    })
    expect(told).toHaveLength(3)
    expect(told[0]).toMatch(/200 .* 75\.0 % \(2026-05-01\)/)
    // Those that change nothing are no mutants: 240 of 263.
    expect(told[1]).toMatch(/263 .* 9000 .* 91\.3 %; .* \(2026-05-02\)\. 7 more/)
    expect(told[2]).toMatch(/97\.5 % .* 91\.2 % .*\(2026-05-03\)/)
    for (const line of aboutTheTests(made.mutation)) {
      expect(inWords(made)).toContain(`\n${line}\n`)
      expect(evidencePage(made)).toContain(line)
    }
  })

  // R. G. Newcombe, Statistics in Medicine 17 (1998), table I, method 3: 81 of 263 is 0.2553 to 0.3662, 0 of 20 is 0 to 0.1611 (from memory).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [0, 20, 0, 0.1611],
  ])('%i of %i is bounded as printed', (count, of, low, high) => {
    const [from, to] = bounds(count, of)
    expect(from).toBeCloseTo(low, 4)
    expect(to).toBeCloseTo(high, 4)
  })

  it('a page without a report says how it is made', () => {
    expect(evidencePage(undefined)).toContain('npm run evidence')
  })
})
