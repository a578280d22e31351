// This file is about asking in the terminal: one conversation, a turn for each question given.
import { writeFileSync } from 'node:fs'
import type { Turn } from '../answer.ts'
import { exportConversation } from '../export/export.ts'
import { packWithCuts, standingLine } from '../export/pack.ts'
import { fieldPackPdf } from '../export/pdf.ts'
import { furnish } from '../house.ts'
import { readSettings } from '../settings.ts'
import { today } from '../today.ts'
import { tell } from './tell.ts'
import { typed } from './typed.ts'
import { endsAs } from './ending.ts'

const usage = `${typed('ask')} "question" ["next turn" …]
  --json               prints one Answer a line
  --export FILE.json   keeps the conversation for an audit
  --pack FILE.pdf      writes the sheets to print
`

interface Asked {
  readonly questions: readonly string[]
  readonly json: boolean
  readonly exportTo?: string
  readonly packTo?: string
}

/** What the command line asks for; undefined where it leaves out what it needs, or names an option that there is not. */
function readArguments(args: readonly string[]): Asked | undefined {
  const questions: string[] = []
  const files = new Map<string, string>()
  let json = false
  for (let i = 0; i < args.length; i++) {
    const it = args[i] as string
    if (it === '--json') json = true
    else if (it === '--export' || it === '--pack') {
      const file = args[++i]
      if (!file || file.startsWith('--')) return undefined
      files.set(it, file)
    } else if (/^--[a-z][a-z-]*$/.test(it)) return undefined
    else if (it !== '--') questions.push(it)
  }
  if (questions.length === 0 || questions.some((it) => it.trim() === '')) return undefined
  return { questions, json, exportTo: files.get('--export'), packTo: files.get('--pack') }
}

async function main(args: readonly string[]): Promise<number> {
  if (args.includes('--help') || args.includes('-h')) {
    process.stdout.write(usage)
    return 0
  }
  const asked = readArguments(args)
  if (!asked) {
    process.stderr.write(`Ask a question, in quotes.\n${usage}`)
    return 2
  }
  const { questions, json } = asked
  const house = furnish(readSettings(process.env))
  if (house.front === 'model') process.stderr.write(`${house.reads}\n`)
  const turns: Turn[] = []
  for (const said of questions) {
    const turn = { said, before: turns }
    const { answer, job } = json
      ? await house.assistant.turn(turn)
      : await tell(house.assistant, turn, process.stdout, process.env)
    if (json) process.stdout.write(`${JSON.stringify(answer)}\n`)
    turns.push({ n: turns.length, said, answer, job })
  }
  if (asked.exportTo) {
    const conversation = {
      id: 'terminal',
      title: (questions[0] as string).slice(0, 80),
      created: new Date().toISOString(),
    }
    keep(asked.exportTo, `${JSON.stringify(exportConversation(turns, conversation), null, 1)}\n`)
  }
  if (asked.packTo) {
    const pack = await packWithCuts(turns)
    if (pack.sheets.length === 0) {
      process.stderr.write('No answer with figures stands yet, so there is no sheet to print.\n')
      return 1
    }
    keep(asked.packTo, await fieldPackPdf(pack, { date: today(), caution: standingLine }))
  }
  return 0
}

function keep(file: string, content: string | Uint8Array): void {
  try {
    writeFileSync(file, content)
  } catch (fault) {
    throw new Error(`I cannot write “${file}”: ${(fault as NodeJS.ErrnoException).code ?? 'unknown fault'}.`)
  }
}

// Whoever reads may have read enough: `| head -1` is no fault, and the files asked for are still written.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code === 'EPIPE') return
  process.stderr.write(`I cannot write the answer: ${fault.code ?? fault.message}.\n`)
  process.exit(1)
})

endsAs(main)
