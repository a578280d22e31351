// This file is about `npm run soak`: what takes too long for the tests. Every calculation with a hundred thousand random inputs (or as many as named), or those
// that are named; with `kill` a hundred rounds of kill −9 on each store (or as many as named); with `failover` a primary that dies; with `fuzz` every route with
// forty times the rounds of the tests (or as many as named); with `mcp` the protocol's conformance suite. From a seed that is printed.
import { soakCalculations } from './calculations.ts'
import { soakConformance } from './conformance.ts'
import { soakFailover } from './failover.ts'
import { soakFuzz } from './fuzz.ts'
import { soakKills } from './kills.ts'

const args = process.argv.slice(2)
const [runs, seed = Date.now() % 2 ** 31] = args.filter((it) => /^\d+$/.test(it)).map(Number)
const names = args.filter((it) => /[a-z]/.test(it))
const isAll = names.length === 0
const kept: boolean[] = []
const calculations = names.filter((it) => !['kill', 'failover', 'fuzz', 'mcp'].includes(it))
if (isAll || names.includes('kill')) kept.push(await soakKills(isAll ? undefined : runs, seed))
if (names.includes('mcp')) kept.push(await soakConformance())
if (isAll || names.includes('failover')) kept.push(await soakFailover())
if (isAll || names.includes('fuzz')) kept.push(await soakFuzz(isAll ? undefined : runs, seed))
if (isAll || calculations.length > 0) kept.push(soakCalculations(calculations, runs, seed))
// The PostgreSQL that is started for this ends the program with 0 when it has nothing more to do, whatever exit code stands there.
process.exit(kept.every((it) => it) ? 0 : 1)
