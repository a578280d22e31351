// This file is about the Answer: the one shape that every front gives out and every other program relies on.
import { z } from 'zod'
import { requestSchema } from './request.ts'

export const cautionCodes = [
  'utilities',
  'lot-line',
  'local-code',
  'pool',
  'structure',
  'dust',
  'wet-cement',
  'preserved-wood',
  'lead',
  'fire',
  'lifting',
  'tools',
  'open-hole',
  'overhead-lines',
  'automatic-gate',
  'weather',
] as const

/** In `unit`; true, false or null (cannot say) for a verdict; the option for a choice; an ISO date. */
export const figureValue = z.union([z.number(), z.string(), z.boolean(), z.null()]).meta({ id: 'FigureValue' })

// The names are those of the schemas that are made from these.
export const figureSchema = z
  .object({
    ref: z.string(),
    word: z.string(),
    at: z.string(),
    label: z.string(),
    value: figureValue,
    unit: z.string(),
    text: z.string(),
    kind: z.enum(['exact', 'about', 'at-least', 'at-most', 'rounded-up', 'range']),
    low: z.number().optional(),
    high: z.number().optional(),
    /** The exact fraction in `unit`, where there is one and `value` cannot hold it. */
    exact: z.string().optional(),
    /** A worked length at the nearest mark of a tape, where `text` does not stand on one. */
    byTape: z.object({ value: z.number(), text: z.string() }).optional(),
    role: z.enum(['result', 'said', 'assumed', 'known', 'published']),
    headline: z.boolean(),
  })
  .meta({ id: 'Figure' })
export type Figure = z.infer<typeof figureSchema>

export const problemSchema = z
  .object({
    code: z.enum(['missing', 'unreadable', 'impossible', 'implausible', 'contradictory']),
    word: z.string(),
    at: z.string(),
    message: z.string(),
    ask: z.string().optional(),
  })
  .meta({ id: 'Problem' })

export const callSchema = z
  .object({
    id: z.string(),
    calculation: z.string(),
    title: z.string(),
    inputs: z.array(figureSchema),
    steps: z.array(
      z.object({
        name: z.string(),
        formula: z.string(),
        substituted: z.string(),
        result: z.string(),
        because: z.string(),
      }),
    ),
    results: z.array(figureSchema),
    tables: z.array(
      z.object({
        title: z.string(),
        columns: z.array(z.object({ label: z.string(), unit: z.string() })),
        rows: z.array(z.array(z.union([z.number(), z.string()]))),
      }),
    ),
    doubts: z.array(problemSchema),
    sources: z.array(z.object({ fact: z.string(), from: z.string() })),
    drawing: z.string().nullable(),
    problems: z.array(problemSchema),
  })
  .meta({ id: 'Call' })
export type Call = z.infer<typeof callSchema>

/** A piece of advice, as it was read out. Its figures stand among the answer's, as `n1.wait`. */
export const adviceSchema = z
  .object({
    id: z.string(),
    note: z.string(),
    title: z.string(),
    text: z.string(),
    from: z.string(),
    figures: z.array(figureSchema),
  })
  .meta({ id: 'Advice' })
export type Advice = z.infer<typeof adviceSchema>

export const answerSchema = z
  .object({
    turn: z.number().int(),
    /** Markdown, exactly what the person is shown, cautions included. */
    reply: z.string(),
    calls: z.array(callSchema),
    advice: z.array(adviceSchema),
    figures: z.array(figureSchema),
    asks: z.array(z.object({ word: z.string(), at: z.string(), question: z.string() })),
    cautions: z.array(z.object({ code: z.enum(cautionCodes), text: z.string(), standing: z.boolean() })),
    declined: z.object({ why: z.string() }).nullable(),
    changed: z.array(z.object({ word: z.string(), at: z.string(), before: figureSchema, after: figureSchema })),
    front: z.enum(['offline', 'model']),
    readAs: z.array(z.object({ said: z.string(), figure: figureSchema })),
    /** The typed request that was worked, so that an audit can work it again, and what the reader had to say about it. */
    heard: z.object({
      request: requestSchema,
      notice: z.string().optional(),
      /** The turn from which on the messages were read as one. */
      since: z.number().int().optional(),
    }),
    /** The program's own sentences, each with what it belongs to, for a front that lays an answer out. The reply holds the same. Markdown. */
    words: z
      .object({
        notices: z.array(z.string()),
        remarks: z.array(z.object({ call: z.string(), text: z.string() })),
        leftOver: z.array(z.string()),
        /** Why a figure was taken as usual: `ref` is an input of a call. */
        usual: z.array(z.object({ ref: z.string(), because: z.string(), from: z.string() })),
      })
      .optional(),
    /** Sentences of a model, after the guard; they stand in the reply. Empty when there are none. */
    prose: z.string(),
    /** Why they are missing, where a model's server failed while it wrote; it stands in the reply. */
    unwritten: z.string().optional(),
    /** Set where the person halted it: before the message was read, so that nothing was worked; or while a model wrote, so that only its sentences are missing. */
    halted: z.enum(['reading', 'writing']).optional(),
  })
  .meta({ id: 'Answer' })
export type Answer = z.infer<typeof answerSchema>

/** One turn as it is kept: what was said, what was answered, and the job after it. */
export interface Turn {
  readonly n: number
  readonly said: string
  readonly answer: Answer
  /** The job after the turn, as the job writes itself (see engine/job). */
  readonly job: unknown
}
