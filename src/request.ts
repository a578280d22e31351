// This file is about the typed request: what a message asks for, in the form that every reader returns.
// It holds no figure. A value is the tag of a quantity that the program read (`u1`), the ref of an earlier result (`r1.pickets`),
// a word's declared usual value, one of a word's declared options, or an exact quotation that the program then reads.
import { z } from 'zod'

/** Where a told value comes from. Exactly one of the fields is set; the rest are null. */
export const originSchema = z.strictObject({
  tag: z.string().nullable().describe('tag of a quantity in the message, such as u1, or the ref of an earlier result'),
  quote: z.string().nullable().describe('exact words of the message, where the program tagged no quantity'),
  option: z.string().nullable().describe('for a word with options: the option'),
  usual: z.boolean().nullable().describe('true when the person accepts the usual value'),
})

export const toldSchema = z.strictObject({
  word: z.string().describe('a word of the vocabulary'),
  at: z.string().describe('the place it holds for; yard when it is said of everything'),
  from: originSchema,
})

export const requestSchema = z.strictObject({
  told: z.array(toldSchema).describe('what the person said, word by word'),
  wants: z.array(z.strictObject({ word: z.string(), at: z.string() })).describe('the words they want to know'),
  calculation: z.string().nullable().describe('a calculation by name, only when the wanted words leave it open'),
  confirms: z.array(z.string()).describe('words whose odd value the person has just confirmed'),
  notes: z.array(z.string()).nullish().describe('pieces of advice by name, when no sum answers'),
  declines: z.array(
    z.strictObject({
      why: z.enum(['off-trade', 'dangerous', 'not-understood', 'not-yet', 'small-talk']),
      quote: z.string().describe('exact words of the message that this is about'),
    }),
  ),
})
export type Request = z.infer<typeof requestSchema>
export type Told = z.infer<typeof toldSchema>
