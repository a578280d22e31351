// This file is about the last look at a request: it is held against what the message names outright.
import type { Request } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { withoutContradicted } from './contradicted.ts'
import { withHolesFilled } from './holes-said.ts'
import { withLoadsOfVessel } from './loads-said.ts'
import { withoutPairsApart } from './pairs-apart.ts'
import { inUnitAsked } from './units-asked.ts'

/** The request with what the message names in the place of what is usual, and without what it rules out. */
export const settled = (request: Request, heard: Heard): Request =>
  withoutPairsApart(
    withoutContradicted(inUnitAsked(withHolesFilled(withLoadsOfVessel(request, heard), heard), heard), heard),
    heard,
  )
