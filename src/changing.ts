// This file is about changing the job directly, without a message to read: from the page's job sheet, or another program.
import { inSentence, isPlace, parseValue, systemOf, vocabulary, yard } from '../engine/index.ts'
import type { Turn } from './answer.ts'
import { type Answered, answerTo, hear, jobAfter } from './assistant.ts'
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
