// This file is about a primary that dies under load while two servers write to it: the replica takes its place, and nothing that was acknowledged may be lost.
import { setTimeout as pause } from 'node:timers/promises'
import { openStore } from '../../src/store/open.ts'
import { buildServer, type ServerProcess } from '../src/http/server-process.ts'
import { openPair } from './pair-of-postgres.ts'

const talkers = 6
/** Acknowledged before the primary dies, and again after it; each is waited for a minute at most. */
const enough = 60

/** False when something acknowledged was lost or stands twice, or when the servers did not go on. */
export async function soakFailover(): Promise<boolean> {
  const pair = await openPair()
  const built = await buildServer()
  const servers: ServerProcess[] = []
  try {
    for (let i = 0; i < 2; i++) servers.push(await built.start({ DATABASE_URL: pair.url }))
    const end = new AbortController()
    const heard: Heard = { turns: 0 }
    const talks = Array.from({ length: talkers }, (_, i) => talk(servers, i, heard, end.signal))
    await until(() => heard.turns >= enough)
    const died = performance.now()
    await pair.failOver()
    const moved = performance.now()
    const before = heard.turns
    await until(() => heard.turns >= before + enough)
    end.abort()
    const told = await Promise.all(talks)
    const retries = await Promise.all(
      servers.map(
        async ({ address }) => ((await (await fetch(`${address}/healthz`)).json()) as { retries: number }).retries,
      ),
    )
    const store = await openStore({ databaseUrl: pair.url })
    const faults: string[] = []
    for (const { id, acknowledged } of told) {
      const said = (await store.read(id))?.turns.map((it) => it.said) ?? []
      if (new Set(said).size !== said.length) faults.push(`${id}: a turn stands twice`)
      for (const it of acknowledged) if (!said.includes(it.said)) faults.push(`${id}: “${it.said}” is lost`)
    }
    await store.close()
    const all = told.flatMap((it) => it.acknowledged)
    const after = all.filter((it) => it.at > moved)
    if (after.length === 0) faults.push('the servers did not go on')
    process.stdout.write(
      `failover: ${all.length} turns acknowledged by two servers, ${after.length} of them after it; the first ${((Math.min(...after.map((it) => it.at)) - died) / 1000).toFixed(1)} s after the primary died, ${((moved - died) / 1000).toFixed(1)} s of which the replica took; ${told.reduce((sum, it) => sum + it.turnedAway, 0)} answers were “try again”, ${retries.join(' and ')} writes were tried again by the servers themselves; ${faults.length === 0 ? 'none lost, none twice' : `FAILED\n${faults.join('\n')}`}\n`,
    )
    return faults.length === 0
  } finally {
    for (const it of servers) it.kill('SIGKILL')
    built.remove()
    await pair.close()
  }
}

interface Heard {
  turns: number
}

async function until(isSo: () => boolean): Promise<void> {
  for (let tries = 0; tries < 600 && !isSo(); tries++) await pause(100)
}

interface Talked {
  readonly id: string
  readonly acknowledged: readonly { readonly said: string; readonly at: number }[]
  /** Answers that asked to try again. */
  readonly turnedAway: number
}

/** Asks one question after the other, of one server and the other, each until it is answered. */
async function talk(servers: readonly ServerProcess[], nth: number, heard: Heard, end: AbortSignal): Promise<Talked> {
  let turnedAway = 0
  let asked = nth
  const send = async (path: string, body: object, headers?: Record<string, string>): Promise<unknown> => {
    for (;;) {
      const answer = await servers[asked++ % servers.length]?.post(path, body, headers).catch(() => undefined)
      if (answer?.ok) return answer.json()
      if (answer && answer.status !== 503) throw new Error(`${answer.status}: ${await answer.text()}`)
      turnedAway++
      await pause(200)
    }
  }
  const { id } = (await send('/api/conversations', {})) as { id: string }
  const acknowledged: { said: string; at: number }[] = []
  for (let n = 0; !end.aborted; n++) {
    const said = `How many pickets go in a ${90 + n} in opening with 3 1/2 in pickets and gaps no wider than 2 1/2 in?`
    await send(`/api/conversations/${id}/turns`, { text: said }, { 'idempotency-key': `${nth} ${n}` })
    acknowledged.push({ said, at: performance.now() })
    heard.turns++
  }
  return { id, acknowledged, turnedAway }
}
