// This file is about faults of the database: which are tried again, and how the others are said.
import { setTimeout as pause } from 'node:timers/promises'
import { Unavailable } from './store.ts'

/** Two wrote at once and this one was turned back whole: serialization failure and deadlock (PostgreSQL manual, “Error Codes”). */
const turnedBack = /^(40001|40P01)$/
/** Connection lost, server stopping or starting, no room for one more, standing by for another (same place), and what the network says. */
const away =
  /^(08\w{3}|57P0[123]|53300|25006|ECONN(REFUSED|RESET|ABORTED)|EPIPE|ETIMEDOUT|ENOTFOUND|EAI_AGAIN|E(HOST|NET)UNREACH)$/
/** Faults of the driver's own, which have no code. */
const awayInWords =
  /^(Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error|Client was closed)/

const mostAttempts = 10

export interface Patience {
  /** How long a file is waited for that another program holds, in ms. */
  readonly busyMs: number
  /** How long a database is waited for that cannot be reached, in ms. Only for work that may be done twice. */
  readonly awayMs: number
}

/**
 * Does the work; again when it was turned back, or as long as patience lasts. Tells of each time but those of waiting for a file.
 * What the database cannot help is thrown as Unavailable.
 */
export async function inSpite<T>(work: () => Promise<T>, again: () => void, { busyMs, awayMs }: Patience): Promise<T> {
  // Patience begins with the first fault, however long the work took until then; by the steady clock, since the one on the wall may be put back.
  let since: number | undefined
  for (let attempt = 1; ; attempt++)
    try {
      return await work()
    } catch (fault) {
      since ??= performance.now()
      const waited = performance.now() - since
      const isToldAgain = turnedBack.test(codeOf(fault)) ? attempt < mostAttempts : isAway(fault) && waited < awayMs
      if (!isToldAgain && !(isLocked(fault) && waited < busyMs)) throw inWords(fault)
      if (isToldAgain) again()
      // Not all at the same moment again.
      await pause(Math.random() * (isLocked(fault) ? 30 : Math.min(2 ** attempt * 5, 500)))
    }
}

const isAway = (fault: unknown): boolean => away.test(codeOf(fault)) || awayInWords.test((fault as Error).message)
const codeOf = (fault: unknown): string => String((fault as { code?: unknown }).code ?? '')

function inWords(fault: unknown): unknown {
  const code = codeOf(fault)
  if (isAway(fault))
    return new Unavailable(
      'database-away',
      'The database that keeps your talks cannot be reached just now. What was answered before is safe there. Try again in a moment.',
      fault,
    )
  if (turnedBack.test(code) || isLocked(fault))
    return new Unavailable(
      'database-busy',
      'The database that keeps your talks is too busy just now. What was answered before is safe there. Try again in a moment.',
      fault,
    )
  if (isFull(fault))
    return new Unavailable(
      'database-full',
      'There is no room left where your talks are kept, so this was not kept. What was answered before is safe there. Whoever runs this server should make room.',
      fault,
    )
  if (isReadOnly(fault))
    return new Unavailable(
      'database-read-only',
      'Nothing can be written where your talks are kept, so this was not kept. What was answered before is safe there. Whoever runs this server should look at its folder.',
      fault,
    )
  if (isDamaged(fault))
    return new Unavailable(
      'database-damaged',
      'The file that keeps your talks is damaged, so this cannot be read or kept. Whoever runs this server should stop it and start it again: it then says what to do.',
      fault,
    )
  return fault
}

/** SQLite's “busy”, “locked”, “corrupt” and “not a database” (sqlite.org/rescode.html). */
export const isLocked = (fault: unknown): boolean => /^SQLITE_(BUSY|LOCKED)/.test(codeOf(fault))
export const isDamaged = (fault: unknown): boolean => /^SQLITE_(CORRUPT|NOTADB)/.test(codeOf(fault))
/** “full” of SQLite, “disk full” of PostgreSQL, and what the system says. */
export const isFull = (fault: unknown): boolean => /^(SQLITE_FULL|53100|ENOSPC|EDQUOT)$/.test(codeOf(fault))
/** “readonly”, “cannot open” and a failed write of SQLite, and what the system says of folders. */
export const isReadOnly = (fault: unknown): boolean =>
  /^(SQLITE_(READONLY|CANTOPEN|IOERR|PERM)|EACCES|EPERM|EROFS|ENOTDIR|EEXIST|EISDIR)/.test(codeOf(fault)) ||
  /^ConnectionFailed\("Unable to open/.test((fault as Error).message)
