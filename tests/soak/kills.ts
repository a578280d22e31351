// This file is about many rounds of kill −9 while turns are written, on each store.
import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chanceFrom } from '../src/store/chance.ts'
import { killRounds } from '../src/store/kill-rounds.ts'
import { postgresServer } from '../src/store/postgres-server.ts'

/** False when a turn was lost, doubled or torn. */
export async function soakKills(rounds = 100, seed: number): Promise<boolean> {
  const folder = mkdtempSync(join(tmpdir(), 'plumbpost-kill-'))
  chmodSync(folder, 0o777)
  const server = postgresServer(() => folder)
  try {
    const stores = { SQLite: { dataFolder: folder }, PostgreSQL: { databaseUrl: await server.start() } }
    let kept = true
    for (const [name, where] of Object.entries(stores)) {
      const { acknowledged, unheard, faults } = await killRounds(where, rounds, chanceFrom(seed))
      process.stdout.write(
        `${name}: ${rounds} times killed, ${acknowledged} turns acknowledged, ${unheard} kept that could not be acknowledged any more, ${faults.length === 0 ? 'none lost, doubled or torn' : `FAILED, seed ${seed}\n${faults.join('\n')}`}\n`,
      )
      kept &&= faults.length === 0
    }
    return kept
  } finally {
    await server.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}
