// What a server refuses is changed, tried once more, and remembered.
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import type { Message, ToolCall } from '../../../../src/readers/model/endpoint.ts'
import {
  answering,
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
  whole,
} from './fake-server.ts'

beforeAll(() => server.listen({ onUnhandledRequest: 'error' }))
afterEach(() => server.resetHandlers())
afterAll(() => server.close())

const ok = streamed(spokenEvents('Hi'))
const call: ToolCall = {
  id: 'call00001',
  name: 'layout',
  args: { length: '96 ft' },
  state: 'ok',
  raw: '{"length":"96 ft"}',
}
const talk: readonly Message[] = [
  { role: 'system', content: 'Be brief.' },
  ...question,
  { role: 'assistant', content: '', calls: [call] },
  { role: 'tool', content: '13 posts', callId: call.id },
]
const refusal = (words: string, status = 400) =>
  whole({ error: { message: words, type: 'invalid_request_error', param: null } }, status)

/** Asks twice: the first question meets the refusals, the second must meet none. */
async function sentAfter(
  refusals: readonly (() => Response)[],
  settings: Parameters<typeof endpoint>[0] = {},
  choice: 'required' | { name: string } = 'required',
): Promise<Sent[]> {
  const asked = serve(...refusals, ok)
  const model = endpoint(settings)
  expect(await model.say({ messages: talk, tools, choice })).toMatchObject({ text: 'Hi', finish: 'stop' })
  expect(asked).toHaveLength(refusals.length + 1)
  await model.say({ messages: talk, tools, choice })
  expect(asked).toHaveLength(refusals.length + 2)
  const sent = asked.map((_it, at) => sentIn(asked, at))
  expect(sent.at(-1)).toEqual(sent.at(-2))
  return sent.slice(0, -1)
}

describe('a field that is refused', () => {
  test('stream_options is left out', async () => {
    const [first, second] = await sentAfter([refusal('Unrecognized request argument supplied: stream_options')], {
      usage: true,
    })
    expect([first, second].map((it) => 'stream_options' in (it ?? {}))).toEqual([true, false])
  })

  test('max_tokens becomes max_completion_tokens', async () => {
    const [first, second] = await sentAfter(
      [
        refusal(
          "Unsupported parameter: 'max_tokens' is not supported with this model. Use 'max_completion_tokens' instead.",
        ),
      ],
      { limit: 900 },
    )
    expect([first?.max_tokens, second?.max_tokens, second?.max_completion_tokens]).toEqual([900, undefined, 900])
  })

  test('a tool that must be called by name is demanded, and then only offered', async () => {
    const words = refusal('tool_choice is not supported in this form', 422)
    const sent = await sentAfter([words, words], {}, { name: 'layout' })
    expect(sent.map((it) => it.tool_choice)).toEqual([
      { type: 'function', function: { name: 'layout' } },
      'required',
      undefined,
    ])
  })

  test('strict is left out, named in a list of details too', async () => {
    const details = whole(
      {
        detail: [
          {
            type: 'extra_forbidden',
            loc: ['body', 'tools', 0, 'function', 'strict'],
            msg: 'Extra inputs are not permitted',
          },
        ],
      },
      422,
    )
    const [, second] = await sentAfter([details])
    expect(second?.tools).toMatchObject([{ function: { name: 'layout' } }, { function: { name: 'hole_depth' } }])
    expect(JSON.stringify(second)).not.toContain('"strict"')
  })

  test('additionalProperties is left out, and strictness with it', async () => {
    const [, second] = await sentAfter([
      refusal('Invalid JSON payload received. Unknown name "additionalProperties" at tools[0].function.parameters'),
    ])
    expect(JSON.stringify(second)).not.toMatch(/additionalProperties|strict/)
  })
})

