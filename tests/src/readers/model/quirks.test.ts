// Streams and refusals as servers were seen to send them, rewritten small: `quirks.json` holds them as data.
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { createAssembly } from '../../../../src/readers/model/assemble.ts'
import type { Message, Spoken, ToolCall } from '../../../../src/readers/model/endpoint.ts'
import { createEventReader } from '../../../../src/readers/model/events.ts'
import {
  answering,
  bytesOf,
  endpoint,
  eventsFor,
  question,
  raw,
  type Sent,
  sentIn,
  serve,
  server,
  spokenEvents,
  streamed,
  tools,
} from './fake-server.ts'

interface Quirk {
  readonly id: string
  readonly kind: 'stream' | 'request'
  readonly server: string
  readonly quirk: string
  readonly chunks: string | readonly unknown[]
  readonly response?: { readonly status: number; readonly body: unknown }
  readonly expect: {
    readonly calls?: readonly Pick<ToolCall, 'name' | 'args' | 'state'>[]
    readonly text?: string
    readonly finish?: string
    readonly reasoning?: string
    readonly refusal?: string
    readonly usage?: unknown
    readonly error?: string
  }
}

const quirks = JSON.parse(readFileSync(new URL('quirks.json', import.meta.url), 'utf8')) as readonly Quirk[]
const streams = quirks.filter((it) => it.kind === 'stream')
const refusals = quirks.filter((it) => it.kind === 'request')

beforeAll(() => server.listen({ onUnhandledRequest: 'error' }))
afterEach(() => server.resetHandlers())
afterAll(() => server.close())

const eventsOf = ({ chunks }: Quirk): string => (typeof chunks === 'string' ? chunks : eventsFor(chunks))

function expectUnderstood(spoken: Spoken, { expect: expected }: Quirk): void {
  const heard: Record<string, unknown> = {
    ...spoken,
    finish: spoken.finishReason,
    calls: spoken.calls.map(({ name, args, state }) => ({ name, args, state })),
  }
  const { ids: _ids, ...fields } = expected as Quirk['expect'] & { ids?: unknown }
  for (const [field, value] of Object.entries(fields)) expect(heard[field], field).toEqual(value)
  if (expected.error === undefined) expect(spoken.error).toBeUndefined()
  for (const call of spoken.calls) expect(call.id).toMatch(/^[A-Za-z0-9]{9}$/)
}

describe('a stream as a server was seen to send it is understood', () => {
  test.each(streams.map((it) => [it.id, it.server, it.quirk, it] as const))(
    '%s, %s: %s',
    async (_id, _server, _quirk, quirk) => {
      serve(streamed(eventsOf(quirk)))
      expectUnderstood(await endpoint().say({ messages: question, tools, choice: 'auto' }), quirk)
    },
  )

  test.each(streams.map((it) => [it.id, it] as const))(
    '%s is understood the same wherever the network cuts it',
    (_id, quirk) => {
      const bytes = bytesOf(eventsOf(quirk))
      const offered = new Map(tools.map((tool) => [tool.name, tool.parameters]))
      const understood = (pieces: readonly Uint8Array[]): Spoken => {
        const [events, assembly] = [createEventReader(), createAssembly(offered)]
        const arrivals = [...pieces.flatMap((piece) => events.push(piece)), ...events.end()]
        for (const arrival of arrivals) if (arrival.kind === 'event') assembly.take(arrival.value)
        return assembly.spoken(assembly.failure() ? 'upstream' : undefined)
      }
      const inOnePiece = understood([bytes])
      expectUnderstood(inOnePiece, quirk)
      const cuts = fc.uniqueArray(fc.integer({ min: 1, max: bytes.length - 1 }), { maxLength: 12 })
      fc.assert(
        fc.property(cuts, (places) => {
          const ordered = [0, ...places.sort((one, other) => one - other), bytes.length]
          const pieces = ordered.slice(1).map((end, at) => bytes.subarray(ordered[at], end))
          expect(understood(pieces)).toEqual(inOnePiece)
        }),
        { numRuns: 30 },
      )
    },
  )
})

