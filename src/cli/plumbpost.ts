#!/usr/bin/env node
// This file is about the command of the installed package: it becomes the program that is named first, with the arguments that follow.
import { version } from '../../engine/index.ts'

const commands: Readonly<Record<string, readonly [program: string, says: string]>> = {
  serve: ['server', 'serves the page and the HTTP interface; PORT and HOST say where'],
  ask: ['ask', 'one conversation in the terminal'],
  audit: ['audit', 'works every figure of an exported conversation again'],
  evidence: ['evidence', 'what every calculation was held against'],
  mcp: ['mcp', 'every calculation as a tool for another program, over standard input and output'],
  backup: ['backup', 'writes all talks into one new file'],
  restore: ['restore', 'puts the talks of such a file into the store'],
}

const usage = `plumbpost COMMAND
${Object.entries(commands)
  .map(([name, [, says]]) => `  ${name.padEnd(10)}${says}\n`)
  .join('')}  --version the version of the engine
`

const [command] = process.argv.splice(2, 1)
const program = Object.hasOwn(commands, command ?? '') ? commands[command as string]?.[0] : undefined
// The programs are built beside this one. The name is put together here, so that the build leaves them there.
if (program) await import(new URL(`./${program}.mjs`, import.meta.url).href)
else if (command === '--version') process.stdout.write(`${version}\n`)
else if (command === '--help' || command === '-h') process.stdout.write(usage)
else {
  process.stderr.write(`${command === undefined ? 'Name a command.' : `There is no command “${command}”.`}\n${usage}`)
  process.exitCode = 2
}
