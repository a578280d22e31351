// This file is about `npm run bench -- load`: turns read on this machine, asked of the whole server by several at once, as a ratio to its own bare /healthz;
// the slowest hundredth; what memory is left taken; and two servers on one PostgreSQL against one. Load and servers share this machine.
import { chmodSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildServer, type ServerProcess } from '../src/http/server-process.ts'
import { postgresServer } from '../src/store/postgres-server.ts'

const askers = 8
/** A talk is as long as one that somebody has: later turns read what came before. */
const turnsOfTalk = 10

interface Load {
  readonly what: string
  readonly turns: number
  readonly aSecond: number
  /** Of /healthz of the same servers, asked by as many. */
  readonly healthASecond: number
  readonly medianMs: number
  readonly p99Ms: number
  /** Of the first server's memory, in MB: after a tenth of the turns, and after all. */
  readonly memoryMb: readonly [number, number]
}

/** As many turns as named, in all. */
export async function loadMeasures(turns: number): Promise<readonly Load[]> {
  const folder = mkdtempSync(join(tmpdir(), 'plumbpost-load-'))
  chmodSync(folder, 0o777)
  const database = postgresServer(() => folder)
  const built = await buildServer()
  const measured: Load[] = []
  try {
    const databaseUrl = await database.start()
    const tried: readonly (readonly [string, number, Record<string, string>])[] = [
      ['one server, SQLite', 1, { PLUMBPOST_DATA: folder }],
      ['one server, PostgreSQL', 1, { DATABASE_URL: databaseUrl }],
      ['two servers, one PostgreSQL', 2, { DATABASE_URL: databaseUrl }],
    ]
    for (const [what, many, settings] of tried) {
      const servers = await Promise.all(Array.from({ length: many }, () => built.start(settings)))
      measured.push(await underLoad(what, servers, turns))
      for (const it of servers) it.kill('SIGTERM')
      await Promise.all(servers.map((it) => it.ended))
    }
    return measured
  } finally {
    await database.stop()
    built.remove()
    rmSync(folder, { recursive: true, force: true })
  }
}

async function underLoad(what: string, servers: readonly ServerProcess[], turns: number): Promise<Load> {
  const of = (nth: number): ServerProcess => servers[nth % servers.length] as ServerProcess
  // The first turn reads in what the others find there.
  for (const it of servers) await talk(it, 1, () => {})
  const begun = performance.now()
  const healths = 400
  await Promise.all(
    Array.from({ length: askers }, async (_, nth) => {
      for (let i = 0; i < healths / askers; i++) await (await fetch(`${of(nth).address}/healthz`)).text()
    }),
  )
  const healthASecond = (healths / (performance.now() - begun)) * 1000
  const times: number[] = []
  let memoryEarly = 0
  const from = performance.now()
  await Promise.all(
    Array.from({ length: askers }, async (_, nth) => {
      while (times.length < turns) {
        await talk(of(nth), turnsOfTalk, (ms) => times.push(ms))
        if (memoryEarly === 0 && times.length >= turns / 10) memoryEarly = memoryOf(of(0))
      }
    }),
  )
  const seconds = (performance.now() - from) / 1000
  const inOrder = times.toSorted((a, b) => a - b)
  return {
    what,
    turns: times.length,
    aSecond: times.length / seconds,
    healthASecond,
    medianMs: inOrder[Math.floor(inOrder.length / 2)] as number,
    p99Ms: inOrder[Math.floor(inOrder.length * 0.99)] as number,
    memoryMb: [memoryEarly, memoryOf(of(0))],
  }
}

async function talk(server: ServerProcess, turns: number, tell: (ms: number) => void): Promise<void> {
  const { id } = (await (await server.post('/api/conversations', {})).json()) as { id: string }
  for (let n = 0; n < turns; n++) {
    const begun = performance.now()
    const answer = await server.post(`/api/conversations/${id}/turns`, {
      text: `How many pickets go in a ${80 + n} in opening with 3 1/2 in pickets and gaps no wider than 2 1/2 in?`,
    })
    await answer.text()
    if (!answer.ok) throw new Error(`A turn was refused with ${answer.status}.`)
    tell(performance.now() - begun)
  }
}

/** What the process holds, in MB. Not a number where the system does not say. */
function memoryOf({ pid }: ServerProcess): number {
  try {
    return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024
  } catch {
    return NaN
  }
}

export const loadInWords = (loads: readonly Load[]): string =>
  loads
    .map(
      (it) =>
        `${it.what}: ${it.turns} turns, ${it.aSecond.toFixed(1)} a second, 1/${(it.healthASecond / it.aSecond).toFixed(1)} of its /healthz (${it.healthASecond.toFixed(0)}); median ${it.medianMs.toFixed(0)} ms, p99 ${it.p99Ms.toFixed(0)} ms; memory ${it.memoryMb.map((mb) => mb.toFixed(0)).join(' → ')} MB`,
    )
    .join('\n')
