// This file is about opening the store that the settings name.
import { randomUUID } from 'node:crypto'
import { mkdirSync } from 'node:fs'
import { Socket } from 'node:net'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { Kysely, PostgresDialect, SqliteDialect, type SqliteStatement } from 'kysely'
import Database from 'libsql'
import pg from 'pg'
import { isDamaged, isFull, isLocked, isReadOnly } from './faults.ts'
import { inPlaceOfDamaged, keepGoodCopy } from './good-copy.ts'
import { addressesIn, primaryOf } from './primary.ts'
import { type Made, openSqlStore } from './sql-store.ts'
import { type Store, Unavailable } from './store.ts'
import type { Tables } from './tables.ts'

export type Where =
  | { readonly dataFolder: string; readonly longestWaitMs?: number }
  | { readonly databaseUrl: string; readonly longestWaitMs?: number; readonly longestSilenceMs?: number }
  | { readonly memory: true }

export const talksFileIn = (dataFolder: string): string => join(dataFolder, 'conversations.sqlite')

const made: Made = { clock: () => new Date(), newId: randomUUID }

export async function openStore(where: Where, make: Made = made): Promise<Store> {
  if ('databaseUrl' in where) {
    const db = postgres(where.databaseUrl, where.longestSilenceMs ?? longestSilenceMs)
    try {
      return await openSqlStore(db, make, {
        busyMs: 0,
        awayMs: where.longestWaitMs ?? longestWaitMs / 2,
        tablesAtOnce: false,
      })
    } catch (fault) {
      await db.destroy()
      const cause = (fault instanceof Unavailable ? fault.cause : fault) as { message?: string; code?: string }
      throw new Error(
        `The database that DATABASE_URL names cannot be used (${cause.message || cause.code}). Start it, or correct DATABASE_URL, and start again.`,
        { cause },
      )
    }
  }
  if ('memory' in where) return openSqlStore(connected(':memory:'), make, { busyMs: 0, awayMs: 0, tablesAtOnce: true })
  const file = talksFileIn(where.dataFolder)
  const busyMs = where.longestWaitMs ?? longestWaitMs
  try {
    // What somebody asks is not for the other accounts of the machine.
    mkdirSync(where.dataFolder, { recursive: true, mode: 0o700 })
    return await openSqlStore(await sqlite(file, busyMs), make, { busyMs, awayMs: 0, tablesAtOnce: true })
  } catch (fault) {
    throw inItsFile(file, fault)
  }
}

/** After so long without a free connection, or with another program at the file, the question is turned away, so that none waits for ever. */
const longestWaitMs = 10_000

/** A database that says nothing for so long in the middle of a question is gone: its machine may have lost its power, and then nobody ends the line. */
const longestSilenceMs = 20_000

function postgres(databaseUrl: string, silenceMs: number): Kysely<Tables> {
  const addresses = addressesIn(databaseUrl)
  const pools = addresses.map((it) => poolOf(it, longestWaitMs / addresses.length, silenceMs))
  const [one] = pools
  return new Kysely<Tables>({
    dialect: new PostgresDialect({ pool: one && pools.length === 1 ? one : primaryOf(pools) }),
  })
}

function poolOf(connectionString: string, connectionTimeoutMillis: number, silenceMs: number): pg.Pool {
  const stream = (): Socket => {
    const line = new Socket()
    return line.setTimeout(silenceMs, () => line.destroy())
  }
  const pool = new pg.Pool({ connectionString, max: 8, keepAlive: true, connectionTimeoutMillis, stream })
  // A connection that ends, at rest or at work, is taken out of the pool, and whoever works with it is told. Unheard, it would end the program.
  const heard = (): void => {}
  pool.on('error', heard)
  pool.on('connect', (client) => client.on('error', heard))
  return pool
}

/** Several programs may open a fresh file at once. Who turns its journal on is let alone, and the others are told at once that it is locked. */
async function sqlite(file: string, waitMs: number): Promise<Kysely<Tables>> {
  const until = performance.now() + waitMs
  for (;;)
    try {
      return connected(file)
    } catch (fault) {
      if (!isLocked(fault) || performance.now() >= until) throw fault
      await pause(10 + Math.random() * 40)
    }
}

function connected(file: string): Kysely<Tables> {
  const database = new Database(file)
  // Where another program holds the file this one is told at once, and asks again: SQLite's own waiting would stand in the way of everybody.
  // What is written is on the disk before it is acknowledged.
  for (const pragma of ['busy_timeout = 0', 'journal_mode = WAL', 'synchronous = FULL', 'foreign_keys = ON'])
    database.pragma(pragma)
  // Said at the start where nothing can be written, rather than to everybody who asks.
  database.exec('begin immediate')
  database.exec('rollback')
  keepGoodCopy(database, file)
  const close = (): void => {
    try {
      // So that the one file holds all, and can be copied by itself. Where another program still reads, it is left to that one.
      database.pragma('wal_checkpoint(TRUNCATE)')
      keepGoodCopy(database, file)
    } catch {
      // The disk is full, or cannot be written any more: what was kept stands in the log beside the file, and is read there at the next start.
    } finally {
      database.close()
    }
  }
  return kyselyOver(database, close)
}

/** SQLite with a beginning and an end of transactions that leave nothing behind. */
export function kyselyOver(database: Database.Database, close: () => void): Kysely<Tables> {
  const statement = (run: () => void): SqliteStatement => ({
    reader: false,
    run: () => {
      run()
      return { changes: 0, lastInsertRowid: 0 }
    },
    all: () => [],
    iterate: () => [][Symbol.iterator](),
  })
  const own: Readonly<Record<string, SqliteStatement>> = {
    // The right to write is asked for here, where giving up leaves nothing behind. A statement that gave up half way would stand in the way of every later commit.
    begin: statement(() => database.exec('begin immediate')),
    // Where the disk is full SQLite has rolled back by itself, and what is wrong must not be hidden behind that.
    rollback: statement(() => {
      if (database.inTransaction) database.exec('rollback')
    }),
  }
  const prepare = (text: string): SqliteStatement => own[text] ?? database.prepare(text)
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database: { prepare, close } }) })
}

/** What is wrong with the file, for whoever starts the server. Nothing is done to it. */
function inItsFile(file: string, fault: unknown): unknown {
  const cause = fault instanceof Unavailable ? fault.cause : fault
  if (isDamaged(cause))
    return new Error(
      `${file}, where your talks are kept, is damaged. I have left it as it is. ${inPlaceOfDamaged(file)}`,
      { cause },
    )
  if (isLocked(cause))
    return new Error(
      `${file}, where your talks are kept, is locked by another program. I have left it as it is. Close what has it open and start again, or set PLUMBPOST_DATA to another folder.`,
      { cause },
    )
  const why = (cause as Error).message
  if (isFull(cause))
    return new Error(
      `${file}, where your talks are kept, cannot be written: the disk is full (${why}). Make room and start again, or set PLUMBPOST_DATA to a folder on another disk.`,
      { cause },
    )
  if (isReadOnly(cause))
    return new Error(
      `${file}, where your talks are kept, cannot be written (${why}). Give this account the right to write there, or set PLUMBPOST_DATA to another folder.`,
      { cause },
    )
  return fault
}
