// This file is about backing up in the terminal: every talk of the store that the settings name, into one new file.
import { existsSync } from 'node:fs'
import { readSettings } from '../settings.ts'
import { writeBackup } from '../store/backup.ts'
import { openStore, talksFileIn } from '../store/open.ts'
import { typed } from './typed.ts'
import { endsAs } from './ending.ts'

async function main(args: readonly string[]): Promise<number> {
  const [file] = args
  if (!file || args.length !== 1) {
    process.stderr.write(`Name one new file.\n  ${typed('backup')} FILE\n`)
    return 2
  }
  const where = readSettings(process.env).store
  if ('dataFolder' in where && !existsSync(talksFileIn(where.dataFolder))) {
    process.stderr.write(
      `There are no talks in “${where.dataFolder}”. Set PLUMBPOST_DATA to the folder they are kept in, or DATABASE_URL to their database.\n`,
    )
    return 2
  }
  const store = await openStore(where)
  try {
    const { conversations, turns } = await writeBackup(store, file, new Date())
    const talks = conversations === 1 ? '1 talk' : `${conversations} talks`
    process.stdout.write(
      `${talks} with ${turns === 1 ? '1 turn' : `${turns} turns`} ${conversations === 1 ? 'is' : 'are'} in “${file}”.\n`,
    )
    return 0
  } catch (fault) {
    const { code } = fault as NodeJS.ErrnoException
    if (code === 'EEXIST')
      process.stderr.write(`“${file}” is there already, and I write over nothing. Name a new file.\n`)
    else if (code === 'ENOSPC') process.stderr.write(`“${file}” could not be written: the disk is full.\n`)
    else if (code === 'ENOENT' || code === 'ENOTDIR')
      process.stderr.write(`“${file}” could not be written: there is no such folder.\n`)
    else if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS')
      process.stderr.write(`“${file}” could not be written: this account may not write there.\n`)
    else throw fault
    return 1
  } finally {
    await store.close()
  }
}

endsAs(main)
