// This file is about the fuzz of every route with many more rounds than in the tests: the same file, in the test runner, which it needs.
import { spawn } from 'node:child_process'
import { once } from 'node:events'

/** So many times as many rounds as in the tests. False when something was answered with a fault, hung, or told of the inside. */
export async function soakFuzz(times = 40, seed: number): Promise<boolean> {
  const runner = ['node_modules/vitest/vitest.mjs', 'run', '--config', '.config/vitest.config.ts', '--testTimeout=0']
  const child = spawn(process.execPath, [...runner, 'tests/src/http/fuzz.test.ts'], {
    stdio: 'inherit',
    env: { ...process.env, FUZZ_TIMES: String(times), FUZZ_SEED: String(seed) },
  })
  const [code] = (await once(child, 'close')) as [number | null]
  process.stdout.write(
    `fuzz of every route, ${times} times the rounds: ${code === 0 ? 'held' : `FAILED, seed ${seed}`}\n`,
  )
  return code === 0
}
