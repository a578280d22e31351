// What one run of the program learnt of a server, the next one knows.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { learntIn } from '../../../../src/readers/model/learnt.ts'
import { freshProfile } from '../../../../src/readers/model/profile.ts'
import { answering, endpoint, question, serve, server, tools, whole } from './fake-server.ts'

beforeAll(() => server.listen({ onUnhandledRequest: 'error' }))
afterEach(() => server.resetHandlers())
afterAll(() => server.close())

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'learnt-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const ask = (learnt = learntIn(folder)) => endpoint({ learnt }).say({ messages: question, tools, choice: 'required' })
const refusal = whole({ error: { message: 'tool_choice is not supported' } }, 400)
const ok = answering({ content: 'Hi' })

test('a refusal is met once, and not again by the next run', async () => {
  const asked = serve(refusal, ok)
  expect(await ask()).toMatchObject({ text: 'Hi', sent: 2 })
  expect(await ask()).toMatchObject({ text: 'Hi', sent: 1 })
  expect(asked.map(({ body }) => 'tool_choice' in body)).toEqual([true, false, false])
  expect(readFileSync(join(folder, 'endpoints.json'), 'utf8')).not.toContain('sk-')
})

test('after a week it is tried anew, and so is what a clock that was wrong says is of days to come', async () => {
  serve(refusal, ok)
  await ask(learntIn(folder, () => 0))
  expect(learntIn(folder, () => 6 * 86_400_000).recall('m at http://model.test/v1')).toMatchObject({ choice: 'unsaid' })
  for (const day of [8, -8])
    expect(learntIn(folder, () => day * 86_400_000).recall('m at http://model.test/v1')).toBeUndefined()
})

test('a server that takes everything leaves no file, and a broken file is no fault', async () => {
  serve(ok)
  await ask()
  expect(() => readFileSync(join(folder, 'endpoints.json'))).toThrow()
  writeFileSync(join(folder, 'endpoints.json'), '{"m at')
  expect(await ask()).toMatchObject({ text: 'Hi' })
})

test('a folder that cannot be written is no fault', () => {
  writeFileSync(join(folder, 'taken'), '')
  expect(() => learntIn(join(folder, 'taken')).keep('m', { ...freshProfile, streams: false })).not.toThrow()
})
