// This file is about `npm run teach`: the weights of the offline reader, from the sentences that it is taught by.
import { becomeReport, root } from './prepare.mjs'

process.argv[2] = root
await becomeReport('teach', 'src/teach.ts')
