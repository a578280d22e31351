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

/** Does the work; again when it was turned back, telling each time. What the database cannot help is thrown as Unavailable. */
export async function inSpite<T>(work: () => Promise<T>, again: () => void): Promise<T> {
  for (let attempt = 1; ; attempt++)
    try {
      return await work()
    } catch (fault) {
      if (!turnedBack.test(codeOf(fault)) || attempt >= mostAttempts) throw inWords(fault)
      again()
      // Not all at the same moment again.
      await pause(Math.random() * Math.min(2 ** attempt * 5, 500))
    }
}

const codeOf = (fault: unknown): string => String((fault as { code?: unknown }).code ?? '')

function inWords(fault: unknown): unknown {
  const code = codeOf(fault)
  if (away.test(code) || awayInWords.test((fault as Error).message))
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
  if (isDamaged(fault))
    return new Unavailable(
      'database-damaged',
      'The file that keeps your talks is damaged, so this cannot be read or kept. Whoever runs this server should stop it, and put the last good copy in its place.',
      fault,
    )
  return fault
}

/** SQLite's “busy”, “locked”, “corrupt” and “not a database” (sqlite.org/rescode.html). */
export const isLocked = (fault: unknown): boolean => /^SQLITE_(BUSY|LOCKED)/.test(codeOf(fault))
export const isDamaged = (fault: unknown): boolean => /^SQLITE_(CORRUPT|NOTADB)/.test(codeOf(fault))
