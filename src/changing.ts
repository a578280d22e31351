// This file is about changing the job directly, without a message to read: from the page's job sheet, or another program.
import {
  calculationNamed,
  inSentence,
  isPlace,
  parseValue,
  systemOf,
  vocabulary,
  type Word,
  yard,
} from '../engine/index.ts'
import type { Turn } from './answer.ts'
import { type Answered, answerTo } from './assistant.ts'
import { hear, jobAfter } from './hearing.ts'
import type { Told } from './request.ts'

export type Changed =
  | ({ readonly ok: true; readonly said: string } & Answered)
  | { readonly ok: false; readonly message: string; readonly field: string }

/** Decides one word at a place and works again what was wanted. It is a turn like any other: `hole width: 12 in`. */
export async function changeJob(
  before: readonly Turn[],
  change: { readonly word: string; readonly at?: string; readonly value: string },
): Promise<Changed> {
  const word = vocabulary.get(change.word)
  if (!word)
    return {
      ok: false,
      field: 'word',
      message: `“${change.word}” is no word I know. The job sheet lists those you have used.`,
    }
  const at = change.at ?? yard
  if (!isPlace(at))
    return {
      ok: false,
      field: 'at',
      message: `“${at}” is no place I know. Use yard, or kinds of post such as gate-posts.`,
    }
  const job = jobAfter(before)
  if (parseValue(word, change.value, systemOf(job)) === undefined)
    return {
      ok: false,
      field: 'value',
      message: `I cannot read “${change.value}” as ${inSentence(word)}. ${word.measure}`,
    }
  const heard = hear(`${word.label}: ${change.value}`, job)
  const [reading] = heard.readings
  const from: Told['from'] =
    word.kind === 'choice'
      ? { tag: null, quote: change.value, option: change.value, usual: null }
      : { tag: reading?.tag ?? null, quote: null, option: null, usual: null }
  const request = {
    told: [{ word: word.name, at, from }],
    wants: [],
    calculation: job.named,
    confirms: [],
    declines: [],
  }
  return { ok: true, said: heard.said, ...(await answerTo({ request, by: 'offline' }, heard, before.length)) }
}

/** Works one calculation on values as people write them, and writes it into the talk: what a form was filled in with. A list has one value for each. */
export async function workIn(
  before: readonly Turn[],
  { calculation, inputs }: { readonly calculation: string; readonly inputs: Readonly<Record<string, unknown>> },
): Promise<Changed> {
  const calc = calculationNamed(calculation)
  if (!calc)
    return {
      ok: false,
      field: 'calculation',
      message: `There is no calculation “${calculation.slice(0, 60)}”. GET /api/calculations lists them.`,
    }
  const job = jobAfter(before)
  const values: { word: Word; value: string }[] = []
  for (const [name, given] of Object.entries(inputs)) {
    const word = Object.values(calc.needs).find((it) => it.name === name)
    if (!word) return { ok: false, field: name, message: `“${name.slice(0, 60)}” is not asked for by “${calc.title}”.` }
    for (const each of Array.isArray(given) ? given : [given]) {
      const value = String(each).trim()
      if (value.length > mostOfOne || parseValue(word, value, systemOf(job)) === undefined)
        return {
          ok: false,
          field: name,
          message: `I cannot read “${value.slice(0, 60)}” as ${inSentence(word)}. ${word.measure}`,
        }
      values.push({ word, value })
    }
  }
  const lines = values.map(({ word, value }) => `${word.label}: ${word.options?.[value]?.label ?? value}`)
  const heard = hear([calc.title, ...lines].join('\n'), job)
  let end = calc.title.length
  const told: Told[] = values.map(({ word, value }, i) => {
    const start = end + 1 + `${word.label}: `.length
    end += 1 + (lines[i] as string).length
    const tag = heard.readings.find((it) => it.start >= start && it.end <= end)?.tag
    const from: Told['from'] =
      word.kind === 'choice'
        ? { tag: null, quote: word.options?.[value]?.label ?? value, option: value, usual: null }
        : { tag: tag ?? null, quote: tag ? null : value, option: null, usual: null }
    return { word: word.name, at: yard, from }
  })
  const request = {
    told,
    wants: calc.headlines.map((word) => ({ word, at: yard })),
    calculation: calc.name,
    confirms: [],
    declines: [],
  }
  return { ok: true, said: heard.said, ...(await answerTo({ request, by: 'offline' }, heard, before.length)) }
}
const mostOfOne = 200

/** Shows everything in other units from here on, and works again what was wanted. */
export async function changeUnits(
  before: readonly Turn[],
  system: 'metric' | 'imperial',
): Promise<Answered & { said: string }> {
  const heard = hear(system === 'metric' ? 'In metric units' : 'In feet and inches', jobAfter(before))
  const units = { act: 'units', word: null, at: null, name: system, between: null } as const
  const request = { told: [], wants: [], calculation: null, confirms: [], acts: [units], declines: [] }
  return { said: heard.said, ...(await answerTo({ request, by: 'offline' }, heard, before.length)) }
}

/** Takes the last change back. It is a turn like any other; nothing while nothing was decided. */
export async function undoChange(before: readonly Turn[]): Promise<Changed> {
  const job = jobAfter(before)
  if (job.moves.length === 0)
    return { ok: false, field: 'job', message: 'There is nothing to take back: nothing has been decided yet.' }
  const heard = hear('undo', job)
  const undo = { act: 'undo', word: null, at: null, name: null, between: null } as const
  const request = { told: [], wants: [], calculation: null, confirms: [], acts: [undo], declines: [] }
  return { ok: true, said: heard.said, ...(await answerTo({ request, by: 'offline' }, heard, before.length)) }
}
