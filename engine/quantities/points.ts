// This file is about corner points in a message: “(0, 0), (60, 0), (60, 84) and (0, 84) ft”, “0/0; 18.5/0; 18.5/24 m”.
// Alone “60,84” may be 60.84: three pairs or more, in brackets or parted by strokes and semicolons, are points.
import Fraction from 'fraction.js'
import { quantity, type System } from './quantity.ts'
import type { Reading } from './reading.ts'

const number = String.raw`-?\d+(?:\.\d+)?`
const unit = String.raw`(?:\s*(?:feet|foot|ft|metres|meters|m|mm|in|inches|yd|yards|'|′))?`
const ways = [
  new RegExp(String.raw`\(\s*(${number})(${unit})\s*[,;/]\s*(${number})(${unit})\s*\)`, 'g'),
  new RegExp(
    String.raw`(?<![\d/.,])(${number})(${unit})\s*[/|]\s*(${number})(${unit})(?=\s*(?:;|,|\band\b|$|\.\s|\.$|m\b|ft\b))`,
    'g',
  ),
  new RegExp(
    String.raw`(?<![\d/.,])(${number})(${unit})\s*,\s*(${number})(${unit})(?=\s*(?:;|\band\b|$|\.\s|\.$))`,
    'g',
  ),
]
const fewest = 3
const units: Readonly<Record<string, string>> = {
  feet: 'ft',
  foot: 'ft',
  ft: 'ft',
  "'": 'ft',
  '′': 'ft',
  metres: 'm',
  meters: 'm',
  m: 'm',
  mm: 'mm',
  in: 'in',
  inches: 'in',
  yd: 'yd',
  yards: 'yd',
}

/** The points of a message, each number a length of its own; none where there are not three. */
export function pointsIn(text: string, system: System): Reading[] {
  const isSpoken = /\b(corners?|points?|coordinates?)\b/i.test(text)
  for (const [i, way] of ways.entries()) {
    // “1/4 in, 1/2 in, 3/8 in” are fractions, unless somebody speaks of points.
    if (i > 0 && !isSpoken) continue
    const found = [...text.matchAll(way)]
    if (found.length < fewest) continue
    const last = found.at(-1) as RegExpMatchArray
    const behind = /^[\s)]*(?:in\s+)?(feet|foot|ft|metres|meters|mm|m|inches|yd|yards)\b/.exec(
      text.slice((last.index ?? 0) + last[0].length),
    )
    const said = found.flatMap((it) => [it[2]?.trim(), it[4]?.trim()]).find((it) => it)
    const ahead = /\bin (feet|foot|ft|metres|meters|m|mm|inches|yards)\b/i.exec(text.slice(0, found[0]?.index ?? 0))
    const common = units[said ?? behind?.[1] ?? ahead?.[1]?.toLowerCase() ?? ''] ?? (system === 'metric' ? 'm' : 'ft')
    return found.flatMap((it) => {
      const start = it.index ?? 0
      const first = start + it[0].indexOf(it[1] as string)
      const second =
        first +
        (it[1] as string).length +
        it[0].slice(first - start + (it[1] as string).length).indexOf(it[3] as string)
      const at = (from: number, digits: string, own: string | undefined, point: 'across' | 'along'): Reading => ({
        start: from,
        end: from + digits.length,
        said: digits,
        quantity: quantity(new Fraction(digits), units[own?.trim() ?? ''] ?? common),
        bare: null,
        firmness: 'exactly',
        rivals: [],
        point,
      })
      return [at(first, it[1] as string, it[2], 'across'), at(second, it[3] as string, it[4], 'along')]
    })
  }
  return []
}
