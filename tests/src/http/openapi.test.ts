// The description of the HTTP interface, held by a validator of OpenAPI and by AJV (JSON Schema 2020-12) against what the server really answers.
import { Validator } from '@seriousme/openapi-schema-validator'
import { Ajv2020 } from 'ajv/dist/2020.js'
import addFormats from 'ajv-formats'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { openApi, operations } from '../../../src/http/openapi.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { calendar } from '../export/turns.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'

interface Document {
  readonly paths: Readonly<
    Record<
      string,
      Readonly<
        Record<
          string,
          {
            readonly operationId: string
            readonly requestBody?: { readonly content: Readonly<Record<string, object>> }
            readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, object>> }>>
          }
        >
      >
    >
  >
}

/** A message that is answered once it is halted. */
const waiting = 'hello, wait'
let store: Store
let app: ReturnType<typeof createApp>
beforeAll(async () => {
  store = await openStore({ memory: true })
  const reading = createAssistant(offlineReader)
  const assistant: typeof reading = {
    async turn(asked, watch, signal) {
      if (asked.said === waiting) await new Promise((resolve) => signal?.addEventListener('abort', resolve))
      return reading.turn(asked, watch, signal)
    },
  }
  app = createApp({ assistant, store, version: '1.2.3', front: 'offline', renderReply: (it) => it, host: '127.0.0.1' })
})
afterAll(() => store.close())

// Nothing may be answered that is not described: fields are closed here, and open to readers.
const closed = openApi(true) as unknown as Document
// `discriminator` and the like are OpenAPI's words, not JSON Schema's.
const ajv = new Ajv2020({ strict: false, allErrors: true })
addFormats.default(ajv)
ajv.addSchema(closed, 'openapi')
const seen = new Set<string>()

/** Asks, holds what comes back against the description, and gives it. */
async function ask(method: string, path: string, at: string, body?: unknown, headers: Record<string, string> = {}) {
  const response = await app.request(at, {
    method: method.toUpperCase(),
    headers: { ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...headers },
    ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
  })
  const described = closed.paths[path]?.[method]?.responses[String(response.status)]
  expect(described, `${method} ${path} answers ${response.status}, which is not described`).toBeDefined()
  seen.add(`${method} ${path} ${response.status}`)
  const type = response.headers.get('content-type')?.replace(/;.*/, '')
  const text = await response.text()
  const kinds = Object.keys(described?.content ?? {})
  if (kinds.length === 0) expect(text).toBe('')
  else expect(kinds).toContain(type)
  const schema = (described?.content?.[type ?? ''] as { schema?: object } | undefined)?.schema
  if (schema) {
    const pointer = [path, method, 'responses', String(response.status), 'content', type as string, 'schema']
    const ref = `openapi#/paths/${pointer.map((it) => encodeURIComponent(it.replace(/~/g, '~0').replace(/\//g, '~1'))).join('/')}`
    const validate = ajv.getSchema(ref)
    expect(validate?.(JSON.parse(text)), `${method} ${path}: ${ajv.errorsText(validate?.errors)}`).toBe(true)
  }
  return { status: response.status, text, json: () => JSON.parse(text) as Record<string, unknown> }
}

