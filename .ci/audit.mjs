import { become } from './prepare.mjs'

await become('audit')
