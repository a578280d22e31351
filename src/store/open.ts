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
  if ('databaseUrl' in where)
    return openSqlStore(
      new Kysely<Tables>({
        dialect: new PostgresDialect({ pool: new pg.Pool({ connectionString: where.databaseUrl, max: 8 }) }),
      }),
      make,
    )
  if ('memory' in where) return openSqlStore(sqlite(':memory:'), make)
  mkdirSync(where.dataFolder, { recursive: true })
  return openSqlStore(sqlite(join(where.dataFolder, 'conversations.sqlite')), make)
}

function sqlite(file: string): Kysely<Tables> {
  const database = new Database(file)
  // Written to the disk before it is acknowledged; a second process waits its turn.
  for (const pragma of ['journal_mode = WAL', 'synchronous = FULL', 'busy_timeout = 10000', 'foreign_keys = ON'])
    database.pragma(pragma)
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database }) })
}
