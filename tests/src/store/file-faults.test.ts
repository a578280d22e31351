// Faults of the disk under the file of talks: full, not to be written, damaged. Each is said, with what to do, and nothing that was kept is lost.
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { spawnSync } from 'node:child_process'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Database from 'libsql'
import { afterAll, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { kyselyOver, openStore } from '../../../src/store/open.ts'
import { openSqlStore } from '../../../src/store/sql-store.ts'
import type { Store } from '../../../src/store/store.ts'
import { talkingTo } from '../http/talking.ts'
import { turnToKill } from './turn-to-kill.ts'

const folders: string[] = []
const folder = (): string => {
  const it = mkdtempSync(join(tmpdir(), 'plumbpost-file-'))
  folders.push(it)
  return it
}
afterAll(() => {
  for (const it of folders) rmSync(it, { recursive: true, force: true })
})
const fileIn = (dataFolder: string): string => join(dataFolder, 'conversations.sqlite')

async function talkIn(dataFolder: string, turns: number): Promise<string> {
  const store = await openStore({ dataFolder })
  const { id } = await store.create()
  for (let n = 0; n < turns; n++) await store.append(id, turnToKill(id, n), n)
  await store.close()
  return id
}
/** The first page is written over: nothing can be opened. */
function damage(file: string): Buffer {
  const bad = readFileSync(file).fill('x', 0, 4096)
  writeFileSync(file, bad)
  return bad
}

describe('while it runs', () => {
  it.each<[string, string, string, number]>([
    ['a full disk', 'max_page_count = 1', 'database-full', 507],
    ['a disk that became read-only', 'query_only = 1', 'database-read-only', 503],
  ])('%s is said, what is kept can be read, and it goes on once that is mended', async (_, fault, code, status) => {
    const database = new Database(fileIn(folder()))
    const store = await openSqlStore(
      kyselyOver(database, () => database.close()),
      { clock: () => new Date(), newId: () => 'c' },
      { busyMs: 0, awayMs: 0, tablesAtOnce: true },
    )
    const it = talkingTo(createAssistant(offlineReader), store)
    const id = await it.start()
    const ask = (n: number) =>
      it.post(`/api/conversations/${id}/turns`, { text: `How many bags? ${'word '.repeat(2000)}${n}` })
    await ask(0)
    // SQLite gives these codes itself: no file larger than it is, and no write at all.
    database.pragma(fault)
    const refused = await ask(1)
    expect([refused.status, refused.headers.get('retry-after')]).toEqual([status, '5'])
    expect(await refused.json()).toMatchObject({ error: { code, message: expect.stringMatching(/not kept.*is safe/) } })
    expect(await it.kept(id)).toHaveLength(1)
    expect((await it.app.request('/healthz')).status).toBe(200)
    database.pragma(fault.startsWith('max') ? 'max_page_count = 4294967294' : 'query_only = 0')
    expect((await ask(1)).status).toBe(200)
    expect(await it.kept(id)).toHaveLength(2)
    await store.close()
  })
})

describe('at the start', () => {
  it('a folder that is made is for the account it runs under alone', async () => {
    const dataFolder = join(folder(), 'new')
    await talkIn(dataFolder, 1)
    // Read, write and enter for its owner, nothing for the group and the others.
    expect(statSync(dataFolder).mode & 0o777).toBe(0o700)
  })

  it('a folder or a file that cannot be written is said, with the setting to look at', async () => {
    const under = folder()
    writeFileSync(join(under, 'file'), '')
    mkdirSync(fileIn(under))
    for (const dataFolder of [join(under, 'file'), join(under, 'file', 'in it'), under])
      await expect(openStore({ dataFolder })).rejects.toThrow(
        /cannot be written \(.+\)\. Give this account.*PLUMBPOST_DATA/,
      )
  })

  it('one that is damaged is left as it is; the last good copy is named, and one command puts it in its place', async () => {
    const dataFolder = folder()
    const id = await talkIn(dataFolder, 3)
    const bad = damage(fileIn(dataFolder))
    const good = join(dataFolder, 'conversations.last-good.sqlite')
    await expect(openStore({ dataFolder })).rejects.toThrow(
      new RegExp(`is damaged.*good copy of \\d{4}-\\d\\d-\\d\\d.*${good}.*npm run --silent restore -- --last-good`),
    )
    expect(readFileSync(fileIn(dataFolder)).equals(bad)).toBe(true)
    const restore = () =>
      spawnSync(
        process.execPath,
        ['--import', 'tsx', fileURLToPath(new URL('../../../src/cli/restore.ts', import.meta.url)), '--last-good'],
        { encoding: 'utf8', env: { PATH: process.env.PATH, PLUMBPOST_DATA: dataFolder } },
      )
    expect(restore()).toMatchObject({ status: 0, stdout: expect.stringMatching(/is the last good copy now.*is kept/) })
    const kept = readdirSync(dataFolder).find((it) => it.includes('.damaged-')) as string
    expect(readFileSync(join(dataFolder, kept)).equals(bad)).toBe(true)
    const store = await openStore({ dataFolder })
    expect((await store.read(id))?.written).toBe(3)
    await store.close()
    expect(restore()).toMatchObject({ status: 1, stderr: expect.stringMatching(/is not damaged/) })
  }, 60_000)
})

describe('the last good copy', () => {
  const copyOf = async (dataFolder: string): Promise<Store> => {
    const elsewhere = folder()
    copyFileSync(join(dataFolder, 'conversations.last-good.sqlite'), fileIn(elsewhere))
    return openStore({ dataFolder: elsewhere })
  }

  it('holds what was kept when the file was closed, and after a kill what was kept before the next start', async () => {
    const dataFolder = folder()
    const id = await talkIn(dataFolder, 2)
    const first = await copyOf(dataFolder)
    expect((await first.read(id))?.written).toBe(2)
    await first.close()
    // As a kill leaves it: the last turn is in the log only, and nothing was closed.
    const killed = await openStore({ dataFolder })
    await killed.append(id, turnToKill(id, 2), 2)
    const left = folder()
    for (const it of readdirSync(dataFolder)) copyFileSync(join(dataFolder, it), join(left, it))
    utimesSync(join(left, 'conversations.last-good.sqlite'), 0, 0)
    await killed.close()
    const next = await openStore({ dataFolder: left })
    const second = await copyOf(left)
    expect((await second.read(id))?.written).toBe(3)
    await second.close()
    await next.close()
  })

  it('is made anew also where the clock was put back since the last one', async () => {
    const dataFolder = folder()
    const id = await talkIn(dataFolder, 2)
    const ahead = Date.now() / 1000 + 3600
    for (const it of readdirSync(dataFolder)) utimesSync(join(dataFolder, it), ahead, ahead)
    const store = await openStore({ dataFolder })
    await store.append(id, turnToKill(id, 2), 2)
    await store.close()
    const copy = await copyOf(dataFolder)
    expect((await copy.read(id))?.written).toBe(3)
    await copy.close()
  })

  it('is not replaced by one of a file that is damaged further in', async () => {
    const dataFolder = folder()
    const id = await talkIn(dataFolder, 20)
    const file = fileIn(dataFolder)
    writeFileSync(file, readFileSync(file).fill('x', 20 * 4096, 60 * 4096))
    const store = await openStore({ dataFolder })
    await store.create()
    await store.close()
    const copy = await copyOf(dataFolder)
    expect((await copy.read(id))?.written).toBe(20)
    await copy.close()
    expect(readdirSync(dataFolder).filter((it) => it.includes('last-good'))).toEqual(['conversations.last-good.sqlite'])
  })

  it('is not made of nothing', async () => {
    const dataFolder = folder()
    const store = await openStore({ dataFolder })
    expect(existsSync(join(dataFolder, 'conversations.last-good.sqlite'))).toBe(false)
    await store.close()
  })
})
