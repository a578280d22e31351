// This file is about everything that is checked: types, format, structure, the build, and every test.
// All of it runs, whatever fails first, so that one run shows all there is to mend.
import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ended, prepare, root, tell } from './prepare.mjs'

const scratch = mkdtempSync(join(tmpdir(), 'plumbpost-check-'))
process.on('exit', () => rmSync(scratch, { recursive: true, force: true }))
const report = join(scratch, 'tests.json')

const checks = [
  { what: 'types', run: () => tool('typescript/bin/tsc', '-p', '.') },
  {
    what: 'format and lint',
    run: () =>
      tool(
        '@biomejs/biome/bin/biome',
        'check',
        '--config-path=.config',
        '--error-on-warnings',
        'engine',
        'src',
        'tests',
        '.ci',
        'package.json',
        'tsconfig.json',
      ),
  },
  {
    what: 'nothing unused',
    run: () => tool('knip/bin/knip.js', '--config', '.config/knip.json', '--no-progress'),
  },
  {
    what: 'who imports whom',
    run: () =>
      tool(
        'dependency-cruiser/bin/dependency-cruise.mjs',
        '--config',
        '.config/dependency-cruiser.mjs',
        'engine',
        'src',
        'tests',
      ),
  },
  { what: 'build', run: () => prepare().then(() => 0, failed) },
  {
    what: 'tests',
    run: () =>
      tool(
        'vitest/vitest.mjs',
        'run',
        '--config',
        '.config/vitest.config.ts',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
      ),
  },
]

const results = []
for (const { what, run } of checks) {
  process.stdout.write(`\n── ${what}\n`)
  const start = Date.now()
  const passed = (await run()) === 0
  results.push({ what, passed, seconds: (Date.now() - start) / 1000 })
}

const tests = readTests()
process.stdout.write('\n')
for (const { what, passed, seconds } of results) {
  process.stdout.write(`${passed ? 'passed' : 'FAILED'}  ${what} (${seconds.toFixed(1)} s)\n`)
}
for (const title of tests.skippedTitles) process.stdout.write(`SKIPPED  ${title}\n`)
if (tests.passed === 0) process.stdout.write('No test passed: nothing is proved.\n')
process.exitCode = results.every((it) => it.passed) && tests.passed > 0 && tests.failed === 0 ? 0 : 1
process.stdout.write(
  `${tests.passed} passed, ${tests.failed} failed${tests.skipped > 0 ? `, ${tests.skipped} skipped` : ''}\n`,
)

function tool(path, ...args) {
  const child = spawn(process.execPath, [join(root, 'node_modules', path), ...args], {
    cwd: root,
    env: asEverywhere(process.env),
    stdio: ['ignore', 'inherit', 'inherit'],
  })
  return ended(child)
}

// Tests must come out alike on every machine, and must send nothing to a model or a database of the person who runs them.
function asEverywhere(env) {
  const ours = /^(PORT|HOST|DATABASE_URL|OPENAI_.*|PLUMBPOST_(?!CHROME$).*)$/
  return Object.fromEntries(Object.entries(env).filter(([name]) => !ours.test(name)))
}

function failed(fault) {
  tell(fault)
  return 1
}

function readTests() {
  const none = { passed: 0, failed: 0, skipped: 0, skippedTitles: [] }
  let files
  try {
    files = JSON.parse(readFileSync(report, 'utf8')).testResults
  } catch {
    return none
  }
  return files.reduce((sum, file) => {
    const by = (...kinds) => file.assertionResults.filter((it) => kinds.includes(it.status))
    const skipped = by('skipped', 'pending', 'todo', 'disabled')
    // A file that failed without a failed test could not be read, or broke outside its tests. It counts as one.
    const failed = by('failed').length || (file.status === 'failed' ? 1 : 0)
    return {
      passed: sum.passed + by('passed').length,
      failed: sum.failed + failed,
      skipped: sum.skipped + skipped.length,
      skippedTitles: [...sum.skippedTitles, ...skipped.map((it) => it.fullName)],
    }
  }, none)
}
