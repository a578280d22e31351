// This file is about talking to the server: questions asked once, answers taken in pieces, and a cut line taken up again.
import type { Answer, Turn } from '../../answer.ts'
import type { openIn } from '../../next.ts'
import type { Direct, Listed } from '../../direct.ts'
import type { SheetLine } from '../../sheet.ts'
import type { InHtml } from '../in-html.ts'

export type ShownAnswer = Answer & { readonly html: InHtml }
export type ShownTurn = Omit<Turn, 'answer'> & {
  readonly answer: ShownAnswer
  /** What stood in its place before it was asked anew, branch by branch. */
  readonly aside: readonly (readonly ShownTurn[])[]
}
export interface PageLine {
  readonly id: string
  readonly title: string
  readonly changed: string
  readonly turns: number
}

/** What the server said no to, in its own words; or that it could not be reached. `passing`: asking again may help. */
export class Refused extends Error {
  constructor(
    message: string,
    readonly passing: boolean,
  ) {
    super(message)
  }
}
class Unreachable extends Refused {
  constructor() {
    super('The server cannot be reached. Is it still running? What you wrote is kept here.', true)
  }
}

/** Told to the window when the server no longer knows whose it is. */
export const shutOut = 'shut-out'

async function ask(path: string, init: RequestInit = {}, wanted: readonly number[] = []): Promise<Response> {
  const response = await fetch(path, init).catch(() => {
    throw new Unreachable()
  })
  if (response.ok || wanted.includes(response.status)) return response
  if (response.status === 401) dispatchEvent(new Event(shutOut))
  const body = (await response.json().catch(() => null)) as { error?: { message?: string } } | null
  throw new Refused(body?.error?.message ?? `The server answered ${response.status}.`, response.status >= 500)
}

const post = (body: unknown, headers: Record<string, string> = {}): RequestInit => ({
  method: 'POST',
  headers: { 'content-type': 'application/json', ...headers },
  body: JSON.stringify(body),
})

export const startPage = async (): Promise<string> =>
  ((await (await ask('/api/conversations', post({}))).json()) as { id: string }).id
export const pages = async (): Promise<PageLine[]> => (await ask('/api/conversations')).json()
export const page = async (id: string): Promise<{ turns: ShownTurn[]; isShared: boolean }> =>
  (await ask(`/api/conversations/${id}`)).json()
export const sheet = async (id: string): Promise<SheetLine[]> => (await ask(`/api/conversations/${id}/job`)).json()
export const open = async (id: string): Promise<ReturnType<typeof openIn>> =>
  (await ask(`/api/conversations/${id}/job/open`)).json()
export const change = async (id: string, word: string, at: string, value: string): Promise<ShownAnswer> =>
  (await ask(`/api/conversations/${id}/job/change`, post({ word, at, value }))).json()
export const workIn = async (
  id: string,
  calculation: string,
  inputs: Readonly<Record<string, unknown>>,
): Promise<ShownAnswer> => (await ask(`/api/conversations/${id}/job/work`, post({ calculation, inputs }))).json()
export const units = async (id: string, system: string): Promise<ShownAnswer> =>
  (await ask(`/api/conversations/${id}/job/units`, post({ system }))).json()
export const undo = async (id: string): Promise<ShownAnswer> =>
  (await ask(`/api/conversations/${id}/job/undo`, post({}))).json()
export const resume = async (id: string, turn: number, branch: number): Promise<void> =>
  void (await ask(`/api/conversations/${id}/turns/${turn}/resume`, post({ branch })))
export const halt = async (id: string, key: string): Promise<void> =>
  void (await ask(`/api/conversations/${id}/turns/halt`, post({}, { 'idempotency-key': key })))
/** A new link to read the page by; an earlier one ends with it. */
export const share = async (id: string): Promise<string> =>
  new URL(
    ((await (await ask(`/api/conversations/${id}/share`, post({}))).json()) as { link: string }).link,
    location.href,
  ).href
export const withdraw = async (id: string): Promise<void> =>
  void (await ask(`/api/conversations/${id}/share`, { method: 'DELETE' }))
let listed: Promise<Listed[]> | undefined
/** Asked for once: it is the same until the server is another. */
export const calculations = (): Promise<Listed[]> => {
  listed ??= ask('/api/calculations').then((it) => it.json() as Promise<Listed[]>)
  listed.catch(() => {
    listed = undefined
  })
  return listed
}
/** What lacks something is an answer too: it says what. */
export const work = async (name: string, inputs: Readonly<Record<string, unknown>>): Promise<Direct> =>
  (await ask(`/api/calculations/${name}`, post({ inputs }), [422])).json()
