// This file is about `npm run soak`: every calculation with a hundred thousand random inputs (or as many as named), or those that are named, from a seed that is printed.
import { catalogue } from '../../engine/catalogue.ts'
import { alwaysGivesAnOutcome } from '../engine/laws.ts'

const [runs = 100_000, seed = Date.now() % 2 ** 31] = process.argv
  .slice(2)
  .filter((it) => /^\d+$/.test(it))
  .map(Number)
const only = process.argv.slice(2).filter((it) => /[a-z]/.test(it))
// One property of a hundred thousand runs holds on to all of them, until the memory is full.
const portion = 2000
let failed = 0
for (const calc of catalogue.filter((it) => only.length === 0 || only.includes(it.name))) {
  let at = seed
  try {
    for (let done = 0; done < runs; done += portion, at++)
      alwaysGivesAnOutcome(calc, Math.min(portion, runs - done), at)
    process.stdout.write(`${calc.name}: ${runs} outcomes\n`)
  } catch (fault) {
    failed++
    process.stdout.write(
      `${calc.name}: FAILED, seed ${at}\n${fault instanceof Error ? fault.message : String(fault)}\n`,
    )
  }
}
process.exitCode = failed > 0 ? 1 : 0
