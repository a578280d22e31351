// One suite for every store: what was appended is there, once, in order, whatever happens next.
import { spawn } from 'node:child_process'
import { chmodSync, copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { Answer } from '../../../src/answer.ts'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { restoreBackup, writeBackup } from '../../../src/store/backup.ts'
import { openStore, type Where } from '../../../src/store/open.ts'
import { Conflict, type KeptTurn, type Store, type TalkTurn, Unavailable } from '../../../src/store/store.ts'
import { titleOf } from '../../../src/store/sql-store.ts'
import { postgresServer } from './postgres-server.ts'
import { openRelay } from './relay.ts'

const folders: string[] = []
const folder = (): string => {
  const it = mkdtempSync(join(tmpdir(), 'plumbpost-store-'))
  folders.push(it)
  return it
}
afterAll(() => {
  for (const it of folders) rmSync(it, { recursive: true, force: true })
})

/** PostgreSQL runs as a user of its own, who must be let in. */
const openFolder = (): string => {
  const it = folder()
  chmodSync(it, 0o777)
  return it
}

const turn = (n: number, key: string | null = null): Omit<KeptTurn, 'at'> => ({
  n,
  key,
  said: `question ${n} – ½ “quoted”`,
  answer: { turn: n, reply: `answer ${n}` } as unknown as Answer,
  job: { decisions: [n] },
  events: [{ event: 'answer', data: { n } }],
})

function suite(name: string, where: () => Where): void {
  describe(name, () => {
    let store: Store
    let tick = 0
    beforeEach(async () => {
      store = await openStore(where(), {
        clock: () => new Date(Date.UTC(2026, 0, 1, 0, 0, tick++)),
        newId: () => `c${tick}`,
      })
    })
    afterEach(() => store.close())

    it('keeps turns in order, as they were', async () => {
      const { id } = await store.create()
      await store.append(id, turn(0), 0)
      await store.append(id, turn(1, 'key'), 1)
      const found = await store.read(id)
      expect(found?.turns.map(({ at: _, aside: __, ...rest }) => rest)).toEqual([turn(0), turn(1, 'key')])
      expect(found?.conversation).toMatchObject({ id, title: 'question 0 – ½ “quoted”', turns: 2 })
    })

    it('a number or a key is taken once', async () => {
      const { id } = await store.create()
      await store.append(id, turn(0, 'key'), 0)
      await expect(store.append(id, turn(0), 0)).rejects.toBeInstanceOf(Conflict)
      await expect(store.append(id, turn(1, 'key'), 1)).rejects.toBeInstanceOf(Conflict)
      await store.append(id, turn(1), 1)
      await store.append(id, turn(2), 2)
      expect((await store.turnByKey(id, 'key'))?.n).toBe(0)
      expect(await store.turnByKey(id, 'other')).toBeNull()
    })

    it('of two who write the same turn at once, one wins', async () => {
      const { id } = await store.create()
      const tried = await Promise.allSettled([store.append(id, turn(0, 'a'), 0), store.append(id, turn(0, 'b'), 0)])
      expect(tried.map((it) => it.status).sort()).toEqual(['fulfilled', 'rejected'])
      expect((await store.read(id))?.turns).toHaveLength(1)
    })

    it('a turn in place of another sets that one and those after it aside, and keeps them; each time anew', async () => {
      const { id } = await store.create()
      for (const [written, n] of [0, 1, 2, 1, 2, 2, 0].entries())
        await store.append(id, { ...turn(n, `key ${written}`), said: `said ${written}` }, written)
      const nested = (turns: readonly TalkTurn[]): unknown[] =>
        turns.map(({ n, said, aside }) => [n, said, ...aside.map(nested)])
      const found = await store.read(id)
      expect(nested(found?.turns ?? [])).toEqual([
        [
          0,
          'said 6',
          [
            [0, 'said 0'],
            [
              1,
              'said 3',
              [
                [1, 'said 1'],
                [2, 'said 2'],
              ],
            ],
            [2, 'said 5', [[2, 'said 4']]],
          ],
        ],
      ])
      expect(found).toMatchObject({ written: 7, conversation: { turns: 1, title: 'said 6' } })
      expect(await store.turnsIn(id)).toBe(1)
      expect((await store.list()).find((it) => it.id === id)).toMatchObject({ turns: 1, title: 'said 6' })
      expect((await store.turnByKey(id, 'key 2'))?.said).toBe('said 2')
    })

    it('of a turn in place of another and one at the end, written at once, one wins', async () => {
      const { id } = await store.create()
      await store.append(id, turn(0), 0)
      const tried = await Promise.allSettled([store.append(id, turn(0, 'a'), 1), store.append(id, turn(1, 'b'), 1)])
      expect(tried.map((it) => it.status).sort()).toEqual(['fulfilled', 'rejected'])
      expect((await store.read(id))?.written).toBe(2)
    })

    it('lists the newest first, and deletes for good', async () => {
      const first = await store.create()
      const second = await store.create()
      await store.append(first.id, turn(0), 0)
      expect((await store.list()).map((it) => it.id).slice(0, 2)).toEqual([first.id, second.id])
      expect(await store.remove(first.id)).toBe(true)
      expect(await store.remove(first.id)).toBe(false)
      expect(await store.read(first.id)).toBeNull()
      expect(await store.turnByKey(first.id, 'key')).toBeNull()
    })

    it('a conversation is its owner’s, and is told without their name; one of nobody is nobody’s', async () => {
      const [anns, bens, nobodys] = [await store.create('ann'), await store.create('ben'), await store.create()]
      expect((await store.list('ann')).map((it) => it.id)).toEqual([anns.id])
      expect((await store.list()).map((it) => it.id)).toEqual(
        expect.arrayContaining([anns.id, bens.id, nobodys.id].sort()),
      )
      expect([
        await store.isOf(anns.id, 'ann'),
        await store.isOf(anns.id, 'ben'),
        await store.isOf('none', 'ann'),
      ]).toEqual([true, false, false])
      expect(await store.isOf(nobodys.id, 'ann')).toBe(false)
      for (const told of [anns, (await store.list('ann'))[0], (await store.read(anns.id))?.conversation])
        expect(Object.keys(told ?? {}).sort()).toEqual(['changed', 'created', 'id', 'title', 'turns'])
    })

    it('is read by one link at a time, which can be withdrawn; a conversation that is gone has none', async () => {
      const { id } = await store.create()
      expect(await store.sharedBy(id)).toBeNull()
      expect(await store.share(id, 'one')).toBe(true)
      expect(await store.share(id, 'two')).toBe(true)
      expect(await store.sharedBy(id)).toBe('two')
      await store.share(id, null)
      expect(await store.sharedBy(id)).toBeNull()
      await store.share(id, 'three')
      await store.remove(id)
      expect([await store.sharedBy(id), await store.share(id, 'four')]).toEqual([null, false])
    })

    it('who has left has left for good, and no link leads to their talks; they stay, and so do everybody else’s', async () => {
      const [anns, second, bens] = [
        await store.create('ann l'),
        await store.create('ann l'),
        await store.create('ben l'),
      ]
      for (const { id } of [anns, bens]) await store.share(id, `link ${id}`)
      expect(await store.hasLeft('ann l')).toBe(false)
      await store.leave('ann l')
      await store.leave('ann l')
      expect([await store.hasLeft('ann l'), await store.hasLeft('ben l'), await store.hasLeft('')]).toEqual([
        true,
        false,
        false,
      ])
      expect([await store.sharedBy(anns.id), await store.sharedBy(bens.id)]).toEqual([null, `link ${bens.id}`])
      expect((await store.list('ann l')).map((it) => it.id).sort()).toEqual([anns.id, second.id].sort())
      const left = await store.takeLeft()
      expect(left.map((it) => it.owner)).toEqual(['ann l'])
      await store.putLeft({ owner: 'ann l', at: 'another time' })
      await store.putLeft({ owner: 'cal l', at: '2026-01-02' })
      expect(await store.takeLeft()).toEqual([...left, { owner: 'cal l', at: '2026-01-02' }])
    })

    it('what a model was asked is counted: of one conversation, and of all between two moments, turns set aside among them', async () => {
      const { id } = await store.create()
      const start = new Date(Date.UTC(2026, 0, 1, 0, 0, tick))
      await store.append(id, { ...turn(0), tokens: 1200 }, 0)
      await store.append(id, turn(1), 1)
      const later = new Date(Date.UTC(2026, 0, 1, 0, 0, tick))
      await store.append(id, { ...turn(0), tokens: 34 }, 2)
      const other = await store.create()
      await store.append(other.id, { ...turn(0), tokens: 5 }, 0)
      expect(await store.tokens({ id })).toBe(1234)
      const end = new Date(Date.UTC(2027, 0))
      expect(await store.tokens({ since: start, before: end })).toBe(1239)
      expect(await store.tokens({ since: later, before: end })).toBe(39)
      expect(await store.tokens({ since: start, before: later })).toBe(1200)
      expect(await store.tokens({ since: end, before: new Date(Date.UTC(2028, 0)) })).toBe(0)
      expect((await store.read(id))?.turns.map((it) => it.tokens)).toEqual([34])
      expect((await store.read(id))?.turns[0]?.aside[0]?.map((it) => it.tokens)).toEqual([1200, undefined])
    })

    it('counts no turn where none was written', async () => {
      const { id } = await store.create()
      expect((await store.list()).find((it) => it.id === id)?.turns).toBe(0)
      expect(await store.read(id)).toMatchObject({ turns: [], written: 0 })
      expect([await store.turnsIn(id), await store.turnsIn('none')]).toEqual([0, null])
    })

    it('gives its talks away by a backup, and takes them back, as they were', async () => {
      const { id } = await store.create()
      for (const [written, n] of [0, 1, 1].entries()) await store.append(id, turn(n, `key ${written}`), written)
      const before = await store.read(id)
      const [there, back] = [join(folder(), 'there'), join(folder(), 'back')]
      await writeBackup(store, there, new Date(0))
      const other = await openStore({ memory: true })
      await restoreBackup(other, there, () => {})
      expect(await other.read(id)).toEqual(before)
      await writeBackup(other, back, new Date(0))
      expect(readFileSync(back, 'utf8')).toBe(readFileSync(there, 'utf8'))
      await store.remove(id)
      await restoreBackup(store, back, () => {})
      expect(await store.read(id)).toEqual(before)
      await other.close()
    })

    it('answers for what is not there', async () => expect(await store.read("'; drop table turns; --")).toBeNull())
  })
}

suite('SQLite in memory', () => ({ memory: true }))
const file = folder()
suite('SQLite in a file', () => ({ dataFolder: file }))

/** The tables as they were before a turn could be asked anew, with a talk of two turns in them. */
const olderTables = [
  'create table conversations (id text primary key, title text not null, created text not null, changed text not null)',
  `create table turns (conversation text not null references conversations(id) on delete cascade, n integer not null,
     key text, at text not null, said text not null, answer text not null, job text not null, events text not null,
     constraint turns_in_order primary key (conversation, n), constraint turns_once_a_key unique (conversation, key))`,
  `insert into conversations values ('old', 'first', '2025-01-01', '2025-01-01')`,
  ...[0, 1].map(
    (n) => `insert into turns values ('old', ${n}, 'key ${n}', '2025-01-01', 'old ${n}', '{}', '{}', '[]')`,
  ),
]

async function expectGoesOn(where: Where): Promise<void> {
  // Two programs may find the old tables at the same moment.
  const [store, other] = await Promise.all([openStore(where), openStore(where)])
  const said = async (): Promise<unknown> =>
    (await other.read('old'))?.turns.map((it) => [it.n, it.said, it.aside.flat().map((old) => old.said)])
  expect(await said()).toEqual([
    [0, 'old 0', []],
    [1, 'old 1', []],
  ])
  await store.append('old', { ...turn(1), said: 'new 1' }, 2)
  expect(await said()).toEqual([
    [0, 'old 0', []],
    [1, 'new 1', ['old 1']],
  ])
  expect((await store.turnByKey('old', 'key 1'))?.said).toBe('old 1')
  expect((await other.list()).find((it) => it.id === 'old')?.turns).toBe(2)
  await store.close()
  await other.close()
}

describe('a file', () => {
  it('from before a turn could be asked anew is read on, nothing of it lost', async () => {
    const dataFolder = folder()
    const older = new Database(join(dataFolder, 'conversations.sqlite'))
    for (const it of olderTables) older.exec(it)
    older.close()
    await expectGoesOn({ dataFolder })
  })

  it('holds what was appended after it is opened anew', async () => {
    const dataFolder = folder()
    const store = await openStore({ dataFolder })
    const { id } = await store.create()
    await store.append(id, turn(0), 0)
    await store.close()
    const again = await openStore({ dataFolder })
    expect((await again.read(id))?.turns).toHaveLength(1)
    await again.close()
  })

  it('two programs write to one file at once, and nothing of either is lost', async () => {
    const dataFolder = folder()
    const store = await openStore({ dataFolder })
    const { id } = await store.create()
    const other = program(
      dataFolder,
      "for (let n = 0; n < 40; n++) await store.append(id, { n, key: null, said: 'theirs', answer: {}, job: {}, events: [] }, n)",
    )
    for (let n = 0; n < 40; n++) await store.append(id, turn(n), n)
    const theirs = await other.said
    await other.ended
    expect((await store.read(id))?.turns).toHaveLength(40)
    expect((await store.read(theirs))?.turns).toHaveLength(40)
    await expect(store.append(theirs, turn(39), 39)).rejects.toBeInstanceOf(Conflict)
    await store.close()
  })

  it('six programs open a fresh folder at once, and each can write', async () => {
    const dataFolder = folder()
    const programs = Array.from({ length: 6 }, () => program(dataFolder, ''))
    const ids = await Promise.all(programs.map((it) => it.said))
    await Promise.all(programs.map((it) => it.ended))
    const store = await openStore({ dataFolder })
    expect(new Set((await store.list()).map((it) => it.id))).toEqual(new Set(ids))
    await store.close()
  }, 60_000)

  it('holds everything by itself when it is closed, so that it can be copied', async () => {
    const dataFolder = folder()
    const store = await openStore({ dataFolder })
    const { id } = await store.create()
    await store.append(id, turn(0), 0)
    await store.close()
    const copied = folder()
    copyFileSync(join(dataFolder, 'conversations.sqlite'), join(copied, 'conversations.sqlite'))
    const copy = await openStore({ dataFolder: copied })
    expect((await copy.read(id))?.turns).toHaveLength(1)
    await copy.close()
  })

  it('that is damaged is said to be, and left as it was', async () => {
    const dataFolder = folder()
    const store = await openStore({ dataFolder })
    const { id } = await store.create()
    for (let n = 0; n < 20; n++) await store.append(id, { ...turn(n), said: 'word '.repeat(2000) }, n)
    await store.close()
    const path = join(dataFolder, 'conversations.sqlite')
    const good = readFileSync(path)
    const bad = Buffer.concat([Buffer.alloc(4096, 'x'), good.subarray(4096)])
    writeFileSync(path, bad)
    await expect(openStore({ dataFolder })).rejects.toThrow(
      /conversations\.sqlite, where your talks are kept, is damaged.*PLUMBPOST_DATA/,
    )
    expect(readFileSync(path).equals(bad)).toBe(true)
  })

  it('that is damaged further in is read as far as it can be, and what cannot be is said', async () => {
    const dataFolder = folder()
    const store = await openStore({ dataFolder })
    const { id } = await store.create()
    for (let n = 0; n < 20; n++) await store.append(id, { ...turn(n), said: 'word '.repeat(2000) }, n)
    await store.close()
    const path = join(dataFolder, 'conversations.sqlite')
    const good = readFileSync(path)
    // Written over from the sixth page on, and cut off there.
    for (const bad of [Buffer.from(good).fill('x', 5 * 4096), good.subarray(0, 5 * 4096)]) {
      writeFileSync(path, bad)
      const again = await openStore({ dataFolder })
      await expect(again.read(id)).rejects.toMatchObject({ code: 'database-damaged' })
      await again.close()
      expect(readFileSync(path).equals(bad)).toBe(true)
    }
  })

  it('that another program has locked is said to be busy, and is written to once it is free', async () => {
    const dataFolder = folder()
    const where = { dataFolder, longestWaitMs: 50 }
    const store = await openStore(where)
    const { id } = await store.create()
    const other = new Database(join(dataFolder, 'conversations.sqlite'))
    other.exec('begin exclusive')
    await expect(store.append(id, turn(0), 0)).rejects.toMatchObject({ code: 'database-busy' })
    await expect(store.create()).rejects.toMatchObject({ code: 'database-busy' })
    await expect(store.remove(id)).rejects.toMatchObject({ code: 'database-busy' })
    other.exec('rollback')
    await store.append(id, turn(0), 0)
    await store.close()
    other.close()
  })

  it('that another program has locked is waited for, and meanwhile everybody else is answered', async () => {
    const dataFolder = folder()
    const store = await openStore({ dataFolder })
    const { id } = await store.create()
    await store.append(id, turn(0), 0)
    const other = new Database(join(dataFolder, 'conversations.sqlite'))
    other.exec('begin immediate')
    let isKept = false
    const waiting = store.append(id, turn(1), 1).then(() => {
      isKept = true
    })
    for (let i = 0; i < 20; i++) {
      await new Promise((resolve) => setTimeout(resolve, 1))
      expect((await store.read(id))?.written).toBe(1)
    }
    expect(isKept).toBe(false)
    other.exec('rollback')
    await waiting
    expect((await store.read(id))?.written).toBe(2)
    await store.close()
    other.close()
  })

  it('that another program has for itself alone is said to be locked at the start', async () => {
    const dataFolder = folder()
    const other = new Database(join(dataFolder, 'conversations.sqlite'))
    for (const it of ['locking_mode = exclusive', 'journal_mode = WAL']) other.pragma(it)
    other.exec('create table theirs (x)')
    await expect(openStore({ dataFolder, longestWaitMs: 50 })).rejects.toThrow(
      /conversations\.sqlite.* is locked by another program.*PLUMBPOST_DATA/,
    )
    other.close()
  })

  it('an answer acknowledged is kept when the program is killed the moment after', async () => {
    const dataFolder = folder()
    const killed = program(
      dataFolder,
      "await store.append(id, { n: 0, key: null, said: 'kept', answer: {}, job: {}, events: [] }, 0); setInterval(() => {}, 1000)",
    )
    const id = await killed.said
    killed.child.kill('SIGKILL')
    await killed.ended
    const store = await openStore({ dataFolder })
    expect((await store.read(id))?.turns.map((it) => it.said)).toEqual(['kept'])
    await store.close()
  })
})

/** A program of its own with the store open on that folder; it says its conversation's name when the work is done. */
function program(dataFolder: string, work: string) {
  const script = `import { openStore } from ${JSON.stringify(new URL('../../../src/store/open.ts', import.meta.url).href)}
    const store = await openStore({ dataFolder: ${JSON.stringify(dataFolder)} })
    const { id } = await store.create()
    ${work}
    process.stdout.write('kept ' + id + '\\n')`
  const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const ended = new Promise<void>((resolve) => child.on('exit', () => resolve()))
  const said = new Promise<string>((resolve, reject) => {
    child.stdout.on('data', (data: Buffer) => {
      const found = /kept (\S+)/.exec(String(data))
      if (found) resolve(found[1] as string)
    })
    void ended.then(() => reject(new Error('it ended before it had kept anything')))
  })
  return { child, said, ended }
}

describe('PostgreSQL', () => {
  const server = postgresServer(openFolder)
  let databaseUrl = ''
  beforeAll(async () => {
    databaseUrl = await server.start()
  }, 60_000)
  afterAll(() => server.stop(), 60_000)
  suite('one query layer', () => ({ databaseUrl }))

  it('from before a turn could be asked anew is read on, nothing of it lost', async () => {
    const client = new pg.Client({ connectionString: databaseUrl })
    await client.connect()
    await client.query('create database older')
    await client.end()
    const olderUrl = databaseUrl.replace(/postgres$/, 'older')
    const older = new pg.Client({ connectionString: olderUrl })
    await older.connect()
    for (const it of olderTables) await older.query(it)
    await older.end()
    await expectGoesOn({ databaseUrl: olderUrl })
  })

  it('six open a fresh database at once, and each can write', async () => {
    // Whether they get in each other's way is luck, so there are several fresh ones.
    for (const name of ['fresh_1', 'fresh_2', 'fresh_3', 'fresh_4']) {
      await sql(`create database ${name}`)
      const where = { databaseUrl: databaseUrl.replace(/postgres$/, name) }
      const stores = await Promise.all(Array.from({ length: 6 }, () => openStore(where)))
      const made = await Promise.all(stores.map((it) => it.create()))
      expect(new Set((await stores[0]?.list())?.map((it) => it.id))).toEqual(new Set(made.map((it) => it.id)))
      await Promise.all(stores.map((it) => it.close()))
    }
  }, 60_000)

  const sql = async (...lines: readonly string[]): Promise<void> => {
    const client = new pg.Client({ connectionString: databaseUrl })
    await client.connect()
    try {
      for (const it of lines) await client.query(it)
    } finally {
      await client.end()
    }
  }
  const meddled = (body: string): string[] => [
    `create or replace function meddle() returns trigger language plpgsql as $$ begin ${body} return new; end $$`,
    'create or replace trigger meddled before insert on turns for each row execute function meddle()',
  ]

  it('a turn that the database turns back is written at the next attempt, once, and the attempts are counted', async () => {
    const store = await openStore({ databaseUrl })
    const { id } = await store.create()
    // What a sequence has counted stays counted when the rest is rolled back.
    await sql(
      'create sequence turned_back',
      ...meddled(`if nextval('turned_back') <= 3 then raise exception 'crossed' using errcode = '40001'; end if;`),
    )
    expect(store.retries()).toBe(0)
    await store.append(id, turn(0), 0)
    expect(store.retries()).toBe(3)
    expect((await store.read(id))?.written).toBe(1)
    await sql(...meddled(`raise exception 'crossed' using errcode = '40001';`))
    await expect(store.append(id, turn(1), 1)).rejects.toMatchObject({ code: 'database-busy' })
    expect(store.retries()).toBe(12)
    await sql('drop trigger meddled on turns')
    await store.close()
  })

  it('that cannot be used at the start is said to be, with the setting to look at and no password', async () => {
    const faults = [
      databaseUrl.replace(/:\d+\//, ':1/'),
      databaseUrl.replace(':plumbpost@', ':let-me-in@'),
      databaseUrl.replace(/postgres$/, 'nothing'),
    ].map((it) =>
      openStore({ databaseUrl: it }).then(
        () => 'opened',
        (fault: Error) => fault.message,
      ),
    )
    for (const said of await Promise.all(faults)) {
      expect(said).toMatch(/^The database that DATABASE_URL names cannot be used \(.+\)\. Start it, or correct/)
      expect(said).not.toMatch(/let-me-in|postgres:/)
    }
  })

  it('is asked for nothing that an engine spread over many machines lacks: every key begins with the conversation or an owner, and nothing counts', async () => {
    await sql('create database plain')
    const plainUrl = databaseUrl.replace(/postgres$/, 'plain')
    const store = await openStore({ databaseUrl: plainUrl })
    const client = new pg.Client({ connectionString: plainUrl })
    await client.connect()
    const rows = async (text: string): Promise<unknown[]> => (await client.query({ text, rowMode: 'array' })).rows
    // Its own system catalogue (PostgreSQL manual, “pg_class”, “pg_index”, “pg_proc”).
    const ours = "relnamespace = 'public'::regnamespace"
    expect(await rows(`select relname from pg_class where ${ours} and relkind not in ('r', 'i')`)).toEqual([])
    expect(await rows("select proname from pg_proc where pronamespace = 'public'::regnamespace")).toEqual([])
    expect(await rows('select tgname from pg_trigger where not tgisinternal')).toEqual([])
    const firstOfKeys = await rows(
      `select t.relname, i.relname, a.attname from pg_index x join pg_class t on t.oid = x.indrelid join pg_class i on i.oid = x.indexrelid
       join pg_attribute a on a.attrelid = t.oid and a.attnum = x.indkey[0] where t.${ours} and x.indisunique order by 1, 2`,
    )
    expect(firstOfKeys).toEqual([
      ['conversations', 'conversations_pkey', 'id'],
      ['left_owners', 'left_owners_pkey', 'owner'],
      ['makings', 'makings_once_a_key', 'conversation'],
      ['turns', 'turns_in_order', 'conversation'],
      ['turns', 'turns_once_a_key', 'conversation'],
    ])
    await client.end()
    await store.close()
  })

  it('keeps each turn as it was written: no row of one is ever changed, whatever is done with the talk', async () => {
    const store = await openStore({ databaseUrl })
    await sql(
      `create or replace function refuse() returns trigger language plpgsql as $$ begin raise exception 'changed'; end $$`,
      'create trigger refused before update on turns for each row execute function refuse()',
    )
    const { id } = await store.create('ann who stays')
    await store.append(id, turn(0, 'a'), 0)
    await store.append(id, turn(1, 'b'), 1)
    await store.append(id, turn(0, 'c'), 2)
    await store.share(id, 'link')
    await store.announce(id, 'd', 0, [])
    await store.withdraw(id, 'd')
    await store.leave('ann who stays')
    expect((await store.read(id))?.written).toBe(3)
    await expect(sql(`update turns set said = '' where conversation = '${id}'`)).rejects.toThrow('changed')
    await sql('drop trigger refused on turns')
    await store.close()
  })

  it('whose disk is full is said to be', async () => {
    const store = await openStore({ databaseUrl })
    const { id } = await store.create()
    await sql(...meddled(`raise exception 'could not extend file' using errcode = '53100';`))
    await expect(store.append(id, turn(0), 0)).rejects.toMatchObject({ code: 'database-full' })
    await sql('drop trigger meddled on turns')
    await store.append(id, turn(0), 0)
    await store.close()
  })

  it('that falls silent in the middle of a question, and ends no line, is taken for away after a while', async () => {
    const relay = await openRelay(Number(new URL(databaseUrl).port))
    const where = { databaseUrl: databaseUrl.replace(/:\d+\//, `:${relay.port}/`), longestWaitMs: 50 }
    const store = await openStore({ ...where, longestSilenceMs: 500 })
    const { id } = await store.create()
    relay.hush()
    await expect(store.append(id, turn(0), 0)).rejects.toMatchObject({ code: 'database-away' })
    await expect(store.read(id)).rejects.toMatchObject({ code: 'database-away' })
    relay.moveTo(Number(new URL(databaseUrl).port))
    await store.append(id, turn(0), 0)
    await store.close()
    await relay.close()
  }, 60_000)

  it('at several addresses is found at the one where it is, and again when it has moved to another', async () => {
    const relay = await openRelay(Number(new URL(databaseUrl).port))
    // Nobody is at the first, and at the second until the third has gone.
    const several = databaseUrl.replace(/@.*?\//, (it) => `@127.0.0.1:1,127.0.0.1:${relay.port},${it.slice(1)}`)
    relay.moveTo(null)
    const store = await openStore({ databaseUrl: several })
    const { id } = await store.create()
    await store.append(id, turn(0, 'first'), 0)
    await server.stop()
    await server.start()
    relay.moveTo(Number(new URL(databaseUrl).port))
    await store.append(id, turn(1, 'second'), 1)
    expect((await store.read(id))?.turns.map((it) => it.key)).toEqual(['first', 'second'])
    await store.close()
    await relay.close()
  }, 60_000)

  it('goes away in the middle of a write and at rest, is said to be away, and is written to again when it is back', async () => {
    const store = await openStore({ databaseUrl, longestWaitMs: 100 })
    const app = createApp({
      assistant: createAssistant(offlineReader),
      store,
      version: '1.2.3',
      front: 'offline',
      renderReply: (it) => it,
      host: '127.0.0.1',
    })
    const { id } = await store.create()
    await store.append(id, turn(0), 0)
    await sql(...meddled('perform pg_sleep(60);'))
    // Three at once, so that two more connections are at rest when it goes.
    await Promise.all([store.list(), store.list(), store.list()])
    const inTheMiddle = store.append(id, turn(1), 1).catch((fault: unknown) => fault)
    await sql('select pg_sleep(0.2)')
    await server.stop()
    expect(await inTheMiddle).toBeInstanceOf(Unavailable)
    const asked = [
      app.request('/api/conversations'),
      app.request(`/api/conversations/${id}/turns`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', accept: 'text/event-stream' },
        body: '{"text":"how many bags?"}',
      }),
    ]
    for (const answer of await Promise.all(asked)) {
      expect(answer.status).toBe(503)
      expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0)
      const text = await answer.text()
      expect(text).toContain('cannot be reached just now')
      expect(text).not.toMatch(/ECONN|127\.0\.0\.1|plumbpost/)
    }
    expect((await app.request('/healthz')).status).toBe(200)
    await server.start()
    await sql('drop trigger meddled on turns')
    await store.append(id, turn(1), 1)
    expect((await store.read(id))?.turns.map((it) => it.n)).toEqual([0, 1])
    expect((await app.request('/api/conversations')).status).toBe(200)
    await store.close()
  }, 60_000)
})

describe('the title', () => {
  it('is the first message on one line, cut at a word', () => {
    expect(titleOf('  how many\n\nbags? ')).toBe('how many bags?')
    expect(titleOf('word '.repeat(40))).toMatch(/^(word ){15}word …$/)
    expect(titleOf('x'.repeat(200)).length).toBeLessThanOrEqual(82)
  })
})
