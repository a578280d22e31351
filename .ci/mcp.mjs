import { become } from './prepare.mjs'

await become('mcp')
