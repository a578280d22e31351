// This file is about the tools that other programs are offered: every calculation is one, with what goes in, what comes out, and its cautions.
import type { CallToolResult, Tool } from '@modelcontextprotocol/sdk/types.js'
import { z } from 'zod'
import { answerSchema, callSchema, figureSchema } from '../answer.ts'
import { type Direct, listCalculations, type Listed, runCalculation } from '../direct.ts'

/** What is true of all of them: nothing is changed, the same goes in and the same comes out, and nobody else is asked. */
const harmless = { readOnlyHint: true, destructiveHint: false, idempotentHint: true, openWorldHint: false } as const

const confirmed = 'confirmed'

/** A call as it is handed over: each result under its word, without the drawing. Where nothing could be worked, `problems` says why. */
const outcomeOf = (calculation: Listed) =>
  z.strictObject({
    ...callSchema.pick({ calculation: true, title: true, inputs: true, steps: true, tables: true }).shape,
    results: z.strictObject(
      Object.fromEntries(
        calculation.results.map(({ word, label }) => [word, figureSchema.optional().describe(label)] as const),
      ),
    ),
    ...callSchema.pick({ doubts: true, sources: true, problems: true }).shape,
    remarks: z.array(z.string()),
    cautions: answerSchema.shape.cautions,
  })

const schemaOf = (calculation: Listed): Tool['outputSchema'] => {
  const { $schema: _, ...schema } = z.toJSONSchema(outcomeOf(calculation))
  return { ...schema, type: 'object' } as Tool['outputSchema']
}

const toolOf = (calculation: Listed): Tool => {
  const { name, title, answers, inputs } = calculation
  const { properties, ...rest } = inputs as Tool['inputSchema'] & { readonly properties: Record<string, object> }
  return {
    name,
    title,
    description: `${title}. ${answers}`,
    inputSchema: {
      ...rest,
      properties: {
        ...properties,
        [confirmed]: {
          type: 'array',
          items: { type: 'string', enum: Object.keys(properties) },
          description: 'Inputs whose unusual value was asked about, and which the person has said is meant.',
        },
      },
    },
    outputSchema: schemaOf(calculation),
    annotations: harmless,
  }
}

let made: readonly Tool[] | undefined

/** Every calculation, in the order a job meets them. */
export const tools = (): readonly Tool[] => {
  made ??= listCalculations().map(toolOf)
  return made
}

/** Works a tool's calculation. What is missing or impossible is an error that names the inputs and says what to change; undefined where there is no such tool. */
export async function callTool(
  name: string,
  given: Readonly<Record<string, unknown>>,
): Promise<CallToolResult | undefined> {
  const { [confirmed]: meant, ...inputs } = given
  const isMeant = Array.isArray(meant) ? meant.filter((it) => typeof it === 'string') : []
  const call = await runCalculation(name, inputs, isMeant)
  return (
    call && {
      content: [{ type: 'text', text: textOf(call) }],
      structuredContent: structured(call),
      isError: call.problems.length > 0,
    }
  )
}

const textOf = (call: Direct): string =>
  call.problems.length === 0
    ? call.reply
    : `Not worked: ${call.title.charAt(0).toLowerCase()}${call.title.slice(1)}. What to give or change, by input:\n\n${call.problems
        .map(
          (it) =>
            `- \`${it.word}\` (${it.code}): ${it.message}${it.ask ? ` ${it.ask}` : ''}${it.code === 'implausible' ? ` Where the person says it is meant, name it in \`${confirmed}\`.` : ''}`,
        )
        .join('\n')}\n\n${call.reply}`

const structured = ({ calculation, title, inputs, steps, results, tables, doubts, sources, ...it }: Direct) => ({
  calculation,
  title,
  inputs,
  steps,
  tables,
  results: Object.fromEntries(results.map((figure) => [figure.word, figure])),
  doubts,
  sources,
  problems: it.problems,
  remarks: it.words.remarks.map(({ text }) => text),
  cautions: it.cautions,
})