export const example = async (): Promise<{ said: string; answer: ShownAnswer }> =>
  (await ask('/web/example.json')).json()
/** For good, on every device and in every window. */
export const leave = async (): Promise<void> => void (await ask('/api/owner', { method: 'DELETE' }))
export const remove = async (id: string): Promise<void> =>
  void (await ask(`/api/conversations/${id}`, { method: 'DELETE' }))

/** A file of the page, and the name that the server gives it. */
export async function takeAlong(path: string): Promise<{ file: Blob; name: string }> {
  const response = await ask(path)
  const name = /filename="([^"]+)"/.exec(response.headers.get('content-disposition') ?? '')?.[1]
  return { file: await response.blob(), name: name ?? 'plumbpost' }
}

const mostTries = 4
// The server says that it is still there every 15 s. When it has not for so long, the line is dead though nobody closed it.
const longestSilence = 45_000

export interface Asking {
  readonly text: string
  /** Names the question: asked again under the same key it is the same turn. */
  readonly key: string
  /** The turn it takes the place of; none when it stands at the end. */
  readonly inPlaceOf: number | null
}

/** Asks, and tells each piece as it comes. A stream that is cut is taken up again where it stopped, under the same key. */
export async function askTurn(
  id: string,
  { text, key, inPlaceOf }: Asking,
  hear: (event: string, data: unknown) => void,
): Promise<ShownAnswer> {
  let last: number | null = null
  for (let attempt = 1; ; attempt++) {
    let heard = 0
    try {
      for await (const event of turnEvents(id, { text, key, inPlaceOf }, last)) {
        heard++
        if (event.id !== null) last = event.id
        if (event.name === 'error') {
          const { error } = event.data as { error: { code: string; message: string } }
          throw new Refused(error.message, error.code === 'fault')
        }
        hear(event.name, event.data)
        if (event.name === 'answer') return event.data as ShownAnswer
      }
    } catch (fault) {
      if (fault instanceof Refused && (attempt >= mostTries || !(fault instanceof Unreachable))) throw fault
    }
    if (attempt >= mostTries) throw new Refused('The line to the server was cut. What you wrote is kept here.', true)
    // Nothing came after the last piece: the turn may have been begun anew with fewer pieces. Take it from the start.
    if (heard === 0) last = null
    hear('again', attempt)
    await new Promise((resolve) => setTimeout(resolve, 300 * attempt))
  }
}

async function* turnEvents(id: string, { text, key, inPlaceOf }: Asking, last: number | null): AsyncGenerator<Piece> {
  const headers: Record<string, string> = {
    accept: 'text/event-stream',
    'idempotency-key': key,
    ...(last === null ? {} : { 'last-event-id': String(last) }),
  }
  const line = new AbortController()
  let silence = setTimeout(() => line.abort(), longestSilence)
  try {
    const init = { ...post({ text }, headers), signal: line.signal }
    const where = inPlaceOf === null ? 'turns' : `turns/${inPlaceOf}/again`
    const response = await ask(`/api/conversations/${id}/${where}`, init)
    yield* eventsIn(response, () => {
      clearTimeout(silence)
      silence = setTimeout(() => line.abort(), longestSilence)
    })
  } finally {
    clearTimeout(silence)
  }
}

interface Piece {
  readonly id: number | null
  readonly name: string
  readonly data: unknown
}

async function* eventsIn(response: Response, somethingCame: () => void): AsyncGenerator<Piece> {
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader()
  if (!reader) return
  let rest = ''
  while (true) {
    const { done, value } = await reader.read()
    if (done) return
    somethingCame()
    rest += value
    const blocks = rest.split('\n\n')
    rest = blocks.pop() ?? ''
    for (const block of blocks) {
      const field = (name: string): string | undefined =>
        block
          .split('\n')
          .find((line) => line.startsWith(`${name}:`))
          ?.slice(name.length + 1)
          .trim()
      const data = field('data')
      if (data !== undefined)
        yield {
          id: field('id') === undefined ? null : Number(field('id')),
          name: field('event') ?? 'message',
          data: JSON.parse(data) as unknown,
        }
    }
  }
}
