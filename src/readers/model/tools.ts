// This file is about the tools a model is offered: the typed request in seven small calls, in the part of JSON Schema that every server takes.
// None of them has a place for a figure. What a call holds is put together in merging.ts.
import { z } from 'zod'
import { requestSchema } from '../../request.ts'
import { portableSchema } from './schemas.ts'
import type { Tool } from './speech.ts'

const word = z.string().describe('a word of the vocabulary')
const place = z.string().nullish().describe('the part it holds for; null for the whole yard')
const tag = z.string().nullish().describe('u1, u2 … of the message, the ref of an earlier result, or usual')
const quote = z.string().nullish().describe('exact words of the message')

const shapes = {
  tell: z.strictObject({
    facts: z.array(
      z.strictObject({
        word,
        at: place,
        tag,
        quote,
        option: z.string().nullish().describe('one of the word’s options; then quote says where'),
      }),
    ),
    confirms: z.array(z.string()).nullish().describe('words whose odd value the person has just confirmed'),
  }),
  want: z.strictObject({
    words: z.array(z.strictObject({ word, at: place })),
    calculation: z.string().nullish().describe('by name, only when the words leave it open'),
    advice: z.array(z.string()).nullish().describe('names from the advice at hand'),
  }),
  change: z.strictObject({
    how: z.enum(['undo', 'redo', 'keep', 'turn-to']),
    name: z.string().nullish().describe('for keep and turn-to: the plan’s name, in words of the message'),
  }),
  compare: z.strictObject({
    word: z.string().nullish().describe('the word whose values are tried; null to compare kept plans'),
    at: place,
    values: z.array(z.strictObject({ tag, quote })),
  }),
  recall: z.strictObject({
    what: z.enum(['explain', 'next', 'assumed', 'sensitive', 'still-to-buy']),
    word: z.string().nullish().describe('for explain: the word; null for what was answered last'),
    at: place,
  }),
  ask: z.strictObject({
    tag: z.string().describe('the quantity that could be either'),
    words: z.array(z.string()).describe('the two words it may belong to, the likelier first'),
  }),
  decline: z.strictObject({
    why: requestSchema.shape.declines.element.shape.why.exclude(['not-english', 'no-change', 'unclear']),
    quote: z.string().describe('exact words of the message that this is about'),
  }),
} as const

type Name = keyof typeof shapes

const uses: Readonly<Record<Name, string>> = {
  tell: 'Hands over what the person states, or states anew.',
  want: 'Hands over what they ask to know.',
  change: 'Takes the last change back or puts it in again, keeps the plan under a name, or goes on with a kept one.',
  compare: 'Sets kept plans, or values of one word, side by side.',
  recall:
    'Says how a figure came about, what to settle next, what is taken as usual, what moves the bill most, or what is still to buy.',
  ask: 'Has the person asked which of two words a quantity belongs to.',
  decline: 'Leaves a part of the message unanswered, and says why.',
}

export const toolNames = Object.keys(shapes) as Name[]

/** In a fixed order: they are part of the prompt’s front, which is the same bytes every time. */
export const toolsOffered: readonly Tool[] = toolNames.map((name) => ({
  name,
  description: uses[name],
  parameters: portableSchema(shapes[name]),
}))

export type Called = { [Of in Name]: { readonly name: Of; readonly args: z.infer<(typeof shapes)[Of]> } }[Name]

/** A call as it was meant, or what is wrong with it in words for the model. */
export function calledAs(name: string, args: unknown): Called | { readonly wrong: string } {
  if (!isTool(name)) return { wrong: `There is no tool “${name}”. The tools are: ${toolNames.join(', ')}.` }
  const parsed = shapes[name].safeParse(args)
  return parsed.success
    ? ({ name, args: parsed.data } as Called)
    : { wrong: `The arguments do not fit: ${z.prettifyError(parsed.error)}` }
}

const isTool = (name: string): name is Name => name in shapes
