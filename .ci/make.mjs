// This file is about building on request: the programs, the engine as a package of its own, and the evidence that goes with them. The other commands build what they need.
import { join } from 'node:path'
import { becomeReport, end, prepare, root } from './prepare.mjs'

await prepare().catch(end)
const { makeLibrary } = await import('./library.mjs')
process.argv.push('--quiet')
try {
  makeLibrary(root, join(root, 'dist', 'engine'))
  await becomeReport('evidence', 'tests/evidence/main.ts')
} catch (fault) {
  end(fault)
}
