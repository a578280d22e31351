// This file is about what goes over HTTP, as schemas: those of the Answer, and what is told around it. OpenAPI is made from them.
import { z } from 'zod'
import { adviceSchema, answerSchema, callSchema, figureSchema, figureValue, problemSchema } from '../answer.ts'
import { exportSchema } from '../export/export.ts'

const inHtml = z.object({
  prose: z.string(),
  notices: z.array(z.string()),
  leftOver: z.array(z.string()),
  remarks: z.array(z.object({ call: z.string(), html: z.string() })),
  advice: z.array(z.string()),
  reminders: z.array(z.string()).describe('Of each caution the one line that reminds of it.'),
})
/** An answer with its sentences as HTML beside it. */
const shownAnswer = answerSchema.extend({ html: inHtml })

const turn = z.object({
  n: z.int(),
  said: z.string(),
  at: z.iso.datetime(),
  answer: shownAnswer,
  job: z.unknown().describe('The job after the turn, as it writes itself: to hand back, not to read.'),
  get aside() {
    return z.array(z.array(turn)).describe('What stood here before it was asked anew.')
  },
})

const conversation = z.object({ id: z.string(), title: z.string(), created: z.iso.datetime() })

/** JSON Schema in JSON: what a calculation takes. */
const jsonSchema = z.record(z.string(), z.unknown())

/** By the names that they have in the document. */
export const schemas = {
  Figure: figureSchema,
  FigureValue: figureValue,
  Problem: problemSchema,
  Call: callSchema,
  Advice: adviceSchema,
  Answer: answerSchema,
  ShownAnswer: shownAnswer,
  Turn: turn,
  Export: exportSchema,
  Fault: z.object({ error: z.object({ code: z.string(), message: z.string(), field: z.string().optional() }) }),
  Health: z.object({ ok: z.boolean(), version: z.string(), front: z.enum(['offline', 'model']), retries: z.int() }),
  Ready: z.object({ ready: z.boolean() }),
  Begun: z.object({
    id: z.string(),
    owner: z.string().optional().describe('Where a secret is asked for: the token by which its owner is known.'),
  }),
  Conversations: z.array(conversation.extend({ changed: z.iso.datetime(), turns: z.int() })),
  Conversation: conversation.extend({
    isShared: z.boolean().describe('Whether a link to read it is out.'),
    turns: z.array(turn),
  }),
  Resumed: z.object({ turns: z.int() }),
  Link: z.object({ link: z.string() }),
  JobSheet: z.array(
    figureSchema.pick({ word: true, at: true, label: true, unit: true, text: true }).extend({
      value: figureValue,
      figure: figureSchema,
      from: z.enum(['said', 'usual', 'worked', 'published']),
    }),
  ),
  JobOpen: z.object({
    units: z.enum(['imperial', 'metric']),
    open: z.array(z.object({ word: z.string(), at: z.string(), question: z.string(), waits: z.array(z.string()) })),
  }),
  Calculations: z.array(
    z.object({
      name: z.string(),
      title: z.string(),
      answers: z.string(),
      subject: z.string().optional(),
      inputs: jsonSchema,
      fields: z.array(
        z.object({
          word: z.string(),
          label: z.string(),
          measure: z.string(),
          usual: z.string().optional(),
          isNeeded: z.boolean(),
          isList: z.boolean(),
          choices: z.array(z.object({ value: z.string(), label: z.string() })).optional(),
        }),
      ),
      results: z.array(z.object({ word: z.string(), label: z.string(), kind: z.string() })),
    }),
  ),
  DirectCall: callSchema.extend({
    cautions: answerSchema.shape.cautions,
    words: answerSchema.shape.words.unwrap(),
    reply: z.string(),
  }),
  Said: z.object({ text: z.string().min(1) }),
  Change: z.object({ word: z.string(), at: z.string().optional(), value: z.string() }),
  Branch: z.object({ branch: z.int() }),
  Units: z.object({ system: z.enum(['imperial', 'metric']) }),
  Inputs: z.object({
    inputs: z
      .record(z.string(), z.union([z.string(), z.number(), z.array(z.union([z.string(), z.number()]))]))
      .optional()
      .describe('As people write them: {"opening":"93 in"}.'),
    confirmed: z.array(z.string()).optional().describe('Inputs whose unusual value is meant.'),
  }),
  WorkInto: z.object({ calculation: z.string(), inputs: z.record(z.string(), z.unknown()).optional() }),
  Nothing: z.object({}),
  Message: z.looseObject({ jsonrpc: z.literal('2.0') }).describe('A message of the Model Context Protocol.'),
} as const
export type SchemaName = keyof typeof schemas

/** All of them as JSON Schema, each naming the others under that address. Fields may be added to an answer; with `closed`, none may. */
export function jsonSchemas(address: string, closed = false): Record<string, Record<string, unknown>> {
  const registry = z.registry<{ id: string }>()
  for (const [id, schema] of Object.entries(schemas)) registry.add(schema, { id })
  const { schemas: made } = z.toJSONSchema(registry, {
    uri: (id) => `${address}${id}`,
    io: closed ? 'output' : 'input',
  })
  return Object.fromEntries(
    Object.entries(made).map(([name, { $schema: _, $id: __, id: ___, ...schema }]) => [name, schema]),
  )
}
