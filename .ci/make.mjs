// This file is about building on request: the programs, and the engine as a package of its own. The other commands build what they need.
import { join } from 'node:path'
import { end, prepare, root } from './prepare.mjs'

await prepare().catch(end)
const { makeLibrary } = await import('./library.mjs')
try {
  makeLibrary(root, join(root, 'dist', 'engine'))
} catch (fault) {
  end(fault)
}