describe('the description', () => {
  it('is served, is OpenAPI 3.1, and names every operation differently', async () => {
    const served = JSON.parse((await ask('get', '/api/openapi.json', '/api/openapi.json')).text) as Document
    expect(await new Validator().validate(structuredClone(served) as unknown as Record<string, unknown>)).toMatchObject(
      { valid: true },
    )
    expect(served).toEqual(JSON.parse(JSON.stringify(openApi())))
    const names = Object.values(served.paths).flatMap((it) => Object.values(it).map(({ operationId }) => operationId))
    expect(new Set(names).size).toBe(names.length)
  })

  it('has every route of the server, and no other', () => {
    const routes = app.routes
      .filter((it) => it.method !== 'ALL')
      .map(({ method, path }) => `${method.toLowerCase()} ${path.replace(/:(\w+)(\{[^}]*\})?/g, '{$1}')}`)
    const described = Object.entries(operations).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method} ${path.replace(/export\.(?!schema)\w+$/, '{export}')}`),
    )
    expect(new Set(routes)).toEqual(new Set(described))
  })
})

describe('the live server', () => {
  it('answers every operation as it is described', async () => {
    const inTalk = '/api/conversations/{id}'
    const { id } = (await ask('post', '/api/conversations', '/api/conversations', {})).json() as { id: string }
    const at = `/api/conversations/${id}`
    const said = { text: 'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps of at most 2 1/2 in?' }
    await ask('post', `${inTalk}/turns`, `${at}/turns`, said)
    await ask(
      'post',
      `${inTalk}/turns`,
      `${at}/turns`,
      { text: 'and with 2 in pickets?' },
      { accept: 'text/event-stream' },
    )
    await ask('post', `${inTalk}/turns/{n}/again`, `${at}/turns/1/again`, {
      text: 'How deep do I set posts for a 4 ft fence?',
    })
    await ask('post', `${inTalk}/turns/{n}/resume`, `${at}/turns/1/resume`, { branch: 0 })
    const key = { 'idempotency-key': 'k' }
    const halted = ask('post', `${inTalk}/turns`, `${at}/turns`, { text: waiting }, key)
    // It is in the making once it has been read from the wire.
    await expect
      .poll(async () => (await ask('post', `${inTalk}/turns/halt`, `${at}/turns/halt`, {}, key)).status)
      .toBe(200)
    await halted
    await ask('post', `${inTalk}/job/change`, `${at}/job/change`, { word: 'picketWidth', value: '5 1/2 in' })
    await ask('post', `${inTalk}/job/undo`, `${at}/job/undo`, {})
    await ask('post', `${inTalk}/job/work`, `${at}/job/work`, {
      calculation: 'post-depth',
      inputs: { postAbove: '4 ft' },
    })
    await ask('post', `${inTalk}/job/units`, `${at}/job/units`, { system: 'metric' })
    await ask('post', `${inTalk}/turns`, `${at}/turns`, { text: calendar })
    await ask('get', `${inTalk}/job`, `${at}/job`)
    await ask('get', `${inTalk}/job/open`, `${at}/job/open`)
    for (const ending of ['json', 'md', 'pdf', 'csv', 'ics', 'svg'])
      await ask('get', `${inTalk}/export.${ending}`, `${at}/export.${ending}`)
    const { link } = (await ask('post', `${inTalk}/share`, `${at}/share`, {})).json() as { link: string }
    await ask('get', '/shared/{link}', link)
    await ask('delete', `${inTalk}/share`, `${at}/share`)
    await ask('get', '/shared/{link}', link)
    await ask('get', '/api/conversations', '/api/conversations')
    await ask('get', inTalk, at)
    await ask('get', '/api/calculations', '/api/calculations')
    await ask('post', '/api/calculations/{name}', '/api/calculations/post-depth', { inputs: { postAbove: '4 ft' } })
    await ask(
      'post',
      '/mcp',
      '/mcp',
      { jsonrpc: '2.0', id: 1, method: 'ping' },
      { accept: 'application/json, text/event-stream' },
    )
    await ask(
      'post',
      '/mcp',
      '/mcp',
      { jsonrpc: '2.0', method: 'notifications/initialized' },
      { accept: 'application/json, text/event-stream' },
    )
    for (const path of ['/healthz', '/readyz', '/metrics', '/api/export.schema.json']) await ask('get', path, path)
    await ask('delete', '/api/owner', '/api/owner')

    // What is refused.
    await ask('post', '/api/calculations/{name}', '/api/calculations/post-depth', { inputs: {} })
    await ask('post', '/api/calculations/{name}', '/api/calculations/post-depth', { inputs: [] })
    await ask('post', '/api/calculations/{name}', '/api/calculations/none', {})
    await ask('post', '/api/calculations/{name}', '/api/calculations/post-depth', '{')
    await ask('post', '/mcp', '/mcp', '{', { accept: 'application/json, text/event-stream' })
    await ask('post', `${inTalk}/turns`, `${at}/turns`, {})
    await ask('post', `${inTalk}/turns`, `${at}/turns`, { text: '' })
    await ask('post', `${inTalk}/job/change`, `${at}/job/change`, { word: 'none', value: '1 in' })
    await ask('post', `${inTalk}/job/units`, `${at}/job/units`, { system: 'none' })
    await ask('post', `${inTalk}/turns/{n}/resume`, `${at}/turns/0/resume`, { branch: 9 })

    await ask('delete', inTalk, at)
    for (const [path, methods] of Object.entries(operations))
      for (const [method, { takes }] of Object.entries(methods))
        if (path.startsWith(inTalk)) {
          const gone = path.replace('{id}', id).replace('{n}', '0')
          const body = {
            Said: { text: 'hello' },
            Branch: { branch: 0 },
            Change: { word: 'picketWidth', value: '3 in' },
            WorkInto: { calculation: 'post-depth' },
            Units: { system: 'metric' },
          }[takes as string]
          expect([
            method,
            path,
            (await ask(method, path, gone, method === 'post' ? (body ?? {}) : undefined)).status,
          ]).toEqual([method, path, 404])
        }

    const promised = Object.entries(closed.paths).flatMap(([path, methods]) =>
      Object.entries(methods).flatMap(([method, { responses }]) =>
        Object.keys(responses)
          .filter((status) => status.startsWith('2'))
          .map((status) => `${method} ${path} ${status}`),
      ),
    )
    // The last to be asked for is the description itself, in the test above.
    expect(promised.filter((it) => !seen.has(it))).toEqual([])
  }, 60_000)

  it('an exported conversation fits the schema that is published', async () => {
    const { id } = await store.create()
    await app.request(`/api/conversations/${id}/turns`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: '{"text":"How deep do I set posts for a 4 ft fence?"}',
    })
    const schema = (await (await app.request('/api/export.schema.json')).json()) as object
    const validate = new Ajv2020({ strict: false }).compile(schema)
    const exported = (await (await app.request(`/api/conversations/${id}/export.json`)).json()) as {
      turns: { answer: object }[]
    }
    expect(validate(exported), JSON.stringify(validate.errors)).toBe(true)
    expect(validate({ ...exported, turns: [{ ...exported.turns[0], answer: {} }] })).toBe(false)
  })
})
