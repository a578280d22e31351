// This file is about the one query layer, over SQLite and PostgreSQL alike.
import type { Kysely, Selectable } from 'kysely'
import type { Answer } from '../answer.ts'
import { Conflict, type Conversation, type KeptTurn, type Store } from './store.ts'
import { makeTables, type Tables } from './tables.ts'

export interface Made {
  readonly clock: () => Date
  readonly newId: () => string
}

export async function openSqlStore(db: Kysely<Tables>, { clock, newId }: Made): Promise<Store> {
  await makeTables(db)
  const now = (): string => clock().toISOString()
  const countTurns = async (id: string): Promise<number> =>
    Number(
      (
        await db
          .selectFrom('turns')
          .select((it) => it.fn.countAll().as('many'))
          .where('conversation', '=', id)
          .executeTakeFirstOrThrow()
      ).many,
    )

  return {
    async create() {
      const row = { id: newId(), title: '', created: now(), changed: now() }
      await db.insertInto('conversations').values(row).execute()
      return { ...row, turns: 0 }
    },

    async list() {
      const rows = await db
        .selectFrom('conversations')
        .selectAll()
        .select((it) =>
          it
            .selectFrom('turns')
            .select((t) => t.fn.countAll().as('many'))
            .whereRef('turns.conversation', '=', 'conversations.id')
            .as('turns'),
        )
        .orderBy('changed', 'desc')
        .orderBy('id')
        .execute()
      return rows.map((row) => ({
        id: row.id,
        title: row.title,
        created: row.created,
        changed: row.changed,
        turns: Number(row.turns),
      }))
    },

    async read(id) {
      const row = await db.selectFrom('conversations').selectAll().where('id', '=', id).executeTakeFirst()
      if (!row) return null
      const turns = await db.selectFrom('turns').selectAll().where('conversation', '=', id).orderBy('n').execute()
      const conversation: Conversation = { ...row, turns: turns.length }
      return { conversation, turns: turns.map(keptTurn) }
    },

    async turnByKey(id, key) {
      const row = await db
        .selectFrom('turns')
        .selectAll()
        .where('conversation', '=', id)
        .where('key', '=', key)
        .executeTakeFirst()
      return row ? keptTurn(row) : null
    },

    async append(id, turn) {
      const at = now()
      try {
        await db.transaction().execute(async (tx) => {
          await tx
            .insertInto('turns')
            .values({
              conversation: id,
              n: turn.n,
              key: turn.key,
              at,
              said: turn.said,
              answer: JSON.stringify(turn.answer),
              job: JSON.stringify(turn.job),
              events: JSON.stringify(turn.events),
            })
            .execute()
          const title = turn.n === 0 ? { title: titleOf(turn.said) } : {}
          await tx
            .updateTable('conversations')
            .set({ changed: at, ...title })
            .where('id', '=', id)
            .execute()
        })
      } catch (fault) {
        if (isTaken(fault))
          throw new Conflict(`turn ${turn.n} of this conversation is written already (it has ${await countTurns(id)})`)
        throw fault
      }
      return { ...turn, at }
    },

    async remove(id) {
      return db.transaction().execute(async (tx) => {
        await tx.deleteFrom('turns').where('conversation', '=', id).execute()
        const { numDeletedRows } = await tx.deleteFrom('conversations').where('id', '=', id).executeTakeFirst()
        return numDeletedRows > 0n
      })
    },

    close: () => db.destroy(),
  }
}

function keptTurn(row: Selectable<Tables['turns']>): KeptTurn {
  return {
    n: row.n,
    key: row.key,
    at: row.at,
    said: row.said,
    answer: JSON.parse(row.answer) as Answer,
    job: JSON.parse(row.job),
    events: JSON.parse(row.events) as KeptTurn['events'],
  }
}

/** Unique or primary key taken: SQLite says so by name, PostgreSQL by code 23505. */
const isTaken = (fault: unknown): boolean => {
  const { code, message } = fault as { code?: string; message?: string }
  return (
    code === '23505' ||
    /SQLITE_CONSTRAINT_(UNIQUE|PRIMARYKEY)|UNIQUE constraint failed/.test(`${code ?? ''} ${message ?? ''}`)
  )
}

/** The first message, on one line, cut at a word. */
export function titleOf(said: string): string {
  const line = said.replace(/\s+/g, ' ').trim()
  if (line.length <= 80) return line
  const cut = line.slice(0, 80)
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), 40))} …`
}
