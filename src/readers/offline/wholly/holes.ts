// This file is about “what size hole”: it has a width and a depth, and who asks for its size wants both.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor } from '../request-parts.ts'

const asks =
  /\b(?:what|which) sized? (?:of )?(?:a )?(?:post ?)?holes?\b|\bhow big (?:of )?(?:an? |the |my |should the |do the |to dig the )?(?:post ?)?holes?\b|\bwhat size (?:do|should|to dig)\b[^?]*\bholes?\b/i

export const holeSizeIn = ({ said, readings, job }: Heard): Request | undefined =>
  readings.length === 0 &&
  job.wanted.length === 0 &&
  asks.test(said) &&
  !/\b(?:auger|bit|cap|concrete|gravel|bags?)\b/i.test(said)
    ? { ...requestFor('post-depth', ['holeByRule', 'holeDepth'], []), calculation: null }
    : undefined
