// This file is about asking in the terminal: one conversation, a turn for each question given.
import { writeFileSync } from 'node:fs'
import type { Turn } from '../answer.ts'
import { exportConversation } from '../export/export.ts'
import { packWithCuts, standingLine } from '../export/pack.ts'
import { fieldPackPdf } from '../export/pdf.ts'
import { furnish } from '../house.ts'
import { readSettings } from '../settings.ts'
import { today } from '../today.ts'
import { inTerminal } from './terminal.ts'

const usage =
  'npm run --silent ask -- "question" ["next turn" …]\n  --json prints one Answer a line; --export FILE.json keeps the conversation for an audit; --pack FILE.pdf writes the sheets to print'

async function main(args: readonly string[]): Promise<number> {
  const json = args.includes('--json')
  const files = new Map<string, string | undefined>()
  const questions = args.filter((it, i) => {
    if (it === '--export' || it === '--pack') files.set(it, args[i + 1])
    return it !== '--json' && !files.has(it) && !files.has(args[i - 1] ?? '')
  })
  const isFileMissing = [...files.values()].some((it) => !it || it.startsWith('--'))
  if (questions.length === 0 || isFileMissing || questions.some((it) => it.trim() === '')) {
    process.stderr.write(`Ask a question, in quotes.\n  ${usage}\n`)
    return 2
  }
  const house = furnish(readSettings(process.env))
  if (house.front === 'model') process.stderr.write(`${house.reads}\n`)
  const turns: Turn[] = []
  for (const said of questions) {
    const { answer, job } = await house.assistant.turn({ said, before: turns })
    turns.push({ n: turns.length, said, answer, job })
    if (json) process.stdout.write(`${JSON.stringify(answer)}\n`)
    else
      process.stdout.write(
        `${inTerminal(said, answer, { colour: process.stdout.isTTY === true && !process.env.NO_COLOR, width: Math.min(process.stdout.columns || 80, 100) })}\n`,
      )
  }
  const file = files.get('--export')
  if (file) {
    const conversation = {
      id: 'terminal',
      title: (questions[0] as string).slice(0, 80),
      created: new Date().toISOString(),
    }
    writeFileSync(file, `${JSON.stringify(exportConversation(turns, conversation), null, 1)}\n`)
  }
  const sheets = files.get('--pack')
  if (sheets) {
    const pack = await packWithCuts(turns)
    if (pack.sheets.length === 0) {
      process.stderr.write('No answer with figures stands yet, so there is no sheet to print.\n')
      return 1
    }
    writeFileSync(sheets, await fieldPackPdf(pack, { date: today(), caution: standingLine }))
  }
  return 0
}

main(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code
  },
  (fault: unknown) => {
    process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`)
    process.exitCode = 1
  },
)
