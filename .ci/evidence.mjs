// This file is about `npm run evidence`: every calculation held against what others published.
import { becomeReport } from './prepare.mjs'

await becomeReport('evidence', 'tests/evidence/main.ts')
