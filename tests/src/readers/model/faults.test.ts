// With anything wrong between us and the model, the person is told what and which setting mends it, and the answer is there all the same.
import { HttpResponse } from 'msw'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { newJob } from '../../../../engine/index.ts'
import type { Answer } from '../../../../src/answer.ts'
import { createAssistant } from '../../../../src/assistant.ts'
import { hear } from '../../../../src/hearing.ts'
import { audit } from '../../../../src/audit.ts'
import { exportConversation } from '../../../../src/export/export.ts'
import { readOffline } from '../../../../src/readers/offline/offline.ts'
import { callsOf } from '../../../bench/own-reading.ts'
import { openEndpoint } from '../../../../src/readers/model/endpoint.ts'
import { createModelReader } from '../../../../src/readers/model/reading.ts'
import { createWriter } from '../../../../src/readers/model/writing.ts'
import { headlines, talk } from '../../talk.ts'
import { address, answering, bytesOf, key, raw, serve, server, spokenEvents, streamed, whole } from './fake-server.ts'

beforeAll(() => server.listen({ onUnhandledRequest: 'error' }))
afterEach(() => server.resetHandlers())
afterAll(() => server.close())

const bags = 'Four posts in holes 12 in wide and 24 in deep, 80 lb bags. How many bags?'

async function told(answer: () => Response, settings: { key?: string; baseUrl?: string } = { key }) {
  serve(answer)
  const waits = answer === never ? { idleMs: 50, timeoutMs: 100 } : {}
  const endpoint = openEndpoint({ model: 'm', baseUrl: address, ...waits, ...settings })
  const [turn] = await talk([bags], createModelReader(endpoint), createWriter(endpoint))
  return turn
}

const never = (): Response => new HttpResponse(new ReadableStream({ start() {} }))
const quiet = (): Response =>
  new HttpResponse(
    new ReadableStream({
      start: (it) =>
        it.enqueue(bytesOf('data: {"choices":[{"index":0,"delta":{"content":"Buy {{r2.bags}} tog"}}]}\n\n')),
    }),
    { headers: { 'content-type': 'text/event-stream' } },
  )
/** What is read of the question, as it should be. */
const handedOver = callsOf(readOffline(hear(bags, newJob))).map(({ name, args }, i) => ({
  id: `c${i}`,
  type: 'function',
  function: { name, arguments: JSON.stringify(args) },
}))
const error = (message: string, status: number, code = '') =>
  raw(JSON.stringify({ error: { message, code } }), status, { 'retry-after-ms': '1' })

