// This file is about a forecast pasted as a table: a line for each hour, with its temperature, humidity and chance of rain.
//
//   time   temp (°F)  humidity  rain
//   6 am   48         92 %      0 %
//   7 am   52         88 %      0 %
import { tablesIn, yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bind.ts'
import { weight } from './cue-score.ts'

type Column = 'firstHour' | 'hourTemperatures' | 'hourHumidities' | 'rainChances' | 'other'
type Forecast = Exclude<Column, 'other'>

/** What each quantity of the table tells. Nothing where its columns leave open which is which. */
export function hoursInTable({ said, readings }: Heard): Bound[] {
  const bound: Bound[] = []
  for (const { heads, rows } of tablesIn(readings, said)) {
    const [first] = rows
    const columns = first?.map((it, i) => columnOf(heads[i] ?? '', it, i))
    if (!columns) continue
    // Without heads the first share is the humidity, and the second the rain's, as forecasts have them.
    const shares = columns.flatMap((column, i) => (column === undefined && isShare(first?.[i]) ? [i] : []))
    if (heads.length === 0 && !columns.includes('hourHumidities'))
      for (const [n, name] of (['hourHumidities', 'rainChances'] as const).entries())
        if (shares[n] !== undefined) columns[shares[n]] = name
    const isForecast = (['firstHour', 'hourTemperatures', 'hourHumidities'] as const).every(
      (name) => columns.filter((it) => it === name).length === 1,
    )
    if (!isForecast || columns.includes(undefined)) continue
    for (const row of rows)
      for (const [i, reading] of row.entries())
        if (columns[i] !== 'other') bound.push({ reading, word: columns[i] as Forecast, at: yard, score: weight.byTwo })
  }
  return bound
}

const isShare = (it: Tagged | undefined): boolean => it?.quantity?.kind === 'percent'

function columnOf(head: string, first: Tagged, at: number): Column | undefined {
  if (/\b(dew|feels|wind|gust|cloud|pressure|uv|wet.?bulb)/i.test(head)) return 'other'
  if (/\b(hum|rh\b|relative)/i.test(head)) return 'hourHumidities'
  if (/\b(rain|precip|pop\b|shower|chance)/i.test(head)) return 'rainChances'
  if (at === 0 && (first.clock || (first.bare !== null && /\b(hour|time|clock)\b/i.test(head)))) return 'firstHour'
  return first.quantity?.kind === 'temperature' ? 'hourTemperatures' : undefined
}
