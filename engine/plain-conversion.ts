// This file is about saying a quantity in another unit, exactly, alike for every kind that is measured.
import { type Calculation, calculation, type Example } from './calculation.ts'
import type { Source } from './outcome.ts'
import { isExact } from './quantities/amount.ts'
import { amountIn, type Quantity, quantity } from './quantities/quantity.ts'
import { rounded, show } from './quantities/show.ts'
import { type Kind, unitNamed } from './quantities/units.ts'
import type { Word } from './words/word.ts'

export interface Conversion {
  readonly name: string
  readonly title: string
  readonly answers: string
  readonly kind: Kind
  readonly from: Word
  readonly unit: Word<'choice'>
  readonly to: Word
  readonly sources: readonly Source[]
  /** What should be said beside it, of what was given and the unit that is wanted. */
  readonly beside?: (from: Quantity, wanted: string) => string | undefined
  readonly examples: readonly Example[]
}

/** How many of the wanted unit go into it: for every kind whose units begin at nought. */
export function conversionOf(it: Conversion): Calculation {
  const { kind, from, unit, to } = it
  return calculation<Record<string, Word>>({
    name: it.name,
    title: it.title,
    answers: it.answers,
    needs: { [from.name]: from, [unit.name]: unit },
    gives: { [to.name]: to },
    headlines: [to.name],
    plain: true,
    locals: { oneOfIt: kind, howMany: 'number' },
    lines: { howMany: [`${from.name} / oneOfIt`, 'how many of the unit you want go into it'] },
    work(given, { line, put, tell, remark }) {
      const [q, wanted] = [given[from.name] as Quantity, String(given[unit.name])]
      put('oneOfIt', quantity(1, wanted))
      line('howMany')
      const said = inFull(tell(to.name, { ...q, unit: wanted }))
      if (said) remark(said)
      const beside = it.beside?.(q, wanted)
      if (beside) remark(beside)
    },
    sources: it.sources,
    cautions: [],
    examples: it.examples,
  })
}

const mostPlaces = 15

/** What is shown rounded, written out where its decimal ends; and the decimal of what is shown as a fraction. */
export function inFull(q: Quantity): string | undefined {
  const amount = amountIn(q, q.unit)
  if (!isExact(amount) || amount.d === 1n) return undefined
  const { sign } = unitNamed(q.unit)
  const shown = show(q).replace(/,/g, '')
  const decimal = amount.toString(mostPlaces).replace('-', '−')
  const ends = !decimal.includes('(') && decimal.length <= mostPlaces + 4
  if (ends) return shown === `${decimal} ${sign}` ? undefined : `In full: ${decimal} ${sign}.`
  return shown.includes('/') || q.unit === 'ft'
    ? `As a decimal: about ${rounded(amount.valueOf())} ${sign}.`
    : undefined
}
