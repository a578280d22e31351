// This file is about building on request; the other commands build by themselves when a source has changed.
import { end, prepare } from './prepare.mjs'

await prepare().catch(end)
