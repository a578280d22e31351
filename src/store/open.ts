// This file is about opening the store that the settings name.
import { randomUUID } from 'node:crypto'
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { Kysely, PostgresDialect, SqliteDialect } from 'kysely'
import Database from 'libsql'
import pg from 'pg'
import { type Made, openSqlStore } from './sql-store.ts'
import type { Store } from './store.ts'
import type { Tables } from './tables.ts'

export type Where = { readonly dataFolder: string } | { readonly databaseUrl: string } | { readonly memory: true }

const made: Made = { clock: () => new Date(), newId: randomUUID }

export async function openStore(where: Where, make: Made = made): Promise<Store> {
  if ('databaseUrl' in where) return openSqlStore(postgres(where.databaseUrl), make)
  if ('memory' in where) return openSqlStore(sqlite(':memory:'), make)
  mkdirSync(where.dataFolder, { recursive: true })
  return openSqlStore(sqlite(join(where.dataFolder, 'conversations.sqlite')), make)
}

/** After so long without a free connection the question is turned away, so that none waits for ever. */
const longestWaitMs = 10_000

function postgres(connectionString: string): Kysely<Tables> {
  const pool = new pg.Pool({ connectionString, max: 8, keepAlive: true, connectionTimeoutMillis: longestWaitMs })
  // A connection that ends, at rest or at work, is taken out of the pool, and whoever works with it is told. Unheard, it would end the program.
  const heard = (): void => {}
  pool.on('error', heard)
  pool.on('connect', (client) => client.on('error', heard))
  return new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
}

function sqlite(file: string): Kysely<Tables> {
  const database = new Database(file)
  // Written to the disk before it is acknowledged; a second process waits its turn.
  for (const pragma of ['journal_mode = WAL', 'synchronous = FULL', 'busy_timeout = 10000', 'foreign_keys = ON'])
    database.pragma(pragma)
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database }) })
}