describe('a request that a server was seen to refuse', () => {
  const call: ToolCall = {
    id: 'call00001',
    name: 'layout',
    args: { length: '96 ft' },
    state: 'ok',
    raw: '{"length":"96 ft"}',
  }
  const talk: readonly Message[] = [
    ...question,
    { role: 'assistant', content: '', calls: [call], kept: { reasoning_content: 'plan' } },
    { role: 'tool', content: '13 posts', callId: call.id },
  ]
  async function askedAfter(id: string): Promise<Sent[]> {
    const response = refusals.find((it) => it.id === id)?.response
    const body = response?.body
    const refusal = raw(typeof body === 'string' ? body : JSON.stringify(body), response?.status, {
      'x-should-retry': 'false',
    })
    const asked = serve(refusal, streamed(spokenEvents('Hi')))
    const spoken = await endpoint({ usage: true }).say({ messages: talk, tools, choice: 'required' })
    expect(spoken.error).toBeUndefined()
    expect(spoken.text).toBe('Hi')
    expect(asked).toHaveLength(2)
    return asked.map((_it, at) => sentIn(asked, at))
  }

  test('every refusal of the collection is met below', () => {
    expect(refusals.map((it) => it.id)).toEqual(['q52', 'q53', 'q55', 'q56', 'q58', 'q59', 'q61', 'q62'])
  })

  test('q52: a field named as unknown is left out the second time', async () => {
    const [first, second] = await askedAfter('q52')
    expect(first?.stream_options).toEqual({ include_usage: true })
    expect(second).not.toHaveProperty('stream_options')
  })

  test('q53, q59: ids are nine letters and digits from the start, in calls and in results', async () => {
    const asked = serve(
      answering(
        {
          tool_calls: [
            { id: 'call_search', type: 'function', function: { name: 'layout', arguments: '{"length":"96 ft"}' } },
          ],
        },
        'tool_calls',
      ),
    )
    const model = endpoint()
    const spoken = await model.say({ messages: question, tools })
    const id = spoken.calls[0]?.id
    expect(id).toMatch(/^[A-Za-z0-9]{9}$/)
    await model.say({
      messages: [
        ...question,
        { role: 'assistant', content: spoken.text, calls: spoken.calls },
        { role: 'tool', content: '13 posts', callId: id },
      ],
      tools,
    })
    const { messages } = sentIn(asked, 1)
    expect([messages[1]?.tool_calls?.[0]?.id, messages[2]?.tool_call_id]).toEqual([id, id])
  })

  test.each(['q55', 'q56'])('%s: where null is refused as content, empty text is sent', async (id) => {
    const [first, second] = await askedAfter(id)
    expect([first?.messages[1]?.content, second?.messages[1]?.content]).toEqual([null, ''])
  })

  test('q58: a call without words has null as content from the start, and a turn in which nothing was said is not sent', async () => {
    const asked = serve(streamed(spokenEvents('Hi')))
    await endpoint().say({ messages: [...talk, { role: 'assistant', content: '' }], tools })
    const { messages } = sentIn(asked, 0)
    expect(messages.map((it) => it.content)).toEqual(['How many posts for 96 ft?', null, '13 posts'])
  })

  test('q58: where empty text was learnt and is then refused, null is sent', async () => {
    const nil = raw('{"message":"invalid message content type: <nil>"}', 400)
    const asked = serve(nil, streamed(spokenEvents('Hi')), raw('empty text block', 400), streamed(spokenEvents('Hi')))
    const model = endpoint()
    await model.say({ messages: talk, tools })
    await model.say({ messages: talk, tools })
    expect(asked.map((_it, at) => sentIn(asked, at).messages[1]?.content)).toEqual([null, '', '', null])
  })

  test('q61: a schema is sent without the keywords that servers refuse', async () => {
    const asked = serve(streamed(spokenEvents('Hi')))
    const listed = {
      type: 'object',
      properties: { soils: { type: 'array', minItems: 1, items: { type: 'string', pattern: 'c.*', format: 'x' } } },
    }
    await endpoint().say({
      messages: question,
      tools: [{ name: 'soils', description: '', parameters: listed }],
      choice: 'required',
    })
    expect(sentIn(asked, 0).tools?.[0]?.function.parameters).toEqual({
      type: 'object',
      properties: { soils: { type: 'array', description: 'at least 1 in the list', items: { type: 'string' } } },
    })
  })

  test('q61: where the schema is refused all the same, strictness and then the demand for a call are dropped', async () => {
    const refusal = raw('features not supported by xgrammar', 400)
    const asked = serve(refusal, refusal, streamed(spokenEvents('Hi')))
    const spoken = await endpoint().say({ messages: question, tools, choice: 'required' })
    expect(spoken.text).toBe('Hi')
    const seen = asked.map(({ body }) => [(body as Sent).tools?.[0]?.function.strict, body.tool_choice])
    expect(seen).toEqual([
      [true, 'required'],
      [undefined, 'required'],
      [undefined, undefined],
    ])
  })

  test('q62: thoughts are sent back once the server asks for them', async () => {
    const [first, second] = await askedAfter('q62')
    expect([first?.messages[1]?.reasoning_content, second?.messages[1]?.reasoning_content]).toEqual([undefined, 'plan'])
  })
})
