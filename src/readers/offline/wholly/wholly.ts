// This file is about messages in which every quantity stands beside the word that it is: read whole, subject by subject, before anything is weighed.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { runPlaces } from '../../../../engine/index.ts'
import type { Hit } from '../lexicon.ts'
import { layoutIn } from '../layout/read.ts'
import { moneyAsked } from '../money-asked.ts'
import { plainSumIn } from '../plain-sums.ts'
import type { Token } from '../stems.ts'
import { wholeSumIn } from '../whole-sums.ts'
import { brickIn } from './bricks.ts'
import { cornerIn } from './corners.ts'
import { gatePartsIn } from './gate-parts.ts'
import { gateIn } from './gates.ts'
import { holeSizeIn } from './holes.ts'
import { putRightIn } from './put-right.ts'
import { slopeIn } from './slopes.ts'
import { topIn } from './tops.ts'

const longest = 900

/** `all` has also what the message takes back. The request of such a message, of a bill, or of a plain sum; nothing for any other. */
export const whollyIn = (
  all: Heard,
  heard: Heard,
  message: readonly Token[],
  hits: readonly Hit[],
  asksOfTrade: boolean,
  read: (heard: Heard) => Request,
): Request | undefined =>
  putRightIn(all) ??
  subjectIn(heard) ??
  moneyAsked(heard, message, read) ??
  layoutIn(heard) ??
  wholeSumIn(heard, message) ??
  plainSumIn(heard, message, hits, asksOfTrade)

/** Nothing where one size is left over, or a whole fence is spoken of. */
function subjectIn(heard: Heard): Request | undefined {
  if (heard.said.length > longest || runPlaces(heard.job).length > 0) return undefined
  for (const read of [holeSizeIn, gatePartsIn, topIn, cornerIn, brickIn, slopeIn, gateIn]) {
    const request = read(heard)
    if (request) return request
  }
  return undefined
}
