// This file is about “what size hole”: it has a width and a depth, and who asks for its size wants both; and about so much more of its concrete.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor, tell } from '../request-parts.ts'
import { isAbout } from './spots.ts'

const asks =
  /\b(?:what|which) sized? (?:of )?(?:a )?(?:post ?)?holes?\b|\bhow big (?:of )?(?:an? |the |my |should the |do the |to dig the )?(?:post ?)?holes?\b|\bwhat size (?:do|should|to dig)\b[^?]*\bholes?\b/i

export const holeSizeIn = ({ said, readings, job }: Heard): Request | undefined =>
  readings.length === 0 &&
  job.wanted.length === 0 &&
  asks.test(said) &&
  !/\b(?:auger|bit|cap|concrete|gravel|bags?)\b/i.test(said)
    ? { ...requestFor('post-depth', ['holeByRule', 'holeDepth'], []), calculation: null }
    : undefined

const moreOfIt = /\b(?:waste|wastage|spill\w*|spare|extra|allowance|overage|to be safe|margin|added|add|on top)\b/i
/** “And with 8 percent for waste?”, behind the concrete of holes: the same, and so much more of it. */
export function spareIn(heard: Heard): Request | undefined {
  const [only, more] = heard.readings
  const isShare = only?.quantity?.kind === 'percent' && only.change?.way !== 'times'
  if (!isShare || more || !moreOfIt.test(heard.said) || !isAbout(heard, 'concrete-for-posts')) return undefined
  return /\b(?:bags?|cost|price|tax|discount|gravel|swell\w*|loose)\b|\$|£|€/i.test(heard.said)
    ? undefined
    : requestFor('concrete-for-posts', [], [tell('spare', only.tag)])
}
