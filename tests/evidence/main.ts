// This file is about `npm run evidence`: the report on the terminal, or as JSON with --json. Exit 1 when anything differs.
import { report } from './report.ts'

const it = report()
if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify(it, null, 1)}\n`)
else {
  const figure = (x: number): string => String(Math.round(x * 1e6) / 1e6)
  for (const { name, title, checks, unsourced } of it.calculations) {
    process.stdout.write(`\n${name}: ${title}\n`)
    for (const check of checks) {
      const id = check.reference ? ` [${check.reference}]` : ''
      process.stdout.write(
        `  ${check.pass ? 'agrees ' : 'DIFFERS'}  ${check.what}: expected ${figure(check.expected)} ${check.unit}, got ${figure(check.got)}, within ${figure(check.tolerance)}\n           ${check.kind}: ${check.source}${id}\n`,
      )
    }
    if (checks.length === 0) process.stdout.write('  UNCHECKED\n')
    for (const { fact, from } of unsourced) process.stdout.write(`  habit    ${fact} (${from})\n`)
  }
  for (const [id, why] of Object.entries(it.explained)) process.stdout.write(`\nnot reproduced [${id}]: ${why}\n`)
  process.stdout.write(
    `\n${it.passed} agree, ${it.failed} differ. ${it.unchecked.length === 0 ? 'Every calculation has a check.' : `Without a check: ${it.unchecked.join(', ')}.`}\n`,
  )
}
process.exitCode = it.failed > 0 || it.unchecked.length > 0 ? 1 : 0
