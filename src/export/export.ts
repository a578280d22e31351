// This file is about the exported conversation: everything that an audit needs to work every figure again.
import { z } from 'zod'
import { editions, version } from '../../engine/index.ts'
import { answerSchema, type Turn } from '../answer.ts'

export const exportSchema = z.object({
  plumbpost: z.object({ version: z.string(), editions: z.record(z.string(), z.string()) }),
  conversation: z.object({ id: z.string(), title: z.string(), created: z.string() }),
  turns: z.array(z.object({ n: z.number().int(), said: z.string(), answer: answerSchema, job: z.unknown() })),
})
export type Exported = z.infer<typeof exportSchema>

export const exportConversation = (turns: readonly Turn[], conversation: Exported['conversation']): Exported => ({
  plumbpost: { version, editions: { ...editions } },
  conversation,
  turns: turns.map(({ n, said, answer, job }) => ({ n, said, answer, job })),
})
