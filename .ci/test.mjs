// This file is about `npm test`: on a fresh clone nothing is installed, so that comes first.
import { end, prepareInstall } from './prepare.mjs'

await prepareInstall().catch(end)
await import('./check.mjs')
