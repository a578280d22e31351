// This file is about an answer to "60 °F, or 60 °C?": the unit alone, or “the first”, says which of the two was meant.
import { type Job, type Reading, readQuantities } from '../engine/index.ts'

const places: readonly RegExp[] = [/\b(first|former)\b/i, /\b(second|latter|last)\b/i]

/** The quantity that such an answer picks, standing for the whole message; undefined where it picks none, or more than one. */
export function pickedBetween(said: string, job: Job): Reading | undefined {
  const text = said.trim().replace(/[.!]$/, '')
  const open = job.asked.flatMap((it) => it.between ?? [])
  if (text === '' || text.length > 30 || open.length < 2) return undefined
  const ways = open.flatMap((it) => readQuantities(it).slice(0, 1))
  const unit = /[\p{L}°%"'²³/]+$/u.exec(text)?.[0] ?? ''
  const [named] = readQuantities(`1 ${unit}`)
  const byPlace = ways.filter((_, i) => places[i]?.test(text))
  const byUnit = ways.filter((it) => it.quantity && it.quantity.unit === named?.quantity?.unit)
  const [picked, more] = byPlace.length > 0 ? byPlace : byUnit
  return picked && !more ? { ...picked, start: 0, end: said.length, said, firmness: 'exactly', rivals: [] } : undefined
}
