// This file is about the program as a whole: how long a start takes and what it holds, each beside a bare server of Node; requests beside bare hono; the page's weight.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { serve } from '@hono/node-server'
import { encode } from 'gpt-tokenizer'
import { Hono } from 'hono'
import { createApp } from '../../src/http/app.ts'
import { newJob } from '../../engine/index.ts'
import { createAssistant } from '../../src/assistant.ts'
import { hear } from '../../src/hearing.ts'
import { readingPrompt } from '../../src/prompts.ts'
import { tools } from '../../src/mcp/tools.ts'
import { toolsOffered } from '../../src/readers/model/tools.ts'
import { catalogueText, wordsFor } from '../../src/readers/model/vocabulary.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import { openStore } from '../../src/store/open.ts'
import type { Measured } from './measure.ts'

const starts = 5
const requests = 400
const bareServer = "require('node:http').createServer().listen(0,'127.0.0.1',()=>console.log('up'))"

export async function programMeasures(): Promise<Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'plumbpost-bench-'))
  try {
    const [ours, bare] = [await started(['dist/server.mjs'], folder), await started(['-e', bareServer], folder)]
    const measured = (what: string, ms: number, reference: string, referenceMs: number, unit?: string): Measured => ({
      what,
      ...(unit ? { unit } : {}),
      ms,
      reference,
      referenceMs,
      ratio: ms / referenceMs,
    })
    const reference = 'a bare server of Node'
    const files = ['page.js', 'page.css'].map((it) => readFileSync(join('dist', 'web', it)))
    const raw = files.reduce((sum, it) => sum + it.length, 0)
    const zipped = files.reduce((sum, it) => sum + gzipSync(it).length, 0)
    const tokens = tools().map((it) => encode(JSON.stringify({ ...it, outputSchema: undefined })).length)
    return [
      measured('from start to listening', ours.ms, reference, bare.ms),
      ...(ours.kB && bare.kB ? [measured('memory once it listens', ours.kB, reference, bare.kB, 'kB')] : []),
      ...(await requestMeasures(measured)),
      measured('script and style of the page, packed', zipped / 1000, 'the same unpacked', raw / 1000, 'kB'),
      measured(
        'tokens of one tool of MCP, on average',
        tokens.reduce((sum, it) => sum + it, 0) / tokens.length,
        'the dearest of them',
        Math.max(...tokens),
        'tokens',
      ),
      ...promptMeasures(measured),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** What a model is sent before anybody's words: the front that stays the same, and the words that come with a message. */
function promptMeasures(
  measured: (what: string, count: number, reference: string, of: number, unit: string) => Measured,
) {
  const most = 6000
  const front = encode(`${readingPrompt()}\n\n${catalogueText()}\n${JSON.stringify(toolsOffered)}`).length
  const words = encode(
    wordsFor(hear('How many 3 1/2 in pickets go in a 93 in opening with gaps no wider than 2 1/2 in?', newJob)),
  ).length
  const limit = 'what it may take'
  return [
    measured('tokens of a model’s prompt that are the same each turn, tools included', front, limit, most, 'tokens'),
    measured('tokens of the words that come with a usual message', words, limit, most - front, 'tokens'),
  ]
}

/** The median of a few starts, to the first line that is printed, and the memory then, where the system tells it. */
async function started(args: readonly string[], folder: string): Promise<{ ms: number; kB: number | undefined }> {
  const runs: { ms: number; kB: number | undefined }[] = []
  for (let i = 0; i < starts; i++) {
    const start = performance.now()
    const env = { PATH: process.env.PATH, PORT: '0', PLUMBPOST_DATA: folder }
    const child = spawn(process.execPath, args, { env, stdio: ['ignore', 'pipe', 'inherit'] })
    await once(child.stdout, 'data')
    const ms = performance.now() - start
    const status = `/proc/${child.pid}/status`
    const kB = existsSync(status) ? Number(/^VmRSS:\s+(\d+)/m.exec(readFileSync(status, 'utf8'))?.[1]) : undefined
    child.kill()
    await once(child, 'close')
    runs.push({ ms, kB })
  }
  return runs.sort((a, b) => a.ms - b.ms)[Math.floor(starts / 2)] as (typeof runs)[number]
}

async function requestMeasures(
  measured: (what: string, ms: number, reference: string, referenceMs: number) => Measured,
) {
  const store = await openStore({ memory: true })
  const assistant = createAssistant(offlineReader)
  const app = createApp({
    assistant,
    store,
    version: 'bench',
    front: 'offline',
    renderReply: (it) => it,
    host: '127.0.0.1',
  })
  const bare = new Hono()
    .get('/healthz', (c) => c.json({ ok: true }))
    .post('/api/calculations/:name', async (c) => c.json(await c.req.json()))
  const inputs = { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }
  const asks = [
    ['asking whether the server is up', '/healthz', undefined],
    ['running one calculation over HTTP', '/api/calculations/picket-spacing', JSON.stringify({ inputs })],
  ] as const
  // One after the other: in one process each would wait for the other.
  const times = [await timesOf(app.fetch, asks), await timesOf(bare.fetch, asks)]
  await store.close()
  return asks.map(([what], i) =>
    measured(what, times[0]?.[i] ?? 0, 'bare hono, which hands back what it was sent', times[1]?.[i] ?? 1),
  )
}

async function timesOf(
  answer: Hono['fetch'],
  asks: readonly (readonly [string, string, string | undefined])[],
): Promise<number[]> {
  const server = serve({ fetch: answer, port: 0, hostname: '127.0.0.1' })
  await once(server, 'listening')
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  const medians: number[] = []
  for (const [, path, body] of asks) {
    const times: number[] = []
    for (let i = 0; i < requests; i++) {
      const start = performance.now()
      const headers = { 'content-type': 'application/json' }
      await (await fetch(address + path, body === undefined ? {} : { method: 'POST', headers, body })).text()
      times.push(performance.now() - start)
    }
    medians.push(times.sort((a, b) => a - b)[Math.floor(requests / 2)] as number)
  }
  server.close()
  return medians
}
