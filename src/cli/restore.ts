// This file is about restoring in the terminal: the talks of a backup, put into the store that the settings name. What is there is never written over.
import { existsSync } from 'node:fs'
import { readSettings } from '../settings.ts'
import { BadBackup, restoreBackup } from '../store/backup.ts'
import { isDamaged } from '../store/faults.ts'
import { putGoodCopyBack } from '../store/good-copy.ts'
import { openStore, talksFileIn } from '../store/open.ts'
import type { Put } from '../store/whole-talks.ts'
import { typed } from './typed.ts'
import { endsAs } from './ending.ts'

async function main(args: readonly string[]): Promise<number> {
  const [file] = args
  if (!file || args.length !== 1) {
    process.stderr.write(
      `Name one backup.\n  ${typed('restore')} FILE\n  ${typed('restore')} --last-good   in place of a damaged file of talks\n`,
    )
    return 2
  }
  if (file === '--last-good') return lastGood()
  if (!existsSync(file)) {
    process.stderr.write(`There is no file “${file}”.\n`)
    return 2
  }
  const store = await openStore(readSettings(process.env).store)
  const came: Record<Put, string[]> = { added: [], continued: [], there: [], differs: [] }
  try {
    await restoreBackup(store, file, (id, put) => came[put].push(id))
  } catch (fault) {
    if (!(fault instanceof BadBackup)) throw fault
    process.stderr.write(`${fault.message} Nothing was restored.\n`)
    return 1
  } finally {
    await store.close()
  }
  const { added, continued, there, differs } = came
  process.stdout.write(
    `Restored: ${added.length === 1 ? '1 talk' : `${added.length} talks`}. Here in part, and now whole: ${continued.length}. Here already: ${there.length}.\n`,
  )
  if (differs.length === 0) return 0
  process.stderr.write(
    `Left as they are, since they are not those of “${file}”: ${differs.length}.\n${differs.map((it) => `  ${it}\n`).join('')}To see those of the file, restore it into an empty folder: PLUMBPOST_DATA=another-folder ${typed('restore')} ${file}\n`,
  )
  return 1
}

/** Only in place of one that cannot be opened: a file that can be is left alone. */
async function lastGood(): Promise<number> {
  const where = readSettings(process.env).store
  if ('databaseUrl' in where) {
    process.stderr.write('DATABASE_URL names a database, and of that no copy is made here. Restore a backup.\n')
    return 2
  }
  const damage = await openStore(where).then(
    (store) => store.close(),
    (fault: Error) => fault,
  )
  const file = talksFileIn(where.dataFolder)
  if (!(damage instanceof Error) || !isDamaged(damage.cause)) {
    process.stderr.write(damage ? `${damage.message}\n` : `${file} is not damaged. I have left it as it is.\n`)
    return 1
  }
  const aside = putGoodCopyBack(file, new Date())
  process.stdout.write(`${file} is the last good copy now. The damaged one is kept: ${aside}\n`)
  return 0
}

endsAs(main)
