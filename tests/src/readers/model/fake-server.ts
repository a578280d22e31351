// This file is about a server for the tests: it keeps what it was asked, and answers as the test says.
import { HttpResponse, http, type JsonBodyType } from 'msw'
import { setupServer } from 'msw/node'
import { type EndpointSettings, openEndpoint, type Tool } from '../../../../src/readers/model/endpoint.ts'

export const address = 'http://model.test/v1'
export const server = setupServer()

export interface Asked {
  readonly body: Record<string, unknown>
  readonly headers: Headers
}

/** A body as these tests look into it. */
export interface Sent extends Record<string, unknown> {
  readonly messages: readonly {
    readonly role: string
    readonly content: unknown
    readonly name?: string
    readonly tool_call_id?: string
    readonly reasoning_content?: string
    readonly tool_calls?: readonly { readonly id: unknown }[]
  }[]
  readonly tools?: readonly { readonly function: { readonly parameters: unknown; readonly strict?: boolean } }[]
}

export function sentIn(asked: readonly Asked[], at: number): Sent {
  const body = asked[at]?.body
  if (!body) throw new Error(`There was no request ${at}; there were ${asked.length}.`)
  return body as Sent
}

/** Answers the requests in turn; the last answer serves every later one. */
export function serve(...answers: readonly (() => Response)[]): Asked[] {
  const asked: Asked[] = []
  server.use(
    http.post(`${address}/chat/completions`, async ({ request }) => {
      const answer = answers[Math.min(asked.length, answers.length - 1)]
      asked.push({ body: (await request.json()) as Record<string, unknown>, headers: request.headers })
      return answer?.()
    }),
  )
  return asked
}

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)

/** Server-sent events in the pieces given. */
export const streamed =
  (...pieces: readonly (string | Uint8Array)[]) =>
  (): Response =>
    new HttpResponse(
      new ReadableStream<Uint8Array>({
        start(controller) {
          for (const piece of pieces) controller.enqueue(typeof piece === 'string' ? bytesOf(piece) : piece)
          controller.close()
        },
      }),
      { headers: { 'content-type': 'text/event-stream' } },
    )

export const whole =
  (body: JsonBodyType, status = 200) =>
  (): Response =>
    HttpResponse.json(body, { status })

export const raw =
  (body: string, status = 200, headers: Record<string, string> = { 'content-type': 'text/plain' }) =>
  (): Response =>
    new HttpResponse(body, { status, headers })

export const eventsFor = (chunks: readonly unknown[]): string =>
  chunks.map((chunk) => `data: ${typeof chunk === 'string' ? chunk : JSON.stringify(chunk)}\n\n`).join('')

const chunk = (delta: unknown, finish: string | null = null) => ({
  id: 'c1',
  object: 'chat.completion.chunk',
  created: 1,
  model: 'm',
  choices: [{ index: 0, delta, finish_reason: finish }],
})

/** A well-behaved stream of text. */
export const spokenEvents = (...pieces: readonly string[]): string =>
  eventsFor([
    chunk({ role: 'assistant', content: '' }),
    ...pieces.map((content) => chunk({ content })),
    chunk({}, 'stop'),
    '[DONE]',
  ])

export const deltaEvents = (deltas: readonly unknown[], finish: string): string =>
  eventsFor([
    chunk({ role: 'assistant', content: null }),
    ...deltas.map((delta) => chunk(delta)),
    chunk({}, finish),
    '[DONE]',
  ])

export const answering = (message: Record<string, unknown>, finish = 'stop') =>
  whole({
    id: 'c1',
    object: 'chat.completion',
    created: 1,
    model: 'm',
    choices: [{ index: 0, message: { role: 'assistant', ...message }, finish_reason: finish }],
  } as JsonBodyType)

const object = (property: string) => ({
  type: 'object',
  properties: { [property]: { type: 'string' } },
  required: [property],
  additionalProperties: false,
})

export const tools: readonly Tool[] = [
  { name: 'layout', description: 'Lays out posts.', parameters: object('length') },
  { name: 'hole_depth', description: 'Says how deep.', parameters: object('soil') },
]

export const key = 'sk-secretQ7w8Z9'

export const endpoint = (settings: Partial<EndpointSettings> = {}) =>
  openEndpoint({ model: 'm', key, baseUrl: address, idleMs: 5_000, ...settings })

export const question = [{ role: 'user', content: 'How many posts for 96 ft?' }] as const
