// This file is about `npm run soak -- mcp`: the protocol's own conformance suite against our server. Its package is fetched when this is run, and needs Node 22.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import type { AddressInfo } from 'node:net'
import { serve } from '@hono/node-server'
import { createAssistant } from '../../src/assistant.ts'
import { createApp } from '../../src/http/app.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import { openStore } from '../../src/store/open.ts'

const suite = '@modelcontextprotocol/conformance@0.1.16'
const needs = 22
/** The others call tools, resources and prompts of the suite's own example server, or what we do not offer: logging, completions, subscriptions, sampling. */
const scenarios = [
  'server-initialize',
  'ping',
  'tools-list',
  'server-sse-multiple-streams',
  'resources-list',
  'prompts-list',
  'dns-rebinding-protection',
]

/** Whether every scenario passed. */
export async function soakConformance(): Promise<boolean> {
  if (Number(process.versions.node.split('.')[0]) < needs) {
    process.stdout.write(
      `MCP: NOT RUN, since ${suite} needs Node ${needs} and this is Node ${process.versions.node}.\n`,
    )
    return false
  }
  const store = await openStore({ memory: true })
  const assistant = createAssistant(offlineReader)
  const app = createApp({
    assistant,
    store,
    version: 'soak',
    front: 'offline',
    renderReply: (it) => it,
    host: '127.0.0.1',
  })
  const server = serve({ fetch: app.fetch, port: 0, hostname: '127.0.0.1' })
  await once(server, 'listening')
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/mcp`
  let kept = true
  for (const scenario of scenarios) {
    const { passed, said } = await runs(['server', '--url', address, '--scenario', scenario])
    process.stdout.write(`MCP, ${scenario}: ${passed ? 'passed' : `FAILED\n${said}`}\n`)
    kept &&= passed
  }
  server.close()
  await store.close()
  return kept
}

async function runs(args: readonly string[]): Promise<{ passed: boolean; said: string }> {
  const npm = ['exec', '--yes', `--package=${suite}`, '--', 'conformance', ...args]
  const child = spawn('npm', npm, { stdio: ['ignore', 'pipe', 'pipe'], shell: process.platform === 'win32' })
  let said = ''
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (piece) => {
      said += piece
    })
  const [code] = (await once(child, 'close')) as [number | null]
  return { passed: code === 0, said }
}
