// What the program shows, people read out, copy and paste back: it must be read as what was shown, in every unit and every style.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { about, type Amount, compare, exact, isExact } from '../../../engine/quantities/amount.ts'
import { amountIn, equal, type Quantity, quantity } from '../../../engine/quantities/quantity.ts'
import { readOne } from '../../../engine/quantities/read.ts'
import type { Reading } from '../../../engine/quantities/reading.ts'
import { counted, exactText, mixed, show } from '../../../engine/quantities/show.ts'
import { byTape } from '../../../engine/quantities/tape.ts'
import { unitNamed, unitNames } from '../../../engine/quantities/units.ts'

/** These two are shown as bare numbers, and read as them. */
const bareUnits = new Set(['ratio', 'money'])
const anyUnit = fc.constantFrom(...unitNames)
const habits = fc.constantFrom({}, { system: 'imperial' as const }, { system: 'metric' as const })

/** What the text was read as, in the unit and kind of what was shown; undefined where it was read as something else. */
function amountRead(read: Reading | null, { kind, unit }: Quantity): Amount | undefined {
  if (bareUnits.has(unit)) return read?.bare ?? undefined
  return read?.quantity?.kind === kind ? amountIn(read.quantity, unit) : undefined
}

/** Parts that end in every unit: a decimal has four places, and what is said in words or paid has none finer than a cent. */
const partsOf = (unit: string): readonly number[] =>
  unit === 'date' ? [1] : unitNamed(unit).kind === 'money' ? [1, 2, 4, 5, 10, 100] : [1, 2, 4, 5, 8, 10, 16, 25, 100]

describe('what is shown', () => {
  it('is read as the same quantity, in every unit', () => {
    const shown = anyUnit.chain((unit) =>
      fc.tuple(
        fc.constant(unit),
        fc.integer({ min: unit === 'date' ? 0 : -50_000, max: 50_000 }),
        fc.constantFrom(...partsOf(unit)),
        habits,
      ),
    )
    fc.assert(
      fc.property(shown, ([unit, top, bottom, said]) => {
        const q = quantity(exact(top).div(bottom), unit)
        const text = show(q)
        const back = amountRead(readOne(text, said), q)
        expect(back && isExact(back) && back.equals(exact(top).div(bottom)), text).toBe(true)
      }),
      { numRuns: 6000, seed: 2 },
    )
    // Each unit comes up some eighty times; none may be missed.
    for (const unit of unitNames) {
      const q = quantity(7, unit)
      expect([unit, amountRead(readOne(show(q)), q)?.toString()]).toEqual([unit, '7'])
    }
  })

  it('is shown again as it was, where it was rounded', () => {
    fc.assert(
      fc.property(
        anyUnit.filter((unit) => unit !== 'date'),
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.boolean(),
        habits,
        (unit, top, bottom, isAbout, said) => {
          const number = isAbout ? about(top / bottom, 1e-9) : exact(top).div(bottom)
          const q = quantity(number, unit)
          const first = amountRead(readOne(show(q), said), q)
          expect(first, show(q)).toBeDefined()
          // What was read is exact, and so is its own reading.
          const again = quantity(first as Amount, unit)
          const second = amountRead(readOne(show(again), said), again)
          expect(second && compare(first as Amount, second), `${show(q)}, then ${show(again)}`).toBe(0)
        },
      ),
      { numRuns: 4000, seed: 3 },
    )
  })

  it('is read as the same length in all the units of lengths, and by the marks of a tape', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60_000 }),
        fc.constantFrom(1, 2, 4, 8, 16, 17, 32, 64),
        fc.constantFrom('in', 'ft', 'yd'),
        (top, bottom, unit) => {
          const q = quantity(exact(top).div(bottom), 'in')
          const inIt = { ...q, unit }
          const isWhole = unit !== 'yd' || 10_000 % (bottom * 36) === 0
          if (isWhole) expect(equal(readOne(show(inIt))?.quantity as Quantity, q), show(inIt)).toBe(true)
          const marked = byTape(inIt)
          expect(show({ ...(readOne(marked)?.quantity as Quantity), unit }), marked).toBe(marked)
        },
      ),
      { numRuns: 1500, seed: 5 },
    )
  })

  it('is read from its exact fraction, mixed or not, with the sign of its unit behind it', () => {
    fc.assert(
      fc.property(
        anyUnit.filter((unit) => unit !== 'date' && unitNamed(unit).kind !== 'money'),
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 200 }),
        (unit, top, bottom) => {
          const q = quantity(exact(top).div(bottom), unit)
          const sign = unitNamed(unit).sign
          for (const number of [exactText(q) as string, mixed(exact(top).div(bottom))]) {
            const text = sign === '' ? number : `${number} ${sign}`
            const back = amountRead(readOne(text), q)
            expect(back && compare(back, exact(top).div(bottom)), text).toBe(0)
          }
        },
      ),
      { numRuns: 3000, seed: 7 },
    )
  })

  it('is read as so many, where things are counted', () => {
    const things = fc.constantFrom('bag', 'post', 'picket', 'bay', 'board', 'box', 'bracket', 'gate', 'batch', 'trip')
    fc.assert(
      fc.property(things, fc.integer({ min: 0, max: 2_000_000 }), (thing, count) => {
        const text = counted(exact(count), thing)
        expect(readOne(text)?.bare?.equals(count), text).toBe(true)
      }),
      { numRuns: 500, seed: 11 },
    )
  })
})
