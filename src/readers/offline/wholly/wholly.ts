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
import { alongSlopeIn } from './along-slope.ts'
import { brickIn } from './bricks.ts'
import { cornerIn } from './corners.ts'
import { gatePartsIn } from './gate-parts.ts'
import { gateMendIn } from './gate-mends.ts'
import { gateIn } from './gates.ts'
import { holeSizeIn, spareIn } from './holes.ts'
import { runOfLotIn } from './lots.ts'
import { picketRowIn } from './picket-rows.ts'
import { postPartsIn } from './post-parts.ts'
import { putRightIn } from './put-right.ts'
import { railsIn } from './rails.ts'
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
  for (const read of readers) {
    const request = read(heard)
    if (request) return request
  }
  return undefined
}
const readers: readonly ((heard: Heard) => Request | undefined)[] = [
  holeSizeIn,
  spareIn,
  gatePartsIn,
  topIn,
  cornerIn,
  brickIn,
  slopeIn,
  gateMendIn,
  gateIn,
  runOfLotIn,
  alongSlopeIn,
  postPartsIn,
  railsIn,
  picketRowIn,
]
