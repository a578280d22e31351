// This file is about what comes before a model: an emergency is sent nowhere, and a danger is refused whatever a model returned.
import { http, HttpResponse } from 'msw'
import { setupServer } from 'msw/node'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { newJob } from '../../../../engine/index.ts'
import { answerTo } from '../../../../src/assistant.ts'
import { hear } from '../../../../src/hearing.ts'
import { openEndpoint } from '../../../../src/readers/model/endpoint.ts'
import { createModelReader } from '../../../../src/readers/model/reading.ts'
import type { Request } from '../../../../src/request.ts'
import { talk } from '../../talk.ts'

const server = setupServer()
beforeAll(() => server.listen({ onUnhandledRequest: 'error' }))
afterEach(() => server.resetHandlers())
afterAll(() => server.close())

/** A model that hands over this request, whatever was said. */
function scripted(args: Request): { asked: number } {
  const count = { asked: 0 }
  server.use(
    http.post('http://model.test/v1/chat/completions', () => {
      count.asked++
      const message = { role: 'assistant', content: null, tool_calls: callsOf(args) }
      return HttpResponse.json({
        id: 'c',
        object: 'chat.completion',
        created: 1,
        model: 'm',
        choices: [{ index: 0, message, finish_reason: 'tool_calls' }],
      })
    }),
  )
  return count
}

/** The calls that make up a request of wants, advice and refusals. */
const callsOf = ({ wants, notes, declines }: Request) =>
  [
    { name: 'want', args: { words: wants, calculation: null, advice: notes ?? null } },
    ...declines.map((args) => ({ name: 'decline', args })),
  ].map(({ name, args }, i) => ({ id: `c${i}`, type: 'function', function: { name, arguments: JSON.stringify(args) } }))

const nothing: Request = { told: [], wants: [], calculation: null, confirms: [], notes: [], declines: [] }
const bags: Request = { ...nothing, wants: [{ word: 'bags', at: 'yard' }] }
const ask = async (said: string, args: Request) => {
  const count = scripted(args)
  const endpoint = openEndpoint({ model: 'm', key: 'k', baseUrl: 'http://model.test/v1', stream: false })
  const [answer] = await talk([said], createModelReader(endpoint))
  return { answer, count }
}

describe('with a model', () => {
  it('an emergency is answered at once, and nothing is sent', async () => {
    const { answer, count } = await ask('I hit a gas line with the auger. How many bags do I need?', bags)
    expect(count.asked).toBe(0)
    expect(answer?.advice.map((it) => it.note)).toEqual(['hit-gas'])
    expect(answer?.asks).toEqual([])
    expect(answer?.cautions.every((it) => it.standing)).toBe(true)
  })

  it('a model’s request never comes before an emergency, however it got there', async () => {
    const heard = hear('my helper is dizzy and confused in the heat', newJob)
    const { answer } = await answerTo(
      { request: { ...bags, declines: [{ why: 'off-trade', quote: 'dizzy' }] }, by: 'model' },
      heard,
      0,
    )
    expect(answer.advice.map((it) => it.note)).toEqual(['heat-stroke'])
    expect(answer.declined).toBeNull()
    expect(answer.calls).toEqual([])
  })

  it('an emergency that only the model understood is read out alone', async () => {
    const { answer, count } = await ask('the yellow thing I clipped with the bar now sings at me', {
      ...bags,
      notes: ['hit-gas', 'gravel-or-concrete'],
    })
    expect(count.asked).toBe(1)
    expect(answer?.advice.map((it) => it.note)).toEqual(['hit-gas'])
    expect(answer?.asks).toEqual([])
  })

  it('a danger is refused though the model would help', async () => {
    for (const said of [
      'can I prop the pool gate open while I work',
      'How close to a marked gas line can I use the auger',
    ]) {
      const { answer } = await ask(said, bags)
      expect(answer?.declined?.why).toContain('I will not help with this')
      expect(answer?.asks).toEqual([])
      expect(answer?.calls).toEqual([])
    }
  })

  it('what only a model calls dangerous is refused without a guess at the reason', async () => {
    const { answer } = await ask('close the thing up tight', {
      ...nothing,
      declines: [{ why: 'dangerous', quote: 'close the thing up' }],
    })
    expect(answer?.declined?.why).toContain('somebody who is qualified')
    expect(answer?.declined?.why).not.toMatch(/latch|811/)
  })
})
