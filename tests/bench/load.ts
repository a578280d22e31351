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
  /** Of the first server's memory, in MB: after each tenth of the turns. */
  readonly memoryMb: readonly number[]
}

const spacing = (inches: number): string =>
  `How many pickets go in a ${inches} in opening with 3 1/2 in pickets and gaps no wider than 2 1/2 in?`
/** Read and worked in less time, for very many of them. */
const plain = (inches: number): string => `How many feet is ${inches} in?`

/** As many turns as named, in all. `only` names some of the servers, `sqlite`, `postgres` or `two`, and with `plain` a plainer question is asked. */
export async function loadMeasures(turns: number, only: readonly string[]): Promise<readonly Load[]> {
  const question = only.includes('plain') ? plain : spacing
  const servers = only.filter((it) => it !== 'plain')
  const folder = mkdtempSync(join(tmpdir(), 'plumbpost-load-'))
  chmodSync(folder, 0o777)
  const database = postgresServer(() => folder)
  const built = await buildServer()
  const measured: Load[] = []
  try {
    const databaseUrl = await database.start()
    const all: readonly (readonly [string, string, number, Record<string, string>])[] = [
      ['sqlite', 'one server, SQLite', 1, { PLUMBPOST_DATA: folder }],
      ['postgres', 'one server, PostgreSQL', 1, { DATABASE_URL: databaseUrl }],
      ['two', 'two servers, one PostgreSQL', 2, { DATABASE_URL: databaseUrl }],
    ]
    for (const [, what, many, settings] of all.filter(([name]) => servers.length === 0 || servers.includes(name))) {
      const running = await Promise.all(Array.from({ length: many }, () => built.start(settings)))
      measured.push(await underLoad(what, running, turns, question))
      for (const it of running) it.kill('SIGTERM')
      await Promise.all(running.map((it) => it.ended))
    }
    return measured
  } finally {
    await database.stop()
    built.remove()
    rmSync(folder, { recursive: true, force: true })
  }
}

async function underLoad(
  what: string,
  servers: readonly ServerProcess[],
  turns: number,
  question: (inches: number) => string,
): Promise<Load> {
  const of = (nth: number): ServerProcess => servers[nth % servers.length] as ServerProcess
  // The first turn reads in what the others find there.
  for (const it of servers) await talk(it, 1, question, () => {})
  const begun = performance.now()
  const healths = 400
  await Promise.all(
    Array.from({ length: askers }, async (_, nth) => {
      for (let i = 0; i < healths / askers; i++) await (await fetch(`${of(nth).address}/healthz`)).text()
    }),
  )
  const healthASecond = (healths / (performance.now() - begun)) * 1000
  const times: number[] = []
  const memoryMb: number[] = []
  const from = performance.now()
  await Promise.all(
    Array.from({ length: askers }, async (_, nth) => {
      while (times.length < turns) {
        await talk(of(nth), turnsOfTalk, question, (ms) => times.push(ms))
        if (times.length < ((memoryMb.length + 1) * turns) / 10) continue
        memoryMb.push(memoryOf(of(0)))
        process.stderr.write(
          `${what}: ${times.length} turns in ${((performance.now() - from) / 1000).toFixed(0)} s, ${memoryMb.at(-1)?.toFixed(0)} MB\n`,
        )
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
    memoryMb,
  }
}

async function talk(
  server: ServerProcess,
  turns: number,
  question: (inches: number) => string,
  tell: (ms: number) => void,
): Promise<void> {
  const { id } = (await (await server.post('/api/conversations', {})).json()) as { id: string }
  for (let n = 0; n < turns; n++) {
    const begun = performance.now()
    const answer = await server.post(`/api/conversations/${id}/turns`, { text: question(80 + n) })
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
  [
    ...loads.map(
      (it) =>
        `${it.what}: ${it.turns} turns, ${it.aSecond.toFixed(1)} a second, 1/${(it.healthASecond / it.aSecond).toFixed(1)} of its /healthz (${it.healthASecond.toFixed(0)}); median ${it.medianMs.toFixed(0)} ms, p99 ${it.p99Ms.toFixed(0)} ms; memory ${it.memoryMb.map((mb) => mb.toFixed(0)).join(' → ')} MB`,
    ),
    ...results(loads),
  ].join('\n')

/** A line of result for each question that this load answers. */
function results(loads: readonly Load[]): string[] {
  const [one, two] = ['one server, PostgreSQL', 'two servers, one PostgreSQL'].map((what) =>
    loads.find((it) => it.what === what),
  )
  const lines = loads
    // Fewer say nothing of it: a process takes its memory in the first thousands.
    .filter((it) => it.turns >= 10_000)
    .map(({ what, turns, memoryMb }) => {
      const [from, to] = [memoryMb.slice(1, 5), memoryMb.slice(-4)].map(
        (some) => some.reduce((sum, it) => sum + it, 0) / some.length,
      ) as [number, number]
      return `RESULT ${what}: ${from.toFixed(0)} MB on average after two to five tenths of ${turns} turns, ${to.toFixed(0)} MB after the last four (${signed(to / from - 1)})`
    })
  if (one && two)
    lines.push(
      `RESULT two servers on one PostgreSQL do ${(two.aSecond / one.aSecond).toFixed(2)} times the turns of one (${two.aSecond.toFixed(1)} and ${one.aSecond.toFixed(1)} a second), p99 ${two.p99Ms.toFixed(0)} and ${one.p99Ms.toFixed(0)} ms`,
    )
  return lines
}

const signed = (share: number): string => `${share < 0 ? '−' : '+'}${Math.abs(share * 100).toFixed(0)} %`
