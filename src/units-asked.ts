// This file is about the unit that is asked for in so many words: “how many cubic yards”, “in litres”, “how many tonnes”. What was worked is told in it.
import { isQuantity, type Quantity, unitNamed, type Value, type Worked } from '../engine/index.ts'

const units: readonly (readonly [unit: string, called: string])[] = [
  ['m3', 'cubes?|cubic met(?:re|er)s?|m3|m³'],
  ['yd3', '(?:cubic |cu\\.? ?)?(?:yards?|yds?)'],
  ['ft3', '(?:cubic|cu\\.?) (?:feet|foot|ft)|ft3|ft³'],
  ['L', 'lit(?:re|er)s?'],
  ['gal', 'gallons?'],
  ['tonne', 'tonnes?'],
  ['ton', 'tons'],
  ['kg', 'kilos?|kilograms?|kgs?'],
  ['lb', 'pounds?|lbs?'],
  ['m2', 'square met(?:re|er)s?|m2|m²|sqm'],
  ['ft2', '(?:square|sq\\.?) (?:feet|foot|ft)|ft2|ft²'],
]

const asked = units.map(
  ([unit, called]) =>
    [
      unit,
      new RegExp(`\\b(?:how many|how much in|what in|in|into|as|total)\\s+(?:${called})(?![\\w/²³])`, 'i'),
    ] as const,
)

/** The units that a message asks for, by the kind of what they measure. */
function unitsIn(said: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>()
  for (const [unit, phrase] of asked) {
    const { kind } = unitNamed(unit)
    if (phrase.test(said) && !found.has(kind)) found.set(kind, unit)
  }
  return found
}

/** What is wanted, shown in the unit that it is asked for in. The amount is the same. */
export function inUnitsAsked(worked: readonly Worked[], said: string): Worked[] {
  const wanted = unitsIn(said)
  if (wanted.size === 0) return [...worked]
  const asUnit = (value: Value): Value => {
    const unit = isQuantity(value) ? wanted.get(value.kind) : undefined
    return unit === undefined ? value : { ...(value as Quantity), unit }
  }
  return worked.map((it) => {
    const { outcome } = it
    if (!outcome.ok) return it
    const values = new Map(
      [...outcome.values].map(([word, value]) => [word, it.wanted.includes(word) ? asUnit(value) : value] as const),
    )
    return { ...it, outcome: { ...outcome, values } }
  })
}
