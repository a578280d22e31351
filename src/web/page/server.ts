// This file is about talking to the server: questions asked once, answers taken in pieces, and a cut line taken up again.
import type { Answer, Turn } from '../../answer.ts'
import type { SheetLine } from '../../sheet.ts'

export type ShownAnswer = Answer & { readonly html: string }
export type ShownTurn = Omit<Turn, 'answer'> & { readonly answer: ShownAnswer }
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

async function ask(path: string, init: RequestInit = {}): Promise<Response> {
  const response = await fetch(path, init).catch(() => {
    throw new Unreachable()
  })
  if (response.ok) return response
  const body = (await response.json().catch(() => null)) as { error?: { message?: string } } | null
  throw new Refused(body?.error?.message ?? `The server answered ${response.status}.`, response.status >= 500)
}

const post = (body: unknown, headers: Record<string, string> = {}): RequestInit => ({
  method: 'POST',
  headers: { 'content-type': 'application/json', ...headers },
  body: JSON.stringify(body),
})

export const health = async (): Promise<{ front: string }> => (await ask('/healthz')).json()
export const startPage = async (): Promise<string> =>
  ((await (await ask('/api/conversations', post({}))).json()) as { id: string }).id
export const pages = async (): Promise<PageLine[]> => (await ask('/api/conversations')).json()
export const page = async (id: string): Promise<{ turns: ShownTurn[] }> =>
  (await ask(`/api/conversations/${id}`)).json()
export const sheet = async (id: string): Promise<SheetLine[]> => (await ask(`/api/conversations/${id}/job`)).json()
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

/** Asks, and tells each piece as it comes. A stream that is cut is taken up again where it stopped, under the same key. */
export async function askTurn(
  id: string,
  text: string,
  key: string,
  hear: (event: string, data: unknown) => void,
): Promise<ShownAnswer> {
  let last: number | null = null
  for (let attempt = 1; ; attempt++) {
    let heard = 0
    try {
      for await (const event of turnEvents(id, text, key, last)) {
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

async function* turnEvents(id: string, text: string, key: string, last: number | null): AsyncGenerator<Piece> {
  const headers: Record<string, string> = {
    accept: 'text/event-stream',
    'idempotency-key': key,
    ...(last === null ? {} : { 'last-event-id': String(last) }),
  }
  const line = new AbortController()
  let silence = setTimeout(() => line.abort(), longestSilence)
  try {
    const init = { ...post({ text }, headers), signal: line.signal }
    const response = await ask(`/api/conversations/${id}/turns`, init)
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
