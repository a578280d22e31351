import { BaseSequencer, type TestSpecification } from 'vitest/node'
import usual from './vitest.config.ts'

// What notices most for the least time comes first: a mutant is done with at the first test that notices it.
const first = ['tests/engine/calculations/', 'tests/engine/quantities/', 'tests/engine/catalogue.test.ts']
const last = ['tests/evidence/', 'tests/engine/job/', 'tests/engine/cutting/']
const rank = ({ moduleId }: TestSpecification): number => {
  const among = (names: readonly string[]): boolean => names.some((it) => moduleId.includes(it))
  return among(first) ? 0 : among(last) ? 2 : 1
}

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files.toSorted((a, b) => rank(a) - rank(b) || (a.moduleId < b.moduleId ? -1 : 1))
  }
}

// The tests that mutants of engine/ are held against: those of the engine and the evidence, without the two that put random inputs to
// everything and messages of a hundred thousand characters. What they alone notice counts as not noticed.
export default {
  ...usual,
  test: {
    ...usual.test,
    include: ['tests/engine/**/*.test.ts', 'tests/evidence/*.test.ts'],
    exclude: ['tests/engine/laws.test.ts', 'tests/engine/quantities/hostile.test.ts'],
    // A slow test is no failed one here: whether a mutant is stuck, Stryker decides.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    setupFiles: ['tests/mutation/fewer-rounds.ts'],
    // The engine keeps nothing between calls, so one loading of it serves all files of a run.
    isolate: false,
    sequence: { sequencer: QuickFirst },
  },
}
