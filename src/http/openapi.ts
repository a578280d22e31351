// This file is about the description of the HTTP interface in OpenAPI, made from the schemas that the program itself goes by.
import type { Hono } from 'hono'
import { z } from 'zod'
import { version } from '../../engine/index.ts'
import { exportSchema } from '../export/export.ts'
import { formatsOfExport } from './exports.ts'
import { jsonSchemas, type SchemaName } from './schemas.ts'

/** The description, and the schema of an exported conversation by itself, for whoever keeps such files. */
export function addDescription(app: Hono): void {
  app.get('/api/openapi.json', (c) => c.json(openApi()))
  app.get('/api/export.schema.json', (c) => {
    c.header('Content-Type', 'application/schema+json')
    return c.body(
      JSON.stringify({ title: 'An exported conversation', ...z.toJSONSchema(exportSchema, { io: 'input' }) }),
    )
  })
}

interface Operation {
  readonly says: string
  readonly takes?: SchemaName
  /** By status: a schema of JSON, or a media type of its own; null is no body. */
  readonly gives: Readonly<Record<number, SchemaName | { readonly type: string } | null>>
  /** Also as a stream of events, where that is asked for. */
  readonly streams?: true
}

const talk = { 404: 'Fault' } as const
const answers = { 200: 'ShownAnswer', 400: 'Fault', 404: 'Fault', 409: 'Fault', 422: 'Fault' } as const
const html = { type: 'text/html' }

/** Every route, by its path in the document. */
export const operations: Readonly<Record<string, Readonly<Record<string, Operation>>>> = {
  '/healthz': { get: { says: 'Whether the server is up.', gives: { 200: 'Health' } } },
  '/readyz': { get: { says: 'Whether its database is, too.', gives: { 200: 'Ready', 503: 'Fault' } } },
  '/metrics': { get: { says: 'Counts, as scrapers read them.', gives: { 200: { type: 'text/plain' } } } },
  '/api/openapi.json': { get: { says: 'This description.', gives: { 200: { type: 'application/json' } } } },
  '/api/export.schema.json': {
    get: { says: 'The schema of an exported conversation.', gives: { 200: { type: 'application/schema+json' } } },
  },
  '/api/conversations': {
    get: { says: 'The conversations of whoever asks, newest first.', gives: { 200: 'Conversations' } },
    post: { says: 'Begins a conversation.', takes: 'Nothing', gives: { 201: 'Begun', 400: 'Fault', 429: 'Fault' } },
  },
  '/api/conversations/{id}': {
    get: { says: 'Every turn: what was said, the answer, the job after it.', gives: { 200: 'Conversation', ...talk } },
    delete: { says: 'Takes a conversation away for good.', gives: { 204: null, ...talk } },
  },
  '/api/conversations/{id}/turns': {
    post: { says: 'Says something, and is answered.', takes: 'Said', gives: answers, streams: true },
  },
  '/api/conversations/{id}/turns/{n}/again': {
    post: { says: 'Asks turn n anew; what it replaces is kept aside.', takes: 'Said', gives: answers, streams: true },
  },
  '/api/conversations/{id}/turns/{n}/resume': {
    post: {
      says: 'Takes up again what was set aside at turn n.',
      takes: 'Branch',
      gives: { 200: 'Resumed', 400: 'Fault', 404: 'Fault', 409: 'Fault', 422: 'Fault' },
    },
  },
  '/api/conversations/{id}/turns/halt': {
    post: { says: 'Halts the turn in the making.', gives: answers },
  },
  '/api/conversations/{id}/job': { get: { says: 'The job sheet.', gives: { 200: 'JobSheet', ...talk } } },
  '/api/conversations/{id}/job/open': { get: { says: 'What is still open.', gives: { 200: 'JobOpen', ...talk } } },
  '/api/conversations/{id}/job/change': {
    post: { says: 'Changes one word of the job.', takes: 'Change', gives: answers },
  },
  '/api/conversations/{id}/job/undo': {
    post: { says: 'Takes the last change back.', takes: 'Nothing', gives: answers },
  },
  '/api/conversations/{id}/job/work': {
    post: { says: 'Works one calculation into the talk.', takes: 'WorkInto', gives: answers },
  },
  '/api/conversations/{id}/job/units': {
    post: { says: 'Shows everything in other units.', takes: 'Units', gives: answers },
  },
  ...Object.fromEntries(
    Object.entries(formatsOfExport).map(([ending, type]) => [
      `/api/conversations/{id}/export.${ending}`,
      {
        get: {
          says: `The talk to take along, as ${ending}.`,
          gives: { 200: ending === 'json' ? 'Export' : { type }, 404: 'Fault', 409: 'Fault' },
        } satisfies Operation,
      },
    ]),
  ),
  '/api/conversations/{id}/share': {
    post: { says: 'Makes a link by which the talk can be read.', gives: { 201: 'Link', ...talk } },
    delete: { says: 'Withdraws the link.', gives: { 204: null, ...talk } },
  },
  '/shared/{link}': { get: { says: 'A talk that is shared, as a page.', gives: { 200: html, ...talk } } },
  '/api/owner': {
    delete: {
      says: 'Leaves: the token that was shown is good no more, and links to its talks are withdrawn.',
      gives: { 204: null },
    },
  },
  '/api/calculations': { get: { says: 'What can be run directly.', gives: { 200: 'Calculations' } } },
  '/api/calculations/{name}': {
    post: {
      says: 'Runs one calculation. Where it could not be worked, the problems of the call say why.',
      takes: 'Inputs',
      gives: { 200: 'DirectCall', 400: 'Fault', 404: 'Fault', 422: 'Unworked' as SchemaName },
    },
  },
  '/mcp': {
    post: {
      says: 'The Model Context Protocol: every calculation as a tool.',
      takes: 'Message',
      gives: { 200: 'Message', 202: null, 400: 'Message' },
    },
  },
}

