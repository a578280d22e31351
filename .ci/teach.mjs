// This file is about `npm run teach`: the weights of the offline reader, from the sentences that it is taught by; `guard` makes those of the guard.
import { becomeReport, root } from './prepare.mjs'

const ofGuard = process.argv[2] === 'guard'
process.argv[2] = root
if (ofGuard) process.chdir(root)
await becomeReport('teach', ofGuard ? 'tests/src/guard/teach-main.ts' : 'src/teach.ts')
