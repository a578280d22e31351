// A backup: every talk in one file, put back whole or not at all, and never over what is there.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Answer } from '../../../src/answer.ts'
import { restoreBackup, writeBackup } from '../../../src/store/backup.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'

const folder = mkdtempSync(join(tmpdir(), 'plumbpost-backup-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
let files = 0
const newFile = (): string => join(folder, `talks-${files++}.jsonl`)

const at = new Date(Date.UTC(2026, 4, 1))
let made = 0
const newStore = (): Promise<Store> =>
  openStore({ memory: true }, { clock: () => at, newId: () => `talk ${String(made++).padStart(4, '0')}` })
let from: Store
let to: Store
beforeEach(async () => {
  from = await newStore()
  to = await newStore()
})
afterEach(async () => {
  await from.close()
  await to.close()
})

/** Line separators that JSON leaves as they are, quotes, an umlaut and a fraction: none of them may end a line or get lost. */
const said = 'how deep?\u2028“½ in” – \\n "für" \u2029\r\n'
const ask = (store: Store, id: string, n: number, written: number, more = '') =>
  store.append(
    id,
    {
      n,
      key: written === 0 ? null : `key ${written}`,
      said: `${said}${written}${more}`,
      answer: { turn: n, reply: said } as unknown as Answer,
      job: { decisions: [n] },
      events: [{ event: 'answer', data: { n } }],
    },
    written,
  )
async function talkOf(store: Store, turns: number): Promise<string> {
  const { id } = await store.create()
  for (let n = 0; n < turns; n++) await ask(store, id, n, n)
  return id
}
async function backupOf(store: Store): Promise<string> {
  const file = newFile()
  await writeBackup(store, file, at)
  return file
}
async function restored(file: string, store = to): Promise<Record<string, string>> {
  const came: Record<string, string> = {}
  await restoreBackup(store, file, (id, put) => {
    came[id] = put
  })
  return came
}

describe('a backup', () => {
  it('brings back every talk as it was, turns that were set aside among them, and makes the same file again', async () => {
    const [first, second, empty] = [await talkOf(from, 3), await talkOf(from, 1), await talkOf(from, 0)]
    await ask(from, first, 1, 3, ' anew')
    const file = await backupOf(from)
    expect(await restored(file)).toEqual({ [first]: 'added', [second]: 'added', [empty]: 'added' })
    for (const id of [first, second, empty]) expect(await to.read(id)).toEqual(await from.read(id))
    expect(await to.list()).toEqual(await from.list())
    expect((await to.read(first))?.turns[1]?.aside.flat()).toHaveLength(2)
    expect(readFileSync(await backupOf(to), 'utf8')).toBe(readFileSync(file, 'utf8'))
  })

  it('brings back who has left, so that a copied token stays of no use; a file from before anybody could leave is read on', async () => {
    const id = await talkOf(from, 1)
    for (const it of ['ben', 'ann']) await from.leave(it)
    const file = await backupOf(from)
    expect(await restored(file)).toEqual({ [id]: 'added' })
    expect(await to.takeLeft()).toEqual(['ann', 'ben'].map((owner) => ({ owner, at: at.toISOString() })))
    expect(readFileSync(await backupOf(to), 'utf8')).toBe(readFileSync(file, 'utf8'))
    const older = newFile()
    const lines = readFileSync(await backupOf(from), 'utf8')
      .replace('"rows":2', '"rows":1')
      .split('\n')
      .filter((it) => it !== '' && !it.startsWith('{"left"') && !it.startsWith('{"end"'))
      .map((it) => `${it}\n`)
      .join('')
    const sha256 = createHash('sha256').update(lines).digest('hex')
    writeFileSync(older, `${lines}${JSON.stringify({ end: { conversations: 1, turns: 1, sha256 } })}\n`)
    expect(await restored(older)).toEqual({ [id]: 'there' })
  })

  it('holds more talks than are looked up at once', async () => {
    for (let i = 0; i < 401; i++) await talkOf(from, 0)
    expect(Object.keys(await restored(await backupOf(from)))).toHaveLength(401)
  })

  it('of no talks is a whole file too', async () => expect(await restored(await backupOf(from))).toEqual({}))

  it('takes a talk that grows meanwhile as it was at one moment, and leaves out one that is deleted meanwhile', async () => {
    const [grows, goes] = [await talkOf(from, 2), await talkOf(from, 2)]
    let looked = 0
    const file = newFile()
    await writeBackup(
      {
        ...from,
        async *takeTalks() {
          for await (const talk of from.takeTalks()) {
            if (looked++ === 0) {
              await ask(from, grows, 2, 2)
              await from.remove(goes)
            }
            yield talk
          }
        },
      },
      file,
      at,
    )
    expect(await restored(file)).toEqual({ [grows]: 'added' })
    expect((await to.read(grows))?.written).toBe(2)
  })

  it('can be read by its owner only, and never takes the place of a file', async () => {
    const file = await backupOf(from)
    // Group and others: nothing.
    if (process.platform !== 'win32') expect(statSync(file).mode & 0o077).toBe(0)
    writeFileSync(file, 'mine')
    await expect(writeBackup(from, file, at)).rejects.toMatchObject({ code: 'EEXIST' })
    expect(readFileSync(file, 'utf8')).toBe('mine')
  })

  it('that fails on the way leaves no file behind', async () => {
    const [id, file] = [await talkOf(from, 1), newFile()]
    const failing: Store = {
      ...from,
      async *takeTalks() {
        yield* from.takeTalks()
        throw new Error(`cannot read after ${id}`)
      },
    }
    await expect(writeBackup(failing, file, at)).rejects.toThrow('cannot read after')
    expect(readdirSync(folder).filter((it) => file.endsWith(it) || it.endsWith('.partial'))).toEqual([])
  })
})

describe('restoring over talks that are there', () => {
  it('changes nothing of them when they are the same, and nothing when it is done twice', async () => {
    const id = await talkOf(from, 2)
    const file = await backupOf(from)
    expect(await restored(file)).toEqual({ [id]: 'added' })
    expect(await restored(file)).toEqual({ [id]: 'there' })
    expect(await to.read(id)).toEqual(await from.read(id))
  })

  it('leaves one alone that has gone on since, and goes on with one of which only the beginning is there', async () => {
    const id = await talkOf(from, 2)
    const older = await backupOf(from)
    await ask(from, id, 2, 2)
    const newer = await backupOf(from)
    expect(await restored(older, from)).toEqual({ [id]: 'there' })
    expect((await from.read(id))?.written).toBe(3)
    await restored(older)
    expect(await restored(newer)).toEqual({ [id]: 'continued' })
    expect(await to.read(id)).toEqual(await from.read(id))
  })

  it('leaves another talk under the same name as it is, and says so; the others are restored', async () => {
    const [id, other] = [await talkOf(from, 1), await talkOf(from, 1)]
    await restored(await backupOf(from))
    await from.remove(other)
    await ask(from, id, 1, 1)
    await ask(to, id, 1, 1, ' another')
    const third = await talkOf(from, 1)
    const before = await to.read(id)
    expect(await restored(await backupOf(from))).toEqual({ [id]: 'differs', [third]: 'added' })
    expect(await to.read(id)).toEqual(before)
    expect((await to.read(other))?.written).toBe(1)
  })
})

describe('a file that is not whole restores nothing', () => {
  const damaged = async (change: (text: string) => string): Promise<string> => {
    const file = newFile()
    for (let i = 0; i < 3; i++) await talkOf(from, 2)
    writeFileSync(file, change(readFileSync(await backupOf(from), 'utf8')))
    return file
  }
  /** The checksum put right, as somebody would who meant to. */
  const signed = (text: string): string => {
    const lines = text.trimEnd().split('\n')
    const before = `${lines.slice(0, -1).join('\n')}\n`
    const last = JSON.parse(lines.at(-1) as string) as { end: object }
    const sha256 = createHash('sha256').update(before).digest('hex')
    return `${before}${JSON.stringify({ end: { ...last.end, sha256 } })}\n`
  }
  const line = (n: number, change: (text: string) => string) => (text: string) =>
    text
      .split('\n')
      .map((it, i) => (i === n ? change(it) : it))
      .join('\n')

  it.each<[string, (text: string) => string, RegExp]>([
    ['torn in the middle of a line', (it) => it.slice(0, it.length / 2), /is torn: it breaks off after \d talks/],
    ['torn between two lines', (it) => it.slice(0, it.indexOf('\n', it.length / 2) + 1), /is torn/],
    ['without the end of its last line', (it) => it.slice(0, -3), /is torn: it breaks off after 3 talks/],
    [
      'with one letter changed',
      (it) => it.replace('"title":"how deep', '"title":"how weep'),
      /its checksum is another/,
    ],
    ['with a line taken out', (it) => it.replace(/\{"turn"[^\n]*\n/, ''), /has a turn out of its place/],
    ['with another file behind it', (it) => it + it, /has something after its last line/],
    [
      'of a later version',
      line(0, (it) => it.replace('"rows":2', '"rows":3')),
      /made by a newer Plumbpost .*version 3/,
    ],
    ['of something else', () => '{"talks":[]}\n', /is not a backup of Plumbpost/],
    ['of bytes', () => '\0\u0001\ufffd'.repeat(999), /is not a backup of Plumbpost/],
    ['that is empty', () => '', /is empty/],
    [
      'with fewer talks than it says',
      (it) => signed(it.replace('"conversations":3', '"conversations":4')),
      /does not hold as many/,
    ],
    [
      'with a column that there is not',
      (it) => signed(it.replace('{"id":', '{"x\\"; drop table turns; --":1,"id":')),
      /a line that cannot be read/,
    ],
    [
      'with an answer that is no JSON',
      (it) => signed(it.replace('"answer":"{', '"answer":"<')),
      /a line that cannot be read/,
    ],
    [
      'with a turn of another talk',
      (it) => signed(it.replace(/"turn":\{"conversation":"[^"]+"/, '"turn":{"conversation":"x"')),
      /out of its place/,
    ],
  ])('%s', async (_, change, why) => {
    const file = await damaged(change)
    await expect(restored(file)).rejects.toThrow(why)
    expect(await to.list()).toEqual([])
  })
})

describe('on the command line', () => {
  const run = (program: string, dataFolder: string, ...args: string[]) => {
    const it = spawnSync(
      process.execPath,
      ['--import', 'tsx', fileURLToPath(new URL(`../../../src/cli/${program}.ts`, import.meta.url)), ...args],
      { encoding: 'utf8', env: { PATH: process.env.PATH, PLUMBPOST_DATA: dataFolder } },
    )
    return { code: it.status, out: it.stdout, err: it.stderr }
  }

  it('talks go out of one folder and into another; what cannot be done is said, with what to do', async () => {
    const [mine, theirs] = [join(folder, 'mine'), join(folder, 'theirs')]
    const none = run('backup', mine, newFile())
    expect([none.code, none.err]).toEqual([
      2,
      expect.stringMatching(/^There are no talks in “.*mine”\. Set PLUMBPOST_DATA/),
    ])
    expect(existsSync(mine)).toBe(false)
    const store = await openStore({ dataFolder: mine })
    const id = await talkOf(store, 2)
    await store.close()
    const file = newFile()
    expect(run('backup', mine, file)).toEqual({ code: 0, out: `1 talk with 2 turns is in “${file}”.\n`, err: '' })
    expect(run('restore', theirs, file)).toMatchObject({
      code: 0,
      out: expect.stringMatching(/^Restored: 1 talk\. Here in part, and now whole: 0\. Here already: 0\./),
    })
    const there = await openStore({ dataFolder: theirs })
    expect((await there.read(id))?.turns.map((it) => it.said)).toEqual([`${said}0`, `${said}1`])
    await there.close()
    writeFileSync(file, readFileSync(file, 'utf8').slice(0, -9))
    expect(run('restore', theirs, file)).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringMatching(/is torn.*Nothing was restored\.\n$/),
    })
  }, 60_000)
})
