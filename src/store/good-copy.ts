// This file is about the last good copy of the file of talks: made beside it when it is closed, and before it is used again where that was not done.
import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  futimesSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs'
import type Database from 'libsql'

const goodCopyOf = (file: string): string => file.replace(/\.sqlite$/, '.last-good.sqlite')

/** A larger one would keep a start or a stop waiting; `backup` is for those. */
const largest = 256 * 1024 * 1024

/**
 * Copies the file as it stands, table by table: what is damaged cannot be copied, so the copy before it stays. Nothing is done when nothing was written
 * since. Never throws: who starts or stops goes on without it.
 */
export function keepGoodCopy(database: Database.Database, file: string): void {
  const copy = goodCopyOf(file)
  const beside = `${copy}.${process.pid}`
  try {
    const changed = Math.max(changedAt(file), changedAt(`${file}-wal`))
    // The copy has the time of what it was made of: whatever the clock did since, another time is another state.
    if (Math.abs(changed - changedAt(copy)) < 1 || statSync(file).size > largest) return
    const { tables } = database.prepare('select count(*) as tables from sqlite_master').get() as { tables: number }
    if (tables === 0) return
    rmSync(beside, { force: true })
    database.prepare('vacuum into ?').run(beside)
    const written = openSync(beside, 'r+')
    futimesSync(written, changed / 1000, changed / 1000)
    fsyncSync(written)
    closeSync(written)
    renameSync(beside, copy)
  } catch {
    rmSync(beside, { force: true })
  }
}

const changedAt = (path: string): number => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0

/** What to do about a damaged file, with the day of the copy that there is. */
export function inPlaceOfDamaged(file: string): string {
  const copy = goodCopyOf(file)
  if (!existsSync(copy))
    return 'Put your last good copy in its place, or set PLUMBPOST_DATA to another folder and begin anew there; keep the damaged file, since some of it may still be saved.'
  const day = statSync(copy).mtime.toISOString().slice(0, 16).replace('T', ' ')
  return `There is a good copy of ${day} (UTC): ${copy}. To go on with it, and keep the damaged file beside it: npm run --silent restore -- --last-good. Or set PLUMBPOST_DATA to another folder and begin anew there.`
}

/** Puts the last good copy in the file's place, and the file aside under the name that is returned. Throws where there is no copy. */
export function putGoodCopyBack(file: string, now: Date): string {
  const copy = goodCopyOf(file)
  if (!existsSync(copy))
    throw new Error(
      `There is no good copy of ${file}. Restore a backup into another folder: PLUMBPOST_DATA=another-folder npm run --silent restore -- FILE`,
    )
  const aside = file.replace(/\.sqlite$/, `.damaged-${now.toISOString().replace(/[:.]/g, '-')}.sqlite`)
  // What was written last, and is not in the file yet, belongs to it.
  for (const ending of ['', '-wal', '-shm'])
    if (existsSync(`${file}${ending}`)) renameSync(`${file}${ending}`, `${aside}${ending}`)
  copyFileSync(copy, `${file}.new`)
  renameSync(`${file}.new`, file)
  return aside
}
