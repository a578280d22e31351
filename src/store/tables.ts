// This file is about the tables: the same for SQLite and PostgreSQL.
import { setTimeout as pause } from 'node:timers/promises'
import type { Kysely } from 'kysely'

export interface Tables {
  conversations: { id: string; title: string; created: string; changed: string }
  turns: {
    conversation: string
    /** The order in which they were written, from 0. None is ever changed. */
    n: number
    /** Its number in the talk: one asked anew has that of the turn it replaces. Not set in rows older than this column: there it is `n`. */
    turn: number | null
    key: string | null
    at: string
    said: string
    answer: string
    job: string
    events: string
  }
}

const mostAttempts = 20

/** Makes what is not there yet. Safe to run at every start, and by many processes at once: one that another was quicker than looks again. */
export async function makeTables(db: Kysely<Tables>): Promise<void> {
  for (let attempt = 1; ; attempt++)
    try {
      return await makeMissing(db)
    } catch (fault) {
      if (attempt >= mostAttempts || !isOfAnother(fault)) throw fault
      await pause(Math.random() * 50)
    }
}

/**
 * “If not exists” looks before it writes, and PostgreSQL then finds the name taken in its own tables: unique violation, duplicate table, column or object
 * (PostgreSQL manual, “Error Codes”), or a row of the catalogue that another was changing.
 */
function isOfAnother(fault: unknown): boolean {
  const { code, message } = fault as { code?: string; message?: string }
  return /^(23505|42P07|42701|42710)$/.test(code ?? '') || /tuple concurrently (updated|deleted)/.test(message ?? '')
}

async function makeMissing(db: Kysely<Tables>): Promise<void> {
  await db.schema
    .createTable('conversations')
    .ifNotExists()
    .addColumn('id', 'text', (it) => it.primaryKey())
    .addColumn('title', 'text', (it) => it.notNull())
    .addColumn('created', 'text', (it) => it.notNull())
    .addColumn('changed', 'text', (it) => it.notNull())
    .execute()
  await db.schema
    .createTable('turns')
    .ifNotExists()
    .addColumn('conversation', 'text', (it) => it.notNull().references('conversations.id').onDelete('cascade'))
    .addColumn('n', 'integer', (it) => it.notNull())
    .addColumn('turn', 'integer')
    .addColumn('key', 'text')
    .addColumn('at', 'text', (it) => it.notNull())
    .addColumn('said', 'text', (it) => it.notNull())
    .addColumn('answer', 'text', (it) => it.notNull())
    .addColumn('job', 'text', (it) => it.notNull())
    .addColumn('events', 'text', (it) => it.notNull())
    .addPrimaryKeyConstraint('turns_in_order', ['conversation', 'n'])
    .addUniqueConstraint('turns_once_a_key', ['conversation', 'key'])
    .execute()
  if (await isMissingTurn(db)) await addTurn(db)
}

// Named with its table: SQLite takes a bare name that is no column for a text.
const isMissingTurn = (db: Kysely<Tables>): Promise<boolean> =>
  db
    .selectFrom('turns')
    .select('turns.turn')
    .limit(0)
    .execute()
    .then(
      () => false,
      () => true,
    )

async function addTurn(db: Kysely<Tables>): Promise<void> {
  try {
    await db.schema.alterTable('turns').addColumn('turn', 'integer').execute()
  } catch (fault) {
    // Another process may have been quicker.
    if (await isMissingTurn(db)) throw fault
  }
}
