import { readFileSync } from 'node:fs'

// What `npm run mutate` chose: mutants, and whom to tell how each came out.
const { mutants } = JSON.parse(readFileSync(process.env.PLUMBPOST_MUTANTS, 'utf8'))

export default {
  testRunner: 'vitest',
  vitest: { configFile: '.config/mutate.vitest.config.ts', related: false },
  plugins: ['@stryker-mutator/vitest-runner', './tests/mutation/chosen.mjs'],
  mutate: mutants.map(
    ({ file, start, end }) => `${file}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`,
  ),
  // Within what was chosen lie other mutants; the checker lets only the chosen ones through.
  checkers: ['chosen'],
  reporters: ['chosen'],
  coverageAnalysis: 'perTest',
  // Declarations are read when the catalogue loads, and a mutant in one would need all tests anew each time. `npm run mutate`
  // mutates the formulas among them by itself.
  ignoreStatic: true,
  // Strings are prose, names of words and units, or formulas: mutants of the first are noise, and those of the others stop the program at load.
  mutator: { excludedMutations: ['StringLiteral'] },
  concurrency: 1,
  // Which test covers which mutant is held in memory for some nine thousand tests.
  testRunnerNodeArgs: ['--max-old-space-size=8192'],
  timeoutMS: 15_000,
  timeoutFactor: 2,
  dryRunTimeoutMinutes: 30,
  tempDirName: 'dist/mutating',
  ignorePatterns: ['dist', 'transcripts-demo', '.plumbpost', 'src/readers', 'tests/bench', 'tests/browser'],
  disableTypeChecks: false,
  allowConsoleColors: false,
}
