// This file is about measuring a model as the front: the written conversations are played to it, several times over, and every answer is judged.
import { type Assistant, createAssistant } from '../../src/assistant.ts'
import { openEndpoint } from '../../src/readers/model/endpoint.ts'
import { createModelReader } from '../../src/readers/model/reading.ts'
import type { Endpoint, Spoken } from '../../src/readers/model/speech.ts'
import { createWriter } from '../../src/readers/model/writing.ts'
import { readSettings } from '../../src/settings.ts'
import { counted, type Heard, type Part, parts, percent, played, talksOf } from './reading/measure.ts'
import type { Talk } from './reading/question.ts'

/** What one turn took. Times in ms. */
export interface Took {
  readonly reads: number
  readonly writes: number
  /** Sentences that the guard let through nothing of. */
  readonly rejected: number
  /** Requests that went out, those among them that a server refused and that were sent otherwise, and how many of its calls failed. */
  readonly sent: number
  readonly resent: number
  readonly failed: number
  readonly fellBack: boolean
  readonly tokens: { readonly in: number; readonly out: number; readonly cached: number }
  readonly toCard: number
  readonly toProse: number | undefined
  /** Without the model's own time. */
  readonly ours: number
}

export interface Played extends Heard, Took {}

export interface FrontMeasure {
  readonly address: string
  readonly model: string
  readonly times: number
  readonly talks: number
  /** Every turn of every playing. */
  readonly turns: readonly Played[]
  /** Of the talks, what share comes out right from end to end when it is played once, and four times out of four. */
  readonly passOnce: number
  readonly passFour: number | undefined
}

/** Plays all talks so many times, one after the other: a rate limit is not what is measured. */
export async function frontMeasure(endpoint: Endpoint, talks: readonly Talk[], times: number): Promise<FrontMeasure> {
  const turns: Played[] = []
  const right = new Map<string, number>()
  for (let time = 0; time < times; time++)
    for (const talk of talks) {
      const took: Took[] = []
      const heard = await played([talk], watched(endpoint, took))
      turns.push(...heard.map((it, i) => ({ ...it, ...(took[i] as Took) })))
      const isRight = heard.every((it) => it.verdict === 'right' || it.verdict === 'void')
      right.set(talk.talk, (right.get(talk.talk) ?? 0) + Number(isRight))
    }
  const counts = talks.map(({ talk }) => right.get(talk) ?? 0)
  return {
    address: endpoint.address,
    model: endpoint.model,
    times,
    talks: talks.length,
    turns,
    passOnce: mean(counts.map((it) => it / times)),
    passFour: times < 4 ? undefined : mean(counts.map((it) => allOf(4, it, times))),
  }
}

/** The chance that k of n playings, drawn at random, are all among the right ones: C(right, k) / C(n, k). */
export function allOf(k: number, right: number, n: number): number {
  let chance = 1
  for (let i = 0; i < k; i++) chance *= Math.max(0, right - i) / (n - i)
  return chance
}

/** An assistant of that model, and what each of its turns took. */
function watched(endpoint: Endpoint, took: Took[]): Assistant {
  let said: { spoken: Spoken; reads: boolean; ms: number }[] = []
  const counting: Endpoint = {
    ...endpoint,
    async say(asking, options) {
      const start = performance.now()
      const spoken = await endpoint.say(asking, options)
      said.push({ spoken, reads: asking.tools !== undefined, ms: performance.now() - start })
      return spoken
    },
  }
  const assistant = createAssistant(createModelReader(counting), createWriter(counting))
  return {
    async turn(asked, watch = () => {}, signal) {
      said = []
      const start = performance.now()
      let toCard: number | undefined
      const answered = await assistant.turn(
        asked,
        (event) => {
          if (event.event === 'card') toCard = performance.now() - start
          watch(event)
        },
        signal,
      )
      const whole = performance.now() - start
      const writes = said.filter((it) => !it.reads && !it.spoken.error)
      const { prose, front } = answered.answer
      took.push({
        reads: said.filter((it) => it.reads).length,
        writes: said.filter((it) => !it.reads).length,
        rejected: writes.length - Number(prose !== ''),
        sent: sum(said.map((it) => it.spoken.sent ?? 1)),
        resent: sum(said.map((it) => (it.spoken.sent ?? 1) - 1)),
        failed: said.filter((it) => it.spoken.error).length,
        fellBack: front === 'offline' && said.length > 0,
        tokens: tokensOf(said.map((it) => it.spoken)),
        toCard: toCard ?? whole,
        toProse: prose === '' ? undefined : whole,
        ours: whole - sum(said.map((it) => it.ms)),
      })
      return answered
    },
  }
}

