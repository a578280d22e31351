// This file is about `npm run soak`: what takes too long for the tests. Every calculation with a hundred thousand random inputs (or as many as named), or those
// that are named; and with `kill` a hundred rounds of kill −9 on each store (or as many as named). From a seed that is printed.
import { soakCalculations } from './calculations.ts'
import { soakKills } from './kills.ts'

const args = process.argv.slice(2)
const [runs, seed = Date.now() % 2 ** 31] = args.filter((it) => /^\d+$/.test(it)).map(Number)
const names = args.filter((it) => /[a-z]/.test(it))
const isAll = names.length === 0
const kept: boolean[] = []
const calculations = names.filter((it) => it !== 'kill')
if (isAll || names.includes('kill')) kept.push(await soakKills(isAll ? undefined : runs, seed))
if (isAll || calculations.length > 0) kept.push(soakCalculations(calculations, runs, seed))
process.exitCode = kept.every((it) => it) ? 0 : 1
