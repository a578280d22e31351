// This file is about whole talks, row by row as they are stored: taken out for a backup, and put in from one.
import type { Kysely, Selectable } from 'kysely'
import type { Tables } from './tables.ts'

export type ConversationRow = Selectable<Tables['conversations']>
export type TurnRow = Selectable<Tables['turns']>

/** One talk as the tables hold it. Its turns are in the order in which they were written, those set aside among them. */
export interface WholeTalk {
  readonly conversation: ConversationRow
  readonly turns: readonly TurnRow[]
}

/**
 * What putting a talk in came to. `added`: it was not there. `continued`: what was there is its beginning, and the rest was added.
 * `there`: all of it was there already. `differs`: another talk stands under its name, and was left as it is.
 */
export type Put = 'added' | 'continued' | 'there' | 'differs'

const atOnce = 200

/** Every talk, one after the other, in the order of their names. Each is whole as it was at the moment it was read. */
export async function* takeTalks(db: Kysely<Tables>, run: <T>(work: () => Promise<T>) => Promise<T>) {
  let last = ''
  for (;;) {
    const page = await run(() =>
      db.selectFrom('conversations').select('id').where('id', '>', last).orderBy('id').limit(atOnce).execute(),
    )
    for (const { id } of page) {
      const talk = await run(() => takeTalk(db, id))
      if (talk) yield talk
    }
    if (page.length < atOnce) return
    last = page.at(-1)?.id ?? last
  }
}

/** Turns are only ever added, so as many as there were when the talk was looked up are the talk of that moment. Fewer: it was deleted meanwhile. */
async function takeTalk(db: Kysely<Tables>, id: string): Promise<WholeTalk | undefined> {
  const found = await db
    .selectFrom('conversations')
    .selectAll()
    .select((it) =>
      it
        .selectFrom('turns')
        .select((turns) => turns.fn.countAll().as('many'))
        .whereRef('turns.conversation', '=', 'conversations.id')
        .as('written'),
    )
    .where('id', '=', id)
    .executeTakeFirst()
  if (!found) return undefined
  const { written, ...conversation } = found
  const turns = await db
    .selectFrom('turns')
    .selectAll()
    .where('conversation', '=', id)
    .where('n', '<', Number(written))
    .orderBy('n')
    .execute()
  return turns.length === Number(written) ? { conversation, turns } : undefined
}

/** Puts a talk in, whole or not at all. Nothing that is there is written over. */
export const putTalk = (db: Kysely<Tables>, { conversation, turns }: WholeTalk): Promise<Put> =>
  db.transaction().execute(async (tx) => {
    const there = await tx.selectFrom('conversations').select('id').where('id', '=', conversation.id).executeTakeFirst()
    const kept = await tx
      .selectFrom('turns')
      .selectAll()
      .where('conversation', '=', conversation.id)
      .orderBy('n')
      .execute()
    if (kept.some((it, i) => turns[i] !== undefined && !isSame(it, turns[i]))) return 'differs'
    if (there && kept.length >= turns.length) return 'there'
    if (there) await tx.updateTable('conversations').set(conversation).where('id', '=', conversation.id).execute()
    else await tx.insertInto('conversations').values(conversation).execute()
    for (const it of turns.slice(kept.length)) await tx.insertInto('turns').values(it).execute()
    return there ? 'continued' : 'added'
  })

const isSame = (a: TurnRow, b: TurnRow): boolean =>
  (Object.keys({ ...a, ...b }) as (keyof TurnRow)[]).every((it) => (a[it] ?? null) === (b[it] ?? null))
