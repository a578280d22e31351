// Conversations whose model was played by hand, as a good one and as a weak one, are held again: its answers are given anew, and all comes out as recorded.
import { readdirSync, readFileSync } from 'node:fs'
import { http, HttpResponse } from 'msw'
import { setupServer } from 'msw/node'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { exportSchema } from '../src/export/export.ts'
import { openEndpoint } from '../src/readers/model/endpoint.ts'
import { createModelReader } from '../src/readers/model/reading.ts'
import { createWriter } from '../src/readers/model/writing.ts'
import { talk } from './src/talk.ts'

const message = z.looseObject({ role: z.literal('assistant') })
const recordingSchema = exportSchema.extend({ answeredByHand: z.array(message).optional() })
const folder = new URL('../transcripts-demo/', import.meta.url)
const recordings = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => ({
    name: name.replace('.json', ''),
    ...recordingSchema.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))),
  }))
  .filter((it) => it.answeredByHand)

const address = 'http://127.0.0.1:4699/v1'
const server = setupServer()
beforeAll(() => server.listen({ onUnhandledRequest: 'error' }))
afterAll(() => server.close())

describe('conversations answered by hand', () => {
  it('are marked as such, and there are twenty or more', () => {
    expect(recordings.length).toBeGreaterThanOrEqual(20)
    for (const { name, conversation } of recordings) {
      expect(name).toMatch(/^hand-/)
      expect(conversation.title).toContain('answered by hand')
    }
  })

  it.each(recordings)('$name comes out as recorded, with as many calls of the model', async (recording) => {
    const { name, turns, answeredByHand: answers = [] } = recording
    let asked = 0
    server.resetHandlers(
      http.post(`${address}/chat/completions`, () => {
        const said = answers[asked++]
        return HttpResponse.json({ choices: [{ index: 0, message: said as object, finish_reason: 'stop' }] })
      }),
    )
    const endpoint = openEndpoint({ model: name, baseUrl: address })
    const answered = await talk(
      turns.map((it) => it.said),
      createModelReader(endpoint),
      createWriter(endpoint),
    )
    expect(asked).toBe(answers.length)
    expect(answered.map((it) => it.reply)).toEqual(turns.map((it) => it.answer.reply))
    expect(answered.map((it) => it.figures)).toEqual(turns.map((it) => it.answer.figures))
  })
})
