// This file is about `npm run bench`.
import { becomeReport } from './prepare.mjs'

await becomeReport('bench', 'tests/bench/main.ts')
