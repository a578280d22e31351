// This file is about what was learnt of a model's server, kept beside the talks, so that a program that runs for one question need not learn it again.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { freshProfile, type Profile } from './profile.ts'

/** What one address and model are known to take. */
export interface Learnt {
  recall(of: string): Profile | undefined
  keep(of: string, profile: Profile): void
}

/** Servers are mended: after a week what they refused is tried anew. */
const keptMs = 7 * 24 * 3600 * 1000

const profileSchema: z.ZodType<Profile> = z.strictObject({
  streams: z.boolean(),
  tools: z.enum(['offered', 'in-words']),
  strict: z.boolean(),
  choice: z.enum(['as-asked', 'required', 'unsaid']),
  systemRole: z.enum(['system', 'developer', 'user']),
  emptyContent: z.union([z.null(), z.literal('')]),
  limitName: z.enum(['max_tokens', 'max_completion_tokens']),
  alternates: z.boolean(),
  namedResults: z.boolean(),
  thoughtsBack: z.boolean(),
  schemas: z.strictObject({ closed: z.boolean(), nullable: z.enum(['types', 'anyOf']) }),
  without: z.array(z.string()),
})

const fileSchema = z.record(z.string(), z.object({ since: z.number(), profile: profileSchema }))

/** Kept in `endpoints.json` of a folder. A file that cannot be read or written costs a few requests, and nothing else. */
export function learntIn(folder: string, now: () => number = Date.now): Learnt {
  const file = join(folder, 'endpoints.json')
  const all = (): z.infer<typeof fileSchema> => {
    try {
      return fileSchema.parse(JSON.parse(readFileSync(file, 'utf8')))
    } catch {
      return {}
    }
  }
  return {
    recall(of) {
      const known = all()[of]
      // What was learnt in days to come was learnt while the clock was wrong.
      return known && Math.abs(now() - known.since) < keptMs ? known.profile : undefined
    },
    keep(of, profile) {
      const { [of]: before, ...others } = all()
      const isFresh = JSON.stringify(profile) === JSON.stringify(freshProfile)
      if (isFresh && !before) return
      try {
        mkdirSync(folder, { recursive: true })
        writeFileSync(file, `${JSON.stringify(isFresh ? others : { ...others, [of]: { since: now(), profile } })}\n`)
      } catch {
        // A folder that cannot be written keeps nothing, and the answer does not depend on it.
      }
    },
  }
}