describe('a feature that is refused', () => {
  test('streaming: the answer is taken whole', async () => {
    const asked = serve(
      refusal('Your organization must be verified to stream this model.'),
      answering({ content: 'Hi' }),
    )
    expect((await endpoint().say({ messages: question })).text).toBe('Hi')
    expect(asked.map(({ body }) => body.stream)).toEqual([true, undefined])
  })

  test.each([
    ['does not support tools', 400],
    ['"auto" tool choice requires --enable-auto-tool-choice and --tool-call-parser to be set', 400],
    ['tools param requires --jinja flag', 500],
    ['No endpoints found that support tool use.', 404],
  ])('tools, as “%s” with %i: they are told in words, and calls in words are understood', async (words, status) => {
    const no = raw(JSON.stringify({ error: { message: words } }), status, { 'x-should-retry': 'false' })
    const asked = serve(
      no,
      streamed(spokenEvents('<tool_call>{"name":"layout","arguments":{"length":"96 ft"}}</tool_call>')),
    )
    const spoken = await endpoint().say({ messages: talk, tools })
    expect(spoken.calls).toMatchObject([{ id: 'call00002', name: 'layout', args: { length: '96 ft' }, state: 'ok' }])
    const { messages, ...others } = sentIn(asked, 1)
    expect(Object.keys(others)).toEqual(['model', 'stream'])
    expect(messages.map((it) => it.role)).toEqual(['system', 'user', 'assistant', 'user'])
    expect(messages[0]?.content).toMatch(/^Be brief\.\n\n[\s\S]*"name":"hole_depth"[\s\S]*<tool_call>/)
    expect(messages[2]?.content).toBe('<tool_call>{"name":"layout","arguments":{"length":"96 ft"}}</tool_call>')
    expect(messages[3]?.content).toBe('<tool_response>13 posts</tool_response>')
  })

  test('the system role becomes the developer role where that is named', async () => {
    const [, second] = await sentAfter([refusal("'system' role is not supported, use 'developer'")])
    expect(second?.messages[0]).toEqual({ role: 'developer', content: 'Be brief.' })
  })

  test('the system role becomes the front of the question elsewhere', async () => {
    const no = raw('{"error":{"message":"System role not supported"}}', 500, { 'x-should-retry': 'false' })
    const [, second] = await sentAfter([no])
    expect(second?.messages[0]).toEqual({ role: 'user', content: 'Be brief.\n\nHow many posts for 96 ft?' })
  })

  test('results carry the name of their tool where that is asked for', async () => {
    const [first, second] = await sentAfter([
      refusal('GenerateContentRequest.contents[3].parts[0].function_response.name: Name cannot be empty.'),
    ])
    expect([first?.messages[3]?.name, second?.messages[3]?.name]).toEqual([undefined, 'layout'])
  })

  test('two turns of one role in a row become one where roles must alternate', async () => {
    const asked = serve(refusal('Conversation roles must alternate user/assistant/user/assistant/...'), ok)
    await endpoint().say({ messages: [...question, { role: 'user', content: 'And 48 ft?' }] })
    expect(sentIn(asked, 1).messages).toEqual([{ role: 'user', content: 'How many posts for 96 ft?\n\nAnd 48 ft?' }])
  })

  test('a refusal inside a stream that has said nothing teaches the same', async () => {
    const asked = serve(streamed(eventsFor([{ error: { code: 400, message: 'stream_options is not supported' } }])), ok)
    expect((await endpoint({ usage: true }).say({ messages: question })).text).toBe('Hi')
    expect(asked).toHaveLength(2)
  })
})

describe('a refusal that names nothing', () => {
  test('is met once with the barest request', async () => {
    const asked = serve(raw('Bad Request', 400))
    const spoken = await endpoint({ usage: true, limit: 900 }).say({ messages: question, tools, choice: 'required' })
    expect(spoken).toMatchObject({
      error: 'rejected',
      message: 'The server did not take the question.',
      reason: 'It finds fault with how the question was put.',
    })
    expect(asked.map(({ body }) => Object.keys(body))).toEqual([
      ['model', 'tools', 'messages', 'stream', 'tool_choice', 'max_tokens', 'stream_options'],
      ['model', 'tools', 'messages', 'stream'],
    ])
  })

  test.each([
    ['This model’s maximum context length is exceeded', 'too-long'],
    ['The model m does not exist', 'unknown-model'],
    ['The response was filtered by the content management policy', 'filtered'],
  ])('is final where the reason lies elsewhere: %s', async (words, error) => {
    const asked = serve(refusal(words))
    expect(await endpoint({ usage: true }).say({ messages: question, tools })).toMatchObject({ error })
    expect(asked).toHaveLength(1)
  })

  test('is not remembered where it led to no answer', async () => {
    const asked = serve(raw('Bad Request', 400), raw('Bad Request', 400), ok)
    const model = endpoint({ usage: true })
    await model.say({ messages: question })
    await model.say({ messages: question })
    expect(asked.map(({ body }) => 'stream_options' in body)).toEqual([true, false, true])
  })

  test('ends, however often the server refuses', async () => {
    const every = refusal(
      'stream, stream_options, tool_choice, strict, max_tokens, system role, tools, content null: not supported',
    )
    const asked = serve(every)
    expect(
      await endpoint({ usage: true, limit: 900 }).say({ messages: talk, tools, choice: 'required' }),
    ).toMatchObject({ error: 'rejected' })
    expect(asked.length).toBeLessThanOrEqual(8)
  })
})
