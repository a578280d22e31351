// This file is about coverage of engine/ by the tests that mutants are held against. It is told, and no goal.
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import type { KeptMutation } from '../../src/evidence.ts'
import { today } from './kept.ts'

const share = z.object({ pct: z.number() })
const summary = z.object({ total: z.object({ lines: share, branches: share }) })

export function coverage(): KeptMutation['coverage'] & object {
  const folder = join('dist', 'coverage')
  const vitest = join('node_modules', 'vitest', 'vitest.mjs')
  const of = ['--coverage', '--coverage.include=engine/**', '--coverage.reporter=json-summary']
  const config = ['--config', join('.config', 'mutate.vitest.config.ts')]
  const ran = spawnSync(process.execPath, [vitest, 'run', ...config, ...of, `--coverage.reportsDirectory=${folder}`], {
    stdio: 'inherit',
  })
  if (ran.status !== 0) throw new Error('The tests must pass before coverage is told.')
  const { total } = summary.parse(JSON.parse(readFileSync(join(folder, 'coverage-summary.json'), 'utf8')))
  return { on: today(), lines: total.lines.pct, branches: total.branches.pct }
}
