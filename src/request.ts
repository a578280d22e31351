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
  thing: z.string().nullish().describe('of a list of counts: what is counted, in words of the message'),
})

/** What is done with the job as a whole, beside telling and asking. */
export const actSchema = z.strictObject({
  act: z
    .enum([
      'undo',
      'redo',
      'explain',
      'keep',
      'turn-to',
      'compare',
      'next',
      'assumed',
      'sensitive',
      'still-to-buy',
      'units',
    ])
    .describe(
      'undo or redo the last change; explain how a word came about; keep the plan under a name; turn-to a kept plan; compare plans; next: what to decide next; assumed: what is taken as usual; sensitive: what moves the bill most; still-to-buy: what is bought already, and what is not; units: show everything in other units',
    ),
  word: z.string().nullable().describe('for explain: the word, or null for what was answered last'),
  at: z.string().nullable(),
  name: z
    .string()
    .nullable()
    .describe('for keep, turn-to and compare: the plan’s name, in words of the message; for units: metric or imperial'),
  between: z.array(toldSchema).nullable().describe('for compare: values of one word to be tried side by side'),
})

export const requestSchema = z.strictObject({
  told: z.array(toldSchema).describe('what the person said, word by word'),
  wants: z.array(z.strictObject({ word: z.string(), at: z.string() })).describe('the words they want to know'),
  calculation: z.string().nullable().describe('a calculation by name, only when the wanted words leave it open'),
  confirms: z.array(z.string()).describe('words whose odd value the person has just confirmed'),
  notes: z.array(z.string()).nullish().describe('pieces of advice by name, when no sum answers'),
  acts: z.array(actSchema).nullish().describe('what is done with the job as a whole'),
  either: z
    .array(z.strictObject({ tag: z.string(), words: z.array(z.string()) }))
    .nullish()
    .describe('quantities of which the reader cannot tell which word they belong to: the person is asked'),
  unsure: z
    .boolean()
    .nullish()
    .describe('true where the reader hardly knows what is meant: what it read is said back before any figure'),
  declines: z.array(
    z.strictObject({
      why: z.enum([
        'off-trade',
        'dangerous',
        'not-understood',
        'unclear',
        'no-change',
        'not-yet',
        'small-talk',
        'not-english',
      ]),
      quote: z.string().describe('exact words of the message that this is about'),
    }),
  ),
})
export type Request = z.infer<typeof requestSchema>
export type Told = z.infer<typeof toldSchema>
export type Act = z.infer<typeof actSchema>
