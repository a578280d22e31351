// This file is about auditing in the terminal: an exported conversation in, its differences out; exit 0 only if there are none.
import { readFileSync } from 'node:fs'
import { z } from 'zod'
import { editions, version } from '../../engine/index.ts'
import { audit } from '../audit.ts'
import { exportSchema } from '../export/export.ts'
import { typed } from './typed.ts'
import { endsAs } from './ending.ts'

async function main(args: readonly string[]): Promise<number> {
  const [file] = args
  if (!file || args.length !== 1) {
    process.stderr.write(`Name one exported conversation.\n  ${typed('audit')} FILE.json\n`)
    return 2
  }
  let text: string
  try {
    text = readFileSync(file, 'utf8')
  } catch (fault) {
    process.stderr.write(`I cannot read “${file}”: ${(fault as NodeJS.ErrnoException).code ?? 'unknown fault'}.\n`)
    return 2
  }
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch {
    process.stderr.write(`“${file}” is not JSON. Export the conversation again.\n`)
    return 2
  }
  const parsed = exportSchema.safeParse(data)
  if (!parsed.success) {
    process.stderr.write(`“${file}” is not a whole exported conversation.\n${z.prettifyError(parsed.error)}\n`)
    return 2
  }
  const exported = parsed.data
  if (exported.plumbpost.version !== version)
    process.stdout.write(`Exported by version ${exported.plumbpost.version}; worked again by ${version}.\n`)
  for (const [table, edition] of Object.entries(editions)) {
    const theirs = exported.plumbpost.editions[table]
    if (theirs !== edition)
      process.stdout.write(`Table “${table}”: the export used ${theirs ?? 'none'}; here it is ${edition}.\n`)
  }
  const differences = await audit(exported)
  for (const it of differences)
    process.stdout.write(`turn ${it.turn}: ${it.what}\n  exported: ${it.exported}\n  worked:   ${it.worked}\n`)
  const figures = exported.turns.reduce((sum, turn) => sum + turn.answer.figures.length, 0)
  process.stdout.write(
    differences.length === 0
      ? `${exported.turns.length} turns, ${figures} figures worked again: no difference.\n`
      : `${differences.length} differences.\n`,
  )
  return differences.length === 0 ? 0 : 1
}

endsAs(main)
