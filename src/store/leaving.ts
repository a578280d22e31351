// This file is about owners who have left: from then on nobody comes in by their token, and no link leads to their talks.
import type { Kysely, Selectable } from 'kysely'
import type { Tables } from './tables.ts'

export type LeftRow = Selectable<Tables['left_owners']>

/** Safe to do again where it broke off: the links go first, while there is still somebody who can. */
export async function leave(db: Kysely<Tables>, left: LeftRow): Promise<void> {
  const shared = await db
    .selectFrom('conversations')
    .select('id')
    .where('owner', '=', left.owner)
    .where('shared', 'is not', null)
    .execute()
  // One at a time: no transaction goes over several conversations.
  for (const { id } of shared)
    await db
      .transaction()
      .execute((tx) => tx.updateTable('conversations').set({ shared: null }).where('id', '=', id).execute())
  await putLeft(db, left)
}

export const putLeft = (db: Kysely<Tables>, left: LeftRow): Promise<void> =>
  db.transaction().execute(async (tx) => {
    await tx
      .insertInto('left_owners')
      .values(left)
      .onConflict((it) => it.column('owner').doNothing())
      .execute()
  })

export async function hasLeft(db: Kysely<Tables>, owner: string): Promise<boolean> {
  const row = await db.selectFrom('left_owners').select('owner').where('owner', '=', owner).executeTakeFirst()
  return row !== undefined
}

export const takeLeft = (db: Kysely<Tables>): Promise<LeftRow[]> =>
  db.selectFrom('left_owners').selectAll().orderBy('owner').execute()
