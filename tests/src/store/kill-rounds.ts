// This file is about rounds of kill −9 while turns are written: afterwards every acknowledged turn must be there, none twice, none half.
import { spawn } from 'node:child_process'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { bundleOne } from '../../../.ci/build.mjs'
import { openStore, type Where } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { turnToKill } from './turn-to-kill.ts'

export interface Killed {
  readonly rounds: number
  /** Turns that the store had acknowledged before the kills. */
  readonly acknowledged: number
  /** Turns that were kept and could not be acknowledged any more: the kill came between. */
  readonly unheard: number
  /** What is wrong; nothing should be. */
  readonly faults: readonly string[]
}

/** Kills a writing program so many times, each time at a moment of its own. All rounds write to one store, and each goes on with a talk of the one before. */
export async function killRounds(where: Where, rounds: number, chance: () => number): Promise<Killed> {
  // In the program's own folder, so that it finds its packages.
  const program = join(process.cwd(), 'dist', `killed-writer-${process.pid}.mjs`)
  await bundleOne(process.cwd(), 'tests/src/store/killed-writer.ts', program)
  const acknowledged = new Map<string, number>()
  const faults: string[] = []
  try {
    for (let round = 0; round < rounds; round++) {
      for (const [id, n] of await killOnce(program, where, chance)) acknowledged.set(id, n)
      const store = await openStore(where)
      faults.push(...(await faultsIn(store, acknowledged)).map((it) => `round ${round}: ${it}`))
      await store.close()
    }
    const store = await openStore(where)
    const kept = (await store.list()).reduce((sum, it) => sum + it.turns, 0)
    await store.close()
    const heard = [...acknowledged.values()].reduce((sum, last) => sum + last + 1, 0)
    return { rounds, acknowledged: heard, unheard: kept - heard, faults }
  } finally {
    rmSync(program, { force: true })
  }
}

/** The last number that was acknowledged in each talk. */
async function killOnce(program: string, where: Where, chance: () => number): Promise<Map<string, number>> {
  const child = spawn(process.execPath, [program, JSON.stringify(where)], { stdio: ['ignore', 'pipe', 'inherit'] })
  const enough = 1 + Math.floor(chance() * 30)
  const moment = chance() * 10
  let said = ''
  const ended = new Promise<void>((resolve) => child.on('close', () => resolve()))
  await new Promise<void>((resolve) => {
    child.stdout.on('data', (data: Buffer) => {
      said += data
      if (said.split('\n').length > enough) resolve()
    })
    void ended.then(resolve)
  })
  await pause(moment)
  child.kill('SIGKILL')
  await ended
  const lines = said.split('\n').slice(0, -1)
  if (lines.length === 0) throw new Error('The program ended before it had kept anything.')
  return new Map(
    lines.map((it) => {
      const [id = '', n] = it.split(' ')
      return [id, Number(n)]
    }),
  )
}

async function faultsIn(store: Store, acknowledged: ReadonlyMap<string, number>): Promise<string[]> {
  const faults: string[] = []
  for (const [id, last] of acknowledged) {
    const talk = await store.read(id)
    if (!talk) {
      faults.push(`${id} is gone`)
      continue
    }
    if (talk.written <= last) faults.push(`${id} has ${talk.written} turns, and ${last + 1} were acknowledged`)
    // Of each talk one turn was under way at most, for each program that was killed at it.
    for (const [n, { at, aside, ...turn }] of talk.turns.entries())
      if (aside.length > 0 || JSON.stringify(turn) !== JSON.stringify(turnToKill(id, n)))
        faults.push(`${id}: turn ${n} is not what was written`)
    const { title, changed } = talk.conversation
    if (changed !== talk.turns.at(-1)?.at || title === '') faults.push(`${id} does not know of its last turn`)
  }
  return faults
}
