// This file is about the questions that reading is measured by: what a person says turn by turn, and what a good answer to each turn does.
import { z } from 'zod'

const inputs = z.record(z.string(), z.union([z.string(), z.array(z.string())]))

/** What one turn should come to. One kind of the following, or the kind in `or` instead, where a careful tradesman may read it in two ways. */
const plainExpectation = z.object({
  /** Sums: what the person has told that each needs, as they told it. Usual values are left to the program. */
  work: z
    .array(
      z.object({
        calc: z.string(),
        given: inputs,
        results: z.array(z.string()).min(1),
        system: z.enum(['imperial', 'metric']).optional(),
      }),
    )
    .optional(),
  /** A whole fence: figures worked by hand, with the sum. */
  figures: z.record(z.string(), z.string()).optional(),
  why: z.string().optional(),
  /** It lacks one of these; asking for any of them is right, and any figure is a guess. */
  asks: z.array(z.string()).min(1).optional(),
  /** Talk, and no sum. */
  advice: z.string().optional(),
  declines: z.enum(['off-trade', 'danger']).optional(),
  /** Something told, and nothing asked. */
  told: inputs.optional(),
  /** Something done with the job as such. */
  act: z.string().optional(),
})
export type Expectation = z.infer<typeof plainExpectation>

export const talkSchema = z.object({
  talk: z.string(),
  who: z.string(),
  turns: z
    .array(
      z.object({
        said: z.string().min(1),
        expect: plainExpectation.extend({ or: plainExpectation.optional() }),
      }),
    )
    .min(1),
})
export type Talk = z.infer<typeof talkSchema>
