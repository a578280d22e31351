// One suite for every way to an MCP server: a general client, the SDK's own, lists every tool, resource and prompt, and calls every tool.
import type { Client } from '@modelcontextprotocol/sdk/client/index.js'
import type { CallToolResult } from '@modelcontextprotocol/sdk/types.js'
import { expect } from 'vitest'
import { catalogue } from '../../../engine/catalogue.ts'
import { callTool } from '../../../src/mcp/tools.ts'

/** Every tool with its first example. What comes over the wire is what the program says at home. */
export async function callsEveryTool(client: Client): Promise<void> {
  const { tools } = await client.listTools()
  expect(tools.map((it) => it.name)).toEqual(catalogue.map((it) => it.name))
  for (const calculation of catalogue) {
    const [example] = calculation.examples
    const called = await client.callTool({ name: calculation.name, arguments: { ...example?.given } })
    expect(called).toEqual(JSON.parse(JSON.stringify(await callTool(calculation.name, { ...example?.given }))))
    expect(called.isError, calculation.name).toBe(false)
  }
}

export const textOf = (called: Awaited<ReturnType<Client['callTool']>>): string =>
  (called as CallToolResult).content.map((it) => (it.type === 'text' ? it.text : '')).join('\n')
