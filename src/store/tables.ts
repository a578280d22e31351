// This file is about the tables: the same for SQLite and PostgreSQL.
import { setTimeout as pause } from 'node:timers/promises'
import { type ColumnDefinitionBuilder, type Generated, type Kysely, sql } from 'kysely'

export interface Tables {
  conversations: {
    id: string
    title: string
    created: string
    changed: string
    /** Whose it is, as a hash of what they show. Empty where nobody is asked. */
    owner: Generated<string>
    /** A hash of the link by which it may be read. */
    shared: string | null
  }
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
    /** What a model was asked and answered for it. Not set where none was. */
    tokens: number | null
  }
  /** Owners who have left: their token is good no more, wherever a copy of it is. */
  left_owners: {
    owner: string
    at: string
  }
  /** Turns in the making that take their time. See `makings.ts`. */
  makings: {
    conversation: string
    key: string
    beat: number
    /** 1 when its maker is to halt it. */
    halt: number
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
    .addColumn('owner', 'text', ofNobody)
    .addColumn('shared', 'text')
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
    .addColumn('tokens', 'integer')
    .addPrimaryKeyConstraint('turns_in_order', ['conversation', 'n'])
    .addUniqueConstraint('turns_once_a_key', ['conversation', 'key'])
    .execute()
  await db.schema
    .createTable('makings')
    .ifNotExists()
    .addColumn('conversation', 'text', (it) => it.notNull().references('conversations.id').onDelete('cascade'))
    .addColumn('key', 'text', (it) => it.notNull())
    .addColumn('beat', 'integer', (it) => it.notNull())
    .addColumn('halt', 'integer', (it) => it.notNull())
    .addColumn('events', 'text', (it) => it.notNull())
    .addPrimaryKeyConstraint('makings_once_a_key', ['conversation', 'key'])
    .execute()
  await db.schema
    .createTable('left_owners')
    .ifNotExists()
    .addColumn('owner', 'text', (it) => it.primaryKey())
    .addColumn('at', 'text', (it) => it.notNull())
    .execute()
  // Tables that are older than a column get it.
  await addMissing(db, 'turns', 'turn', 'integer')
  await addMissing(db, 'turns', 'tokens', 'integer')
  await addMissing(db, 'conversations', 'owner', 'text', ofNobody)
  await addMissing(db, 'conversations', 'shared', 'text')
  await db.schema
    .createIndex('conversations_of_owner')
    .ifNotExists()
    .on('conversations')
    .columns(['owner', 'changed'])
    .execute()
  // Of the turns that a model read, and of no others.
  await db.schema
    .createIndex('turns_with_tokens')
    .ifNotExists()
    .on('turns')
    .columns(['at', 'tokens'])
    .where('tokens', 'is not', null)
    .execute()
}

const ofNobody = (it: ColumnDefinitionBuilder): ColumnDefinitionBuilder => it.notNull().defaultTo('')

async function addMissing(
  db: Kysely<Tables>,
  table: keyof Tables,
  column: string,
  type: 'text' | 'integer',
  as: (it: ColumnDefinitionBuilder) => ColumnDefinitionBuilder = (it) => it,
): Promise<void> {
  // Named with its table: SQLite takes a bare name that is no column for a text.
  const isThere = (): Promise<boolean> =>
    sql`select ${sql.ref(`${table}.${column}`)} from ${sql.table(table)} limit 0`.execute(db).then(
      () => true,
      () => false,
    )
  if (await isThere()) return
  try {
    await db.schema.alterTable(table).addColumn(column, type, as).execute()
  } catch (fault) {
    // Another process may have been quicker.
    if (!(await isThere())) throw fault
  }
}
