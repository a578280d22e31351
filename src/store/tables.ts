// This file is about the tables: the same for SQLite and PostgreSQL.
import type { Kysely } from 'kysely'

export interface Tables {
  conversations: { id: string; title: string; created: string; changed: string }
  turns: {
    conversation: string
    n: number
    key: string | null
    at: string
    said: string
    answer: string
    job: string
    events: string
  }
}

/** Makes what is not there yet. Safe to run at every start, and by two processes at once. */
export async function makeTables(db: Kysely<Tables>): Promise<void> {
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
    .addColumn('key', 'text')
    .addColumn('at', 'text', (it) => it.notNull())
    .addColumn('said', 'text', (it) => it.notNull())
    .addColumn('answer', 'text', (it) => it.notNull())
    .addColumn('job', 'text', (it) => it.notNull())
    .addColumn('events', 'text', (it) => it.notNull())
    .addPrimaryKeyConstraint('turns_in_order', ['conversation', 'n'])
    .addUniqueConstraint('turns_once_a_key', ['conversation', 'key'])
    .execute()
}
