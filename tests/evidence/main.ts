// This file is about `npm run evidence`: the report on the terminal, or as JSON with --json, and kept for the page. Exit 1 when anything differs or has no check.
import { writeFileSync } from 'node:fs'
import { inWords, sumOf } from '../../src/evidence.ts'
import { report } from './report.ts'

const it = report()
const json = `${JSON.stringify(it, null, 1)}\n`
// This program is built into the folder where the server looks for it.
writeFileSync(new URL('evidence.json', import.meta.url), json)
if (!process.argv.includes('--quiet')) process.stdout.write(process.argv.includes('--json') ? json : inWords(it))
const { differ, unchecked } = sumOf(it)
process.exitCode = differ > 0 || unchecked.length > 0 ? 1 : 0
