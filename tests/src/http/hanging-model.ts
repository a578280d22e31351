// This file is about a model's server for the tests that answers as told, or never, and says when a question's connection is closed.
import { createServer, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'

/** One answer: words, at once or when it is time; a refusal; or nothing at all, before the first byte or after it. */
export type Said =
  | { readonly text: string; readonly when?: Promise<void> }
  | { readonly status: number; readonly retryAfter?: string }
  | 'nothing'
  | 'only a beginning'

export interface HangingModel {
  readonly address: string
  /** How many questions have come. */
  asked(): number
  /** Resolves when that question has come. */
  came(nth: number): Promise<void>
  /** Resolves when the connection of that question is closed. */
  closed(nth: number): Promise<void>
  close(): void
}

/** Answers the questions in turn; the last answer serves every later one. */
export async function openHangingModel(...answers: readonly Said[]): Promise<HangingModel> {
  const arrivals = Array.from({ length: mostAsked }, openSign)
  const closings = Array.from({ length: mostAsked }, openSign)
  let asked = 0
  const server = createServer((request, response) => {
    const nth = asked++
    request.socket.once('close', () => closings[nth]?.give())
    request.resume().once('end', () => {
      say(response, answers[Math.min(nth, answers.length - 1)] as Said)
      arrivals[nth]?.give()
    })
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/v1`,
    asked: () => asked,
    came: (nth) => arrivals[nth]?.given as Promise<void>,
    closed: (nth) => closings[nth]?.given as Promise<void>,
    close: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}

const mostAsked = 8

/** Something to wait for, and the way to give it. */
export function openSign(): { readonly given: Promise<void>; readonly give: () => void } {
  let give = (): void => {}
  const given = new Promise<void>((resolve) => {
    give = resolve
  })
  return { given, give: () => give() }
}

function say(response: ServerResponse, said: Said): void {
  if (said === 'nothing') return
  if (typeof said === 'object' && 'status' in said) {
    response.writeHead(said.status, said.retryAfter === undefined ? {} : { 'retry-after': said.retryAfter })
    response.end('{"error":{"message":"no"}}')
    return
  }
  const piece = (delta: object, finish: string | null): string =>
    `data: ${JSON.stringify({ id: 'c', object: 'chat.completion.chunk', created: 1, model: 'm', choices: [{ index: 0, delta, finish_reason: finish }] })}\n\n`
  response.writeHead(200, { 'content-type': 'text/event-stream' })
  if (said === 'only a beginning') response.write(piece({ role: 'assistant', content: 'Dig' }, null))
  else {
    const whole = `${piece({ role: 'assistant', content: said.text }, null)}${piece({}, 'stop')}data: [DONE]\n\n`
    void Promise.resolve(said.when).then(() => response.end(whole))
  }
}
