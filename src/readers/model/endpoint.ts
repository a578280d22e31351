// This file is about one OpenAI-compatible address: what is asked, tried again where the server's refusal says how, and heard to its end.
// It knows nothing of fences. A fault of the server never throws: it is in what was spoken.
import OpenAI from 'openai'
import type { ChatCompletionCreateParams } from 'openai/resources/chat/completions'
import { type Assembly, createAssembly } from './assemble.ts'
import { bodyOf, type Wishes } from './body.ts'
import { createEventReader } from './events.ts'
import type { Learnt } from './learnt.ts'
import { freshProfile, learn, type Profile } from './profile.ts'
import type { Body, Endpoint, Spoken } from './speech.ts'
import { type Offered, safeToShow } from './text-calls.ts'
import { type Mishap, mishap, mishapOf, refusedWith } from './troubles.ts'
import { createWatch, type Watch } from './watch.ts'

export type { Endpoint, Message, Spoken, Tool, ToolCall } from './speech.ts'

export interface EndpointSettings {
  readonly model: string
  readonly key?: string
  readonly baseUrl?: string
  /** The longest silence within an answer. */
  readonly idleMs?: number
  /** The longest wait for the first sign of an answer, and between two pieces that only signs of life keep apart. */
  readonly timeoutMs?: number
  readonly stream?: boolean
  readonly limit?: number
  readonly usage?: boolean
  /** Where what is learnt of the server outlives the program. */
  readonly learnt?: Learnt
}

const ordinaryAddress = 'https://api.openai.com/v1'
/** Each refusal teaches one thing; a server that is still not pleased then is left alone. */
const mostTries = 8
/** Longer than a person waits for a server that asks for patience. */
const mostPatienceSeconds = 10
/** Some forty thousand tokens in a stream, more than any answer here holds: a model that runs on is stopped. */
const mostBytes = 8_000_000
/** After the server has said that this is the end, only its count of tokens may follow. */
const graceMs = 2_000

export function openEndpoint(settings: EndpointSettings): Endpoint {
  const base = (settings.baseUrl ?? ordinaryAddress).replace(/\/+$/, '').replace(/\/chat\/completions$/, '')
  const timeoutMs = settings.timeoutMs ?? 60_000
  const waits: Waits = { idleMs: settings.idleMs ?? 25_000, timeoutMs }
  const wishes: Wishes = settings
  const key = settings.key || undefined
  const client = clientFor(base, key, timeoutMs)
  const address = printable(base)
  const of = `${settings.model} at ${address}`
  let profile: Profile = settings.learnt?.recall(of) ?? freshProfile

  const say: Endpoint['say'] = async (asking, { signal, onText } = {}) => {
    const offered: Offered = new Map(asking.tools?.map((tool) => [tool.name, tool.parameters]))
    const earlierCalls = asking.messages.reduce((count, message) => count + (message.calls?.length ?? 0), 0)
    const asked = settings.stream === false ? { ...asking, stream: false } : asking
    const tried: Profile[] = [profile]
    for (let current = profile; ; ) {
      const watch = createWatch(signal)
      const body = bodyOf(asked, current, wishes)
      const assembly = createAssembly(offered, earlierCalls)
      const show = createShowing(assembly, onText)
      const failed = await exchange(client, body, assembly, watch, waits, show.more).finally(watch.close)
      const next =
        failed?.refusal && !show.begun() && tried.length < mostTries
          ? learn(current, failed.refusal, body, tried)
          : undefined
      if (next) {
        tried.push(next)
        current = next
        continue
      }
      // What was learnt is kept only if it led to an answer.
      if (!failed && current !== profile) {
        profile = current
        settings.learnt?.keep(of, current)
      }
      const spoken = failed ? { ...assembly.spoken(failed.trouble), ...toldOf(failed) } : assembly.spoken()
      return show.ended({ ...spoken, sent: tried.length, tokens: tokensOf(spoken, body) })
    }
  }
  return { address, model: settings.model, hasKey: key !== undefined, say }
}

/** In English a token is about four letters (rule of thumb, no source). */
const lettersOfToken = 4

function tokensOf({ usage, text, calls, reasoning = '' }: Spoken, body: Body): number {
  const told = usage?.total_tokens
  if (typeof told === 'number' && Number.isFinite(told) && told > 0) return Math.ceil(told)
  const answered = [text, reasoning, ...calls.map((it) => it.raw)].join('').length
  return Math.ceil((JSON.stringify(body).length + answered) / lettersOfToken)
}

const toldOf = ({ message, reason, patience }: Mishap): Pick<Spoken, 'message' | 'reason' | 'patience'> => ({
  message,
  ...(reason === undefined ? {} : { reason }),
  ...(patience === undefined ? {} : { patience }),
})

interface Waits {
  readonly idleMs: number
  readonly timeoutMs: number
}

