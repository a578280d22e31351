// This file is about a forecast pasted as a table: a line for each hour, with its temperature, humidity and chance of rain.
//
//   time   temp (°F)  humidity  rain
//   6 am   48         92 %      0 %
//   7 am   52         88 %      0 %
import { type PastedTable, tablesIn, yard } from '../../../engine/index.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'

type Column = 'firstHour' | 'hourTemperatures' | 'hourHumidities' | 'rainChances' | 'other'
type Forecast = Exclude<Column, 'other'>

/** What each quantity of the table tells, and which of them tell nothing of use. None where its columns leave open which is which. */
export function hoursInTable({ said, readings }: Heard): { bound: Bound[]; idle: Tagged[] } {
  const bound: Bound[] = []
  const idle: Tagged[] = []
  for (const { heads, rows } of [...tablesIn(readings, said), ...fromHourToHour(readings)]) {
    if (bound.length > 0) break

    const [first] = rows
    const columns = first?.map((it, i) => columnOf(heads[i] ?? '', it, i))
    if (!columns) continue
    // Without heads the first share is the humidity, and the second the rain's, as forecasts have them.
    const shares = columns.flatMap((column, i) => (column === undefined && isShare(first?.[i]) ? [i] : []))
    if (!columns.includes('hourHumidities') && !columns.includes('rainChances'))
      for (const [n, name] of (['hourHumidities', 'rainChances'] as const).entries())
        if (shares[n] !== undefined) columns[shares[n]] = name
    const isForecast = (['firstHour', 'hourTemperatures', 'hourHumidities'] as const).every(
      (name) => columns.filter((it) => it === name).length === 1,
    )
    if (!isForecast || columns.includes(undefined)) continue
    for (const row of rows)
      for (const [i, reading] of row.entries())
        if (columns[i] === 'other') idle.push(reading)
        else bound.push({ reading, word: columns[i] as Forecast, at: yard, score: weight.byPlace })
  }
  return { bound, idle }
}

/** "7 am 52 F 90 %, 8 am 55 F 85 %": a row begins at each hour. */
function fromHourToHour(readings: readonly Tagged[]): PastedTable<Tagged>[] {
  const rows: Tagged[][] = []
  for (const it of readings)
    if (it.clock) rows.push([it])
    else rows.at(-1)?.push(it)
  const isEven = rows.length > 1 && rows.every((row) => row.length === rows[0]?.length)
  return isEven ? [{ heads: [], rows }] : []
}

const isShare = (it: Tagged | undefined): boolean => it?.quantity?.kind === 'percent'

function columnOf(head: string, first: Tagged, at: number): Column | undefined {
  if (/\b(dew|feels|wind|gust|cloud|pressure|uv|wet.?bulb)/i.test(head)) return 'other'
  if (/\b(hum|rh\b|relative)/i.test(head)) return 'hourHumidities'
  if (/\b(rain|precip|pop\b|shower|chance)/i.test(head)) return 'rainChances'
  if (at === 0 && (first.clock || (first.bare !== null && /\b(hour|time|clock)\b/i.test(head)))) return 'firstHour'
  return first.quantity?.kind === 'temperature' ? 'hourTemperatures' : undefined
}
