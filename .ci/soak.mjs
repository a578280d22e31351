// This file is about `npm run soak`.
import { becomeReport } from './prepare.mjs'

await becomeReport('soak', 'tests/soak/main.ts')
