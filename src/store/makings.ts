// This file is about turns in the making, as the servers on one database tell each other of them. What stands here is needed only until the turn is kept.
import type { Kysely } from 'kysely'
import type { TurnEvent } from '../turn-event.ts'
import type { Tables } from './tables.ts'

export interface InMaking {
  readonly key: string
  /** Another number each time its maker is heard of. */
  readonly beat: number
  /** Its pieces so far. */
  readonly events: readonly TurnEvent[]
}

export const announce = (
  db: Kysely<Tables>,
  conversation: string,
  key: string,
  beat: number,
  events: readonly TurnEvent[] | null,
): Promise<'go on' | 'halt'> =>
  db.transaction().execute(async (tx) => {
    const pieces = events && { events: JSON.stringify(events) }
    await tx
      .insertInto('makings')
      .values({ conversation, key, beat, halt: 0, events: '[]', ...pieces })
      .onConflict((it) => it.columns(['conversation', 'key']).doUpdateSet({ beat, ...pieces }))
      .execute()
    const { halt } = await tx
      .selectFrom('makings')
      .select('halt')
      .where('conversation', '=', conversation)
      .where('key', '=', key)
      .executeTakeFirstOrThrow()
    return Number(halt) === 1 ? 'halt' : 'go on'
  })

export async function announced(db: Kysely<Tables>, conversation: string): Promise<InMaking[]> {
  const rows = await db.selectFrom('makings').selectAll().where('conversation', '=', conversation).execute()
  return rows.map(({ key, beat, events }) => ({ key, beat: Number(beat), events: JSON.parse(events) as TurnEvent[] }))
}

export const askToHalt = (db: Kysely<Tables>, conversation: string, key: string): Promise<void> =>
  db.transaction().execute(async (tx) => {
    await tx
      .updateTable('makings')
      .set({ halt: 1 })
      .where('conversation', '=', conversation)
      .where('key', '=', key)
      .execute()
  })

export const withdraw = (db: Kysely<Tables>, conversation: string, key: string): Promise<void> =>
  db.transaction().execute(async (tx) => {
    await tx.deleteFrom('makings').where('conversation', '=', conversation).where('key', '=', key).execute()
  })
