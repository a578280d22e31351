// This file is about the one query layer, over SQLite and PostgreSQL alike.
import { type ExpressionBuilder, type Kysely, type Selectable, sql } from 'kysely'
import type { Answer } from '../answer.ts'
import { inSpite, type Patience } from './faults.ts'
import { Conflict, type KeptTurn, type Store } from './store.ts'
import { announce, announced, askToHalt, withdraw } from './makings.ts'
import { hasLeft, leave, putLeft, takeLeft } from './leaving.ts'
import { makeTables, type Tables } from './tables.ts'
import { asItStands } from './talk.ts'
import { putTalk, takeTalks } from './whole-talks.ts'

export interface Made {
  readonly clock: () => Date
  readonly newId: () => string
}

/** `tablesAtOnce`: missing tables are made in one transaction, where the database leaves nothing behind of one that it cannot do. */
export async function openSqlStore(
  db: Kysely<Tables>,
  { clock, newId }: Made,
  { tablesAtOnce, ...patience }: Patience & { readonly tablesAtOnce: boolean },
): Promise<Store> {
  let retries = 0
  const run = <T>(work: () => Promise<T>, awayMs = 0): Promise<T> =>
    inSpite(work, () => void retries++, { ...patience, awayMs })
  // A connection that broke at rest may be handed out before that is noticed. Reading may be done twice; nobody waits long for it where the database is away.
  const look = <T>(work: () => Promise<T>): Promise<T> => run(work, patience.awayMs / 20)
  await run(() => (tablesAtOnce ? db.transaction().execute(makeTables) : makeTables(db)))
  const now = (): string => clock().toISOString()
  const byKey = async (id: string, key: string): Promise<KeptTurn | null> => {
    const row = await db
      .selectFrom('turns')
      .selectAll()
      .where('conversation', '=', id)
      .where('key', '=', key)
      .executeTakeFirst()
    return row ? keptTurn(row) : null
  }

  return {
    create: (owner = '') =>
      run(async () => {
        const row = { id: newId(), title: '', created: now(), changed: now() }
        await db.transaction().execute((tx) =>
          tx
            .insertInto('conversations')
            .values({ ...row, owner })
            .execute(),
        )
        return { ...row, turns: 0 }
      }),

    list: (owner) =>
      look(async () => {
        const rows = await db
          .selectFrom('conversations')
          .select(told)
          .$if(owner !== undefined, (it) => it.where('owner', '=', owner ?? ''))
          .select((it) => turnsOf(it).as('turns'))
          .orderBy('changed', 'desc')
          .orderBy('id')
          .execute()
        return rows.map((row) => ({
          id: row.id,
          title: row.title,
          created: row.created,
          changed: row.changed,
          turns: Number(row.turns ?? 0),
        }))
      }),

    isOf: (id, owner) =>
      look(async () => {
        const row = await db
          .selectFrom('conversations')
          .select('id')
          .where('id', '=', id)
          .where('owner', '=', owner)
          .executeTakeFirst()
        return row !== undefined
      }),

    leave: (owner) => run(() => leave(db, { owner, at: now() })),
    hasLeft: (owner) => look(() => hasLeft(db, owner)),

    share: (id, link) =>
      run(async () => {
        const { numUpdatedRows } = await db
          .transaction()
          .execute((tx) =>
            tx.updateTable('conversations').set({ shared: link }).where('id', '=', id).executeTakeFirst(),
          )
        return numUpdatedRows > 0n
      }),

    sharedBy: (id) =>
      look(async () => {
        const row = await db.selectFrom('conversations').select('shared').where('id', '=', id).executeTakeFirst()
        return row?.shared ?? null
      }),

    tokens: (of) =>
      look(async () => {
        const { sum } = await db
          .selectFrom('turns')
          .select((it) => it.fn.sum<number | string | null>('tokens').as('sum'))
          .where('tokens', 'is not', null)
          .$if('id' in of, (it) => it.where('conversation', '=', 'id' in of ? of.id : ''))
          .$if('since' in of, (it) =>
            'since' in of ? it.where('at', '>=', of.since.toISOString()).where('at', '<', of.before.toISOString()) : it,
          )
          .executeTakeFirstOrThrow()
        return Number(sum ?? 0)
      }),

    read: (id) =>
      look(async () => {
        const row = await db.selectFrom('conversations').select(told).where('id', '=', id).executeTakeFirst()
        if (!row) return null
        const written = await db.selectFrom('turns').selectAll().where('conversation', '=', id).orderBy('n').execute()
        const turns = asItStands(written.map(keptTurn))
        return { conversation: { ...row, turns: turns.length }, turns, written: written.length }
      }),

    turnsIn: (id) =>
      look(async () => {
        const row = await db
          .selectFrom('conversations')
          .where('id', '=', id)
          .select((it) => turnsOf(it).as('turns'))
          .executeTakeFirst()
        return row ? Number(row.turns ?? 0) : null
      }),

    turnByKey: (id, key) => look(() => byKey(id, key)),

    append: (id, turn, written) => {
      let isSecond = false
      return run(async () => {
        const at = now()
        try {
          await db.transaction().execute(async (tx) => {
            await tx
              .insertInto('turns')
              .values({
                conversation: id,
                n: written,
                turn: turn.n,
                key: turn.key,
                at,
                said: turn.said,
                answer: JSON.stringify(turn.answer),
                job: JSON.stringify(turn.job),
                events: JSON.stringify(turn.events),
                tokens: turn.tokens ?? null,
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
          if (isOfNone(fault)) throw new Conflict('this conversation was deleted meanwhile')
          if (!isTaken(fault)) {
            isSecond = true
            throw fault
          }
          // Where the connection broke at COMMIT, what has taken its place is this turn itself.
          const own = isSecond && turn.key !== null ? await byKey(id, turn.key) : null
          if (own) return own
          throw new Conflict(`this conversation has more than ${written} turns by now, or one under this key`)
        }
        return { ...turn, at }
      }, patience.awayMs)
    },

    remove: (id) =>
      run(async () => {
        return db.transaction().execute(async (tx) => {
          await tx.deleteFrom('turns').where('conversation', '=', id).execute()
          const { numDeletedRows } = await tx.deleteFrom('conversations').where('id', '=', id).executeTakeFirst()
          return numDeletedRows > 0n
        })
      }),

    announce: (...said) => run(() => announce(db, ...said)),
    announced: (id) => look(() => announced(db, id)),
    askToHalt: (id, key) => run(() => askToHalt(db, id, key)),
    withdraw: (id, key) => run(() => withdraw(db, id, key)),

    takeTalks: () => takeTalks(db, look),
    putTalk: (talk) => run(() => putTalk(db, talk)),
    takeLeft: () => look(() => takeLeft(db)),
    putLeft: (left) => run(() => putLeft(db, left)),

    retries: () => retries,
    close: () => db.destroy(),
  }
}

/** What is told of a conversation: never whose it is. */
const told = ['id', 'title', 'created', 'changed'] as const

/** How many a conversation has. The talk ends with the turn that was written last. */
const turnsOf = (it: ExpressionBuilder<Tables, 'conversations'>) =>
  it
    .selectFrom('turns')
    .select(sql<number>`coalesce(turns.turn, turns.n) + 1`.as('many'))
    .whereRef('turns.conversation', '=', 'conversations.id')
    .orderBy('turns.n', 'desc')
    .limit(1)

function keptTurn(row: Selectable<Tables['turns']>): KeptTurn {
  return {
    n: row.turn ?? row.n,
    key: row.key,
    at: row.at,
    said: row.said,
    answer: JSON.parse(row.answer) as Answer,
    job: JSON.parse(row.job),
    events: JSON.parse(row.events) as KeptTurn['events'],
    ...(row.tokens === null ? {} : { tokens: Number(row.tokens) }),
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

/** Its conversation is not there: foreign key violated. */
const isOfNone = (fault: unknown): boolean =>
  /^(23503|SQLITE_CONSTRAINT_FOREIGNKEY)$/.test((fault as { code?: string }).code ?? '')

/** The first message, on one line, cut at a word. */
export function titleOf(said: string): string {
  const line = said.replace(/\s+/g, ' ').trim()
  if (line.length <= 80) return line
  const cut = line.slice(0, 80)
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), 40))} …`
}
