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
    work(given, { line, rows, put, tell, refuse, remark, table }) {
      const [all, wanted] = [rows(from.name), String(given[unit.name])]
      if (all.length > mostValues)
        refuse(from.name, `That is ${show(quantity(all.length, 'value'))}. I take ${mostValues} at most at once.`)
      const converted = all.map((q) => ({ ...q, unit: wanted }))
      const [first, only] = [all[0] as Quantity, converted[0] as Quantity]
      put('oneOfIt', quantity(1, wanted))
      line('howMany')
      tell(to.name, all.length > 1 ? converted : only)
      if (all.length > 1)
        table({
          title: 'One by one',
          columns: [
            { label: 'given', unit: '' },
            { label: unit.options?.[wanted]?.label ?? wanted, unit: '' },
          ],
          rows: all.map((q, i) => [show(q), show(converted[i] as Quantity)]),
        })
      const said = all.length > 1 ? undefined : inFull(only)
      if (said) remark(said)
      const beside = it.beside?.(first, wanted)
      if (beside) remark(beside)
    },
    sources: it.sources,
    cautions: [],
    examples: it.examples,
  })
}

const mostValues = 200
const mostPlaces = 15
/** More places than these after the point are read by nobody. */
const readablePlaces = 8

/** What is shown rounded, written out where its decimal soon ends; and the decimal of what is shown as a fraction. */
export function inFull(q: Quantity): string | undefined {
  const amount = amountIn(q, q.unit)
  if (!isExact(amount) || amount.d === 1n) return undefined
  const { sign } = unitNamed(q.unit)
  const shown = show(q).replace(/,/g, '')
  const decimal = amount.toString(mostPlaces).replace('-', '−')
  const places = decimal.split('.')[1]?.length ?? 0
  const ends = !decimal.includes('(') && places < mostPlaces
  if (ends && places <= readablePlaces)
    return shown === `${decimal} ${sign}` ? undefined : `In full: ${decimal} ${sign}.`
  return shown.includes('/') || q.unit === 'ft'
    ? `As a decimal: about ${rounded(amount.valueOf())} ${sign}.`
    : undefined
}
