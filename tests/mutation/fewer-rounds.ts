// This file is about tests while mutants are run, since every mutant runs them anew: random ones go ten rounds, and cut plans of a whole house and a century of days are left out.
import type fc from 'fast-check'
import { beforeEach, vi } from 'vitest'

const most = 10
const long = [
  'made-up jobs of a house’s size',
  'a published problem',
  'agrees with the platform on every day from 1999 to 2101',
]

vi.mock('fast-check', async (original) => {
  const real = await original<{ default: typeof fc }>()
  const assert = (property: Parameters<typeof fc.assert>[0], options: Parameters<typeof fc.assert>[1]): unknown =>
    real.default.assert(property, { ...options, numRuns: Math.min(options?.numRuns ?? most, most) })
  return { ...real, default: { ...real.default, assert } }
})

beforeEach(({ task, skip }) => {
  if (long.includes(task.suite?.name ?? '') || long.includes(task.name)) skip()
})