/** One request and its answer, heard into the assembly. What is returned is what went wrong. */
async function exchange(
  client: OpenAI,
  body: Body,
  assembly: Assembly,
  watch: Watch,
  waits: Waits,
  more: () => void,
): Promise<Mishap | undefined> {
  const given = (): Mishap =>
    mishap(watch.why() === 'idle' ? 'idle' : watch.why() === 'aborted' ? 'aborted' : 'timeout')
  if (watch.upstream.aborted) return given()
  try {
    watch.expect('beginning', waits.timeoutMs, 'timeout')
    const asked = client.chat.completions
      .create(body as unknown as ChatCompletionCreateParams, { signal: watch.upstream })
      .asResponse()
    const response = await watch.orStopped(asked)
    watch.forget('beginning')
    if (response === 'stopped') {
      // The connection is being closed; what it still says is nobody's concern.
      asked.catch(() => {})
      return given()
    }
    return await hear(response, assembly, watch, waits, more, given)
  } catch (fault) {
    return watch.why() ? given() : mishapOf(fault)
  }
}

async function hear(
  response: Response,
  assembly: Assembly,
  watch: Watch,
  waits: Waits,
  more: () => void,
  given: () => Mishap,
): Promise<Mishap | undefined> {
  const reader = response.body?.getReader()
  if (!reader) return mishap('unreadable')
  const events = createEventReader()
  let done = false
  let unreadable = false
  let heard = false
  let taken = 0
  watch.expect('piece', waits.timeoutMs, 'idle')
  while (!done && !unreadable && !assembly.failure() && taken < mostBytes) {
    // Any byte is a sign of life; a sign of life alone does not hold a person for ever.
    watch.expect('byte', assembly.finished() ? Math.min(graceMs, waits.idleMs) : waits.idleMs, 'idle')
    const read = await watch.orStopped(reader.read()).catch(() => 'broken' as const)
    if (read === 'stopped') break
    const bytes = read === 'broken' || read.done ? undefined : read.value
    taken += bytes?.length ?? 0
    for (const arrival of bytes ? events.push(bytes) : events.end()) {
      if (arrival.kind === 'done') done = true
      else if (arrival.kind === 'unreadable') unreadable = bytes !== undefined || (!heard && read !== 'broken')
      else {
        heard = true
        assembly.take(arrival.value)
      }
      watch.expect('piece', waits.timeoutMs, 'idle')
    }
    more()
    if (!bytes) break
  }
  // Not awaited: some servers never let go.
  reader.cancel().catch(() => {})
  const failure = assembly.failure()
  if (failure) return refusedWith(failure.code, failure.words)
  if (done || (assembly.finished() && watch.why() !== 'aborted')) return undefined
  if (watch.why()) return given()
  return mishap(unreadable ? 'unreadable' : 'cut')
}

function createShowing(assembly: Assembly, onText: ((piece: string) => void) | undefined) {
  let shown = ''
  const show = (safe: string): void => {
    if (!onText || safe.length <= shown.length || !safe.startsWith(shown)) return
    onText(safe.slice(shown.length))
    shown = safe
  }
  return {
    more: (): void => {
      if (onText) show(safeToShow(assembly.content()))
    },
    begun: (): boolean => shown !== '',
    ended: (spoken: Spoken): Spoken => {
      if (!spoken.error) show(spoken.text)
      return spoken
    },
  }
}

function clientFor(baseURL: string, key: string | undefined, timeout: number): OpenAI {
  return new OpenAI({
    baseURL,
    // Nothing is taken from the environment, and without a key none is sent.
    apiKey: key ?? 'none',
    adminAPIKey: null,
    organization: null,
    project: null,
    ...(key === undefined ? { defaultHeaders: { Authorization: null } } : {}),
    maxRetries: 1,
    timeout,
    logLevel: 'off',
    fetch: async (address, init) => legible(await globalThis.fetch(address, init)),
  })
}

/** A refusal whose reason stands anywhere in its body, and that is not waited upon for longer than a person would. */
async function legible(response: Response): Promise<Response> {
  if (response.ok) return response
  const headers = new Headers(response.headers)
  headers.delete('content-length')
  headers.delete('content-encoding')
  const patience = headers.get('retry-after')
  if (patience !== null && !(Number(patience) <= mostPatienceSeconds)) headers.set('x-should-retry', 'false')
  const text = await response.text()
  return new Response(JSON.stringify({ error: parsed(text) ?? text }), { status: response.status, headers })
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** An address without what may be secret in it. */
function printable(address: string): string {
  if (!URL.canParse(address)) return address.replace(/^.*@/, '').replace(/[?#].*$/, '')
  const { origin, pathname } = new URL(address)
  return `${origin}${pathname}`.replace(/\/$/, '')
}