function tokensOf(spoken: readonly Spoken[]): Took['tokens'] {
  const of = (value: unknown, ...path: readonly string[]): number => {
    const found = path.reduce<unknown>((it, name) => (it as Record<string, unknown> | undefined)?.[name], value)
    return typeof found === 'number' ? found : 0
  }
  const all = spoken.flatMap((it) => it.usage ?? [])
  return {
    in: sum(all.map((it) => of(it, 'prompt_tokens'))),
    out: sum(all.map((it) => of(it, 'completion_tokens'))),
    cached: sum(all.map((it) => of(it, 'prompt_tokens_details', 'cached_tokens'))),
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, it) => total + it, 0)
const mean = (numbers: readonly number[]): number => sum(numbers) / Math.max(1, numbers.length)
const median = (numbers: readonly number[]): number | undefined =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]

/** In words, a line each. */
export function frontInWords({ address, model, times, talks, turns, ...pass }: FrontMeasure): string {
  const of = (part: number): string => percent(part, turns.length)
  const ms = (numbers: readonly number[]): string => {
    const middle = median(numbers)
    return middle === undefined ? 'none' : `${middle.toFixed(middle < 100 ? 1 : 0)} ms`
  }
  const all = (amount: (it: Played) => number): number => sum(turns.map(amount))
  const sums = turns.filter((it) => it.chosen !== undefined)
  const kinds = Object.entries(counted(turns)).map(([kind, verdicts]) => {
    const count = sum(Object.values(verdicts))
    const each = Object.entries(verdicts).filter(([, it]) => it > 0)
    return `  ${kind}, ${count}: ${each.map(([verdict, it]) => `${verdict} ${percent(it, count)}`).join(', ')}`
  })
  return [
    `the model “${model}” at ${address}: ${talks} talks, ${times} times, ${turns.length} turns`,
    ...kinds,
    `  calculation chosen ${percent(sums.filter((it) => it.chosen).length, sums.length)}, arguments right ${percent(sums.filter((it) => it.argued).length, sums.length)}, figures wrong anywhere ${of(turns.filter((it) => it.verdict === 'wrong').length)}`,
    `  talks right from end to end: once ${percent(pass.passOnce, 1)}, four times of four ${pass.passFour === undefined ? 'not known from fewer than four' : percent(pass.passFour, 1)}`,
    `  turns with a repair ${of(turns.filter((it) => it.reads > 1).length)}, read without the model ${of(turns.filter((it) => it.fellBack).length)}, sentences refused by the guard ${all((it) => it.rejected)} of ${all((it) => it.writes)}`,
    `  requests ${all((it) => it.sent)}, ${(all((it) => it.sent) / Math.max(1, turns.length)).toFixed(2)} a turn; sent again otherwise ${all((it) => it.resent)}; failed ${all((it) => it.failed)}`,
    `  tokens in ${all((it) => it.tokens.in)}, of them cached ${all((it) => it.tokens.cached)}; out ${all((it) => it.tokens.out)}`,
    `  at the median: to the card ${ms(turns.map((it) => it.toCard))}, to the sentences ${ms(turns.flatMap((it) => it.toProse ?? []))}, without the model’s time ${ms(turns.map((it) => it.ours))}`,
  ].join('\n')
}

export const frontUsage = `npm run bench -- front [first|second|third|fourth …] [--times K] [--talks N] [--json]
  plays the written conversations to the model that PLUMBPOST_MODEL, OPENAI_BASE_URL and OPENAI_API_KEY name;
  all parts, four times each, where nothing else is said; --talks N takes the first N of each part
`

/** The command line of `npm run bench -- front`. */
export async function measureFront(
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): Promise<string> {
  const { model } = readSettings(env)
  if (!model) throw new Error(`Name a model first: set PLUMBPOST_MODEL.\n${frontUsage}`)
  const asked = parts.filter((it) => args.includes(it))
  const most = numberAfter('--talks', args) ?? Number.POSITIVE_INFINITY
  const chosen: readonly Part[] = asked.length > 0 ? asked : parts
  const talks = chosen.flatMap((part) => talksOf('tests/bench/reading', part).slice(0, most))
  const measured = await frontMeasure(openEndpoint({ ...model, usage: true }), talks, numberAfter('--times', args) ?? 4)
  return args.includes('--json') ? JSON.stringify(measured, null, 1) : frontInWords(measured)
}

function numberAfter(option: string, args: readonly string[]): number | undefined {
  const at = args.indexOf(option)
  if (at < 0) return undefined
  const number = Number(args[at + 1])
  if (!Number.isInteger(number) || number < 1) throw new Error(`${option} wants a whole number.\n${frontUsage}`)
  return number
}
