// This file is about the MCP server: what it offers, and to whom it answers. The package is read when the first program comes: a start does not wait for it.
import type { Server } from '@modelcontextprotocol/sdk/server/index.js'
import { version } from '../../engine/index.ts'
import { toolsPrompt } from '../prompts.ts'
import { plans, planSaid } from './plans.ts'
import { readResource, resources, type Talks, templates } from './resources.ts'
import { callTool, tools } from './tools.ts'

/** A server for one connection, that sees these talks. */
export async function createMcp(talks: Talks): Promise<Server> {
  const [{ Server }, mcp] = await Promise.all([
    import('@modelcontextprotocol/sdk/server/index.js'),
    import('@modelcontextprotocol/sdk/types.js'),
  ])
  const server = new Server(
    { name: 'plumbpost', title: 'Plumbpost', version },
    { capabilities: { tools: {}, resources: {}, prompts: {} }, instructions: toolsPrompt() },
  )
  server.setRequestHandler(mcp.ListToolsRequestSchema, () => ({ tools: [...tools()] }))
  server.setRequestHandler(mcp.CallToolRequestSchema, async ({ params }) => {
    const told = await callTool(params.name, params.arguments ?? {})
    if (!told)
      throw refused(
        mcp.ErrorCode.InvalidParams,
        `There is no tool “${params.name.slice(0, 60)}”. tools/list names them.`,
      )
    return told
  })
  server.setRequestHandler(mcp.ListResourcesRequestSchema, async () => ({ resources: await resources(talks) }))
  server.setRequestHandler(mcp.ListResourceTemplatesRequestSchema, () => ({ resourceTemplates: [...templates] }))
  server.setRequestHandler(mcp.ReadResourceRequestSchema, async ({ params }) => {
    const contents = await readResource(params.uri, talks)
    if (!contents)
      throw refused(notThere, `There is nothing at “${params.uri.slice(0, 120)}”. resources/list names what there is.`)
    return { contents: [contents] }
  })
  server.setRequestHandler(mcp.ListPromptsRequestSchema, () => ({ prompts: plans() }))
  server.setRequestHandler(mcp.GetPromptRequestSchema, ({ params }) => {
    const said = planSaid(params.name, params.arguments)
    if (said === undefined)
      throw refused(
        mcp.ErrorCode.InvalidParams,
        `There is no prompt “${params.name.slice(0, 60)}”. prompts/list names them.`,
      )
    return { messages: [{ role: 'user' as const, content: { type: 'text' as const, text: said } }] }
  })
  return server
}

/** The protocol's number for a resource that is not there. */
const notThere = -32002
/** What goes wrong with a number of the protocol goes to whoever asked, in these words. */
const refused = (code: number, message: string): Error => Object.assign(new Error(message), { code })