/** The whole document. With `closed`, no answer may have a field that is not in it. */
export function openApi(closed = false): Record<string, unknown> {
  const address = '#/components/schemas/'
  const ref = (name: string): object => ({ $ref: `${address}${name}` })
  const contents = (given: Operation['gives'][number]): object =>
    given === null
      ? {}
      : { content: typeof given === 'string' ? { 'application/json': { schema: ref(given) } } : { [given.type]: {} } }
  const operation = (path: string, method: string, { says, takes, gives, streams }: Operation): object => ({
    operationId: `${method} ${path}`.replace(/[^A-Za-z]+(.)?/g, (_, next?: string) => next?.toUpperCase() ?? ''),
    summary: says,
    ...parametersOf(path, method),
    ...(takes ? { requestBody: { content: { 'application/json': { schema: ref(takes) } } } } : {}),
    responses: Object.fromEntries(
      Object.entries(gives).map(([status, given]) => [
        status,
        {
          description: Number(status) < 400 ? says : 'Why not, and what to do.',
          content: {
            ...(contents(given) as { content?: object }).content,
            ...(streams && status === '200' ? { 'text/event-stream': {} } : {}),
          },
        },
      ]),
    ),
  })
  return {
    openapi: '3.1.0',
    info: { title: 'Plumbpost', version, license: { name: 'MIT', identifier: 'MIT' } },
    servers: [{ url: '/' }],
    // Only where the server was given a secret.
    security: [{}, { secret: [] }],
    paths: Object.fromEntries(
      Object.entries(operations).map(([path, methods]) => [
        path,
        Object.fromEntries(Object.entries(methods).map(([method, it]) => [method, operation(path, method, it)])),
      ]),
    ),
    components: {
      securitySchemes: { secret: { type: 'http', scheme: 'bearer' } },
      schemas: {
        ...jsonSchemas(address, closed),
        Unworked: { anyOf: [ref('DirectCall'), ref('Fault')] },
      },
    },
  }
}

function parametersOf(path: string, method: string): object {
  const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: name === 'n' ? 'integer' : 'string' },
  }))
  const isTurn = method === 'post' && /\/turns(\/|$)/.test(path)
  const key = { name: 'Idempotency-Key', in: 'header', schema: { type: 'string' } }
  const parameters = [...inPath, ...(isTurn ? [key] : [])]
  return parameters.length > 0 ? { parameters } : {}
}
