// One walk over the whole catalogue: what every calculation must keep to, whoever wrote it.
import { describe, expect, it } from 'vitest'
import { type Calculation, needsFor, run, usualFor } from '../../engine/calculation.ts'
import { parseValue } from '../../engine/words/value.ts'
import { catalogue, vocabulary } from '../../engine/catalogue.ts'
import { cautionFor } from '../../engine/cautions/cautions.ts'
import { isList, isQuantity, type Value } from '../../engine/quantities/quantity.ts'
import { show } from '../../engine/quantities/show.ts'
import { givenOf, systemOf } from './run-named.ts'

type Example = Calculation['examples'][number]

function runExample(calc: Calculation, { given, expect }: Example) {
  const system = systemOf(given)
  return run(calc, givenOf(calc.name, given, system), { system, wanted: Object.keys(expect) })
}

function text(name: string, value: Value | undefined): string {
  if (isQuantity(value)) return show(value)
  if (isList(value)) return value.map(show).join('; ')
  const says = vocabulary.get(name)?.says
  if (typeof value === 'boolean' || value === null)
    return says ? (value === null ? says.unknown : value ? says.yes : says.no) : String(value)
  return String(value)
}

describe.each(catalogue.map((calc) => [calc.name, calc] as const))('%s', (_, calc) => {
  it.each(calc.examples.map((example) => [example.ask, example] as const))(
    'comes out as written: %s',
    (_ask, example) => {
      const outcome = runExample(calc, example)
      if (!outcome.ok) throw new Error(outcome.problems.map((it) => it.message).join(' '))
      const got = Object.fromEntries(
        Object.keys(example.expect).map((name) => [name, text(name, outcome.values.get(name))]),
      )
      expect(got).toEqual(example.expect)
    },
  )

  it('has at least two examples, and a source for what it claims', () => {
    expect(calc.examples.length).toBeGreaterThanOrEqual(2)
    expect(calc.sources.length).toBeGreaterThan(0)
    for (const source of calc.sources) expect(source.from.trim()).not.toBe('')
  })

  it('asks one question for each need when nothing is given', () => {
    const wanted = Object.keys(calc.gives)
    const outcome = run(calc, new Map(), { system: 'imperial', wanted })
    const missing = needsFor(calc, wanted).filter((word) => !usualFor(calc, word))
    if (missing.length === 0 && outcome.ok) return
    expect(outcome.ok).toBe(false)
    if (outcome.ok) return
    const asked = outcome.problems.filter((it) => it.code === 'missing')
    expect(asked.length).toBeGreaterThan(0)
    for (const it of missing) expect(asked.map((problem) => problem.word)).toContain(it.name)
    for (const it of asked) expect(it.ask).toMatch(/\?|none/)
  })

  it('shows every step with the numbers in, and no number that is not one', () => {
    for (const example of calc.examples) {
      const outcome = runExample(calc, example)
      if (!outcome.ok) throw new Error('an example must be ok')
      for (const step of outcome.steps) {
        expect(`${step.substituted} ${step.result}`).not.toMatch(/NaN|undefined|Infinity/)
        expect(step.because).not.toBe('')
        // Nobody has a clock that shows a part of a day.
        expect(step.result, step.gives).not.toMatch(/^0\.\d+ days/)
      }
    }
  })

  it('names a text for every caution it calls up', () => {
    for (const code of calc.cautions) expect(cautionFor(code).full.length).toBeGreaterThan(20)
  })

  it('draws well-formed SVG with a text alternative, when it draws', () => {
    if (!calc.drawing) return
    for (const example of calc.examples) {
      const outcome = runExample(calc, example)
      if (!outcome.ok) throw new Error('an example must be ok')
      if (outcome.drawing === null) continue
      expect(outcome.drawing).toMatch(/^<svg [^>]*viewBox=/)
      expect(outcome.drawing).toContain('<title>')
      expect(outcome.drawing).toContain('<desc>')
      expect(outcome.drawing).not.toMatch(/NaN|undefined|Infinity/)
    }
  })
})

describe('the vocabulary', () => {
  it('says for every word how to measure it and what to ask', () => {
    for (const word of vocabulary.values()) {
      expect(word.measure, word.name).not.toBe('')
      expect(word.ask, word.name).not.toBe('')
      if (word.kind === 'count') expect(word.noun, word.name).toBeDefined()
      if (word.kind === 'verdict') expect(word.says, word.name).toBeDefined()
    }
  })

  it('has the word for the upper end of a range, wherever the lower one is needed', () => {
    for (const calc of catalogue)
      for (const word of Object.values(calc.needs)) {
        if (word.upTo === undefined) continue
        expect(calc.needs[word.upTo]?.kind, `${calc.name}: ${word.upTo}`).toBe(word.kind)
        expect(calc.may, `${calc.name} can do without ${word.upTo}`).toContain(word.upTo)
      }
  })

  it('has the word for the other side of a stick', () => {
    for (const word of vocabulary.values()) {
      if (word.otherSide === undefined) continue
      expect(vocabulary.get(word.otherSide)?.kind, `${word.name}: ${word.otherSide}`).toBe(word.kind)
      expect(vocabulary.get(word.otherSide)?.ofStick, word.otherSide).toBeDefined()
    }
  })

  it('gives the source of every usual value', () => {
    for (const calc of catalogue)
      for (const word of Object.values(calc.needs)) {
        const usual = usualFor(calc, word)
        if (!usual) continue
        expect(usual.from.trim(), word.name).not.toBe('')
        for (const system of ['imperial', 'metric'] as const) {
          const text = system === 'metric' ? (usual.metric ?? usual.value) : usual.value
          expect(parseValue(word, text, system), `${word.name}: ${text}`).toBeDefined()
        }
      }
  })
})
