// This file is about a model that reads as the offline reader does and takes no time: what the program itself adds to a turn is measured with it.
import { type Assistant, createAssistant } from '../../src/assistant.ts'
import { hear, jobAfter } from '../../src/hearing.ts'
import { createModelReader } from '../../src/readers/model/reading.ts'
import type { Endpoint, Spoken } from '../../src/readers/model/speech.ts'
import { readOffline } from '../../src/readers/offline/offline.ts'
import type { Request, Told } from '../../src/request.ts'
import { type Heard, played } from './reading/measure.ts'
import type { Talk } from './reading/question.ts'

/** The calls of the seven tools that make up a request; merged they give it again. */
export function callsOf(request: Request): { name: string; args: unknown }[] {
  const fact = ({ word, at, from }: Told) => ({
    word,
    at,
    tag: from.usual ? 'usual' : from.tag,
    quote: from.quote,
    option: from.option,
  })
  const { told, wants, calculation, confirms, notes, acts, either, declines } = request
  const isAsking = wants.length > 0 || calculation !== null || (notes ?? []).length > 0
  return [
    ...(told.length > 0 || confirms.length > 0 ? [{ name: 'tell', args: { facts: told.map(fact), confirms } }] : []),
    ...(isAsking ? [{ name: 'want', args: { words: wants, calculation, advice: notes ?? null } }] : []),
    ...(acts ?? []).map(({ act, word, at, name, between }) =>
      act === 'compare'
        ? {
            name: 'compare',
            args: {
              word: between?.[0]?.word ?? null,
              at: between?.[0]?.at ?? null,
              values: (between ?? []).map(({ from }) => ({ tag: from.tag, quote: from.quote })),
            },
          }
        : act === 'undo' || act === 'redo' || act === 'keep' || act === 'turn-to'
          ? { name: 'change', args: { how: act, name } }
          : { name: 'recall', args: { what: act, word, at } },
    ),
    ...(either ?? []).map((args) => ({ name: 'ask', args })),
    ...declines.map((args) => ({ name: 'decline', args })),
  ]
}

/** An assistant whose model hands over, at once, what the offline reader reads; and what each turn took but for that. */
export function ownReading(): { assistant: Assistant; ours: number[] } {
  let spoken: Spoken = { text: '', calls: [], finish: 'stop' }
  const ours: number[] = []
  const endpoint: Endpoint = { address: 'nowhere', model: 'own reading', hasKey: false, say: async () => spoken }
  const assistant = createAssistant(createModelReader(endpoint))
  return {
    ours,
    assistant: {
      async turn(asked, watch, signal) {
        const request = readOffline(hear(asked.said, jobAfter(asked.before)))
        const calls = callsOf(request).map(({ name, args }, i) => ({
          id: `call${String(i).padStart(5, '0')}`,
          name,
          args,
          state: 'ok' as const,
          raw: '',
        }))
        spoken = { text: '', calls, finish: 'calls' }
        const start = performance.now()
        const answered = await assistant.turn(asked, watch, signal)
        ours.push(performance.now() - start)
        return answered
      },
    },
  }
}

/** A promise: what the program adds to a turn, at the median. */
const limitMs = 10

export interface Overhead {
  readonly turns: number
  readonly ms: number
  /** How many times as long as a turn without a model takes. */
  readonly ratio: number
  readonly limitMs: number
  readonly kept: boolean
}

/** What a turn takes with a model that takes no time. The same talks without a model are the reference. */
export async function overheadMeasure(talks: readonly Talk[], without: readonly Heard[]): Promise<Overhead> {
  const { assistant, ours } = ownReading()
  await played(talks, assistant)
  const [ms, reference] = [median(ours), median(without.map((it) => it.ms))]
  return { turns: ours.length, ms, ratio: ms / reference, limitMs, kept: ms <= limitMs }
}

export const overheadInWords = ({ turns, ms, ratio, kept }: Overhead): string =>
  `a turn with a model, without the model’s own time, at the median of ${turns}: ${ms.toFixed(2)} ms, ${ratio.toFixed(1)} × a turn without a model; ${kept ? 'within' : 'OVER'} ${limitMs} ms`

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? Number.NaN
