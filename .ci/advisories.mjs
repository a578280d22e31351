// This file is about known weaknesses in the packages that are shipped: what the registry tells of them. Where it does not answer, nothing is known, and that is said.
import { spawn } from 'node:child_process'
import { root, say } from './prepare.mjs'

const longestWaitMs = 60_000

const npm = spawn('npm', ['audit', '--omit=dev', '--audit-level=high', '--json', '--fetch-retries=0'], {
  cwd: root,
  timeout: longestWaitMs,
  stdio: ['ignore', 'pipe', 'ignore'],
  shell: process.platform === 'win32',
})
let told = ''
npm.stdout.on('data', (data) => {
  told += String(data)
})
npm.on('error', () => skip())
npm.on('close', () => {
  const counts = countsIn(told)
  if (!counts) return skip()
  const { high = 0, critical = 0, total = 0 } = counts
  if (high + critical === 0) return say(`passed  known weaknesses: none that is high or critical (${total} lesser)`)
  process.exitCode = 1
  say(
    `FAILED  known weaknesses: ${high} high, ${critical} critical. “npm audit --omit=dev” tells which, and what mends them.`,
  )
})

function countsIn(text) {
  try {
    return JSON.parse(text).metadata?.vulnerabilities
  } catch {
    return undefined
  }
}

function skip() {
  say(
    'SKIPPED  known weaknesses: the package registry did not tell. Nothing is known of them; ask again where it does: npm run advisories',
  )
}
