// This file is about the backup of all talks: one file of JSON lines, the same for every store, read and written talk by talk.
// First line: what it is and the version of its rows. Then who has left; then each conversation, followed by its turns. Last line: how many there are, and the checksum of all before.
import { createHash, type Hash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { open, rename, rm } from 'node:fs/promises'
import { z } from 'zod'
import { version } from '../../engine/index.ts'
import type { LeftRow } from './leaving.ts'
import type { Store } from './store.ts'
import type { ConversationRow, Put, TurnRow, WholeTalk } from './whole-talks.ts'

/** The version of the rows. It goes up when a column or a table is added; files of earlier versions stay readable. */
const rowsVersion = 2
const longestLine = 256 * 1024 * 1024

const conversationRow: z.ZodType<ConversationRow> = z.strictObject({
  id: z.string(),
  title: z.string(),
  created: z.string(),
  changed: z.string(),
  owner: z.string(),
  shared: z.string().nullable(),
})
const json = z.string().refine((it) => {
  try {
    return JSON.parse(it) !== undefined
  } catch {
    return false
  }
})
const turnRow: z.ZodType<TurnRow> = z.strictObject({
  conversation: z.string(),
  n: z.int().min(0),
  turn: z.int().min(0).nullable(),
  key: z.string().nullable(),
  at: z.string(),
  said: z.string(),
  answer: json,
  job: json,
  events: json,
  tokens: z.int().min(0).nullable(),
})
const leftRow: z.ZodType<LeftRow> = z.strictObject({ owner: z.string(), at: z.string() })
const first = z.object({ backup: z.literal('plumbpost talks'), rows: z.int().min(1), by: z.string(), made: z.string() })
const end = z.object({ conversations: z.int(), turns: z.int(), sha256: z.string() })
const line = z.union([
  z.strictObject({ conversation: conversationRow }),
  z.strictObject({ turn: turnRow }),
  z.strictObject({ left: leftRow }),
  z.strictObject({ end }),
])

/** A file that cannot be restored. The message says why, and what to do. */
export class BadBackup extends Error {}

export interface Counted {
  readonly conversations: number
  readonly turns: number
}

/** Writes every talk into a new file, which only its owner may read. It has its name once it is whole and on the disk. Throws when there is such a file. */
export async function writeBackup(store: Store, path: string, made: Date): Promise<Counted> {
  await (await open(path, 'wx', 0o600)).close()
  const beside = `${path}.partial`
  try {
    const file = await open(beside, 'w', 0o600)
    const count = { conversations: 0, turns: 0 }
    try {
      const hash = createHash('sha256')
      const put = async (it: object): Promise<void> => {
        const text = `${JSON.stringify(it)}\n`
        hash.update(text)
        await file.appendFile(text)
      }
      await put({ backup: 'plumbpost talks', rows: rowsVersion, by: version, made: made.toISOString() })
      for (const left of await store.takeLeft()) await put({ left })
      for await (const { conversation, turns } of store.takeTalks()) {
        await put({ conversation })
        for (const turn of turns) await put({ turn })
        count.conversations++
        count.turns += turns.length
      }
      await file.appendFile(`${JSON.stringify({ end: { ...count, sha256: hash.digest('hex') } })}\n`)
      await file.sync()
    } finally {
      await file.close()
    }
    await rename(beside, path)
    return count
  } catch (fault) {
    await rm(beside, { force: true })
    await rm(path, { force: true })
    throw fault
  }
}

/**
 * Reads the file to its end first, and restores nothing when it is not whole (BadBackup). Then puts each talk in and tells what came of it.
 * Cut short, it can be done again from the start.
 */
export async function restoreBackup(
  store: Store,
  path: string,
  tell: (id: string, put: Put) => void,
): Promise<Counted> {
  const count = { conversations: 0, turns: 0 }
  for await (const it of read(path)) {
    if ('left' in it) continue
    count.conversations++
    count.turns += it.turns.length
  }
  for await (const it of read(path))
    if ('left' in it) await store.putLeft(it.left)
    else tell(it.conversation.id, await store.putTalk(it))
  return count
}

/** Who has left, and the talks of the file. Throws BadBackup at the first thing wrong with it, at the latest at its end. */
async function* read(path: string): AsyncGenerator<WholeTalk | { readonly left: LeftRow }> {
  const bad = (why: string): BadBackup => new BadBackup(`“${path}” ${why}`)
  const hash = createHash('sha256')
  const count = { conversations: 0, turns: 0 }
  let talk: { conversation: ConversationRow; turns: TurnRow[] } | undefined
  let isBegun = false
  let isEnded = false
  for await (const { text, whole } of linesOf(path, hash, () => isTooLong(path))) {
    if (isEnded) throw bad('has something after its last line. It was changed since it was made: take another copy.')
    if (!isBegun) {
      const begun = first.safeParse(parsed(text))
      if (!begun.success) throw bad('is not a backup of Plumbpost: its first line does not say so. Name another file.')
      if (begun.data.rows > rowsVersion)
        throw bad(
          `was made by a newer Plumbpost (${begun.data.by}, rows of version ${begun.data.rows}); this one (${version}) reads versions up to ${rowsVersion}. Restore it with that one.`,
        )
      isBegun = true
      continue
    }
    const row = whole ? line.safeParse(parsed(text)) : undefined
    if (!row?.success) {
      if (!whole) break
      throw bad(`has a line that cannot be read, after ${count.conversations} talks. Take another copy.`)
    }
    if ('end' in row.data) {
      if (talk) yield talk
      const it = row.data.end
      if (it.sha256 !== hash.copy().digest('hex'))
        throw bad('was changed since it was made: its checksum is another. Take another copy.')
      if (it.conversations !== count.conversations || it.turns !== count.turns)
        throw bad('does not hold as many talks and turns as its last line says. Take another copy.')
      isEnded = true
    } else if ('left' in row.data) yield row.data
    else if ('conversation' in row.data) {
      if (talk) yield talk
      talk = { conversation: row.data.conversation, turns: [] }
      count.conversations++
    } else {
      const { turn } = row.data
      if (talk?.conversation.id !== turn.conversation || turn.n !== talk.turns.length)
        throw bad(`has a turn out of its place, after ${count.conversations} talks. Take another copy.`)
      talk.turns.push(turn)
      count.turns++
    }
  }
  if (!isBegun) throw bad('is empty. Name another file.')
  if (!isEnded) throw bad(`is torn: it breaks off after ${count.conversations} talks. Take another copy.`)
}

const isTooLong = (path: string): BadBackup =>
  new BadBackup(
    `“${path}” is not a backup of Plumbpost: it has a line that is longer than any turn. Name another file.`,
  )

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Line by line, by the bytes. A line goes into the checksum once the next one is asked for, so that the last one can hold that of all before. */
async function* linesOf(
  path: string,
  hash: Hash,
  tooLong: () => Error,
): AsyncGenerator<{ readonly text: string; readonly whole: boolean }> {
  let parts: Buffer[] = []
  let length = 0
  for await (const chunk of createReadStream(path, { highWaterMark: 1 << 20 }) as AsyncIterable<Buffer>) {
    let from = 0
    for (let at = chunk.indexOf(10); at >= 0; at = chunk.indexOf(10, from)) {
      const bytes = Buffer.concat([...parts, chunk.subarray(from, at + 1)])
      parts = []
      length = 0
      from = at + 1
      yield { text: bytes.toString('utf8', 0, bytes.length - 1), whole: true }
      hash.update(bytes)
    }
    const rest = chunk.subarray(from)
    length += rest.length
    if (length > longestLine) throw tooLong()
    parts.push(rest)
  }
  if (length > 0) yield { text: Buffer.concat(parts).toString('utf8'), whole: false }
}
