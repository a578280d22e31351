// How people write quantities, in hundreds of ways: each must be read as what it was worked out by hand to mean, exactly.
// The table is written-forms.txt, one meaning and all its writings to a row.
import { readFileSync } from 'node:fs'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { isoDate } from '../../../engine/quantities/calendar.ts'
import { equal, type Quantity, quantity } from '../../../engine/quantities/quantity.ts'
import { readQuantities } from '../../../engine/quantities/read.ts'
import type { Firmness, Reading } from '../../../engine/quantities/reading.ts'
import { exactText, show } from '../../../engine/quantities/show.ts'

interface Row {
  readonly meaning: string
  readonly forms: readonly string[]
}

const table = readFileSync(new URL('./written-forms.txt', import.meta.url), 'utf8')
const rows: readonly Row[] = table
  .replace(/^#.*$/gm, '')
  .replace(/\n {2}/g, ' ')
  .split('\n')
  .filter((line) => line !== '')
  .map((line) => {
    const end = line.indexOf(' = ')
    const forms = line.slice(end + 3).split(' | ')
    return { meaning: line.slice(0, end), forms: forms.map(visible) }
  })

/** Signs nobody can see, written as \u and four digits in the table. */
function visible(form: string): string {
  return form.replace(/\\u([0-9a-f]{4})/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
}

/** A form without its figures: “93 in” and “12 in” are the same form. */
const frameOf = (form: string): string => form.toLowerCase().replace(/\p{Nd}+/gu, '0')

/** What was read, in short, to be shown where it is not what was meant. */
const told = (form: string): string =>
  `“${form}”: ${readQuantities(form)
    .map((it) => {
      const value = it.section
        ? `${it.section.name}: ${show(it.section.thickness)} × ${show(it.section.width)}`
        : it.quantity
          ? `${show(it.quantity)} (${exactText(it.quantity)} ${it.quantity.unit})`
          : it.bare?.toFraction()
      const high = it.high ? show(it.high) : it.bareHigh?.toFraction()
      const rivals = it.rivals.map((rival) => ` or ${show(rival)}`).join('')
      return `${it.firmness} ${value}${high === undefined ? '' : ` to ${high}`}${rivals}${it.clock ? ' by the clock' : ''}`
    })
    .join(' and ')}`

const sameUnlessOtherMoney = (a: Quantity, b: Quantity): boolean =>
  equal(a, b) && (a.kind !== 'money' || a.unit === b.unit)

const firmnesses = ['exactly', 'about', 'at-most', 'at-least', 'less-than', 'more-than']

/** Whether the readings of a form are the meaning of its row, and nothing besides. */
function isMeant(meaning: string, readings: readonly Reading[]): boolean {
  const [only, more] = readings
  if (meaning === 'none') return only === undefined
  if (!only || more) return false
  const clock = /^clock ([\d.]+)$/.exec(meaning)?.[1]
  if (clock !== undefined) return only.clock === true && only.bare?.equals(clock) === true
  const stick = /^(\S+): (.+) x (.+) (in|mm)$/.exec(meaning)
  if (stick) {
    const [, name, thin, wide, unit] = stick as unknown as [string, string, string, string, string]
    const { section } = only
    return (
      section?.name === name &&
      equal(section.thickness, quantity(new Fraction(thin), unit)) &&
      equal(section.width, quantity(new Fraction(wide), unit))
    )
  }
  const [first, ...others] = meaning.split(' or ') as [string, ...string[]]
  if (/^\d{4}-\d\d-\d\d$/.test(first)) {
    const dates = [only.quantity, ...only.rivals].map((it) => (it?.kind === 'date' ? isoDate(it) : null))
    return [first, ...others].join() === dates.join()
  }
  const firmness = firmnesses.find((it) => first.startsWith(`${it} `)) as Firmness | undefined
  const [low, high] = spanOf(firmness ? first.slice(firmness.length + 1) : first)
  if (only.firmness !== (high ? 'range' : (firmness ?? 'exactly'))) return false
  const meant = others.map((it) => spanOf(it)[0] as Quantity)
  return (
    isValue(low, only.quantity, only.bare) &&
    (high ? isValue(high, only.high ?? null, only.bareHigh ?? null) : !only.high && !only.bareHigh) &&
    // An angle keeps the weather, and the weather the angle, whichever the words speak for: that is told in the row of degrees alone.
    (only.quantity?.kind === 'angle' ||
      (meant.length === only.rivals.length && meant.every((it, i) => equal(it, only.rivals[i] as Quantity))))
  )
}

/** “6..8 ft”: both ends; “93 in” and “11”: one. */
function spanOf(meaning: string): (Quantity | Fraction)[] {
  const [, numbers, unit] = /^(.*?)(?: ([A-Za-z].*))?$/.exec(meaning) as unknown as [string, string, string | undefined]
  return numbers.split('..').map((it) => (unit ? quantity(new Fraction(it), unit) : new Fraction(it)))
}

const isValue = (meant: Quantity | Fraction | undefined, read: Quantity | null, bare: Fraction | null): boolean =>
  meant instanceof Fraction
    ? read === null && bare?.equals(meant) === true
    : meant !== undefined && read !== null && sameUnlessOtherMoney(read, meant)

describe('written forms', () => {
  it('are at least 600, all different in more than their figures', () => {
    const forms = rows.flatMap((row) => row.forms)
    expect(forms.filter((form, i) => forms.indexOf(form) !== i)).toEqual([])
    expect(new Set(forms.map(frameOf)).size).toBeGreaterThanOrEqual(600)
  })

  it.each(rows)('$meaning is read from each of its writings', ({ meaning, forms }) => {
    expect(forms.filter((form) => !isMeant(meaning, readQuantities(form))).map(told)).toEqual([])
  })

  it.each(rows)('$meaning stands where it was typed', ({ forms }) => {
    for (const form of forms)
      for (const { start, end, said } of readQuantities(`so, ${form}`))
        expect(`so, ${form}`.slice(start, end), form).toBe(said)
  })
})
