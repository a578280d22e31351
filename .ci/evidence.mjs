// This file is about `npm run evidence`: every calculation held against what others published.
import { runSource } from './prepare.mjs'

await runSource('tests/evidence/main.ts')
