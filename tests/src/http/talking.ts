// This file is about talking to the HTTP app in a test: questions posted, answers whole or in pieces.
import { type Answer, answerSchema } from '../../../src/answer.ts'
import type { Assistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import type { Pace } from '../../../src/http/elsewhere.ts'
import type { Stopping } from '../../../src/http/stopping.ts'
import type { Store } from '../../../src/store/store.ts'

export interface KeptOverHttp {
  readonly n: number
  readonly said: string
  readonly answer: Answer
  readonly job: unknown
  readonly aside: readonly (readonly KeptOverHttp[])[]
}

export interface Refused {
  readonly status: number
  readonly error: { readonly code: string; readonly message: string }
}

export function talkingTo(assistant: Assistant, store: Store, patienceMs?: number, pace?: Pace, stopping?: Stopping) {
  const app = createApp({
    assistant,
    store,
    version: '1.2.3',
    front: 'model',
    renderReply: (markdown) => `<p>${markdown.length}</p>`,
    host: '127.0.0.1',
    ...(patienceMs === undefined ? {} : { patienceMs }),
    ...(pace ? { pace } : {}),
    ...(stopping ? { stopping } : {}),
  })
  const post = async (path: string, body: object = {}, headers: Record<string, string> = {}, signal?: AbortSignal) =>
    app.request(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...headers },
      body: JSON.stringify(body),
      ...(signal ? { signal } : {}),
    })
  const answer = async (response: Response | Promise<Response>): Promise<Answer> =>
    answerSchema.parse(await (await response).json())
  const refusal = async (response: Response | Promise<Response>): Promise<Refused> => {
    const it = await response
    return { status: it.status, ...((await it.json()) as Pick<Refused, 'error'>) }
  }
  return {
    app,
    post,
    answer,
    refusal,
    start: async (): Promise<string> => ((await (await post('/api/conversations')).json()) as { id: string }).id,
    kept: async (id: string): Promise<readonly KeptOverHttp[]> =>
      ((await (await app.request(`/api/conversations/${id}`)).json()) as { turns: KeptOverHttp[] }).turns,
  }
}

/** The pieces of a stream that has ended. */
export const pieces = (text: string) =>
  text
    .split('\n\n')
    .filter((it) => it.startsWith('event') || it.startsWith('id'))
    .map((block) => ({
      event: /^event: (.*)$/m.exec(block)?.[1],
      data: JSON.parse(/^data: (.*)$/m.exec(block)?.[1] ?? 'null') as unknown,
    }))
