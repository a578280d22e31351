// The same server as other programs reach it: as a program of its own over standard input and output, and over HTTP through the server's doors.
import { mkdtempSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { serve, type ServerType } from '@hono/node-server'
import { Client } from '@modelcontextprotocol/sdk/client/index.js'
import { StdioClientTransport } from '@modelcontextprotocol/sdk/client/stdio.js'
import { StreamableHTTPClientTransport } from '@modelcontextprotocol/sdk/client/streamableHttp.js'
import { afterEach, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { callsEveryTool } from './every-tool.ts'

// Results are held against their schemas in server.test.ts, and here against the same results.
const asTheyCome = {
  getValidator: () => (data: unknown) => ({ valid: true as const, data: data as never, errorMessage: undefined }),
}
const newClient = (): Client => new Client({ name: 'test', version: '1' }, { jsonSchemaValidator: asTheyCome })

const closing: (() => unknown)[] = []
afterEach(async () => {
  for (const close of closing.splice(0).reverse()) await close()
})

describe('over standard input and output', () => {
  const started = async (env: Record<string, string>) => {
    const client = newClient()
    const transport = new StdioClientTransport({
      command: process.execPath,
      args: ['--import', 'tsx', fileURLToPath(new URL('../../../src/cli/mcp.ts', import.meta.url))],
      env: { PATH: process.env.PATH ?? '', ...env },
      stderr: 'pipe',
    })
    let stderr = ''
    transport.stderr?.on('data', (piece) => {
      stderr += piece
    })
    await client.connect(transport)
    closing.push(() => client.close())
    return { client, said: () => stderr }
  }

  it('lists and calls every tool, makes no store, and writes nothing beside', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'plumbpost-mcp-'))
    closing.push(() => rmSync(folder, { recursive: true, force: true }))
    const { client, said } = await started({ PLUMBPOST_DATA: join(folder, 'none') })
    expect(client.getServerVersion()).toMatchObject({ name: 'plumbpost' })
    expect(client.getInstructions()).toContain('Pass them on in full')
    await callsEveryTool(client)
    expect((await client.listResources()).resources.some((it) => it.uri.includes('job-sheets'))).toBe(false)
    expect(said()).toBe('')
  }, 120_000)

  it('shows the job sheets of the store that the settings name', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'plumbpost-mcp-'))
    closing.push(() => rmSync(folder, { recursive: true, force: true }))
    const store = await openStore({ dataFolder: folder })
    const id = await talkIn(store)
    await store.close()
    const { client } = await started({ PLUMBPOST_DATA: folder })
    expect((await client.listResources()).resources.map((it) => it.uri)).toContain(`plumbpost://job-sheets/${id}`)
  }, 60_000)
})

describe('over HTTP', () => {
  const secret = '0123456789abcdef0123456789abcdef'
  const served = async (itsSecret?: string) => {
    const store = await openStore({ memory: true })
    const app = createApp({
      assistant: createAssistant(offlineReader),
      store,
      version: '1.2.3',
      front: 'offline',
      renderReply: (it) => it,
      host: '127.0.0.1',
      secret: itsSecret,
    })
    const server: ServerType = serve({ fetch: app.fetch, port: 0, hostname: '127.0.0.1' })
    await new Promise((resolve) => server.once('listening', resolve))
    closing.push(
      () => store.close(),
      () => server.close(),
    )
    const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
    const connect = async (headers: Record<string, string> = {}): Promise<Client> => {
      const client = newClient()
      await client.connect(new StreamableHTTPClientTransport(new URL(`${address}/mcp`), { requestInit: { headers } }))
      closing.push(() => client.close())
      return client
    }
    return { app, store, address, connect }
  }
  const asked = JSON.stringify({ jsonrpc: '2.0', id: 1, method: 'tools/list' })
  const knocking = (headers: Record<string, string> = {}, method = 'POST') => ({
    method,
    headers: { 'content-type': 'application/json', accept: 'application/json, text/event-stream', ...headers },
    ...(method === 'POST' ? { body: asked } : {}),
  })

  it('lists and calls every tool', async () => {
    const { connect } = await served()
    await callsEveryTool(await connect())
  }, 120_000)

  it('goes through the doors of the server: its own name, its own pages, its secret', async () => {
    const { app } = await served(secret)
    const open = { authorization: `Bearer ${secret}`, host: 'localhost:4680' }
    const status = async (headers: Record<string, string>, method?: string): Promise<number> =>
      (await app.request('/mcp', knocking(headers, method))).status
    expect(await status(open)).toBe(200)
    expect(await status({ ...open, host: 'evil.example' })).toBe(403)
    expect(await status({ ...open, origin: 'https://evil.example' })).toBe(403)
    expect(await status({ host: 'localhost:4680' })).toBe(401)
    expect(await status(open, 'GET')).toBe(405)
    expect(await status(open, 'DELETE')).toBe(405)
  })

  it('shows each owner the job sheets of their own talks, and a newcomer none', async () => {
    const { app, store, connect } = await served(secret)
    const begun = await app.request('/api/conversations', {
      method: 'POST',
      headers: { authorization: `Bearer ${secret}`, 'content-type': 'application/json' },
      body: '{}',
    })
    const { id, owner } = (await begun.json()) as { id: string; owner: string }
    await app.request(`/api/conversations/${id}/turns`, {
      method: 'POST',
      headers: { authorization: `Bearer ${owner}`, 'content-type': 'application/json' },
      body: JSON.stringify({ text: question }),
    })
    const others = await talkIn(store, 'somebody else')
    const sheets = async (client: Client) =>
      (await client.listResources()).resources.map((it) => it.uri).filter((it) => it.includes('job-sheets'))
    const theirs = await connect({ authorization: `Bearer ${owner}` })
    expect(await sheets(theirs)).toEqual([`plumbpost://job-sheets/${id}`])
    await expect(theirs.readResource({ uri: `plumbpost://job-sheets/${others}` })).rejects.toMatchObject({
      code: -32002,
    })
    const newcomer = await connect({ authorization: `Bearer ${secret}` })
    expect(await sheets(newcomer)).toEqual([])
    await expect(newcomer.readResource({ uri: `plumbpost://job-sheets/${id}` })).rejects.toMatchObject({ code: -32002 })
  })

  it('answers what is no message of the protocol in its own words', async () => {
    const { app } = await served()
    const refused = await app.request('/mcp', { ...knocking(), body: '{"a":' })
    expect([refused.status, await refused.json()]).toEqual([
      400,
      expect.objectContaining({ jsonrpc: '2.0', error: expect.objectContaining({ code: -32700 }) }),
    ])
  })
})

const question = 'How deep do I set posts for a 4 ft fence with 6 in of gravel?'
async function talkIn(store: Store, owner?: string): Promise<string> {
  const { id } = await store.create(owner)
  const { answer, job } = await createAssistant(offlineReader).turn({ said: question, before: [] })
  await store.append(id, { n: 0, said: question, answer, job, key: null, events: [] }, 0)
  return id
}