describe('the person is told, and the offline reader answers', () => {
  test.each<[string, () => Response, RegExp]>([
    ['a wrong key', error('bad key', 401), /did not accept the key\. Look at OPENAI_API_KEY/],
    [
      'a wrong model',
      error('The model `m` does not exist', 404),
      /does not know the model “m”\. Look at PLUMBPOST_MODEL/,
    ],
    ['a wrong path', whole({ detail: 'Not Found' }, 404), /nothing at http:\/\/model\.test\/v1 .*OPENAI_BASE_URL/],
    [
      'a page of another program',
      raw('<html></html>', 200, { 'content-type': 'text/html' }),
      /OPENAI_BASE_URL: it usually ends in \/v1/,
    ],
    [
      'too many questions, with a time to wait',
      raw('{}', 429, { 'retry-after': '90' }),
      /wants to be left alone for a minute/,
    ],
    ['too many questions, for an hour', raw('{}', 429, { 'retry-after': '7200' }), /left alone for an hour or more/],
    ['no money left', error('You exceeded your current quota', 429, 'insufficient_quota'), /used up what it may spend/],
    ['a filter', error('x', 400, 'content_filter'), /A filter at http:\/\/model\.test\/v1 stopped this message/],
    ['a filter at the end of an answer', answering({ content: '' }, 'content_filter'), /A filter at/],
    ['a refusal', answering({ content: null, refusal: 'I cannot help.' }), /“m” would not read this message/],
    [
      'a question that is too long',
      error('maximum context length is 2048', 400),
      /cannot hold a question of this length/,
    ],
    ['a server that fails', raw('{}', 500, { 'retry-after-ms': '1' }), /failed while answering; that lies with it/],
    ['a stream that goes quiet', never, /did not answer in time|went quiet/],
    [
      'a stream that breaks off',
      streamed('data: {"choices":[{"index":0,"delta":{"content":"Hm"}}]}\n\n'),
      /broke off in the middle/,
    ],
    ['an answer with nothing in it', answering({ content: '' }), /did not hand over what I could use.*PLUMBPOST_MODEL/],
    ['an answer in words', streamed(spokenEvents('You need ', '99 bags.')), /did not hand over what I could use/],
  ])('%s', async (_, answer, sentence) => {
    const turn = await told(answer)
    expect(turn?.heard.notice).toMatch(sentence)
    expect(turn?.heard.notice).toMatch(/So I read this without a model\.$/)
    expect(turn?.reply.startsWith(turn.heard.notice ?? 'none')).toBe(true)
    expect(turn?.front).toBe('offline')
    expect(headlines(turn).bags).toBe('10 bags')
    expect(turn?.reply).not.toContain(key)
    expect(turn?.reply).not.toContain('99')
  })

  test('a key that is wanted and not set', async () => {
    const turn = await told(error('no key', 401), {})
    expect(turn?.heard.notice).toContain('wants a key, and none is set. Put it in OPENAI_API_KEY.')
  })

  test('an address where nobody is', async () => {
    server.use()
    const turn = await told(answering({ content: '' }), { baseUrl: 'not an address' })
    expect(turn?.heard.notice).toMatch(/^Nothing answers at .* Look at OPENAI_BASE_URL/)
    expect(headlines(turn).bags).toBe('10 bags')
  })

  // The card is there before the sentences are asked for: nothing of it may be lost, and the person is told why no more comes.
  test.each<[string, () => Response, RegExp]>([
    ['dies', () => HttpResponse.error(), /^Nothing answers at/],
    ['never answers', never, /did not answer in time|went quiet/],
    ['goes quiet in the middle of a sentence', quiet, /began to answer and went quiet/],
    [
      'breaks off in the middle of a sentence',
      streamed('data: {"choices":[{"index":0,"delta":{"content":"Buy {{r2.bags}} tog"}}]}\n\n'),
      /broke off in the middle/,
    ],
    ['fails', error('no', 500), /failed while answering/],
    ['has enough of us', raw('{}', 429, { 'retry-after': '90' }), /wants to be left alone for a minute/],
    ['takes the key no more', error('bad key', 401), /did not accept the key\. Look at OPENAI_API_KEY/],
  ])('a server that reads and then %s while it writes', async (_, answer, sentence) => {
    serve(answering({ content: null, tool_calls: handedOver }, 'tool_calls'), answer)
    const waits = answer === never || answer === quiet ? { idleMs: 50, timeoutMs: 100 } : {}
    const endpoint = openEndpoint({ model: 'm', baseUrl: address, key, ...waits })
    const cards: Answer[] = []
    const assistant = createAssistant(createModelReader(endpoint), createWriter(endpoint))
    const { answer: turn, job } = await assistant.turn({ said: bags, before: [] }, ({ event, data }) => {
      if (event === 'card') cards.push(data as Answer)
    })
    expect(turn.front).toBe('model')
    expect(turn.unwritten).toMatch(sentence)
    expect(turn.unwritten).toMatch(/the figures do not come from it, and are whole\.$/)
    expect(turn.prose).toBe('')
    // Word for word what was shown, with that one paragraph more.
    expect(turn.reply.split('\n\n').filter((it) => it !== turn.unwritten)).toEqual(cards[0]?.reply.split('\n\n'))
    expect(turn.reply.split('\n\n')).toContain(turn.unwritten)
    expect(headlines(turn).bags).toBe('10 bags')
    expect(turn.cautions).toEqual(cards[0]?.cautions)
    expect(turn.reply).not.toContain(key)
    const kept = exportConversation([{ n: 0, said: bags, answer: turn, job }], { id: 'a', title: 'bags', created: '' })
    expect(await audit(JSON.parse(JSON.stringify(kept)))).toEqual([])
  })

  test.each([501, 503, 400])('a server’s own words are not shown, whatever they say: status %i', async (status) => {
    for (const words of ['the weights are still loading', 'You need 99 bags', 'the marks are old, dig on']) {
      const turn = await told(error(words, status))
      expect(turn?.heard.notice).toMatch(/ It (?:cannot|is|finds) .* (?:Ask again|Look at)/)
      expect(JSON.stringify(turn)).not.toContain(words)
    }
  })
})
