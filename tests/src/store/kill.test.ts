// kill −9 while turns are written, on each store.
import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { chanceFrom } from './chance.ts'
import { killRounds } from './kill-rounds.ts'
import { postgresServer } from './postgres-server.ts'

const folder = mkdtempSync(join(tmpdir(), 'plumbpost-kill-'))
// PostgreSQL runs as a user of its own, who must be let in.
chmodSync(folder, 0o777)
const server = postgresServer(() => folder)
afterAll(async () => {
  await server.stop()
  rmSync(folder, { recursive: true, force: true })
}, 60_000)

const rounds = 10

describe('of ten programs that are killed while they write', () => {
  it.each(['SQLite', 'PostgreSQL'])(
    'every turn that %s acknowledged is there, none twice, none half',
    async (name) => {
      const where = name === 'SQLite' ? { dataFolder: folder } : { databaseUrl: await server.start() }
      const seed = Date.now()
      const { acknowledged, unheard, faults } = await killRounds(where, rounds, chanceFrom(seed))
      expect(faults, `seed ${seed}`).toEqual([])
      expect(acknowledged).toBeGreaterThanOrEqual(rounds)
      // Three talks grow at once, so three turns at most were under way at each kill.
      expect(unheard).toBeLessThanOrEqual(3 * rounds)
    },
    120_000,
  )
})
