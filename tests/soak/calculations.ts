// This file is about calculations under random inputs: each must give an outcome to whatever it is given.
import { catalogue } from '../../engine/catalogue.ts'
import { alwaysGivesAnOutcome } from '../engine/laws.ts'

// One property of a hundred thousand runs holds on to all of them, until the memory is full.
const portion = 2000

/** Those that are named, or all. False when one failed; with which seed is printed. */
export function soakCalculations(only: readonly string[], runs = 100_000, seed: number): boolean {
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
  return failed === 0
}
