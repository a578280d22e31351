// This file is about what is kept of the last runs of `npm run mutate`: small, so that the evidence can say what was found, when, and on what share.
import { readFileSync, writeFileSync } from 'node:fs'
import { keptMutationSchema, type KeptMutation } from '../../src/evidence.ts'

const file = 'tests/evidence/mutation.json'

/** Puts one part of it in the place of what was kept before. */
export function keep(part: Partial<KeptMutation>): void {
  const before = keptMutationSchema.parse(JSON.parse(readFileSync(file, 'utf8')))
  writeFileSync(file, `${JSON.stringify({ ...before, ...part }, null, 1)}\n`)
}

export const today = (): string => new Date().toISOString().slice(0, 10)
