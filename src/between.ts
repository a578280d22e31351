// This file is about an answer to "60 °F, or 60 °C?": the unit alone, or “the first”, says which of the two was meant.
import { type Job, type Reading, readQuantities } from '../engine/index.ts'

const byPlace = /^(?:the )?(?:(first|former)|(second|latter|last))(?: one)?$/
const byUnit = /^(?:in |it is |it's )?(\S.*)$/

/**
 * The quantity that such an answer picks, standing for the whole message.
 * Undefined where the message says anything else besides, where it picks none, or where more than one question is open.
 */
export function pickedBetween(said: string, job: Job): Reading | undefined {
  const text = said.trim().replace(/[.!]$/, '').toLowerCase()
  const [open, another] = job.asked.flatMap(({ between }) => (between ? [between] : []))
  if (!open || another || text === '' || text.length > longest) return undefined
  const ways = open.flatMap((it) => readQuantities(it).slice(0, 1))
  const place = byPlace.exec(text)
  const unit = unitSaid(byUnit.exec(text)?.[1] ?? '')
  const [picked, more] = place
    ? [place[1] ? ways[0] : ways.at(-1)]
    : ways.filter((it) => unit !== undefined && it.quantity?.unit === unit)
  return picked && !more ? { ...picked, start: 0, end: said.length, said, firmness: 'exactly', rivals: [] } : undefined
}

const longest = 20

/** The unit that the words are, and nothing but: “F”, “degrees Celsius”, “inches”. */
function unitSaid(words: string): string | undefined {
  for (const each of [words, words.toUpperCase()]) {
    const whole = `1 ${each}`
    const [only, more] = readQuantities(whole)
    if (only?.quantity && !more && only.end === whole.length && only.rivals.length === 0) return only.quantity.unit
  }
  return undefined
}
