// This file is about MCP over standard input and output: one program, that started this one, asks and is answered.
import { existsSync } from 'node:fs'
import { StdioServerTransport } from '@modelcontextprotocol/sdk/server/stdio.js'
import type { Talks } from '../mcp/resources.ts'
import { createMcp } from '../mcp/server.ts'
import { readSettings, type Settings } from '../settings.ts'
import { openStore, talksFileIn } from '../store/open.ts'
import type { Store } from '../store/store.ts'

/** The store is opened when a job sheet is first asked for, and none is made where there is none. */
function talksOf({ store: where }: Settings): Talks & { close(): Promise<void> } {
  let opening: Promise<Store> | undefined
  const store = async (): Promise<Store | undefined> => {
    if (opening === undefined && 'dataFolder' in where && !existsSync(talksFileIn(where.dataFolder))) return undefined
    opening ??= openStore(where)
    return opening
  }
  return {
    list: async () => (await (await store())?.list()) ?? [],
    read: async (id) => (await (await store())?.read(id)) ?? null,
    close: async () => (await opening)?.close(),
  }
}

async function main(): Promise<void> {
  const talks = talksOf(readSettings(process.env))
  const server = await createMcp(talks)
  server.onclose = () => void talks.close()
  const transport = new StdioServerTransport()
  await server.connect(transport)
  // Whoever started this one has gone.
  process.stdin.on('end', () => void server.close())
}

main().catch((fault: unknown) => {
  process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`)
  process.exitCode = 1
})
