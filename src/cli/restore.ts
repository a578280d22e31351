// This file is about restoring in the terminal: the talks of a backup, put into the store that the settings name. What is there is never written over.
import { existsSync } from 'node:fs'
import { readSettings } from '../settings.ts'
import { BadBackup, restoreBackup } from '../store/backup.ts'
import { openStore } from '../store/open.ts'
import type { Put } from '../store/whole-talks.ts'
import { typed } from './typed.ts'

async function main(args: readonly string[]): Promise<number> {
  const [file] = args
  if (!file || args.length !== 1) {
    process.stderr.write(`Name one backup.\n  ${typed('restore')} FILE\n`)
    return 2
  }
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

main(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code
  },
  (fault: unknown) => {
    process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`)
    process.exitCode = 1
  },
)
