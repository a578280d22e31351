// This file is about `npm run mutate`.
import { becomeReport } from './prepare.mjs'

await becomeReport('mutate', 'tests/mutation/main.ts')
